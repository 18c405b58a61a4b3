package reglet.reading.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
import reglet.reading.words.Plain;
import reglet.reading.words.PropertyNames;

/**
 * A list of labels and values below a heading: where another list has the same labels, the headings name the products that they are of.
 *
 * @param rows the values by their labels in one spelling, without what stands behind commas and in brackets
 */
record ModelLists(String heading, Map<String, String> rows) {
    private static final int LONGEST = 45;
    private static final int LEAST = 2;
    /** A row of more cells is one of a table of sizes below the list. */
    private static final int MOST_CELLS = 3;
    private static final Pattern HEADING = Pattern.compile("(?=.*\\p{L})[\\p{Lu}\\d](?:(?!: ).)*[^.:;,?!]");
    /** Behind it stands on what or how something was measured. */
    private static final Pattern REMARKS = Pattern.compile("\\s*[,(].*");

    /** The lists among some rows. */
    static List<ModelLists> of(List<Line> rows) {
        List<ModelLists> all = new ArrayList<>();
        ModelLists open = null;
        for (Line row : rows) {
            List<Cell> cells = row.cells();
            String text = row.text().replaceAll("\\s+", " ").strip();
            int colon = text.indexOf(": ");
            if (cells.size() == 1 && colon < 0) {
                boolean heads = text.length() <= LONGEST && HEADING.matcher(text).matches() && !isOfTables(cells.get(0));
                open = heads ? new ModelLists(text, new LinkedHashMap<>()) : null;
                all.addAll(heads ? List.of(open) : List.of());
            } else if (open != null && cells.size() <= MOST_CELLS) {
                String label = colon < 0 ? cells.get(0).text() : text.substring(0, colon);
                String plain = Plain.of(REMARKS.matcher(label).replaceFirst(""));
                if (!(plain.matches(".*\\d.*") && PropertyNames.isCondition(plain))) {
                    // "7 days" below the name of a test
                    open.rows.putIfAbsent(plain, text);
                }
            }
        }
        return all.stream().filter(list -> list.rows.size() >= LEAST).toList();
    }

    /** "Typical values", "Metric", "28 days": what is told apart isn't the products. */
    private static boolean isOfTables(Cell heading) {
        String plain = HeadWords.plain(heading);
        return List.of(HeadWords.VALUE, HeadWords.REQUIRED, HeadWords.SYSTEM, HeadWords.CONDITION, HeadWords.VALUE_IN).stream()
            .anyMatch(words -> words.matcher(plain).matches());
    }

    /** Whether another list says other things of the same labels. */
    boolean isLike(ModelLists other) {
        List<String> common = rows.keySet().stream().filter(other.rows::containsKey).toList();
        // of staples other things are told than of screws
        boolean alike = 2 * common.size() >= Math.max(rows.size(), other.rows.size()) || common.size() > LEAST && 2 * common.size() >= Math
            .min(rows.size(), other.rows.size());
        return !other.heading.equals(heading) && common.size() >= LEAST && alike && common.stream().anyMatch(label ->
            !rows.get(label).equals(other.rows.get(label)));
    }
}
