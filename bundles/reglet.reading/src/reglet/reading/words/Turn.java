package reglet.reading.words;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A turn of phrase: "weighs {}", "hold * {} off the backing". */
public record Turn(List<String> parts) {
    private static final String AMOUNT = "{}";
    private static final String SOME = "*";
    private static final int MOST = 5;

    public Turn {
        parts = List.copyOf(parts);
    }

    static Turn of(String written) {
        List<String> parts = new ArrayList<>();
        for (String part : written.replace("…", " ").replace('-', ' ').strip().split("\\s+")) {
            if (part.equals(AMOUNT) || part.equals(SOME)) {
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
        return (int) parts.stream().filter(part -> !part.equals(AMOUNT) && !part.equals(SOME)).count();
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
        if (wanted.equals(SOME)) {
            boolean before = parts.get(parts.size() - 1).equals(AMOUNT) && part + 1 < parts.size() && !parts.get(part + 1).equals("and");
            for (int skipped = 0; skipped <= MOST && word + skipped <= said.size(); skipped++) {
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
        // a word of the pack may be one of several: "cover|covered"
        return word < said.size() && isOne(wanted, said.at(word).plain()) && !isSense(said, word, part)
            ? match(said, start, word + 1, part + 1, from, to, amount) : null;
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
        for (String one : wanted.split("\\|")) {
            if (one.equals(word)) {
                return true;
            }
        }
        return false;
    }
}
