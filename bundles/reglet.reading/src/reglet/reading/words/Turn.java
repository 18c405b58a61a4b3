package reglet.reading.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A turn of phrase: "weighs {}", "hold * {} off the backing"; for {@code ~} as for {@code *} a few words may stand, but fewer. */
public record Turn(List<String> parts) {
    private static final String AMOUNT = "{}";
    private static final String SOME = "*";
    private static final String FEW = "~";
    private static final int MOST = 5;
    private static final int MOST_FEW = 3;
    private static final Set<String> MODAL = Set.of("shall", "must", "should", "will", "may", "can");
    private static final List<String> BEING = List.of("be", "is", "are");
    private static final Set<String> DENIALS = Set.of("no", "not", "without", "never", "nor");

    public Turn {
        parts = List.copyOf(parts);
    }

    public static Turn of(String written) {
        List<String> parts = new ArrayList<>();
        for (String part : written.replace("…", " ").replace('-', ' ').strip().split("\\s+")) {
            if (part.equals(AMOUNT) || part.equals(SOME) || part.equals(FEW)) {
                parts.add(part);
            } else {
                parts.add(Stream.of(part.split("\\|")).map(Plain::of).collect(Collectors.joining("|")));
            }
        }
        return new Turn(parts);
    }


    public boolean hasAmount() {
        return parts.contains(AMOUNT);
    }

    /** Words that the turn fixes: the more, the surer. */
    public int fixed() {
        return (int) parts.stream().filter(part -> !part.equals(AMOUNT) && !part.equals(SOME) && !part.equals(FEW)).count();
    }

    /**
     * Where in a sentence the turn stands.
     *
     * @param from   first and last word, and first and last word of the amount; equal where there is none
     */
    public record Place(int from, int to, int amount, int amountEnd) {
    }

    /**
     * The turn at a word of a sentence, or null.
     *
     * @param amount the index behind the amount that starts at a word; -1 where none does
     */
    public Place at(Said said, int start, IntUnaryOperator amount) {
        return match(said, start, start, 0, start, start, amount);
    }

    private Place match(Said said, int start, int word, int part, int from, int to, IntUnaryOperator amount) {
        if (part == parts.size()) {
            return new Place(start, word, from, to);
        }
        String wanted = parts.get(part);
        if (wanted.equals(AMOUNT)) {
            int end = word < said.size() ? amount.applyAsInt(word) : -1;
            Place place = null;
            // the last words of "24 in. long", "20 °F and rising" may be those of the turn
            for (int last = end; place == null && last > word && last >= end - 2; last--) {
                place = match(said, start, last, part + 1, word, last, amount);
            }
            return place;
        }
        if (wanted.equals(SOME) || wanted.equals(FEW)) {
            boolean before = parts.get(parts.size() - 1).equals(AMOUNT) && part + 1 < parts.size() && !parts.get(part + 1).equals("and");
            for (int skipped = 0; skipped <= (wanted.equals(FEW) ? MOST_FEW : MOST) && word + skipped <= said.size(); skipped++) {
                if (wanted.equals(FEW) && skipped > 0 && DENIALS.contains(said.at(word + skipped - 1).plain())) {
                    return null;
                }
                if (before && skipped > 0 && isAmount(said, word + skipped - 1, amount)) {
                    // "upper courses 6 in. over lower courses, vertical joints 8 in.": the nearer amount is meant
                    return null;
                }
                Place place = match(said, start, word + skipped, part + 1, from, to, amount);
                if (place != null) {
                    return place;
                }
            }
            return null;
        }
        if (part > 0 && word < said.size() && MODAL.contains(said.at(word).plain()) && BEING.stream().anyMatch(one -> isOne(wanted, one))
            && !isOne(wanted, said.at(word).plain())) {
            // "joints shall be lapped" as "joints are lapped"
            return match(said, start, word + 1, part, from, to, amount);
        }
        // a word of the pack may be one of several: "cover|covered"
        return word < said.size() && (isOne(wanted, said.at(word).plain()) || isBeing(wanted, said, word)) && !isSense(said, word, part)
            ? match(said, start, word + 1, part + 1, from, to, amount) : null;
    }

    /** "Must be" where the turn says "is" or "are". */
    private static boolean isBeing(String wanted, Said said, int word) {
        return word > 0 && said.at(word).plain().equals("be") && MODAL.contains(said.at(word - 1).plain()) && (isOne(wanted, "is")
            || isOne(wanted, "are"));
    }

    /** The "at" of "2 in. at least and vertical joints 6 in.", where the turn looks for a place. */
    private boolean isSense(Said said, int word, int part) {
        String next = word + 1 < said.size() ? said.at(word + 1).plain() : "";
        return said.at(word).plain().equals("at") && (next.equals("least") || next.equals("most"))
            && !(part + 1 < parts.size() && (parts.get(part + 1).equals(AMOUNT) || isOne(parts.get(part + 1), next)));
    }

    private static boolean isAmount(Said said, int word, IntUnaryOperator amount) {
        // "steel studs (33 mil or more) at 16 in.": what is put in brackets isn't what is meant
        int from = said.at(word).from();
        boolean inBrackets = from > 0 && said.text().charAt(from - 1) == '(';
        return !inBrackets && Stretches.isFigure(said.at(word).plain()) && amount.applyAsInt(word) > 0;
    }

    static boolean isOne(String wanted, String word) {
        if (wanted.indexOf('|') < 0) {
            return wanted.equals(word);
        }
        for (int at = word.isEmpty() ? -1 : wanted.indexOf(word); at >= 0; at = wanted.indexOf(word, at + 1)) {
            int end = at + word.length();
            if ((at == 0 || wanted.charAt(at - 1) == '|') && (end == wanted.length() || wanted.charAt(end) == '|')) {
                return true;
            }
        }
        return false;
    }
}
