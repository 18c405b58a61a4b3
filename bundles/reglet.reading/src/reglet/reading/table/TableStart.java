package reglet.reading.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Property;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
import reglet.reading.table.Columns.Column;
import reglet.reading.table.Columns.Role;
import reglet.reading.table.Heads.Head;
import reglet.reading.words.Citations;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;
import reglet.reading.words.UnitSpelling;

/** Tells where a table begins: which lines head it together, what its title is, and what its first rows say of its columns. */
final class TableStart {
    private static final int LONGEST_MODEL = 45;
    private static final int LONGEST_HEADLINE = 100;
    /** Rows of which one cell can be the middle. */
    private static final int LEAST_SPANNED = 3;
    /** Rows below a heading by which it is judged whether a chapter's hangs beside it. */
    private static final int HUNG = 3;
    /** "3-1/2 in." above "all codes". */
    private static final Pattern ALL = Pattern.compile("(?i)\\W*(?:for )?all(?: \\p{L}+)?\\W*");
    /** What a property counts against units. */
    private static final int PROPERTY = 100;
    /** Of the size of the letters: how far the lines of one heading are apart at most. */
    private static final double UPPER = 1.7;
    private static final Pattern WORDS = Pattern.compile("\\p{Lu}[\\p{L} -]*");
    /** Of the size of the letters: how far a row of a table is from the one above it at most. */
    private static final double GOES_ON = 4;
    /** "DSF-175", "CB 78W". */
    private static final Pattern DESIGNATION = Pattern.compile("\\p{Lu}[\\p{Lu}\\d]*[- ]?\\d[\\p{Lu}\\d./-]*");
    /** "Plain V", "Duo 10 V". */
    private static final Pattern NAME = Pattern.compile("\\p{Lu}\\p{L}+ .*");
    private static final Pattern LENGTH = Pattern.compile("[\\d./ -]*\\d\\s*(?:in\\.?|inch(?:es)?|mm|\")\\s*"
        + "(?:\\([\\d./ -]+\\s*(?:mm|in\\.?)\\))?");

    /** An item of a list, or a label with its value: no title, unless it is numbered as a table. */
    private static final Pattern ITEM = Pattern.compile("(?s)\\s*[•·▪■●◦‣]\\s.*|(?!\\s*(?i:table|part)\\b).*:\\s.*");

    private static final Pattern DOTTED = Pattern.compile("\\s*[•·▪■●◦‣]\\s");
    private static final Pattern UNIT = Pattern.compile("(?:\\((?:all |in )*|, | in )(\\p{Ll}{2,11}\\.?)\\)?\\s*$");
    private static final Pattern LETTER = Pattern.compile("\\p{Lu}|\\d{1,2}[.)]?");

    private final Labels labels;

    TableStart(Labels labels) {
        this.labels = labels;
    }

    /**
     * The columns below headings of several lines; empty where one of these lines alone, or those from the next on, say as much.
     */
    Optional<Columns> composed(List<Line> rows, int index) {
        Line row = rows.get(index);
        Optional<Head> head = Heads.of(rows, index);
        Optional<Columns> composed = several(rows, index);
        // a line that heads a table alone is no part of other headings
        boolean parted = head.filter(one -> rows.subList(index + 1, one.first()).stream().anyMatch(line -> Columns.heading(line, labels)
            .filter(columns -> !columns.byRows()).isPresent())).isPresent();
        boolean heads = composed.isPresent() && !parted && Columns.heading(row, labels).map(Columns::byRows).orElse(true)
            && !isLower(row, rows.get(index + 1)) && says(composed) > says(Columns.heading(row, labels))
            && says(composed) > says(Columns.heading(rows.get(index + 1), labels)) && says(composed) > says(several(rows, index + 1));
        return heads ? composed : Optional.empty();
    }

    private Optional<Columns> several(List<Line> rows, int index) {
        return Heads.of(rows, index).flatMap(head -> Columns.heading(head.line(), labels)).filter(Columns::byRows);
    }

