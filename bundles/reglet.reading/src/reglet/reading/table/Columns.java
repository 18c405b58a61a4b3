package reglet.reading.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;

import reglet.model.Property;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
import reglet.reading.value.Topics;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;
import reglet.reading.words.Plain;
import reglet.reading.words.UnitSpelling;

/** What the columns below a heading hold. */
final class Columns {
    enum Role { LABEL, VALUE, METHOD, REQUIRED, UNIT, MODEL, PROPERTY, OTHER }

    static final int LONGEST = 45;
    /** Heads the looks of stones. */
    private static final Pattern PATTERN = Pattern.compile("(?i)(?:stone )?(?:pattern|texture|collection)s?");
    /** Heads what a bag is enough for. */
    private static final Pattern YIELD = Pattern.compile("(?i)\\b(?:coverage|covers|yields?|per bag|bags?)\\b");
    /** "CB 80-15": the designation of a model, and no standard or amount. */
    private static final Pattern CODED = Pattern.compile(".*\\b(?:no|number|code|sku)");
    private static final Pattern GAUGE = Pattern.compile("(?:steel |metal )?(?:gauge|gage|ga)(?: no)?");
    private static final Pattern DESCRIPTION = Pattern.compile("(?:product |item |part )?description");
    static final Pattern MODEL_NO = Pattern.compile("(?!ASTM|ANSI|AAMA|ISO|EN\\b|AC\\d)(?=.*\\d)[\\p{Lu}\\d][-\\p{L}\\d].*");
    private static final Pattern WORD = Pattern.compile("\\p{Ll}{2,}");

    /** A column: its heading, what it holds, and where it runs. */
    record Column(Cell head, Role role) {
        /** The name of the model that it is of, without the unit that its figures are in. */
        String model() {
            int comma = head.text().lastIndexOf(", ");
            return comma > 0 && UnitSpelling.isUnit(head.text().substring(comma + 2)) ? head.text().substring(0, comma) : head.text();
        }

        /**
         * What two cells on one line below its heading say: a label in two pieces, of which a mark of a footnote is none; of values the one
         * that stands right below it, for together they would say what nobody wrote.
         */
        Cell of(Cell one, Cell other) {
            if (role == Role.LABEL) {
                return other.text().matches("[\\d*†‡]{1,2}") ? one : one.with(other);
            }
            return Math.abs(one.middle() - head.middle()) <= Math.abs(other.middle() - head.middle()) ? one : other;
        }
    }

    private final List<Column> columns;

    private Columns(List<Column> columns) {
        this.columns = columns;
    }

    List<Column> all() {
        return columns;
    }

    List<Column> of(Role role) {
        return columns.stream().filter(column -> column.role == role).toList();
    }

    /** Whether each row is of a model; else each is of a property. */
    boolean byRows() {
        return !of(Role.PROPERTY).isEmpty() || of(Role.LABEL).isEmpty();
    }

    double left() {
        return columns.stream().mapToDouble(column -> column.head.left()).min().orElse(0);
    }

    double right() {
        return columns.stream().mapToDouble(column -> column.head.right()).max().orElse(0);
    }

    /**
     * Columns of models in two systems of units: "Dimension | in. | DF-26 | mm | in. | DF-32 | mm", the units below both halves of a name.
     */
    private static Optional<Columns> paired(List<Cell> cells) {
        boolean units = cells.size() > 3 && cells.size() % 3 == 1 && HeadWords.areLabels(cells.get(0));
        List<Column> columns = new ArrayList<>(List.of(new Column(cells.get(0), Role.LABEL)));
        for (int i = 1; units && i + 2 < cells.size(); i += 3) {
            Cell first = cells.get(i);
            Cell model = cells.get(i + 1);
            units = HeadWords.isUnit(first) && HeadWords.isUnit(cells.get(i + 2)) && !HeadWords.isUnit(model);
            columns.add(new Column(first.named(model.text() + ", " + first.text()), Role.MODEL));
            columns.add(new Column(cells.get(i + 2), Role.OTHER));
        }
        return units ? Optional.of(new Columns(columns)) : Optional.empty();
    }

