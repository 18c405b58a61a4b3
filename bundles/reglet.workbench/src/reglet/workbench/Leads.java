package reglet.workbench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;

/**
 * The stretches of a text that lead somewhere. A click follows one; Tab and Shift+Tab go from one to the next, which is selected and
 * brought in sight, and Enter follows it. Behind the last one Tab leaves the text.
 */
final class Leads {
    private static final int NOWHERE = -1;
    private final StyledText text;
    /** In the order made, for clicks. */
    private List<Lead> leads = List.of();
    /** In the order of the text, for keys. */
    private List<Lead> reached = List.of();
    private int at = NOWHERE;
    private boolean keys = true;

    /** A stretch of text that leads somewhere. */
    record Lead(int start, int end, Runnable to) {
        boolean holds(int offset) {
            return start <= offset && offset < end;
        }
    }

    Leads(StyledText text) {
        this.text = text;
        text.addListener(SWT.MouseDown, event -> at = NOWHERE);
        text.addListener(SWT.MouseUp, event -> {
            if (text.getSelectionCount() == 0) {
                under(event).ifPresent(lead -> lead.to.run());
            }
        });
        text.addListener(SWT.MouseMove, event -> {
            if (keys) {
                text.setCursor(under(event).isPresent() ? text.getDisplay().getSystemCursor(SWT.CURSOR_HAND) : null);
            }
        });
        text.addListener(SWT.Traverse, this::traverse);
        text.addVerifyKeyListener(event -> {
            if (keys && at != NOWHERE && (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR || event.character == ' ')) {
                event.doit = false;
                reached.get(at).to.run();
            }
        });
        text.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                if (event.childID == ACC.CHILDID_SELF && at != NOWHERE) {
                    event.result += ", link " + (at + 1) + " of " + reached.size() + ": " + text.getSelectionText() + ". Enter follows it.";
                }
            }
        });
    }

    /** The text has keys of its own: only clicks follow from now on. */
    void byClickAlone() {
        keys = false;
    }

    /** @param otherText whether they stand in another text than before; else the one reached stays so */
    void are(List<Lead> now, boolean otherText) {
        leads = List.copyOf(now);
        reached = leads.stream().sorted(Comparator.comparingInt(Lead::start)).toList();
        at = otherText || at >= reached.size() ? NOWHERE : at;
    }

    private Optional<Lead> under(Event event) {
        int offset = text.getOffsetAtPoint(new Point(event.x, event.y));
        return offset < 0 ? Optional.empty() : leads.stream().filter(lead -> lead.holds(offset)).findFirst();
    }

    private void traverse(Event event) {
        int by = event.detail == SWT.TRAVERSE_TAB_NEXT ? 1 : event.detail == SWT.TRAVERSE_TAB_PREVIOUS ? -1 : 0;
        if (!keys || by == 0) {
            return;
        }
        int next = at == NOWHERE && by < 0 ? NOWHERE : at + by;
        boolean leaves = next < 0 || next >= reached.size();
        at = leaves ? NOWHERE : next;
        event.doit = leaves;
        if (leaves) {
            text.setSelection(text.getSelection().x);
        } else {
            text.setSelection(reached.get(at).start, reached.get(at).end);
            text.showSelection();
            text.getAccessible().setFocus(ACC.CHILDID_SELF);
        }
    }
}
