package reglet.reading.words;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import reglet.model.Dimension;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Value;

/** Tells of the words of a sentence from where to where an amount of a property runs: "not less than 3/4 in. (19 mm) or more". */
public final class Stretches {
    public static final int LONGEST_AMOUNT = 10;
    public static final int MOST_BETWEEN = 7;
    /** Words that may stand between a name and its amount, or before a number. */
    public static final Set<String> LINKS = Set.of("of", "is", "are", "was", "were", "be", "been", "a", "an", "the", "to", "at", "about",
        "by",
        "only", "just", "must", "shall", "should", "will", "may", "can", "has", "have", "with", "measure", "measured", "average",
            "averaged",
        "equal", "typically", "nominally", "nominal", "approximately", "approx", "around", "roughly", "overall", "total", "tested", "test",
        "result", "value", "rated", "least", "minimum", "most", "maximum", "less", "more", "not", "no", "than", "exceed", "exceeding",
        "greater", "over", "above", "up", "within", "min", "max", "run", "typical", "come", "reach", "from", "between");
    private static final Set<String> SENSES = Set.of("at", "least", "minimum", "maximum", "min", "max", "most", "not", "no", "less",
        "more", "than",
        "exceed",
        "exceeding", "up", "over", "above", "within", "greater");
    private static final Set<String> COMPARATIVES = Set.of("thicker", "thinner", "wider", "longer", "shorter", "heavier", "higher", "lower",
        "fewer", "later", "deeper", "farther", "further", "closer", "nearer", "narrower", "smaller", "larger");
    private static final Pattern FIGURE = Pattern.compile("[-+−±–]?[.\\d½¼¾⅛⅜⅝⅞⅓⅔].*");

    private final Reading reading;
    private final Map<Property, List<Turn>> turns;
    /** Where amounts of a property end that start at the words of the sentence at hand. */
    private final Map<Property, int[]> ends = new HashMap<>();
    /** The sentence that the ends are of. */
    private Said at;

    public Stretches(Reading reading, Map<Property, List<Turn>> turns) {
        this.reading = reading;
        this.turns = turns;
    }

    public static boolean isFigure(String plain) {
        return FIGURE.matcher(plain).matches() || Figures.isNumber(plain);
    }

    /** The first of the words before a number that say its sense. */
    public static int start(Said said, int from, int end) {
        int start = from;
        while (start < end && !isFigure(said.at(start).plain())) {
            start++;
        }
        int sense = start;
        // "(33 mil or more) at no more than 16 in.": what is in brackets before it says nothing of it
        while (start > 0 && !said.at(start - 1).stop() && !said.text().startsWith(")", said.at(start - 1).to())
            && LINKS.contains(said.at(start - 1).plain())) {
            start--;
            // "turned up 4 in." is no limit, as "up to 4 in." is
            boolean one = SENSES.contains(said.at(start).plain()) && !Set.of("at", "up").contains(said.at(start).plain());
            sense = one || said.plain(start, start + 2).equals("up to") || said.plain(start, start + 2)
                .equals("at least")
                || said.plain(start, start + 2).equals("at most") ? start : sense;
        }
        if (sense > 0 && said.at(sense - 1).plain().equals("between") && !said.at(sense - 1).stop()
            && said.between(sense, end).contains(" and ")) {
            return sense - 1;
        }
        return said.at(sense).plain().equals("than") ? comparative(said, sense) : sense;
    }

    /** "No thicker than 1/2 in.": where the words before "than" begin; behind it where they say no limit. */
    private static int comparative(Said said, int than) {
        // "no farther apart than 6 in."
        int word = than > 2 && said.at(than - 1).plain().equals("apart") ? than - 2 : than - 1;
        // "the bed should not be thicker than 1/2 in."
        int not = word > 1 && said.at(word - 1).plain().equals("be") ? word - 2 : word - 1;
        boolean denied = word > 0 && COMPARATIVES.contains(said.at(word).plain()) && Set.of("no", "not", "never").contains(said.at(not)
            .plain());
        return denied ? not : than + 1;
    }

    /** The index behind the amount of a property that starts at a word, or after a few words that change nothing; -1 for none. */
    public int end(Property property, Said said, int from) {
        if (said != at) {
            ends.clear();
            at = said;
        }
        int[] known = ends.computeIfAbsent(property, fresh -> new int[said.size()]);
        if (known[from] == 0) {
            known[from] = found(property, said, from);
        }
        return known[from];
    }

    /** "ASTM E 84" holds no amount, and that of "minus 20 °F" doesn't begin with the 20. */
    private static boolean isOfStandard(Said said, int number) {
        boolean minus = number > 0 && said.at(number - 1).plain().equals(Figures.MINUS_SAID);
        return minus || number > 1 && said.at(number - 1).plain().matches("[a-z]") && said
            .at(number - 2).plain().matches("astm|ansi|aama|iso|en|din");
    }

