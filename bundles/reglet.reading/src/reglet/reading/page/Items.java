package reglet.reading.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.reading.page.Layout.Line;

/** Lists whose items each begin with the designation of a model: "No. KX-78, ground 7/8 in., for lath alone" above "No. KX-114, …". */
public final class Items {
    private static final int LEAST = 2;
    private static final double BELOW = 1.7;
    private static final Pattern ITEM = Pattern.compile("\\s*(?:[•·▪■●◦‣*–-]\\s*)?(?:(?i:cat(?:alog(?:ue)?)?|no|model|item|part|type"
        + "|style|code)\\.?"
        + "\\s+(?:(?i:no)\\.?\\s+)?)?((?=\\S*\\d)(?=\\S*\\p{Lu})[\\p{Lu}\\d]+(?:[-./][\\p{Lu}\\d]+)*)"
        + "\\s*(?:[,:]|[—–-](?=\\s)|is\\b)\\s+(.*)",
        Pattern.DOTALL);

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

    /** Whether a line begins with the designation of a model. */
    static boolean isItem(String text) {
        return ITEM.matcher(text).matches();
    }

    /** The designation that a line begins with; "" for none. */
    public static String model(String text) {
        Matcher item = ITEM.matcher(text);
        return item.matches() ? item.group(1) : "";
    }

    /** The items of the lists on a page; none where fewer than two follow each other. */
    public static List<Item> of(Layout layout) {
        List<Item> all = new ArrayList<>();
        List<Item> open = new ArrayList<>();
        Cell first = null;
        Cell last = null;
        for (Line line : layout.lines()) {
            Cell cell = line.cells().get(0);
            Matcher item = line.cells().size() == 1 ? ITEM.matcher(cell.text()) : null;
            boolean near = last != null && cell.y() - last.y() < BELOW * cell.size() && cell.y() > last.y();
            if (item != null && item.matches()) {
                if (!near) {
                    close(open, all);
                }
                open.add(new Item(item.group(1), cell));
                first = cell;
                last = cell;
            } else if (near && line.cells().size() == 1 && !open.isEmpty() && cell.left() > first.left() + 2) {
                Item begun = open.remove(open.size() - 1);
                open.add(new Item(begun.model, begun.cell.with(cell)));
                last = cell;
            } else {
                close(open, all);
                last = null;
            }
        }
        close(open, all);
        return all;
    }

    private static void close(List<Item> open, List<Item> all) {
        if (open.stream().map(Item::model).distinct().count() >= LEAST) {
            all.addAll(open);
        }
        open.clear();
    }
}
