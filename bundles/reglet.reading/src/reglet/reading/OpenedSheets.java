package reglet.reading;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

import reglet.reading.process.Running;

/**
 * Sheets that a package is made of: looked at, searched, and kept open in the process until the package is bound or this is closed.
 */
public final class OpenedSheets implements AutoCloseable {
    private final Child child;
    private final List<Measure> measures;
    private final List<List<Spotted>> found;
    private Running process;

    /** @param process that has the sheets open; null when none has */
    OpenedSheets(Child child, List<Measure> measures, List<List<Spotted>> found, Running process) {
        this.child = child;
        this.measures = List.copyOf(measures);
        this.found = List.copyOf(found);
        this.process = process;
    }

    /** One for each sheet, in the order in which they were asked for. */
    public List<Measure> measures() {
        return measures;
    }

    /** What was found on each sheet, as {@link Child#find} tells it. */
    public List<List<Spotted>> found() {
        return found;
    }

    /**
     * Binds a package as {@link Child#assemble(PackagePlan, OutputStream)} does, with the same bytes. The first is bound from the
     * sheets that are open; for further ones they are opened again.
     */
    public void assemble(PackagePlan plan, OutputStream out) throws IOException {
        Running first = process;
        process = null;
        child.assemble(plan, out, first);
    }

    @Override
    public void close() {
        if (process != null) {
            process.close();
        }
    }
}
