package reglet.workbench.sheets;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.TableEditor;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

import reglet.workbench.Ui;

/** A field over a cell of a table. Enter takes over what stands in it, Escape and leaving it don't; what is wrong is told, and it stays. */
final class InPlace {
    private final Table table;
    private final TableEditor editor;
    private final Consumer<String> tell;
    private boolean closing;

    /** @param tell told what is wrong, in words; "" for nothing */
    InPlace(Table table, Consumer<String> tell) {
        this.table = table;
        this.tell = tell;
        editor = new TableEditor(table);
        editor.grabHorizontal = true;
        editor.minimumWidth = Ui.characters(table, 16);
    }

    /**
     * Opens a field over a cell of the selected row.
     *
     * @param caret what is selected of the text: 0 all, a positive number nothing, with the caret there, a negative one all but so many
     *              characters at the end
     * @param words what may be chosen; empty where anything may be typed
     * @param take  given the text; answers what is wrong with it, or "" when it is taken over
     */
    void open(int column, String name, String text, int caret, List<String> words, Function<String, String> take) {
        close();
        Control field = words.isEmpty() ? text(text, caret) : combo(text, words);
        Ui.named(field, name);
        field.addListener(SWT.Traverse, event -> traverse(event, field, take));
        field.addListener(SWT.FocusOut, event -> Ui.later(field, () -> {
            if (!field.isFocusControl()) {
                close();
            }
        }));
        editor.horizontalAlignment = SWT.FILL;
        editor.setEditor(field, table.getItem(table.getSelectionIndex()), column);
        field.setFocus();
    }

    private Text text(String text, int caret) {
        Text field = new Text(table, SWT.SINGLE | SWT.BORDER);
        field.setText(text);
        if (caret > 0) {
            field.setSelection(caret);
        } else {
            field.setSelection(0, text.substring(0, text.length() + caret).stripTrailing().length());
        }
        // the toolkit selects all when a field gets the keyboard
        field.addListener(SWT.FocusIn, event -> {
            if (caret > 0) {
                field.setSelection(caret);
            } else {
                field.setSelection(0, text.substring(0, text.length() + caret).stripTrailing().length());
            }
        });
        return field;
    }

    private Combo combo(String text, List<String> words) {
        Combo field = new Combo(table, SWT.DROP_DOWN | SWT.READ_ONLY);
        words.forEach(field::add);
        field.setText(text);
        return field;
    }

    private void traverse(Event event, Control field, Function<String, String> take) {
        if (event.detail == SWT.TRAVERSE_ESCAPE) {
            event.doit = false;
            close();
            table.setFocus();
        } else if (event.detail == SWT.TRAVERSE_RETURN) {
            event.doit = false;
            String wrong = take.apply(field instanceof Text typed ? typed.getText() : ((Combo) field).getText());
            tell.accept(wrong);
            if (wrong.isEmpty()) {
                close();
                table.setFocus();
            }
        }
    }

    void close() {
        Control field = editor.getEditor();
        if (field != null && !closing) {
            closing = true;
            editor.setEditor(null);
            if (!field.isDisposed()) {
                boolean had = field.isFocusControl();
                field.dispose();
                if (had) {
                    table.setFocus();
                }
            }
            tell.accept("");
            closing = false;
        }
    }

}
