package reglet.comparing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import reglet.model.Compare;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.Evidence;
import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.Unit;

/** What holds of every amount in every unit of the table, whichever unit the sheet states it in. */
class AmountPropertiesTest {
    private static Row compare(Compare sense, Quantity required, String shown) {
        Property property = Sample.property("x", required, sense, "", Evidence.PRODUCT_DATA);
        return Sample.one(property, required.text(), Sample.sheet("part.x", shown, ""));
    }

    /** Every unit against every other of its dimension, in both senses: a better value never loses what a worse one had. */
    @Test
    void whatIsBetterNeverFallsShortWhereSomethingWorseMeets() {
        Random random = new Random(11);
        int pairs = 0;
        for (Unit asked : Unit.values()) {
            for (Unit stated : Unit.values()) {
                if (asked.dimension() != stated.dimension()) {
                    continue;
                }
                pairs++;
                Quantity required = Quantity.of(random.nextInt(40, 400) / 4.0, asked);
                double at = stated.fromSi(required.si());
                for (Compare sense : List.of(Compare.AT_LEAST, Compare.AT_MOST)) {
                    List<Result> rising = new ArrayList<>();
                    for (int step = -8; step <= 8; step++) {
                        double amount = at + Math.abs(at) * step * step * step / 512.0;
                        rising.add(compare(sense, required, Quantity.of(amount, stated).text()).result());
                    }
                    String told = sense + " " + required.text() + " in " + stated.symbol() + ": " + rising;
                    List<Result> better = new ArrayList<>(rising);
                    if (sense == Compare.AT_MOST) {
                        Collections.reverse(better);
                    }
                    assertEquals(Result.FALLS_SHORT, better.get(0), told);
                    assertEquals(Result.MEETS, better.get(better.size() - 1), told);
                    assertTrue(better.lastIndexOf(Result.FALLS_SHORT) < better.indexOf(Result.MEETS), told);
                }
            }
        }
        assertTrue(pairs > Unit.values().length, "no unit was held against another one");
    }

    /** Every spelling of a unit, on the side of the requirement as well, in each sense. */
    @Test
    void aRequirementInAnySpellingOfItsUnitIsTheSameRequirement() {
        Random random = new Random(5);
        for (Unit unit : Unit.values()) {
            for (String spelling : unit.spellings()) {
                for (Compare sense : List.of(Compare.AT_LEAST, Compare.AT_MOST, Compare.EXACTLY)) {
                    Quantity required = Quantity.of(random.nextInt(4, 400) / 4.0, unit);
                    Quantity spelled = Quantity.parse(required.amount() + " " + spelling).orElseThrow();
                    for (double share : new double[] {0.5, 1, 1.5}) {
                        String shown = Quantity.of(unit.fromSi(required.si()) * share, unit).text();
                        assertEquals(compare(sense, required, shown).result(), compare(sense, spelled, shown).result(), spelling);
                    }
                }
            }
        }
    }
}
