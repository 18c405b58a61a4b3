package reglet.reading.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import reglet.model.Dimension;
import reglet.model.PropertyType.Kind;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.table.Columns.Column;
import reglet.reading.table.Columns.Role;
import reglet.reading.text.Designations;
import reglet.reading.text.Mentions;
import reglet.reading.value.Around;
import reglet.reading.value.Described;
import reglet.reading.value.Footnotes;
import reglet.reading.value.Taken;
import reglet.reading.value.Unnamed;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;
import reglet.reading.words.Naming;
import reglet.reading.words.Plain;
import reglet.reading.words.PropertyNames;

/** Reads the rows below a heading, in which either each row or each column is a property. */
public final class TableReader {
    private static final double SURE = 0.98;
    /** Rows by which it is judged what a column holds. */
    private static final int JUDGED = 8;
    /** Of the size of the letters: how far lines of one label are apart at most. */
    private static final double BEGUN = 1.8;
    /** Of the distance of the rows of a table: what stands further off is another's. */
    private static final double FURTHER = 1.5;
    /** Of the size of the letters: how far a line between the rows is from these. */
    private static final double GROUPED = 2;
    /** A title that heads results. */
    private static final Pattern TESTED = Pattern.compile("(?is)(?:\\p{L}+ ){0,2}(?:tests?|test results?|results?|test data|testing"
        + "|tested|laboratory data|lab data)\\b.*");
    private static final Pattern BEGINS = Pattern.compile("\\p{Lu}");
    /** "3-1/2 in., all codes": what holds for each row, though it stands in one. */
    private static final Pattern ALL = Pattern.compile("(?i)[\\s,;(]+(?:for )?all (?:codes|sizes|models|parts|styles|types|items"
        + "|numbers|rows|profiles)\\)?"
        + "\\s*$");
    private static final Pattern AMOUNT = Pattern.compile("(?s)[≥≤<>±]?\\s*[-−]?\\.?\\d.*");
    /** "Shear bond, 7 days". */
    private static final Pattern AGE = Pattern.compile("(?is)(.*\\p{L}.*?)[\\s,(]+\\d+[- ]?(?:d|days?|h|hours?|weeks?|months?)\\)?\\s*");

    private final Labels labels;
    private final Citations citations;
    private final Taken taken;
    private final Titled titled;
    private final ByWords byWords;
    private final TableStart starts;
    private final Footnotes footnotes;
    private final Uses uses;
    private final Mentions mentions;
    private Layout layout;
    private Columns table;
    private Noted noted;
    /** Of the table's title: "Dimensions (inches)"; "". */
    private String unit = "";
    private double end;
    /** Rows read so far, and how far they are apart at least. */
    private int readRows;
    private double pitch;
    /** Whether the last row was a line between the rows. */
    private boolean grouped;
    /** Cells that stand once, at the middle of all rows. */
    private Set<Cell> spanning = Set.of();
    /** Cells that are ruled round several rows. */
    private List<Spanned> spanned = List.of();
    /** Whether the first amount in a row tells of which product it is. */
    private boolean keyed;
    private List<Citation> group = List.of();
    /** Whether a title stands above the row at hand, within the table. */
    private boolean parted;
    /** A label alone on the line above. */
    private Cell begun;
    /** The height of that line, or of the last row that went on from it. */
    private double begunAt;
    /** The standards beside it. */
    private List<Citation> begunBy = List.of();
    /** The label of the row above without the age at its end: "Shear bond" of "Shear bond 7 days", which "28 days" may stand below. */
    private String stem = "";
    /** What the last row that has one names in a first column of methods. */
    private List<Citation> above = List.of();

    private final List<Described> described = new ArrayList<>();

    public TableReader(Labels labels, Citations citations, Taken taken, Titled titled, Designations designations,
            Footnotes footnotes, Naming naming, Mentions mentions) {
        this.mentions = mentions;
        this.uses = new Uses(naming, labels.component());
        this.footnotes = footnotes;
        this.byWords = new ByWords(labels, taken, designations);
        this.starts = new TableStart(labels);
        this.titled = titled;
        this.labels = labels;
        this.citations = citations;
        this.taken = taken;
    }

    public void page(Layout next) {
        layout = next;
        close();
    }

    /** What the rows of tables say of their models in columns whose headings name nothing. */
    public List<Described> described() {
        return described;
    }

    private void close() {
        table = null;
        begun = null;
        stem = "";
        group = List.of();
        above = List.of();
        parted = false;
        taken.title("");
        titled.part(layout, Optional.empty());
    }

