package reglet.workbench.start;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import reglet.desk.NeededFact;
import reglet.workbench.Ui;

/**
 * A page of facts, one below the other in two columns. What one asks for is explained at the top while it is answered, and
 * what is wrong with an answer as it is typed. No answer has to be given.
 */
abstract class AskedPage extends WizardPage {
    private static final int ROOM = 26;
    final Answers answers;
    private final String manner;
    private final List<Row> rows = new ArrayList<>();
    private ScrolledComposite scroll;
    Composite page;

    /** A fact with the control that takes its answer. */
    private record Row(NeededFact fact, Control control, Label label) {
    }

    AskedPage(String name, String title, String manner, Answers answers) {
        super(name, title, null);
        this.answers = answers;
        this.manner = manner;
        setDescription(manner);
    }

    @Override
    public final void createControl(Composite parent) {
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        page = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(Ui.characters(page, 1), Ui.characters(page, 1))
            .spacing(Ui.characters(page, 2), 4).applyTo(page);
        fill();
        scroll.setContent(page);
        scroll.setMinSize(page.computeSize(SWT.DEFAULT, SWT.DEFAULT));
        GridDataFactory.fillDefaults().grab(true, true).hint(Ui.characters(scroll, 90), Ui.characters(scroll, 62)).applyTo(scroll);
        setControl(scroll);
        look();
    }

    /** Makes the rows of the page. */
    abstract void fill();

    void head(String words) {
        Label head = new Label(page, SWT.NONE);
        head.setText(words);
        head.setFont(Ui.strong(head));
        GridDataFactory.fillDefaults().span(2, 1).indent(0, rows.isEmpty() ? 0 : Ui.characters(head, 1)).applyTo(head);
    }

    Label label(String words) {
        Label label = new Label(page, SWT.NONE);
        label.setText(words + ":");
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
        return label;
    }

    Text text(String name, Runnable changed) {
        Text text = Ui.named(new Text(page, SWT.BORDER | SWT.SINGLE), name);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(text);
        text.addModifyListener(event -> {
            changed.run();
            look();
        });
        return text;
    }

    void ask(NeededFact fact) {
        String usual = fact.property().usual().map(value -> " (usually " + value.text() + ")").orElse("");
        String words = fact.property().label();
        Label label = label(words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1) + usual);
        Control control;
        if (fact.words().isEmpty()) {
            Text text = Ui.named(new Text(page, SWT.BORDER | SWT.SINGLE), words);
            text.setText(answers.get(fact));
            text.addModifyListener(event -> take(fact, text.getText()));
            control = text;
        } else {
            Combo combo = Ui.named(new Combo(page, SWT.READ_ONLY), words);
            combo.add("");
            fact.words().forEach(combo::add);
            combo.setText(answers.get(fact));
            combo.addModifyListener(event -> take(fact, combo.getText()));
            control = combo;
        }
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.CENTER).hint(Ui.characters(control, ROOM), SWT.DEFAULT).applyTo(control);
        control.setToolTipText(fact.property().help().isEmpty() ? null : fact.property().help());
        control.addFocusListener(FocusListener.focusGainedAdapter(event -> {
            String help = fact.property().help();
            setDescription(help.isEmpty() ? manner : help);
            scroll.showControl(control);
        }));
        rows.add(new Row(fact, control, label));
    }

    private void take(NeededFact fact, String answer) {
        answers.put(fact, answer);
        look();
    }

    /** What is wrong with the page beside the answers; "" for nothing. */
    String wrong() {
        return "";
    }

    /** Whether what has to be said is said. */
    boolean isEnough() {
        return true;
    }

    final void look() {
        String wrong = wrong();
        for (Row row : rows) {
            if (wrong.isEmpty()) {
                wrong = answers.wrong(row.fact());
            }
        }
        setMessage(wrong.isEmpty() ? null : "≠ " + wrong, wrong.isEmpty() ? IMessageProvider.NONE : IMessageProvider.ERROR);
        setPageComplete(wrong.isEmpty() && isEnough());
    }

    @Override
    public void setVisible(boolean visible) {
        if (visible) {
            rows.stream().map(Row::control).filter(Text.class::isInstance).map(Text.class::cast).forEach(this::hint);
            look();
        }
        super.setVisible(visible);
    }

    private void hint(Text text) {
        rows.stream().filter(row -> row.control() == text).findFirst().ifPresent(row -> text.setMessage(row.fact()
            .unit(answers.units).map(unit -> unit.symbol()).orElse("")));
    }
}
