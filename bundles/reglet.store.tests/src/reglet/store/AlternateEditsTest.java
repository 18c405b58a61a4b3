package reglet.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.UnusableInput;

class AlternateEditsTest {
    private static final String JOB = "title: A\nalternates: # priced apart\n  - {number: 1, kind: unit price, title: sheathing}\n"
        + "  - {number: 1, title: stainless}  # asked by the owner\nwalls: [W1]\n";

    @Test
    void anAlternateIsListedBehindTheOthersInWhateverStyleTheyStand() throws UnusableInput {
        assertEquals("title: A\nalternates:\n  - {number: 1, kind: alternate, title: thicker mat}\n",
            AlternateEdits.declare("title: A\n", 1, "thicker mat", ""));
        assertEquals(JOB.replace("walls:", "  - {number: 2, kind: alternate, title: thicker mat, description: \"a mat: deeper\"}\nwalls:"),
            AlternateEdits.declare(JOB, 2, "thicker mat", "a mat: deeper"));
        assertEquals("alternates: [{number: 1, title: a}, {number: 2, kind: alternate, title: b}]\n",
            AlternateEdits.declare("alternates: [{number: 1, title: a}]\n", 2, "b", ""));
        assertEquals("alternates: [{number: 2, kind: alternate, title: b}]\n", AlternateEdits.declare("alternates: []\n", 2, "b", ""));
        assertEquals("alternates: [{number: 2, kind: alternate, title: b}]\nwalls: []\n",
            AlternateEdits.declare("alternates:\nwalls: []\n", 2, "b", ""));
        assertEquals("alternates:\n  - number: 1\n    title: a\n  - {number: 2, kind: alternate, title: b}\n",
            AlternateEdits.declare("alternates:\n  - number: 1\n    title: a\n", 2, "b", ""));
    }

    @Test
    void theOwnersWordIsWrittenBesideTheAlternateAndNotBesideAPriceOfTheSameNumber() throws UnusableInput {
        String taken = AlternateEdits.tell(JOB, 1, "taken", "yes");
        assertEquals(JOB.replace("title: stainless}", "title: stainless, taken: yes}"), taken);
        assertEquals(JOB.replace("title: stainless}", "title: stainless, taken: no}"), AlternateEdits.tell(taken, 1, "taken", "no"));
        assertEquals(JOB, AlternateEdits.tell(taken, 1, "taken", ""), "offered again");
        assertThrows(UnusableInput.class, () -> AlternateEdits.tell(JOB, 2, "taken", "yes"));
    }

    @Test
    void anItemWrittenOverSeveralLinesKeepsItsDash() throws UnusableInput {
        String block = "alternates:\n  - number: 1\n    title: a\n  - number: 2\n    title: b\n";
        String taken = AlternateEdits.tell(block, 1, "taken", "yes");
        assertEquals("alternates:\n  - taken: yes\n    number: 1\n    title: a\n  - number: 2\n    title: b\n", taken);
        assertEquals(block, AlternateEdits.tell(taken, 1, "taken", ""));
    }

    @Test
    void anAlternateIsTakenOutAndTheListGoesWithTheLast() throws UnusableInput {
        String rest = AlternateEdits.remove(JOB, 1);
        assertEquals("title: A\nalternates: # priced apart\n  - {number: 1, kind: unit price, title: sheathing}\nwalls: [W1]\n", rest);
        assertEquals("title: A\nwalls: [W1]\n",
            AlternateEdits.remove("title: A\nalternates:\n  - {number: 3, title: b}\nwalls: [W1]\n", 3));
    }

    @Test
    void aVersionTakesTheValuesOfTheBaseAlongAndNotItsProductNorItsRemarks() throws UnusableInput {
        String wall = "mat: {accept: [thin]}\nlath: {accept: [rib], width: 1/2 in, by: me, because: usual, specify: proprietary, "
            + "product: Rib 1, maker: M} # lath\n";
        assertEquals(wall.replace("maker: M}", "maker: M, alternates: {2: {accept: [woven], width: 1/2 in, "
            + "because: \"the owner, by phone\"}}}"),
            AlternateEdits.offer(wall, "lath", 2, List.of("woven"), "the owner, by phone"));
        assertEquals(wall.replace("maker: M}", "maker: M, alternates: {2: {accept: [rib], width: 1/2 in, specify: proprietary, "
            + "product: Rib 1, maker: M}}}"), AlternateEdits.offer(wall, "lath", 2, List.of(), ""), "the same option keeps its product");
        assertThrows(UnusableInput.class, () -> AlternateEdits.offer(wall, "veneer", 2, List.of("stone"), ""));
    }

    @Test
    void aVersionStandsBesideOthersAndGoesWithoutThem() throws UnusableInput {
        String one = "lath: {accept: [rib], alternates: {1: {accept: [woven]}}}\n";
        String two = "lath: {accept: [rib], alternates: {1: {accept: [woven]}, 2: {accept: [thin]}}}\n";
        assertEquals(two, AlternateEdits.offer(one, "lath", 2, List.of("thin"), ""));
        assertEquals(one, AlternateEdits.withdraw(two, "lath", 2));
        assertEquals("lath: {accept: [rib]}\n", AlternateEdits.withdraw(one, "lath", 1));
        assertEquals(one, AlternateEdits.withdraw(one, "lath", 7));
        String block = "lath:\n  accept: [rib]\n  alternates:\n    1:\n      accept: [woven]\n    2: {accept: [thin]}\n"
            + "mat: {accept: [x]}\n";
        assertEquals("lath:\n  accept: [rib]\n  alternates:\n    2: {accept: [thin]}\nmat: {accept: [x]}\n",
            AlternateEdits.withdraw(block, "lath", 1));
        assertEquals("lath:\n  accept: [rib]\nmat: {accept: [x]}\n",
            AlternateEdits.withdraw(AlternateEdits.withdraw(block, "lath", 1), "lath", 2));
    }
}
