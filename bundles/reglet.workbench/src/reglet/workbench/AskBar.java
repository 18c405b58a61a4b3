package reglet.workbench;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** A bar on top of a view with the question that waits longest and its answers; no bar when nothing is asked. */
final class AskBar {
    static final String NAME = "Question";
    private final Composite bar;
    private final Asks asks;
    private final Runnable after;

    /**
     * @param parent laid out by a grid of one column
     * @param after  done after an answer: takes the keyboard, which the button that goes had
     */
    AskBar(Composite parent, Asks asks, Runnable after) {
        this.after = after;
        this.asks = asks;
        this.bar = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(bar);
        bar.setVisible(false);
        Runnable follow = this::follow;
        asks.listen(follow);
        bar.addDisposeListener(event -> asks.leave(follow));
        follow();
    }

    private void follow() {
        if (asks.first().isEmpty() && bar.getChildren().length == 0) {
            return;
        }
        for (Control child : bar.getChildren()) {
            child.dispose();
        }
        boolean shown = asks.first().isPresent();
        asks.first().ifPresent(this::show);
        ((GridData) bar.getLayoutData()).exclude = !shown;
        bar.setVisible(shown);
        bar.requestLayout();
    }

    private void show(Asks.Ask ask) {
        GridLayoutFactory.swtDefaults().numColumns(1 + ask.answers().size()).applyTo(bar);
        Label words = Ui.named(new Label(bar, SWT.WRAP), NAME);
        words.setText("? " + ask.words() + (asks.count() > 1 ? "  (1 of " + asks.count() + " questions)" : ""));
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(Ui.characters(words, 30), SWT.DEFAULT)
            .applyTo(words);
        for (Asks.Answer answer : ask.answers()) {
            Button button = Ui.named(new Button(bar, SWT.PUSH), answer.words());
            button.setText(answer.words());
            button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
                asks.answer(ask, answer);
                after.run();
            }));
        }
        bar.setBackground(Ui.highlight(bar));
        words.setBackground(bar.getBackground());
    }
}
