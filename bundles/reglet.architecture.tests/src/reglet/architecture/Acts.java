package reglet.architecture;

import java.util.Map;
import java.util.Set;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;

/** Acts that are told by the calls in a class. */
final class Acts {
    private static final String CONSTRUCTOR = "<init>";
    private static final Map<String, Set<String>> WRITES = Map.of(
        "java.nio.file.Files", Set.of("write", "writeString", "newOutputStream", "newBufferedWriter", "newByteChannel", "copy", "move",
            "delete", "deleteIfExists", "createFile", "createDirectory", "createDirectories", "createTempFile", "createTempDirectory",
            "createLink", "createSymbolicLink", "setAttribute", "setLastModifiedTime", "setOwner", "setPosixFilePermissions"),
        "java.io.File", Set.of("createNewFile", "createTempFile", "delete", "deleteOnExit", "mkdir", "mkdirs", "renameTo",
            "setLastModified"),
        "java.nio.channels.FileChannel", Set.of("open"),
        "java.nio.channels.AsynchronousFileChannel", Set.of("open"),
        "java.io.FileOutputStream", Set.of(CONSTRUCTOR),
        "java.io.FileWriter", Set.of(CONSTRUCTOR),
        "java.io.RandomAccessFile", Set.of(CONSTRUCTOR));
    /** Calls that write files only when they are given one, or its name. */
    private static final Map<String, Set<String>> WRITES_WHAT_IS_NAMED = Map.of(
        "java.io.PrintStream", Set.of(CONSTRUCTOR),
        "java.io.PrintWriter", Set.of(CONSTRUCTOR),
        "java.util.Formatter", Set.of(CONSTRUCTOR),
        "org.apache.pdfbox.pdmodel.PDDocument", Set.of("save", "saveIncremental"));
    private static final Set<String> NAMES = Set.of("java.io.File", "java.lang.String");

    private Acts() {
    }

    static boolean writesFiles(JavaClass type) {
        return type.getAccessesFromSelf().stream().anyMatch(Acts::writes);
    }

    static boolean opensAPdf(JavaClass type) {
        return type.getAccessesFromSelf().stream().anyMatch(access -> owner(access).equals("org.apache.pdfbox.Loader"));
    }

    private static boolean writes(JavaAccess<?> access) {
        if (WRITES.getOrDefault(owner(access), Set.of()).contains(access.getName())) {
            return true;
        }
        return WRITES_WHAT_IS_NAMED.getOrDefault(owner(access), Set.of()).contains(access.getName())
            && access.getTarget() instanceof CodeUnitCallTarget target && !target.getRawParameterTypes().isEmpty()
            && NAMES.contains(target.getRawParameterTypes().get(0).getName());
    }

    private static String owner(JavaAccess<?> access) {
        return access.getTargetOwner().getName();
    }
}
