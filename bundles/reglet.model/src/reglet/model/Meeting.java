package reglet.model;

import java.util.Map;

/**
 * Something that a wall type meets: an opening, a base, a top, a corner, a joint.
 *
 * @param id      name within the wall: "window-1"
 * @param subject id of the {@link Subject} that declares its facts: "opening"
 * @param facts   facts by property name
 */
public record Meeting(String id, String subject, Map<String, Stated> facts, Place at) {

    public Meeting {
        facts = Ordered.copy(facts);
    }
}
