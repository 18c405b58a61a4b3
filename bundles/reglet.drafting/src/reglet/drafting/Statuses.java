package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.model.Register.Lost;
import reglet.model.RegisterItem;
import reglet.model.Review;
import reglet.model.Submittal;

/** What the submittals say of an item. */
final class Statuses {
    private static final String OPEN = "open";
    private static final String NOT_DUE = "not due";

    private Statuses() {
    }

    /**
     * "open", "handed in: ID", "returned: ID, ACTION, DATE"; a submittal that another replaces no longer counts. "not due" while the
     * alternate of an item isn't accepted.
     */
    static String of(RegisterItem item, List<Submittal> submittals) {
        List<Submittal> with = submittals.stream().filter(item::isIn).toList();
        Set<String> replaced = with.stream().map(Submittal::replaces).collect(Collectors.toSet());
        List<Submittal> standing = with.stream().filter(submittal -> !replaced.contains(submittal.id())).toList();
        String handedIn = standing.stream().filter(submittal -> !isReturned(submittal)).map(Submittal::id)
            .collect(Collectors.joining(", "));
        List<String> states = new ArrayList<>();
        if (!handedIn.isEmpty()) {
            states.add("handed in: " + handedIn);
        }
        standing.stream().filter(Statuses::isReturned).forEach(submittal -> states.add("returned: " + returned(submittal)));
        if (!item.isDue()) {
            states.add(NOT_DUE);
        }
        return states.isEmpty() ? OPEN : String.join("; ", states);
    }

    private static boolean isReturned(Submittal submittal) {
        return submittal.review().flatMap(Review::returned).isPresent();
    }

    private static String returned(Submittal submittal) {
        Review review = submittal.review().orElseThrow();
        return Stream.of(submittal.id(), review.action(), review.returned().orElseThrow().toString()).filter(word -> !word.isEmpty())
            .collect(Collectors.joining(", "));
    }

    /** What submittals say they cover and the register doesn't have. */
    static List<Lost> lost(List<RegisterItem> items, List<String> sections, List<Submittal> submittals) {
        List<Lost> lost = new ArrayList<>();
        for (Submittal submittal : submittals) {
            if (sections.contains(submittal.section())) {
                List<String> known = items.stream().filter(item -> item.section().equals(submittal.section()))
                    .flatMap(item -> item.names().stream()).toList();
                submittal.items().stream().filter(id -> !known.contains(id)).forEach(id -> lost.add(new Lost(submittal.at(), "Submittal "
                    + submittal.id() + " covers \"" + id + "\", which Section " + submittal.section() + " does not ask for.",
                    "Name an item of the section's register, or take it out.")));
            }
        }
        return lost;
    }
}
