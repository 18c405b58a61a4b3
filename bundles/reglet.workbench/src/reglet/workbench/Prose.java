package reglet.workbench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.LineStyleEvent;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Caret;
import org.eclipse.swt.widgets.Composite;

import reglet.workbench.Leads.Lead;

/**
 * Text that is read, not typed: paragraphs with headings, emphasis, hanging marks and places that lead somewhere. Built on the
 * window's thread and shown at once, without moving what the person reads when the text is the same.
 */
public final class Prose {
    private final Room text;
    private final LinesMeasured measured;
    private final Caret caret;
    private Font plain;
    private Font shownIn;
    private Font heading;
    private Font strong;
    private final StringBuilder words = new StringBuilder();
    private final List<StyleRange> styles = new ArrayList<>();
    private int start;
    private List<Paragraph> paragraphs = new ArrayList<>();
    private List<Paragraph> shown = List.of();
    private final List<Lead> leads = new ArrayList<>();
    private final Leads shownLeads;
    private final Map<Integer, Painter> pictures = new HashMap<>();
    private Map<Integer, Painter> shownPictures = Map.of();

    /**
     * A line of the text.
     *
     * @param styles counted from its own start
     * @param first  indent of its first row, in characters
     * @param rest   indent of the rows that it wraps to, in characters
     */
    private record Paragraph(String words, List<StyleRange> styles, int first, int rest) {
    }

    /** Takes the room that it is given: measuring how much a long text would like to have takes longer than showing it. */
    private static final class Room extends StyledText {
        Room(Composite parent) {
            super(parent, SWT.MULTI | SWT.WRAP | SWT.V_SCROLL | SWT.READ_ONLY);
        }

        @Override
        public Point computeSize(int width, int height, boolean changed) {
            return new Point(Math.max(1, width), Math.max(1, height));
        }

        int height(int width) {
            return super.computeSize(width, SWT.DEFAULT, true).y;
        }
    }

    public Prose(Composite parent, String name) {
        text = Ui.named(new Room(parent), name);
        text.setEditable(false);
        caret = text.getCaret();
        text.setCaret(null);
        int margin = Ui.characters(text, 1);
        text.setMargins(margin, margin / 2, margin, margin / 2);
        text.setLineSpacing(2);
        fonts();
        // asked line by line as they come into sight: setting them all would take a long page much longer than showing it
        text.addLineStyleListener(this::style);
        text.addPaintObjectListener(event -> {
            Painter painter = shownPictures.get(event.style.start);
            if (painter != null) {
                painter.paint(event.gc, new org.eclipse.swt.graphics.Rectangle(event.x, event.y, event.style.metrics.width,
                    event.style.metrics.ascent));
            }
        });
        shownLeads = new Leads(text);
        measured = new LinesMeasured(text);
    }

    private void style(LineStyleEvent event) {
        int line = text.getLineAtOffset(event.lineOffset);
        if (line < shown.size()) {
            Paragraph paragraph = shown.get(line);
            event.styles = paragraph.styles.stream().map(style -> {
                StyleRange here = (StyleRange) style.clone();
                here.start += event.lineOffset;
                return here;
            }).toArray(StyleRange[]::new);
            event.indent = Ui.characters(text, paragraph.first);
            event.wrapIndent = Ui.characters(text, paragraph.rest);
            event.tabStops = paragraph.rest > paragraph.first ? new int[] {event.wrapIndent - event.indent} : null;
        }
    }

    public StyledText control() {
        return text;
    }

    public int length() {
        return words.length();
    }

    /** How many lines were built since the last time. */
    public int lines() {
        return paragraphs.size();
    }

    /** Shows where the keyboard stands in the text, which then has keys of its own. */
    public Prose withCaret() {
        text.setCaret(caret);
        shownLeads.byClickAlone();
        return this;
    }

    public Prose heading(String line) {
        fonts();
        return styled(line, heading, null).end(0, 0);
    }

    /** A line in the emphasis, with room above it. */
    public Prose title(String line) {
        if (!words.isEmpty()) {
            end(0, 0);
        }
        return styled(line, strong, null).end(0, 0);
    }

    public Prose line(String line) {
        return plain(line).end(0, 0);
    }

    /** A line with a mark of its own in front, its rows hanging behind the mark. */
    public Prose item(String mark, String line) {
        return mark(mark).plain(line).end(1, 2 + Math.max(2, mark.length() + 1));
    }

    /** A mark that the rest of the paragraph hangs behind; {@link #end} says where. */
    public Prose mark(String mark) {
        return plain(mark + "\t");
    }

    public Prose plain(String run) {
        words.append(oneLine(run));
        return this;
    }

    public Prose strong(String run) {
        return styled(run, strong, null);
    }

    /** A run that is taken out: struck through. */
    public Prose struck(String run) {
        styled(run, null, null);
        styles.get(styles.size() - 1).strikeout = true;
        return this;
    }