    /** The columns below a line that heads a table of properties; empty when it heads none. */
    static Optional<Columns> heading(Line line, Labels labels) {
        // where headings stand above headings, the lower ones head the columns
        List<Cell> cells = line.cells().stream().filter(cell -> line.cells().stream().noneMatch(other -> other.y() > cell.low() + 1
            && Math.min(other.right(), cell.right()) > Math.max(other.left(), cell.left()))).toList();
        if (cells.size() > 3 && cells.get(0).text().length() > LONGEST && List.of(cells.get(0).text().split(" "))
            .stream().filter(word -> WORD.matcher(word).matches()).count() > 4) {
            // running text set beside the table
            return heading(new Line(cells.subList(1, cells.size()), line.y(), line.size()), labels);
        }
        if (cells.size() < 2 || cells.size() == 2 && Topics.isElsewhere(cells.get(1).text())) {
            // "Physical properties" beside "Packing" are headings of two things
            return Optional.empty();
        }
        Optional<Columns> paired = paired(cells);
        if (paired.isPresent()) {
            return paired;
        }
        List<Column> columns = new ArrayList<>();
        boolean method = cells.stream().anyMatch(cell -> HeadWords.METHOD.matcher(HeadWords.plain(cell)).matches());
        // "Standard | Title | Criterion | Result"
        boolean criterion = method && cells.stream().anyMatch(cell ->
            HeadWords.LABEL_BESIDE_METHOD.matcher(HeadWords.plain(cell)).matches());
        boolean label = cells.stream().anyMatch(cell -> HeadWords.LABEL.matcher(HeadWords.plain(cell)).matches() && !(criterion
            && isCriterion(cell)));
        boolean specified = cells.stream().filter(cell -> HeadWords.METHOD.matcher(HeadWords.plain(cell)).matches()).count() > 1;
        for (Cell cell : cells) {
            columns.add(new Column(cell, criterion && isCriterion(cell) ? Role.REQUIRED : HeadWords.role(HeadWords.plain(cell), label,
                method, specified)));
        }
        List<Column> results = columns.stream().filter(column -> column.role == Role.OTHER
            && HeadWords.RESULT.matcher(HeadWords.plain(column.head)).matches())
            .toList();
        if (results.size() == 1 && columns.stream().noneMatch(column -> column.role == Role.VALUE)) {
            // "Pass criterion | KT-20 result"
            columns.replaceAll(column -> column == results.get(0) ? new Column(column.head, Role.VALUE) : column);
        }
        if (!label && cells.size() > 2 && HeadWords.DIMENSION.matcher(HeadWords.plain(cells.get(0))).matches() && columns.stream().skip(1)
            .allMatch(column -> column.role == Role.OTHER && labels.read(column.head.text()).isEmpty() && !HeadWords.isUnit(column.head))) {
            // "Dimension | Ashlar pattern | Ledge pattern", "Data | Test | Duo | Mono"
            columns.set(0, new Column(cells.get(0), Role.LABEL));
            columns.replaceAll(column -> column.role == Role.OTHER && HeadWords.METHOD_BESIDE_LABEL.matcher(HeadWords.plain(column.head))
                .matches() ? new Column(column.head, Role.METHOD) : column);
            return Optional.of(new Columns(models(columns)));
        }
        if (!label && cells.size() > 2 && columns.get(0).role == Role.MODEL && columns.stream().skip(1).allMatch(column -> column.role
            == Role.OTHER && MODEL_NO.matcher(column.head.text()).matches() && labels.read(column.head.text()).isEmpty())) {
            // "Model no. | KX-10 | KX-20"
            columns.set(0, new Column(cells.get(0), Role.LABEL));
            return Optional.of(new Columns(models(columns)));
        }
        if (!label && columns.get(0).role == Role.LABEL && HeadWords.MODEL.matcher(HeadWords.plain(cells.get(0))).matches()
            && columns.stream().skip(1).allMatch(column -> column.role == Role.OTHER || column.role == Role.METHOD || isDescription(column))
            && columns.stream().anyMatch(column -> column.role == Role.OTHER && labels.read(column.head.text()).isPresent())) {
            // "Item | Material | Specification | Legs": items, and not what is tested
            columns.set(0, new Column(cells.get(0), Role.MODEL));
            return byRows(columns, labels);
        }
        if (!label && columns.get(0).role == Role.MODEL && columns.stream().anyMatch(column -> column.role == Role.LABEL)
            && columns.stream().anyMatch(column -> column.role == Role.OTHER && labels.read(column.head.text()).isPresent())) {
            // "Part no. | Description | Material | Standard": models, though what describes them could be the label of a test
            return byRows(columns, labels);
        }
        boolean named = columns.stream().anyMatch(column -> column.role == Role.LABEL);
        long roles = columns.stream().filter(column -> column.role != Role.OTHER && column.role != Role.MODEL).count();
        // "Item | Thickness | Wall studs, max." is of items
        if (!named && isOfLimits(columns) && columns.stream().skip(1).noneMatch(column -> column.role == Role.OTHER && labels.read(column
            .head.text()).isPresent())) {
            // "Requirement | Limit | Model A | Model B"
            columns.set(0, new Column(columns.get(0).head, Role.LABEL));
            columns.replaceAll(column -> column.role == Role.OTHER && HeadWords.ASKED.matcher(HeadWords.plain(column.head)).matches()
                ? new Column(column.head,
                Role.REQUIRED) : column);
            return Optional.of(new Columns(models(columns)));
        }
        if (!named && HeadWords.TEST.matcher(HeadWords.plain(cells.get(0))).matches()
            && columns.stream().anyMatch(column -> column.role
            == Role.VALUE)) {
            // "Test | Substrate | Result", "Test | Result"
            columns.set(0, new Column(cells.get(0), Role.LABEL));
            named = true;
        }
        if (!named && cells.size() == 3 && HeadWords.MARK.matcher(HeadWords.plain(cells.get(0))).matches() && columns.get(2).role
            == Role.VALUE && HeadWords.LABEL_BESIDE_METHOD.matcher(HeadWords.plain(cells.get(1))).matches()) {
            // "Mark | Description | As furnished": the letters of a drawing stand before the labels
            columns.set(0, new Column(cells.get(0), Role.OTHER));
            columns.set(1, new Column(cells.get(1), Role.LABEL));
            named = true;
        }
        if (!named && roles >= 2 && columns.stream().anyMatch(column -> column.role == Role.VALUE)) {
            // "Typical data | Value | Method": what stands furthest left names the properties
            Column first = columns.get(0);
            if (first.role == Role.OTHER || first.role == Role.MODEL) {
                columns.set(0, new Column(first.head, Role.LABEL));
                named = true;
            }
        }
        if (named && roles >= 1 && columns.stream().noneMatch(column -> column.head.text().length() > 45)) {
            return Optional.of(new Columns(models(columns)));
        }
        return byRows(columns, labels);
    }

