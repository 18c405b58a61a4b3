package reglet.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.reading.Labels.Label;
import reglet.reading.Layout.Line;

/** What the columns below a heading hold. */
final class Columns {
    private static final Pattern LABEL = Pattern.compile("(?:(?:physical|typical|technical|performance|material|test|mechanical|key|"
        + "product) )*"
        + "(?:property|characteristic|attribute|parameter|feature|criterion|performance property)(?: and (?:test )?(?:method|standard))?"
        + "|test and (?:method|standard)");
    private static final Pattern LABEL_BESIDE_METHOD = Pattern.compile("(?:technical |product |physical |typical |test )?data|test|"
        + "test description|description|title|item|typical property|performance|requirement name");
    /** Names the rows where names of models stand beside it. */
    private static final Pattern DIMENSION = Pattern.compile("(?:nominal )?(?:dimension|size|measure|measurement|data)(?: (?:and|or) "
        + "(?:weight|size))?");
    private static final Pattern METHOD = Pattern.compile("(?:(?:astm|test|testing|reference|ref) )*(?:method|standard|procedure|"
        + "astm|specification|reference|norm|"
        + "standard test method|test method)|method of test|tested to|per astm|test astm|astm test");
    private static final Pattern METHOD_BESIDE_LABEL = Pattern.compile("test|test no|standard specification|spec|code");
    private static final Pattern VALUE = Pattern.compile("(?:(?:typical|nominal|average|avg|test|tested|minimum|maximum|measured|"
        + "actual|certified|published|"
        + "product|property|mean|our|declared) )*(?:value|result|figure|performance|rating|reading|data|average|typical|typical value"
        + "|typ|as supplied|supplied|as submitted|submitted|as furnished|furnished|as "
        + "tested|as measured|(?:average|mean) of (?:five|three|ten|\\d+)(?: unit| specimen)?)"
        + "(?: (?:minimum|maximum|avg|average|typical))*");
    private static final Pattern REQUIRED = Pattern.compile("(?:(?:astm|code|project|specified|minimum|maximum|standard|spec|"
        + "acceptance|ac\\d*) )*"
        + "(?:requirement|required|specified|limit|criteria|criterion|acceptance|target|allowable|min req"
        + "|pass criteria)(?: value)?|as specified|spec|"
            + "minimum|maximum|"
        + "required value|condition of acceptance|asked for");
    /** "A118.15 spec" above a column of limits. */
    private static final Pattern ASKED = Pattern.compile(".+ (?:spec|requirement|limit|minimum|maximum)");
    /** Asks for something where another column names the methods. */
    private static final Pattern SPECIFIED = Pattern.compile("(?:product |project |astm )?(?:specification|spec|standard)(?: "
        + "(?:limit|value))?");
    private static final Pattern UNIT = Pattern.compile("unit|unit of measure|uom|measure|dimension unit");
    private static final Pattern SYSTEM = Pattern.compile("(?:(?:typical|nominal) )?(?:metric|si|english|imperial|us|u s|u s "
        + "customary|u s unit|inch pound|inch|customary|us customary)"
        + "(?: (?:unit|value))?");
    /** "Value, English" and "Value, Metric" are one value in two systems of units. */
    private static final Pattern VALUE_IN = Pattern.compile("(.+?) (?:in )?(?:metric|si|english|imperial|us|u s|us customary|inch pound)"
        + "(?: unit)?|(?:metric|si|english|imperial|us|u s|us customary|inch pound) (.+)");
    private static final Pattern MODEL = Pattern.compile("model|item|item no|item number|part|part no|part number|product|product "
        + "code|product no|code|"
        + "catalog no|cat no|catalog number|catalogue no|designation|sku|series|style|name|product name|version|model no|model number|"
        + "ref|type no");

