package reglet.workbench.alternates;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

import reglet.desk.AlternateBeside;
import reglet.desk.AlternateChanges;
import reglet.desk.Bid;
import reglet.model.Alternate;
import reglet.model.Alternate.Kind;
import reglet.model.Alternate.State;
import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.Option;
import reglet.model.WallType;
import reglet.workbench.Edit;
import reglet.workbench.Latest;
import reglet.workbench.Marks;
import reglet.workbench.Part;
import reglet.workbench.Refusal;
import reglet.workbench.Snapshot;
import reglet.workbench.Ui;
import reglet.workbench.WhenSeen;
import reglet.workbench.WordColumn;
import reglet.workbench.alternates.AlternateHandler.Command;
import reglet.workbench.section.Keys;

/** The alternates of the job with the owner's word on each, and the selected one beside the base bid. */
public final class AlternatesView extends Part {
    public static final String ID = "reglet.workbench.alternates";
    private static final String IN = "reglet.workbench.in.alternates";
    private TableViewer table;
    private NamesPane names;
    private Composite stack;
    private BesideTable beside;
    private OfferForm form;
    /** What the selected alternate is called and changes, beside the base bid. */
    private Composite selected;
    private Button accept;
    private Button decline;
    private Button again;
    private Button show;
    private Refusal wrong;
    private WhenSeen seen;
    private Latest latest;
    private Keys keys;
    private int chosen;