    /** Whether the headings are of what is asked for, the limits to it, and what models or a product reach. */
    private static boolean isOfLimits(List<Column> columns) {
        String first = HeadWords.plain(columns.get(0).head);
        boolean asked = columns.get(0).role == Role.REQUIRED || HeadWords.LABEL_BESIDE_METHOD.matcher(first).matches();
        return asked && columns.size() > 2 && columns.stream().skip(1).anyMatch(column -> column.role == Role.REQUIRED || column.role
            == Role.OTHER && HeadWords.ASKED.matcher(HeadWords.plain(column.head)).matches())
            && columns.stream().skip(1).anyMatch(column -> column.role == Role.OTHER
                && !HeadWords.ASKED.matcher(HeadWords.plain(column.head)).matches());
    }

    private static boolean isDescription(Column column) {
        return DESCRIPTION.matcher(HeadWords.plain(column.head)).matches();
    }

    private static boolean isCriterion(Cell cell) {
        return HeadWords.plain(cell).equals("criterion");
    }

    /** Headings that are no words of tables name models; "minimum" beside no value is how the values are meant. */
    static List<Column> models(List<Column> columns) {
        if (columns.stream().anyMatch(column -> column.role == Role.VALUE
            && HeadWords.REACHED.matcher(HeadWords.plain(column.head)).matches())) {
            // "Minimum value | Typical value": what a roll must have, and what it has
            return models(columns.stream().map(column -> column.role == Role.VALUE
                && HeadWords.BOUND.matcher(HeadWords.plain(column.head)).matches()
                ? new Column(column.head, Role.REQUIRED) : column).toList(), true);
        }
        return models(columns, columns.stream().anyMatch(column -> column.role == Role.VALUE));
    }

