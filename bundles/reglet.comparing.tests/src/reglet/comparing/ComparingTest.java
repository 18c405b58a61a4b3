package reglet.comparing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import reglet.model.Compare;
import reglet.model.Comparison;
import reglet.model.Comparison.Row;
import reglet.model.Evidence;
import reglet.model.Property;
import reglet.model.RegisterEntry;
import reglet.model.RegisterItem;

/** Whole submittals: which rows there are, and which alternative a product is compared with. */
class ComparingTest {
    private static final Property KIND = Sample.property("kind", Sample.value("rib"), Compare.EXACTLY, "", Evidence.PRODUCT_DATA,
        "expanded metal", "woven wire", "rib");
    private static final Property WEIGHT = Sample.property("weight", Sample.value("2.5 lb/yd2"), Compare.AT_LEAST, "",
        Evidence.PRODUCT_DATA);
    private static final Property FIRE = Sample.property("fire", Sample.value("1 h"), Compare.AT_LEAST, "", Evidence.TEST_REPORT);
    private static final Property LAP = Sample.property("lap", Sample.value("1 in"), Compare.AT_LEAST, "", Evidence.NONE);
    private static final Property CHECKED = Sample.property("checked", Sample.value("1 in"), Compare.AT_LEAST, "", Evidence.FIELD_CHECK);
    private static final Property INSECTS = Sample.property("insects", Sample.value("no"), Compare.EXACTLY, "",
        Evidence.PRODUCT_DATA, "flag");

    private static Sample sample() {
        return new Sample()
            .component("lath", List.of(KIND, WEIGHT, FIRE, LAP, CHECKED, INSECTS),
                Sample.option("light", "kind", "expanded metal", "weight", "2.5 lb/yd2", "fire", "1 h", "lap", "1 in", "checked", "1 in",
                    "insects", "no"),
                Sample.option("heavy", "kind", "expanded metal", "weight", "3.4 lb/yd2"),
                Sample.option("woven", "kind", "woven wire"),
                Sample.option("any", "lap", "1 in"))
            .component("sealant", List.of(WEIGHT), Sample.option("a", "weight", "1 lb/yd2"));
    }

    private static String line(Row row) {
        return row.product() + " " + row.requirement().wall() + " " + row.requirement().path() + " " + row.requirement().option() + ": "
            + row.result().text() + " " + row.note();
    }

    private static List<String> lines(Comparison comparison) {
        return comparison.rows().stream().map(row -> line(row).strip()).toList();
    }

    @Test
    void eachWallHasARowForWhateverASheetHasToShow() {
        Comparison comparison = sample().wall("W1", Map.of("lath", List.of("light"))).wall("W2", Map.of("lath", List.of("heavy")))
            .wall("W3", Map.of("sealant", List.of("a")))
            .product("p", "lath", Sample.sheet("lath.kind", "expanded metal", ""), Sample.sheet("lath.weight", "3 lb/yd2", ""))
            .compare(List.of(), "p");
        assertEquals(List.of(
            "p W1 lath.kind light: meets", "p W1 lath.weight light: meets",
            "p W1 lath.fire light: not shown The sheet does not show it; evidence asked for: test report.",
            "p W2 lath.kind heavy: meets", "p W2 lath.weight heavy: falls short"), lines(comparison));
        assertEquals("04-73-00-01", comparison.submittal());
        assertEquals("2.3.kind", comparison.rows().get(0).paragraph());
        assertEquals("3 lb/yd2", comparison.rows().get(1).submitted().get().text());
    }

    @Test
    void whatNoSheetIsAskedForIsComparedWhenItStatesItAllTheSame() {
        Comparison comparison = sample().wall("W1", Map.of("lath", List.of("light")))
            .product("p", "lath", Sample.sheet("lath.lap", "1/2 in", ""), Sample.sheet("lath.insects", "yes", "")).compare(List.of(), "p");
        assertTrue(lines(comparison).contains("p W1 lath.lap light: falls short"), lines(comparison).toString());
        assertTrue(lines(comparison).contains("p W1 lath.insects light: meets It is not required, so either answer will do."));
        assertTrue(lines(comparison).stream().noneMatch(line -> line.contains("lath.checked")));
    }