    /**
     * Starts a table when a row heads one.
     *
     * @return how many rows were used up; 0 when there is no heading
     */
    public int heading(List<Line> all, int index) {
        List<Line> rows = TableStart.withoutMargin(all, index);
        Line row = rows.get(index);
        if (table != null && (row.y() < end || row.y() - end > Math.max(45, 4.5 * row.size()))) {
            close();
        }
        if (table != null && index + 1 < rows.size() && !table.byRows() && row.cells().stream().anyMatch(cell -> AMOUNT.matcher(cell.text())
            .matches())) {
            return 0;
        }
        if (Stacks.areCaptions(rows, index)) {
            return 0;
        }
        Optional<Columns> composed = starts.composed(rows, index);
        if (composed.isPresent()) {
            int first = Heads.of(rows, index).orElseThrow().first();
            start(composed.get(), rows, index, rows.get(first - 1).y());
            return first - index;
        }
        Optional<Columns> heading = columns(rows, index);
        if (heading.isEmpty()) {
            return 0;
        }
        Optional<Columns> lower = starts.withLower(rows, index);
        if (lower.isPresent()) {
            start(lower.get(), rows, index, rows.get(index + 1).y());
            return 2;
        }
        Optional<Line> both = starts.completed(heading.get(), rows, index);
        Optional<Columns> completed = both.flatMap(line -> Columns.heading(line, labels));
        if (completed.isPresent()) {
            start(completed.get(), rows, index, both.get().y());
            return 2;
        }
        start(starts.withUpper(heading.get(), rows, index), rows, index, row.y());
        if (TableStart.onlyNames(table) && index + 1 < rows.size() && starts.areModels(rows.get(index + 1), table)) {
            Line models = rows.get(index + 1);
            table = table.with(models.cells().stream().map(cell -> new Column(cell, Role.MODEL)).toList());
            end = models.y();
            return 2;
        }
        return 1;
    }

    /** The columns below a row: by the words of its headings, by names of models, or by what stands below. */
    private Optional<Columns> columns(List<Line> rows, int index) {
        Line row = rows.get(index);
        boolean within = table != null && row.cells().size() == table.all().size();
        boolean goesOn = TableStart.goesOn(table, row, end);
        // words that name properties may stand below models: "Profile | Self-furring, dimpled | Flat, not self-furring"
        boolean result = within && TableStart.isResult(table, row, citations);
        return uses.heading(rows, index).or(() -> Columns.heading(row, labels).filter(columns -> !((goesOn || result) && columns.byRows())))
            .or(() -> goesOn ? Optional.empty() : ModelHeads.of(rows, index, labels)).or(() -> within || goesOn ? Optional.empty()
                : ByContent.of(rows, index, labels, citations));
    }

    private void start(Columns columns, List<Line> rows, int index, double at) {
        List<Line> below = rows.stream().filter(row -> row.y() > at + 1).toList();
        List<Line> judged = below.stream().limit(JUDGED).toList();
        table = columns.byRows() && starts.areNamed(columns, rows, at, taken::isValue) ? columns.named() : columns.above(judged);
        table = table.byRows() ? byWords.columns(table, judged) : uses.own(table.withModels(judged, cell -> citations.in(cell.text())
            .isEmpty()));
        Optional<Cell> title = index > 0 ? TableStart.title(rows.get(index - 1), rows.get(index)) : Optional.empty();
        taken.title(title.map(cell -> cell.text().replaceAll("\\s+", " ").strip()).orElse(""));
        boolean remarked = title.isEmpty() && index > 1 && rows.get(index - 1).cells().size() == 1 && rows.get(index - 1).text().endsWith(
            ".");
        // "Series G – galvanized steel" above a sentence above the heading
        titled.part(layout, remarked ? TableStart.headline(rows.get(index - 2), rows.get(index - 1)) : title);
        Optional<Cell> headline = index > 0 ? TableStart.headline(rows.get(index - 1), rows.get(index)) : Optional.empty();
        noted = new Noted(footnotes, labels, citations, layout.page(), headline);
        unit = headline.map(cell -> TableStart.unit(cell.text())).orElse("");
        end = at;
        readRows = 0;
        if (!table.byRows()) {
            taken.headed(table.of(Role.MODEL).stream().map(column -> TableStart.shortEnough(column.head().text()))
                .filter(name -> !name.isEmpty()).toList());
        }
        spanning = table.byRows() ? TableStart.spanning(table, below) : Set.of();
        spanned = table.byRows() ? Spanned.of(table, below, layout) : List.of();
        byWords.thicknesses(table);
        keyed = TableStart.isKeyed(table, below.stream().limit(2).toList());
        // "Requirement of ASTM C1670" is said of all rows, and so is "Test results (ASTM C67, average of five)"
        group = columns.of(Role.LABEL).stream().limit(1).flatMap(column -> citations.in(column.head().text()).stream()).toList();
        List<Citation> tested = headline.filter(cell -> TESTED.matcher(cell.text()).matches()).map(cell -> citations.in(cell.text()))
            .orElse(List.of());
        group = group.isEmpty() && tested.size() == 1 && tested.get(0).name().matches("(?:ASTM|ISO|EN|ANSI|AAMA|AATCC|CSA) .*")
            && !table.byRows() && table.of(Role.METHOD).isEmpty() ? tested : group;
    }

