package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

class NoteColumnTest {
    @Test
    void notesWithRoomStayWhereTheyWereWished() {
        assertEquals(List.of(50.0, 90.0), NoteColumn.apart(List.of(50.0, 90.0), List.of(8.0, 8.0), 0, 100));
    }

    @Test
    void notesAtOnePlaceMoveApartEquallyFar() {
        assertEquals(List.of(55.0, 45.0), NoteColumn.apart(List.of(50.0, 50.0), List.of(10.0, 10.0), 0, 100));
    }

    @Test
    void notesNeverOverlapNorLeaveTheirColumnAndKeepTheirOrder() {
        Random random = new Random(7);
        for (int run = 0; run < 200; run++) {
            List<Double> wished = new ArrayList<>();
            List<Double> heights = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                wished.add(120 * random.nextDouble() - 10);
                heights.add(2 + 6 * random.nextDouble());
            }
            List<Double> tops = NoteColumn.apart(wished, heights, 0, 100);
            List<Integer> order = IntStream.range(0, 12).boxed().sorted(Comparator.comparing((Integer i) -> -wished.get(i))).toList();
            assertTrue(tops.get(order.get(0)) <= 100 + 1e-9);
            for (int i = 0; i < 12; i++) {
                double below = i == 11 ? 0 : tops.get(order.get(i + 1));
                assertTrue(tops.get(order.get(i)) - heights.get(order.get(i)) >= below - 1e-9, wished + " became " + tops);
            }
        }
    }
}