    private static List<Column> models(List<Column> columns, boolean valued) {
        long conditions = columns.stream().filter(column -> column.role == Role.OTHER && HeadWords.CONDITION.matcher(HeadWords.plain(
            column.head)).matches()).count();
        if (!valued && conditions > 1 && columns.stream().filter(column -> column.role == Role.OTHER).count() == conditions) {
            return columns.stream().map(column -> column.role == Role.OTHER ? new Column(column.head, Role.VALUE) : column).toList();
        }
        List<Column> others = columns.stream().filter(column -> column.role == Role.OTHER).toList();
        // the only column beside labels and methods holds the values, whatever it is called, unless a designation stands above it
        boolean only = others.size() == 1 && columns.stream().noneMatch(column -> column.role == Role.MODEL)
            && (columns.stream().anyMatch(column -> column.role == Role.METHOD) ? HeadWords.ORDINARY : HeadWords.PLAIN_WORDS).matcher(
                others.get(0).head.text()).matches();
        List<Column> all = new ArrayList<>();
        for (Column column : columns) {
            all.add(!valued && column.role == Role.OTHER ? new Column(column.head, only ? Role.VALUE : Role.MODEL) : column);
        }
        return all;
    }

    private static Optional<Columns> byRows(List<Column> columns, Labels labels) {
        if (columns.stream().filter(column -> HeadWords.AMOUNT.matcher(column.head.text()).matches()).count() > 1) {
            // "SF-25 | self-furring | 2.5 | galvanized | 50" is a row, though some of its words could be names
            return Optional.empty();
        }
        if (columns.stream().anyMatch(column -> PATTERN.matcher(column.head.text()).matches()) && columns.stream().anyMatch(column -> YIELD
            .matcher(column.head.text()).find())) {
            // "Pattern | Joint | Area per bag": examples of what a bag is enough for
            return Optional.empty();
        }
        List<Column> all = new ArrayList<>();
        int named = 0;
        boolean models = columns.stream().anyMatch(column -> column.role == Role.MODEL);
        for (Column column : columns) {
            // beside models a standard heads the column of what it classifies by
            // a word that names a property beside a value alone may name the models themselves where it stands first: "Profile"
            boolean property = (models ? labels.classified(column.head.text(), List.of()).or(() -> column == columns.get(0) ? Optional
                .empty() : labels.nearest(column.head.text())) : labels.read(column.head.text())).isPresent();
            named += property ? 1 : 0;
            all.add(property ? new Column(column.head, Role.PROPERTY) : column.role == Role.MODEL ? column : new Column(column.head,
                Role.OTHER));
        }
        // the numbers to order by may stand last
        boolean model = all.stream().anyMatch(column -> column.role == Role.MODEL);
        Column first = all.get(0);
        boolean numbered = all.stream().filter(column -> column.role == Role.MODEL).anyMatch(column -> CODED.matcher(HeadWords.plain(
            column.head)).matches());
        boolean kind = HeadWords.KIND.matcher(HeadWords.plain(first.head)).matches();
        if ((!model || numbered && kind) && first.role == Role.OTHER) {
            // "Profile | Article no. | Material": a product's name comes before its number
            all.set(0, new Column(first.head, Role.MODEL));
        }
        if (first.role != Role.MODEL && (kind || GAUGE.matcher(HeadWords.plain(first.head)).matches())
            && all.stream().skip(1).anyMatch(column -> column.role == Role.PROPERTY && areOfOne(column, first, labels))) {
            // "Gauge | Nominal thickness", "Nominal size | Depth": by the one they are called, by the other they are measured
            all.set(0, new Column(first.head, Role.MODEL));
            model = true;
            named--;
        }
        model |= all.size() > 2 && kind;
        // "Part | Description | Carton" says in words what a part is
        boolean described = all.get(0).role == Role.MODEL && all.stream().anyMatch(column -> column.role == Role.OTHER && isDescription(
            column));
        return named >= 2 || named == 1 && model || described ? Optional.of(new Columns(all)) : Optional.empty();
    }

    /** The same columns above some rows: what is called a specification and holds amounts is what is asked for, and no method. */
    Columns above(List<Line> rows) {
        return new Columns(columns.stream().map(column -> column.role == Role.METHOD && rows.stream().flatMap(row -> row.cells().stream())
            .filter(cell -> of(cell).filter(own -> own == column).isPresent()).filter(cell ->
                HeadWords.LIMIT.matcher(cell.text()).matches())
            .count() > 1 ? new Column(column.head, Role.REQUIRED) : column).toList());
    }

