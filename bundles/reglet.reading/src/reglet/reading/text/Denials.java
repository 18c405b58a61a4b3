package reglet.reading.text;

import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.words.Said;
import reglet.reading.words.Turn;
import reglet.reading.words.Turn.Place;

/** Tells whether a sentence denies what a turn of phrase in it says, says it of something else, or leaves it open. */
final class Denials {
    private static final Set<String> NOT = Set.of("not", "without", "no", "never", "nor", "neither", "unless", "if", "avoid", "optional");
    private static final Set<String> NO = Set.of("no", "without");
    /** "In spacings of no more than 18 ft". */
    private static final Set<String> MORE = Set.of("more", "less", "fewer", "greater", "larger", "wider");
    /**
     * Words that deny what stands right behind them alone: "non-woven polyolefin" is polyolefin, "punctured closed cells" tell of no
     * kind.
     */
    private static final Set<String> RIGHT_BEFORE = Set.of("non", "un", "punctured");
    /** What a product is only with something else in it. */
    private static final String CONDITION = "\\b(?:when|if|where|once) (?:\\w+ (?:is|are) )?(?:mixed|gauged|used|made|blended|combined"
        + "|tempered|added) (?:up )?(?:with|to|by|in)\\b";
    private static final Pattern CONDITIONED = Pattern.compile("(?is).*" + CONDITION + "[^.;]{0,80}");
    private static final Pattern CONDITIONED_WITHIN = Pattern.compile("(?i)" + CONDITION);
    private static final Pattern WITH_MORE = Pattern.compile("(?is)[\\s,(]*(?:w/|with|when (?:mixed|gauged|used|made|blended)"
        + "(?: with)?)\\s*"
        + "(?:\\p{L}+\\s+){0,3}(?:admix\\w*|additive|latex|liquid|polymer)\\b.*");
    private static final Set<String> WALLS = Set.of("construction", "type", "building", "wall", "assembly", "framing", "substrate");
    /** "Not to be used as an …", "is not intended for use as …". */
    private static final Pattern NOT_FOR = Pattern.compile("(?:.* )?(?:not|never|nor)(?: (?:to|be|been|is|for|intended|designed|suitable"
        + "|recommended|meant|tested|used|use|called|needed|as|a|an|the|approved"
        + "|classified|considered|or|act|serve|function|on|in|with|into|over))+");
    /** "An alternative to the woven wire lath of the code". */
    private static final Pattern INSTEAD = Pattern.compile("(?is).*\\b(?:alternatives? to|instead of|in (?:place|lieu) of|rather than"
        + "|(?:replace|replaces|replacing)|substitutes? for)\\s+(?:the |an? )?(?:\\w+ )?");
    /** "Weights are those of the metal without paper" tells how it was weighed. */
    private static final Pattern MEASURED = Pattern.compile("(?is)\\W*(?:(?:all|the) )?(?:weights?|thickness(?:es)?|heights?|dimensions?"
        + "|sizes?)\\b"
        + ".*\\bwithout\\b.*");
    private static final Pattern PARTLY = Pattern.compile("(?i)[^.;]{0,50}?\\b(?:except|unless|other than)\\b");
    private static final int NEAR = 3;

    private Denials() {
    }

    /** "Not self-furring", "wears no fabric", "A118.4 and, when mixed with the admixture, A118.15", unless the turn says so itself. */
    static boolean isDenied(Said said, Place place, Turn turn) {
        return isDenied(said, place.from(), turn) || isDeniedWithin(said, place, turn) || isConditioned(said, place);
    }

    /** "A118.4 and, when mixed with the admixture, A118.15": the words of a turn with a condition among them. */
    private static boolean isConditioned(Said said, Place place) {
        return CONDITIONED_WITHIN.matcher(said.text().substring(said.at(place.from()).from(), said.at(place.to() - 1).to())).find();
    }

    /** "Not self-furring", unless the turn says the "not" itself. */
    private static boolean isDenied(Said said, int start, Turn turn) {
        if (MEASURED.matcher(said.text()).matches()) {
            return true;
        }
        if (turn.parts().stream().anyMatch(NOT::contains)) {
            return false;
        }
        String text = said.text();
        if (CONDITIONED.matcher(text.substring(0, said.at(start).from())).matches() || WITH_MORE.matcher(text.substring(said.at(start)
            .to())).matches()) {
            // "and, when mixed with the admixture in place of water, A118.15"
            return true;
        }
        if (INSTEAD.matcher(text.substring(0, said.at(start).from())).matches()) {
            return true;
        }
        if (start > 0 && said.at(start - 1).plain().equals("or")) {
            // "wood or steel framing" leaves it open
            return true;
        }
        if (start > 0 && RIGHT_BEFORE.contains(said.at(start - 1).plain())
            || NOT_FOR.matcher(said.plain(clause(said, start), start)).matches()) {
            return true;
        }
        // "no asphalt: compatible with silicone": what a clause before this one denies is something else
        for (int i = start - 1; i >= Math.max(0, start - NEAR) && !said.at(i).stop(); i--) {
            if (NOT.contains(said.at(i).plain())) {
                return true;
            }
        }
        return false;
    }

    /** "Wears no fabric", where a turn leaves open what stands between its words. */
    private static boolean isDeniedWithin(Said said, Place place, Turn turn) {
        return turn.parts().stream().flatMap(part -> Stream.of(part.split("\\|"))).noneMatch(NOT::contains)
            && IntStream.range(place.from() + 1, place.to() - 1).anyMatch(i -> NO.contains(
            said.at(i).plain()) && !MORE.contains(said.at(i + 1).plain()));
    }

    /** "Noncombustible construction" says nothing of the product, "no primer is needed except on concrete" is neither yes nor no. */
    static boolean isOpen(Property property, String word, Said said, int end) {
        return word.equals("no") && end < said.size() && WALLS.contains(said.at(end).plain()) || property.type().kind() == Kind.FLAG
            && PARTLY.matcher(said.text().substring(said.at(end - 1).to())).lookingAt();
    }

    /** The first word of the clause that a word stands in. */
    private static int clause(Said said, int start) {
        int first = start;
        while (first > 0 && !said.at(first - 1).stop()) {
            first--;
        }
        return first;
    }
}