    /** "Thickness or joint width": what either of two names is of. */
    private Optional<Label> either(Cell label) {
        return Stream.of(label.text().split("\\s+or\\s+")).skip(label.text().contains(" or ") ? 0 : 1).map(labels::read)
            .flatMap(Optional::stream).findFirst();
    }

    /** Reads a row; false when no table is open or nothing in the row stands in it. */
    public boolean read(Line row) {
        if (table != null && (TableStart.isOfAnother(table, row, citations) || TableStart.isHeadedAnew(table, row)
            || starts.isListed(table, row) || TableStart.areItems(row))) {
            close();
        }
        Map<Column, Cell> cells = new LinkedHashMap<>();
        if (table != null && row.cells().size() == table.all().size() && row.cells().stream().map(table::of).distinct()
            .count() < row.cells()
            .size()) {
            // as many cells as columns, but set so that two seem to stand in one
            for (int i = 0; i < row.cells().size(); i++) {
                cells.put(table.all().get(i), row.cells().get(i));
            }
        }
        for (Cell cell : table == null || !cells.isEmpty() ? List.<Cell>of() : row.cells()) {
            table.of(cell).ifPresent(column -> cells.merge(column, cell, column::of));
        }
        if (cells.isEmpty()) {
            return false;
        }
        if (table.byRows() && row.cells().size() == 1 && table.all().size() > 2) {
            // "Galvanized, G60" between the rows
            titled.part(layout, Optional.of(row.cells().get(0)));
            // and no paragraph behind it
            end = !grouped && row.y() - end < FURTHER * GROUPED * row.size() ? Math.max(end, row.y()) : end;
            grouped = true;
        }
        if (TableStart.isAcross(table, row)) {
            return false;
        }
        if (isSetApart(row, cells)) {
            close();
            return false;
        }
        boolean used = table.byRows() ? byRows(row, cells) : byColumns(row, cells);
        // a row of a model may say nothing that is asked for, or nothing that can be read
        grouped &= cells.size() == 1;
        boolean whole = table != null && table.byRows() && !table.of(Role.MODEL).isEmpty() && cells.size() > 2
            && cells.size() == row.cells().size();
        if (used || whole || TableStart.goesOn(table, row, end)) {
            // the heading may stand further off
            pitch = readRows++ == 0 ? Double.POSITIVE_INFINITY : Math.min(pitch, row.y() - end);
            end = row.y();
        }
        return used;
    }

    /** Whether below columns of models a list begins: a row set further off than those above it, with one value for all of them. */
    private boolean isSetApart(Line row, Map<Column, Cell> cells) {
        return !table.byRows() && table.of(Role.MODEL).size() > 2 && cells.size() == 2 && row.cells().size() == 2 && readRows > 2 && row.y()
            - end > FURTHER * pitch;
    }

