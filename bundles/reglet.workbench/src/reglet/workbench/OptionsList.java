package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.OperationCanceledException;
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
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;

import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Option;
import reglet.workbench.alternates.AlternateHandler;
import reglet.workbench.settings.Units;

/**
 * The options of the component in focus as sentences, each with what it would bring. Enter, Space or a double click accepts one;
 * Shift+Enter accepts it beside the others; Delete takes the choice back.
 */
final class OptionsList {
    private final Session session;
    private final Composite page;
    private final TableViewer table;
    private final Label anyway;
    private final Label detail;
    private final Latest latest;
    private Snapshot asked;
    private String askedFor = "";

    /** An option; its consequence is empty while it is worked out. */
    record Line(Option option, boolean accepted, Optional<Consequence> consequence) {

        String sentence() {
            return (accepted ? "● " : "    ") + consequence.map(Consequence::sentence).orElse(option.title() + ": …");
        }
    }

    OptionsList(Composite parent, Session session) {
        this.session = session;
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(page);
        anyway = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(Ui.characters(anyway, 30), SWT.DEFAULT).exclude(true).applyTo(anyway);
        anyway.setVisible(false);
        Composite frame = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).hint(1, 1).applyTo(frame);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        table = new TableViewer(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        Ui.named(table.getTable(), "Options");
        table.getTable().setHeaderVisible(true);
        table.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(table);
        TableViewerColumn column = new TableViewerColumn(table, SWT.LEFT);
        column.getColumn().setText("Options, and what each would bring");
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object line) {
                return ((Line) line).sentence();
            }

