package reglet.reading.page;

import java.util.List;
import java.util.regex.Pattern;

import reglet.reading.page.Layout.Line;

/** Tells where running text that breaks off at the foot of a column goes on at the head of the next. */
final class Broken {
    private static final int RUNNING = 4;
    /** Lines at the head of a column among which the text may go on: one that repeats on each page may stand above it. */
    private static final int HEAD = 3;
    private static final int LATEST = 6;
    /** What no sentence begins with. */
    private static final Pattern WITHIN = Pattern.compile("(?:\\p{Ll}|[\\d.]*\\d\\s?(?:\\p{Ll}|%|\"|°)|\\)).*", Pattern.DOTALL);
    private static final Pattern OPEN = Pattern.compile(".*(?:\\p{Ll}|[\\d,(–-]|\\))\\s*", Pattern.DOTALL);
    private static final Pattern ITEM = Pattern.compile("(?:\\d{1,2}|[a-z])[.)]\\s.*|[•·▪■●◦‣*+-]\\s.*", Pattern.DOTALL);

    private double y = Double.NEGATIVE_INFINITY;
    private int open = -1;
    private int lines;
    private Cell end;

    /**
     * The line that is read next.
     *
     * @param last the last lines of the paragraphs so far
     */
    void line(Line line, List<Cell> last) {
        lines++;
        if (line.y() < y - line.size()) {
            // a new column
            lines = 0;
            open = -1;
            for (int i = Math.max(0, last.size() - LATEST); i < last.size(); i++) {
                Cell cell = last.get(i);
                boolean ends = Math.abs(cell.y() - y) < LATEST * cell.size() && (open < 0 || cell.y() >= last.get(open).y() - 1);
                open = ends && isRunning(cell) && OPEN.matcher(cell.text()).matches() ? i : ends && isRunning(cell) ? -1 : open;
            }
            end = open < 0 ? null : last.get(open);
        }
        y = line.y();
    }

    /** The paragraph that a cell at the head of a column goes on with; -1 for none. */
    int goesOn(Cell cell) {
        boolean on = open >= 0 && lines < HEAD && isRunning(cell) && WITHIN.matcher(cell.text()).matches() && !ITEM.matcher(cell.text())
            .matches() && Math.abs(cell.size() - end.size()) < 0.5 && cell.left() > end.right() - end.size();
        int paragraph = on ? open : -1;
        open = on ? -1 : open;
        return paragraph;
    }

    private static boolean isRunning(Cell cell) {
        return cell.text().split("\\s+").length >= RUNNING;
    }
}
