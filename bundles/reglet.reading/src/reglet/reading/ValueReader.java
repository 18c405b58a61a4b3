package reglet.reading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Box;
import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.SheetReading.Found;
import reglet.model.SheetReading.Unread;
import reglet.model.SheetValue;
import reglet.model.Synonym;
import reglet.reading.Citations.Citation;
import reglet.reading.Columns.Column;
import reglet.reading.Columns.Role;
import reglet.reading.Labels.Label;
import reglet.reading.Layout.Line;
import reglet.reading.Reading.Read;

/** Finds the values of one component's properties on the pages of a sheet. */
final class ValueReader {
    private static final double IN_TABLE = 0.98;
    private static final double IN_LIST = 0.95;
    private static final double BESIDE = 0.93;
    private static final double IN_WORDS = 0.8;
    private static final double HIDDEN = 0.6;
    private static final int LONGEST_MODEL = 45;

    private final Pack pack;
    private final Component component;
    private final Citations citations;
    private final Labels labels;
    private final Reading reading;
    private final List<Found> found = new ArrayList<>();
    private final List<Unread> unread = new ArrayList<>();
    /** The title above the table that a value stands in. */
    private final Map<Found, String> titles = new IdentityHashMap<>();
    private String title = "";
    private Layout layout;
    private Columns table;
    private double tableEnd;
    private List<Citation> group = List.of();

    ValueReader(Pack pack, Component component, Citations citations) {
        this.pack = pack;
        this.component = component;
        this.citations = citations;
        this.labels = new Labels(pack, component, citations);
        this.reading = new Reading(pack, component);
    }

    /**
     * What was found. Where several tables state the same property, each under a title of its own, the titles name the models.
     */
    List<Found> found() {
        Set<String> several = new HashSet<>();
        for (Found one : found) {
            String title = titles.getOrDefault(one, "");
            boolean elsewhere = found.stream().anyMatch(other -> other.value().property().equals(one.value().property())
                && !titles.getOrDefault(other, "").isEmpty() && !titles.get(other).equals(title));
            if (one.model().isEmpty() && !title.isEmpty() && elsewhere) {
                several.add(title);
            }
        }
        return found.stream().map(one -> several.contains(titles.getOrDefault(one, "")) && one.model().isEmpty()
            ? new Found(one.value(), one.label(), titles.get(one), one.confidence(), one.doubt()) : one).toList();
    }

    List<Unread> unread() {
        return unread;
    }

    void read(Layout next) {
        layout = next;
        table = null;
        group = List.of();
        List<Line> rows = Rows.of(layout);
        for (int i = 0; i < rows.size(); i++) {
            Line row = rows.get(i);
            if (table != null && row.y() - tableEnd > Math.max(45, 4.5 * row.size())) {
                table = null;
                group = List.of();
            }
            Optional<Columns> heading = Columns.heading(row, labels);
            if (heading.isPresent()) {
                table = heading.get();
                title = i > 0 ? title(rows.get(i - 1), row) : "";
                tableEnd = row.y();
                group = List.of();
                if (onlyNames(table) && i + 1 < rows.size() && areModels(rows.get(i + 1))) {
                    i++;
                    table = table.with(rows.get(i).cells().stream().map(cell -> new Column(cell, Role.MODEL)).toList());
                    tableEnd = rows.get(i).y();
                }
                continue;
            }
            if (table == null || !tabled(row)) {
                free(row);
            }
            designations(row);
        }
    }

    /** The title of the table whose heading a row is: a short line right above it. */
    private static String title(Line above, Line heading) {
        boolean near = heading.y() - above.y() < 4 * above.size();
        boolean title = above.cells().size() == 1 && above.text().length() <= LONGEST_MODEL && !above.text().matches("(?s).*[.:;,]\\s*");
        return near && title ? above.text().replaceAll("\\s+", " ").strip() : "";
    }

    /** A heading that names properties and methods and leaves the rest to the line below. */
    private static boolean onlyNames(Columns table) {
        return !table.byRows() && table.of(Role.VALUE).isEmpty() && table.of(Role.MODEL).size() <= 1;
    }

    private boolean areModels(Line line) {
        return line.cells().size() > 1 && line.cells().stream().allMatch(cell -> cell.text().length() <= LONGEST_MODEL
            && !cell.text().matches("(?s)[≥≤<>±]?\\s*[-−]?\\.?\\d+(?:\\.\\d+)?(?:\\s.*|%.*)?") && labels.read(cell.text()).isEmpty());
    }

