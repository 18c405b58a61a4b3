package reglet.workbench;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

import reglet.desk.ChangePapers;
import reglet.desk.Issues;
import reglet.desk.Questions;
import reglet.model.Issue;
import reglet.model.Question;
import reglet.model.UnusableInput;

/**
 * What was given out and what was asked about it. An issue shows what changed since it up to the next, or between it and another one
 * that is selected with it; a question shows its answer, or takes one.
 */
public final class IssuesView extends Part {
    public static final String ID = "reglet.workbench.issues";
    private TableViewer issues;
    private TableViewer questions;
    private Text words;
    private GiveOut giveOut;
    private AnswerLine answer;
    private WhenSeen seen;
    private Latest reading;
    private Latest comparing;
    private Snapshot read;
    private Question question;

    @Override
    protected void fill(Composite page) {
        GridLayoutFactory.swtDefaults().applyTo(page);
        SashForm sash = new SashForm(page, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).hint(1, 1).applyTo(sash);
        SashForm lists = new SashForm(sash, SWT.VERTICAL);
        issues = table(lists, "Issues", SWT.MULTI, List.of(
            new Column("Issue", 40, line -> ((Issue) line).called()), new Column("Kind", 30, line -> IssueWords.sort((Issue) line)),
            new Column("Day", 30, line -> IssueWords.day(((Issue) line).date()))));
        questions = table(lists, "Questions", SWT.SINGLE, List.of(
            new Column("Question", 22, line -> ((Question) line).name()),
            new Column("State", 40, line -> session().snapshot().map(now -> IssueWords.state(now.job().job(), (Question) line)).orElse("")),
            new Column("Asked", 38, line -> ((Question) line).question())));
        issues.getTable().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> changes()));
        questions.getTable().addSelectionListener(SelectionListener.widgetSelectedAdapter(event ->
            question((Question) event.item.getData())));
        words = Ui.named(new Text(sash, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER), "What changed, or was answered");
        sash.setWeights(45, 55);
        giveOut = new GiveOut(page, this::freeze);
        answer = new AnswerLine(page, this::record);
        reading = new Latest(page);
        comparing = new Latest(page);
        seen = new WhenSeen(issues.getTable(), this::update);
    }

    private record Column(String head, int weight, Function<Object, String> words) {
    }

    private static TableViewer table(Composite parent, String name, int style, List<Column> columns) {
        Composite frame = new Composite(parent, SWT.NONE);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        TableViewer table = new TableViewer(frame, style | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        Ui.named(table.getTable(), name);
        table.getTable().setHeaderVisible(true);
        table.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(table);
        for (Column column : columns) {
            TableViewerColumn viewed = new TableViewerColumn(table, SWT.LEFT);
            viewed.getColumn().setText(column.head());
            viewed.setLabelProvider(new ColumnLabelProvider() {
                @Override
                public String getText(Object line) {
                    return column.words().apply(line);
                }

                @Override
                public String getToolTipText(Object line) {
                    return column.words().apply(line);
                }
            });
            layout.setColumnData(viewed.getColumn(), new ColumnWeightData(column.weight(), Ui.characters(table.getTable(), 10)));
        }
        return table;
    }

    @Override
    public void jobChanged() {
        if (session().snapshot().isEmpty()) {
            showEmpty("What was given out, and the questions asked about it, stand here once a job is open.");
            return;
        }
        show();
        seen.ask();
    }

    private void update() {
        Snapshot now = session().snapshot().orElse(null);
        if (now == null || now == read) {
            return;
        }
        boolean sameJob = read != null && read.job().folder().equals(now.job().folder());
        read = now;
        int number = question == null || !sameJob ? 0 : question.number();
        questions.setInput(now.job().job().questions());
        Optional<Question> same = now.job().job().question(number);
        same.ifPresent(found -> questions.getTable().setSelection(now.job().job().questions().indexOf(found)));
        reading.ask("Reading the issues", monitor -> read(now), all -> {
            issues.setInput(all);
            same.ifPresentOrElse(this::question, () -> {
                issues.getTable().setSelection(Math.max(0, all.size() - 2));
                changes();
            });
        });
    }

    /** The issues, the oldest first, and the draft as it stands; a frozen one that isn't as it was issued is told. */
    private List<Issue> read(Snapshot now) throws IOException {
        List<Issue> all = new ArrayList<>();
        try {
            all.addAll(Issues.of(now.job()));
            all.add(Issues.present(now.job()));
        } catch (UnusableInput unusable) {
            session().say(Session.words(unusable), true);
        }
        return all;
    }

    /** Shows what changed: between the two issues selected, else from the one selected to the next. */
    private void changes() {
        question = null;
        answer.about(Optional.empty());
        questions.getTable().deselectAll();
        List<?> all = issues.getInput() == null ? List.of() : (List<?>) issues.getInput();
        int[] selected = issues.getTable().getSelectionIndices();
        if (all.size() < 2 || selected.length == 0) {
            words.setText(all.size() < 2 ? "Nothing was given out yet. Give the sections out below; what changes afterwards is told here."
                : "");
            return;
        }
        int last = selected.length > 1 ? selected[selected.length - 1] : Math.min(selected[0] + 1, all.size() - 1);
        int first = selected.length > 1 ? selected[0] : last == selected[0] ? last - 1 : selected[0];
        Issue before = (Issue) all.get(first);
        Issue after = (Issue) all.get(last);
        comparing.ask("Comparing " + before.called() + " with " + after.called(),
            monitor -> IssueWords.changes(ChangePapers.between(before, after)), words::setText);
    }

    private void question(Question shown) {
        comparing.cancel();
        question = shown;
        issues.getTable().deselectAll();
        session().snapshot().ifPresent(now -> words.setText(IssueWords.whole(now.job().job(), shown)));
        answer.about(Optional.of(shown));
    }

    /** Freezes the job as it stands; a frozen issue can't be taken back, as it can't when it was sent. */
    private void freeze(Issues.Request request) {
        session().work().run("Giving out " + request.name(), true, monitor -> {
            try {
                int papers = Issues.freeze(session().job(), request, new OneByOne.MonitorProgress(monitor)).size();
                session().onWindow(() -> {
                    giveOut.done();
                    read = null;
                    seen.ask();
                });
                session().say("Given out, with " + papers + " files; the folder issues holds them.", false);
            } catch (UnusableInput unusable) {
                String why = Session.reasons(unusable);
                session().onWindow(() -> giveOut.refused(why));
            } catch (reglet.desk.Cancelled cancelled) {
                session().say("Cancelled; nothing was given out.", false);
            }
        });
    }

    private void record(Question asked, String given) {
        session().change(asked.name() + " answered", List.of(Question.FILE),
            job -> Questions.answer(job, asked.number(), List.of(), given, Optional.of(LocalDate.now())), answer::refused);
    }

    @Override
    protected void focusPage() {
        issues.getTable().setFocus();
    }
}
