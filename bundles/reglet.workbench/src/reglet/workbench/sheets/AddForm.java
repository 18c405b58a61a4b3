package reglet.workbench.sheets;

import java.util.List;
import java.util.function.Function;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import reglet.model.Box;
import reglet.workbench.Ui;

/** A value that was not read: which property, and what the sheet shows at the place marked on the page. */
final class AddForm {
    private final Composite form;
    private final Label where;
    private final Combo property;
    private final Text value;
    private final Runnable closed;
    private final Adder adder;
    private List<String> paths = List.of();
    private int page;
    private Box box;

    /** Takes a value over. */
    interface Adder {
        /** @return what is wrong with it; "" when it is taken over */
        String add(String property, String text, int page, Box box);
    }

    AddForm(Composite parent, Adder adder, Function<String, String> example, Runnable closed) {
        this.adder = adder;
        this.closed = closed;
        form = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(form);
        GridLayoutFactory.fillDefaults().numColumns(5).applyTo(form);
        form.setVisible(false);
        where = new Label(form, SWT.NONE);
        property = Ui.named(new Combo(form, SWT.READ_ONLY), "Property at the place marked");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(property);
        value = Ui.named(new Text(form, SWT.SINGLE | SWT.BORDER), "Value at the place marked");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(value);
        property.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> value.setMessage(example.apply(paths
            .get(property.getSelectionIndex())))));
        button("A&dd", "Add the value", this::add);
        button("Ca&ncel", "Add nothing", this::close);
        for (var control : List.of(value, property)) {
            control.addListener(SWT.Traverse, event -> {
                if (event.detail == SWT.TRAVERSE_ESCAPE) {
                    event.doit = false;
                    close();
                } else if (event.detail == SWT.TRAVERSE_RETURN && control == value) {
                    event.doit = false;
                    add();
                }
            });
        }
    }

    private void button(String words, String name, Runnable action) {
        Button button = Ui.named(new Button(form, SWT.PUSH), name);
        button.setText(words);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
    }

    /** Asks for a value at a place; what was begun stays. */
    void open(List<String> properties, List<String> labels, int at, Box place) {
        if (!properties.equals(paths)) {
            paths = List.copyOf(properties);
            property.setItems(labels.toArray(String[]::new));
        }
        page = at;
        box = place;
        where.setText("Marked on page " + at + ":");
        visible(true);
        property.setFocus();
    }

    private void add() {
        if (property.getSelectionIndex() < 0) {
            property.setFocus();
            return;
        }
        if (adder.add(paths.get(property.getSelectionIndex()), value.getText(), page, box).isEmpty()) {
            value.setText("");
            value.setMessage("");
            property.deselectAll();
            close();
        } else {
            value.setFocus();
        }
    }

    void close() {
        if (form.getVisible()) {
            visible(false);
            closed.run();
        }
    }

    private void visible(boolean shown) {
        form.setVisible(shown);
        ((GridData) form.getLayoutData()).exclude = !shown;
        form.getParent().layout();
    }
}