    /** How much headings say: the properties first, each of them once, then the units of these. */
    private int says(Optional<Columns> columns) {
        Map<List<Property>, Integer> says = new HashMap<>();
        columns.map(found -> found.of(Role.PROPERTY)).orElse(List.of()).forEach(column -> {
            Optional<Label> label = Columns.label(column, labels);
            boolean unit = label.map(Label::unit).filter(one -> !one.isEmpty()).isPresent();
            says.merge(label.map(Label::properties).orElse(List.of()), unit ? PROPERTY + 1 : PROPERTY, Math::max);
        });
        return says.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** The columns of a heading together with those that stand below some of its own on the next line. */
    Optional<Columns> withLower(List<Line> rows, int index) {
        Line row = rows.get(index);
        if (index + 1 >= rows.size() || !isLower(row, rows.get(index + 1))) {
            return Optional.empty();
        }
        List<Cell> both = new ArrayList<>(row.cells());
        both.addAll(rows.get(index + 1).cells());
        both.sort(Comparator.comparingDouble(Cell::left));
        return Columns.heading(new Line(both, row.y(), row.size()), labels);
    }

    /**
     * A heading together with the line below it, where several models are called the same without that: "Drain" and "Drain" above "6 T" and
     * "10 T", with "Property" above "unit" beside them.
     */
    Optional<Line> completed(Columns columns, List<Line> rows, int index) {
        List<String> models = columns.of(Role.MODEL).stream().map(column -> column.head().text()).toList();
        Line row = rows.get(index);
        boolean same = !columns.byRows() && models.size() > 1 && models.stream().distinct().count() == 1;
        if (!same || index + 1 >= rows.size() || rows.get(index + 1).y() - row.y() > UPPER * row.size() || rows.get(index + 1).cells()
            .size() < models.size()) {
            return Optional.empty();
        }
        List<Cell> cells = new ArrayList<>(row.cells());
        for (Cell cell : rows.get(index + 1).cells()) {
            Optional<Cell> above = row.cells().stream().filter(head -> cell.left() < head.right()
                && cell.right() > head.left()).findFirst();
            above.ifPresentOrElse(head -> cells.set(cells.indexOf(head), head.with(cell)), () -> cells.add(cell));
        }
        cells.sort(Comparator.comparingDouble(Cell::left));
        return Optional.of(new Line(List.copyOf(cells), rows.get(index + 1).y(), row.size()));
    }

    /** The same columns, the models with the words that stand right above each of them: "Drain" above "S20", "Drain" above "X10". */
    Columns withUpper(Columns columns, List<Line> rows, int index) {
        List<Column> models = columns.of(Role.MODEL);
        Line row = rows.get(index);
        Line above = index == 0 || columns.byRows() ? row : rows.get(index - 1);
        boolean upper = models.size() > 1 && above.cells().size() == models.size() && row.y() > above.y() && row.y() - above.y()
            < UPPER * row.size();
        for (int i = 0; upper && i < models.size(); i++) {
            Cell word = above.cells().get(i);
            Cell head = models.get(i).head();
            upper = WORDS.matcher(word.text()).matches() && labels.read(word.text()).isEmpty() && word.left() < head.right()
                && word.right() > head.left() && word.text().length() + head.text().length() < LONGEST_MODEL;
        }
        return !upper ? columns : Columns.of(columns.all().stream().map(column -> !models.contains(column) ? column
            : new Column(above.cells().get(models.indexOf(column)).with(column.head()), column.role())).toList());
    }

    /** Whether a row holds headings below some of those above it: words only, within their reach, and not below each of them. */
    private boolean isLower(Line row, Line next) {
        return next.y() - row.y() < 3 * row.size() && next.cells().size() > 1 && next.left() > row.cells().get(0).right()
            && next.right() < row.right() && next.cells().stream().allMatch(cell -> labels.read(cell.text()).isPresent());
    }

    /**
     * Whether the first column holds names of models, though its heading could be that of a property: "Type" above "DSF-175", or above
     * "Duo 10 V", which is no value of it.
     *
     * @param values whether some words are a value of a property
     */
    boolean areNamed(Columns columns, List<Line> rows, double at, BiPredicate<Property, String> values) {
        Column first = columns.all().get(0);
        if (first.role() != Role.PROPERTY || !columns.of(Role.MODEL).isEmpty() || columns.of(Role.PROPERTY).size() < 2) {
            return false;
        }
        List<Property> properties = Columns.label(first, labels).orElseThrow().properties();
        List<String> names = rows.stream().filter(row -> row.y() > at + 1 && row.y() < at + 60 && row.cells().size() > 1).limit(2)
            .map(row -> row.cells().get(0).text()).toList();
        boolean designated = !names.isEmpty() && DESIGNATION.matcher(names.get(0)).matches();
        boolean distinct = names.size() > 1 && !names.get(0).equals(names.get(1)) && names.stream().noneMatch(name -> properties.stream()
            .anyMatch(property -> values.test(property, name)));
        boolean amounts = properties.stream().anyMatch(property -> property.type().unit().isPresent());
        return distinct && names.stream().allMatch(name -> NAME.matcher(name).matches()) || !amounts && (designated || distinct && names
            .stream().allMatch(name -> name.matches(".*\\d.*")));
    }

    /**
     * The same rows, a heading of the chapter that hangs in the margin taken off a table's heading: "Products | RX-40 | RX-SX" above rows
     * whose labels stand further in.
     */
    static List<Line> withoutMargin(List<Line> rows, int index) {
        Line row = rows.get(index);
        Cell margin = row.cells().get(0);
        List<Line> below = rows.subList(index + 1, Math.min(rows.size(), index + 1 + HUNG));
        boolean hangs = row.cells().size() > 2 && below.size() == HUNG && below.stream().allMatch(line -> line.y() > row.y() && line.left()
            > margin.right() + 2 && line.cells().size() > 2 && line.cells().size() - row.cells().size() < 1 && line.cells().size() - row
                .cells().size() > -2 && Math.abs(line.cells().get(line.cells().size() - 1).left() - row.cells().get(row.cells().size() - 1)
                    .left()) < 2 * line.size());
        if (!hangs) {
            return rows;
        }
        List<Line> all = new ArrayList<>(rows);
        all.set(index, new Line(row.cells().subList(1, row.cells().size()), row.y(), row.size()));
        return all;
    }

    /** Whether each row is of a product so thick: "Thickness | R-value" above "1 in. | 6.5" and "2 in. | 13". */
    static boolean isKeyed(Columns table, List<Line> rows) {
        Column first = table.all().get(0);
        return table.byRows() && table.of(Role.MODEL).isEmpty() && first.role() == Role.PROPERTY && table.of(Role.PROPERTY).size() > 1
            && rows.size() == 2 && rows.stream().allMatch(row -> row.cells().size() >= table.all().size()
                && LENGTH.matcher(row.cells().get(0).text()).matches()) && !rows.get(0).cells().get(0).text().equals(rows.get(1).cells()
                    .get(0).text());
    }

    /**
     * The cells that stand alone in their column at the middle of three rows and more, each of which has cells in all other columns: what
     * is set once for all of them.
     *
     * @param below the rows below the heading
     */
    static Set<Cell> spanning(Columns table, List<Line> below) {
        List<Line> rows = new ArrayList<>();
        for (Line row : below) {
            boolean near = rows.isEmpty() || row.y() - rows.get(rows.size() - 1).y() < GOES_ON * row.size();
            if (!near || row.cells().size() < table.all().size() - 1) {
                break;
            }
            rows.add(row);
        }
        Set<Cell> spanning = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Column column : rows.size() < LEAST_SPANNED ? List.<Column>of() : table.all()) {
            List<Cell> cells = rows.stream().flatMap(row -> row.cells().stream()).filter(cell -> table.of(cell).filter(one -> one == column)
                .isPresent()).toList();
            double middle = (rows.get(0).y() + rows.get(rows.size() - 1).y()) / 2;
            double pitch = rows.get(1).y() - rows.get(0).y();
            boolean all = cells.size() == 2 && ALL.matcher(cells.get(1).text()).matches();
            if ((cells.size() == 1 || all) && Math.abs(cells.get(0).y() - middle) < pitch) {
                spanning.add(cells.get(0));
            }
        }
        return spanning;
    }

