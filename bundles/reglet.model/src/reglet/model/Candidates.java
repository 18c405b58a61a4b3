package reglet.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;

/**
 * Several products for the same place, side by side.
 *
 * @param products ids of the products, in the order asked
 * @param lines    in the order of walls and requirements
 */
public record Candidates(List<String> products, List<Line> lines) {

    public Candidates {
        products = List.copyOf(products);
        lines = List.copyOf(lines);
    }

    /**
     * What each product shows of one property on one wall type. Products may come nearest to different accepted options, so each row
     * has a requirement of its own.
     *
     * @param rows by product id; a product that has nothing to show there is absent
     */
    public record Line(String wall, String property, Map<String, Row> rows) {
        public Line {
            rows = new LinkedHashMap<>(rows);
        }
    }

    /** How many requirements a product meets, and how many rows it has. */
    public int count(String product, Result result) {
        return (int) lines.stream().map(line -> line.rows.get(product)).filter(row -> row != null && row.result() == result).count();
    }

    /** Whether a product meets all that is asked of it, and is asked something. */
    public boolean complies(String product) {
        List<Row> own = lines.stream().map(line -> line.rows.get(product)).filter(row -> row != null).toList();
        return !own.isEmpty() && own.stream().allMatch(row -> row.result() == Result.MEETS);
    }
}