    @Override
    protected void fill(Composite page) {
        GridLayoutFactory.swtDefaults().applyTo(page);
        SashForm sash = new SashForm(page, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).hint(1, 1).applyTo(sash);
        list(sash);
        stack = new Composite(sash, SWT.NONE);
        stack.setLayout(new StackLayout());
        selected = new Composite(stack, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(selected);
        names = new NamesPane(selected, session());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(names.page());
        beside = new BesideTable(selected, session());
        GridDataFactory.fillDefaults().grab(true, true).hint(1, 1).applyTo(beside.page());
        form = new OfferForm(stack, session(), this::formDone);
        top(selected);
        sash.setWeights(22, 78);
        buttons(page);
        wrong = new Refusal(page, "Alternates, what is wrong");
        latest = new Latest(page);
        seen = new WhenSeen(table.getTable(), this::update);
        keys = new Keys(getSite());
        table.getTable().addListener(SWT.FocusIn, event -> keys.on(IN));
        table.getTable().addListener(SWT.FocusOut, event -> keys.off(IN));
        Keys.menu(table.getTable(), ID, getSite());
    }

    @Override
    public void dispose() {
        if (keys != null) {
            keys.none();
        }
        super.dispose();
    }

    private void list(Composite parent) {
        Composite frame = new Composite(parent, SWT.NONE);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        Ui.named(table.getTable(), "Alternates");
        table.getTable().setHeaderVisible(true);
        table.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(table);
        WordColumn.<Alternate>add(table, columns, "Alternate", 28, 10, one -> "No. " + one.number() + ", " + one.title());
        WordColumn.<Alternate>add(table, columns, "State", 13, 10, one -> one.state().text());
        WordColumn.<Alternate>add(table, columns, "Chooses otherwise", 33, 10, this::chooses);
        WordColumn.<Alternate>add(table, columns, "Brings", 26, 10, this::brings);
        table.getTable().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            chosen = ((Alternate) event.item.getData()).number();
            wrong.say("");
            follow();
        }));
        table.getTable().addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> run(Command.SHOW)));
    }

    private void buttons(Composite page) {
        Composite line = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        GridLayoutFactory.fillDefaults().numColumns(5).applyTo(line);
        show = Ui.button(line, "Show the &wall with it", "Show the wall with the alternate", () -> run(Command.SHOW));
        accept = Ui.button(line, "&Accepted", "Accept the alternate", () -> run(Command.ACCEPT));
        decline = Ui.button(line, "&Declined", "Decline the alternate", () -> run(Command.DECLINE));
        again = Ui.button(line, "&Offered", "Offer the alternate again", () -> run(Command.OFFER_AGAIN));
        Ui.button(line, "&Remove", "Remove the alternate", () -> run(Command.REMOVE));
    }

    /** "lath, lath fastener on W1". */
    private String chooses(Alternate one) {
        return session().snapshot().map(now -> now.job().job().walls().stream().map(wall -> chooses(now, wall, one))
            .filter(words -> !words.isEmpty()).collect(Collectors.joining("; "))).filter(words -> !words.isEmpty()).orElse("nothing yet");
    }

    private static String chooses(Snapshot now, WallType wall, Alternate one) {
        List<String> components = now.job().pack().components().stream().filter(component -> wall.choice(component.id())
            .map(choice -> choice.alternates().containsKey(one.number())).orElse(false)).map(Component::title).toList();
        return components.isEmpty() ? "" : wall.id() + ": " + String.join(", ", components);
    }

    /** What it brings alone, and what with others: "≠ 1 conflict; with No. 3: ≠ 1". */
    private String brings(Alternate one) {
        List<Finding> brought = session().snapshot().map(Snapshot::findings).orElse(List.of()).stream()
            .filter(finding -> finding.alternates().contains(one.number())).toList();
        List<String> parts = new ArrayList<>();
        for (List<Integer> numbers : brought.stream().map(Finding::alternates).distinct().toList()) {
            List<Finding> some = brought.stream().filter(finding -> finding.alternates().equals(numbers)).toList();
            String others = numbers.stream().filter(number -> number != one.number()).map(number -> "No. " + number)
                .collect(Collectors.joining(" and "));
            parts.add(others.isEmpty() ? Marks.counts(some) : "with " + others + ": " + Marks.counts(some));
        }
        return one.is(State.DECLINED) ? "–" : parts.isEmpty() ? "nothing against it" : String.join("; ", parts);
    }

    // ---- what is shown

    @Override
    public void jobChanged() {
        Snapshot now = session().snapshot().orElse(null);
        if (now == null) {
            showEmpty("What bidders price apart from the base bid stands here once a job is open.");
            return;
        }
        form.taken(now.job().job()).ifPresent(number -> chosen = number);
        if (alternates(now).isEmpty() && !form.isOpen()) {
            showEmpty("No alternate is offered yet. Select an option of a component in the wall and offer it as an alternate with "
                + "Ctrl+Shift+A: the base bid keeps its own choice, and bidders price the other one apart.");
            return;
        }
        show();
        seen.ask();
    }

    private static List<Alternate> alternates(Snapshot now) {
        return now.job().job().alternates().stream().filter(one -> one.kind() == Kind.ALTERNATE).toList();
    }

    private void update() {
        Snapshot now = session().snapshot().orElse(null);
        if (now == null) {
            return;
        }
        List<Alternate> all = alternates(now);
        table.setInput(all);
        List<Integer> numbers = all.stream().map(Alternate::number).toList();
        if (!numbers.contains(chosen)) {
            chosen = numbers.isEmpty() ? 0 : numbers.get(0);
        }
        table.getTable().setSelection(numbers.indexOf(chosen));
        follow();
    }

    private Optional<Alternate> selected() {
        return session().snapshot().flatMap(now -> now.job().job().alternate(chosen));
    }

    private void follow() {
        Alternate one = selected().orElse(null);
        Snapshot now = session().snapshot().orElse(null);
        accept.setEnabled(one != null && !one.is(State.ACCEPTED));
        decline.setEnabled(one != null && !one.is(State.DECLINED));
        again.setEnabled(one != null && !one.is(State.OFFERED));
        show.setEnabled(one != null);
        names.show(Optional.ofNullable(one));
        if (one == null || now == null) {
            latest.cancel();
            return;
        }
        latest.ask("Setting " + one.name() + " beside the base bid", monitor -> AlternateBeside.of(now.job(), one.number()), beside::show);
    }

    // ---- what is done

    /** Opens the form for an option that is selected in the wall. */
    void offer(Optional<Option> option) {
        Snapshot now = session().snapshot().orElseThrow();
        Optional<Component> component = now.component(session().focus().component());
        if (option.isEmpty() || component.isEmpty()) {
            session().say("Select a component in the wall, and below it the option to offer.", true);
            return;
        }
        wrong.say("");
        show();
        top(form.page());
        seen.ask();
        form.ask(now.job().job(), session().focus().wall(), component.get(), option.get());
    }

    private void formDone() {
        top(selected);
        table.getTable().setFocus();
        jobChanged();
    }

    private void top(Composite page) {
        ((StackLayout) stack.getLayout()).topControl = page;
        stack.layout();
    }

    /** Does what a command says to the selected alternate. */
    void run(Command command) {
        Alternate one = selected().orElse(null);
        if (one == null) {
            return;
        }
        wrong.say("");
        switch (command) {
            case SHOW -> session().showAs(one.is(State.ACCEPTED) ? Bid.AGREED : Bid.with(one.number()));
            case ACCEPT -> decide(one, State.ACCEPTED);
            case DECLINE -> decide(one, State.DECLINED);
            case OFFER_AGAIN -> decide(one, State.OFFERED);
            case NAME -> names.setFocus();
            case REMOVE -> change(one.titled() + ", removed", job -> AlternateChanges.remove(job, one.number()), wrong::say);
            case OFFER, NEXT_BID -> { }
        }
    }

    private void decide(Alternate one, State state) {
        if (!one.is(state)) {
            change(one.titled() + ", " + state.text(), job -> AlternateChanges.decide(job, one.number(), state), wrong::say);
        }
    }

    private void change(String label, Edit.Change change, Consumer<String> refused) {
        Job job = session().snapshot().orElseThrow().job().job();
        session().change(label, AlternateChanges.files(job), change, refused);
    }

    @Override
    protected void focusPage() {
        if (form.isOpen()) {
            form.page().setFocus();
        } else {
            table.getTable().setFocus();
        }
    }
}
