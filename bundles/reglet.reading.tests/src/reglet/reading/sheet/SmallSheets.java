package reglet.reading.sheet;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.io.TempDir;

import reglet.model.SheetReading;
import reglet.reading.Made;

/** Reads small drawn sheets of invented products, for tests that look at one habit of makers at a time. */
abstract class SmallSheets {
    @TempDir
    Path folder;

    /** Reads a sheet of which these lines describe what stands on it, as {@link DrawnSheet} takes them. */
    SheetReading reading(String... lines) throws Exception {
        return readingOf("", lines);
    }

    /** As {@link #reading}, for a component that is asked for; "" for none. */
    SheetReading readingOf(String component, String... lines) throws Exception {
        List<String> all = new ArrayList<>(List.of("page letter", "font Liberation 9"));
        all.addAll(List.of(lines));
        Path sheet = Made.file(folder, "one.pdf", DrawnSheet.draw(all).pdf());
        return SheetReader.read(SheetFixtures.pages(sheet), SheetFixtures.pack(), component);
    }
}
