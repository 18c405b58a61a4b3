package reglet.workbench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import reglet.model.Basis;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Explanation;
import reglet.model.Finding;
import reglet.model.Option;
import reglet.model.Requirement;
import reglet.model.Rule;
import reglet.model.ShownUnits.Sense;
import reglet.model.Stated;
import reglet.workbench.settings.Units;

/** Why something stands: the rule in words, the values that it read, where it comes from and how that is known, what to do. */
public final class WhyView extends Part {
    static final String ID = "reglet.workbench.why";
    private Prose prose;
    private Latest latest;
    private Object shown;

    @Override
    protected void fill(Composite page) {
        page.setLayout(new FillLayout());
        prose = new Prose(page, "Why");
        latest = new Latest(page);
    }

    @Override
    public void jobChanged() {
        focusChanged();
    }

    @Override
    public void focusChanged() {
        Snapshot now = session().seen().orElse(null);
        Focus focus = session().focus();
        if (now == null || focus.finding().isEmpty() && now.component(focus.component()).isEmpty()) {
            latest.cancel();
            showEmpty("Select a finding, a component or a paragraph: its reason stands here, with the values read, "
                + "where the rule comes from and how that is known.");
            return;
        }
        if (focus.finding().isPresent()) {
            Finding finding = focus.finding().get();
            latest.ask("Explaining " + finding.rule(), monitor -> explanations(now, finding),
                explanations -> finding(now, finding, explanations));
        } else {
            latest.cancel();
            component(now, focus);
        }
    }

    private static List<Explanation> explanations(Snapshot now, Finding finding) {
        if (now.job().pack().rule(finding.rule()).isEmpty()) {
            return List.of();
        }
        return now.job().explain(finding.rule()).stream().filter(explanation -> explanation.wall().equals(finding.wall())
            && explanation.meeting().equals(finding.meeting()) && explanation.options().equals(finding.options())).toList();
    }

    private void finding(Snapshot now, Finding finding, List<Explanation> explanations) {
        prose.heading(Marks.sentence(finding.statement().in(Units.shown())));
        prose.line(Marks.word(finding.kind()) + ", " + where(now, finding));
        if (!finding.fix().isEmpty()) {
            prose.title("What to do").line(finding.advice().in(Units.shown()));
        }
        values(now, finding);
        Optional<Rule> rule = now.job().pack().rule(finding.rule());
        rule.ifPresent(found -> {
            prose.title("The rule").line(found.id() + ", looked at for each "
                + (found.subject().isEmpty() ? found.each().text() : found.subject()) + ".");
            if (!found.when().isEmpty()) {
                prose.item("when", found.when());
            }
            found.let().forEach((name, expression) -> {
                String value = explanations.stream().map(explanation -> explanation.let().get(name)).filter(result -> result != null)
                    .findFirst().map(result -> "  (comes to " + Units.text(result) + ")").orElse("");
                prose.item("let", name + " = " + expression + value);
            });
            prose.item("holds", found.holds());
        });
        explanations.stream().filter(explanation -> !explanation.error().isEmpty()).findFirst()
            .ifPresent(explanation -> prose.item("≠", explanation.error()));
        basis(finding.basis());
        shown(finding.key());
    }

    private static String where(Snapshot now, Finding finding) {
        String place = FindingsView.place(now, finding);
        String wall = finding.wall().isEmpty() ? "the whole job" : "wall type " + finding.wall();
        return wall + (place.isEmpty() ? "" : ", " + Prose.lower(place)) + " (" + finding.at() + ")";
    }

    private void values(Snapshot now, Finding finding) {
        if (!finding.facts().isEmpty()) {
            prose.title("Values read");
            finding.facts().forEach((name, value) -> {
                prose.mark("•");
                owner(now, name).ifPresentOrElse(component -> prose.lead(now.label(name), () -> session()
                    .look(session().focus().onComponent(component))),
                    () -> prose.plain(now.label(name)));
                prose.plain(": " + Units.text(now.job().pack().property(name), value) + from(now, finding, name)).end(1, 4);
            });
        }
        if (!finding.missing().isEmpty()) {
            prose.title("Not known");
            finding.missing().forEach(name -> prose.item("○", now.label(name) + " (" + name + ")"));
        }
    }

