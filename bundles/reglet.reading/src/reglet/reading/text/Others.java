package reglet.reading.text;

import java.util.Set;

import reglet.model.Component;
import reglet.reading.words.Naming;
import reglet.reading.words.Said;
import reglet.reading.words.Stretches;
import reglet.reading.words.Turn.Place;
import reglet.reading.words.UnitSpelling;

/** Tells of an amount in running text that it is another thing's, or said a second time: by the words right before it. */
final class Others {
    private static final Set<String> ARTICLES = Set.of("the", "a", "an", "its", "their", "back", "front", "upper", "lower");
    private static final Set<String> OVER = Set.of("over", "behind", "under", "beneath", "onto", "against");

    private static final Set<String> DETERMINERS = Set.of("the", "a", "an", "each", "all", "every");
    private static final Set<String> VERBS = Set.of("is", "are", "be", "must", "shall", "should", "may", "can", "will", "come", "go", "has",
        "have", "lie", "of");
    private static final int LONGEST = 4;

    private final Component component;
    private final Naming naming;

    Others(Component component, Naming naming) {
        this.component = component;
        this.naming = naming;
    }

    /** "1/2 in. (13 mm) thick": the figure in brackets says the same in another unit. */
    static boolean isOtherUnit(Said said, int amount) {
        int from = said.at(amount).from();
        return amount > 0 && from > 0 && said.text().charAt(from - 1) == '(' && (UnitSpelling.isUnit(said.at(amount - 1).plain())
            || said.at(amount - 1).plain().endsWith("\""));
    }

    /** "The barrier shingles over the back leg, not less than 2 in.": of what lies over a thing, and not of the thing. */
    static boolean isPassed(Said said, Place place) {
        int before = place.from() - 1;
        while (before > 0 && ARTICLES.contains(said.at(before).plain()) && !said.at(before).stop()) {
            before--;
        }
        return place.from() < place.amount() && before >= 0 && !said.at(before).stop() && OVER.contains(said.at(before).plain())
            && said.text().substring(said.at(place.from()).from(), said.at(place.amount()).from()).contains(",");
    }

    /** "A scratch coat 1/2 inch thick" says nothing of the units on it: the name of another component right before an amount. */
    boolean isAnothers(Said said, int amount) {
        int end = amount;
        while (end > 0 && !said.at(end - 1).stop() && Stretches.LINKS.contains(said.at(end - 1).plain())) {
            end--;
        }
        return end > 0 && !said.at(end - 1).stop() && naming.before(said, end).filter(named -> !named.contains(component)).isPresent()
            || isSubjectAnothers(said, amount);
    }

    /** "Mortar is put on half an inch thick": a clause that begins with the name of another component. */
    private boolean isSubjectAnothers(Said said, int amount) {
        int first = amount;
        while (first > 0 && !said.at(first - 1).stop()) {
            first--;
        }
        while (first < amount && DETERMINERS.contains(said.at(first).plain())) {
            first++;
        }
        for (int end = Math.min(amount, first + LONGEST); end > first; end--) {
            Set<Component> named = naming.named(said.plain(first, end));
            if (!named.isEmpty()) {
                return !named.contains(component) && end < amount && VERBS.contains(said.at(end).plain());
            }
        }
        return false;
    }

    /** "Paper laps 2 in." says nothing of the lath's lap. */
    boolean isOfAnother(Said said, int name) {
        return name > 0 && !said.at(name - 1).stop() && naming.before(said, name).filter(named -> !named.contains(component)).isPresent();
    }

    /** As {@link #isAnothers(Said, int)}, of an amount at a place of the text. */
    boolean isAnothersAt(Said said, int place) {
        for (int i = 0; i < said.size(); i++) {
            if (said.at(i).from() >= place) {
                return isAnothers(said, i);
            }
        }
        return false;
    }
}