    /** "Requirement per ASTM C1670". */
    private static final Pattern CITED = Pattern.compile("(?<=\\S)\\s+(?:(?:per|to|of|by|under|in)\\s+)?(?:ASTM|ANSI|AAMA|ISO|EN"
        + "|AC)\\s?-?[A-Z]?"
        + "\\s?\\d[\\d.]*\\S*$|^(?:ASTM|ANSI|AAMA|ISO|EN|AC)\\s?-?[A-Z]?\\s?\\d[\\d.]*\\s+(?=\\p{L})");

    private static final Pattern AMOUNT = Pattern.compile("(?s)[≥≤<>±]?\\s*[-−]?\\.?\\d+(?:[.,]\\d+)?(?:\\s.*|[%\"].*)?");

    /** What tells results of one model apart; anything looser could be the name of a model. */
    private static final Pattern CONDITION = Pattern.compile("(?:at |after )?\\d+ (?:day|hour|week|cycle)|(?:dry|wet) cup"
        + "|(?:desiccant|water) method|(?:procedure|method|proc) [a-d]|initial|aged|unaged|as received|after (?:aging|weathering|exposure)");
    /** A heading of one or two common words: no name, and no designation. */
    private static final Pattern ORDINARY = Pattern.compile("\\p{L}\\p{Ll}{2,}(?: \\p{Ll}{2,})?|\\p{Lu}{4,}");

    private static final Pattern LIMIT = Pattern.compile("(?is)(?:[≥≤<>±]=?|min(?:imum|\\.)?|max(?:imum|\\.)?|at (?:least|most))\\s*"
        + "\\.?\\d.*|\\.?\\d.*(?:min|max)\\.?(?:imum)?");

    enum Role { LABEL, VALUE, METHOD, REQUIRED, UNIT, MODEL, PROPERTY, OTHER }

    /** A column: its heading, what it holds, and where it runs. */
    record Column(Cell head, Role role) {
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

    boolean byRows() {
        return !of(Role.PROPERTY).isEmpty();
    }

    double left() {
        return columns.stream().mapToDouble(column -> column.head.left()).min().orElse(0);
    }

    double right() {
        return columns.stream().mapToDouble(column -> column.head.right()).max().orElse(0);
    }

