package reglet.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.Scope;
import reglet.model.Subject;

/** The facts that a new job is asked for, read from the pack: nothing that no rule, calculation or clause needs. */
public final class NeededFacts {

    private NeededFacts() {
    }

    /** Those of the job-wide subjects, in the pack's order; those that nothing stands in for come first within a subject. */
    public static List<NeededFact> ofJob(Pack pack) {
        return of(pack, Scope.JOB, true);
    }

    /** Those of a wall type that the world decides and nothing stands in for. */
    public static List<NeededFact> ofWall(Pack pack) {
        return of(pack, Scope.WALL, false);
    }

    /** What the wall stands on: the first component of the build-up. */
    public static Component ofBacking(Pack pack) {
        return pack.components().get(0);
    }

    private static List<NeededFact> of(Pack pack, Scope scope, boolean usualToo) {
        String read = expressions(pack);
        List<NeededFact> facts = new ArrayList<>();
        for (Subject subject : pack.subjects()) {
            if (subject.scope() != scope) {
                continue;
            }
            // what applies under conditions only is found as a gap once they hold
            List<NeededFact> asked = subject.properties().stream().filter(property -> subject.given().contains(property.name())
                && property.only().isEmpty() && isRead(read, subject, property)).map(property -> new NeededFact(subject, property))
                .toList();
            asked.stream().filter(NeededFact::isNeeded).forEach(facts::add);
            if (usualToo) {
                asked.stream().filter(fact -> !fact.isNeeded()).forEach(facts::add);
            }
        }
        return List.copyOf(facts);
    }

    private static boolean isRead(String read, Subject subject, Property property) {
        return Pattern.compile("(?<![\\w.])" + Pattern.quote(subject.id() + "." + property.name()) + "(?!\\w)").matcher(read).find();
    }

    /** Every expression of the pack, one below the other. */
    private static String expressions(Pack pack) {
        StringBuilder all = new StringBuilder();
        pack.rules().forEach(rule -> {
            line(all, rule.when());
            rule.let().values().forEach(let -> line(all, let));
            line(all, rule.holds());
        });
        pack.calculations().forEach(calculation -> {
            line(all, calculation.when());
            calculation.inputs().values().forEach(source -> {
                line(all, source.when());
                source.parts().forEach(part -> line(all, part));
            });
        });
        pack.clauses().forEach(clause -> {
            line(all, clause.when());
            line(all, clause.body());
        });
        pack.cautions().forEach(caution -> line(all, caution.when()));
        pack.components().forEach(component -> {
            line(all, component.needed());
            component.properties().forEach(property -> line(all, property.only()));
        });
        pack.subjects().forEach(subject -> subject.properties().forEach(property -> line(all, property.only())));
        return all.toString();
    }

    private static void line(StringBuilder all, String expression) {
        all.append(expression).append('\n');
    }
}
