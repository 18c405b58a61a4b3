package reglet.reading.value;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Numbers;
import reglet.reading.page.Cell;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.UnitSpelling;

/** Several amounts in one cell, each a value of its own: "11 perms / 16 perms" beside two methods, "1/2 in., 3/4 in. and 1 in.". */
public final class Paired {
    private static final Pattern APART = Pattern.compile("\\s*;\\s*|\\s+/\\s+|,\\s+(?:and\\s+|or\\s+)?|\\s+(?:and|or)\\s+|\\s+&\\s+");
    private static final Pattern AMOUNT = Pattern.compile("(?s)(?:[≥≤<>±~]|[<>]=)?\\s*" + Numbers.pattern() + "\\s*(.*)");
    private static final Pattern ON = Pattern.compile("\\G\\s*(?:(?:\\p{Lu}\\p{Ll}{2,}(?: \\p{L}+)?|(?i:at) \\d+\\s?%(?: \\p{Ll}+)?):?"
        + "\\s+)?((" + Numbers.pattern() + ")\\s*([^\\s\\d,;]+))(?:\\s*\\([^()]*\\))?[,;]?");
    /** A unit and no more, besides what tells the value from the others, in brackets or behind it. */
    private static final Pattern UNIT = Pattern.compile("(?s)([^\\s\\d(,]+)(.*)");

    /** "24 pli / 21 pli, 0 % adhesion loss": what else was seen. */
    private static final Pattern ASIDE = Pattern.compile("(?s)[<≤]?\\s*\\d+\\s?%\\s+\\p{L}{4}.*");

    private Paired() {
    }

    /**
     * The amounts in a cell.
     *
     * @return two or more parts of the cell, each with a unit; empty when it holds anything else
     */
    public static List<Cell> amounts(Cell cell) {
        List<Cell> parts = new ArrayList<>();
        Matcher apart = APART.matcher(cell.text());
        int from = 0;
        while (apart.find()) {
            if (AMOUNT.matcher(cell.text().substring(apart.end())).lookingAt()) {
                parts.add(cell.part(from, apart.start()));
                from = apart.end();
            }
        }
        parts.add(cell.part(from, cell.text().length()));
        if (parts.size() > 2 && ASIDE.matcher(parts.get(parts.size() - 1).text()).matches() && !parts.get(0).text().contains("%")) {
            parts.remove(parts.size() - 1);
        }
        List<Cell> named = parts.size() < 2 ? named(cell) : List.of();
        return !named.isEmpty() ? named : parts.size() < 2 ? List.of() : united(parts);
    }

    /** "Concrete 28 pli Aluminum 22 pli": amounts in one unit, each on its line or behind a word for what it was found on; else empty. */
    private static List<Cell> named(Cell cell) {
        List<Cell> parts = new ArrayList<>();
        Matcher one = ON.matcher(cell.text());
        String unit = "";
        int end = 0;
        while (one.find()) {
            boolean same = UnitSpelling.isUnit(one.group(3)) && (unit.isEmpty() || unit.equals(one.group(3)));
            if (!same) {
                return List.of();
            }
            unit = one.group(3);
            parts.add(cell.part(one.start(1), one.end(3)));
            end = one.end();
        }
        return parts.size() > 1 && cell.text().substring(end).isBlank() ? parts : List.of();
    }

    /** The same with the unit of the next where one has none; empty when some are no amounts or are in different units. */
    private static List<Cell> united(List<Cell> parts) {
        List<Cell> all = new ArrayList<>();
        String unit = "";
        for (int i = parts.size() - 1; i >= 0; i--) {
            Cell part = parts.get(i);
            Matcher amount = AMOUNT.matcher(part.text());
            if (!amount.matches()) {
                return List.of();
            }
            Matcher own = UNIT.matcher(amount.group(1));
            boolean bare = amount.group(1).isBlank() || !own.matches() || !UnitSpelling.isUnit(own.group(1));
            if (bare && unit.isEmpty() || !bare && !unit.isEmpty() && !own.group(1).equals(unit)) {
                return List.of();
            }
            all.add(0, !bare ? part : part.named(part.text().substring(0, amount.start(1)).strip() + " " + unit + (amount.group(1).isBlank()
                ? "" : " " + amount.group(1).strip())));
            unit = bare ? unit : own.group(1);
        }
        return all;
    }

    /** For each of some amounts the method that stands at its place; empty when there are not as many. */
    static List<Citation> methods(List<Citation> methods, int amounts) {
        return methods.size() == amounts && methods.stream().map(Citation::name).distinct().count() == amounts ? methods : List.of();
    }
}
