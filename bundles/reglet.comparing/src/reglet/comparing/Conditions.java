package reglet.comparing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.Assembly;
import reglet.model.Choice;
import reglet.model.Comparison.Result;
import reglet.model.ConditionCheck;
import reglet.model.Method;
import reglet.model.Property;
import reglet.model.ReportCheck;
import reglet.model.Requirement;
import reglet.model.SheetReading.Condition;
import reglet.model.SheetReading.Report;
import reglet.model.SheetValue;
import reglet.model.Submittal;
import reglet.model.WallType;

/**
 * Conditions of use as requirements on the job: what a report asks of the work has to be asked for by the section. The limit takes the
 * place of what is required, and what the job requires that of what is shown.
 */
public final class Conditions {

    private Conditions() {
    }

    /** One for each limit of each condition, on each wall type that uses the component, for each accepted option. */
    public static List<ConditionCheck> check(Assembly assembly, Report report) {
        List<ConditionCheck> checks = new ArrayList<>();
        for (WallType wall : assembly.job().walls()) {
            for (Condition condition : report.conditions()) {
                for (SheetValue limit : condition.limits()) {
                    String component = limit.property().substring(0, limit.property().indexOf('.'));
                    wall.choice(component).ifPresent(choice -> checks.addAll(of(assembly, wall, choice, condition, limit)));
                }
            }
        }
        return checks;
    }

    /** One for each product of a submittal that has a report, in the order of the submittal. */
    public static List<ReportCheck> reports(Assembly assembly, Submittal submittal) {
        return submittal.products().stream().distinct().flatMap(id -> assembly.job().products().stream()
            .filter(product -> product.id().equals(id))).flatMap(product -> product.report().map(report -> new ReportCheck(product.id(),
                report, submittal.date(), Expiry.daysLeft(report.ends(), submittal.date()), check(assembly, report))).stream()).toList();
    }

    private static List<ConditionCheck> of(Assembly assembly, WallType wall, Choice choice, Condition condition, SheetValue limit) {
        List<ConditionCheck> checks = new ArrayList<>();
        for (String option : choice.accept()) {
            Optional<Requirement> required = assembly.requirements(wall.id(), choice.component(), option).stream()
                .filter(requirement -> requirement.path().equals(limit.property())).findFirst();
            ConditionCheck check = required.map(requirement -> judged(wall, condition, limit, requirement))
                .orElseGet(() -> new ConditionCheck(wall.id(), condition, limit, Optional.empty(), Result.NOT_SHOWN,
                    "The job says nothing of it for this option."));
            if (!checks.contains(check)) {
                checks.add(check);
            }
        }
        return checks;
    }

    private static ConditionCheck judged(WallType wall, Condition condition, SheetValue limit, Requirement requirement) {
        Property own = requirement.property();
        Property asked = new Property(own.name(), own.label(), own.type(), limit.compare().orElse(own.compare()), own.limit(),
            Method.NONE, own.evidence(), own.only(), own.usual(), own.help(), own.basis(), own.at());
        SheetValue given = new SheetValue(limit.property(), requirement.value(), Optional.of(own.compare()), "", "", requirement.value()
            .text(), 0,
            Optional.empty(), true);
        Verdict verdict = Verdict.of(new Requirement(wall.id(), requirement.component(), requirement.option(), asked, limit.value(),
            requirement.at()),
            given, "");
        return new ConditionCheck(wall.id(), condition, limit, Optional.of(requirement), verdict.result(),
            verdict.result() == Result.CANNOT_COMPARE ? "What the job requires leaves open whether the condition is kept"
                + "." : verdict.note());
    }
}
