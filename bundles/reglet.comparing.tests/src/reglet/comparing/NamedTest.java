package reglet.comparing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import reglet.model.Comparison.Result;
import reglet.model.Place;
import reglet.model.ProductData;
import reglet.model.Property;
import reglet.model.Requirement;
import reglet.model.SheetValue;
import reglet.model.Specifying;
import reglet.model.Specifying.How;
import reglet.model.Value;
import reglet.model.Word;
import reglet.model.WordSet;

/** What the way of specifying asks of the product submitted. */
class NamedTest {

    private static Optional<Verdict> of(Property property, Value value, Specifying specified, ProductData product) {
        return Named.of(new Requirement("W1", "lath", "metal", property, value, Place.of("")), specified, product);
    }

    private static Optional<Verdict> product(How how, boolean comparable, String offered, String maker) {
        return of(Specifying.PRODUCT, new Word("Mesh 340"), new Specifying(how, "Mesh 340", "Tallow Works", comparable), lath(offered,
            maker));
    }

    private static ProductData lath(String name, String maker, SheetValue... values) {
        return new ProductData("lath-a", "lath", name, maker, "", "", List.of(values), Place.of(""));
    }

    @Test
    void aProprietaryProductIsMetByItselfAlone() {
        assertEquals(Result.MEETS, product(How.PROPRIETARY, false, "mesh  340", "Tallow Works").orElseThrow().result());
        Verdict other = product(How.PROPRIETARY, false, "Mesh 250", "Tallow Works").orElseThrow();
        assertEquals(Result.FALLS_SHORT, other.result());
        assertTrue(other.note().contains("substitution"), other.note());
        assertEquals(Result.FALLS_SHORT, product(How.PROPRIETARY, false, "Mesh 340", "Another").orElseThrow().result());
    }

    @Test
    void aComparableProductIsJudgedByItsValuesAlone() {
        assertEquals(Optional.empty(), product(How.BASIS_OF_DESIGN, true, "Mesh 250", "Another"));
        assertEquals(Result.MEETS, product(How.BASIS_OF_DESIGN, true, "Mesh 340", "Tallow Works").orElseThrow().result());
        assertEquals(Result.FALLS_SHORT, product(How.BASIS_OF_DESIGN, false, "Mesh 250", "Another").orElseThrow().result());
    }

    @Test
    void conformityIsShownWhereTheSheetNamesEveryStandard() {
        WordSet standards = new WordSet(List.of("ASTM C847", "ASTM A653"));
        Specifying specified = new Specifying(How.REFERENCE_STANDARD, "", "", true);
        SheetValue weight = Sample.sheet("lath.weight", "3.4 lb/yd2", "ASTM C847");
        Verdict half = of(Specifying.STANDARDS, standards, specified, lath("A", "B", weight)).orElseThrow();
        assertEquals(Result.NOT_SHOWN, half.result());
        assertTrue(half.note().contains("ASTM A653") && !half.note().contains("C847"), half.note());
        assertEquals(Result.MEETS, of(Specifying.STANDARDS, standards, specified,
            lath("A", "B", weight, Sample.sheet("lath.corrosion", "galvanized", "ASTM A653"))).orElseThrow().result());
    }
}