    @Test
    void aProductIsComparedWithTheAlternativeThatItMeetsWhole() {
        Comparison comparison = sample().wall("W1", Map.of("lath", List.of("any", "heavy", "woven")))
            .product("p", "lath", Sample.sheet("lath.kind", "woven wire", "")).compare(List.of(), "p");
        assertEquals(List.of("p W1 lath.kind woven: meets Compared with the accepted option \"option woven\"."), lines(comparison));
    }

    @Test
    void aProductThatMeetsNoAlternativeIsComparedWithTheNearest() {
        Comparison comparison = sample().wall("W1", Map.of("lath", List.of("woven", "heavy")))
            .product("p", "lath", Sample.sheet("lath.kind", "expanded metal", ""), Sample.sheet("lath.weight", "3 lb/yd2", ""))
            .compare(List.of(), "p");
        assertEquals(List.of("p W1 lath.kind heavy: meets Compared with the accepted option \"option heavy\".",
            "p W1 lath.weight heavy: falls short Compared with the accepted option \"option heavy\"."), lines(comparison));
    }

    @Test
    void anAlternativeIsNotMetByHalvesOfTwo() {
        Comparison comparison = sample().wall("W1", Map.of("lath", List.of("heavy", "woven")))
            .product("p", "lath", Sample.sheet("lath.kind", "rib", ""), Sample.sheet("lath.weight", "9 lb/yd2", ""))
            .compare(List.of(), "p");
        assertTrue(comparison.rows().stream().anyMatch(row -> row.result() == Comparison.Result.FALLS_SHORT));
    }

    @Test
    void anItemWithoutAProductIsNotShown() {
        Comparison comparison = sample().wall("W1", Map.of("lath", List.of("light"), "sealant", List.of("a")))
            .product("p", "sealant", Sample.sheet("sealant.weight", "1 lb/yd2", ""))
            .compare(List.of("lath.product-data", "sealant.product-data", "lath.sample", "mock-up"), "p");
        assertEquals(List.of("p W1 sealant.weight a: meets", "W1 lath.kind light: not shown No product was submitted for it.",
            "W1 lath.weight light: not shown No product was submitted for it."), lines(comparison));
    }

    @Test
    void anItemAsksForItsOwnEvidenceAloneAndMayHaveANameOfItsOwn() {
        Sample sample = sample().wall("W1", Map.of("lath", List.of("light")));
        assertEquals(List.of("W1 lath.fire light: not shown No product was submitted for it."),
            lines(sample.compare(List.of("lath.test-report"))));
        sample.entries.add(new RegisterEntry("burning", Sample.SECTION, "lath", RegisterItem.Kind.INFORMATIONAL,
            RegisterItem.Sort.NONE, "test report", "", "", Sample.AT));
        assertEquals(List.of("W1 lath.fire light: not shown No product was submitted for it."), lines(sample.compare(List.of("burning"))));
    }

    @Test
    void theOrderOfProductsAndAlternativesChangesNoRow() {
        Sample sample = sample()
            .product("p", "lath", Sample.sheet("lath.kind", "woven wire", ""))
            .product("q", "lath", Sample.sheet("lath.kind", "expanded metal", ""), Sample.sheet("lath.weight", "9 lb/yd2", ""))
            .product("r", "sealant", Sample.sheet("sealant.weight", "2 lb/yd2", ""));
        sample.wall("W1", Map.of("lath", List.of("heavy", "woven"), "sealant", List.of("a")));
        Set<String> once = lines(sample.compare(List.of(), "p", "q", "r")).stream().collect(Collectors.toSet());
        sample.walls.clear();
        sample.wall("W1", Map.of("lath", List.of("woven", "heavy"), "sealant", List.of("a")));
        List<String> turned = lines(sample.compare(List.of(), "r", "q", "p", "q"));
        assertEquals(once, Set.copyOf(turned));
        assertEquals(once.size(), turned.size(), "a product named twice is compared once");
    }
}
