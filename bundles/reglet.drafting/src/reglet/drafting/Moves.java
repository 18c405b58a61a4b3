package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.TextChange;

/**
 * Puts paragraphs in another order, with all that stands below them and all that a person added behind them. Behind an article's heading
 * stands its first paragraph.
 */
final class Moves {

    private Moves() {
    }

    /** Makes, in order, the moves whose two paragraphs exist and returns all other changes. */
    static List<TextChange> apply(Map<String, List<Draft>> articles, List<TextChange> changes) {
        List<TextChange> left = new ArrayList<>();
        // What was moved behind a paragraph before stays next to it, as with what is added.
        Map<String, List<String>> behind = new LinkedHashMap<>();
        for (TextChange change : changes) {
            List<Draft> taken = new ArrayList<>();
            Map<String, List<Draft>> rest = new LinkedHashMap<>();
            articles.forEach((article, drafts) -> rest.put(article, without(drafts, change.paragraph(), taken)));
            // Nothing moves behind what moves along with it.
            boolean first = find(rest, change.after()).isEmpty() && rest.containsKey(change.after());
            if (change.kind() != TextChange.Kind.MOVE || taken.isEmpty() || find(rest, change.after()).isEmpty() && !first) {
                left.add(change);
                continue;
            }
            articles.putAll(rest);
            List<String> before = behind.computeIfAbsent(change.after(), after -> new ArrayList<>());
            articles.replaceAll((article, drafts) -> first && article.equals(change.after()) ? ahead(drafts, before, taken)
                : with(drafts, change.after(), before, taken));
            taken.forEach(draft -> before.add(draft.id()));
        }
        return left;
    }

    private static Optional<Draft> find(Map<String, List<Draft>> articles, String id) {
        return articles.values().stream().flatMap(List::stream).flatMap(draft -> draft.all().stream())
            .filter(draft -> draft.id().equals(id)).findFirst();
    }

    private static boolean goesWith(Draft draft, String id) {
        return draft.id().equals(id) || draft.id().startsWith(id + "+");
    }

    private static List<Draft> without(List<Draft> drafts, String id, List<Draft> taken) {
        boolean here = drafts.stream().anyMatch(draft -> draft.id().equals(id));
        List<Draft> left = new ArrayList<>();
        for (Draft draft : drafts) {
            if (here && goesWith(draft, id)) {
                taken.add(draft);
            } else {
                left.add(draft.withChildren(without(draft.children(), id, taken)));
            }
        }
        return left;
    }

    /** At an article's head, behind those that were moved there before. */
    private static List<Draft> ahead(List<Draft> drafts, List<String> before, List<Draft> moved) {
        List<Draft> all = new ArrayList<>(drafts);
        int place = 0;
        while (place < all.size() && before.contains(all.get(place).id())) {
            place++;
        }
        all.addAll(place, moved);
        return all;
    }

    private static List<Draft> with(List<Draft> drafts, String after, List<String> before, List<Draft> moved) {
        List<Draft> all = new ArrayList<>();
        drafts.forEach(draft -> all.add(draft.withChildren(with(draft.children(), after, before, moved))));
        int place = -1;
        for (int i = 0; i < all.size(); i++) {
            String id = all.get(i).id();
            boolean next = place == i && (id.startsWith(after + "+") || before.contains(id));
            if (id.equals(after) || next) {
                place = i + 1;
            }
        }
        if (place >= 0) {
            all.addAll(place, moved);
        }
        return all;
    }
}
