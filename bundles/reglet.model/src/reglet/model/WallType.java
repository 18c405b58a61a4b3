package reglet.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One assembly on some stretch of wall.
 *
 * @param id       "W1"
 * @param title    "Street front"
 * @param facts    facts of the subject "wall" by property name
 * @param meetings what it meets, in the order written
 * @param choices  choices by component id, in the order written
 */
public record WallType(String id, String title, Map<String, Stated> facts, List<Meeting> meetings, Map<String, Choice> choices, Place at) {

    public WallType {
        facts = Ordered.copy(facts);
        meetings = List.copyOf(meetings);
        choices = Ordered.copy(choices);
    }

    public Optional<Choice> choice(String component) {
        return Optional.ofNullable(choices.get(component));
    }

    /** The wall as it is when these alternates are taken up. */
    WallType taking(List<Integer> numbers) {
        Map<String, Choice> taken = new LinkedHashMap<>();
        choices.forEach((component, choice) -> taken.put(component, choice.taking(numbers)));
        return new WallType(id, title, facts, meetings, taken, at);
    }

    /** The same wall with another choice of one component. */
    public WallType with(Choice choice) {
        var changed = new LinkedHashMap<>(choices);
        changed.put(choice.component(), choice);
        return new WallType(id, title, facts, meetings, changed, at);
    }
}
