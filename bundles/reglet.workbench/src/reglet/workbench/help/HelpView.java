package reglet.workbench.help;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.jface.bindings.TriggerSequence;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.keys.IBindingService;
import org.eclipse.ui.part.ViewPart;

import reglet.workbench.Prose;
import reglet.workbench.Ui;

/** The help: pages on the left, the chosen one on the right. */
public final class HelpView extends ViewPart {
    public static final String ID = "reglet.workbench.help";
    private static final String KEYS = "{keys}";
    private static final Pattern INLINE = Pattern.compile("\\*\\*(.+?)\\*\\*|\\[(.+?)\\]\\((.+?)\\)");
    private final List<HelpPages.Page> pages = HelpPages.all();
    private org.eclipse.swt.widgets.List list;
    private Prose prose;

    @Override
    public void createPartControl(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        list = Ui.named(new org.eclipse.swt.widgets.List(sash, SWT.SINGLE | SWT.V_SCROLL), "Help pages");
        pages.forEach(page -> list.add(page.title()));
        list.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> write(list.getSelectionIndex())));
        prose = new Prose(sash, "Help");
        sash.setWeights(38, 62);
        // the platform takes its time to make room for a view: what stands in it comes in a turn of its own, if nothing was asked for by then
        Ui.later(list, () -> {
            if (list.getSelectionIndex() < 0) {
                show(HelpPages.FIRST);
            }
        });
    }

    /** Shows the page of a name. */
    void show(String name) {
        for (int i = 0; i < pages.size(); i++) {
            if (pages.get(i).name().equals(name)) {
                list.setSelection(i);
                list.showSelection();
                write(i);
            }
        }
    }

    private void write(int index) {
        List<String> paragraph = new ArrayList<>();
        boolean apart = false;
        for (String line : (pages.get(index).text() + "\n").split("\n", -1)) {
            if (line.startsWith("# ")) {
                prose.heading(line.substring(2));
            } else if (line.startsWith("## ")) {
                prose.title(line.substring(3));
                apart = false;
            } else if (line.startsWith("- ")) {
                item("•", line.substring(2));
            } else if (line.strip().equals(KEYS)) {
                keys().forEach(key -> item("•", key));
            } else if (line.isBlank() && !paragraph.isEmpty()) {
                if (apart) {
                    prose.end(0, 0);
                }
                inline(String.join(" ", paragraph));
                prose.end(0, 0);
                apart = true;
                paragraph.clear();
            } else if (!line.isBlank()) {
                paragraph.add(line.strip());
            }
        }
        prose.show();
        prose.top();
    }

    private void item(String mark, String words) {
        prose.mark(mark);
        inline(words);
        prose.end(1, 4);
    }

    private void inline(String words) {
        Matcher found = INLINE.matcher(words);
        int from = 0;
        while (found.find()) {
            plain(words.substring(from, found.start()), prose::plain);
            if (found.group(1) != null) {
                prose.strong(found.group(1));
            } else {
                String page = found.group(3);
                prose.lead(found.group(2), () -> show(page));
            }
            from = found.end();
        }
        plain(words.substring(from), prose::plain);
    }

    private static void plain(String words, Consumer<String> to) {
        if (!words.isEmpty()) {
            to.accept(words);
        }
    }

    /** " (in the section)" for a key that holds there alone; "" for one of the whole window. */
    private static String where(String context) throws NotDefinedException {
        return context.startsWith("reglet.") ? " (" + Prose.lower(PlatformUI.getWorkbench().getService(IContextService.class)
            .getContext(context).getName()) + ")" : "";
    }

    /** Every key of this window with its command, as they are bound now. */
    static List<String> keys() {
        IBindingService bindings = PlatformUI.getWorkbench().getService(IBindingService.class);
        List<String> keys = new ArrayList<>();
        for (Binding binding : bindings.getBindings()) {
            ParameterizedCommand command = binding.getParameterizedCommand();
            TriggerSequence sequence = binding.getTriggerSequence();
            if (command != null && binding.getSchemeId().equals("reglet.workbench.keys")) {
                try {
                    keys.add("**" + sequence.format() + "**: " + command.getName() + where(binding.getContextId()));
                } catch (NotDefinedException gone) {
                    // a key of a command that isn't there does nothing
                }
            }
        }
        keys.sort(null);
        return keys;
    }

    @Override
    public void setFocus() {
        list.setFocus();
    }
}
