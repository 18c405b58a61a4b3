package reglet.model;

import java.util.List;
import java.util.Optional;

/**
 * A place in the assembly that must be decided; owned by exactly one section.
 *
 * @param id         word in expressions and files: "lath"
 * @param title      words for people: "Lath"
 * @param section    number of the owning section: "04 73 00"
 * @param order      place in the build-up, counted from inside to outside; sets the order everywhere
 * @param needed     expression that says when it must be decided; "" for always
 * @param properties what can be required of it
 * @param options    the allowed answers
 */
public record Component(String id, String title, String section, int order, String needed, List<Property> properties,
        List<Option> options, Place at) {

    public Component {
        properties = List.copyOf(properties);
        options = List.copyOf(options);
    }

    /** A property of its own, or one that every component has by the way it is specified. */
    public Optional<Property> property(String name) {
        return Find.first(properties, Property::name, name).or(() -> Specifying.property(name));
    }

    public Optional<Option> option(String id) {
        return Find.first(options, Option::id, id);
    }
}
