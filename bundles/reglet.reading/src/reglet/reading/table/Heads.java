package reglet.reading.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
import reglet.reading.page.SheetPage;

/**
 * Headings of several lines above rows of models, put together by the columns that the rows below them show: "Weight" above "lb/yd²" and
 * "kg/m²", "Drainage" above "efficiency" above "ASTM E2273, %".
 */
final class Heads {
    private static final int MOST_LINES = 5;
    private static final double NEAR = 3.2;
    private static final int LEAST_COLUMNS = 3;
    private static final double FAR = 45;
    private static final Pattern AMOUNT = Pattern.compile("(?s)[≥≤<>±]?\\s*[-−+]?\\.?\\d+(?:[.,/ -]\\d+)*\\s*(?:\\S{1,8})?");

    private Heads() {
    }

    /** A row of headings, one for each column, and the index of the first row below them. */
    record Head(Line line, int first) {
    }

    /** The headings that start at a row; empty when no rows of models follow, or when a single line heads them. */
    static Optional<Head> of(List<Line> rows, int index) {
        int data = index;
        while (data < rows.size() && data - index <= MOST_LINES && !isData(rows.get(data))) {
            if (data > index && rows.get(data).y() - rows.get(data - 1).y() > NEAR * rows.get(data).size()) {
                return Optional.empty();
            }
            data++;
        }
        if (data - index < 2 || data >= rows.size() || data - index > MOST_LINES || rows.get(index).cells().size() < 1) {
            return Optional.empty();
        }
        List<double[]> columns = columns(rows, data);
        if (columns.size() < LEAST_COLUMNS) {
            return Optional.empty();
        }
        List<Cell> heads = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            Cell own = words(rows.subList(index, data), columns, i, false);
            // words set above several columns belong to those that have no words of their own but a unit
            Cell head = own == null || HeadWords.isUnit(own) ? words(rows.subList(index, data), columns, i, true) : own;
            head = head == null ? null : withUnits(rows, index, data, columns, i, head);
            if (head != null) {
                double left = columns.get(i)[0];
                double right = columns.get(i)[1];
                heads.add(within(head, left, right));
            }
        }
        heads.sort(Comparator.comparingDouble(Cell::left));
        return heads.size() < LEAST_COLUMNS ? Optional.empty() : Optional.of(new Head(new Line(List.copyOf(heads), rows.get(data - 1).y(),
            rows.get(data - 1).size()), data));
    }

    /** The words of several lines above a column; {@code near}: those beside it too, where it has none yet. */
    private static Cell words(List<Line> lines, List<double[]> columns, int column, boolean near) {
        Cell words = null;
        for (Line line : lines) {
            Cell part = above(line, columns, column, near && (words == null || HeadWords.isUnit(words)));
            words = part == null ? words : words == null ? part : words.with(part);
        }
        return words;
    }

    /** "Thickness" and, in the line below, "in." as "Thickness, in.". */
    private static Cell withUnits(List<Line> rows, int index, int data, List<double[]> columns, int i, Cell head) {
        Cell last = above(rows.get(data - 1), columns, i, false);
        // "mm (in.)" is one too
        if (last == null || !HeadWords.isUnit(last) || head.text().equals(last.text()) || !head.text().endsWith(last.text())) {
            return head;
        }
        return head.named(head.text().substring(0, head.text().length() - last.text().length()).strip() + ", " + last.text());
    }

    /** A heading as wide as its column: what stands in the column is looked for below it. */
    private static Cell within(Cell head, double left, double right) {
        List<SheetPage.Piece> pieces = new ArrayList<>();
        List<Integer> starts = new ArrayList<>(List.of(0));
        SheetPage.Piece first = head.pieces().get(0);
        pieces.add(new SheetPage.Piece(first.text(), left, first.y(), right - left, first.size(), first.turn(), first.spaced(),
            first.bold(),
            first.hidden()));
        for (int i = 1; i < head.pieces().size(); i++) {
            SheetPage.Piece before = head.pieces().get(i - 1);
            if (Cell.isRaised(head.pieces().get(i), before.y(), before.size())) {
                // the mark of a note, as high above the first line as it stands above its own
                SheetPage.Piece mark = head.pieces().get(i);
                pieces.add(new SheetPage.Piece(mark.text(), mark.x(), first.y() - before.y() + mark.y(), mark.width(), mark.size(), mark
                    .turn(), mark.spaced(), mark.bold(), mark.hidden()));
                starts.add(head.text().length());
            }
        }
        return new Cell(head.text(), pieces, starts, head.y(), head.size(), head.low());
    }

    private static boolean isData(Line row) {
        long amounts = row.cells().stream().filter(cell -> AMOUNT.matcher(cell.text()).matches()).count();
        return row.cells().size() >= LEAST_COLUMNS && amounts >= 2;
    }

    /** From where to where the columns of the first rows run. */
    private static List<double[]> columns(List<Line> rows, int data) {
        List<double[]> columns = new ArrayList<>();
        int cells = rows.get(data).cells().size();
        for (int i = data; i < rows.size() && i < data + 6 && rows.get(i).cells().size() == cells; i++) {
            for (int j = 0; j < cells; j++) {
                Cell cell = rows.get(i).cells().get(j);
                if (i == data) {
                    columns.add(new double[] {cell.left(), cell.right()});
                } else if (cell.left() < columns.get(j)[1] && cell.right() > columns.get(j)[0]) {
                    columns.get(j)[0] = Math.min(columns.get(j)[0], cell.left());
                    columns.get(j)[1] = Math.max(columns.get(j)[1], cell.right());
                } else {
                    return columns;
                }
            }
        }
        return columns;
    }

    /** The cell of a line above a column: one that overlaps it, or the nearest where the column has no words of its own yet. */
    private static Cell above(Line line, List<double[]> columns, int column, boolean near) {
        double[] at = columns.get(column);
        double from = column == 0 ? Double.NEGATIVE_INFINITY : (columns.get(column - 1)[1] + at[0]) / 2;
        double to = column + 1 == columns.size() ? Double.POSITIVE_INFINITY : (at[1] + columns.get(column + 1)[0]) / 2;
        Cell best = null;
        double most = 0;
        for (Cell cell : line.cells()) {
            double overlap = Math.min(cell.right(), to) - Math.max(cell.left(), from);
            boolean own = cell.left() < at[1] && cell.right() > at[0] || cell.middle() > from && cell.middle() < to;
            if (own && overlap > most) {
                most = overlap;
                best = cell;
            }
        }
        for (Cell cell : best == null && near ? line.cells() : List.<Cell>of()) {
            double away = Math.max(cell.left() - at[1], at[0] - cell.right());
            best = away < FAR && (best == null || away < Math.max(best.left() - at[1], at[0] - best.right())) ? cell : best;
        }
        return best;
    }
}
