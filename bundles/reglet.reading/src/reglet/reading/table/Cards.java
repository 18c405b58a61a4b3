package reglet.reading.table;

import java.util.List;
import java.util.Optional;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.value.Around;
import reglet.reading.value.Taken;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Labels;
import reglet.reading.words.Plain;

/**
 * Reads models that stand beside each other as cards, each with the same labels one below the other and the values below these: "Block P"
 * and "Block F" above "Material" and "Material" above "PVC" and "fiber cement".
 */
public final class Cards {
    private static final double SURE = 0.93;
    /** Points by which what stands in one card may be set in from the rest of it. */
    private static final double ASIDE = 6;
    /** Lines above the first labels in which the names of the models are looked for. */
    private static final int ABOVE = 3;
    private static final int LONGEST = 45;

    private final Labels labels;
    private final Citations citations;
    private final Taken taken;

    public Cards(Labels labels, Citations citations, Taken taken) {
        this.labels = labels;
        this.citations = citations;
        this.taken = taken;
    }

    public void read(Layout layout) {
        List<Line> lines = layout.lines();
        Optional<Line> heads = Optional.empty();
        for (int i = 0; i + 1 < lines.size(); i++) {
            Line line = lines.get(i);
            if (!areSame(line) || !stand(lines.get(i + 1), line) || areSame(lines.get(i + 1))) {
                continue;
            }
            int first = i;
            heads = heads.filter(head -> stand(head, line)).or(() -> heads(lines, first));
            if (heads.isPresent()) {
                take(heads.get(), line, lines.get(i + 1));
            }
        }
    }

    private void take(Line heads, Line written, Line values) {
        labels.besideValue(written.cells().get(0).text(), List.of()).ifPresent(label -> {
            for (int i = 0; i < values.cells().size(); i++) {
                Cell value = values.cells().get(i);
                taken.labelled(written.cells().get(i));
                List<Citation> cited = citations.in(value.text(), written.cells().get(i).text() + " " + value.text());
                taken.value(label, written.cells().get(i).text(), value, new Around("", cited.isEmpty() ? label.methods() : cited, heads
                    .cells().get(i).text().strip(), label.sense(), SURE));
            }
        });
    }

    /** The nearest line above the labels in which the cards are named, each otherwise. */
    private static Optional<Line> heads(List<Line> lines, int first) {
        for (int i = first - 1; i >= Math.max(0, first - ABOVE); i--) {
            Line line = lines.get(i);
            boolean distinct = line.cells().stream().map(cell -> Plain.of(cell.text())).distinct().count() == line.cells().size();
            if (distinct && stand(line, lines.get(first)) && line.cells().stream().allMatch(cell -> cell.text().length() <= LONGEST)) {
                return Optional.of(line);
            }
        }
        return Optional.empty();
    }

    private static boolean areSame(Line line) {
        return line.cells().size() > 1 && line.cells().stream().map(cell -> Plain.of(cell.text())).distinct().count() == 1
            && line.text().matches("(?s).*\\p{L}{3}.*");
    }

    /** Whether the cells of a line stand one below each of another's, or above it. */
    private static boolean stand(Line line, Line other) {
        if (line.cells().size() != other.cells().size()) {
            return false;
        }
        for (int i = 0; i < line.cells().size(); i++) {
            Cell one = line.cells().get(i);
            Cell two = other.cells().get(i);
            if (Math.abs(one.left() - two.left()) > ASIDE && Math.abs(one.middle() - two.middle()) > ASIDE) {
                return false;
            }
        }
        return true;
    }
}
