package reglet.model;

import java.util.List;

/**
 * A table that rules look up. In expressions it is a function named by its id with the given columns as arguments:
 * {@code lath_support(lath.kind, lath.weight)}. A miss is a gap, never a guess.
 *
 * @param id    function name
 * @param given columns looked up by, in order
 * @param gives the column returned
 * @param rows  the rows in the order written; the first that matches counts
 */
public record Table(String id, String title, List<Column> given, Column gives, List<Row> rows, List<Basis> basis, Place at) {

    public Table {
        given = List.copyOf(given);
        rows = List.copyOf(rows);
        basis = List.copyOf(basis);
    }

    /** How a given value matches a row's: the same; not more than the row's; not less than the row's. */
    public enum Match { EXACTLY, UP_TO, FROM }

    public record Column(String name, PropertyType type, Match match) {
    }

    /** Values of the given columns in order, then the value given. A given value that is empty matches anything. */
    public record Row(List<java.util.Optional<Value>> given, Value gives, Place at) {
        public Row {
            given = List.copyOf(given);
        }
    }
}
