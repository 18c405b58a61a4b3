package reglet.reading.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Evidence;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.table.Columns.Column;
import reglet.reading.table.Columns.Role;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Reading;

/**
 * The standards that the rows of a table name.
 *
 * @param group those of the heading of the rows
 * @param above those of a row above, where the methods stand first and this row has none
 */
record RowMethods(Columns table, Layout layout, Citations citations, List<Citation> group, List<Citation> above) {
    /** "D6525" in a column of methods. */
    private static final Pattern BARE = Pattern.compile("\\s*([A-G])\\s?-?(\\d{2,4})M?(?:-\\d{2}\\w?)?(?:\\s+[A-D])?(?:\\s*[,(].*)?\\s*");

    private static final Pattern MEMBER = Pattern.compile("\\.\\d+");

    /** A designation with its number, no word for how it was done ("Caliper") or who did it, and not where it is told ("Section 3"). */
    private static final Pattern NAMED = Pattern.compile("(?s)(?!\\W*(?i:section|table|note|page|figure|fig|see|item|par)\\b)"
        + "(?!\\d)(?=.*\\d).*[\\p{Lu}\\d].*");

    /** The standards that a row's value is shown by: of its own cells, of a cell that spans several rows, of the heading of its group. */
    List<Citation> of(Line row, Map<Column, Cell> cells, Cell labelCell, Cell value, Label label) {
        String beside = row.text();
        List<Citation> all = new ArrayList<>();
        List<Column> columns = table.of(Role.METHOD);
        for (Column column : columns) {
            Cell cell = cells.get(column);
            if (cell != null) {
                List<Citation> parts = citations.parts(cell.text());
                all.addAll(parts.size() > 1 ? parts : citations.in(cell.text(), beside));
                Matcher bare = BARE.matcher(cell.text());
                if (all.isEmpty() && bare.matches()) {
                    all.add(new Citation(0, cell.text().length(), "ASTM " + bare.group(1) + bare.group(2), ""));
                }
                if (all.isEmpty() && NAMED.matcher(cell.text()).matches() && !Reading.isMissing(cell.text())) {
                    all.add(new Citation(0, 0, cell.text().strip(), ""));
                }
            } else {
                all.addAll(spanning(column, row));
            }
        }
        if (all.isEmpty()) {
            // "REQUIREMENT (C920)" above the column of what is asked for
            label.properties().forEach(property -> table.all().forEach(column -> all.addAll(Citations.own(property,
                citations.in(column.head()
                .text())))));
        }
        all.replaceAll(one -> member(one, value.text()));
        all.addAll(citations.in(value.text(), beside));
        if (all.isEmpty()) {
            all.addAll(citations.in(labelCell.text(), beside));
        }
        if (all.isEmpty() && columns.isEmpty() && label.properties().get(0).method().isNone() && label.properties().get(0)
            .evidence() == Evidence.TEST_REPORT) {
            // what any test may show is shown by the standard that asks something in this row
            table.of(Role.REQUIRED).stream().filter(column -> cells.containsKey(column) && !Reading.isMissing(cells.get(column).text()))
                .forEach(column -> all.addAll(citations.in(column.head().text())));
        }
        return !all.isEmpty() ? all : above.isEmpty() ? group : ofAbove(label);
    }

    /** An empty place below a method may say "the same" or "none": the same where it is what the pack asks for. */
    private List<Citation> ofAbove(Label label) {
        return label.properties().stream().flatMap(property -> Citations.own(property, above).stream()).distinct().toList();
    }

    /** "ANSI A118 | A118.4 TE": of a family of standards the value names the one. */
    private static Citation member(Citation family, String value) {
        String number = family.name().substring(family.name().lastIndexOf(' ') + 1);
        int at = number.matches("\\p{Lu}\\d+") ? value.indexOf(number + ".") : -1;
        Matcher member = MEMBER.matcher(at < 0 ? "" : value.substring(at + number.length()));
        return member.lookingAt() ? new Citation(family.from(), family.to(), family.name() + member.group(), "") : family;
    }

    /** Of the rows from one on, on whose label's first line a standard stands alone: "ASTM C955" above "Base thickness, min.". */
    static List<Citation> group(Cell label, Citations citations, List<Citation> before) {
        List<Citation> cited = label.low() - label.y() < 0.8 * label.size() ? List.of() : citations.in(label.text());
        return cited.isEmpty() || cited.get(0).from() > 0 ? before : cited.subList(0, 1);
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
}
