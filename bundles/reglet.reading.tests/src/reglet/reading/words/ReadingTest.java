package reglet.reading.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Component;
import reglet.model.Dimension;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.Unit;
import reglet.reading.sheet.SheetFixtures;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Reading.Read;

/** Single texts of sheets: values, units, labels, standards. */
class ReadingTest {

    private static Optional<Read> read(String path, String text, String unit) throws Exception {
        Pack pack = SheetFixtures.pack();
        Component component = pack.component(path.substring(0, path.indexOf('.'))).orElseThrow();
        return new Reading(new Vocabulary(pack), component).read(pack.property(path).orElseThrow(), text, unit);
    }

    private static String told(String path, String text, String unit) throws Exception {
        return read(path, text, unit).map(read -> (read.compare().map(sense -> sense.text() + " ").orElse("") + read.value().text()
            + (read.quality() < 0.75 ? " doubtful" : ""))).orElse("nothing");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', value = {
        "mat.thickness | 0.40 in. (10 mm) | 0.40 in",
        "mat.thickness | 10mm | 10 mm",
        "mat.thickness | (10 mm) | nothing",
        "mat.thickness | 6.4 mm [0.25 in] | 6.4 mm",
        "mat.thickness | 0,4 in | 0.4 in",
        "mat.thickness | ½\" | 1/2 in",
        "mat.thickness | 1½ in | 1-1/2 in",
        "mat.thickness | 1 1/2\" | 1 1/2 in",
        "mat.thickness | 10 mm ± 1 mm | 10 mm",
        "mat.thickness | 10 | nothing",
        "mat.thickness | 10 lb | nothing",
        "mat.thickness | 10 mm and 20 mm | nothing",
        "mat.thickness | 10 mm (1.0 in) | 10 mm doubtful",
        "mat.thickness | 8 to 10 mm | 8 to 10 mm",
        "mat.thickness | 8 – 10 mm | 8 to 10 mm",
        "mat.thickness | 26 ga. (0.0217 in) | 0.0217 in",
        "mat.thickness | 26 ga. | nothing",
        "mat.thickness | N/A | nothing",
        "mat.thickness | see table | nothing",
        "mat.drainage_efficiency | ≥ 90% | at least 90%",
        "mat.drainage_efficiency | 90 % min. | at least 90%",
        "mat.drainage_efficiency | minimum 90 percent | at least 90%",
        "mat.drainage_efficiency | not less than 90% | at least 90%",
        "mat.drainage_efficiency | 93,5 % | 93.5%",
        "mat.drainage_efficiency | 90+ % | at least 90%",
        "mat.drainage_efficiency | exceeds 94% | at least 94%",
        "mat.drainage_efficiency | > 94% | at least 94%",
        "mat.drainage_efficiency | in excess of 94 % | at least 94%",
        "mat.drainage_efficiency | 94% or better | at least 94%",
        "mat.drainage_efficiency | 94 percent (1) | 94%",
        "mat.thickness | 10 mm (0.4 in.), ± 1 | 10 mm",
        "mat.thickness | no thicker than 1/2 in. | at most 1/2 in",
        "mat.thickness | not less than 3/8\" (10 mm) | at least 3/8 in",
        "mat.flame_spread | 25 or less; smoke developed 65 | at most 25",
        "flexible_flashing.apply_low | 25°F (−4°C) and rising | at least 25 °F",
        "flexible_flashing.apply_low | not lower than 40°F (5°C) | at least 40 °F",
        "sealant.placing | −20°F (−29°C) to 122°F (50°C) | -20 to 122 °F",
        "unit_joint.width | 1/4 in. up to 3/4 in. | 1/4 to 3/4 in",
        "inner_ply.permeance | 5+ perms | at least 5 perm",
        "inner_ply.permeance | 18 US perms | 18 perm",
        "inner_ply.permeance | 16 perms (920 ng/Pa•s•m²) | 16 perm",
        "inner_ply.permeance | 920 ng/Pa.s.m2 | 920 ng/(Pa·s·m²)",
        "inner_ply.air_leakage | 0.004 cfm/sq.ft. | 0.004 cfm/ft²",
        "inner_ply.air_leakage | < 0.0004 cfm/ft² @ 1.57 psf | at most 0.0004 cfm/ft²",
        "inner_ply.air_leakage | 0.02 L/s/m² | 0.02 L/(s·m²)",
        "inner_ply.air_leakage | 0.0003 CFM/SF | 0.0003 cfm/ft²",
        "lath.weight | 3.4 lb per sq yd | 3.4 lb/yd²",
        "lath.weight | 3.4 lbs./yd.² | 3.4 lb/yd²",
        "lath.weight | 1.84 kg/m² | 1.84 kg/m²",
        "lath.weight | 3.4# / sq. yd. | 3.4 lb/yd²",
        "veneer.weight | 14 lbs/SF | 14 psf",
        "veneer.weight | 14 pounds per square foot | 14 psf",
        "veneer.face | 480 sq. in. | 480 in²",
        "veneer.face | 3.3 sq ft | 3.3 ft²",
        "sealant.peel | 21 pli | 21 lbf/in",
        "sealant.peel | 5.5 lbs/in. width | 5.5 lbf/in",
        "sealant.peel | 25 lb./in. | 25 lbf/in",
        "sealant.peel | 3.5 N/mm | 3.5 N/mm",
        "veneer.strength | 2,480 p.s.i. | 2480 psi",
        "mat.drainage_efficiency | 90% to 95% | 90 to 95%",
        "mat.compressive | 1,200 lb/ft² | 1200 psf",
        "mat.compressive | 400 lbs. / sq. ft. at 10% strain | 400 psf",
        "mat.compressive | 24 kPa (501 psf) | 24 kPa",
        "mat.flame_spread | 15 | 15",
        "mat.flame_spread | < 25 | at most 25",
        "mat.flame_spread | Class A | nothing",
        "mat.exposure | up to 60 days | 60 d",
        "mat.exposure | 4 months | 4 months",
        "lath.weight | 2.5 lbs per sq. yd. | 2.5 lb/yd²",
        "lath.weight | 2.5 lb/sy | 2.5 lb/yd²",
        "lath.weight | 2.5 or 3.4 lb/yd² | nothing",
        "lath.weight | 20 lb per sheet | nothing",
        "flexible_flashing.apply_low | 25 F (-4 C) | 25 °F",
        "flexible_flashing.apply_low | 25 ºF | 25 °F",
        "flexible_flashing.apply_low | –4 °C | -4 °C",
        "sealant.placing | -20°F to 120°F | -20 to 120 °F",
        "sealant.placing | 40 – 110 °F | 40 to 110 °F",
        "sealant.class | ±50% | 50",
        "sealant.class | +100/-50 % | 100/50",
        "sealant.class | Class 25 | 25",
        "sealant.class | 40 | nothing",
        "sealant.use | NT, M, G, A and O | 'NT, M, G, A, O'",
        "sealant.use | NT, Q | nothing",
        "sealant.stain_tested | No stain after 14 days | yes",
        "sealant.stain_tested | none | yes",
        "inner_ply.rating | Type II | 60-minute",
        "inner_ply.rating | Type I | 10-minute",
        "inner_ply.rating | Type I or II | nothing",
        "inner_ply.permeance | 690 ng/(Pa·s·m²) (12 perms) | 690 ng/(Pa·s·m²)",
        "inner_ply.permeance | 10 g/m²·24 h | nothing",
        "lath_fastener.coating | not hot-dip galvanized | nothing",
        "lath_fastener.coating | hot dipped galvanized | hot-dip galvanized",
        "flexible_flashing.primer | No primer on wood | nothing",
        "flexible_flashing.primer | Yes, on concrete | yes",
    })
    void aTextIsReadWholeOrNotAtAll(String path, String text, String expected) throws Exception {
        assertEquals(expected, told(path, text.replace('º', '°').replace('–', text.startsWith("–") ? '−' : '–'), ""));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"mat.thickness | 10 | mm | 10 mm", "mat.thickness | 3/8 | in. | 3/8 in",
        "mat.compressive | 900 | psf | 900 psf",
        "mat.thickness | 10 in | mm | 10 in", "mat.exposure | 60 | days | 60 d", "mat.flame_spread | 15 | % | 15"})
    void aUnitOfTheHeadingCountsWhereTheValueHasNone(String path, String text, String unit, String expected) throws Exception {
        assertEquals(expected, told(path, text, unit));
    }

    /** Every spelling of every unit, dressed up as makers do, gives the number that the unit's own symbol gives. */
    @Test
    void unitsInAnySpellingGiveTheSameValue() {
        Random random = new Random(11);
        for (Unit unit : Unit.values()) {
            if (unit == Unit.ONE || unit.dimension() == Dimension.COUNT) {
                continue;
            }
            List<String> spellings = new ArrayList<>(unit.spellings());
            spellings.add(unit.symbol());
            for (String spelling : spellings) {
                Unit read = UnitSpelling.of(spelling, unit.dimension()).orElseThrow(() -> new AssertionError(spelling));
                double number = random.nextInt(1, 500) / 4.0;
                assertEquals(unit.toSi(number), read.toSi(number), 1e-12 * Math.abs(unit.toSi(number)), spelling);
            }
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"lb/yd² | lb. / sq. yd.; lbs/sq yd; LB PER SQUARE YARD; pounds per square yard; lb/yd^2; "
        + "lbs. per sq. yd.; lb/s.y.; psy",
        "lb/ft² | lb/sq.ft.; lbs / sq ft; pounds per square foot; lb/sf; lb/s.f.", "perm | perms; US perms; U.S. perms; Perms",
        "ng/(Pa·s·m²) | ng/Pa·s·m²; ng/(Pa.s.m2); ng/Pa s m²; ng / (Pa · s · m²)", "g/m² | g/m2; gsm; grams per square m; g / m²",
        "mil | mils; Mils", "mm | millimeters; millimetres; MM", "in | in.; inch; Inches", "% | percent; per cent",
        "cfm/ft² | cfm/sq. ft.; cfm/ft2; CFM/SF", "L/(s·m²) | L/s·m²; l/(s·m2); L/s/m2", "d | days; day",
            "lbf/in | pli; lb/in; lbs/in.; lb per inch",
        "kg/m² | kg/m2; kg / sq m", "psi | PSI; lbf/in²"})
    void makersSpellingsAreUnderstood(String symbol, String spellings) {
        Unit unit = Unit.of(symbol).orElseThrow();
        for (String spelling : spellings.split("; ")) {
            assertEquals(Optional.of(unit), UnitSpelling.of(spelling, unit.dimension()), spelling);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"bags", "per roll", "sheets/bundle", "Shore A", "lb/roll", "g/m²·24 h", "ft x ft", "cycles", "h·ft²·°F/Btu"})
    void whatIsNoUnitIsNone(String written) {
        assertTrue(UnitSpelling.of(written, Dimension.COUNT).isEmpty(), written);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', value = {
        "mat | Nominal Thickness | thickness", "mat | Thickness (in.) | thickness", "mat | Mat thickness, in | thickness",
        "mat | Roll weight | ''", "mat | Compressive resistance at 10% strain | compressive",
            "mat | Drainage efficiency, ASTM E2273 | drainage_efficiency",
        "mat | Thickness of pallet cap | ''", "mat | Surface burning: flame spread index | flame_spread",
            "mat | Flame spread / smoke developed | flame_spread",
        "lath | Weight per bundle | ''", "lath | Shipping weight | ''", "lath | Weight, lb/sq. yd. | weight",
            "veneer | Weight (saturated) | weight",
        "veneer | Compressive strength, average of five units | strength", "veneer | Tensile strength | ''",
            "veneer | Weight per pallet | ''",
        "inner_ply | Water vapour permeance | permeance", "inner_ply | WATER VAPOR PERMEANCE (ASTM E96 Procedure A) | permeance",
        "metal_flashing | Tensile strength | ''",
    })
    void aLabelWithAWordTooManyNamesNothing(String component, String label, String property) throws Exception {
        Pack pack = SheetFixtures.pack();
        Labels labels = new Labels(new Vocabulary(pack), pack.component(component).orElseThrow(), new Citations(pack));
        assertEquals(property, labels.read(label).map(found -> found.properties().get(0)).map(Property::name).orElse(""));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {"ASTM C847 | ASTM C847", "ASTMC165 | ASTM C165", "ATSM E84 | ASTM E84", "ASTM E-96 | ASTM E96",
        "ASTM E 96/E 96M-16 | ASTM E96, 16",
        "ASTM E84-18b | ASTM E84, 18b", "ASTM E2273-03(2011) | ASTM E2273, 03 (reapproved 2011)", "ASTM E84 (2018) | ASTM E84, 2018",
        "E2273 | ASTM E2273", "AAMA 711-20 | AAMA 711, 20", "ANSI A118.15 | ANSI A118.15", "G60 | ''",
            "ASTM E96, Proc. A | ASTM E96 Procedure A",
        "ASTM E96 (desiccant method) | ASTM E96 Procedure A", "ASTM A653/A653M | ASTM A653", "Model C 90 | ''", "AC38 | AC38"})
    void standardsAreFoundHoweverTheyAreWritten(String text, String expected) throws Exception {
        List<Citation> found = new Citations(SheetFixtures.pack()).in(text);
        assertEquals(expected, found.isEmpty() ? "" : found.get(0).name() + (found.get(0).edition().isEmpty() ? "" : ", " + found.get(0)
            .edition()));
    }

    @Test
    void moreOfAValueIsNeverReadAsLess() throws Exception {
        Random random = new Random(5);
        for (int i = 0; i < 300; i++) {
            double less = random.nextInt(1, 4000) / 8.0;
            double more = less + random.nextInt(1, 800) / 8.0;
            double one = ((reglet.model.Quantity) read("mat.compressive", String.format(Locale.ROOT, "%,.3f psf", less), "").orElseThrow()
                .value()).si();
            double other = ((reglet.model.Quantity) read("mat.compressive", String.format(Locale.ROOT, "%,.3f psf", more), "")
                .orElseThrow().value()).si();
            assertTrue(one < other, less + " " + more);
        }
    }
}
