package reglet.model;

import java.util.List;

/** Several words at once, in the order written: uses "M, G, A". */
public record WordSet(List<String> words) implements Value {

    public WordSet {
        words = List.copyOf(words);
    }

    @Override
    public String text() {
        return String.join(", ", words);
    }
}
