package reglet.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

import reglet.model.UnusableInput;

class WallEditsTest {

    @Test
    void whatTheWallMeetsGrowsByALineBehindTheOthers() throws UnusableInput {
        assertEquals("meets:\n  base-1: {as: base}  # paving\n  top-1: {as: top}\nlath: {accept: [rib]}\n",
            WallEdits.meet("meets:\n  base-1: {as: base}  # paving\nlath: {accept: [rib]}\n", "top-1", "top"));
        assertEquals("meets: {base-1: {as: base}, top-1: {as: top}}\n",
            WallEdits.meet("meets: {base-1: {as: base}}\n", "top-1", "top"));
        assertEquals("title: A\nmeets:\n  top-1: {as: top}\n", WallEdits.meet("title: A\n", "top-1", "top"));
        assertEquals("meets: {top-1: {as: top}}\ntitle: A\n", WallEdits.meet("meets: {}\ntitle: A\n", "top-1", "top"));
        assertEquals("meets:\n  base-1:\n    as: base\n  top-1: {as: top}\n",
            WallEdits.meet("meets:\n  base-1:\n    as: base\n", "top-1", "top"));
    }

    @Test
    void whatTheWallNoLongerMeetsGoesWithItsLineAndTheLastOneWithItsHeading() throws UnusableInput {
        assertEquals("meets:\n  base-1: {as: base}\ntitle: A\n",
            WallEdits.unmeet("meets:\n  base-1: {as: base}\n  top-1: {as: top}\ntitle: A\n", "top-1"));
        assertEquals("title: A\n", WallEdits.unmeet("meets:\n  top-1: {as: top}\ntitle: A\n", "top-1"));
        assertEquals("title: A\n", WallEdits.unmeet("title: A\n", "top-1"));
    }

    @Test
    void aChoiceIsTakenFromAnotherWallToTheLetter() throws UnusableInput {
        String from = "lath: {accept: [rib, woven], by: \"me\"} # why\nmat:\n  accept:\n    - thin\n  depth: 3/8 in\n";
        assertEquals("a: {accept: [x]}\nlath: {accept: [rib, woven], by: \"me\"}   # kept\nb: {accept: [y]}\n",
            WallEdits.same("a: {accept: [x]}\nlath: {accept: [metal], weight: 4 lb/yd2}   # kept\nb: {accept: [y]}\n", "lath", from));
        assertEquals("a: {accept: [x]}\nmat: {accept: [thin], depth: 3/8 in}\n", WallEdits.same("a: {accept: [x]}\n", "mat", from));
        assertEquals("a: {accept: [x]}\n", WallEdits.same("a: {accept: [x]}\nveneer:\n  accept: [z]\n", "veneer", from));
        assertEquals("lath: {accept: [rib, woven], by: \"me\"}\nb: {accept: [y]}\n",
            WallEdits.same("lath:\n  accept: [metal]\nb: {accept: [y]}\n", "lath", from));
    }

    @Test
    void aWallTypeIsListedBehindTheOneItComesFromInEitherStyle() throws UnusableInput {
        assertEquals("walls: [W1, W3, W2] # all\n", WallEdits.list("walls: [W1, W2] # all\n", "W3", "W1"));
        assertEquals("walls: [W1, W2, W3]\n", WallEdits.list("walls: [W1, W2]\n", "W3", ""));
        assertEquals("walls:\n  - W1\n  - W3\n  - W2\nnote: A\n", WallEdits.list("walls:\n  - W1\n  - W2\nnote: A\n", "W3", "W1"));
        assertEquals("walls: [W2]\n", WallEdits.unlist("walls: [W1, W2]\n", "W1"));
        assertEquals("walls: [W1]\n", WallEdits.unlist("walls: [W1, W2]\n", "W2"));
        assertEquals("walls:\n  - W2\n", WallEdits.unlist("walls:\n  - W1\n  - W2\n", "W1"));
    }

    @Test
    void anAcceptedFindingIsTakenBackAndTheOthersStayToTheLetter() throws UnusableInput {
        String both = "# remarks\n- rule: a\n  wall: W1\n  because: tested # here\n  by: me\n- {rule: b, because: seen, by: me}\n";
        assertEquals("# remarks\n- {rule: b, because: seen, by: me}\n", WallEdits.takeBack(both, "a", "W1"));
        assertEquals(both, WallEdits.takeBack(both, "a", "W2"));
        assertEquals("# remarks\n- rule: a\n  wall: W1\n  because: tested # here\n  by: me\n", WallEdits.takeBack(both, "b", ""));
        assertEquals("# remarks\n", WallEdits.takeBack(WallEdits.takeBack(both, "b", ""), "a", "W1"));
        assertEquals("", WallEdits.takeBack("", "a", ""));
    }
}
