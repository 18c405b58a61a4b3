package reglet.workbench.sheets;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import reglet.model.Box;
import reglet.workbench.OneByOne;
import reglet.workbench.Ui;
import reglet.workbench.sheets.SheetRows.Row;

/** The page of a sheet with the value in question marked where it stands, and above it what the sheet says. */
final class SheetPage {
    private final Label says;
    private final PageCanvas canvas;
    private final Pages pages;
    private Sheet sheet = Sheet.NONE;
    private Optional<Row> selected = Optional.empty();
    private int page = 1;

    /** @param marked told of a place that the person marks: its page and where on it */
    SheetPage(Composite parent, OneByOne work, BiConsumer<Integer, Box> marked) {
        Composite frame = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(frame);
        says = Ui.named(new Label(frame, SWT.WRAP), "What the sheet says");
        GridDataFactory.fillDefaults().grab(true, false).hint(Ui.characters(says, 40), SWT.DEFAULT).applyTo(says);
        canvas = new PageCanvas(frame, "Page of the sheet", this::turn);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
        canvas.places(marked);
        pages = new Pages(canvas, work);
    }

    /** The file may be another one: its pictures are drawn anew, from the first page on. */
    void forget(Path file) {
        pages.forget(file);
        page = 1;
    }

    void to(int wanted) {
        page = wanted;
    }

    void mark() {
        canvas.mark();
    }

    void unmark() {
        canvas.unmark();
    }

    private void turn(int by) {
        int next = Math.max(1, Math.min(Math.max(1, sheet.pages()), page + by));
        if (next != page) {
            page = next;
            show(sheet, selected);
        }
    }

    /** Shows the page in question, with the value of the selected row where it stands there. */
    void show(Sheet now, Optional<Row> row) {
        sheet = now;
        selected = row;
        if (sheet.file() == null) {
            says("");
            canvas.show(new PageCanvas.Shown(null, List.of(), Optional.empty(), "", "The page stands here."));
            return;
        }
        Path file = sheet.file();
        int wanted = page;
        Optional<Row> here = row.filter(one -> one.page() == wanted);
        String place = "Page " + wanted + (sheet.pages() > 0 ? " of " + sheet.pages() : "") + ". ";
        says(place + here.map(Row::says).orElse(""));
        pages.ask(file, wanted, loaded -> {
            if (file.equals(sheet.file()) && wanted == page) {
                canvas.show(new PageCanvas.Shown(loaded.page().orElse(null), boxes(wanted), here.flatMap(Row::box), says.getText(),
                    "≠ " + loaded.why()));
            }
        });
        if (pages.ready(file, wanted).isEmpty()) {
            canvas.show(new PageCanvas.Shown(null, List.of(), Optional.empty(), "", place + "Its picture is being drawn…"));
        }
    }

    /** Where the values of a page stand. */
    private List<Box> boxes(int wanted) {
        return sheet.confirming().map(confirming -> confirming.proposals().stream().filter(one -> one.value().page() == wanted)
            .flatMap(one -> one.value().box().stream()).toList()).orElse(List.of());
    }

    private void says(String words) {
        if (!words.equals(says.getText())) {
            says.setText(words);
            says.getParent().layout();
        }
    }
}
