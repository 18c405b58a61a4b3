package reglet.architecture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;

/** The bundles of this checkout, as they were just built. */
final class Checkout {
    private final Path root;

    private Checkout(Path root) {
        this.root = root;
    }

    /** The build says where the checkout is. */
    static Checkout here() {
        String root = System.getProperty("reglet.root");
        if (root == null) {
            throw new IllegalStateException("run with -Dreglet.root=CHECKOUT");
        }
        // what a class uses is named in it; the classes used needn't be read
        ArchConfiguration.get().setResolveMissingDependenciesFromClassPath(false);
        return new Checkout(Path.of(root));
    }

    Arrows arrows() throws IOException {
        return Arrows.read(root.resolve("releng/arrows.txt"));
    }

    /** Our own bundles, without tests and wrapped libraries. */
    List<String> bundles() throws IOException {
        try (Stream<Path> folders = Files.list(root.resolve("bundles"))) {
            return folders.filter(folder -> Files.exists(folder.resolve("META-INF/MANIFEST.MF")))
                .map(folder -> folder.getFileName().toString())
                .filter(name -> !name.endsWith(".tests") && !name.startsWith("reglet.libs."))
                .sorted().toList();
        }
    }

    /** Bundle and package names in a manifest's header, without versions and other attributes. */
    Set<String> named(String bundle, String header) throws IOException {
        try (InputStream in = Files.newInputStream(root.resolve("bundles").resolve(bundle).resolve("META-INF/MANIFEST.MF"))) {
            Attributes attributes = new Manifest(in).getMainAttributes();
            String value = attributes.getValue(header);
            if (value == null) {
                return Set.of();
            }
            // commas between quotation marks stand in version ranges and directives
            String plain = value.replaceAll("\"[^\"]*\"", "");
            return Stream.of(plain.split(",")).map(part -> part.split(";")[0].strip()).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /** Whether the bundle has Java sources; a pack has none. */
    boolean hasSources(String bundle) {
        Path sources = root.resolve("bundles").resolve(bundle).resolve("src");
        if (!Files.isDirectory(sources)) {
            return false;
        }
        try (Stream<Path> files = Files.walk(sources)) {
            return files.anyMatch(file -> file.toString().endsWith(".java"));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The classes of a bundle. */
    JavaClasses classes(String bundle) {
        return new ClassFileImporter().importPath(root.resolve("bundles").resolve(bundle).resolve("target/classes"));
    }
}
