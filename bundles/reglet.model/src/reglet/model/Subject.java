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
 */
public record Subject(String id, String title, Scope scope, List<Property> properties, Place at) {

    public Subject {
        properties = List.copyOf(properties);
    }

    public Optional<Property> property(String name) {
        return properties.stream().filter(property -> property.name().equals(name)).findFirst();
    }
}