    /** Whether a row is another table's, without a heading: no model is called by a standard, though a row may give each of them one. */
    static boolean isOfAnother(Columns table, Line row, Citations citations) {
        long models = table.byRows() || !table.of(Role.METHOD).isEmpty() ? 0 : table.of(Role.MODEL).size();
        long standards = models < 2 ? 0 : row.cells().stream().skip(1).filter(cell -> Citations.isAlone(cell.text(), citations.in(cell
            .text()))).count();
        long citing = row.cells().stream().skip(1).filter(cell -> !citations.in(cell.text()).isEmpty()).count();
        return standards > 0 && citing < Math.max(2, models - 1);
    }

    /** Whether a row stands in the columns of a table of results, a standard in that of methods: "Grade | NS | ASTM C920". */
    static boolean isResult(Columns table, Line row, Citations citations) {
        List<Column> stood = row.cells().stream().map(table::of).flatMap(Optional::stream).distinct().toList();
        return !table.byRows() && stood.size() == row.cells().size() && row.cells().stream().anyMatch(cell -> table.of(cell)
            .filter(column -> column.role() == Role.METHOD).isPresent() && Citations.isAlone(cell.text(), citations.in(cell.text())));
    }

    /** Whether a row is a line of text across several columns, each of which says something else: no value of any. */
    static boolean isAcross(Columns table, Line row) {
        return table.byRows() && row.cells().size() == 1 && table.all().stream().filter(column -> column.head().left() < row.right()
            && column.head().right() > row.left()).count() > 1;
    }

