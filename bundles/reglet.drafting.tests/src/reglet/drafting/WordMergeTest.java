package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

class WordMergeTest {
    private static final List<String> WORDS = List.of("lath", "${lath.weight}", "and", "mortar,", "clean", "1/2", "in.", "Water:");
    private static final int RUNS = 2000;

    @Test
    void changesThatDoNotTouchAreBothThere() {
        assertEquals(new WordMerge.Merged("Mixing water: Clean, and fit to drink.", 0), WordMerge.merge("Water: Clean, and fit to wash in.",
            "Mixing water: Clean, and fit to wash in.", "Water: Clean, and fit to drink."));
    }

    @Test
    void ownWordsStayWhereBothChangedTheSame() {
        assertEquals(new WordMerge.Merged("Lath: heavy.", 1), WordMerge.merge("Lath: plain.", "Lath: heavy.", "Lath: light."));
    }

    @Test
    void aSlotIsOneWord() {
        assertEquals(new WordMerge.Merged("Lath: ${lath.kind}.", 1),
            WordMerge.merge("Lath: ${lath.weight}.", "Lath: ${lath.kind}.", "Lath: ${lath.width}."));
    }

    @Test
    void whatOnlyOneSideChangedIsTakenAsItIs() {
        Random random = new Random(7);
        for (int run = 0; run < RUNS; run++) {
            String base = text(random);
            String changed = text(random);
            assertEquals(new WordMerge.Merged(changed, 0), WordMerge.merge(base, base, changed));
            assertEquals(new WordMerge.Merged(changed, 0), WordMerge.merge(base, changed, base));
        }
    }

    @Test
    void changesWithoutConflictMayComeInAnyOrder() {
        Random random = new Random(8);
        int clean = 0;
        for (int run = 0; run < RUNS; run++) {
            String base = text(random);
            String first = changed(base, random);
            String second = changed(base, random);
            WordMerge.Merged merged = WordMerge.merge(base, first, second);
            if (merged.conflicts() == 0) {
                clean++;
                assertEquals(merged, WordMerge.merge(base, second, first));
            }
        }
        assertTrue(clean > RUNS / 10, clean + " merges without conflict");
    }

    @Test
    void noWordThatAPersonPutInIsEverLost() {
        Random random = new Random(9);
        for (int run = 0; run < RUNS; run++) {
            String base = text(random);
            List<String> words = new ArrayList<>(List.of(base.split(" ")));
            words.add(random.nextInt(words.size() + 1), "own" + run);
            String merged = WordMerge.merge(base, String.join(" ", words), changed(base, random)).text();
            assertTrue(merged.contains("own" + run), merged);
        }
    }

    private static String text(Random random) {
        List<String> words = new ArrayList<>(Collections.nCopies(1 + random.nextInt(12), ""));
        words.replaceAll(word -> WORDS.get(random.nextInt(WORDS.size())));
        return String.join(" ", words);
    }

    private static String changed(String text, Random random) {
        List<String> words = new ArrayList<>(List.of(text.split(" ")));
        words.set(random.nextInt(words.size()), "new" + random.nextInt(100));
        return String.join(" ", words);
    }
}