    /** A row below a heading; false when nothing in it stands in the table. */
    private boolean tabled(Line row) {
        Map<Column, Cell> cells = new LinkedHashMap<>();
        for (Cell cell : row.cells()) {
            table.of(cell).ifPresent(column -> cells.merge(column, cell, Cell::with));
        }
        if (cells.isEmpty()) {
            return false;
        }
        boolean used = table.byRows() ? byRows(row, cells) : byColumns(row, cells);
        if (used) {
            tableEnd = row.y();
        }
        return used;
    }

    private boolean byRows(Line row, Map<Column, Cell> cells) {
        String model = table.of(Role.MODEL).stream().map(cells::get).filter(cell -> cell != null).map(Cell::text).findFirst().orElse("");
        boolean any = false;
        for (Column column : table.of(Role.PROPERTY)) {
            Cell value = cells.get(column);
            Optional<Label> label = labels.read(column.head().text());
            if (value != null && label.isPresent()) {
                List<Citation> methods = citations.in(value.text(), column.head().text() + " " + value.text());
                any |= value(label.get(), column.head().text(), value, "", methods.isEmpty() ? label.get().methods() : methods,
                    model.length() <= LONGEST_MODEL ? model : "", Optional.empty(), IN_TABLE);
            }
        }
        return any;
    }

    private boolean byColumns(Line row, Map<Column, Cell> cells) {
        Column labelColumn = table.of(Role.LABEL).get(0);
        Cell labelCell = cells.get(labelColumn);
        if (labelCell == null) {
            return false;
        }
        if (cells.size() == 1 && row.cells().size() == 1 && !citations.in(labelCell.text()).isEmpty()) {
            group = citations.in(labelCell.text());
            return true;
        }
        Optional<Label> label = labels.read(labelCell.text());
        if (label.isEmpty()) {
            if (cells.size() == 1 && !labelCell.text().contains(": ")) {
                group = citations.in(labelCell.text());
                tableEnd = row.y();
                return !group.isEmpty();
            }
            return cells.size() > 1 && !labelCell.text().contains(":");
        }
        if (cells.size() == 1) {
            return false;
        }
        String unit = table.of(Role.UNIT).stream().map(cells::get).filter(cell -> cell != null).map(Cell::text).findFirst().orElse("");
        List<Column> valued = table.of(Role.VALUE).isEmpty() ? table.of(Role.MODEL) : table.of(Role.VALUE);
        List<Column> models = table.of(Role.VALUE).isEmpty() ? table.of(Role.MODEL) : List.of();
        boolean any = false;
        List<Column> stated = valued.stream().filter(cells::containsKey).toList();
        boolean shared = models.size() > 1 && stated.size() == 1 && spans(cells.get(stated.get(0)), models);
        if (models.size() > 1 && stated.size() == 1 && !shared && models.size() - 1 > 0 && !ownsColumn(cells.get(stated.get(0)),
            stated.get(0), models)) {
            unread(cells.get(stated.get(0)), labelCell, "which of the models it is of can't be told");
            return true;
        }
        for (Column column : stated) {
            Cell value = cells.get(column);
            List<Citation> methods = methods(row, cells, labelCell, value, label.get());
            String model = models.size() > 1 && !shared || models.size() == 1 ? column.head().text() : "";
            String hint = !unit.isEmpty() ? unit : headUnit(column.head().text());
            boolean read = value(label.get(), labelCell.text(), value, hint, methods, model.length() <= LONGEST_MODEL ? model : "",
                sense(column), IN_TABLE);
            any |= read;
            if (read && models.isEmpty()) {
                // further columns say the same in another system of units
                break;
            }
        }
        return any || !stated.isEmpty();
    }

    private static boolean spans(Cell cell, List<Column> models) {
        double left = models.get(0).head().left();
        double right = models.get(models.size() - 1).head().right();
        long over = models.stream().filter(column -> column.head().left() < cell.right() && column.head().right() > cell.left()).count();
        return over > 1 || Math.abs(cell.middle() - (left + right) / 2) < 6 && over == 0;
    }

    private static boolean ownsColumn(Cell cell, Column column, List<Column> models) {
        return Math.abs(cell.left() - column.head().left()) < 8 || Math.abs(cell.middle() - column.head().middle()) < 8
            || Math.abs(cell.right() - column.head().right()) < 8;
    }

    private static Optional<Compare> sense(Column column) {
        String plain = Labels.plain(column.head().text());
        boolean least = plain.contains("minimum");
        boolean most = plain.contains("maximum");
        return least == most ? Optional.empty() : Optional.of(least ? Compare.AT_LEAST : Compare.AT_MOST);
    }

