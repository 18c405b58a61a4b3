package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Composite;

/**
 * Text that is read, not typed: paragraphs with headings, emphasis, hanging marks and places that lead somewhere. Built on the
 * window's thread and shown at once, without moving what the person reads when the text is the same.
 */
final class Prose {
    private final StyledText text;
    private final Font heading;
    private final Font strong;
    private final StringBuilder words = new StringBuilder();
    private final List<StyleRange> styles = new ArrayList<>();
    private final List<Indent> indents = new ArrayList<>();
    private final List<Lead> leads = new ArrayList<>();
    private List<Lead> shownLeads = List.of();

    /** Indents of a line in characters: of its first row, and of the rows that it wraps to. */
    private record Indent(int first, int rest) {
    }

    /** A stretch of text that leads somewhere. */
    private record Lead(int start, int end, Runnable to) {
    }

    Prose(Composite parent, String name) {
        text = Ui.named(new StyledText(parent, SWT.MULTI | SWT.WRAP | SWT.V_SCROLL | SWT.READ_ONLY), name);
        text.setEditable(false);
        text.setCaret(null);
        int margin = Ui.characters(text, 1);
        text.setMargins(margin, margin / 2, margin, margin / 2);
        text.setLineSpacing(2);
        heading = Ui.heading(text);
        strong = Ui.strong(text);
        text.addListener(SWT.MouseUp, event -> {
            int offset = text.getOffsetAtPoint(new org.eclipse.swt.graphics.Point(event.x, event.y));
            if (offset >= 0 && text.getSelectionCount() == 0) {
                shownLeads.stream().filter(lead -> lead.start <= offset && offset < lead.end).findFirst().ifPresent(lead -> lead.to.run());
            }
        });
    }

    StyledText control() {
        return text;
    }

    int length() {
        return words.length();
    }

    Prose heading(String line) {
        return styled(line, heading, null).end(0, 0);
    }

    /** A line in the emphasis, with room above it. */
    Prose title(String line) {
        if (!words.isEmpty()) {
            end(0, 0);
        }
        return styled(line, strong, null).end(0, 0);
    }

    Prose line(String line) {
        return plain(line).end(0, 0);
    }

    /** A line with a mark of its own in front, its rows hanging behind the mark. */
    Prose item(String mark, String line) {
        return mark(mark).plain(line).end(1, 2 + Math.max(2, mark.length() + 1));
    }

    /** A mark that the rest of the paragraph hangs behind; {@link #end} says where. */
    Prose mark(String mark) {
        return plain(mark + "\t");
    }

    Prose plain(String run) {
        words.append(oneLine(run));
        return this;
    }

    Prose strong(String run) {
        return styled(run, strong, null);
    }

    /** A run in the theme's colour for links, which leads somewhere. */
    Prose lead(String run, Runnable to) {
        leads.add(new Lead(words.length(), words.length() + run.length(), to));
        return styled(run, null, text.getDisplay().getSystemColor(SWT.COLOR_LINK_FOREGROUND));
    }

    /** What was written from an offset on leads somewhere; leads made before it go first. */
    Prose leading(int from, Runnable to) {
        leads.add(new Lead(from, words.length(), to));
        return this;
    }

    private Prose styled(String run, Font font, org.eclipse.swt.graphics.Color colour) {
        StyleRange style = new StyleRange();
        style.start = words.length();
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
    Prose end(int first, int rest) {
        indents.add(new Indent(first, rest));
        words.append('\n');
        return this;
    }

    /** Shows what was built and starts anew. Gives whether anything else stands there now. */
    boolean show() {
        String next = words.toString();
        boolean changed = !next.equals(text.getText());
        if (changed) {
            int top = text.getTopPixel();
            text.setRedraw(false);
            text.setText(next);
            text.setStyleRanges(styles.toArray(StyleRange[]::new));
            for (int line = 0; line < indents.size(); line++) {
                text.setLineIndent(line, 1, Ui.characters(text, indents.get(line).first));
                text.setLineWrapIndent(line, 1, Ui.characters(text, indents.get(line).rest));
                text.setLineTabStops(line, 1, new int[] {Ui.characters(text, indents.get(line).rest) - Ui.characters(text,
                    indents.get(line).first)});
            }
            text.setTopPixel(top);
            text.setRedraw(true);
        }
        shownLeads = List.copyOf(leads);
        words.setLength(0);
        styles.clear();
        indents.clear();
        leads.clear();
        return changed;
    }

    void top() {
        text.setTopIndex(0);
    }

    static String lower(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }
}