    private int found(Property property, Said said, int from) {
        int number = from;
        while (number < said.size() && number - from < MOST_BETWEEN && LINKS.contains(said.at(number).plain()) && !isFigure(said.at(number)
            .plain())) {
            number++;
        }
        if (number >= said.size() || !isFigure(said.at(number).plain()) || isOfStandard(said, number)) {
            return -1;
        }
        if (number > 2 && said.at(number - 1).plain().equals("and") && isFigure(said.at(number - 2).plain()) && said.at(number - 3).plain()
            .equals("between")) {
            // "between 1/4 and 1/2 in." isn't 1/2 in.
            return -1;
        }
        int found = -1;
        String before = isBetween(property, said, number) ? "between " : "";
        // "25 % larger than the joint" is an answer to between which shares, and one temperature none to between which
        boolean range = property.type().kind() == Kind.RANGE && property.type().unit().orElseThrow().dimension() != Dimension.RATIO;
        for (int end = number + 1; end <= said.size() && end <= number + LONGEST_AMOUNT; end++) {
            if (found > 0 && Set.of("at", "after", "when").contains(said.at(end - 1).plain())) {
                // "3 in. at sides and 6 in. at ends"
                break;
            }
            boolean read = reading.read(property, before + said.between(number, end), "").filter(value -> !range || !isSingle(value))
                .isPresent();
            if (!read && found > 0 && end - found > 3) {
                break;
            }
            boolean to = found > 0 && Set.of("to", "up", "–", "—", "through", "x", "×")
                .contains(said.at(found).plain());
            if (read && (found < 0 || end == found + 1 || to)) {
                found = end;
            } else if (found > 0 && !to) {
                break;
            }
            if (said.at(end - 1).stop() && !said.at(end - 1).plain().isEmpty() && said.text().charAt(said.at(end - 1).to() - 1) != ')'
                && !said.text().substring(said.at(end - 1).to()).strip().matches("(?s)[–—]\\s*[.\\d].*") && found > 0) {
                break;
            }
        }
        if (found > 0 && number > 0 && found + 1 < said.size() && said.at(number - 1).plain().equals("from") && said.at(found).plain()
            .equals("to") && !said.at(found - 1).stop() && !isFigure(said.at(found + 1).plain())) {
            // "from 1/4 in. to a greatest width of 3/4 in."
            return -1;
        }
        if (found > 0 && found < said.size() && Set.of("per", "x", "×").contains(said.at(found).plain()) && !isOfAFoot(property, said,
            found)) {
            return -1;
        }
        if (found > 0 && found < said.size() && said.text().charAt(Math.max(0, said.at(found).from() - 1)) == '(') {
            // "1/2 in. (13 mm) thick"
            for (int end = found + 1; end <= Math.min(said.size(), found + LONGEST_AMOUNT); end++) {
                // "(3 in.)"
                int close = said.text().startsWith(".)", said.to(end)) ? said.to(end) + 1 : said.to(end);
                if (said.text().startsWith(")", close)) {
                    String whole = said.text().substring(said.at(number).from(), close + 1);
                    found = reading.read(property, whole, "").isPresent() ? end : found;
                    break;
                }
            }
        }
        for (int end = found + 1; found > 0 && end <= Math.min(said.size(), found + 3); end++) {
            // "3/4 in. or more", "4 in. (102 mm) minimum"
            // "1/2 in. (13 mm), min. 3/8 in. over the lath": a single word behind a comma may be said of what follows
            boolean own = end > found + 1 || !said.at(found - 1).stop();
            if (own && reading.read(property, said.between(number, end), "").filter(read -> read.compare().isPresent()).isPresent()) {
                return end;
            }
        }
        return found;
    }

    /** "Between 1/4 in. and 1/2 in.", unless a turn of the property looks for one of the two ends. */
    private boolean isBetween(Property property, Said said, int number) {
        return number > 0 && said.at(number - 1).plain().equals("between") && (property.type().kind() == Kind.RANGE || turns
            .getOrDefault(property, List.of()).stream()
            .noneMatch(turn -> turn.parts().contains("between")));
    }

    /** "1/4 in. per foot" of a property that is told so. */
    private boolean isOfAFoot(Property property, Said said, int per) {
        return per + 1 < said.size() && Set.of("foot", "ft").contains(said.at(per + 1).plain())
            && turns.getOrDefault(property, List.of()).stream().anyMatch(turn -> turn.parts().contains("per"));
    }

    /** Whether two texts are different amounts of a property. */
    public boolean differ(Property property, String one, String other) {
        Optional<Value> first = reading.read(property, one, "").map(Reading.Read::value);
        Optional<Value> second = reading.read(property, other, "").map(Reading.Read::value);
        return first.isPresent() && second.isPresent() && first.get() instanceof Quantity a && second.get() instanceof Quantity b
            && Math.abs(a.si() - b.si()) > 0.06 * Math.max(Math.abs(a.si()), Math.abs(b.si()));
    }

    private static boolean isSingle(Reading.Read read) {
        return read.value() instanceof Range range && range.low().equals(range.high());
    }
}