    private static String headUnit(String head) {
        Matcher inside = Pattern.compile("[(\\[]([^()\\[\\]]+)[)\\]]").matcher(head);
        return inside.find() && UnitSpelling.isUnit(inside.group(1)) ? inside.group(1) : "";
    }

    /** The standards that a row's value is shown by: of its own cells, of a cell that spans several rows, of the heading of its group. */
    private List<Citation> methods(Line row, Map<Column, Cell> cells, Cell labelCell, Cell value, Label label) {
        String beside = row.text();
        List<Citation> all = new ArrayList<>();
        List<Column> columns = table.of(Role.METHOD);
        for (Column column : columns) {
            Cell cell = cells.get(column);
            if (cell != null) {
                all.addAll(citations.in(cell.text(), beside));
                if (all.isEmpty() && cell.text().matches(".*\\p{L}{2}.*") && !Reading.isMissing(cell.text())) {
                    all.add(new Citation(0, 0, cell.text().strip(), ""));
                }
            } else {
                all.addAll(spanning(column, row));
            }
        }
        all.addAll(citations.in(value.text(), beside));
        if (all.isEmpty()) {
            all.addAll(citations.in(labelCell.text(), beside));
        }
        return all.isEmpty() ? group : all;
    }

    /** A method whose cell is ruled round several rows, this one among them. */
    private List<Citation> spanning(Column column, Line row) {
        double[] box = layout.between(column.head().middle(), row.y());
        if (box.length == 0 || box[1] - box[0] > 12 * row.size()) {
            return List.of();
        }
        for (Line line : layout.lines()) {
            for (Cell cell : line.cells()) {
                if (cell.y() > box[0] && cell.y() < box[1] && cell.left() < column.head().right() + 20 && cell.right() > column.head()
                    .left() - 20
                    && Math.abs(line.y() - row.y()) > 0.5) {
                    List<Citation> found = citations.in(cell.text());
                    if (!found.isEmpty()) {
                        return found;
                    }
                }
            }
        }
        return List.of();
    }

