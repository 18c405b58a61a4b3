package reglet.model;

import java.util.List;
import java.util.Optional;

/**
 * A thing that can be required of a component, or a fact that a job states of a subject. Declares everything about a
 * requirement but its value.
 *
 * @param name     word in expressions and files: "weight"
 * @param label    words on paper: "weight"
 * @param type     the values it takes
 * @param compare  the sense of a requirement of it
 * @param limit    whether its value is a limit of use, as the lowest temperature for work is: a sheet's "at least 25 °F" then says that the
 *                 limit is 25 °F, and not that it is 25 °F or more
 * @param method   the standard that it is shown by
 * @param evidence what is asked for
 * @param only     expression over the same component's properties that says when it applies; "" for always
 * @param usual    the value that holds when neither option nor person gives one; empty when it has to be decided
 * @param help     what a person has to know to fill it in; may be ""
 * @param basis    where the usual value or the property itself comes from
 * @param at       place in the pack
 */
public record Property(String name, String label, PropertyType type, Compare compare, boolean limit, Method method, Evidence evidence,
        String only, Optional<Value> usual, String help, List<Basis> basis, Place at) {

    public Property {
        basis = List.copyOf(basis);
    }

    /** The same property with another usual value. */
    public Property usually(Value other, List<Basis> others) {
        return new Property(name, label, type, compare, limit, method, evidence, only, Optional.of(other), help, others, at);
    }
}
