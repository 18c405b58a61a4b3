package reglet.reading.table;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Compare;
import reglet.model.Numbers;
import reglet.reading.page.Cell;
import reglet.reading.table.Columns.Column;
import reglet.reading.table.Columns.Role;
import reglet.reading.words.Plain;
import reglet.reading.words.UnitSpelling;

/** How the figures in a row of a table are meant, by what stands beside and above them. */
final class Meant {
    /** A limit's unit behind its figure. */
    private static final Pattern LIMIT = Pattern.compile("(?i)[^\\d]*" + Numbers.pattern()
        + "\\s*([^\\d\\s]\\S*?)(?:\\s*,?\\s*(?:min|max)\\S*)?\\s*");
    /** "cfm/ft² @ 75 Pa" */
    private static final Pattern AT = Pattern.compile("(?<=\\S)\\s*(?:@|,?\\s+at\\s|,\\s).*");
    private static final Pattern INSIDE = Pattern.compile("[(\\[]([^()\\[\\]]+)[)\\]]");

    private final Columns table;
    private final Map<Column, Cell> cells;

    Meant(Columns table, Map<Column, Cell> cells) {
        this.table = table;
        this.cells = cells;
    }

    /** The unit that the row, the heading of a column or the row's limit states for a bare figure in that column; "" for none. */
    String unit(Column column) {
        String own = table.of(Role.UNIT).stream().map(cells::get).filter(cell -> cell != null)
            .map(cell -> UnitSpelling.firstOf(cell.text()).isPresent() ? cell.text()
                : AT.matcher(cell.text()).replaceFirst("")).findFirst().orElse("");
        String head = own.isEmpty() ? headUnit(column.head().text()) : own;
        return head.isEmpty() ? limitUnit() : head;
    }

    /** The sense that the heading of a column or a cell of the row states. */
    Optional<Compare> sense(Column column) {
        return headed(column).or(this::sign);
    }

    private static Optional<Compare> headed(Column column) {
        String plain = Plain.of(column.head().text());
        boolean least = plain.contains("minimum");
        boolean most = plain.contains("maximum");
        return least == most ? Optional.empty() : Optional.of(least ? Compare.AT_LEAST : Compare.AT_MOST);
    }

    /** The unit of a row's limit, in which bare figures beside it are meant: "≥ 2100 psi | 2,480". */
    private String limitUnit() {
        for (Column column : table.of(Role.REQUIRED)) {
            Matcher limit = LIMIT.matcher(cells.containsKey(column) ? cells.get(column).text() : "");
            if (limit.matches() && UnitSpelling.isUnit(limit.group(1))) {
                return limit.group(1);
            }
        }
        return "";
    }

    /** The sense that a cell of its own states: "190 | ≥". */
    private Optional<Compare> sign() {
        boolean least = cells.values().stream().anyMatch(cell -> cell.text().strip().matches("(?i)≥|>=|min\\.?|minimum"));
        boolean most = cells.values().stream().anyMatch(cell -> cell.text().strip().matches("(?i)≤|<=|max\\.?|maximum"));
        return least == most ? Optional.empty() : Optional.of(least ? Compare.AT_LEAST : Compare.AT_MOST);
    }

    private static String headUnit(String head) {
        Optional<String> two = UnitSpelling.atEnd(head);
        if (two.isPresent()) {
            return two.get();
        }
        Matcher inside = INSIDE.matcher(head);
        if (inside.find() && UnitSpelling.isUnit(inside.group(1))) {
            return inside.group(1);
        }
        String last = head.substring(head.lastIndexOf(',') + 1).strip();
        return last.length() < head.length() && UnitSpelling.isUnit(last) ? last : "";
    }
}
