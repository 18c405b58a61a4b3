package reglet.workbench.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import reglet.workbench.Ui;

/** A bar above the text that finds words in it: Enter goes on, Shift+Enter back, Escape closes it. */
final class FindBar {
    private final Composite bar;
    private final Text field;
    private final Label count;
    private final StyledText text;

    FindBar(Composite parent, StyledText text) {
        this.text = text;
        bar = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(5).margins(4, 2).applyTo(bar);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).exclude(true).applyTo(bar);
        bar.setVisible(false);
        field = Ui.named(new Text(bar, SWT.SINGLE | SWT.BORDER), "Find in the section");
        field.setMessage("Find");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(Ui.characters(field, 8), SWT.DEFAULT)
            .applyTo(field);
        count = Ui.named(new Label(bar, SWT.NONE), "Find, how many");
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(count);
        button("▲", "Find the one before", () -> step(-1));
        button("▼", "Find the next", () -> step(1));
        button("×", "Close find", this::close);
        field.addModifyListener(event -> found());
        field.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_RETURN) {
                event.doit = false;
                step((event.stateMask & SWT.SHIFT) != 0 ? -1 : 1);
            } else if (event.detail == SWT.TRAVERSE_ESCAPE) {
                event.doit = false;
                close();
            }
        });
    }

    private void button(String sign, String name, Runnable action) {
        Button button = Ui.named(new Button(bar, SWT.PUSH | SWT.FLAT), name);
        button.setText(sign);
        button.setToolTipText(name);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
    }

    void open() {
        show(true);
        String selected = text.getSelectionText();
        if (!selected.isEmpty() && !selected.contains("\n")) {
            field.setText(selected);
        }
        field.setFocus();
        field.selectAll();
    }

    boolean isOpen() {
        return bar.getVisible();
    }

    private void close() {
        show(false);
        text.setFocus();
    }

    private void show(boolean shown) {
        ((GridData) bar.getLayoutData()).exclude = !shown;
        bar.setVisible(shown);
        bar.requestLayout();
    }

    /** The next place from where the keyboard stands, or the one before; round at the end. */
    void step(int by) {
        if (!bar.getVisible()) {
            open();
            return;
        }
        List<Integer> places = places();
        if (places.isEmpty()) {
            found();
            return;
        }
        Point at = text.getSelection();
        int next;
        if (by > 0) {
            next = (int) places.stream().filter(place -> place < (at.x == at.y ? at.x : at.x + 1)).count();
        } else {
            next = (int) places.stream().filter(place -> place < at.x).count() - 1;
        }
        select(places, Math.floorMod(next, places.size()));
    }

    /** While it is typed: the first place from where the last one was found. */
    private void found() {
        List<Integer> places = places();
        if (places.isEmpty()) {
            count.setText(field.getText().isEmpty() ? "" : "not found");
            count.requestLayout();
            return;
        }
        int from = text.getSelection().x;
        select(places, Math.floorMod((int) places.stream().filter(place -> place < from).count(), places.size()));
    }

    private void select(List<Integer> places, int which) {
        int place = places.get(which);
        text.setSelection(place, place + field.getText().length());
        text.showSelection();
        tell(which + 1, places.size());
    }

    private void tell(int which, int of) {
        count.setText(which + " of " + of);
        count.requestLayout();
    }

    private List<Integer> places() {
        String wanted = field.getText().toLowerCase(Locale.ROOT);
        List<Integer> places = new ArrayList<>();
        if (wanted.isEmpty()) {
            return places;
        }
        String all = text.getText().toLowerCase(Locale.ROOT);
        for (int place = all.indexOf(wanted); place >= 0; place = all.indexOf(wanted, place + wanted.length())) {
            places.add(place);
        }
        return places;
    }
}
