package reglet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import reglet.model.Change;
import reglet.model.Finding;

/** Values that codes, standards and the trade hold to: right at them the court of the clinic is sound, just past them it isn't. */
class OutsideValuesTest {

    @ParameterizedTest(name = "{0}: {2} is right, {3} is not; {4}")
    @CsvSource(delimiter = '|', value = {
        "W2.base_screed.leg | base_screed.leg | 3-1/2 in | 3-3/8 in | IRC 2018 R703.7.2.1 and IBC 2021 2512.1.2 (read)",
        "W2.lath | lath.light | metal-2.5 | metal-1.75 | 2.5 lb/yd2 lath under adhered veneer; common practice, ASTM C847 weights "
            + "(from memory)",
        "W2.scratch_coat.thickness | scratch_coat.thickness | 1/2 in | 1/4 in | trade guidance: nominal 1/2 in (read); 3/8 in is "
            + "least, ASTM C926 (from memory)",
        "W2.setting_bed.thickness | setting_bed.thickness | 1/2 in | 1/4 in | common practice: about 1/2 in; 3/8 to 1-1/4 in, TMS "
            + "602-16 (from memory)",
        "W2.sealant.width | sealant.narrow | 1/2 in | 1/8 in | ASTM C1193, least width 1/4 in (from memory); about 1/2 in is common practice",
        "W2.veneer.weight | veneer.weight | 15 psf | 16 psf | IBC 2021 by way of TMS 402-16 12.3: 15 psf (from memory)",
        "W2.veneer.thickness | veneer.thickness | 2-5/8 in | 2-3/4 in | IBC 2021 by way of TMS 402-16 12.3: 2-5/8 in (from memory)",
        "W2.lath_fastener.spacing | lath_fastener.spacing | 6 in | 8 in | IRC 2021 R703.7.1: 7 in at most along the framing (read)"})
    void theValueOfTheTradeIsRightAndJustPastItIsFound(String address, String rule, String right, String wrong,
        String source) throws Exception {
        Check check = RealPack.ENGINE.open(SampleJob.of("harbour-clinic").read(RealPack.PACK));
        assertTrue(rules(check.after(List.of(new Change(address, right)))).stream().noneMatch(rule::equals), source);
        assertTrue(rules(check.after(List.of(new Change(address, wrong)))).contains(rule), source);
    }

    /** Woven wire of 17 gauge with openings of 1-1/2 in stands beside 2.5 lb expanded metal; common practice. */
    @ParameterizedTest
    @CsvSource({"metal-2.5", "woven-17"})
    void bothLathsOfTheTradeAreRight(String lath) throws Exception {
        Check check = RealPack.ENGINE.open(SampleJob.of("harbour-clinic").read(RealPack.PACK));
        assertEquals(Set.of(), rules(check.after(List.of(new Change("W2.lath", lath)))));
    }

    /** Two plies, each of the 60-minute class: common practice, stricter than IBC 2510.6; a 10-minute sheet is none of them. */
    @ParameterizedTest
    @CsvSource({"paper-60,", "paper-10, barrier.two_60.rating"})
    void twoSixtyMinutePliesAreTwoOfThem(String ply, String rule) throws Exception {
        Check check = RealPack.ENGINE.open(SampleJob.of("harbour-clinic").read(RealPack.PACK));
        Set<String> found = rules(check.after(List.of(new Change("W2.wall.barrier", "two 60-minute plies"), new Change("W2.outer_ply",
            ply))));
        assertEquals(rule == null ? Set.of() : Set.of(rule), found);
    }

    private static Set<String> rules(Check check) {
        return check.checked().findings().stream().map(Finding::rule).collect(Collectors.toSet());
    }
}
