package reglet.reading.value;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import reglet.reading.page.Cell;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Plain;

/** What is left of a cell's words when what says nothing of the value is taken off. */
public final class Bare {
    private Bare() {
    }

    /** The words of a cell without the standards in it. */
    public static String of(Cell cell, List<Citation> cited) {
        return Citations.without(cell.text(), cited).replaceAll("[(\\[]\\s*[)\\]]", " ")
            .replaceAll("(?i)\\b(?:per|to|by|tested to|when tested to|in accordance with)\\s*[.,;]?\\s*$", "")
            .replaceAll("[\\s,;:–-]+$", "").replaceAll("^[\\s,;:]+(?=\\S)", "").replaceAll("\\s+", " ").strip();
    }

    /** A text without words at its ends that say once more what the label says: "hem: 1/2 in hemmed edge", "fire: flame spread 25". */
    static String unrepeated(Label label, String written, String text) {
        Set<String> said = new HashSet<>(List.of("edge", "thick", "total"));
        said.addAll(List.of(Plain.of(written).split(" ")));
        label.properties().forEach(property -> said.addAll(List.of(Plain.of(property.label()).split(" "))));
        String rest = text;
        while (rest.matches("(?s).*\\d.*\\s\\p{L}{3,}\\.?") && said.contains(Plain.of(rest.substring(rest.lastIndexOf(' '))))) {
            rest = rest.substring(0, rest.lastIndexOf(' ')).strip();
        }
        while (rest.matches("(?s)\\p{L}{3,}[:,]?\\s.*\\d.*") && said.contains(Plain.of(rest.substring(0, rest.indexOf(' '))))) {
            rest = rest.substring(rest.indexOf(' ')).strip();
        }
        return rest;
    }

    /** Where the parts behind commas outside brackets begin and end: "Self-furring, paper backed (Grade D, 60 min.)" has one. */
    static List<int[]> behindCommas(String text) {
        List<int[]> parts = new ArrayList<>();
        int from = -1;
        int open = 0;
        for (int i = 0; i <= text.length(); i++) {
            open += i == text.length() ? 0 : text.charAt(i) == '(' ? 1 : text.charAt(i) == ')' ? -1 : 0;
            if (i == text.length() || text.startsWith(", ", i) && open == 0) {
                if (from >= 0) {
                    parts.add(new int[] {from, i});
                }
                from = i + 2;
            }
        }
        return parts;
    }
}
