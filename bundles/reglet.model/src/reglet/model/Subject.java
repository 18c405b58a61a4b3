package reglet.model;

import java.util.List;
import java.util.Optional;

/**
 * Something a job describes rather than chooses: its code, its site, a wall type, or one kind of thing that a wall meets
 * (an opening, a base, a top, a corner, a joint).
 *
 * @param id         word in expressions: "site"
 * @param title      words for people
 * @param scope      how often it stands: once a job, once a wall, or for each meeting of that kind
 * @param properties the facts it takes
 * @param given      names of those that the world decides and no design: no remedy changes them
 */
public record Subject(String id, String title, Scope scope, List<Property> properties, List<String> given, Place at) {

    public Subject {
        properties = List.copyOf(properties);
        given = List.copyOf(given);
    }

    public Optional<Property> property(String name) {
        return Find.first(properties, Property::name, name);
    }

    /** The same subject with other properties. */
    public Subject with(List<Property> others) {
        return new Subject(id, title, scope, others, given, at);
    }
}
