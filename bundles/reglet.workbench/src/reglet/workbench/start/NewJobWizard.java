package reglet.workbench.start;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Text;

import reglet.desk.NewJob;
import reglet.desk.NeededFact;
import reglet.desk.NeededFacts;
import reglet.model.Option;
import reglet.model.Subject;
import reglet.model.UnitSystem;
import reglet.model.UnusableInput;
import reglet.workbench.Session;
import reglet.workbench.Ui;

/** Asks what a new job needs and writes it. Only name and folder have to be given; what is left open is a gap among the findings. */
public final class NewJobWizard extends Wizard {
    private static final String MANNER = "What isn't known yet can wait: it will stand among the findings as a gap.";
    private final Answers answers;
    private Path written;

    NewJobWizard(Answers answers) {
        this.answers = answers;
        setWindowTitle("New job");
        setNeedsProgressMonitor(true);
    }

    @Override
    public void addPages() {
        addPage(new First(answers));
        List<NeededFact> facts = NeededFacts.ofJob(answers.pack());
        if (!facts.isEmpty()) {
            addPage(new OfJob(answers, facts));
        }
        addPage(new OfWall(answers));
    }

    @Override
    public boolean performFinish() {
        NewJob job = answers.job();
        Path folder = Path.of(answers.folder);
        try {
            getContainer().run(true, false, monitor -> {
                try {
                    job.write(folder, answers.pack());
                } catch (IOException | UnusableInput refused) {
                    throw new InvocationTargetException(refused);
                }
            });
            written = folder;
            return true;
        } catch (InvocationTargetException failed) {
            Throwable why = failed.getCause();
            ((WizardPage) getContainer().getCurrentPage()).setErrorMessage(why instanceof UnusableInput unusable
                ? Session.reasons(unusable) : why.getMessage());
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** The folder of the job written; null when there is none. */
    Path written() {
        return written;
    }

    /** Name, folder, units. */
    private static final class First extends AskedPage {
        private Text folder;
        private boolean own;

        First(Answers answers) {
            super("job", "A new job", "A job is a folder of text files of its own.", answers);
        }

        @Override
        void fill() {
            label("Name");
            Text title = text("Name", () -> { });
            label("Folder");
            Composite place = new Composite(page, SWT.NONE);
            GridLayoutFactory.fillDefaults().numColumns(2).applyTo(place);
            GridDataFactory.fillDefaults().grab(true, false).applyTo(place);
            folder = Ui.named(new Text(place, SWT.BORDER | SWT.SINGLE), "Folder");
            GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(folder);
            Button choose = Ui.named(new Button(place, SWT.PUSH), "Choose a folder");
            choose.setText("&Choose…");
            choose.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> choose()));
            boolean[] proposing = new boolean[1];
            title.addModifyListener(event -> {
                answers.title = title.getText();
                if (!own) {
                    proposing[0] = true;
                    folder.setText(answers.proposedFolder());
                    proposing[0] = false;
                }
                look();
            });
            folder.addModifyListener(event -> {
                answers.folder = folder.getText().strip();
                own |= !proposing[0];
                look();
            });
            label("Bare numbers are in");
            Composite units = new Composite(page, SWT.NONE);
            GridLayoutFactory.fillDefaults().numColumns(2).applyTo(units);
            unit(units, "&feet, inches, pounds", UnitSystem.INCH_POUND);
            unit(units, "&metres, millimetres, kilograms", UnitSystem.SI);
        }

        private void unit(Composite parent, String words, UnitSystem system) {
            Button button = Ui.named(new Button(parent, SWT.RADIO), words.replace("&", ""));
            button.setText(words);
            button.setSelection(answers.units == system);
            button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
                if (button.getSelection()) {
                    answers.units = system;
                }
            }));
        }

        private void choose() {
            DirectoryDialog dialog = new DirectoryDialog(getShell(), SWT.OPEN);
            dialog.setText("Folder of the new job");
            dialog.setMessage("A new or an empty folder");
            String chosen = dialog.open();
            if (chosen != null) {
                folder.setText(chosen);
            }
        }

        @Override
        String wrong() {
            return answers.folderRefusal();
        }

        @Override
        boolean isEnough() {
            return !answers.title.isBlank() && !answers.folder.isBlank();
        }
    }

    /** The facts of the whole job, subject by subject. */
    private static final class OfJob extends AskedPage {
        private final List<NeededFact> facts;

        OfJob(Answers answers, List<NeededFact> facts) {
            super("facts", title(facts), MANNER, answers);
            this.facts = facts;
        }

        private static String title(List<NeededFact> facts) {
            List<String> titles = new ArrayList<>(facts.stream().map(fact -> fact.subject().title()).distinct().toList());
            return String.join(" and ", titles.stream().map(words -> titles.indexOf(words) == 0 ? words
                : words.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + words.substring(1)).toList());
        }

        @Override
        void fill() {
            Subject last = null;
            for (NeededFact fact : facts) {
                if (fact.subject() != last) {
                    last = fact.subject();
                    head(last.title());
                }
                ask(fact);
            }
        }
    }

    /** The first wall type: where it stands, what it is built on, how large it is. */
    private static final class OfWall extends AskedPage {

        OfWall(Answers answers) {
            super("wall", "The first wall type", MANNER, answers);
        }

        @Override
        void fill() {
            label("Where it stands");
            Text title = text("Where it stands", () -> { });
            title.setMessage("Street front");
            title.addModifyListener(event -> {
                answers.wallTitle = title.getText();
                look();
            });
            label(answers.backing().title());
            Combo combo = Ui.named(new Combo(page, SWT.READ_ONLY), answers.backing().title());
            combo.add("not decided yet");
            answers.backing().options().stream().map(Option::title).forEach(combo::add);
            combo.select(0);
            combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> answers.backing = combo.getSelectionIndex() == 0
                ? ""
                : answers.backing().options().get(combo.getSelectionIndex() - 1).id()));
            NeededFacts.ofWall(answers.pack()).forEach(this::ask);
        }

        @Override
        boolean isEnough() {
            return !answers.wallTitle.isBlank();
        }
    }
}
