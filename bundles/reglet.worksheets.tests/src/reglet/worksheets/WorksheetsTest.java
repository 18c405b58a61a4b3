package reglet.worksheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;

class WorksheetsTest {

    /** The least that each worksheet must be told. */
    private static final Map<String, String[]> LEAST = new LinkedHashMap<>();

    static {
        LEAST.put("weight", new String[] {"unit_weight=14 psf"});
        LEAST.put("wind", new String[] {"speed=115mph", "exposure=B", "height=30ft", "zone=5", "area=10ft2"});
        LEAST.put("seismic", new String[] {"sds=1.0", "weight=25 psf", "z=30 ft", "h=30 ft"});
        LEAST.put("lath_fastening", new String[] {"length=3 in", "weight=25 psf", "suction=19 psf", "mat=3/8 in"});
        LEAST.put("sealant_joint", new String[] {"length=20 ft"});
        LEAST.put("movement_joints", new String[] {"width=40 ft", "height=20 ft"});
        LEAST.put("takeoff", new String[] {"areas=40 ft x 10 ft"});
    }

    @Test
    void everyWorksheetRunsOnWhatItRequiresAndItsUsualValues() throws UnusableInput {
        assertEquals(List.copyOf(LEAST.keySet()), Worksheets.names());
        for (String name : Worksheets.names()) {
            Worksheet sheet = Run.of(name, LEAST.get(name));
            assertEquals(name, sheet.name());
            assertEquals(Worksheets.title(name), sheet.title());
            assertFalse(sheet.results().isEmpty(), name);
            for (InputSpec spec : Worksheets.describe(name)) {
                boolean typed = Run.typed(LEAST.get(name)).containsKey(spec.key());
                assertFalse(spec.required() && !typed && !spec.usual().isEmpty(), name + " " + spec.key());
                if (sheet.inputs().containsKey(spec.key())) {
                    assertEquals(typed ? "typed" : "usual value", sheet.inputs().get(spec.key()).from(), name + " " + spec.key());
                }
            }
        }
    }

    @Test
    void everyWorksheetEndsWithItsAssumptionsAndTheCaution() throws UnusableInput {
        for (String name : Worksheets.names()) {
            List<String> assumed = Run.of(name, LEAST.get(name)).assumed();
            assertTrue(assumed.size() >= 3, name);
            assertEquals(Worksheets.CAUTION, assumed.get(assumed.size() - 1), name);
        }
        for (String word : List.of("local code", "manufacturer's instructions", "licensed professional")) {
            assertTrue(Worksheets.CAUTION.contains(word));
        }
    }

    @Test
    void everyStepShowsFormulaNumbersAndBasis() throws UnusableInput {
        for (String name : Worksheets.names()) {
            for (Worksheet.Step step : Run.of(name, LEAST.get(name)).steps()) {
                assertFalse(step.symbol().isEmpty() || step.label().isEmpty() || step.formula().isEmpty() || step.substitution().isEmpty(),
                    name + " " + step);
                assertFalse(step.basis().isEmpty(), name + " " + step);
                assertTrue(step.basis().stream().noneMatch(basis -> basis.document().isEmpty()), name + " " + step);
            }
        }
    }

    @Test
    void everyQuantityHasAUnitAndARangeWithItsSource() throws UnusableInput {
        for (String name : Worksheets.names()) {
            for (InputSpec spec : Worksheets.describe(name)) {
                if (spec.kind() == InputSpec.Kind.QUANTITY) {
                    assertTrue(spec.unit().isPresent() && spec.range().isPresent(), name + " " + spec.key());
                    assertTrue(spec.range().get().low() < spec.range().get().high(), name + " " + spec.key());
                    assertTrue(spec.rangeText().matches("\\S+.* to .*; .*\\((read|from memory|common practice)\\)"), spec.rangeText());
                } else if (spec.kind() == InputSpec.Kind.WORD) {
                    assertTrue(spec.words().size() > 1, name + " " + spec.key());
                }
            }
        }
    }

    /** Just outside each end of every range, a worksheet refuses and names key and range. */
    @Test
    void whatLiesOutsideARangeIsRefusedNotExtrapolated() throws UnusableInput {
        for (String name : Worksheets.names()) {
            for (InputSpec spec : Worksheets.describe(name)) {
                if (spec.range().isEmpty()) {
                    continue;
                }
                double span = spec.range().get().high() - spec.range().get().low();
                for (double outside : new double[] {spec.range().get().low() - 0.01 * span, spec.range().get().high() + 0.01 * span}) {
                    Map<String, String> typed = Run.typed(LEAST.get(name));
                    typed.put(spec.key(), new java.math.BigDecimal(outside).toPlainString() + " " + spec.unit().get().symbol());
                    UnusableInput refused = assertThrows(UnusableInput.class, () -> Worksheets.run(name, typed, "job.yaml"), name + " "
                        + typed);
                    assertTrue(refused.getMessage().startsWith("job.yaml: " + name + " " + spec.key() + " of "), refused.getMessage());
                    assertTrue(refused.getMessage().contains(spec.rangeText()), refused.getMessage());
                }
            }
        }
    }

    @Test
    void everyProblemIsToldAtOnce() {
        UnusableInput refused = assertThrows(UnusableInput.class, () -> Run.of("wind", "speed=400 mph", "height=10", "zone=6",
            "colour=red"));
        assertEquals(5, refused.problems().size());
        String all = refused.getMessage();
        assertTrue(all.contains("wind colour is no input of this worksheet; it takes speed, exposure, height"), all);
        assertTrue(all.contains("wind speed of 400 mph is outside the range; from 85 mph to 250 mph"), all);
        assertTrue(all.contains("wind exposure is missing; one of: B, C, D"), all);
        assertTrue(all.contains("wind height can't be 10; give the mean roof height with its unit, such as ft"), all);
        assertTrue(all.contains("wind zone can't be 6; one of: 4, 5"), all);
    }

