package reglet.reading.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
import reglet.reading.page.SheetPage.Piece;
import reglet.reading.value.Around;
import reglet.reading.value.Taken;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;

/** Reads labels with their values on the line below them, or in larger letters on the line above. */
public final class Stacks {
    private static final double BELOW = 0.88;
    private static final double ABOVE = 0.8;
    /** Points by which a value may be set in from its label. */
    private static final double ASIDE = 5;
    /** Of the size of the letters. */
    private static final double NEAR = 2.2;
    private static final int FARTHEST = 4;
    private static final double LARGER = 1.15;
    /** Of the size of the letters: what stands so far below others is on a line of its own. */
    private static final double SHORT = 0.6;
    private static final int MOST_WORDS = 4;
    /** "14 mils", "< 0.5 %": a figure and few words behind it. */
    private static final Pattern OTHER_SYSTEM = Pattern.compile("\\s*\\([^()]*\\d[^()]*\\)\\s*$");
    private static final Pattern FIGURE = Pattern.compile("[≥≤<>±+−-]?\\s?\\d\\S*(?:\\s\\S+){0,3}$");

    private final Labels labels;
    private final Citations citations;
    private final Taken taken;

    public Stacks(Labels labels, Citations citations, Taken taken) {
        this.labels = labels;
        this.citations = citations;
        this.taken = taken;
    }

    /**
     * Reads a band of figures in large letters, each above what it is of: "12 mils" above "dry film, one coat".
     *
     * @return whether the row is one that says something
     */
    public boolean figures(Line row) {
        boolean any = false;
        for (Cell cell : row.cells()) {
            int small = small(cell);
            if (small > 0) {
                Cell words = cell.part(cell.starts().get(small), cell.text().length());
                taken.labelled(words);
                any |= labels.besideValue(words.text(), List.of()).filter(label -> take(label, words, cell.part(0, cell.starts()
                    .get(small)), ABOVE)).isPresent();
            }
        }
        return any;
    }

    /** Whether a row says what the figures in larger letters above it are of: it heads nothing below. */
    static boolean areCaptions(List<Line> rows, int index) {
        Line row = rows.get(index);
        Line above = rows.get(Math.max(0, index - 1));
        return index > 0 && above.cells().size() == row.cells().size() && above.size() > LARGER * row.size() && row.y() - above.y()
            < NEAR * above.size() && above.cells().stream().filter(cell -> FIGURE.matcher(cell.text()).lookingAt()).count() * 2 > above
                .cells().size();
    }

    /** Which of a cell's pieces is the first in smaller letters, on lines below the few before it; 0 for none. */
    private static int small(Cell cell) {
        List<Piece> pieces = cell.pieces();
        double large = pieces.isEmpty() ? 0 : pieces.get(0).size();
        int small = 1;
        while (small < pieces.size() && pieces.get(small).size() > large / LARGER) {
            small++;
        }
        boolean rest = small < pieces.size() && pieces.subList(small, pieces.size()).stream().allMatch(piece -> piece.size() < large / LARGER
            && piece.y() > pieces.get(0).y() + SHORT * piece.size());
        return rest && cell.text().substring(0, cell.starts().get(small)).strip().split(" ").length <= MOST_WORDS ? small : 0;
    }

    /** Reads the labels in a row that have nothing beside them. */
    public void read(List<Line> rows, int index) {
        List<Cell> cells = rows.get(index).cells();
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            Optional<Label> label = labels.read(cell.text());
            boolean beside = i + 1 < cells.size() && labels.read(cells.get(i + 1).text()).isEmpty();
            Cell above = near(rows, index, -1, cell);
            boolean figure = above != null && above.size() > LARGER * cell.size() && FIGURE.matcher(above.text()).lookingAt();
            taken.labelled(cell);
            if (label.isPresent() && !beside && take(label.get(), cell, near(rows, index, 1, cell), BELOW)) {
                continue;
            }
            if (figure) {
                // "lowest air and wall temperature (41 °F)"
                label.or(() -> labels.besideValue(OTHER_SYSTEM.matcher(cell.text()).replaceFirst(""), List.of())).ifPresent(one -> take(
                    one, cell, above, ABOVE));
            } else if (label.isPresent() && !beside && above != null && above.size() > LARGER * cell.size()) {
                take(label.get(), cell, above, ABOVE);
            }
        }
    }

    private boolean take(Label label, Cell written, Cell value, double share) {
        if (value == null || labels.read(value.text()).isPresent()) {
            return false;
        }
        List<Citation> methods = new ArrayList<>(citations.in(value.text(), written.text() + " " + value.text()));
        return taken.quietly(label, written.text(), value, Around.of(methods.isEmpty() ? label.methods() : methods, share));
    }

    /** The cell right below or above another; rows of another column of the page may lie between them. */
    private static Cell near(List<Line> rows, int index, int step, Cell label) {
        for (int i = index + step; i >= 0 && i < rows.size() && Math.abs(i - index) < FARTHEST; i += step) {
            Cell found = at(rows.get(i), label);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    /** The cell of a row right below or above another, with nothing of its own beside it. */
    private static Cell at(Line row, Cell label) {
        for (Cell cell : row.cells()) {
            boolean aligned = Math.abs(cell.left() - label.left()) < ASIDE || Math.abs(cell.middle() - label.middle()) < ASIDE;
            double far = cell.y() > label.low() ? cell.y() - label.low() : label.y() - cell.low();
            if (aligned && far < NEAR * Math.max(cell.size(), label.size())) {
                return cell;
            }
        }
        return null;
    }
}
