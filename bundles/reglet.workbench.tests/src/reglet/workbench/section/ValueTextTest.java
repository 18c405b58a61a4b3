package reglet.workbench.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;

class ValueTextTest {
    private static final Map<String, String> PRINTS = Map.of("lath.kind", "expanded metal", "lath.weight", "at least 3.4 lb/yd²");
    private static final String SOURCE = "Lath: ${lath.kind}, ${lath.weight}.";
    private final ValueText text = ValueText.of(SOURCE, PRINTS::get);

    private static ValueText.Written typed(ValueText text, int start, int end, String words) {
        return text.write(start, end, ValueText.words(words));
    }

    @Test
    void valuesAreShownAsTheyPrintAndKeptByTheirNames() {
        assertEquals("Lath: expanded metal, at least 3.4 lb/yd².", text.text());
        assertEquals(SOURCE, text.source());
    }

    @Test
    void wordsAreWrittenBeforeBetweenAndBehindValues() {
        ValueText before = typed(text, 0, 4, "Metal lath").text();
        ValueText between = typed(before, before.text().indexOf(", at"), before.text().indexOf(", at") + 1, ", self-furring,").text();
        assertEquals("Metal lath: ${lath.kind}, self-furring, ${lath.weight}.", between.source());
        assertEquals("Lath: new ${lath.kind}, ${lath.weight}.", typed(text, 6, 6, "new ").text().source());
        assertEquals("Lath: ${lath.kind}s, ${lath.weight}.", typed(text, 20, 20, "s").text().source());
    }

    @Test
    void nothingIsWrittenInsideAValueAndTheValueIsNamed() {
        ValueText.Written refused = typed(text, 10, 10, "x");
        assertEquals(text, refused.text());
        assertEquals(Optional.of("lath.kind"), refused.refused().map(ValueText.Mark::name));
        assertEquals(Optional.of("lath.weight"), typed(text, 31, 34, "4.0").refused().map(ValueText.Mark::name));
        assertTrue(typed(text, 3, 10, "x").refused().isPresent());
    }

    @Test
    void aKeyThatTakesOutPartOfAValueTakesItOutWhole() {
        ValueText.Written gone = typed(text, 19, 20, "");
        assertEquals("Lath: , ${lath.weight}.", gone.text().source());
        assertEquals(6, gone.caret());
        assertEquals("Lath: .", typed(text, 10, 30, "").text().source());
        assertEquals("Lath: none, ${lath.weight}.", typed(text, 6, 20, "none").text().source());
    }

    @Test
    void aValueThatWasCutOutIsPutElsewhereAsAValue() {
        ValueText cut = text.part(6, 22);
        ValueText left = typed(text, 6, 22, "").text();
        assertEquals("Lath: ${lath.weight}.", left.source());
        ValueText moved = left.write(left.text().length() - 1, left.text().length() - 1, cut).text();
        assertEquals("Lath: ${lath.weight}${lath.kind}, .", moved.source());
    }

    @Test
    void aValueMayStandFirstAndTwoSideBySide() {
        ValueText two = ValueText.of("${lath.kind}${lath.weight}", PRINTS::get);
        assertEquals("${lath.kind} of ${lath.weight}", typed(two, 14, 14, " of ").text().source());
        assertEquals("A ${lath.kind}${lath.weight}", typed(two, 0, 0, "A ").text().source());
        assertEquals("${lath.weight}", typed(two, 0, 14, "").text().source());
    }

    @Test
    void signsThatMeanNothingLoseTheirBackslash() {
        assertEquals("Sand & lime [washed] \\*", ValueText.of("Sand \\& lime \\[washed\\] \\*", PRINTS::get).text());
    }
}
