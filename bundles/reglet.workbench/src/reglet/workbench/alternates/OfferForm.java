package reglet.workbench.alternates;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import reglet.desk.AlternateBeside;
import reglet.desk.AlternateChanges;
import reglet.desk.AlternateChanges.Offer;
import reglet.model.Alternate;
import reglet.model.Alternate.Kind;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Job;
import reglet.model.Option;
import reglet.workbench.Session;
import reglet.workbench.Ui;

/** Offers an option of a component as an alternate: a new one with number, title, what it changes and why, or one that the job has. */
final class OfferForm {
    private static final String NEW = "A new one";
    private final Session session;
    private final Runnable done;
    private final Composite page;
    private final Label what;
    private final Combo which;
    private final Text number;
    private final Text title;
    private final Text description;
    private final Text because;
    private final Label wrong;
    private final Button offer;
    private List<Alternate> known = List.of();
    private Optional<Asked> asked = Optional.empty();
    private Optional<Offer> awaited = Optional.empty();

    /** What is to be offered. */
    private record Asked(String wall, Component component, Option option) {
    }

    /** @param done called when the form is no longer needed */
    OfferForm(Composite parent, Session session, Runnable done) {
        this.session = session;
        this.done = done;
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(page);
        what = Ui.named(new Label(page, SWT.WRAP), "What is offered");
        what.setFont(Ui.strong(what));
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(what, 30), SWT.DEFAULT).applyTo(what);
        label("As");
        which = Ui.named(new Combo(page, SWT.READ_ONLY), "Which alternate");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(which);
        number = text("Number", "Number of the alternate", "");
        title = text("Title", "Title of the alternate", "As bidders will name it, such as: stainless lath");
        description = text("What it changes", "What the alternate changes", "Prints in the section behind the title");
        because = text("Reason", "Reason for the alternate", "Why it is offered");
        wrong = Ui.named(new Label(page, SWT.WRAP), "What the alternate lacks");
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(Ui.characters(wrong, 30), SWT.DEFAULT).applyTo(wrong);
        Composite buttons = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(buttons);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.BEGINNING).span(2, 1).applyTo(buttons);
        Ui.button(buttons, "&Back", "Back to the alternates", this::leave);
        offer = Ui.button(buttons, "&Offer it", "Offer the alternate", this::offer);
        which.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> chosen()));
    }

    private void label(String words) {
        Label label = new Label(page, SWT.NONE);
        label.setText(words);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
    }

    private Text text(String words, String name, String hint) {
        label(words);
        Text text = Ui.named(new Text(page, SWT.BORDER | SWT.SINGLE), name);
        text.setMessage(hint);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        text.addModifyListener(event -> tell(""));
        text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> offer()));
        text.addKeyListener(KeyListener.keyPressedAdapter(event -> {
            if (event.keyCode == SWT.ESC) {
                leave();
            }
        }));
        return text;
    }

    Composite page() {
        return page;
    }

    boolean isOpen() {
        return asked.isPresent();
    }

    /** Asks for what is to be said of an option as an alternate. */
    void ask(Job job, String wall, Component component, Option option) {
        Choice base = job.wall(wall).flatMap(found -> found.choice(component.id())).orElse(null);
        String instead = base == null ? "" : AlternateBeside.words(component, base);
        asked = Optional.of(new Asked(wall, component, option));
        awaited = Optional.empty();
        known = job.alternates().stream().filter(one -> one.kind() == Kind.ALTERNATE
            && (base == null || !base.alternates().containsKey(one.number()))).toList();
        List<String> items = new ArrayList<>(List.of(NEW));
        known.forEach(one -> items.add("No. " + one.number() + ", " + one.title() + ", which then changes this too"));
        which.setItems(items.toArray(String[]::new));
        which.select(0);
        what.setText(component.title() + " of wall type " + wall + ": " + option.title() + (instead.isEmpty() ? "" : ", in place of "
            + instead));
        number.setText(String.valueOf(AlternateChanges.next(job)));
        title.setText("");
        description.setText(component.title() + ": " + option.title() + (instead.isEmpty() ? "" : " in place of " + instead));
        because.setText("");
        chosen();
        title.setFocus();
    }

    /** A known alternate has its number, title and description already. */
    private void chosen() {
        Optional<Alternate> one = known();
        one.ifPresent(alternate -> {
            number.setText(String.valueOf(alternate.number()));
            title.setText(alternate.title());
            description.setText(alternate.description());
        });
        if (one.isEmpty() && !number.isEnabled()) {
            session.snapshot().ifPresent(now -> number.setText(String.valueOf(AlternateChanges.next(now.job().job()))));
            title.setText("");
            description.setText("");
        }
        List.of(number, title, description).forEach(text -> text.setEnabled(one.isEmpty()));
        tell("");
    }

    private Optional<Alternate> known() {
        int at = which.getSelectionIndex();
        return at < 1 ? Optional.empty() : Optional.of(known.get(at - 1));
    }

    /** Says what is lacking, or why it was refused. */
    private void tell(String refused) {
        String lacks = refused.isEmpty() ? lacks() : refused;
        offer.setEnabled(lacks().isEmpty());
        wrong.setText(lacks.isEmpty() ? "" : "≠ " + lacks);
        page.layout();
    }

    private String lacks() {
        if (!number.getText().strip().matches("[1-9]\\d{0,5}")) {
            return "\"" + number.getText().strip() + "\" is no number of an alternate; count from 1.";
        }
        int typed = Integer.parseInt(number.getText().strip());
        Optional<Alternate> taken = known().isPresent() ? Optional.empty()
            : session.snapshot().flatMap(now -> now.job().job().alternate(typed));
        if (taken.isPresent()) {
            return taken.get().titled() + ", is there already; choose it above to have it change this too, or take number "
                + AlternateChanges.next(session.snapshot().orElseThrow().job().job()) + ".";
        }
        return title.getText().isBlank() ? "A title is needed: the section and every paper name the alternate by it." : "";
    }

    private void offer() {
        tell("");
        if (!offer.isEnabled() || asked.isEmpty()) {
            return;
        }
        Asked what = asked.get();
        Offer made = new Offer(what.wall(), what.component().id(), List.of(what.option().id()), Integer.parseInt(number.getText().strip()),
            title.getText(), description.getText(), because.getText());
        awaited = Optional.of(made);
        session.change(Alternate.names(List.of(made.number())) + ", " + made.title().strip() + ": " + what.wall() + " "
            + made.component() + " offered", session.snapshot().map(now -> AlternateChanges.files(now.job().job())).orElse(List.of()),
            job -> AlternateChanges.offer(job, made), this::refused);
    }

    private void refused(String why) {
        awaited = Optional.empty();
        if (!page.isDisposed()) {
            tell(why);
        }
    }

    /** Closes the form when the job has what was offered; gives its number. */
    Optional<Integer> taken(Job job) {
        Optional<Integer> there = awaited.filter(made -> job.wall(made.wall()).flatMap(wall -> wall.choice(made.component()))
            .map(choice -> choice.alternates().containsKey(made.number())).orElse(false)).map(Offer::number);
        if (there.isPresent()) {
            leave();
        }
        return there;
    }

    private void leave() {
        asked = Optional.empty();
        awaited = Optional.empty();
        done.run();
    }
}
