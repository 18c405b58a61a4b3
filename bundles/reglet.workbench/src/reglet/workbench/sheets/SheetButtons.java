package reglet.workbench.sheets;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

import reglet.desk.Confirming;
import reglet.desk.Confirming.Answer;
import reglet.desk.Confirming.Proposal;
import reglet.workbench.Marks;
import reglet.workbench.Ui;

/** What can be done with the values of a sheet, with the key of each. */
final class SheetButtons {
    private final Composite line;
    private final Button take;
    private final Button leave;
    private final Button correct;
    private final Button add;
    private final Button sure;
    private final Button write;

    SheetButtons(Composite parent, SheetsView view) {
        line = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).hint(Ui.characters(parent, 40), SWT.DEFAULT).applyTo(line);
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.marginLeft = 0;
        row.marginRight = 0;
        row.center = true;
        line.setLayout(row);
        take = button("&Take  (Enter)", "Take the selected value", view::takeSelected);
        leave = button("&Leave out  (Delete)", "Leave the selected value out", view::leaveOutSelected);
        correct = button("C&orrect  (F2)", "Correct the selected value", view::correctSelected);
        add = button("&Add…  (Insert)", "Add a value that was not read", view::addAValue);
        sure = button("Take all s&ure  (F6)", "Take all sure values", view::takeSure);
        write = button("&Write  (F7)", "Write the values into the job", view::write);
    }

    private Button button(String words, String name, Runnable action) {
        Button button = Ui.named(new Button(line, SWT.PUSH), name);
        button.setText(words);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        return button;
    }

    void update(Optional<Confirming> confirming) {
        boolean values = confirming.map(one -> !one.proposals().isEmpty()).orElse(false);
        java.util.List.of(take, leave, correct).forEach(button -> button.setEnabled(values));
        add.setEnabled(confirming.filter(one -> !one.reading().component().isEmpty()).isPresent());
        long open = confirming.stream().flatMap(one -> one.proposals().stream()).filter(one -> one.answer() == Answer.OPEN
            && one.found().confidence() >= Confirming.SURE && one.found().doubt().isEmpty()).count();
        sure.setEnabled(open > 0);
        sure.setText(open > 0 ? "Take all " + open + " s&ure  (F6)" : "Take all s&ure  (F6)");
        long going = confirming.stream().flatMap(one -> one.going().stream()).filter(one -> !one.isHeld()).count();
        write.setEnabled(going > 0);
        write.setText(going > 0 ? "&Write " + Marks.number(going, "value") + " into the job  (F7)" : "&Write into the job  (F7)");
        line.layout(true);
        line.getParent().layout();
    }

    /** How many of a sheet's values are in the job as they stand. */
    static long held(Confirming confirming) {
        return confirming.proposals().stream().filter(Proposal::isHeld).count();
    }
}
