package reglet.model;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Finds one of a list by its name; asked thousands of times for a drafted section, so that no stream is set up for it. */
final class Find {
    private Find() {
    }

    static <T> Optional<T> first(List<T> all, Function<T, String> name, String wanted) {
        for (T one : all) {
            if (name.apply(one).equals(wanted)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }
}