    private static Optional<String> owner(Snapshot now, String name) {
        String owner = name.contains(".") ? name.substring(0, name.indexOf('.')) : "";
        return now.component(owner).map(Component::id);
    }

    /** Where a value was fixed: ", set in walls/W1.yaml:14:3", ", of 2.5 lb lath". */
    private static String from(Snapshot now, Finding finding, String name) {
        String option = owner(now, name).map(owner -> finding.options().get(owner)).orElse(null);
        if (option == null) {
            return "";
        }
        Component component = now.component(name.substring(0, name.indexOf('.'))).orElseThrow();
        Stated set = now.wall(finding.wall()).flatMap(wall -> wall.choice(component.id()))
            .map(choice -> choice.values().get(name.substring(component.id().length() + 1))).orElse(null);
        return set != null ? ", set at " + set.at() : component.option(option).map(found -> ", of " + found.title()).orElse("");
    }

    private void basis(List<Basis> basis) {
        if (!basis.isEmpty()) {
            prose.title("Where it comes from");
            basis.forEach(one -> prose.item("•", one.text()));
        }
    }

    private void component(Snapshot now, Focus focus) {
        Component component = now.component(focus.component()).orElseThrow();
        List<Finding> findings = now.findings(focus.wall(), component.id());
        prose.heading(component.title());
        prose.line((focus.wall().isEmpty() ? "" : "Wall type " + focus.wall() + ", ") + "owned by section " + component.section() + ": "
            + Marks.state(findings));
        findings.forEach(finding -> prose.mark(Marks.shape(finding.kind())).plain(finding.kind().text() + ": ")
            .lead(finding.statement().in(Units.shown()), () -> session().look(session().focus().onFinding(finding))).end(1, 4));
        Optional<Choice> choice = now.wall(focus.wall()).flatMap(wall -> wall.choice(component.id()));
        choice.ifPresent(made -> choice(now, component, made, focus.wall()));
        if (choice.isEmpty()) {
            prose.line(component.needed().isEmpty() ? "It has to be decided on every wall type." : "It has to be decided when "
                + component.needed() + ".");
        }
        shown(focus.wall() + " " + component.id());
    }

    private void choice(Snapshot now, Component component, Choice choice, String wall) {
        prose.title("What is accepted");
        if (!choice.by().isEmpty() || !choice.because().isEmpty()) {
            prose.line("Fixed" + (choice.by().isEmpty() ? "" : " by " + choice.by())
                + (choice.because().isEmpty() ? "" : ": " + choice.because()) + ".");
        }
        for (String id : choice.accept()) {
            Optional<Option> option = component.option(id);
            prose.item("•", option.map(found -> found.title() + (found.note().isEmpty() ? "" : ". " + found.note())).orElse(id));
        }
        prose.line("Written at " + choice.at() + ".");
        List<Requirement> required = choice.accept().stream()
            .flatMap(id -> now.job().assembly().requirements(wall, component.id(), id).stream())
            .filter(requirement -> !requirement.property().basis().isEmpty()).toList();
        if (!required.isEmpty()) {
            prose.title("Where its values come from");
            required.stream().map(requirement -> requirement.property().label() + " "
                + Units.shown().text(requirement.value(), Sense.required(requirement.property())) + ": "
                + requirement.property().basis().stream().map(Basis::text).collect(Collectors.joining("; "))).distinct()
                .forEach(line -> prose.item("•", line));
        }
    }

    private void shown(Object what) {
        prose.show();
        if (!what.equals(shown)) {
            prose.top();
            shown = what;
        }
        show();
    }

    @Override
    protected void focusPage() {
        prose.control().setFocus();
    }
}
