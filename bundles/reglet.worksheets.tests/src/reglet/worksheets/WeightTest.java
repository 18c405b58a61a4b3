package reglet.worksheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

class WeightTest {
    private static final String[] BARE = {"lath_weight=0 lb/yd2", "barrier_weight=0 psf", "sheathing=0 in"};

    /** Handbook density of mortar 130 lb/ft³ (from memory): 5.4 psf each 1/2 in, 10.8 psf of scratch and bed, worked independently. */
    @Test
    void installedWeightIsTheUnitsAndTheirMortar() throws UnusableInput {
        assertEquals(22.8, dry("unit_weight=12 psf"), 0.05);
        assertEquals(25.8, dry("unit_weight=15 psf"), 0.05);
        assertEquals(15 + 5.4, dry("unit_weight=15 psf", "bed=0 in"), 0.05);
    }

    /** TMS 402-16, 12.3: 15 psf (from memory); TMS 402-22: 30 psf (from memory). The limit is the unit's, whatever the wall weighs. */
    @Test
    void theCodesLimitIsForTheUnitAloneAndFollowsTheEdition() throws UnusableInput {
        Worksheet fifteen = Run.of("weight", "unit_weight=15 psf", "edition=2021");
        assertEquals(1.0, fifteen.margin().getAsDouble(), 1e-9);
        assertFalse(fifteen.warnings().stream().anyMatch(warning -> warning.startsWith("The units weigh more")));
        assertTrue(Run.result(fifteen, "fasteners.dry", Unit.PSF) > 25.8);

        Worksheet old = Run.of("weight", "unit_weight=18 psf", "edition=2018");
        assertEquals(15.0 / 18, old.margin().getAsDouble(), 1e-9);
        assertTrue(old.warnings().get(0).startsWith("The units weigh more than the 15 psf"));

        Worksheet recent = Run.of("weight", "unit_weight=18 psf", "edition=2024");
        assertEquals(30.0 / 18, recent.margin().getAsDouble(), 1e-9);
        assertEquals(30, Run.result(recent, "unit.limit", Unit.PSF), 1e-9);
    }

    /** TMS 402-16, 12.3: 2-5/8 in (from memory). */
    @Test
    void unitsThickerThanTheOldLimitAreNoticed() throws UnusableInput {
        assertFalse(warns("unit_weight=10 psf", "unit_thickness=2-5/8 in"));
        assertTrue(warns("unit_weight=10 psf", "unit_thickness=2-3/4 in"));
        assertFalse(warns("unit_weight=10 psf", "unit_thickness=2-3/4 in", "edition=2024"));
    }

    /** The same distance found by cutting the wall into slices a hundredth of an inch thick. */
    @Test
    void theDistanceOfTheWeightIsTheCentroidOfTheSlices() throws UnusableInput {
        Worksheet sheet = Run.of("weight", "unit_weight=14 psf", "unit_thickness=2 in", "bed=1/2 in", "scratch=3/4 in", "sheathing=1/2 in",
            "sheathing_density=36 lb/ft3", "insulation=1 in", "insulation_density=1.8 lb/ft3", "lath_weight=0 lb/yd2",
            "barrier_weight=0 psf", "unit_absorption=0%", "mortar_absorption=0%");
        double weight = 0;
        double moment = 0;
        for (int slice = 0; slice < 475; slice++) {
            double x = (slice + 0.5) / 100;
            double density = x < 0.5 ? 36 : x < 1.5 ? 1.8 : x < 2.75 ? 130 : 14 * 6;
            weight += density / 1200;
            moment += density / 1200 * x;
        }
        assertEquals(weight, Run.result(sheet, "weight.dry", Unit.PSF), 1e-6);
        assertEquals(moment / weight, Run.result(sheet, "eccentricity.dry", Unit.IN), 1e-6);
        assertEquals(moment / weight, Run.result(sheet, "eccentricity.saturated", Unit.IN), 1e-6);
        assertEquals(4.75, Run.result(sheet, "thickness", Unit.IN), 1e-9);
        assertEquals(36 * 0.5 / 12, Run.result(sheet, "weight.dry", Unit.PSF) - Run.result(sheet, "fasteners.dry", Unit.PSF), 1e-6);
    }

    @Test
    void waterOnlyAddsAndThickerLayersOnlyAdd() throws UnusableInput {
        Worksheet sheet = Run.of("weight", "unit_weight=14 psf");
        assertTrue(Run.result(sheet, "weight.saturated", Unit.PSF) > Run.result(sheet, "weight.dry", Unit.PSF));
        assertEquals(14 * 1.15, Run.step(Run.of("weight", "unit_weight=14 psf", "scratch=0 in", "bed=0 in", BARE[0], BARE[1], BARE[2]), "w",
            Unit.PSF), 1e-6);
        assertTrue(dry("unit_weight=14 psf", "scratch=3/4 in") > dry("unit_weight=14 psf"));
        assertTrue(Run.result(Run.of("weight", "unit_weight=14 psf", "insulation=1 in"), "eccentricity.dry", Unit.IN)
            > Run.result(sheet, "eccentricity.dry", Unit.IN));
    }

    @Test
    void bothSystemsOfUnitsGiveTheSame() throws UnusableInput {
        Worksheet inch = Run.of("weight", "unit_weight=14 lb/ft2", "unit_thickness=2 in", "mat=10 mm");
        Worksheet metric = Run.of("weight", "unit_weight=68.3539869 kg/m2", "unit_thickness=50.8 mm", "mat=10 mm");
        assertEquals(inch.results().get("weight.saturated").si(), metric.results().get("weight.saturated").si(), 1e-4);
        assertEquals(inch.results().get("eccentricity.dry").si(), metric.results().get("eccentricity.dry").si(), 1e-9);
    }

    private static double dry(String... pairs) throws UnusableInput {
        var typed = Run.typed(BARE);
        typed.putAll(Run.typed(pairs));
        return Run.result(Worksheets.run("weight", typed, "typed"), "weight.dry", Unit.PSF);
    }

    private static boolean warns(String... pairs) throws UnusableInput {
        return Run.of("weight", pairs).warnings().stream().anyMatch(warning -> warning.contains("thicker than 2-5/8 in"));
    }
}
