package reglet.model;

import java.util.Objects;

/**
 * A property with the value that a job gives it: derived, never stored.
 *
 * @param wall      wall type id
 * @param component component id
 * @param option    the accepted option that it belongs to; alternatives have requirements of their own
 * @param property  the property
 * @param value     the value required
 * @param at        where the job fixes it: the choice, or the value set over it
 */
public record Requirement(String wall, String component, String option, Property property, Value value, Place at) {

    /** Of what is quickly told: a property says much of itself, and requirements are looked up very often. */
    @Override
    public int hashCode() {
        return Objects.hash(wall, component, option, property.name());
    }

    /** "lath.weight". */
    public String path() {
        return component + "." + property.name();
    }

    /** Whether the requirement leaves it open: a flag of "no" says that something isn't required, not that it is forbidden. */
    public boolean asksNothing() {
        return property.type().kind() == PropertyType.Kind.FLAG && value.text().equals("no");
    }
}
