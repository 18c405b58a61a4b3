package reglet.reading.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import reglet.reading.page.Layout.Line;
import reglet.reading.page.SheetPage.Piece;

/**
 * Cells of tables set so tight that no gap parts them from those beside them: what begins where the cells of a column begin in rows with
 * more cells is a cell of its own.
 */
final class Aligned {
    private static final double NEAR = 0.8;
    private static final int ROWS = 7;
    /** Lines between a heading and a row, of which some hold but the half of one. */
    private static final int HEADED = 18;
    private static final int LEAST_CELLS = 3;
    private static final int LEAST_ROWS = 2;
    /** Rows in which a word begins at the place. */
    private static final int LEAST_WORDS = 3;
    /** Letters of two headings: "Code Finish". */
    private static final int SHORT = 20;
    /** Of the letters' size: wider than a blank between the words of a cell. */
    private static final double BLANK = 0.31;
    /** Of a usual blank, and of the letters' size: gaps between cells at least. */
    private static final double WIDER = 2.2;
    private static final double GAP = 0.4;
    /** Points that the middles of cells of a column differ by at most. */
    private static final double CENTRED = 3;

    /** What runs below a table is no row of it. */
    private static final Pattern NOTE = Pattern.compile("[*†‡]+ ");

    private Aligned() {
    }

    static List<Line> apart(List<Line> lines) {
        List<Line> all = new ArrayList<>(lines);
        for (int i = 0; i < lines.size(); i++) {
            all.set(i, parted(lines, i));
        }
        return all;
    }

    private static Line parted(List<Line> lines, int index) {
        Line whole = lines.get(index);
        List<Line> near = lines.subList(begin(lines, index, ROWS), end(lines, index)).stream()
            .filter(other -> other.cells().size() >= LEAST_CELLS && other != whole).toList();
        Line line = near.isEmpty() || whole.cells().size() == 1 ? whole : centred(whole, near);
        if (line.cells().size() < LEAST_CELLS && !headsColumns(line, lines, index) && !isOfColumns(line, near)) {
            return line;
        }
        List<Line> above = lines.subList(begin(lines, index, HEADED), index);
        for (Optional<Line> next = Optional.of(line); next.isPresent(); next = near.size() < LEAST_ROWS ? Optional.empty() : parted(line,
            near, above)) {
            line = next.get();
        }
        return line;
    }

    /** Whether two cells stand right above cells of a line that has more: "Item | Width Rolls/ctn" above "FB-4 | 4 in. | 12". */
    private static boolean headsColumns(Line line, List<Line> lines, int index) {
        return line.cells().size() == 2 && index + 1 < lines.size() && lines.get(index + 1).cells().size() >= LEAST_CELLS
            && line.cells().stream().allMatch(cell -> lines.get(index + 1).cells().stream().anyMatch(below -> Math.abs(below.left() - cell
                .left()) < NEAR));
    }

    /**
     * Whether a cell begins where one column does, and a word in it where the next does: "ASTM E96, Procedure 16 perms". Not the first
     * column: a remark may run across a table from there.
     */
    private static boolean isOfColumns(Line line, List<Line> rows) {
        return line.cells().stream().anyMatch(cell -> cell.pieces().stream().skip(1).anyMatch(piece -> rows.stream().filter(row -> IntStream
            .range(2, row.cells().size()).anyMatch(i -> Math.abs(row.cells().get(i - 1).left() - cell.left()) < NEAR && Math.abs(row.cells()
                .get(i).left() - piece.x()) < NEAR)).count() >= LEAST_WORDS));
    }

    /** A line with those cells parted that are several, set in the middles of columns hardly wider than they are. */
    private static Line centred(Line line, List<Line> near) {
        List<Cell> cells = line.cells().stream().flatMap(cell -> {
            List<Cell> parts = byGaps(cell);
            boolean fit = parts.size() > 1 && near.stream().anyMatch(other -> areBelow(parts, other));
            return fit ? parts.stream() : Stream.of(cell);
        }).toList();
        return cells.size() == line.cells().size() ? line : new Line(cells, line.y(), line.size());
    }