            @Override
            public String getToolTipText(Object line) {
                return detail((Line) line);
            }
        });
        columns.setColumnData(column.getColumn(), new ColumnWeightData(1, Ui.characters(table.getTable(), 30)));
        detail = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(Ui.characters(detail, 30), SWT.DEFAULT)
            .minSize(SWT.DEFAULT, detail.computeSize(SWT.DEFAULT, SWT.DEFAULT).y * 3).applyTo(detail);
        latest = new Latest(page);
        table.getTable().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> showDetail()));
        table.getTable().addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> accept(false)));
        table.getTable().addKeyListener(KeyListener.keyPressedAdapter(this::key));
        menu();
    }

    private void key(KeyEvent event) {
        boolean beside = (event.stateMask & SWT.SHIFT) != 0;
        if (event.character == ' ' || event.character == SWT.CR && beside) {
            accept(beside);
            event.doit = false;
        } else if (event.keyCode == SWT.DEL) {
            undecide();
            event.doit = false;
        }
    }

    private void menu() {
        Menu menu = new Menu(table.getTable());
        item(menu, "Accept this option\tEnter", () -> accept(false));
        item(menu, "Accept it beside the others, or no longer\tShift+Enter", () -> accept(true));
        item(menu, "Leave undecided, or as the base bid\tDelete", this::undecide);
        item(menu, "Offer it as an alternate\u2026\tCtrl+Shift+A", this::offer);
        table.getTable().setMenu(menu);
    }

    private static void item(Menu menu, String words, Runnable action) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(words);
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
    }

    /** Accepts the selected option, in place of the others or beside them. */
    void accept(boolean beside) {
        Focus focus = session.focus();
        if (!(table.getStructuredSelection().getFirstElement() instanceof Line line) || session.seen().isEmpty()) {
            return;
        }
        Component component = session.seen().get().component(focus.component()).orElseThrow();
        List<Option> accept = new ArrayList<>();
        if (beside) {
            accept.addAll(accepted(component));
            if (!accept.remove(line.option())) {
                accept.add(line.option());
            }
        } else {
            accept.add(line.option());
        }
        if (!accept.isEmpty() && !accept.equals(accepted(component))) {
            session.choosing().choose(focus.wall(), component.id(), accept);
        }
    }

    private void undecide() {
        Focus focus = session.focus();
        if (session.seen().flatMap(now -> now.wall(focus.wall())).flatMap(wall -> wall.choice(focus.component())).isPresent()) {
            session.choosing().undecide(focus.wall(), focus.component());
        }
    }

    /** Asks for what is to be said of the selected option as an alternate. */
    private void offer() {
        try {
            PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(AlternateHandler.OFFER, null);
        } catch (CommandException unavailable) {
            session.say("It can't be offered now: " + unavailable.getMessage(), true);
        }
    }

    /** The option that is selected. */
    Optional<Option> selected() {
        return table.getStructuredSelection().getFirstElement() instanceof Line line ? Optional.of(line.option()) : Optional.empty();
    }

    private List<Option> accepted(Component component) {
        return session.seen().flatMap(now -> now.wall(session.focus().wall())).flatMap(wall -> wall.choice(component.id()))
            .map(Choice::accept).orElse(List.of()).stream().flatMap(id -> component.option(id).stream()).toList();
    }

    /** Shows the options of the component in focus, and works out what each would bring. */
    void follow() {
        Snapshot now = session.seen().orElseThrow();
        Focus focus = session.focus();
        Component component = now.component(focus.component()).orElse(null);
        if (component == null) {
            latest.cancel();
            asked = null;
            table.setInput(List.of());
            say("");
            detail.setText("");
            return;
        }
        String wanted = focus.wall() + " " + component.id();
        if (now == asked && wanted.equals(askedFor)) {
            return;
        }
        List<Option> accepted = accepted(component);
        boolean other = !wanted.equals(askedFor);
        asked = now;
        askedFor = wanted;
        if (other) {
            // what was said of another component doesn't hold here
            say("");
            put(component.options().stream().map(option -> new Line(option, accepted.contains(option), Optional.empty())).toList(), true);
        }
        latest.ask("Working out what each option would bring", monitor -> {
            List<Consequence> each = new ArrayList<>();
            for (Option option : component.options()) {
                if (monitor.isCanceled()) {
                    throw new OperationCanceledException();
                }
                each.add(Consequence.of(now, focus.wall(), component.id(), option));
            }
            return Consequence.outlook(each);
        }, outlook -> {
            say(outlook.sentence());
            put(outlook.options().stream().map(one -> new Line(one.option(), one.accepted(), Optional.of(one))).toList(), false);
        });
    }

    /** Says above the options what doesn't depend on them. */
    private void say(String words) {
        if (!words.equals(anyway.getText())) {
            anyway.setText(words);
            anyway.setVisible(!words.isEmpty());
            ((GridData) anyway.getLayoutData()).exclude = words.isEmpty();
            page.layout();
        }
    }

    /** Puts other lines in place; the selected option stays selected, else the accepted one is. */
    private void put(List<Line> lines, boolean other) {
        String selected = !other && table.getStructuredSelection().getFirstElement() instanceof Line line ? line.option().id()
            : lines.stream().filter(Line::accepted).findFirst().map(line -> line.option().id()).orElse("");
        int top = table.getTable().getTopIndex();
        table.getTable().setRedraw(false);
        table.setInput(lines);
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).option().id().equals(selected)) {
                table.getTable().setSelection(i);
            }
        }
        if (!other) {
            table.getTable().setTopIndex(top);
        }
        table.getTable().setRedraw(true);
        showDetail();
    }

    private void showDetail() {
        String words = table.getStructuredSelection().getFirstElement() instanceof Line line ? detail(line) : "";
        if (!words.equals(detail.getText())) {
            detail.setText(words);
            page.layout(new Control[] {detail});
        }
    }

    /** The first finding in full, or what a specifier should know of the option. */
    private static String detail(Line line) {
        String brings = line.consequence().flatMap(consequence -> consequence.brings().stream().findFirst())
            .map(finding -> Marks.word(finding.kind()) + ": " + finding.statement().in(Units.shown())).orElse("");
        return brings.isEmpty() ? line.option().note() : brings;
    }

    void setFocus() {
        table.getTable().setFocus();
    }
}