    /** "Section | Area | Ix" below "Section | Web depth | Thickness", "Screw | Pullout": another table of the same models has begun. */
    static boolean isHeadedAnew(Columns table, Line row) {
        Column first = table.all().get(0);
        return table.byRows() && first.role() == Role.MODEL && row.cells().size() > 2 && row.y() > first.head().low() + 1
            && (HeadWords.plain(row.cells().get(0)).equals(HeadWords.plain(first.head())) || HeadWords.KIND.matcher(HeadWords.plain(row
                .cells().get(0))).matches());
    }

    /** Whether items of two lists stand beside each other: no row of the table above them. */
    static boolean areItems(Line row) {
        return row.cells().size() > 1 && row.cells().stream().allMatch(cell -> DOTTED.matcher(cell.text()).lookingAt());
    }

    /** "Vertical leg | 3-1/2 in." below rows of models: a list of what holds for all of them has begun. */
    boolean isListed(Columns table, Line row) {
        String first = row.cells().get(0).text();
        return table.byRows() && table.all().size() > 3 && row.cells().size() == 2 && !isDesignation(first)
            && labels.read(first).isPresent();
    }

    /**
     * Whether a row that no word makes a heading goes on with an open table of models: "Body | Galvanized, 24 ga | Stainless, Type 316".
     */
    static boolean goesOn(Columns table, Line row, double end) {
        if (table == null || table.byRows() || table.of(Role.MODEL).size() < 2 || row.y() - end >= GOES_ON * row.size()) {
            return false;
        }
        List<Column> stood = row.cells().stream().map(table::of).flatMap(Optional::stream).distinct().toList();
        // a row may have no method, and no unit
        boolean whole = stood.size() == row.cells().size() && table.all().stream().filter(column -> !stood.contains(column)).allMatch(
            column -> column.role() == Role.METHOD || column.role() == Role.UNIT);
        return whole && !row.cells().stream().skip(1).allMatch(cell -> isDesignation(cell.text()));
    }

    /** Whether the letter of a drawing stands before a label: "E | End dams, height | 2 in.". */
    boolean isLettered(Line row) {
        return LETTER.matcher(row.cells().get(0).text()).matches() && row.cells().stream().skip(1).anyMatch(cell -> labels.read(cell
            .text()).isPresent());
    }

    /** "DSF-175". */
    static boolean isDesignation(String text) {
        return DESIGNATION.matcher(text).matches();
    }

    static boolean isLength(String text) {
        return LENGTH.matcher(text).matches();
    }

    /** The title of the table whose heading a row is: a short line right above it. */
    static Optional<Cell> title(Line above, Line heading) {
        return headline(above, heading).filter(cell -> cell.text().length() <= LONGEST_MODEL);
    }

    /** What stands alone right above a heading and is no sentence: "Sizes and R-values (mean temperature 75°F, ASTM C518)". */
    static Optional<Cell> headline(Line above, Line heading) {
        boolean near = heading.y() - above.y() < 4 * above.size();
        boolean title = above.cells().size() == 1 && above.text().length() <= LONGEST_HEADLINE && !above.text().matches("(?s).*[.:;,]\\s*")
            && !ITEM.matcher(above.text()).matches();
        return near && title ? Optional.of(above.cells().get(0)) : Optional.empty();
    }

    /** The unit that a title states for what stands below: "Table 1 – Dimensions (inches)", "Sizes in mm"; "". */
    static String unit(String title) {
        Matcher stated = UNIT.matcher(title);
        return stated.find() && UnitSpelling.isUnit(stated.group(1)) ? stated.group(1) : "";
    }

    /** A heading that names properties and methods and leaves the rest to the line below. */
    static boolean onlyNames(Columns table) {
        return !table.byRows() && table.of(Role.VALUE).isEmpty() && table.of(Role.MODEL).size() <= 1;
    }

    /** Whether a line below a heading holds names of models alone, and none that stands where the rows have their labels. */
    boolean areModels(Line line, Columns heading) {
        boolean labelled = heading.of(Role.LABEL).stream().anyMatch(column -> line.cells().size() >= heading.all().size()
            && line.left() < column.head().right());
        return !labelled && line.cells().size() > 1 && line.cells().stream().allMatch(cell -> cell.text().length() <= LONGEST_MODEL
            && !cell.text().matches("(?s)[≥≤<>±]?\\s*[-−]?\\.?\\d+(?:\\.\\d+)?(?:\\s.*|%.*)?") && labels.read(cell.text()).isEmpty());
    }

    /** The name of a model; "" for what is too long to be one. */
    static String shortEnough(String model) {
        return model.length() <= LONGEST_MODEL ? model : "";
    }
}
