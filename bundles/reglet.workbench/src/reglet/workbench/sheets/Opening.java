package reglet.workbench.sheets;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Control;

import reglet.desk.Confirming;
import reglet.desk.DataSheets;
import reglet.desk.KeptAnswers;
import reglet.desk.OpenJob;
import reglet.model.ProductData;
import reglet.model.SheetReading;
import reglet.model.UnusableInput;
import reglet.workbench.Latest;
import reglet.workbench.Session;
import reglet.workbench.Snapshot;

/** What takes time about data sheets, beside the window's thread: finding them, and reading one in a process of its own. */
final class Opening {
    private static final String KEPT = "sheet ";
    private final Session session;
    private final Latest reading;
    private final Latest listing;
    private final Latest counting;

    Opening(Control control, Session session) {
        this.session = session;
        reading = new Latest(control, session.work());
        listing = new Latest(control);
        counting = new Latest(control);
    }

    /** The sheets of the job's folder, and those that products name. */
    void list(Snapshot now, Consumer<List<Path>> found) {
        listing.ask("Looking for data sheets", monitor -> listed(now), found);
    }

    private static List<Path> listed(Snapshot now) {
        Path folder = now.job().folder();
        List<Path> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder.resolve("sheets"))) {
            files.filter(file -> file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".pdf")).forEach(found::add);
        } catch (IOException none) {
            // a job need not have sheets
        }
        now.job().job().products().stream().map(ProductData::sheet).filter(name -> !name.isEmpty()).map(folder::resolve)
            .forEach(found::add);
        return found.stream().map(Path::normalize).distinct().sorted().toList();
    }

    /** Reads a sheet, or says why it can't be; the newest question alone is answered. */
    void read(Snapshot now, Sheet sheet, String component, Consumer<Sheet> done) {
        Path file = sheet.file();
        reading.ask("Reading " + file.getFileName(), monitor -> {
            try {
                String place = KEPT + KeptAnswers.name(file);
                Optional<KeptAnswers> kept = KeptAnswers.of(session.typing().kept(place));
                SheetReading read = DataSheets.read(file, now.job().pack(), component.isEmpty() ? kept.map(KeptAnswers::component)
                    .orElse("") : component);
                OpenJob job = session.snapshot().orElse(now).job();
                Sheet opened = sheet.placed(place).read(job, read);
                return kept.map(answers -> opened.again(job, answers)).orElse(opened);
            } catch (UnusableInput unusable) {
                return sheet.refused(Session.reasons(unusable));
            } catch (IOException failed) {
                return sheet.refused("It was not read: " + failed.getMessage());
            }
        }, done);
    }

    /** Keeps what is answered and not written, a moment after the last answer. */
    void keep(Sheet sheet) {
        sheet.confirming().filter(one -> !sheet.place().isEmpty()).map(KeptAnswers::text).ifPresent(text -> {
            if (text.isEmpty()) {
                session.typing().done(sheet.place());
            } else {
                session.typing().typed(sheet.place(), text);
            }
        });
    }

    /** How many pages there are is told a moment later: the values don't wait for it. */
    void count(Path file, IntConsumer told) {
        counting.ask("Counting the pages of " + file.getFileName(), monitor -> {
            try {
                return Confirming.pages(file);
            } catch (UnusableInput | IOException uncounted) {
                // the reading says what is wrong with it
                return 0;
            }
        }, told::accept);
    }

    void cancel() {
        reading.cancel();
        counting.cancel();
    }
}
