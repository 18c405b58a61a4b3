package reglet.reading.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
import reglet.reading.table.Columns.Column;
import reglet.reading.table.Columns.Role;
import reglet.reading.words.Citations;
import reglet.reading.words.Labels;

/**
 * Tells what the columns of a table hold by what stands in them, where no word of its heading does: one of labels, one of standards, the
 * others of values.
 */
final class ByContent {
    private static final int JUDGED = 8;
    private static final int LONGEST = 45;
    private static final double NEAR = 4;
    private static final Pattern WORD = Pattern.compile("\\p{L}\\p{Ll}+(?: \\p{L}\\p{Ll}+)*");

    private ByContent() {
    }

    /** The columns below a row of three headings or more; empty where what stands below doesn't tell them. */
    static Optional<Columns> of(List<Line> rows, int index, Labels labels, Citations citations) {
        Line heading = rows.get(index);
        int size = heading.cells().size();
        boolean heads = size > 2 && heading.cells().stream().allMatch(cell -> cell.text().length() <= LONGEST
            && !HeadWords.AMOUNT.matcher(cell.text()).matches() && labels.read(cell.text()).isEmpty() && citations.in(cell.text())
                .isEmpty());
        if (!heads) {
            return Optional.empty();
        }
        List<Line> below = new ArrayList<>();
        double end = heading.y();
        for (int i = index + 1; i < rows.size() && below.size() < JUDGED && rows.get(i).y() - end < NEAR * heading.size(); i++) {
            end = rows.get(i).y();
            if (rows.get(i).cells().size() == size && inOrder(heading, rows.get(i))) {
                below.add(rows.get(i));
            }
        }
        int named = -1;
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            Cell head = heading.cells().get(i);
            int column = i;
            List<String> texts = below.stream().map(row -> row.cells().get(column).text()).toList();
            long names = texts.stream().filter(text -> labels.read(text).isPresent()).count();
            long cited = texts.stream().filter(text -> Citations.isAlone(text, citations.in(text))).count();
            Role role = HeadWords.role(HeadWords.plain(head), true, true, false);
            if (names > 1 && named < 0 && i < 2) {
                named = i;
                columns.add(new Column(head, Role.LABEL));
            } else if (names > 1) {
                return Optional.empty();
            } else if (cited > 1 && 2 * cited >= texts.size()) {
                columns.add(new Column(head, Role.METHOD));
            } else {
                columns.add(new Column(head, role == Role.LABEL || role == Role.METHOD || role == Role.MODEL ? Role.OTHER : role));
            }
        }
        boolean valued = columns.stream().anyMatch(column -> column.role() == Role.VALUE);
        List<Column> others = columns.stream().filter(column -> column.role() == Role.OTHER).toList();
        boolean one = !valued && others.size() == 1 && WORD.matcher(others.get(0).head().text()).matches();
        return named < 0 || others.isEmpty() && !valued ? Optional.empty() : Optional.of(Columns.of(columns.stream().map(column ->
            column.role() != Role.OTHER || valued ? column : new Column(column.head(), one ? Role.VALUE : Role.MODEL)).toList()));
    }

    /** Whether the cells of a row stand one below each of a heading's. */
    private static boolean inOrder(Line heading, Line row) {
        for (int i = 0; i + 1 < row.cells().size(); i++) {
            if (row.cells().get(i).left() > heading.cells().get(i + 1).right() || row.cells().get(i + 1).right() < heading.cells().get(i)
                .left()) {
                return false;
            }
        }
        return true;
    }
}