    @Test
    void anUnknownWorksheetIsAnsweredWithTheNames() {
        UnusableInput refused = assertThrows(UnusableInput.class, () -> Worksheets.run("snow", Map.of(), "typed"));
        assertTrue(refused.getMessage().contains("weight, wind, seismic"), refused.getMessage());
        assertThrows(UnusableInput.class, () -> Worksheets.describe("snow"));
    }

    @Test
    void recordsGiveTheSameWorksheetsAsTexts() throws UnusableInput {
        Worksheet wind = Wind.calculate(new Wind.Inputs(Unit.MPH.toSi(115), Wind.Exposure.B, Unit.FT.toSi(30), Wind.Zone.FIVE,
            Unit.FT2.toSi(10), 1, 0, Wind.Enclosure.ENCLOSED, false, OptionalDouble.empty(), Wind.Edition.ASCE_7_16));
        same(Run.of("wind", LEAST.get("wind")), wind);
        Worksheet seismic = Seismic.calculate(new Seismic.Inputs(1.0, Unit.PSF.toSi(25), Unit.FT.toSi(30), Unit.FT.toSi(30),
            Seismic.Element.LOW_VENEER, Seismic.Importance.USUAL));
        same(Run.of("seismic", LEAST.get("seismic")), seismic);
        Worksheet joints = MovementJoints.calculate(new MovementJoints.Inputs(Unit.FT.toSi(40), Unit.FT.toSi(20),
            List.of(new JointLine(Unit.FT.toSi(12), JointLine.Reason.BACKING_JOINT)), List.of(), Unit.PPM_F.toSi(6), Unit.DEG_F.toSi(10),
            Unit.DEG_F.toSi(140), 0.0009, 0, 0, OptionalDouble.empty()));
        same(Run.of("movement_joints", "width=40 ft", "height=20 ft", "vertical=12 ft backing joint"), joints);
        Worksheet weight = Weight.calculate(new Weight.Inputs(Unit.LB_FT2.toSi(14), Unit.IN.toSi(1.75), 0.15, Unit.IN.toSi(0.5),
            Unit.IN.toSi(0.5), Unit.LB_FT3.toSi(130), 0.10, Unit.LB_YD2.toSi(2.5), 0, Unit.LB_FT2.toSi(0.1), 0, Unit.LB_FT3.toSi(2),
            Unit.LB_FT2.toSi(0.1), Unit.IN.toSi(0.4375), Unit.LB_FT3.toSi(40), Weight.Edition.IBC_2021));
        same(Run.of("weight", LEAST.get("weight")), weight);
    }

    @Test
    void recordsAreHeldToTheSameRanges() {
        UnusableInput refused = assertThrows(UnusableInput.class, () -> Seismic.calculate(new Seismic.Inputs(9, Unit.PSF.toSi(25),
            Double.NaN, 10, Seismic.Element.LOW_VENEER, Seismic.Importance.USUAL)));
        assertEquals(2, refused.problems().size());
        assertTrue(refused.getMessage().contains("seismic sds of 9 is outside the range"), refused.getMessage());
        assertTrue(refused.getMessage().contains("seismic z is NaN"), refused.getMessage());
    }

    @Test
    void theSameInputsGiveTheSameWorksheet() throws UnusableInput {
        for (String name : Worksheets.names()) {
            assertEquals(Run.of(name, LEAST.get(name)), Run.of(name, LEAST.get(name)), name);
        }
    }

    @Test
    void whatWasTypedIsKeptAsItWasTyped() throws UnusableInput {
        Worksheet sheet = Worksheets.run("lath_fastening", Run.typed("length=2-1/2 in", "weight=25 lb/ft2", "suction=19 psf", "mat=3/8in"),
            "job.yaml");
        assertEquals("2-1/2 in", sheet.inputs().get("length").value().text());
        assertEquals("25 lb/ft²", sheet.inputs().get("weight").value().text());
        assertEquals("job.yaml", sheet.inputs().get("mat").from());
        assertEquals("usual value", sheet.inputs().get("species").from());
        assertFalse(sheet.inputs().containsKey("root"));
    }

    /** Best of many warm runs; the aim is 5 ms, the bound leaves room for a loaded machine. */
    @Test
    void aWarmWorksheetTakesNoTime() throws UnusableInput {
        for (String name : Worksheets.names()) {
            long best = Long.MAX_VALUE;
            for (int i = 0; i < 200; i++) {
                long start = System.nanoTime();
                Run.of(name, LEAST.get(name));
                best = Math.min(best, System.nanoTime() - start);
            }
            assertTrue(best < 5_000_000, name + " took " + best / 1e6 + " ms");
        }
    }

    private static void same(Worksheet typed, Worksheet record) {
        assertEquals(typed.results().keySet(), record.results().keySet());
        typed.results().forEach((key, amount) -> {
            assertEquals(amount.si(), record.results().get(key).si(), 1e-8 * Math.max(1, Math.abs(amount.si())), key);
            assertEquals(amount.unit(), record.results().get(key).unit(), key);
        });
        assertEquals(typed.inputs().keySet(), record.inputs().keySet());
        assertEquals(typed.steps().size(), record.steps().size());
        assertEquals(typed.assumed(), record.assumed());
        assertEquals(typed.warnings(), record.warnings());
    }
}
