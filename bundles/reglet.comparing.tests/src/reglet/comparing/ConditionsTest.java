package reglet.comparing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import reglet.model.Box;
import reglet.model.Compare;
import reglet.model.Evidence;
import reglet.model.Property;
import reglet.model.SheetReading.Condition;
import reglet.model.SheetReading.Report;
import reglet.model.SheetValue;

/** Conditions of an evaluation report against what the job requires. */
class ConditionsTest {
    private static final Property LAP = Sample.property("lap", Sample.value("1 in"), Compare.AT_LEAST, "", Evidence.NONE);
    private static final Property SPACING = Sample.property("spacing", Sample.value("7 in"), Compare.AT_MOST, "", Evidence.NONE);
    private static final Property EXPOSURE = Sample.property("exposure", Sample.value("30 d"), Compare.AT_LEAST, "", Evidence.NONE);

    private static String check(String property, Compare sense, String value) {
        Box box = new Box(72, 72, 100, 10);
        SheetValue limit = new SheetValue("lath." + property, Sample.value(value), Optional.of(sense), "", "", "words", 1,
            Optional.of(box), false);
        Report report = new Report("MER-1", "", "", List.of(), "", "", List.of(new Condition("5.1", "words", 1, box, List.of(limit))));
        return String.join("; ", Conditions.check(new Sample().component("lath", List.of(LAP, SPACING, EXPOSURE),
                Sample.option("a", "lap", "2 in", "spacing", "7 in", "exposure", "30 d"), Sample.option("b", "lap", "1 in"))
            .wall("W1", Map.of("lath", List.of("a", "b"))).assembly(), report).stream()
            .map(check -> check.requirement().map(requirement -> requirement.option()).orElse("none") + " " + check.result().text())
                .toList());
    }

    @Test
    void aConditionIsKeptWhereTheJobAsksForAsMuch() {
        assertEquals("a meets; b cannot compare", check("lap", Compare.AT_LEAST, "2 in"));
        assertEquals("a meets; none not shown", check("spacing", Compare.AT_MOST, "7 in"));
    }

    @Test
    void aJobThatAllowsMoreThanTheConditionLeavesItOpen() {
        assertEquals("a cannot compare; none not shown", check("spacing", Compare.AT_MOST, "6 in"));
        assertEquals("a cannot compare; none not shown", check("exposure", Compare.AT_MOST, "90 d"));
    }
}
