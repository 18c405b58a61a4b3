package reglet.store;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.model.Calculation;
import reglet.model.Clause;
import reglet.model.Component;
import reglet.model.ExtraStock;
import reglet.model.HoldPoint;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.RegisterEntry;
import reglet.model.Rule;
import reglet.model.Scope;
import reglet.model.SectionPlan;
import reglet.model.SectionPlan.Article;
import reglet.model.Standard;
import reglet.model.Subject;
import reglet.model.Synonym;
import reglet.model.Touching;

/** Whether the names that a pack's files use of each other are there. */
final class PackCheck {
    private final Pack pack;
    private final Problems problems;

    private PackCheck(Pack pack, Problems problems) {
        this.pack = pack;
        this.problems = problems;
    }

    static void check(Pack pack, Problems problems) {
        PackCheck check = new PackCheck(pack, problems);
        check.once("name", Stream.concat(pack.subjects().stream().map(subject -> Map.entry(subject.id(), subject.at())),
            Stream.concat(pack.components().stream().map(component -> Map.entry(component.id(), component.at())),
                pack.calculations().stream().limit(1).map(calculation -> Map.entry(Calculation.OWNER, calculation.at())))));
        // Both become paragraphs, which are known by these ids in every paper.
        check.once("clause", Stream.concat(pack.clauses().stream().map(clause -> Map.entry(clause.id(), clause.at())),
            pack.entries().stream().map(entry -> Map.entry(entry.id(), entry.at()))));
        pack.subjects().forEach(subject -> check.properties(subject.properties()));
        pack.components().forEach(check::component);
        pack.rules().forEach(check::rule);
        pack.calculations().forEach(check::calculation);
        pack.clauses().forEach(check::clause);
        pack.entries().forEach(check::entry);
        pack.synonyms().forEach(check::synonym);
        pack.holdPoints().forEach(check::holdPoint);
        pack.touching().forEach(check::touching);
        pack.stock().forEach(check::stock);
    }

    private void once(String what, Stream<Map.Entry<String, Place>> names) {
        Map<String, Place> seen = new HashMap<>();
        names.forEach(name -> {
            Place first = seen.putIfAbsent(name.getKey(), name.getValue());
            if (first != null) {
                problems.add(name.getValue(), "the " + what + " \"" + name.getKey() + "\" is taken", "it stands in " + first.file()
                    + " too");
            }
        });
    }

    private void holdPoint(HoldPoint point) {
        if (!point.component().isEmpty()) {
            known("unknown component", point.component(), components(), point.at());
        }
        List<String> properties = pack.components().stream().flatMap(component -> component.properties().stream()
            .map(property -> component.id() + "." + property.name())).toList();
        point.looks().forEach(look -> look.shows().forEach(name -> known("unknown property", name, properties, look.at())));
    }

    private void stock(ExtraStock stock) {
        known("unknown worksheet", stock.worksheet(), pack.calculations().stream().map(Calculation::id).toList(), stock.at());
        known("unknown component", stock.component(), components(), stock.at());
        if (pack.property(stock.share()).isEmpty()) {
            problems.add(stock.at(), "unknown property \"" + stock.share() + "\"", "expected one such as \"terms.extra_stock\"");
        }
    }

    private void touching(Touching pair) {
        known("unknown component", pair.first(), components(), pair.at());
        known("unknown component", pair.second(), components(), pair.at());
        if (!pair.between().isEmpty()) {
            known("unknown component", pair.between(), components(), pair.at());
        }
        pair.rules().forEach(rule -> known("unknown rule", rule, pack.rules().stream().map(Rule::id).toList(), pair.at()));
    }

    private void component(Component component) {
        plan(component.section(), component.at());
        properties(component.properties());
    }

    private void properties(List<Property> properties) {
        List<String> standards = pack.standards().stream().map(Standard::id).toList();
        for (Property property : properties) {
            if (!property.method().isNone()) {
                known("unknown standard", property.method().standard(), standards, property.at());
            }
        }
    }

    private void rule(Rule rule) {
        subject(rule.each(), rule.subject(), rule.at());
        if (!rule.component().isEmpty()) {
            known("unknown component", rule.component(), components(), rule.at());
        }
    }

    private void calculation(Calculation calculation) {
        if (!calculation.component().isEmpty()) {
            known("unknown component", calculation.component(), components(), calculation.at());
        }
        subject(calculation.each(), calculation.subject(), calculation.at());
        calculation.inputs().values().stream().filter(input -> input.how() != Calculation.How.VALUE)
            .forEach(input -> subject(Scope.MEETING, input.subject(), calculation.at()));
    }

    private void subject(Scope each, String subject, Place at) {
        if (each == Scope.MEETING) {
            known("unknown subject", subject, pack.subjects().stream().filter(found -> found.scope() == Scope.MEETING).map(Subject::id)
                .toList(), at);
        }
    }

    private void clause(Clause clause) {
        subject(clause.each(), clause.subject(), clause.at());
        Optional<SectionPlan> plan = plan(clause.section(), clause.at());
        plan.ifPresent(found -> known("unknown article of section " + found.number(), clause.article(),
            found.articles().stream().map(Article::id).toList(), clause.at()));
    }

    private void entry(RegisterEntry entry) {
        plan(entry.section(), entry.at());
        if (!entry.component().isEmpty()) {
            known("unknown component", entry.component(), components(), entry.at());
        }
    }

    private void synonym(Synonym synonym) {
        String name = synonym.property();
        boolean method = pack.standards().stream().anyMatch(standard -> name.startsWith(standard.id() + " "));
        int dot = name.indexOf('.', name.indexOf('.') + 1);
        boolean word = dot > 0 && pack.property(name.substring(0, dot)).map(PackCheck::words).orElse(List.of())
            .contains(name.substring(dot + 1));
        if (pack.property(name).isEmpty() && pack.component(name).isEmpty() && !method && !word) {
            known("unknown property", synonym.property(), pack.components().stream()
                .flatMap(component -> component.properties().stream().map(property -> component.id() + "." + property.name())).toList(),
                synonym.at());
        }
    }

    /** The words that a property can say. */
    private static List<String> words(Property property) {
        return property.type().kind() == PropertyType.Kind.FLAG ? List.of("yes", "no") : property.type().words();
    }

    private List<String> components() {
        return pack.components().stream().map(Component::id).toList();
    }

    private Optional<SectionPlan> plan(String number, Place at) {
        Optional<SectionPlan> plan = pack.plan(number);
        if (plan.isEmpty()) {
            known("no plan of section", number, pack.plans().stream().map(SectionPlan::number).toList(), at);
        }
        return plan;
    }

    private void known(String what, String word, Collection<String> allowed, Place at) {
        if (!allowed.contains(word)) {
            problems.unknown(at, what, word, allowed);
        }
    }
}
