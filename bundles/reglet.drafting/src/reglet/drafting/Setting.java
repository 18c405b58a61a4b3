package reglet.drafting;

import java.util.Map;

import reglet.model.Ordered;

/**
 * What a text is printed for.
 *
 * @param wall    wall type id; "" outside a wall
 * @param meeting meeting id; "" outside one
 * @param options option id by component id
 */
record Setting(String wall, String meeting, Map<String, String> options) {
    Setting {
        options = Ordered.copy(options);
    }
}
