package reglet.reading.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
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

    private final Labels labels;
    private final Citations citations;
    private final Taken taken;

    public Stacks(Labels labels, Citations citations, Taken taken) {
        this.labels = labels;
        this.citations = citations;
        this.taken = taken;
    }

    /** Reads the labels in a row that have nothing beside them. */
    public void read(List<Line> rows, int index) {
        List<Cell> cells = rows.get(index).cells();
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            Optional<Label> label = labels.read(cell.text());
            boolean beside = i + 1 < cells.size() && labels.read(cells.get(i + 1).text()).isEmpty();
            if (label.isPresent() && !beside) {
                taken.labelled(cell);
                Cell below = near(rows, index, 1, cell);
                Cell above = near(rows, index, -1, cell);
                if (!take(label.get(), cell, below, BELOW) && above != null && above.size() > LARGER * cell.size()) {
                    take(label.get(), cell, above, ABOVE);
                }
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
