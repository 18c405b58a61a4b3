package reglet.reading.sheet;

import java.util.ArrayList;
import java.util.List;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;

/** Lines as one text, whose parts know where they stand: a tab parts the cells of a line, a new line the lines. */
final class Flow {
    private final StringBuilder text = new StringBuilder();
    private final List<Placed> lines = new ArrayList<>();
    private final List<Bit> bits = new ArrayList<>();

    /** A line and the layout that it stands in. */
    record Placed(Layout layout, Line line) {
        String text() {
            return line.text();
        }

        Cell whole() {
            Cell whole = line.cells().get(0);
            for (Cell cell : line.cells().subList(1, line.cells().size())) {
                whole = whole.with(cell);
            }
            return whole;
        }
    }

    /** Words of a flow with their place. */
    record Spot(Layout layout, Cell cell) {
        String text() {
            return cell.text();
        }
    }

    private record Bit(int from, Layout layout, Cell cell) {
        int to() {
            return from + cell.text().length();
        }
    }

    Flow(List<Placed> lines) {
        this.lines.addAll(lines);
        for (Placed line : lines) {
            for (Cell cell : line.line().cells()) {
                bits.add(new Bit(text.length(), line.layout(), cell));
                text.append(cell.text()).append('\t');
            }
            text.setCharAt(text.length() - 1, '\n');
        }
    }

    static Flow of(List<Layout> layouts) {
        return new Flow(layouts.stream().flatMap(layout -> layout.lines().stream().map(line -> new Placed(layout, line))).toList());
    }

    String text() {
        return text.toString();
    }

    List<Placed> lines() {
        return lines;
    }

    /** The words between two places of the text, on their first page. */
    Spot at(int from, int to) {
        Layout layout = null;
        Cell cell = null;
        for (Bit bit : bits) {
            if (bit.to() > from && bit.from < to && (layout == null || layout == bit.layout)) {
                Cell part = bit.cell.part(Math.max(0, from - bit.from), Math.min(bit.cell.text().length(), to - bit.from));
                layout = bit.layout;
                cell = cell == null ? part : cell.with(part);
            }
        }
        return new Spot(layout, cell);
    }
}