    /** The parts of a cell between which gaps are far wider than between its other words. */
    private static List<Cell> byGaps(Cell cell) {
        List<Piece> pieces = cell.pieces();
        double[] blanks = IntStream.range(1, pieces.size()).mapToDouble(i -> pieces.get(i).x() - pieces.get(i - 1).end()).toArray();
        double usual = Arrays.stream(blanks).sorted().skip(blanks.length / 3).findFirst().orElse(0);
        List<Cell> parts = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= pieces.size(); i++) {
            if (i == pieces.size() || blanks[i - 1] > Math.max(WIDER * usual, GAP * cell.size())) {
                parts.add(Cell.of(pieces.subList(from, i), cell.y(), cell.size()));
                from = i;
            }
        }
        return parts;
    }

    /** Whether some cells stand at the middles of as many cells of another line. */
    private static boolean areBelow(List<Cell> parts, Line other) {
        return parts.stream().map(part -> other.cells().stream().filter(cell -> Math.abs(cell.middle() - part.middle()) < CENTRED)
            .findFirst()).flatMap(Optional::stream).distinct().count() == parts.size();
    }

    /** A line with its first cell parted that is two; empty where none is. */
    private static Optional<Line> parted(Line line, List<Line> near, List<Line> above) {
        List<Line> fuller = near.stream().filter(other -> other.cells().size() > line.cells().size()).toList();
        for (int i = 0; i < line.cells().size(); i++) {
            Cell cell = line.cells().get(i);
            Optional<Integer> at = NOTE.matcher(cell.text()).lookingAt() ? Optional.empty() : start(cell, fuller).or(() -> inLine(cell,
                near)).or(() -> headed(cell, above));
            if (at.isPresent()) {
                List<Cell> cells = new ArrayList<>(line.cells());
                List<Piece> pieces = cell.pieces();
                cells.set(i, Cell.of(pieces.subList(0, at.get()), cell.y(), cell.size()));
                cells.add(i + 1, Cell.of(pieces.subList(at.get(), pieces.size()), cell.y(), cell.size()));
                return Optional.of(new Line(List.copyOf(cells), line.y(), line.size()));
            }
        }
        return Optional.empty();
    }

    private static int begin(List<Line> lines, int index, int most) {
        int begin = index;
        while (begin > 0 && index - begin < most && !isTitle(lines.get(begin - 1))) {
            begin--;
        }
        return begin;
    }

    private static int end(List<Line> lines, int index) {
        int end = index + 1;
        while (end < lines.size() && end - index <= ROWS && !isTitle(lines.get(end))) {
            end++;
        }
        return end;
    }

    /** A bold line by itself: what stands beyond it is another table. */
    private static boolean isTitle(Line line) {
        return line.cells().size() == 1 && line.cells().get(0).bold();
    }

    /** The piece of a cell that begins where a word begins in most rows, and where cells begin in some; across which no word stands. */
    private static Optional<Integer> inLine(Cell cell, List<Line> rows) {
        for (int i = 1; i < cell.pieces().size(); i++) {
            double x = cell.pieces().get(i).x();
            long cells = rows.stream().filter(row -> row.cells().stream().skip(1).anyMatch(other -> Math.abs(other.left() - x) < NEAR))
                .count();
            long words = rows.stream().filter(row -> pieces(row).anyMatch(piece -> Math.abs(piece.x() - x) < NEAR)).count();
            boolean crossed = rows.stream().anyMatch(row -> pieces(row).anyMatch(piece -> piece.x() < x - NEAR && piece.end() > x));
            boolean wide = x - cell.pieces().get(i - 1).end() > BLANK * cell.size();
            if (cells >= LEAST_ROWS && (words >= LEAST_WORDS || words == rows.size() && cell.text().length() < SHORT)
                && words * 2 > rows.size() && !crossed && wide) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /**
     * The piece of a cell that begins where a heading does, and where the lines of other rows do, whose cells are of two lines: "DV-10P
     * Rigid PVC" below "DV-10A" beside "Coated aluminum" above "6063-T5".
     */
    private static Optional<Integer> headed(Cell cell, List<Line> above) {
        for (int i = 1; i < cell.pieces().size(); i++) {
            double x = cell.pieces().get(i).x();
            int heading = above.size() - 1;
            while (heading >= 0 && !(above.get(heading).cells().size() >= LEAST_CELLS
                && above.get(heading).cells().stream().skip(1).anyMatch(other ->
                Math.abs(other.left() - x) < NEAR))) {
                heading--;
            }
            List<Line> rows = heading < 0 ? List.of() : above.subList(heading, above.size());
            long begun = rows.stream().filter(row -> row.cells().stream().anyMatch(other -> Math.abs(other.left() - x) < NEAR)).count();
            boolean crossed = rows.stream().anyMatch(row -> row.cells().stream().anyMatch(other -> other.left() < x - NEAR && other
                .right() > x));
            if (begun > LEAST_WORDS && !crossed && Layout.blank(cell.pieces().get(i - 1), cell.pieces().get(i))) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private static Stream<Piece> pieces(Line line) {
        return line.cells().stream().flatMap(cell -> cell.pieces().stream());
    }

    /** The piece of a cell that begins where those of a column begin. */
    private static Optional<Integer> start(Cell cell, List<Line> rows) {
        for (int i = 1; i < cell.pieces().size(); i++) {
            Piece piece = cell.pieces().get(i);
            double before = cell.pieces().get(i - 1).end();
            // in those rows nothing may stand across the place
            long begun = rows.stream().filter(row -> row.cells().stream().skip(1).anyMatch(other -> Math.abs(other.left() - piece.x())
                < NEAR)).count();
            boolean crossed = rows.stream().anyMatch(row -> row.cells().stream().anyMatch(other -> other.left() < before && other.right()
                > piece.x() + NEAR));
            if (begun >= LEAST_ROWS && begun * 2 > rows.size() && !crossed && Layout.blank(cell.pieces().get(i - 1), piece)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }
}
