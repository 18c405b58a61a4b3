package reglet.reading.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.SheetReading.Condition;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Paragraphs;
import reglet.reading.sheet.Flow.Placed;

/** The conditions under which a report lets a product be used, each with what it asks. */
final class ReportConditions {
    private static final Pattern ITEM = Pattern.compile("^\\s*(?:(\\d+(?:\\.\\d+)+\\.?|\\d+[.)]|[a-z][.)]|\\([a-z0-9]+\\))"
        + "|[•·▪■●◦‣–—-])\\s+(.*)$");
    /** "5.1 …. 5.2 …" on one line. */
    private static final Pattern INNER = Pattern.compile("(?<=[.;])\\s+(?=(?:\\d+\\.\\d+|\\([a-h]\\))\\s+\\p{Lu})");
    /** The foot of a page is of no condition. */
    private static final Pattern FOOT = Pattern.compile("(?i).{0,80}\\bpage \\d+(?: of \\d+)?\\b.{0,80}");
    private static final Pattern NUMBERED = Pattern.compile("\\s*(\\d{1,2})(?:\\.0?)?\\s+\\p{Lu}[\\p{L} ,&-]{3,45}");
    private static final int LONGEST = 6;

    private final Asks asks;
    private final List<Condition> conditions = new ArrayList<>();
    private String number = "";
    private Cell cell;
    private Layout layout;

    private ReportConditions(Asks asks) {
        this.asks = asks;
    }

    /** @param asks reads limits out of conditions */
    static List<Condition> in(List<Placed> lines, Asks asks) {
        ReportConditions conditions = new ReportConditions(asks);
        conditions.read(lines);
        return conditions.conditions;
    }

    private void read(List<Placed> lines) {
        boolean within = false;
        int section = 0;
        for (Placed line : lines) {
            if (Paragraphs.isConditions(line.text())) {
                within = true;
                section = section(line.text());
                continue;
            }
            if (!within || FOOT.matcher(line.text()).matches()) {
                continue;
            }
            if (Paragraphs.isHeading(line.text()) || isNext(line.text(), section)) {
                within = false;
                continue;
            }
            Matcher item = ITEM.matcher(line.text());
            if (item.matches() || cell == null || layout != line.layout()) {
                add();
                number = number(item);
                cell = line.whole();
                layout = line.layout();
            } else {
                cell = cell.with(line.whole());
            }
        }
        add();
    }

    private static int section(String heading) {
        Matcher numbered = NUMBERED.matcher(heading.replaceAll("\\s*:?\\s*$", ""));
        return numbered.matches() ? Integer.parseInt(numbered.group(1)) : 0;
    }

    /** Whether a line heads the section after the conditions, and is no condition with the next number. */
    private boolean isNext(String line, int section) {
        return section > 0 && section(line) == section + 1 && line.strip().split("\\s+").length <= LONGEST
            && !number.equals(Integer.toString(section));
    }

    private static String number(Matcher item) {
        return item.matches() && item.group(1) != null ? item.group(1).replaceAll("^\\(|[.)]+$", "") : "";
    }

    private void add() {
        if (cell == null) {
            return;
        }
        Matcher inner = INNER.matcher(cell.text());
        int from = 0;
        while (inner.find()) {
            add(cell.part(from, inner.start()));
            from = inner.end();
            number = "";
        }
        add(from == 0 ? cell : cell.part(from, cell.text().length()));
    }

    private void add(Cell one) {
        Matcher item = ITEM.matcher(one.text());
        String own = number.isEmpty() ? number(item) : number;
        String text = item.matches() ? item.group(2) : one.text();
        conditions.add(new Condition(own, text.replaceAll("\\s+", " "), layout.page(), layout.shown(one), asks.in(text, layout.page(),
            layout.shown(one))));
    }
}
