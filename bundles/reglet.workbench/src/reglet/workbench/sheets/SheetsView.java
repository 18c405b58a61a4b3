package reglet.workbench.sheets;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;

import reglet.desk.Confirming;
import reglet.desk.Confirming.Answer;
import reglet.model.Box;
import reglet.model.Pack;
import reglet.model.ProductData;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.UnusableInput;
import reglet.workbench.Marks;
import reglet.workbench.Part;
import reglet.workbench.Session;
import reglet.workbench.Snapshot;
import reglet.workbench.Ui;
import reglet.workbench.sheets.SheetRows.Row;

/**
 * A data sheet gone through value by value: what was read in a table, the page with the value marked beside it. What the person takes
 * goes into the product data of the job as one change that can be taken back.
 */
public final class SheetsView extends Part implements SheetTable.Answers, SheetHead.Choices {
    public static final String ID = "reglet.workbench.sheets";
    private static final String NONE = "Choose a data sheet of the job above, open a file, or drop a PDF here. What it was read to say "
        + "stands here then, and nothing of it counts until you take it.";
    private SheetHead head;
    private SashForm sash;
    private SheetTable table;
    private SheetButtons buttons;
    private AddForm adding;
    private Label state;
    private Label wrong;
    private SheetPage page;
    private Opening opening;
    private Sheet sheet = Sheet.NONE;
    private List<Path> known = List.of();
    private Path folder;