    private boolean byRows(Line row, Map<Column, Cell> cells) {
        boolean specimens = HeadWords.SPECIMEN.matcher(HeadWords.plain(table.all().get(0).head())).matches();
        if (specimens && !HeadWords.MEAN.matcher(Plain.of(row.cells().get(0).text())).matches()) {
            return true;
        }
        String under = (keyed ? table.all().stream().limit(1) : table.of(Role.MODEL).stream()).map(cells::get)
            .filter(cell -> cell != null).map(Cell::text).findFirst().orElse("");
        // a gauge or size below a heading that was set over two columns is no model where a designation stands before it
        String first = row.cells().get(0).text();
        String model = TableStart.isDesignation(first) && AMOUNT.matcher(under).matches() ? first : under;
        boolean any = false;
        String own = specimens ? "" : TableStart.shortEnough(model);
        Optional<Cell> labelled = table.of(Role.MODEL).stream().map(cells::get).filter(cell -> cell != null).findFirst();
        labelled.ifPresent(taken::labelled);
        for (Column column : table.nearest(labels)) {
            Optional<Spanned> round = labelled.flatMap(cell -> spanned.stream().filter(one -> one.column() == column && one.holdsFor(cell))
                .findFirst());
            Cell value = round.map(Spanned::cell).orElse(cells.get(column));
            Optional<Label> label = labels.classified(column.head().text(), List.of()).or(() -> labels.nearest(column.head().text()));
            if (value != null && label.isPresent()) {
                List<Citation> methods = citations.in(value.text(), column.head().text() + " " + value.text());
                List<Citation> named = methods.isEmpty() ? label.get().methods() : methods;
                Matcher ofAll = ALL.matcher(value.text());
                boolean all = ofAll.find();
                boolean whole = all || spanning.contains(value) || round.filter(Spanned::all).isPresent();
                Around around = new Around(unit, named.isEmpty() ? noted.of(column.head(), label.get()) : named, whole ? "" : own,
                    noted.sense(column.head()), SURE);
                value = all ? value.part(0, ofAll.start()) : value;
                // what holds for all rows is not of the one that it stands in
                taken.labelled(whole ? column.head() : labelled.orElse(column.head()));
                if (TableStart.isDesignation(own) && isLength(label.get())) {
                    taken.sized();
                }
                if (!own.isEmpty() && !whole && value.text().contains(", ") && isKind(label.get())) {
                    // "Galvanized steel, G90"
                    described.add(new Described(layout, own, value));
                }
                any |= byWords.isTold(column) ? taken.quietly(label.get(), column.head().text(), value, around)
                    : taken.value(label.get(), column.head().text(), value, around);
            }
        }
        for (Column column : table.of(Role.OTHER)) {
            Cell value = cells.get(column);
            if (value != null && !own.isEmpty() && value.text().contains(" ") && !spanning.contains(value)) {
                described.add(new Described(layout, own, value));
            }
            if (value != null) {
                taken.unnamed(new Unnamed(layout, column.head(), List.of(value), label -> taken.quietly(label, column.head().text(), value,
                    new Around("", citations.in(value.text()), spanning.contains(value) ? "" : own, Optional.empty(), SURE))));
            }
        }
        if (any) {
            titled.model(TableStart.shortEnough(model));
        }
        return any;
    }

    private static boolean isLength(Label label) {
        return label.properties().stream().allMatch(property -> property.type().unit().filter(unit -> unit.dimension() == Dimension.LENGTH)
            .isPresent());
    }

    private static boolean isKind(Label label) {
        return label.properties().stream().allMatch(property -> property.type().kind() == Kind.WORD);
    }

    private boolean byColumns(Line row, Map<Column, Cell> cells) {
        Column labelColumn = table.of(Role.LABEL).get(0);
        Cell labelCell = cells.get(labelColumn);
        if (labelCell == null) {
            return false;
        }
        if (cells.size() == 1 && row.cells().size() == 1 && !citations.in(labelCell.text()).isEmpty()) {
            group = citations.in(labelCell.text());
            begun = labelCell;
            begunAt = labelCell.y();
            begunBy = List.of();
            return true;
        }
        taken.labelled(labelCell);
        Optional<Label> aged = isCondition(labelCell) && !stem.isEmpty() ? labels.read(stem) : Optional.empty();
        group = aged.isPresent() && !citations.in(stem).isEmpty() ? citations.in(stem) : RowMethods.group(labelCell, citations, group);
        Matcher age = AGE.matcher(labelCell.text());
        stem = age.matches() ? age.group(1) : aged.isPresent() ? stem : "";
        Optional<Label> ofBegun = begun(labelCell);
        Optional<Label> label = ofBegun.or(() -> aged).or(() -> cells.size() < 2 ? Optional.empty()
            : labels.nearest(labelCell.text())).or(
            () -> labels.classified(labelCell.text(), citations.in(row.text())))
            .or(() -> byWords.row(table, cells)).or(() -> cells.size() < 2 ? Optional.empty()
                : labels.besideValue(labelCell.text(), List.of())).or(() -> cells.size() < 2 ? Optional.empty() : either(labelCell));
        List<Citation> outer = group;
        List<Citation> by = ofBegun.isPresent() ? begunBy : List.of();
        group = by.isEmpty() ? group : by;
        boolean alone = cells.size() == 1 && row.cells().size() == 1;
        boolean tested = label.isPresent() && cells.size() == 2 && row.cells().size() == 2 && table.of(Role.METHOD).stream().anyMatch(
            cells::containsKey);
        if (ofBegun.isPresent() && !alone && !tested && !isCondition(labelCell)) {
            // "smoke developed" below "flame spread" below "Surface burning | ASTM E84"
            begunAt = labelCell.y();
        } else if (alone || tested || !isCondition(labelCell)) {
            begunAt = labelCell.y();
            // "Adhesion in peel | ASTM C794" above "Mortar | 22 lb/in."
            begunBy = tested ? methods(cells).of(row, cells, labelCell, labelCell, label.get()) : List.of();
            begun = alone || tested ? labelCell : null;
        }
        boolean used = byColumns(row, cells, labelCell, label);
        group = !by.isEmpty() && group.equals(by) ? outer : group;
        return used;
    }

