package reglet.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import reglet.model.Calculation;
import reglet.model.Component;
import reglet.model.Option;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.PropertyType.Kind;
import reglet.model.Scope;
import reglet.model.Specifying;
import reglet.model.Subject;
import reglet.rules.Expression.Sight;

/** The facts that an expression may read, with their types. */
final class Names {
    private final Map<String, PropertyType> types = new LinkedHashMap<>();
    private final Set<String> owners = new LinkedHashSet<>();

    private Names() {
    }

    static Names of(Pack pack, Sight sight) {
        Names names = new Names();
        for (Subject subject : pack.subjects()) {
            boolean seen = subject.scope() == Scope.JOB || subject.scope() == Scope.WALL && sight.each() != Scope.JOB
                || subject.scope() == Scope.MEETING && subject.id().equals(sight.subject());
            if (seen) {
                names.add(subject.id(), subject.properties());
            }
        }
        if (sight.each() != Scope.JOB) {
            for (Component component : pack.components()) {
                names.add(component.id(), component.properties());
                names.types.put(component.id() + ".option", new PropertyType(Kind.WORD, Optional.empty(),
                    component.options().stream().map(Option::id).toList()));
                names.types.put(component.id() + ".chosen", new PropertyType(Kind.FLAG, Optional.empty(), List.of()));
                names.types.put(component.id() + "." + Specifying.HOW, new PropertyType(Kind.WORD, Optional.empty(),
                    Specifying.How.words()));
                names.types.put(component.id() + "." + Specifying.COMPARABLE, new PropertyType(Kind.FLAG, Optional.empty(), List.of()));
            }
        }
        for (Calculation calculation : pack.calculations()) {
            boolean seen = calculation.each() == Scope.WALL ? sight.each() != Scope.JOB
                : sight.each() == Scope.MEETING && calculation.subject().equals(sight.subject());
            if (seen) {
                names.owners.add(Calculation.OWNER);
                calculation.results().forEach(result -> names.types.put(
                    Calculation.OWNER + "." + calculation.id() + "." + result.name(), result.type()));
            }
        }
        return names;
    }

    private void add(String owner, List<Property> properties) {
        owners.add(owner);
        properties.forEach(property -> types.put(owner + "." + property.name(), property.type()));
    }

    Optional<PropertyType> type(String name) {
        return Optional.ofNullable(types.get(name));
    }

    List<String> all() {
        return new ArrayList<>(types.keySet());
    }

    Set<String> owners() {
        return owners;
    }
}
