package reglet.desk;

import java.util.List;
import java.util.Optional;

import reglet.model.Dates;
import reglet.model.Dimension;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Quantity;
import reglet.model.Subject;
import reglet.model.Unit;
import reglet.model.UnitSystem;

/**
 * A fact that a new job is asked for: one that the world decides and that something in the pack reads.
 *
 * @param subject  what the fact is of
 * @param property the fact
 */
public record NeededFact(Subject subject, Property property) {

    /** "site.climate". */
    public String name() {
        return subject.id() + "." + property.name();
    }

    /** Whether nothing holds while it isn't answered; otherwise the pack's usual value does. */
    public boolean isNeeded() {
        return property.usual().isEmpty();
    }

    /** The words to choose from; empty when the answer is typed. */
    public List<String> words() {
        return property.type().kind() == Kind.FLAG ? List.of("yes", "no") : property.type().words();
    }

    /** The unit that a bare number is taken in; empty for words and bare counts. */
    public Optional<Unit> unit(UnitSystem system) {
        return property.type().unit().filter(unit -> unit.dimension() != Dimension.COUNT)
            .map(unit -> unit.system().isEmpty() || unit.system().get() == system ? unit : unit.other().orElse(unit));
    }

    /** An answer as the job's file has it: a bare number gets its unit, a date its one form. */
    public String written(String typed, UnitSystem system) {
        String answer = property.type().written(typed.strip());
        boolean bare = Quantity.parse(answer).map(number -> number.unit() == Unit.ONE).orElse(false);
        return bare ? unit(system).map(unit -> answer + " " + unit.symbol()).orElse(answer) : answer;
    }

    /** What is wrong with an answer, in a sentence; "" when it can be used. No answer is one that can wait. */
    public String wrong(String typed, UnitSystem system) {
        if (typed.isBlank() || property.type().read(written(typed, system)).isPresent()) {
            return "";
        }
        String said = "\"" + typed.strip() + "\" is no " + property.label();
        if (!words().isEmpty()) {
            return said + "; expected one of: " + String.join(", ", words()) + ".";
        }
        if (property.type().kind() == Kind.DATE) {
            return said + "; " + Dates.expected(typed) + ".";
        }
        return said + "; expected a number" + unit(system).map(unit -> ", such as 10 " + unit.symbol()).orElse("") + ".";
    }
}
