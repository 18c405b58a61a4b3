package reglet.workbench.section;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;

import reglet.desk.Bid;
import reglet.desk.SectionPage;
import reglet.desk.SectionPage.Line;
import reglet.model.UnusableInput;
import reglet.workbench.Latest;
import reglet.workbench.Part;
import reglet.workbench.Prose;
import reglet.workbench.ReasonForm;
import reglet.workbench.Snapshot;
import reglet.workbench.Ui;

/** The drafted section as it will print, written in where it stands; what speaks of the component in focus is marked and in sight. */
public final class SectionView extends Part implements Writing.Page {
    public static final String ID = "reglet.workbench.section";
    /** What changes the section's text. */
    private static final Set<Command> CHANGES = EnumSet.of(Command.WRITE, Command.ADD, Command.STRIKE, Command.LEAVE_OUT,
        Command.GIVE_BACK, Command.UP, Command.DOWN, Command.SETTLE);
    private static final String READING = "reglet.workbench.in.section";
    private static final String WRITING = "reglet.workbench.in.paragraph";
    private Composite all;
    private Prose prose;
    private StyledText text;
    private PageText written;
    private Margin margin;
    private FindBar find;
    private AboutPane about;
    private LeaveOutForm leaving;
    private Writing writing;
    private Steps steps;
    private Latest latest;
    private String number = "";
    private Bid bid = Bid.AGREED;
    private Path folder;
    private Optional<SectionPage> page = Optional.empty();
    private String here = "";
    private int column;
    /** A paragraph behind which one was added that the next page will show. */
    private String awaited = "";
    private boolean drawing;
    private Keys keys;
    private Ways ways;

    /** What can be done in the section. */
    enum Command {
        WRITE, ADD, STRIKE, LEAVE_OUT, GIVE_BACK, UP, DOWN, SETTLE, CHOICE, FOLLOW, BACK, NEXT_OWN, PREVIOUS_OWN, FIND, FIND_NEXT,
            FIND_PREVIOUS,
        NOTE, TAKE, LEAVE, TYPING_UNDO, TYPING_REDO
    }

