package reglet.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import reglet.model.Nearest;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;

/** Everything found wrong while reading, so that a person mends a folder in one go and not one message at a time. */
final class Problems {
    private final List<Problem> found = new ArrayList<>();

    void add(Place at, String what, String expected) {
        found.add(new Problem(at, what, expected));
    }

    /** A word that is none of those allowed: names the nearest, or lists them when they are few. */
    void unknown(Place at, String what, String word, Collection<String> allowed) {
        String near = Nearest.hint(word, allowed);
        String list = allowed.isEmpty() ? "none is allowed here"
            : allowed.size() <= 12 ? "expected one of: " + String.join(", ", allowed) : "there are " + allowed.size() + " to choose from";
        add(at, what + " \"" + word + "\"", near.isEmpty() ? list : near + (allowed.size() <= 12 ? " " + list : ""));
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    void throwIfAny() throws UnusableInput {
        if (!found.isEmpty()) {
            throw new UnusableInput(found);
        }
    }
}
