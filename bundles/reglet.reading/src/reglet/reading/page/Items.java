package reglet.reading.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;


/**
 * Lists whose items each begin with the designation of a model: "No. KX-78, ground 7/8 in., for lath alone" above "No. KX-114, …", or
 * "HF-1 head flashing: leg 4 in.".
 */
public final class Items {
    private static final int LEAST = 2;
    private static final double BELOW = 1.7;
    /** Of the letters' size, how far the lines of an item are set in. */
    private static final double IN = 3;
    /** Words of an item that stands beside something else at least. */
    private static final int RUNNING = 5;
    private static final Pattern GOES_ON = Pattern.compile("[\\p{Ll}\\d(]");
    private static final Pattern ITEM = Pattern.compile("\\s*(?:[•·▪■●◦‣*–-]\\s*)?(?:(?i:cat(?:alog(?:ue)?)?|no|model|item|part|type"
        + "|style|code)\\.?"
        + "\\s+(?:(?i:no)\\.?\\s+)?)?((?=\\S*\\d)(?=\\S*\\p{Lu})[\\p{Lu}\\d]+(?:[-./][\\p{Lu}\\d]+)*)"
        + "(?:(?: [\\p{Ll}&-]+){1,6}(?=:))?\\s*(?:[,:]|[—–-](?=\\s)|is\\b)\\s+(.*)",
        Pattern.DOTALL);

    /** What goes on with "A653, coating G60" is no item. */
    private static final Pattern ENDS_OPEN = Pattern.compile("(?s).*\\b(?:ASTM|ANSI|AAMA|ICC-ES|ISO|EN|UL|NFPA|to|by|per|and|or|with)");

    private Items() {
    }

    /** What a list says of one model. */
    public record Item(String model, Cell cell) {
        /** The words behind the designation. */
        public Sentence sentence() {
            Matcher item = ITEM.matcher(cell.text());
            int from = item.matches() ? item.start(2) : 0;
            return Sentence.of(cell.part(from, cell.text().length()), false, "");
        }
    }

    /** Whether a line begins with the designation of a model, and doesn't go on with the one above it. */
    static boolean isItem(String above, String text) {
        return ITEM.matcher(text).matches() && !ENDS_OPEN.matcher(above).matches();
    }

    /** The designation that a line begins with; "" for none. */
    public static String model(String text) {
        Matcher item = ITEM.matcher(text);
        return item.matches() ? item.group(1) : "";
    }

    /** The items of the lists on a page; none where fewer than two follow each other. */
    public static List<Item> of(Layout layout) {
        List<Cell> cells = layout.lines().stream().flatMap(line -> line.cells().stream().filter(cell -> line.cells().size() == 1 || cell
            .text().split("\\s+").length >= RUNNING)).toList();
        List<Item> all = new ArrayList<>();
        Set<Cell> used = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Cell cell : cells) {
            if (ITEM.matcher(cell.text()).matches() && used.add(cell)) {
                List<Item> list = list(cell, layout, used);
                if (list.stream().map(Item::model).distinct().count() >= LEAST) {
                    all.addAll(list);
                }
            }
        }
        return all;
    }

    /** The list that begins with an item: what stands below it in its own column, whatever stands beside that. */
    private static List<Item> list(Cell first, Layout layout, Set<Cell> used) {
        List<Item> list = new ArrayList<>(List.of(new Item(model(first.text()), first)));
        Cell last = first;
        Optional<Cell> next = below(first, last, layout);
        while (next.isPresent()) {
            Cell cell = next.get();
            Item begun = list.get(list.size() - 1);
            boolean item = isItem(last.text(), cell.text());
            boolean goesOn = cell.left() > first.left() + 2 || ENDS_OPEN.matcher(last.text()).matches() || !last.text().endsWith(".")
                && GOES_ON.matcher(cell.text()).lookingAt();
            if (item) {
                list.add(new Item(model(cell.text()), cell));
            } else if (goesOn) {
                list.set(list.size() - 1, new Item(begun.model, begun.cell.with(cell)));
            } else {
                break;
            }
            used.add(cell);
            last = cell;
            next = below(first, last, layout);
        }
        return list;
    }

    private static Optional<Cell> below(Cell first, Cell last, Layout layout) {
        return layout.lines().stream().flatMap(line -> line.cells().stream()).filter(cell -> cell.y() > last.low() && cell.y() - last.low()
            < BELOW * cell.size() && cell.left() > first.left() - 2 && cell.left() < first.left() + IN * cell.size()).min(Comparator
                .comparingDouble(Cell::y));
    }
}