    private boolean byColumns(Line row, Map<Column, Cell> cells, Cell labelCell, Optional<Label> label) {
        if (cells.size() > 1 && several(cells, labelCell).named(row, methods(cells))) {
            return true;
        }
        if (label.isEmpty() && (byWords.designated(table, cells) || several(cells, labelCell).classed())) {
            return true;
        }
        if (label.isEmpty() && several(cells, labelCell).pairs(row, methods(cells))) {
            return true;
        }
        if (label.isEmpty() && starts.isLettered(row)) {
            // a list has begun below the table
            close();
            return false;
        }
        if (label.isEmpty()) {
            if (cells.size() == 1 && !labelCell.text().contains(": ")) {
                group = citations.in(labelCell.text());
                parted = group.isEmpty() && row.cells().size() == 1;
                end = row.y();
                return !group.isEmpty();
            }
            if (cells.size() > 1) {
                RowValues values = rowValues(row, cells, labelCell);
                taken.unnamed(new Unnamed(layout, labelCell, values.values(), values::take));
            }
            return cells.size() > 1 && !labelCell.text().contains(":");
        }
        if (cells.size() == 1) {
            // "Temperatures and exposure" heads other rows than the standard above it did
            group = row.cells().size() == 1 && BEGINS.matcher(labelCell.text()).lookingAt() ? List.of() : group;
            return false;
        }
        if (isBesideModels(cells)) {
            close();
            return false;
        }
        parted = false;
        return rowValues(row, cells, labelCell).take(label.get());
    }

    /**
     * Whether the only value of a row stands behind the columns of all models, or below a title of its own: a list has begun below the
     * table.
     */
    private boolean isBesideModels(Map<Column, Cell> cells) {
        List<Column> models = table.of(Role.VALUE).isEmpty() ? table.of(Role.MODEL) : List.of();
        List<Cell> stated = models.stream().map(cells::get).filter(cell -> cell != null).toList();
        boolean behind = stated.size() == 1 && stated.get(0).left() > models.stream().mapToDouble(column -> column.head().right()).max()
            .orElse(Double.POSITIVE_INFINITY) + stated.get(0).size();
        return models.size() > 1 && (behind || parted && stated.size() == 1 && cells.size() == 2);
    }

    private RowValues rowValues(Line row, Map<Column, Cell> cells, Cell labelCell) {
        return new RowValues(table, methods(cells), citations, taken, mentions, row, cells, labelCell);
    }

    /** "Weep holes at" above "head | no | yes", "Shear bond" above "7 days" and "28 days": a label that began on a line of its own. */
    private Optional<Label> begun(Cell label) {
        boolean goesOn = begun != null && label.y() > begunAt && label.y() - begunAt < BEGUN * label.size() && label.text()
            .matches("(?s)\\s*\\p{Ll}.*");
        return goesOn ? labels.read(begun.text().strip() + " " + label.text().strip())
            : begun != null && isCondition(label) ? labels.read(begun.text()) : Optional.empty();
    }

    /** "28 days" below "Compressive strength". */
    private static boolean isCondition(Cell label) {
        return PropertyNames.isCondition(Plain.of(label.text()));
    }

    private Unlabelled several(Map<Column, Cell> cells, Cell labelCell) {
        return new Unlabelled(table, labels, citations, taken, cells, labelCell);
    }

    private RowMethods methods(Map<Column, Cell> cells) {
        // where the methods stand first, one holds for the rows below that have none
        Optional<Column> leading = table.of(Role.METHOD).stream().filter(column -> column == table.all().get(0)).findFirst();
        Optional<Cell> own = leading.map(cells::get);
        above = own.isPresent() ? citations.in(own.get().text()) : above;
        return new RowMethods(table, layout, citations, group, leading.isPresent() && own.isEmpty() ? above : List.of());
    }
}
