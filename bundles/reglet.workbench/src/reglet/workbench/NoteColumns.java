package reglet.workbench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;

import reglet.model.Drawing.Leader;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Shape;
import reglet.model.Drawing.Stroke;
import reglet.model.Finding;

/** The notes beside a drawing, in a column at each side. */
final class NoteColumns {
    private final GC gc;
    private final Letters letters;
    private final Strokes strokes;
    private final DrawingCanvas.Shown shown;
    private final int row;
    private final Rectangle room;
    private final int left;
    private final int right;
    private final List<Note> all = new ArrayList<>();

    /** A note with the place it wants. */
    private record Note(Leader leader, boolean right, TextLayout words) {
        int height() {
            return words.getBounds().height;
        }
    }

    /**
     * Lays the notes out; {@link #dispose} when they are painted.
     *
     * @param room what drawing and notes have together
     */
    NoteColumns(GC gc, Letters letters, Strokes strokes, DrawingCanvas.Shown shown, Rectangle room) {
        this.gc = gc;
        this.letters = letters;
        this.strokes = strokes;
        this.shown = shown;
        this.row = letters.row();
        this.room = room;
        this.left = column(false);
        this.right = column(true);
        lay(false);
        if (height(true) > room.height || height(false) > room.height) {
            dispose();
            lay(true);
            thin(true);
            thin(false);
        }
    }

    /** What is left for the drawing between the notes. */
    Rectangle between() {
        return new Rectangle(room.x + left, room.y, room.width - left - right, room.height);
    }

    /** Paints the notes with their lines; gives the place of each component's. */
    Map<String, Rectangle> paint(Fit fit) {
        Map<String, Rectangle> places = new LinkedHashMap<>();
        notes(true, room.x + room.width - right, fit, places);
        notes(false, room.x, fit, places);
        return places;
    }

    void dispose() {
        all.forEach(note -> note.words().dispose());
        all.clear();
    }

    private static boolean isRight(Leader leader) {
        return leader.note().x() >= leader.tip().x();
    }

    /** Width of the notes at a side; 0 when there are none. */
    private int column(boolean right) {
        boolean any = shown.noted() && shown.drawing().shapes().stream().anyMatch(shape -> shape instanceof Leader leader
            && isRight(leader) == right);
        return any ? (int) Math.min(room.width * 0.4, Math.max(letters.characters(28), Math.min(room.width * 0.3,
            letters.characters(40)))) : 0;
    }

    /** The notes at both sides; short ones are of one line and leave out where the component is specified. */
    private void lay(boolean brief) {
        for (Shape shape : shown.drawing().shapes()) {
            if (shown.noted() && shape instanceof Leader leader) {
                boolean isRight = isRight(leader);
                int width = (isRight ? right : left) - row;
                String words = brief ? letters.cut(brief(leader), width) : words(leader);
                all.add(new Note(leader, isRight, letters.layout(words, width, shown.isShown(leader), isRight ? SWT.LEFT : SWT.RIGHT)));
            }
        }
    }

    private String words(Leader leader) {
        String counts = Marks.counts(shown.against(leader.component()));
        return (counts.isEmpty() ? "" : counts + ": ") + (leader.text().isEmpty() ? shown.title(leader.key()) : leader.text());
    }

    private String brief(Leader leader) {
        List<Finding> against = shown.against(leader.component());
        return (against.isEmpty() ? "" : Marks.word(Marks.worst(against)) + ": ") + shown.title(leader.key());
    }

    private int height(boolean right) {
        return all.stream().filter(note -> note.right() == right).mapToInt(note -> note.height() + gap()).sum();
    }

    /** Takes notes away until the others of a side have room; what is in focus, and what something stands against, keeps its note. */
    private void thin(boolean right) {
        List<Note> spare = all.stream().filter(note -> note.right() == right && !shown.isShown(note.leader())
            && shown.against(note.leader().component()).isEmpty()).toList();
        for (int i = spare.size() - 1; i >= 0 && height(right) > room.height + gap(); i--) {
            all.remove(spare.get(i));
            spare.get(i).words().dispose();
        }
    }

    private int gap() {
        return row / 3;
    }

    /** A column of notes, pushed apart in their order from the top. */
    private void notes(boolean isRight, int x, Fit fit, Map<String, Rectangle> places) {
        List<Note> order = all.stream().filter(note -> note.right() == isRight).sorted(Comparator.comparingDouble((Note note) ->
            -note.leader().note().y())).toList();
        int[] tops = new int[order.size()];
        int next = room.y;
        for (int i = 0; i < tops.length; i++) {
            int wished = (int) fit.at(order.get(i).leader().note()).y() - order.get(i).height() / 2;
            tops[i] = Math.max(next, wished);
            next = tops[i] + order.get(i).height() + gap();
        }
        int last = room.y + room.height;
        for (int i = tops.length - 1; i >= 0; i--) {
            tops[i] = Math.min(tops[i], last - order.get(i).height());
            last = tops[i] - gap();
        }
        for (int i = 0; i < tops.length; i++) {
            places.putAll(note(order.get(i), x, tops[i], fit));
        }
    }

    private Map<String, Rectangle> note(Note note, int x, int top, Fit fit) {
        Leader leader = note.leader();
        int width = note.words().getWidth();
        int left = note.right() ? x + row : x;
        Point tip = fit.at(leader.tip());
        double level = top + row / 2.0;
        Point end = new Point(note.right() ? left - 3 : left + width + 3, level);
        Point elbow = new Point(note.right() ? end.x() - row * 0.6 : end.x() + row * 0.6, level);
        strokes.draw(List.of(end, elbow, tip), false, shown.isShown(leader) ? 2 : 0.9f, Stroke.SOLID);
        strokes.dot(tip);
        note.words().draw(gc, left, top);
        return leader.component().isEmpty() ? Map.of() : Map.of(leader.component(), new Rectangle(left, top, width, note.height()));
    }
}