    @Override
    protected void fill(Composite frame) {
        all = frame;
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 0).applyTo(frame);
        Composite top = new Composite(frame, SWT.NONE);
        top.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, false, 2, 1));
        GridLayoutFactory.fillDefaults().applyTo(top);
        Composite middle = new Composite(frame, SWT.NONE);
        GridData rest = new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1);
        rest.heightHint = 1;
        rest.widthHint = 1;
        middle.setLayoutData(rest);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 0).applyTo(middle);
        prose = new Prose(middle, "Section").withCaret();
        text = prose.control();
        text.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        written = new PageText(prose, id -> session().snapshot().flatMap(now -> now.component(id)).map(found -> found.id()),
            component -> ways.look(component), reference -> ways.follow(reference));
        ways = new Ways(this, session(), text, written);
        margin = new Margin(middle, text, () -> written.rows(), () -> here);
        margin.before(text);
        find = new FindBar(top, text);
        about = new AboutPane(frame, new AboutPane.Decisions() {
            @Override
            public void settle(Line line) {
                steps.settle(line);
            }

            @Override
            public void keep(Line line) {
                steps.keep(line);
            }

            @Override
            public void giveBack(Line line) {
                steps.giveBack(line);
            }
        });
        leaving = new LeaveOutForm(frame, () -> text.setFocus());
        latest = new Latest(frame);
        keys = new Keys(getSite());
        writing = new Writing(session(), prose, this);
        steps = new Steps(session(), writing, this);
        text.addCaretListener(event -> stood());
        text.addListener(SWT.FocusIn, event -> {
            keys.on(READING);
            told();
        });
        text.addListener(SWT.FocusOut, event -> keys.off(READING));
        text.addListener(SWT.Resize, event -> Ui.later(text, this::resized));
        text.addVerifyKeyListener(event -> {
            if (event.keyCode == SWT.DEL && event.stateMask == 0) {
                // the platform's keys leave Delete and Escape to a text that may want them itself
                event.doit = false;
                run(Command.STRIKE);
            } else if (event.character > ' ' && event.character != SWT.DEL && (event.stateMask & (SWT.CTRL | SWT.ALT)) == 0) {
                // a letter typed on the page begins writing with it
                event.doit = false;
                write(String.valueOf(event.character));
            }
        });
        text.addListener(SWT.MouseDoubleClick, event -> run(Command.WRITE));
        Keys.menu(text, ID, getSite());
    }

    @Override
    public void dispose() {
        if (keys != null) {
            keys.none();
        }
        super.dispose();
    }

    /** A letter typed on the page. */
    private void write(String typed) {
        if (page.isPresent() && !isHeld()) {
            writing.write(typed);
        }
    }

    /** Does what a command says. */
    void run(Command command) {
        if (page.isEmpty() || CHANGES.contains(command) && isHeld()) {
            return;
        }
        switch (command) {
            case WRITE -> writing.write("");
            case ADD -> writing.add();
            case STRIKE -> steps.strike();
            case LEAVE_OUT -> steps.leaveOut();
            case GIVE_BACK -> steps.giveBack();
            case UP -> steps.up();
            case DOWN -> steps.down();
            case SETTLE -> decide();
            case CHOICE -> ways.choose(writing.editor().flatMap(ParagraphEditor::valueHere));
            case FOLLOW -> ways.followHere();
            case BACK -> ways.back();
            case NEXT_OWN -> ways.own(1);
            case PREVIOUS_OWN -> ways.own(-1);
            case FIND -> find.open();
            case FIND_NEXT -> find.step(1);
            case FIND_PREVIOUS -> find.step(-1);
            case NOTE -> about.toggleNotes();
            case TAKE -> writing.take();
            case LEAVE -> writing.leave();
            case TYPING_UNDO -> writing.editor().ifPresent(editor -> editor.field().undo());
            case TYPING_REDO -> writing.editor().ifPresent(editor -> editor.field().redo());
        }
    }

    /** Whether another bid than the work as it will be built is shown, in which nobody writes; says so then. */
    private boolean isHeld() {
        boolean held = !session().bid().equals(Bid.AGREED);
        if (held) {
            refuse("This bid's section is to be looked at. To write in it, show the wall as the base bid: an offered alternate's own "
                + "paragraphs stand there too.");
        }
        return held;
    }

    // ---- the page

    @Override
    protected boolean followsBid() {
        return true;
    }

    @Override
    public void jobChanged() {
        ask();
    }

    @Override
    public void focusChanged() {
        boolean other = session().snapshot().map(now -> !now.section(session().focus()).equals(number)).orElse(false);
        if (other) {
            ask();
        } else {
            mark(true);
            follow();
        }
    }

    /** Who looks at a component elsewhere in the window stands at its paragraph here. */
    private void follow() {
        String component = session().focus().component();
        if (Ui.hasKeyboard(all) || page.isEmpty()) {
            return;
        }
        boolean there = written.row(here).map(row -> row.components().contains(component)).orElse(false);
        written.of(component).stream().filter(row -> !there).findFirst().ifPresent(row -> {
            here = row.line().id();
            column = 0;
            drawing = true;
            text.setCaretOffset(text.getOffsetAtLine(row.index()));
            drawing = false;
        });
        told();
    }

    /** The paragraph that the person is at; empty where what they look at has none here. */
    private Optional<Line> lookedAt() {
        String component = session().focus().component();
        return component.isEmpty() || Ui.hasKeyboard(all)
            || written.row(here).map(row -> row.components().contains(component)).orElse(false) ? here() : Optional.empty();
    }

    private void ask() {
        Snapshot now = session().seen().orElse(null);
        if (now == null) {
            setPartName("Section");
            writing.drop();
            nothing("The drafted section stands here as it will print. It grows with every choice.");
            return;
        }
        if (!now.job().folder().equals(folder)) {
            writing.drop();
            folder = now.job().folder();
        }
        String wanted = now.section(session().focus());
        boolean same = wanted.equals(number);
        if (!same || !session().bid().equals(bid)) {
            writing.take();
            leaving.hide();
        }
        number = wanted;
        bid = session().bid();
        setPartName(wanted.isEmpty() ? "Section" : "Section " + wanted);
        if (!now.job().job().sections().contains(wanted)) {
            nothing("This job doesn't write section " + wanted + now.job().pack().plan(wanted).map(plan -> ", " + plan.title()).orElse("")
                + ". To have it drafted, add its number to the sections in job.yaml.");
            return;
        }
        latest.ask("Drafting section " + wanted, monitor -> draft(now, wanted), draft -> {
            if (draft.page == null) {
                nothing("Section " + wanted + " can't be drafted. " + draft.why);
            } else {
                show(draft.page, same);
            }
        });
    }

    private void nothing(String why) {
        latest.cancel();
        page = Optional.empty();
        leaving.hide();
        written.clear();
        about.show(Optional.empty());
        showEmpty(why);
    }

    /** A section, or why there is none. */
    private record Draft(SectionPage page, String why) {
    }

    private static Draft draft(Snapshot now, String wanted) {
        try {
            return new Draft(SectionPage.of(now.job(), wanted), "");
        } catch (UnusableInput unusable) {
            return new Draft(null, unusable.getMessage());
        }
    }

    private void show(SectionPage next, boolean same) {
        List<String> before = page.map(SectionPage::lines).orElse(List.of()).stream().map(Line::id).toList();
        page = Optional.of(next);
        writing.drafted();
        if (!awaited.isEmpty()) {
            next.lines().stream().map(Line::id).filter(id -> id.startsWith(awaited + "+") && !before.contains(id)).findFirst()
                .ifPresent(id -> here = id);
            awaited = "";
        }
        redraw();
        show();
        // in turns of their own: a text measures all that stands above what is brought in sight
        if (!same) {
            Ui.later(text, () -> mark(true));
        }
        Ui.later(text, this::follow);
        if (steps.drawn()) {
            written.bring(here);
        }
    }

    @Override
    public void redraw() {
        if (page.isEmpty()) {
            return;
        }
        drawing = true;
        List<String> before = written.rows().stream().map(row -> row.line().id()).toList();
        written.draw(page.get(), writing.gap());
        if (written.row(here).isEmpty()) {
            // what stood there is gone: the keyboard stays where it was
            int place = Math.max(0, before.indexOf(here) - 1);
            here = written.rows().isEmpty() ? "" : before.isEmpty() || written.row(before.get(place)).isEmpty()
                ? written.rows().get(0).line().id() : before.get(place);
        }
        written.row(here).ifPresent(row -> text.setCaretOffset(Math.min(text.getOffsetAtLine(row.index()) + column,
            end(row.index()))));
        drawing = false;
        mark(false);
        told();
        writing.gap().ifPresent(gap -> {
            written.bring();
            // the editor's place is told by painting, which the text leaves out where it thinks nothing changed
            text.redraw();
        });
    }

    /** What the person stands at stays in sight when what stands below it takes room. */
    private void resized() {
        if (writing.gap().isPresent()) {
            redraw();
        } else if (text.isFocusControl() || find.isOpen() || leaving.isOpen()) {
            written.bring(here);
            text.showSelection();
        }
    }

    private int end(int line) {
        return text.getOffsetAtLine(line) + text.getLine(line).length();
    }

    /** The keyboard stands somewhere else. */
    private void stood() {
        if (drawing || written.rows().isEmpty()) {
            return;
        }
        written.rowAt(text.getCaretOffset()).ifPresent(row -> {
            column = Math.max(0, text.getCaretOffset() - text.getOffsetAtLine(row.index()));
            if (!here.equals(row.line().id())) {
                here = row.line().id();
                told();
            }
        });
    }

    private void told() {
        margin.redraw();
        about.show(lookedAt());
        Ui.later(text, this::resized);
    }

    private void mark(boolean reveal) {
        written.mark(session().focus().component(), reveal);
    }

    private void decide() {
        if (!about.decide()) {
            refuse("The library's text of this paragraph has not changed since it was written.");
        }
    }

    // ---- for whoever writes

    @Override
    public String section() {
        return number;
    }

    @Override
    public Optional<SectionPage> now() {
        return page;
    }

    @Override
    public Optional<Line> here() {
        return page.flatMap(now -> now.line(here));
    }

    @Override
    public void stand(String paragraph, boolean added) {
        here = paragraph;
        awaited = added ? paragraph : "";
    }

    @Override
    public void choose(String slot) {
        ways.choose(slot);
    }

    @Override
    public void refuse(String why) {
        about.refuse(why);
    }

    @Override
    public void tell(String what) {
        about.tell(what);
    }

    @Override
    public void askWhy(Line line, String what, ReasonForm.Given told) {
        leaving.ask(line.id(), what, told);
    }

    @Override
    public void answered() {
        leaving.clear();
    }

    @Override
    public void writing(boolean on) {
        if (on) {
            keys.on(WRITING);
        } else {
            keys.off(WRITING);
        }
        about.hint(on ? "Ctrl+Enter or leaving the paragraph takes the text over, Escape leaves it as it was." : "");
    }

    @Override
    protected void focusPage() {
        writing.editor().ifPresentOrElse(ParagraphEditor::setFocus, () -> text.setFocus());
    }
}
