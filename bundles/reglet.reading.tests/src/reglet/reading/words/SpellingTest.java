package reglet.reading.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;

/** Slips of the pen in labels. */
class SpellingTest {
    @Test
    void aLabelThatIsNearlyAnotherWordOfTheTradeIsNoSlip() {
        assertEquals(1, Spelling.distance("strength", "strenght"));
        assertEquals(3, Spelling.distance("kitten", "sitting"), "the textbook example of an edit distance");
        assertEquals(Optional.empty(), Spelling.mended("weight of box", Set.of("height"), Set.of("weight", "height", "box")));
        assertEquals(Optional.of("compressive strength"), Spelling.mended("compresive strength", Set.of("compressive"),
            Set.of("strength")));
    }
}
