package reglet.workbench.sheets;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.PartInitException;

import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.ProductData;
import reglet.model.SheetValue;
import reglet.model.UnusableInput;
import reglet.workbench.Latest;
import reglet.workbench.Part;
import reglet.workbench.Session;
import reglet.workbench.Snapshot;
import reglet.workbench.Ui;
import reglet.workbench.WhenSeen;
import reglet.workbench.section.SectionView;
import reglet.workbench.sheets.Compared.Line;
import reglet.workbench.sheets.Compared.What;

/**
 * What the walls require against what products show, one requirement a row: the page with the value marked and the reason stand below.
 * It is worked out anew after every choice and every value that is confirmed.
 */
public final class ComparisonView extends Part {
    public static final String ID = "reglet.workbench.comparison";
    private static final String ALL = "All results";
    private static final String OPEN = "All that is not met";
    private Combo what;
    private Combo filter;
    private Label summary;
    private ComparisonTable table;
    private ReasonPane reason;
    private PageCanvas canvas;
    private Label place;
    private Pages pages;
    private Latest work;
    private WhenSeen seen;
    private List<What> choices = List.of();
    private String chosen = "";
    private Compared compared = new Compared(List.of(), List.of(), "", java.util.Map.of());
    private Snapshot asked;
    private String askedFor = "";
    private int page;
    private Row shown;

