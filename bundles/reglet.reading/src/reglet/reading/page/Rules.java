package reglet.reading.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import reglet.reading.page.SheetPage.Rule;

/** The level rules of a page: a table's are often drawn cell by cell. */
final class Rules {
    private static final double NEAR = 1;

    private Rules() {
    }

    /** The same rules, those that go on from one to the next as one. */
    static List<Rule> joined(List<Rule> level) {
        List<Rule> sorted = new ArrayList<>(level);
        sorted.sort(Comparator.comparingDouble((Rule rule) -> Math.round(rule.y1())).thenComparingDouble(Rule::x1));
        List<Rule> joined = new ArrayList<>();
        for (Rule rule : sorted) {
            Rule last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && Math.abs(last.y1() - rule.y1()) < NEAR && rule.x1() < last.x2() + NEAR) {
                joined.set(joined.size() - 1, new Rule(last.x1(), last.y1(), Math.max(last.x2(), rule.x2()), last.y2()));
            } else {
                joined.add(rule);
            }
        }
        return joined;
    }
}