    /**
     * The same columns, of which one headed "Code" or "Model" beside those of values names the model of each row: of several rows each, or
     * it would number them.
     *
     * @param names whether a cell may name a model
     */
    Columns withModels(List<Line> rows, Predicate<Cell> names) {
        return of(Role.VALUE).isEmpty() || byRows() ? this : new Columns(columns.stream().map(column -> {
            List<Cell> cells = column.role != Role.METHOD && column.role != Role.MODEL ? List.of() : rows.stream().flatMap(row -> row
                .cells().stream()).filter(cell -> of(cell).filter(own -> own == column).isPresent()).toList();
            long models = cells.stream().map(Cell::text).distinct().count();
            boolean model = HeadWords.MODEL.matcher(HeadWords.plain(column.head)).matches() && models > 1 && models < cells.size()
                && cells.stream().allMatch(cell -> MODEL_NO.matcher(cell.text()).matches() && names.test(cell));
            return model ? new Column(column.head, Role.MODEL) : column.role == Role.MODEL ? new Column(column.head, Role.OTHER) : column;
        }).toList());
    }

    /** The columns of properties; where two say the same in other words, that which has its very name: "Ground" beside "Return". */
    List<Column> nearest(Labels labels) {
        return of(Role.PROPERTY).stream().filter(column -> of(Role.PROPERTY).stream().noneMatch(other -> other != column
            && named(other, labels) > named(column, labels) && areOfOne(other, column, labels))).toList();
    }

    /** Whether two headings name the same. */
    private static boolean areOfOne(Column one, Column other, Labels labels) {
        return label(one, labels).map(Label::properties).equals(label(other, labels).map(Label::properties));
    }

    /** What a heading names, also by a name that holds beside a value alone. */
    static Optional<Label> label(Column column, Labels labels) {
        return labels.read(column.head.text()).or(() -> labels.nearest(column.head.text()));
    }

    private static int named(Column column, Labels labels) {
        String plain = " " + HeadWords.plain(column.head) + " ";
        Optional<Property> named = label(column, labels).map(label -> label.properties().get(0));
        // "Mils" above what steel is called by says more than its least thickness in inches
        boolean unit = named.flatMap(property -> property.type().unit()).filter(one -> UnitSpelling.isUnit(plain.strip(), one)).isPresent();
        return unit ? 2 : named.filter(property -> plain.contains(" " + Plain.of(property.label()) + " ") || plain.contains(" " + Plain.of(
            property.name()) + " ")).isPresent() ? 1 : 0;
    }

    /** Whether a column's heading says at what condition or by which part of a method its values were found: "wet cup", "28 days". */
    static boolean isOfCondition(Column column) {
        return column.role == Role.VALUE && HeadWords.CONDITION.matcher(HeadWords.plain(column.head)).matches();
    }

    /** The same columns, the first of them of names of models: "Type" above "DSF-175", "DSF-250". */
    Columns named() {
        List<Column> all = new ArrayList<>(columns);
        all.set(0, new Column(all.get(0).head, Role.MODEL));
        return new Columns(all);
    }

    static Columns of(List<Column> columns) {
        return new Columns(columns);
    }

    /** The same columns with others beside them, such as the models on a second line of headings. */
    Columns with(List<Column> more) {
        List<Column> all = new ArrayList<>(columns.stream().filter(column -> column.role == Role.LABEL || column.role == Role.METHOD
            || column.role == Role.UNIT).toList());
        all.addAll(more);
        all.sort(Comparator.comparingDouble(column -> column.head.left()));
        return new Columns(all);
    }

    /** The column that a cell stands in; empty for one beside the table. */
    Optional<Column> of(Cell cell) {
        Column best = null;
        double nearest = Double.POSITIVE_INFINITY;
        for (Column column : columns) {
            double away = away(cell, column.head);
            if (away < nearest) {
                nearest = away;
                best = column;
            }
        }
        double reach = 60 + 6 * cell.size();
        return nearest > reach ? Optional.empty() : Optional.ofNullable(best);
    }

    /** How far a cell's start, middle or end is from that of a heading, whichever is nearest. */
    static double edges(Cell cell, Cell head) {
        return Math.min(Math.abs(cell.left() - head.left()), Math.min(Math.abs(cell.right() - head.right()),
            Math.abs(cell.middle() - head.middle())));
    }

    /** How far a cell is from a heading: by its start, its middle or its end, for columns may be set in any of these ways. */
    private static double away(Cell cell, Cell head) {
        double edges = edges(cell, head);
        double overlap = Math.min(cell.right(), head.right()) - Math.max(cell.left(), head.left());
        return overlap > 0 ? edges * 0.3 : edges;
    }
}