    /** A run that is put in: underlined, in the emphasis. */
    public Prose put(String run) {
        styled(run, strong, null);
        styles.get(styles.size() - 1).underline = true;
        return this;
    }

    /** Paints a picture of the text. */
    public interface Painter {
        void paint(org.eclipse.swt.graphics.GC gc, org.eclipse.swt.graphics.Rectangle at);
    }

    /** A picture on a line of its own, as wide as there is room. */
    public Prose picture(int height, Painter painter) {
        StyleRange style = new StyleRange();
        style.start = words.length() - start;
        style.length = 1;
        style.metrics = new org.eclipse.swt.graphics.GlyphMetrics(height, 0, room());
        styles.add(style);
        pictures.put(words.length(), painter);
        words.append('\uFFFC');
        return end(0, 0);
    }

    /** Width of the text in points. */
    public int room() {
        return Math.max(1, text.getClientArea().width - 2 * text.getLeftMargin() - 2);
    }

    /** How high the text is in a width, in points; measures all of it. */
    public int height(int width) {
        return text.height(width);
    }

    /** A run in the theme's colour for links, which leads somewhere. */
    public Prose lead(String run, Runnable to) {
        leads.add(new Lead(words.length(), words.length() + run.length(), to));
        styled(run, null, text.getDisplay().getSystemColor(SWT.COLOR_LINK_FOREGROUND));
        // where keys reach it; a page that is written in would be full of lines
        styles.get(styles.size() - 1).underline = text.getCaret() == null;
        return this;
    }

    /** What was written from an offset on leads somewhere; leads made before it go first. */
    public Prose leading(int from, Runnable to) {
        leads.add(new Lead(from, words.length(), to));
        return this;
    }

    /** The size of the text may have changed since the last time. */
    private void fonts() {
        if (!text.getFont().equals(plain)) {
            plain = text.getFont();
            heading = Ui.heading(text);
            strong = Ui.strong(text);
        }
    }

    private Prose styled(String run, Font font, org.eclipse.swt.graphics.Color colour) {
        StyleRange style = new StyleRange();
        style.start = words.length() - start;
        style.length = run.length();
        style.font = font;
        style.foreground = colour;
        words.append(oneLine(run));
        styles.add(style);
        return this;
    }

    /** A paragraph is one line of the text, whatever its source's line breaks. */
    private static String oneLine(String run) {
        return run.replace('\n', ' ');
    }

    /** Ends a paragraph. */
    public Prose end(int first, int rest) {
        paragraphs.add(new Paragraph(words.substring(start), List.copyOf(styles), first, rest));
        styles.clear();
        words.append('\n');
        start = words.length();
        return this;
    }

    /** Shows what was built and starts anew. Gives whether anything else stands there now. */
    public boolean show() {
        List<Paragraph> before = text.getFont().equals(shownIn) ? shown : List.of();
        boolean changed = !paragraphs.equals(before);
        shownIn = text.getFont();
        shownPictures = Map.copyOf(pictures);
        if (changed) {
            replace(before, List.copyOf(paragraphs));
        } else if (!pictures.isEmpty()) {
            text.redraw();
        }
        shownLeads.are(leads, changed);
        pictures.clear();
        words.setLength(0);
        start = 0;
        paragraphs = new ArrayList<>();
        leads.clear();
        return changed;
    }

    /** Replaces only the lines that are others: the rest keep their place and are not measured again. */
    private void replace(List<Paragraph> before, List<Paragraph> now) {
        List<Lines.Change<Paragraph>> changes = Lines.changes(before, now);
        int top = text.getTopPixel();
        text.setRedraw(false);
        if (changes.size() == 1 && changes.get(0).lines().size() == now.size()) {
            shown = now;
            text.setText(lines(now));
        } else {
            // the styles of each line are asked for after each change; from the end on, so that the lines before keep their numbers
            shown = new ArrayList<>(before);
            for (int i = changes.size() - 1; i >= 0; i--) {
                Lines.Change<Paragraph> change = changes.get(i);
                int from = text.getOffsetAtLine(change.from());
                int length = text.getOffsetAtLine(change.to()) - from;
                shown.subList(change.from(), change.to()).clear();
                shown.addAll(change.from(), change.lines());
                text.replaceTextRange(from, length, lines(change.lines()));
            }
        }
        // another text, by its title, begins at its top; the same one stays where it was, which takes its lines' measures
        if (!before.isEmpty() && !now.isEmpty() && before.get(0).words.equals(now.get(0).words)) {
            text.setTopPixel(top);
        }
        text.setRedraw(true);
        measured.begin();
    }

    private static String lines(List<Paragraph> paragraphs) {
        return paragraphs.stream().map(line -> line.words + "\n").collect(Collectors.joining());
    }

    public void top() {
        text.setTopIndex(0);
    }

    public static String lower(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }
}