    @Override
    protected void fill(Composite parent) {
        GridLayoutFactory.swtDefaults().applyTo(parent);
        work = new Latest(parent);
        pages = new Pages(parent, session().work());
        seen = new WhenSeen(parent, this::ask);
        Composite line = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        GridLayoutFactory.fillDefaults().numColumns(4).applyTo(line);
        new Label(line, SWT.NONE).setText("Co&mpare");
        what = Ui.named(new Combo(line, SWT.READ_ONLY), "What is compared");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(what);
        what.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            chosen = choices.get(what.getSelectionIndex()).words();
            ask();
        }));
        new Label(line, SWT.NONE).setText("&Show");
        filter = Ui.named(new Combo(line, SWT.READ_ONLY), "Which results are shown");
        filter.add(ALL);
        filter.add(OPEN);
        List.of(Result.values()).forEach(result -> filter.add(Compared.filter(result)));
        filter.select(0);
        filter.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> lines()));
        summary = Ui.named(new Label(parent, SWT.WRAP), "How the comparison stands");
        GridDataFactory.fillDefaults().grab(true, false).hint(Ui.characters(summary, 40), SWT.DEFAULT).applyTo(summary);
        SashForm sash = new SashForm(parent, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).hint(Ui.characters(parent, 40), Ui.characters(parent, 40)).applyTo(sash);
        table = new ComparisonTable(sash, this::looked);
        table.control().addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> table.selected()
            .ifPresent(this::jump)));
        SashForm below = new SashForm(sash, SWT.HORIZONTAL);
        reason = new ReasonPane(below, this::jump);
        Composite sheet = new Composite(below, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(sheet);
        place = Ui.named(new Label(sheet, SWT.WRAP), "Where the value stands");
        GridDataFactory.fillDefaults().grab(true, false).hint(Ui.characters(place, 20), SWT.DEFAULT).applyTo(place);
        canvas = new PageCanvas(sheet, "Page with the value", this::turn);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
        below.setWeights(40, 60);
        sash.setWeights(42, 58);
    }

    @Override
    public void jobChanged() {
        Snapshot now = session().snapshot().orElse(null);
        if (now == null) {
            asked = null;
            work.cancel();
            showEmpty("What the walls require stands here beside what products show, once a job is open.");
            return;
        }
        show();
        seen.ask();
    }

    private void ask() {
        Snapshot now = session().snapshot().orElse(null);
        if (now == null) {
            return;
        }
        choices = Compared.choices(now.job());
        List<String> words = choices.stream().map(What::words).toList();
        if (!words.equals(List.of(what.getItems()))) {
            what.setItems(words.toArray(String[]::new));
        }
        int at = Math.max(0, words.indexOf(chosen));
        what.select(at);
        What wanted = choices.get(at);
        if (now == asked && wanted.words().equals(askedFor)) {
            return;
        }
        boolean other = asked == null || !asked.job().folder().equals(now.job().folder());
        asked = now;
        askedFor = wanted.words();
        chosen = wanted.words();
        if (other) {
            page = 0;
            shown = null;
        }
        work.ask("Comparing " + wanted.words(), monitor -> {
            try {
                return Compared.of(now.job(), wanted);
            } catch (UnusableInput unusable) {
                return new Compared(List.of(), List.of(), "≠ It can't be compared: " + Session.reasons(unusable), java.util.Map.of());
            }
        }, done -> {
            compared = done;
            lines();
        });
    }

    private void lines() {
        Snapshot now = asked;
        int index = filter.getSelectionIndex();
        List<Line> lines = compared.lines().stream().filter(line -> index == 0 || index == 1 && !line.isMet()
            || index > 1 && line.has(Result.values()[index - 2])).toList();
        table.show(lines, compared.products(), id -> Compared.product(now.job(), id));
        String words = compared.summary() + (index == 0 ? "" : "  Shown: " + lines.size() + " of " + compared.lines().size() + ".")
            + (compared.lines().isEmpty() && !compared.summary().startsWith("≠")
                ? "  Nothing of it is asked for yet: products and walls have to have something to say to each other." : "");
        if (!words.equals(summary.getText())) {
            summary.setText(words);
            summary.getParent().layout();
        }
        look();
    }

    /** The person took a line or another product: everything else follows. */
    private void looked() {
        table.selected().ifPresent(line -> session().look(session().focus().onWall(line.wall()).onComponent(line.component())));
        look();
    }

    private void look() {
        Snapshot now = asked;
        Line line = table.selected().orElse(null);
        Row row = table.row().orElse(null);
        reason.show(now.job(), line, row, compared);
        if (row != shown) {
            shown = row;
            page = value().map(SheetValue::page).filter(at -> at > 0).orElse(1);
        }
        picture(now);
    }

    private Optional<SheetValue> value() {
        return Optional.ofNullable(shown).flatMap(Row::submitted);
    }

    private void picture(Snapshot now) {
        Optional<Path> sheet = Optional.ofNullable(shown).flatMap(row -> Compared.data(now.job(), row.product())).map(ProductData::sheet)
            .filter(name -> !name.isEmpty()).map(name -> now.job().folder().resolve(name).normalize());
        if (sheet.isEmpty()) {
            String words = shown == null ? "Choose a requirement: the page that shows the value stands here."
                : "No sheet shows it.";
            place("");
            canvas.show(new PageCanvas.Shown(null, List.of(), Optional.empty(), "", words));
            return;
        }
        Row row = shown;
        int wanted = page;
        boolean here = value().map(one -> one.page() == wanted).orElse(false);
        place(sheet.get().getFileName() + ", page " + wanted + (here ? "" : value().isPresent() ? "; the value stands on page "
            + value().get().page() : "; the value is not on the sheet") + ".");
        pages.ask(sheet.get(), wanted, loaded -> {
            if (row == shown && wanted == page) {
                canvas.show(new PageCanvas.Shown(loaded.page().orElse(null), List.of(),
                    value().filter(one -> here).flatMap(SheetValue::box),
                    place.getText() + value().filter(one -> here).map(one -> " Marked: " + one.text()).orElse(""), "≠ " + loaded.why()));
            }
        });
        if (pages.ready(sheet.get(), wanted).isEmpty()) {
            canvas.show(new PageCanvas.Shown(null, List.of(), Optional.empty(), "", "The picture of the page is being drawn…"));
        }
    }

    private void place(String words) {
        if (!words.equals(place.getText())) {
            place.setText(words);
            place.getParent().layout();
        }
    }

    private void turn(int by) {
        if (shown != null && page + by >= 1) {
            page += by;
            picture(asked);
        }
    }

    /** Leads to the paragraph in its section. */
    private void jump(Line line) {
        session().look(session().focus().onWall(line.wall()).onComponent(line.component()));
        try {
            getSite().getPage().showView(SectionView.ID);
        } catch (PartInitException unavailable) {
            session().say("The section can't be shown: " + unavailable.getMessage(), true);
        }
    }

    /** Compares a submittal. */
    void compare(String submittal) {
        chosen = new What(Compared.Kind.SUBMITTAL, submittal, "Submittal " + submittal).words();
        ask();
    }

    /** Goes to the next or previous requirement that is not met. */
    void step(int by) {
        table.step(by, line -> !line.isMet());
        table.control().setFocus();
    }

    @Override
    protected boolean asksHere() {
        return true;
    }

    @Override
    protected void focusPage() {
        table.control().setFocus();
    }
}
