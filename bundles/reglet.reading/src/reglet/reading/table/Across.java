package reglet.reading.table;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.table.Columns.Column;

/** A row in which one cell stands below the headings of several models: is it of one of them, of all, or can't it be told? */
enum Across {
    /** Of the model above it, of all; by rules that part the columns, or by its place alone; or it can't be told. */
    ONE(1), ALL(1), LIKELY_ONE(0.9), LIKELY_ALL(0.9), UNKNOWN(0);

    private final double share;

    Across(double share) {
        this.share = share;
    }

    /** How sure it is, from 0 to 1. */
    double share() {
        return share;
    }

    boolean isOfOne() {
        return this == ONE || this == LIKELY_ONE;
    }

    /** Points by which a cell may be off the place that it is set to. */
    private static final double OFF = 8;
    private static final double CENTRED = 6;

    /** Behind a value: all that the columns are told apart by. */
    private static final Pattern OF_ALL = Pattern.compile("(?i)(?<=\\S)(?:[,;] ?| )\\(?(?:for |in )?(?:all|each|every|both)"
        + "(?: of them| \\p{L}{4,})?\\)?$");

    private static Across of(Cell cell, Column column, List<Column> models, Layout layout) {
        Column first = models.get(0);
        Column last = models.get(models.size() - 1);
        double y = cell.y() - 0.3 * cell.size();
        boolean ruled = ruled(first, models.get(1), layout, first.head().y() - 0.3 * first.head().size());
        if (ruled) {
            return ruled(first, last, layout, y) ? ONE : ALL;
        }
        long over = models.stream().filter(one -> one.head().left() < cell.right() && one.head().right() > cell.left()).count();
        // what stands in the middle of all of them stands below the one in the middle too
        boolean middle = Math.abs(cell.middle() - (first.head().middle() + last.head().middle()) / 2) < CENTRED
            || models.size() % 2 == 1 && models.indexOf(column) == models.size() / 2;
        // a cell that spans the columns may be set to the left as they are: makers leave no cell of a model empty without a stroke
        boolean atFirst = column == first;
        return over > 1 ? ALL : middle || atFirst ? LIKELY_ALL : owns(cell, column) ? LIKELY_ONE : UNKNOWN;
    }

    /** Of which models the values of a row are, where a single one stands in it. */
    static Across of(Map<Column, Cell> cells, List<Column> stated, List<Column> models, Layout layout) {
        return stated.size() != 1 ? ONE : isOfAll(cells, stated.get(0)) ? ALL : models.size() < 2 ? ONE : of(cells.get(stated.get(0)),
            stated.get(0), models, layout);
    }

    /** "20, all depths": takes what says that a value is of all models off its cell. */
    private static boolean isOfAll(Map<Column, Cell> cells, Column column) {
        Cell cell = cells.get(column);
        Matcher all = OF_ALL.matcher(cell.text());
        if (all.find()) {
            cells.put(column, cell.part(0, all.start()));
        }
        return !cells.get(column).equals(cell);
    }

    /** Whether upright rules part two columns at some height. */
    private static boolean ruled(Column left, Column right, Layout layout, double y) {
        return layout.upright(left.head().right(), right.head().left(), y);
    }

    private static boolean owns(Cell cell, Column column) {
        return Math.abs(cell.left() - column.head().left()) < OFF || Math.abs(cell.middle() - column.head().middle()) < OFF
            || Math.abs(cell.right() - column.head().right()) < OFF;
    }
}
