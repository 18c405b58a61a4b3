package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;

import reglet.model.Drawing.Shape;

/** Reads the group codes itself: the registry that the build draws on has no reader of DXF. */
class DrawingDxfTest {
    private static final String DXF = DrawingDxf.of(DrawingSample.base(), DrawingSample.FRAME);

    /** A group code and its value. */
    private record Pair(int code, String value) {
    }

    @Test
    void sectionsStandInTheirOrderAndTheFileEnds() {
        List<Pair> pairs = pairs(DXF);
        List<String> sections = new ArrayList<>();
        for (int i = 0; i + 1 < pairs.size(); i++) {
            if (pairs.get(i).equals(new Pair(0, "SECTION"))) {
                sections.add(pairs.get(i + 1).value());
            }
        }
        assertEquals(List.of("HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS"), sections);
        assertEquals(new Pair(0, "EOF"), pairs.get(pairs.size() - 1));
        assertTrue(pairs.contains(new Pair(1, "AC1015")));
        assertEquals("4", pairs.get(pairs.indexOf(new Pair(9, "$INSUNITS")) + 1).value(), "4 stands for millimetres");
    }

    @Test
    void entitiesUseLayersAndLineTypesThatTheTablesHold() {
        Set<String> layers = new TreeSet<>(names("LAYER"));
        Set<String> lineTypes = new HashSet<>(names("LTYPE"));
        for (List<Pair> entity : entities()) {
            assertTrue(layers.contains(value(entity, 8)), entity.toString());
            assertTrue(lineTypes.contains(value(entity, 6)), entity.toString());
        }
        assertTrue(layers.containsAll(List.of("A-ANNO-DIMS", "A-ANNO-NOTE", "A-ANNO-TEXT", "A-DETL-CONC-PATT", "A-DETL-CONC-OTLN",
            "A-DETL-STON-PATT", "A-DETL-WATR", "A-DETL-AIRF")), layers.toString());
        // Discipline, major group, and up to two minor groups of four letters.
        assertTrue(layers.stream().allMatch(layer -> layer.equals("0") || layer.matches("A-(ANNO|DETL)(-[A-Z]{4}){1,2}")),
            layers.toString());
    }

    @Test
    void handlesAreUniqueAndBelowTheNextFreeOne() {
        List<Pair> pairs = pairs(DXF);
        int seed = pairs.indexOf(new Pair(9, "$HANDSEED")) + 1;
        Set<String> handles = new HashSet<>();
        for (int i = seed + 1; i < pairs.size(); i++) {
            if (pairs.get(i).code() == 5 || pairs.get(i).code() == 105) {
                assertTrue(handles.add(pairs.get(i).value()), pairs.get(i).value());
                assertTrue(Long.parseLong(pairs.get(i).value(), 16) < Long.parseLong(pairs.get(seed).value(), 16));
            }
        }
        assertTrue(pairs.stream().filter(pair -> pair.code() == 330 && !pair.value().equals("0"))
            .allMatch(pair -> handles.contains(pair.value())), "every owner exists");
    }

    @Test
    void outlinesHaveTheirRealMillimetres() {
        List<Pair> foundation = entities().stream().filter(entity -> value(entity, 0).equals("LWPOLYLINE")
            && value(entity, 1000).equals("foundation") && value(entity, 8).equals("A-DETL-CONC-OTLN")).findFirst().orElseThrow();
        assertEquals(List.of(0.0, 0.0, 200.0, 200.0), numbers(foundation, 10));
        assertEquals(List.of(-170.0, 150.0, 150.0, -170.0), numbers(foundation, 20));
    }

    @Test
    void everyComponentIsCarriedByItsEntities() {
        Set<String> wanted = new TreeSet<>();
        DrawingSample.base().shapes().stream().map(Shape::component).filter(name -> !name.isEmpty()).forEach(wanted::add);
        Set<String> carried = new TreeSet<>();
        for (List<Pair> entity : entities()) {
            if (entity.contains(new Pair(1001, "REGLET"))) {
                carried.add(value(entity, 1000));
            }
        }
        assertEquals(wanted, carried);
        assertTrue(names("APPID").contains("REGLET"));
    }

    @Test
    void textIsPlainAsciiWithEscapesAndOnItsLayer() {
        assertTrue(DXF.chars().allMatch(character -> character < 128));
        List<String> texts = entities().stream().filter(entity -> value(entity, 0).equals("TEXT")).map(entity -> value(entity, 1)).toList();
        assertTrue(texts.stream().anyMatch(text -> text.contains("3.4 lb/yd\\U+00B2")), texts.toString());
        List<Pair> dimension = entities().stream().filter(entity -> value(entity, 1).equals("4 in min.")).findFirst().orElseThrow();
        assertEquals("A-ANNO-DIMS", value(dimension, 8));
        assertEquals(List.of(10.0), numbers(dimension, 40), "2 mm on paper at 1:5");
    }

    @Test
    void dimensionLinesMeasureTheRealDistance() {
        // The lath's clearance of 98 mm: its dimension line runs 1.2 mm of paper (6 mm) past both ends.
        assertTrue(entities().stream().filter(entity -> value(entity, 0).equals("LINE") && value(entity, 8).equals("A-ANNO-DIMS"))
            .anyMatch(line -> numbers(line, 10).equals(numbers(line, 11))
                && Math.abs(Math.abs(numbers(line, 21).get(0) - numbers(line, 20).get(0)) - (98 + 12)) < 0.01));
    }

    @Test
    void linesCarryTheirWidthsOnPaper() {
        Set<String> widths = new TreeSet<>();
        entities().forEach(entity -> widths.add(value(entity, 370)));
        // Widths in hundredths of a millimetre that the format knows, of the series of ISO 128-2 (from memory).
        assertEquals(Set.of("13", "18", "35", "50"), widths);
    }

    @Test
    void sameDrawingGivesTheSameFile() {
        assertEquals(DXF, DrawingDxf.of(DrawingSample.base(), DrawingSample.FRAME));
    }

    private static List<Pair> pairs(String dxf) {
        String[] lines = dxf.split("\r\n", -1);
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i + 1 < lines.length; i += 2) {
            pairs.add(new Pair(Integer.parseInt(lines[i]), lines[i + 1]));
        }
        return pairs;
    }

    private static List<List<Pair>> entities() {
        List<List<Pair>> entities = new ArrayList<>();
        List<Pair> pairs = pairs(DXF);
        int i = pairs.indexOf(new Pair(2, "ENTITIES")) + 1;
        for (; !pairs.get(i).value().equals("ENDSEC"); i++) {
            if (pairs.get(i).code() == 0) {
                entities.add(new ArrayList<>());
            }
            entities.get(entities.size() - 1).add(pairs.get(i));
        }
        assertTrue(entities.size() > 500);
        return entities;
    }

    /** Names of a table's records. */
    private static List<String> names(String table) {
        List<String> names = new ArrayList<>();
        List<Pair> pairs = pairs(DXF);
        for (int i = 0; i < pairs.size(); i++) {
            if (pairs.get(i).equals(new Pair(0, table))) {
                int name = i;
                while (pairs.get(name).code() != 2) {
                    name++;
                }
                names.add(pairs.get(name).value());
            }
        }
        return names;
    }

    private static String value(List<Pair> entity, int code) {
        return entity.stream().filter(pair -> pair.code() == code).map(Pair::value).findFirst().orElse("");
    }

    private static List<Double> numbers(List<Pair> entity, int code) {
        return entity.stream().filter(pair -> pair.code() == code).map(pair -> Double.valueOf(pair.value())).toList();
    }
}
