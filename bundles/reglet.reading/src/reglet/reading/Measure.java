package reglet.reading;

import java.nio.file.Path;

/**
 * What a first look at a sheet tells.
 *
 * @param sheet   the file looked at
 * @param pages   number of its pages; 0 when it can't be bound in
 * @param problem why it can't, in words that follow "Not bound in:"; "" when it can
 */
public record Measure(Path sheet, int pages, String problem) {

    /** Whether the sheet can be bound into a package. */
    public boolean usable() {
        return problem.isEmpty();
    }
}
