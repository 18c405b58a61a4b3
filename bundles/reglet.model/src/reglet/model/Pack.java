package reglet.model;

import java.util.List;
import java.util.Optional;

/**
 * A trade's knowledge. Lists are ordered: components by build-up, the rest by id.
 *
 * @param name    "adheredveneer"
 * @param version of the pack
 * @param holdPoints points at which work stops until somebody has looked, in the order of the work
 * @param touching components that touch each other
 * @param stock    material that is left with the owner
 * @param plausible what amounts can be in products of the trade
 * @param cautions what every section, package and worksheet says of its limits and of dangers on site, in order
 */
public record Pack(String name, String version, String title, List<Caution> cautions, List<Subject> subjects, List<Component> components,
        List<Rule> rules, List<Calculation> calculations, List<Table> tables, List<Standard> standards, List<SectionPlan> plans,
            List<Clause> clauses,
        List<RegisterEntry> entries, List<Synonym> synonyms, List<HoldPoint> holdPoints, List<Touching> touching,
        List<ExtraStock> stock, List<Plausible> plausible) {

    public Pack {
        cautions = List.copyOf(cautions);
        subjects = List.copyOf(subjects);
        components = List.copyOf(components);
        rules = List.copyOf(rules);
        calculations = List.copyOf(calculations);
        tables = List.copyOf(tables);
        standards = List.copyOf(standards);
        plans = List.copyOf(plans);
        clauses = List.copyOf(clauses);
        entries = List.copyOf(entries);
        synonyms = List.copyOf(synonyms);
        holdPoints = List.copyOf(holdPoints);
        touching = List.copyOf(touching);
        stock = List.copyOf(stock);
        plausible = List.copyOf(plausible);
    }

    /**
     * A caution.
     *
     * @param id   "silica"
     * @param text the sentence
     * @param when expression over a wall; "" for always
     */
    public record Caution(String id, String text, String when, List<Basis> basis, Place at) {
        public Caution {
            basis = List.copyOf(basis);
        }
    }

    /** The same pack with other subjects, components, rules and tables. */
    public Pack with(List<Subject> otherSubjects, List<Component> otherComponents, List<Rule> otherRules, List<Table> otherTables) {
        return new Pack(name, version, title, cautions, otherSubjects, otherComponents, otherRules, calculations, otherTables, standards,
            plans, clauses, entries, synonyms, holdPoints, touching, stock, plausible);
    }

    public Optional<Component> component(String id) {
        return Find.first(components, Component::id, id);
    }

    public Optional<Subject> subject(String id) {
        return Find.first(subjects, Subject::id, id);
    }

    public Optional<Standard> standard(String id) {
        return Find.first(standards, Standard::id, id);
    }

    public Optional<SectionPlan> plan(String number) {
        return Find.first(plans, SectionPlan::number, number);
    }

    public Optional<Table> table(String id) {
        return Find.first(tables, Table::id, id);
    }

    public Optional<Rule> rule(String id) {
        return Find.first(rules, Rule::id, id);
    }

    /** The property behind an expression name such as "lath.weight", "site.climate" or "worksheets.weight.unit.limit". */
    public Optional<Property> property(String path) {
        int dot = path.indexOf('.');
        if (dot < 0) {
            return Optional.empty();
        }
        String owner = path.substring(0, dot);
        String name = path.substring(dot + 1);
        if (owner.equals(Calculation.OWNER)) {
            return Calculation.result(calculations, name);
        }
        return component(owner).flatMap(component -> component.property(name))
            .or(() -> subject(owner).flatMap(subject -> subject.property(name)));
    }
}