    /** The columns below a line that heads a table of properties; empty when it heads none. */
    static Optional<Columns> heading(Line line, Labels labels) {
        // where headings stand above headings, the lower ones head the columns
        List<Cell> cells = line.cells().stream().filter(cell -> line.cells().stream().noneMatch(other -> other.y() > cell.low() + 1
            && Math.min(other.right(), cell.right()) > Math.max(other.left(), cell.left()))).toList();
        if (cells.size() < 2) {
            return Optional.empty();
        }
        List<Column> columns = new ArrayList<>();
        boolean method = cells.stream().anyMatch(cell -> METHOD.matcher(plain(cell)).matches());
        // "Standard | Title | Criterion | Result"
        boolean criterion = method && cells.stream().anyMatch(cell -> LABEL_BESIDE_METHOD.matcher(plain(cell)).matches());
        boolean label = cells.stream().anyMatch(cell -> LABEL.matcher(plain(cell)).matches() && !(criterion && isCriterion(cell)));
        boolean specified = cells.stream().filter(cell -> METHOD.matcher(plain(cell)).matches()).count() > 1;
        for (Cell cell : cells) {
            columns.add(new Column(cell, criterion && isCriterion(cell) ? Role.REQUIRED : role(plain(cell), label, method, specified)));
        }
        if (!label && cells.size() > 2 && DIMENSION.matcher(plain(cells.get(0))).matches() && columns.stream().skip(1)
            .allMatch(column -> column.role == Role.OTHER && labels.read(column.head.text()).isEmpty())) {
            // "Dimension | Ashlar pattern | Ledge pattern"
            columns.set(0, new Column(cells.get(0), Role.LABEL));
            return Optional.of(new Columns(models(columns)));
        }
        boolean named = columns.stream().anyMatch(column -> column.role == Role.LABEL);
        long roles = columns.stream().filter(column -> column.role != Role.OTHER && column.role != Role.MODEL).count();
        if (!named && isOfLimits(columns)) {
            // "Requirement | Limit | Model A | Model B"
            columns.set(0, new Column(columns.get(0).head, Role.LABEL));
            columns.replaceAll(column -> column.role == Role.OTHER && ASKED.matcher(plain(column.head)).matches() ? new Column(column.head,
                Role.REQUIRED) : column);
            return Optional.of(new Columns(models(columns)));
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

    /** Columns of models above rows whose labels have no heading: "| RN-1 | RN-2" above "Length | 1 in | 2 in". */
    static Optional<Columns> unnamed(Line line, Line next, Labels labels) {
        List<Cell> cells = next.cells();
        boolean heads = line.cells().size() >= 2 && cells.size() == line.cells().size() + 1 && cells.get(0).right() < line.left()
            && next.y() - line.y() < 4 * line.size() && labels.read(cells.get(0).text()).isPresent()
            && line.cells().stream().allMatch(cell -> cell.text().length() <= 45 && labels.read(cell.text()).isEmpty()
                && !AMOUNT.matcher(cell.text()).matches());
        if (!heads) {
            return Optional.empty();
        }
        List<Column> columns = new ArrayList<>(List.of(new Column(cells.get(0).named(""), Role.LABEL)));
        for (Cell cell : line.cells()) {
            Role role = role(plain(cell), true, true, false);
            columns.add(new Column(cell, role == Role.OTHER || role == Role.LABEL ? Role.MODEL : role));
        }
        return Optional.of(new Columns(models(columns)));
    }

    /** Whether the headings are of what is asked for, the limits to it, and what models or a product reach. */
    private static boolean isOfLimits(List<Column> columns) {
        String first = plain(columns.get(0).head);
        boolean asked = columns.get(0).role == Role.REQUIRED || LABEL_BESIDE_METHOD.matcher(first).matches();
        return asked && columns.size() > 2 && columns.stream().skip(1).anyMatch(column -> column.role == Role.REQUIRED || column.role
            == Role.OTHER && ASKED.matcher(plain(column.head)).matches())
            && columns.stream().skip(1).anyMatch(column -> column.role == Role.OTHER && !ASKED.matcher(plain(column.head)).matches());
    }

    private static boolean isCriterion(Cell cell) {
        return plain(cell).equals("criterion");
    }

    private static Role role(String plain, boolean label, boolean method, boolean specified) {
        if (specified && SPECIFIED.matcher(plain).matches()) {
            return Role.REQUIRED;
        }
        if (LABEL.matcher(plain).matches() || method && !label && LABEL_BESIDE_METHOD.matcher(plain).matches()) {
            return Role.LABEL;
        }
        if (METHOD.matcher(plain).matches() || label && METHOD_BESIDE_LABEL.matcher(plain).matches()) {
            return Role.METHOD;
        }
        if (REQUIRED.matcher(plain).matches()) {
            return Role.REQUIRED;
        }
        if (VALUE.matcher(plain).matches() || SYSTEM.matcher(plain).matches() || isValueIn(plain)) {
            return Role.VALUE;
        }
        if (UNIT.matcher(plain).matches()) {
            return Role.UNIT;
        }
        return MODEL.matcher(plain).matches() ? Role.MODEL : Role.OTHER;
    }

    private static boolean isValueIn(String plain) {
        Matcher system = VALUE_IN.matcher(plain);
        return system.matches() && VALUE.matcher(system.group(1) == null ? system.group(2) : system.group(1)).matches();
    }

    private static String plain(Cell cell) {
        // of a heading in two languages the first counts
        return Labels.plain(CITED.matcher(cell.text().replaceAll("[(\\[].*?[)\\]]", " ").replaceAll(" / .*", "")).replaceFirst(""));
    }

    /** Headings that are no words of tables name models; "minimum" beside no value is how the values are meant. */
    private static List<Column> models(List<Column> columns) {
        boolean valued = columns.stream().anyMatch(column -> column.role == Role.VALUE);
        long conditions = columns.stream().filter(column -> column.role == Role.OTHER && CONDITION.matcher(plain(
            column.head)).matches()).count();
        if (!valued && conditions > 1 && columns.stream().filter(column -> column.role == Role.OTHER).count() == conditions) {
            return columns.stream().map(column -> column.role == Role.OTHER ? new Column(column.head, Role.VALUE) : column).toList();
        }
        List<Column> others = columns.stream().filter(column -> column.role == Role.OTHER).toList();
        // the only column beside labels and methods holds the values, whatever it is called, unless a designation stands above it
        boolean only = others.size() == 1 && columns.stream().noneMatch(column -> column.role == Role.MODEL)
            && columns.stream().anyMatch(column -> column.role == Role.METHOD) && ORDINARY.matcher(others.get(0).head.text()).matches();
        List<Column> all = new ArrayList<>();
        for (Column column : columns) {
            all.add(!valued && column.role == Role.OTHER ? new Column(column.head, only ? Role.VALUE : Role.MODEL) : column);
        }
        return all;
    }

    private static Optional<Columns> byRows(List<Column> columns, Labels labels) {
        List<Column> all = new ArrayList<>();
        int named = 0;
        for (Column column : columns) {
            boolean property = labels.read(column.head.text()).isPresent();
            named += property ? 1 : 0;
            all.add(property ? new Column(column.head, Role.PROPERTY) : column.role == Role.MODEL ? column : new Column(column.head,
                Role.OTHER));
        }
        boolean model = all.get(0).role == Role.MODEL;
        Column first = all.get(0);
        if (!model && first.role == Role.OTHER) {
            all.set(0, new Column(first.head, Role.MODEL));
        }
        return named >= 2 || named == 1 && model ? Optional.of(new Columns(all)) : Optional.empty();
    }

    /** The same columns above some rows: what is called a specification and holds amounts is what is asked for, and no method. */
    Columns above(List<Line> rows) {
        return new Columns(columns.stream().map(column -> column.role == Role.METHOD && rows.stream().flatMap(row -> row.cells().stream())
            .filter(cell -> of(cell).filter(own -> own == column).isPresent()).filter(cell -> LIMIT.matcher(cell.text()).matches())
            .count() > 1 ? new Column(column.head, Role.REQUIRED) : column).toList());
    }

    /** The columns of properties; where two say the same in other words, that which has its very name: "Ground" beside "Return". */
    List<Column> nearest(Labels labels) {
        return of(Role.PROPERTY).stream().filter(column -> of(Role.PROPERTY).stream().noneMatch(other -> other != column
            && named(other, labels) > named(column, labels) && labels.read(other.head.text()).map(Label::properties)
            .equals(labels.read(column.head.text()).map(Label::properties)))).toList();
    }

    private static int named(Column column, Labels labels) {
        String plain = " " + plain(column.head) + " ";
        return labels.read(column.head.text()).map(label -> label.properties().get(0)).filter(property -> plain.contains(" "
            + Labels.plain(property.label()) + " ") || plain.contains(" " + Labels.plain(property.name()) + " ")).isPresent() ? 1 : 0;
    }

    /** Whether a column's heading says at what condition or by which part of a method its values were found: "wet cup", "28 days". */
    static boolean isOfCondition(Column column) {
        return column.role == Role.VALUE && CONDITION.matcher(plain(column.head)).matches();
    }

    /** The same columns, the first of them of names of models: "Type" above "DSF-175", "DSF-250". */
    Columns named() {
        List<Column> all = new ArrayList<>(columns);
        all.set(0, new Column(all.get(0).head, Role.MODEL));
        return new Columns(all);
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

    /** How far a cell is from a heading: by its start, its middle or its end, for columns may be set in any of these ways. */
    private static double away(Cell cell, Cell head) {
        double edges = Math.min(Math.abs(cell.left() - head.left()), Math.min(Math.abs(cell.right() - head.right()),
            Math.abs(cell.middle() - head.middle())));
        double overlap = Math.min(cell.right(), head.right()) - Math.max(cell.left(), head.left());
        return overlap > 0 ? edges * 0.3 : edges;
    }
}
