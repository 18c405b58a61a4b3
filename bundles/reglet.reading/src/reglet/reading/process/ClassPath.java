package reglet.reading.process;

import java.io.File;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import com.google.gson.Gson;
import org.apache.commons.logging.Log;
import org.apache.fontbox.FontBoxFont;
import org.apache.pdfbox.io.RandomAccessRead;
import org.apache.pdfbox.pdmodel.PDDocument;

import reglet.model.Box;

/**
 * Where the classes that the process needs were loaded from: jars, bundle folders, or class folders while developing. Asking the
 * classes themselves gives the same answer on a plain class path and in a framework of bundles.
 */
final class ClassPath {
    private static final List<Class<?>> NEEDED = List.of(ClassPath.class, Box.class, PDDocument.class, RandomAccessRead.class,
        FontBoxFont.class, Log.class, Gson.class);

    private ClassPath() {
    }

    static String of(Class<?> main) {
        List<Class<?>> needed = new ArrayList<>(NEEDED);
        needed.add(main);
        Set<String> places = new LinkedHashSet<>();
        needed.forEach(type -> places.addAll(places(type.getProtectionDomain().getCodeSource().getLocation())));
        return String.join(File.pathSeparator, places);
    }

    private static Set<String> places(URL location) {
        Path place = path(location);
        Set<String> places = new LinkedHashSet<>();
        // a bundle that runs from its project keeps its classes below
        for (String below : List.of("target/classes", "target/test-classes", "bin")) {
            if (Files.isDirectory(place.resolve(below))) {
                places.add(place.resolve(below).toString());
            }
        }
        places.add(place.toString());
        return places;
    }

    private static Path path(URL location) {
        String text = location.toString();
        try {
            return Path.of(new URI(text.startsWith("reference:") ? text.substring("reference:".length()) : text));
        } catch (URISyntaxException | IllegalArgumentException unusual) {
            // a path with blanks, written without escaping them
            return Path.of(location.getPath());
        }
    }
}
