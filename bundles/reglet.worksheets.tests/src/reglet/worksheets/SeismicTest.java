package reglet.worksheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

/** Check values: ASCE 7-16, 13.3.1 and Table 13.5-1 (from memory), worked independently. */
class SeismicTest {

    @Test
    void theForceAtTheRoofOnLowDeformabilityVeneerIsTheWorkedOne() throws UnusableInput {
        Worksheet sheet = Run.of("seismic", "sds=1.0", "weight=25 psf", "z=30 ft", "h=30 ft");
        assertEquals(20.0, Run.result(sheet, "force.strength", Unit.PSF), 1e-6);
        assertEquals(14.0, Run.result(sheet, "force", Unit.PSF), 1e-6);
        assertEquals(7.5, Run.step(sheet, "Fp,min", Unit.PSF), 1e-6);
        assertEquals(40.0, Run.step(sheet, "Fp,max", Unit.PSF), 1e-6);
        assertEquals(3.5, Run.result(sheet, "vertical", Unit.PSF), 1e-6);
    }

    @Test
    void theLeastForceGovernsAtTheBase() throws UnusableInput {
        Worksheet sheet = Run.of("seismic", "sds=1.0", "weight=25 psf", "z=0 ft", "h=30 ft", "element=veneer, limited deformability");
        assertEquals(7.5, Run.result(sheet, "force.strength", Unit.PSF), 1e-6);
    }

    @Test
    void connectorsTakeAFifthMoreAmplificationAndNoReduction() throws UnusableInput {
        // 0.4 × 1.25 × 1 × 25 × 3 / 1 = 37.5
        Worksheet sheet = Run.of("seismic", "sds=1.0", "weight=25 psf", "z=30 ft", "h=30 ft", "element=fasteners of the connecting system");
        assertEquals(37.5, Run.result(sheet, "force.strength", Unit.PSF), 1e-6);
    }

    @Test
    void theForceGrowsWithHeightAccelerationWeightAndImportance() throws UnusableInput {
        double base = force("sds=0.8", "weight=25 psf", "z=15 ft", "h=30 ft");
        assertTrue(force("sds=0.8", "weight=25 psf", "z=16 ft", "h=30 ft") > base);
        assertTrue(force("sds=0.9", "weight=25 psf", "z=15 ft", "h=30 ft") > base);
        assertTrue(force("sds=0.8", "weight=26 psf", "z=15 ft", "h=30 ft") > base);
        assertTrue(force("sds=0.8", "weight=25 psf", "z=15 ft", "h=30 ft", "importance=1.5") > base);
    }

    @Test
    void bothSystemsOfUnitsAndWeightsAsMassGiveTheSame() throws UnusableInput {
        double base = force("sds=0.8", "weight=25 psf", "z=15 ft", "h=30 ft");
        assertEquals(base, force("sds=0.8", "weight=25 lb/ft2", "z=4.572 m", "h=9.144 m"), 1e-6);
        assertEquals(base, force("sds=0.8", "weight=122.0606409 kg/m2", "z=4.572 m", "h=9.144 m"), 1e-5);
    }

    @Test
    void anAttachmentAboveTheRoofIsRefused() {
        UnusableInput refused = assertThrows(UnusableInput.class, () -> Run.of("seismic", "sds=1", "weight=25 psf", "z=31 ft", "h=30 ft"));
        assertTrue(refused.getMessage().contains("seismic z of 31 ft is above the roof"), refused.getMessage());
    }

    private static double force(String... pairs) throws UnusableInput {
        return Run.result(Run.of("seismic", pairs), "force", Unit.PSF);
    }
}
