package reglet.comparing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import reglet.model.Compare;
import reglet.model.Comparison.Row;
import reglet.model.Evidence;
import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.Unit;

/** However a unit is spelled, the comparison is the same. */
class UnitSpellingsTest {

    private static Row compare(String required, String shown) {
        Property property = Sample.property("x", Quantity.parse(required).orElseThrow(), Compare.AT_LEAST, "", Evidence.PRODUCT_DATA);
        return Sample.one(property, required, Sample.sheet("part.x", shown, ""));
    }

    @Test
    void unitsInAnySpellingGiveTheSameComparison() {
        Random random = new Random(3);
        for (Unit unit : Unit.values()) {
            List<String> spellings = new ArrayList<>(unit.spellings());
            for (String spelling : spellings) {
                double required = random.nextInt(4, 400) / 4.0;
                double shown = random.nextInt(4, 400) / 4.0;
                Row bySymbol = compare(Quantity.of(required, unit).text(), Quantity.of(shown, unit).text());
                Row bySpelling = compare(Quantity.of(required, unit).text(), Quantity.of(shown, unit).amount() + " " + spelling);
                assertEquals(bySymbol.result(), bySpelling.result(), spelling);
                assertEquals(bySymbol.shortBy(), bySpelling.shortBy(), spelling);
                assertEquals(bySymbol.note(), bySpelling.note(), spelling);
            }
        }
    }
}
