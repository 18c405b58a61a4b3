package reglet.reading.words;

import java.util.ArrayList;
import java.util.List;

import reglet.model.Property;

/** Amounts of a property within words that are no value as a whole: "V-grooves at 4-1/2 in., 3/8 in. deep". */
public final class Amounts {
    private static final int LONGEST = 8;

    private Amounts() {
    }

    /** The longest stretches of words that are amounts with a unit, in their order. */
    public static List<String> in(String text, Property property, Reading reading) {
        Said said = new Said(text);
        List<String> amounts = new ArrayList<>();
        for (int i = 0; i < said.size(); i++) {
            int best = -1;
            for (int end = i + 1; Stretches.isFigure(said.at(i).plain()) && end <= Math.min(said.size(), i + LONGEST); end++) {
                best = reading.read(property, said.between(i, end), "").isPresent() ? end : best;
            }
            if (best > 0) {
                amounts.add(said.between(i, best));
                i = best - 1;
            }
        }
        return amounts;
    }
}