    @Override
    protected void fill(Composite parent) {
        GridLayoutFactory.swtDefaults().applyTo(parent);
        opening = new Opening(parent, session());
        head = new SheetHead(parent, this);
        state = wrapped(parent, "How the sheet stands");
        sash = new SashForm(parent, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).hint(Ui.characters(parent, 40), Ui.characters(parent, 40)).applyTo(sash);
        Composite left = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(left);
        table = new SheetTable(left, this);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table.control());
        wrong = wrapped(left, "Data sheet, what is wrong");
        hide(wrong, true);
        adding = new AddForm(left, this::add, this::example, () -> {
            page.unmark();
            tell("");
            table.control().setFocus();
        });
        buttons = new SheetButtons(left, this);
        page = new SheetPage(sash, session().work(), this::marked);
        sash.setWeights(44, 56);
        sash.addListener(SWT.Resize, event -> sash.setOrientation(sash.getSize().x > 2 * sash.getSize().y ? SWT.HORIZONTAL : SWT.VERTICAL));
        Drops.on(parent, this::open);
    }

    private static Label wrapped(Composite parent, String name) {
        Label label = Ui.named(new Label(parent, SWT.WRAP), name);
        GridDataFactory.fillDefaults().grab(true, false).hint(Ui.characters(label, 40), SWT.DEFAULT).applyTo(label);
        return label;
    }

    private static void hide(Label label, boolean hidden) {
        label.setVisible(!hidden);
        ((org.eclipse.swt.layout.GridData) label.getLayoutData()).exclude = hidden;
    }

    @Override
    public void jobChanged() {
        Snapshot now = session().snapshot().orElse(null);
        if (now == null) {
            folder = null;
            sheet = Sheet.NONE;
            showEmpty("Data sheets are gone through here once a job is open: each value beside the place on the page where it stands.");
            return;
        }
        if (!now.job().folder().equals(folder)) {
            folder = now.job().folder();
            opening.cancel();
            sheet = Sheet.NONE;
            page.to(1);
        }
        show();
        sheet = sheet.beside(now.job());
        update();
        opening.list(now, found -> {
            known = found;
            heads();
        });
    }

    @Override
    public void sheet(String key) {
        open(Path.of(key));
    }

    @Override
    public void openAFile() {
        FileDialog dialog = new FileDialog(sash.getShell(), SWT.OPEN);
        dialog.setText("Open a data sheet");
        dialog.setFilterExtensions(new String[] {"*.pdf;*.PDF"});
        dialog.setFilterNames(new String[] {"Data sheets (PDF)"});
        String file = dialog.open();
        if (file != null) {
            open(Path.of(file));
        }
    }

    /** Reads a sheet in a process of its own and shows what it was read to say. */
    public void open(Path file) {
        session().snapshot().ifPresent(now -> {
            Path whole = file.toAbsolutePath().normalize();
            Optional<ProductData> held = now.job().job().products().stream().filter(product -> !product.sheet().isEmpty()
                && now.job().folder().resolve(product.sheet()).normalize().equals(whole)).findFirst();
            page.forget(whole);
            read(now, Sheet.reading(whole), held.map(ProductData::component).orElse(""));
            // the list of sheets may be filled anew below the keyboard
            table.control().setFocus();
        });
    }

    private void read(Snapshot now, Sheet next, String component) {
        sheet = next;
        adding.close();
        tell("");
        update();
        opening.read(now, next, component, read -> {
            sheet = read;
            update();
            opening.count(next.file(), count -> {
                sheet = next.file().equals(sheet.file()) ? sheet.paged(count) : sheet;
                look();
            });
            if (sheet.needsModel()) {
                head.focusModel();
            } else if (sheet.confirming().isPresent()) {
                next();
            }
        });
    }

    @Override
    public void component(String id) {
        session().snapshot().ifPresent(now -> read(now, Sheet.reading(sheet.file()), id));
    }

    @Override
    public void model(String name) {
        session().snapshot().ifPresent(now -> {
            sheet = sheet.model(now.job(), name);
            update();
            next();
        });
    }

    @Override
    public void product(String id) {
        session().snapshot().ifPresent(now -> {
            sheet = sheet.product(now.job(), id);
            update();
        });
    }

    private void update() {
        heads();
        List<Row> rows = session().snapshot().flatMap(now -> sheet.confirming().map(confirming -> SheetRows.rows(now.job().pack(),
            confirming))).orElse(List.of());
        table.show(rows);
        String words = sheet.file() == null ? NONE : sheet.words();
        if (!words.equals(state.getText())) {
            state.setText(words);
            state.getParent().layout();
        }
        buttons.update(sheet.confirming());
        opening.keep(sheet);
        look();
    }

    private void heads() {
        Snapshot now = session().snapshot().orElse(null);
        if (now == null) {
            return;
        }
        head.show(now.job(), known, sheet);
    }

    @Override
    public void looked(Row row) {
        page.to(row.page());
        look();
    }

    private void look() {
        page.show(sheet, table.selected());
    }

    private void answer(UnaryOperator<Confirming> change) {
        sheet = sheet.with(change);
        update();
    }

    private void next() {
        table.next(row -> row.isValue() && row.state().startsWith("○"));
    }

    @Override
    public void take(Row row) {
        answer(confirming -> row.instead().map(other -> confirming.takeInstead(row.key(), other)).orElseGet(() -> confirming
            .take(row.key())));
        next();
    }

    @Override
    public void leaveOut(Row row) {
        if (row.instead().isEmpty()) {
            answer(confirming -> confirming.leaveOut(row.key()));
        }
        next();
    }

    @Override
    public String correct(Row row, String text) {
        try {
            Confirming now = sheet.confirming().orElseThrow();
            Confirming changed = row.instead().map(other -> now.takeInstead(row.key(), other)).orElse(now).correct(pack(), row.key(), text);
            answer(confirming -> changed);
            next();
            return "";
        } catch (UnusableInput unusable) {
            return Session.reasons(unusable);
        }
    }

    @Override
    public void shownBy(Row row, String standard) {
        answer(confirming -> row.instead().map(other -> confirming.takeInstead(row.key(), other)).orElse(confirming).shownBy(row.key(),
            standard));
    }

    private Pack pack() {
        return session().snapshot().orElseThrow().job().pack();
    }

    @Override
    public List<String> words(Row row) {
        return pack().property(row.key()).map(property -> switch (property.type().kind()) {
            case WORD, GRADE -> property.type().words();
            case FLAG -> List.of("yes", "no");
            default -> List.<String>of();
        }).orElse(List.of());
    }

    private String example(String property) {
        return pack().property(property).flatMap(one -> one.type().kind() == Kind.DATE ? Optional.of("such as 2026-11-29")
            : one.type().unit().map(unit -> "in " + unit.symbol())
            .or(() -> Optional.of(String.join(", ", one.type().words())))).orElse("");
    }

    /** The person marked a place on the page: what stands there? */
    private void marked(int at, Box box) {
        sheet.confirming().ifPresent(confirming -> pack().component(confirming.reading().component()).ifPresent(component -> {
            List<Property> missing = component.properties().stream().filter(property -> confirming.proposals().stream().noneMatch(one -> one
                .property().equals(component.id() + "." + property.name()) && one.answer() != Answer.LEFT_OUT)).toList();
            adding.open(missing.stream().map(property -> component.id() + "." + property.name()).toList(),
                missing.stream().map(property -> Marks.sentence(property.label())).toList(), at, box);
        }));
    }

    private String add(String property, String text, int at, Box box) {
        try {
            Confirming changed = sheet.confirming().orElseThrow().add(pack(), property, text, at, box);
            answer(confirming -> changed);
            tell("");
            return "";
        } catch (UnusableInput unusable) {
            String reasons = Session.reasons(unusable);
            tell(reasons);
            return reasons;
        }
    }

    @Override
    public void tell(String words) {
        String told = words.isEmpty() ? "" : "≠ " + words;
        if (!told.equals(wrong.getText())) {
            wrong.setText(told);
            hide(wrong, told.isEmpty());
            wrong.getParent().layout();
        }
    }

    /** Takes every value that is sure and raises no doubt. */
    void takeSure() {
        if (sheet.confirming().isPresent()) {
            answer(Confirming::takeSure);
            next();
        }
    }

    void takeSelected() {
        table.selected().filter(Row::isValue).ifPresent(this::take);
    }

    void leaveOutSelected() {
        table.selected().filter(Row::isValue).ifPresent(this::leaveOut);
    }

    void correctSelected() {
        table.correct();
    }

    /** Begins to mark a place on the page, for a value that was not read. */
    @Override
    public void addAValue() {
        if (sheet.confirming().isPresent()) {
            page.mark();
        }
    }

    /** Writes what is taken into the product data, as one change that can be taken back. */
    void write() {
        sheet.confirming().ifPresent(confirming -> {
            tell("");
            List<String> files = List.of("products/" + confirming.product() + ".yaml");
            session().change(sheet.file().getFileName() + ": " + Marks.number(confirming.going().size(), "value") + " into " + files.get(0),
                files, List.of("sheets/" + sheet.file().getFileName()), confirming::write, this::tell);
        });
    }

    @Override
    protected boolean asksHere() {
        return true;
    }

    @Override
    protected void focusPage() {
        if (sheet.confirming().isPresent()) {
            table.control().setFocus();
        } else {
            head.focus();
        }
    }
}