    /** A row outside tables: "label: value", a label and a value beside it, or both in one run of words. */
    private void free(Line row) {
        List<Cell> cells = row.cells();
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            int colon = cell.text().indexOf(": ") >= 0 ? cell.text().indexOf(": ") : cell.text().endsWith(":") ? cell.text()
                .length() - 1 : -1;
            if (colon > 0 && labels.read(cell.text()).isEmpty() && colon + 1 < cell.text().length()) {
                Optional<Label> label = labels.read(cell.text().substring(0, colon));
                if (label.isPresent()) {
                    Cell value = cell.part(colon + 1, cell.text().length());
                    Cell rest = value;
                    for (int j = i + 1; j < cells.size(); j++) {
                        rest = rest.with(cells.get(j));
                    }
                    value(label.get(), cell.text().substring(0, colon), value, "", cited(rest, cell.text(), label.get()), "",
                        Optional.empty(), IN_LIST);
                    continue;
                }
            }
            Optional<Label> label = labels.read(cell.text());
            if (label.isPresent() && i + 1 < cells.size()) {
                beside(label.get(), cells, i);
            } else if (label.isEmpty()) {
                inWords(cell);
            }
        }
    }

    private List<Citation> cited(Cell value, String beside, Label label) {
        List<Citation> own = citations.in(value.text(), beside);
        return own.isEmpty() ? label.methods() : own;
    }

    private void beside(Label label, List<Cell> cells, int index) {
        Cell labelCell = cells.get(index);
        List<Cell> values = new ArrayList<>();
        List<Citation> methods = new ArrayList<>();
        Read first = null;
        for (int i = index + 1; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            if (labels.read(cell.text()).isPresent() && values.isEmpty() == false) {
                break;
            }
            List<Citation> cited = citations.in(cell.text(), labelCell.text() + " " + cell.text());
            methods.addAll(cited);
            Optional<Read> read = label.properties().stream().map(property -> reading.read(property, bare(cell, cited), label.unit()))
                .flatMap(Optional::stream).findFirst();
            if (read.isPresent()) {
                if (first != null && !first.value().text().equals(read.get().value().text()) && !near(first, read.get())) {
                    unread(cell, labelCell, "several values stand beside it, and no heading tells which is which");
                    return;
                }
                first = first == null ? read.get() : first;
                values.add(cell);
            } else if (cited.isEmpty() && values.isEmpty()) {
                if (!Reading.isMissing(cell.text())) {
                    unread(cell, labelCell, "it is no value that can be understood");
                }
                return;
            }
        }
        if (!values.isEmpty()) {
            value(label, labelCell.text(), values.get(0), "", methods.isEmpty() ? label.methods() : methods, "", Optional.empty(), BESIDE);
        }
    }

    private static boolean near(Read one, Read other) {
        return one.value() instanceof reglet.model.Quantity a && other.value() instanceof reglet.model.Quantity b
            && Math.abs(a.si() - b.si()) <= 0.06 * Math.max(Math.abs(a.si()), Math.abs(b.si()));
    }

    /** "Drainage efficiency 95%" in one run: an amount with its unit that fills all that follows a label. */
    private void inWords(Cell cell) {
        String[] words = cell.text().split("\\s+");
        if (words.length < 2 || words.length > 12) {
            return;
        }
        for (int end = cell.text().lastIndexOf(' '); end > 0; end = cell.text().lastIndexOf(' ', end - 1)) {
            Optional<Label> label = labels.read(cell.text().substring(0, end));
            if (label.isPresent()) {
                Cell value = cell.part(end + 1, cell.text().length());
                Label amounts = new Label(label.get().properties().stream().filter(property -> property.type().kind() == Kind.QUANTITY
                    && property.type().unit().orElseThrow() != reglet.model.Unit.ONE || property.type().kind() == Kind.RANGE).toList(),
                    label.get().quality(), label.get().unit(), label.get().sense(), label.get().methods());
                if (!amounts.properties().isEmpty() && value.text().matches("(?s)[^\\p{L}]*\\d.*|(?i:min|max|at least|at most|not).*"
                    + "\\d.*")) {
                    quietly(amounts, cell.text().substring(0, end), value, cited(value, cell.text(), label.get()));
                    return;
                }
            }
        }
    }

    private void quietly(Label label, String written, Cell value, List<Citation> methods) {
        int before = unread.size();
        value(label, written, value, "", methods, "", Optional.empty(), IN_WORDS);
        while (unread.size() > before) {
            unread.remove(unread.size() - 1);
        }
    }

    /** "ASTM C920, Type S, Grade NS, Class 50": names and words of the properties that a standard classifies by. */
    private void designations(Line row) {
        for (Cell cell : row.cells()) {
            List<Citation> cited = citations.in(row.text());
            if (cited.isEmpty()) {
                continue;
            }
            Map<Integer, Property> starts = new java.util.TreeMap<>();
            Map<Integer, Integer> ends = new LinkedHashMap<>();
            for (Property property : component.properties()) {
                boolean listed = property.type().kind() == Kind.WORD || property.type().kind() == Kind.GRADE || property.type()
                    .kind() == Kind.SET;
                if (listed && cited.stream().anyMatch(citation -> citation.name().equals(property.method().standard()))) {
                    Matcher name = Pattern.compile("(?i)\\b(?:" + Pattern.quote(property.label().replaceAll("s$", "")) + ")s?\\b\\s*:?")
                        .matcher(cell.text());
                    while (name.find()) {
                        starts.put(name.start(), property);
                        ends.put(name.start(), name.end());
                    }
                }
            }
            if (starts.size() < 2) {
                continue;
            }
            List<Integer> order = List.copyOf(starts.keySet());
            for (int i = 0; i < order.size(); i++) {
                int to = i + 1 < order.size() ? order.get(i + 1) : cell.text().length();
                String words = cell.text().substring(ends.get(order.get(i)), to);
                boolean cut = i + 1 == order.size() && words.strip().endsWith(",");
                Property property = starts.get(order.get(i));
                if (!cut) {
                    int end = ends.get(order.get(i)) + words.replaceAll("[\\s,;.]+$", "").length();
                    String own = Citations.without(cell.text(), List.of()).substring(ends.get(order.get(i)), end)
                        .replaceAll("(?:,|;|\\band\\b)\\s*$", "");
                    String standard = property.method().standard();
                    if (reading.read(property, own, "").isPresent()) {
                        value(new Label(List.of(property), 1, "", Optional.empty(), List.of()), property.label(), cell.part(order.get(i),
                            end).named(own), "",
                            cited.stream().filter(citation -> citation.name().equals(standard)).toList(), "", Optional.empty(), IN_LIST);
                    }
                }
            }
        }
    }

    private static String bare(Cell cell, List<Citation> cited) {
        return Citations.without(cell.text(), cited).replaceAll("[(\\[]\\s*[)\\]]", " ").replaceAll("(?i)\\b(?:per|to|by|tested to)\\s*$",
            "")
            .replaceAll("[\\s,;:–-]+$", "").replaceAll("\\s+", " ").strip();
    }

    /** Takes down a value, or that it can't be understood. */
    private boolean value(Label label, String written, Cell cell, String hint, List<Citation> methods, String model,
        Optional<Compare> sense,
            double share) {
        String text = bare(cell, citations.in(cell.text()));
        if (text.isEmpty() || Reading.isMissing(text)) {
            return false;
        }
        for (Property property : label.properties()) {
            Optional<Read> read = reading.read(property, text, label.unit().isEmpty() ? hint : label.unit());
            if (read.isPresent()) {
                add(property, label, written, cell, read.get(), methods, model, sense, share);
                return true;
            }
        }
        unread.add(new Unread(layout.page(), Optional.of(layout.shown(cell)), written.strip() + ": " + cell.text(),
            "it is no value of this property that can be understood"));
        return false;
    }

    private void add(Property property, Label label, String written, Cell cell, Read read, List<Citation> methods, String model,
            Optional<Compare> sense, double share) {
        Optional<Citation> method = method(property, methods);
        boolean amount = property.type().kind() == Kind.QUANTITY;
        Optional<Compare> compare = read.compare().or(() -> amount ? label.sense().or(() -> sense) : Optional.empty());
        SheetValue value = new SheetValue(component.id() + "." + property.name(), read.value(), compare,
            method.map(Citation::name).orElse(""), method.map(Citation::edition).orElse(""), cell.text().replaceAll("\\s+", " ").strip(),
                layout.page(),
            Optional.of(layout.shown(cell)), false);
        double confidence = Math.round(100 * share * label.quality() * read.quality() * (cell.hidden() ? HIDDEN : 1)) / 100.0;
        Found one = new Found(value, written.replaceAll("\\s+", " ").strip(), model.replaceAll("\\s+", " ").strip(), confidence,
            cell.hidden() ? "Read by text recognition from a picture." : read.doubt());
        found.add(one);
        if (table != null && !title.isEmpty()) {
            titles.put(one, title);
        }
    }

    /** Of several standards the one that the pack asks for, else the first. */
    private static Optional<Citation> method(Property property, List<Citation> methods) {
        String asked = property.method().standard();
        return methods.stream().filter(citation -> !asked.isEmpty() && citation.name().startsWith(asked)).findFirst()
            .or(() -> methods.stream().findFirst());
    }

    private void unread(Cell cell, Cell label, String why) {
        unread.add(new Unread(layout.page(), Optional.of(layout.shown(cell)), label.text().replaceAll("\\s+", " ") + ": " + cell.text(),
            why));
    }

    /** What a sentence asks of properties: a name, a sense and an amount in one clause. */
    List<SheetValue> limits(String sentence, int page, Box box) {
        List<SheetValue> limits = new ArrayList<>();
        for (String clause : sentence.split(";|,|\\band\\b(?!\\s+\\d)")) {
            Matcher amount = Pattern.compile("(?i)(at least|not less than|no less than|minimum(?: of)?|not more than|no more than|at"
                + " most|maximum(?: of)?|within|"
                + "not exceed(?:ing)?)\\s+(" + reglet.model.Numbers.pattern() + "\\s*[^\\s,.;]+(?:\\s?/\\s?\\S+)?)").matcher(clause);
            if (!amount.find()) {
                continue;
            }
            boolean least = amount.group(1).toLowerCase(java.util.Locale.ROOT).matches(".*least|.*less than|minimum.*");
            String plain = " " + Labels.plain(clause) + " ";
            Property best = null;
            String name = "";
            for (Property property : component.properties()) {
                if (property.type().kind() == Kind.QUANTITY) {
                    for (String label : names(property)) {
                        String wanted = Labels.plain(label);
                        if (plain.contains(" " + wanted + " ") && wanted.length() > name.length()
                            && reading.read(property, amount.group(2), "").isPresent()) {
                            best = property;
                            name = wanted;
                        }
                    }
                }
            }
            if (best != null) {
                Read read = reading.read(best, amount.group(2), "").orElseThrow();
                limits.add(new SheetValue(component.id() + "." + best.name(), read.value(),
                    Optional.of(least ? Compare.AT_LEAST : Compare.AT_MOST), "", "", clause.strip(), page, Optional.of(box), false));
            }
        }
        return limits;
    }

    private List<String> names(Property property) {
        List<String> names = new ArrayList<>(List.of(property.label()));
        pack.synonyms().stream().filter(synonym -> synonym.property().equals(component.id() + "." + property.name())).map(Synonym::labels)
            .forEach(names::addAll);
        return names;
    }
}
