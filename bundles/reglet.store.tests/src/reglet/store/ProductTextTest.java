package reglet.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import reglet.model.Box;
import reglet.model.Compare;
import reglet.model.Place;
import reglet.model.ProductData;
import reglet.model.Quantity;
import reglet.model.SheetValue;
import reglet.model.UnusableInput;
import reglet.model.Value;
import reglet.model.WordSet;

/** Values confirmed from a sheet, as the text of a product file. */
class ProductTextTest {

    private static SheetValue value(String property, Value value, String text) {
        return new SheetValue(property, value, Optional.of(Compare.AT_LEAST), "ASTM C847", "18", text, 2, Optional.of(new Box(72, 310.5,
            40, 9)), true);
    }

    private static ProductData product(SheetValue... values) {
        return new ProductData("lath-a", "lath", "Lath \"A\"", "Marrow", "", "sheets/a.pdf", List.of(values), Place.of("test"));
    }

    private static final SheetValue WEIGHT = value("lath.weight", Quantity.parse("2.5 lb/yd2").orElseThrow(), "2.5 lb/yd²");

    @Test
    void aProductWithoutAFileGetsOne() throws UnusableInput {
        assertEquals("""
            component: lath
            name: "Lath \\"A\\""
            maker: Marrow
            sheet: sheets/a.pdf
            values:
              weight:
                value: 2.5 lb/yd²
                compare: at least
                method: ASTM C847
                edition: 18
                text: 2.5 lb/yd²
                page: 2
                box: [72, 310.5, 40, 9]
                confirmed: yes
            """, Edits.product("", product(WEIGHT)));
    }

    @Test
    void aSetIsWrittenAsAList() throws UnusableInput {
        assertTrue(Edits.product("", product(value("lath.use", new WordSet(List.of("M", "A, B")), "M")))
            .contains("value: [M, \"A, B\"]\n"));
    }

    @Test
    void aValueThatIsThereIsReplacedAndCommentsStay() throws UnusableInput {
        String before = "# mine\ncomponent: lath # kept\nname: A\nvalues:\n  # of page 1\n  weight:\n    value: 9 lb/yd2\n    confir"
            + "med: no\n  kind: {value: rib}\n# end\n";
        String after = Edits.product(before, product(WEIGHT));
        assertEquals("# mine\ncomponent: lath # kept\nname: A\nvalues:\n  # of page 1\n  weight:\n    value: 2.5 lb/yd²\n    compare"
            + ": at least\n"
            + "    method: ASTM C847\n    edition: 18\n    text: 2.5 lb/yd²\n    page: 2\n    box: [72, 310.5, 40, 9]\n    confirmed: yes\n"
            + "  kind: {value: rib}\n# end\n", after);
    }

    @Test
    void aValueThatIsNotThereIsAddedAsTheLast() throws UnusableInput {
        String after = Edits.product("component: lath\r\nname: A\r\nvalues:\r\n  kind: {value: rib}", product(WEIGHT));
        assertTrue(after.startsWith("component: lath\r\nname: A\r\nvalues:\r\n  kind: {value: rib}\r\n  weight:\r\n    value: 2.5 lb"
            + "/yd²\r\n"), after);
        assertTrue(Edits.product("component: lath\nname: A\n", product(WEIGHT)).endsWith("values:\n  weight:\n    value: 2.5 lb/yd²\n"
            + "    compare: at least\n    method: ASTM C847\n    edition: 18\n    text: 2.5 lb/yd²\n    page: 2\n    box: [72, 310.5"
                + ", 40, 9]\n"
            + "    confirmed: yes\n"));
    }

    @Test
    void valuesOnOneLineAreRefusedAndNotTouched() {
        assertThrows(UnusableInput.class, () -> Edits.product("component: lath\nname: A\nvalues: {kind: {value: rib}}\n", product(WEIGHT)));
    }
}
