package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import reglet.drafting.ReviewPages.Contents;
import reglet.drafting.ReviewPages.Flag;
import reglet.model.Box;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.SheetValue;

/** What is flagged on the sheets behind a review: the numbers of the rows that use a value, and what the reader has to see. */
final class ReviewFlags {
    private final Contents contents;
    private final int own;

    ReviewFlags(Contents contents, int own) {
        this.contents = contents;
        this.own = own;
    }

    private record Spot(int page, Box box) {
    }

    /** One flag at each place, in the order of the rows; a value that several walls use has all their numbers. */
    List<Flag> flags() {
        Map<Spot, List<Integer>> numbers = new LinkedHashMap<>();
        Map<Spot, Set<String>> words = new LinkedHashMap<>();
        int number = 0;
        for (Row row : contents.comparison().rows()) {
            number++;
            int page = ReviewPages.page(contents, row, own);
            if (page == 0 || row.submitted().flatMap(SheetValue::box).isEmpty()) {
                continue;
            }
            Spot spot = new Spot(page, row.submitted().flatMap(SheetValue::box).get());
            numbers.computeIfAbsent(spot, found -> new ArrayList<>()).add(number);
            Set<String> said = words.computeIfAbsent(spot, found -> new LinkedHashSet<>());
            if (row.result() != Result.MEETS) {
                said.add(row.result().text());
            }
            if (row.submitted().filter(value -> !value.confirmed()).isPresent()) {
                said.add("not confirmed");
            }
            if (!ReviewPages.note(row, contents.submittal().review()).isEmpty()) {
                said.add("see note");
            }
        }
        List<Flag> flags = new ArrayList<>();
        numbers.forEach((spot, rows) -> flags.add(new Flag(spot.page(), spot.box(), String.join(", ", rows.stream().map(String::valueOf)
            .toList()) + (words.get(spot).isEmpty() ? "" : ": " + String.join(", ", words.get(spot))))));
        return flags;
    }
}
