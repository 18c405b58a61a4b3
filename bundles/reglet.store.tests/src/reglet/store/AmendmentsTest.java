package reglet.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.AmendedPack;
import reglet.model.Amendment;
import reglet.model.Basis;
import reglet.model.Pack;
import reglet.model.Problem;
import reglet.model.Rule;
import reglet.model.UnusableInput;

class AmendmentsTest {
    private static final String BASIS = "basis: [{document: Town Rules, edition: \"2023\", at: \"4.2\", known: read}]";
    private static final String TABLE = """
        table: span
        title: Span
        given:
          kind:   {word: [expanded metal, woven wire], match: exactly}
          weight: {unit: lb/yd2, match: from}
        gives: {spacing: {unit: in}}
        rows:
          - {kind: expanded metal, weight: 2.5 lb/yd2, spacing: 16 in}
          - {kind: woven wire, weight: any, spacing: 24 in}
        basis: [{document: none, known: common practice}]
        """;
    @TempDir
    Path folder;

    private AmendedPack amended(String amendments) throws Exception {
        new SmallPack().with("pack/tables/span.yaml", TABLE)
            .with("job/amendments.yaml", "format: 1\njurisdiction: Northquay\namendments:\n" + amendments.indent(2)).write(folder);
        return Amendments.read(folder.resolve("job"), pack()).orElseThrow();
    }

    private Pack pack() throws Exception {
        return Packs.read(folder.resolve("pack")).pack();
    }

    private List<String> problems(String amendments) {
        return assertThrows(UnusableInput.class, () -> amended(amendments)).problems().stream().map(Problem::toString).toList();
    }

    @Test
    void aJobWithoutAmendmentsHasNone() throws Exception {
        new SmallPack().write(folder);
        assertTrue(Amendments.read(folder.resolve("job"), pack()).isEmpty());
    }

    @Test
    void aRowOfATableIsChangedInItsPlace() throws Exception {
        AmendedPack amended = amended("- table: span\n  rows: [{kind: woven wire, weight: any, spacing: 16 in}]\n  " + BASIS);
        assertEquals(List.of("16 in", "16 in"), amended.pack().table("span").orElseThrow().rows().stream().map(row -> row.gives().text())
            .toList());
        assertEquals(List.of("changes the table span, woven wire, any: 16 in instead of 24 in"),
            amended.amendments().stream().map(Amendment::text).toList());
    }

    @Test
    void aRuleIsChangedStruckAndAddedEachWithTheJurisdictionAsItsBasis() throws Exception {
        AmendedPack changed = amended("- {rule: lath.light, says: \"too light here\", " + BASIS + "}");
        Rule rule = changed.pack().rule("lath.light").orElseThrow();
        assertEquals("too light here", rule.says());
        assertEquals(List.of("Northquay, Town Rules 2023, 4.2 (read)", "none (common practice)"),
            rule.basis().stream().map(Basis::text).toList());
        assertEquals(List.of(), amended("- {strike: lath.light, " + BASIS + "}").pack().rules());
        AmendedPack added = amended("""
            - add:
                id: local.height
                kind: caution
                each: wall
                holds: 'wall.height <= q("30 ft")'
                says: high
                %s
                examples: {holds: [{wall.height: 20 ft}]}
            """.formatted(BASIS));
        assertEquals(List.of("lath.light", "local.height"), added.pack().rules().stream().map(Rule::id).toList());
        assertEquals("amendments.yaml:5:7", added.pack().rule("local.height").orElseThrow().at().toString());
    }

    @Test
    void aUsualValueIsChanged() throws Exception {
        AmendedPack amended = amended("- {usual: lath.weight, value: 3.4 lb/yd2, " + BASIS + "}");
        assertEquals("3.4 lb/yd²", amended.pack().property("lath.weight").orElseThrow().usual().orElseThrow().text());
    }

    @Test
    void wrongAmendmentsAreToldWithTheirPlaceAndTheNearestRightWord() {
        assertEquals(List.of("amendments.yaml:4:14: the pack has no rule \"lath.ligt\"; did you mean 'lath.light'? expected one of: "
            + "lath.light"),
            problems("- {strike: lath.ligt, " + BASIS + "}"));
        assertEquals(List.of("amendments.yaml:4:5: the amendment has no basis; say in \"basis:\" where it stands, and how that is known"),
            problems("- strike: lath.light"));
        assertEquals(List.of("amendments.yaml:5:12: table span has no row for woven wire, 2 lb/yd²; it has rows for: expanded metal, "
            + "2.5 lb/yd²; woven wire, any"),
            problems("- table: span\n  rows: [{kind: woven wire, weight: 2 lb/yd2, spacing: 16 in}]\n  " + BASIS));
        assertEquals(List.of("amendments.yaml:5:12: lath.light is amended twice; put both changes into one amendment"),
            problems("- {strike: lath.light, " + BASIS + "}\n- {rule: lath.light, says: x, " + BASIS + "}"));
        assertEquals(List.of("amendments.yaml:4:5: amends several things at once: usual, strike; expected one of: table, usual, rule, "
            + "strike, "
            + "add"), problems("- {strike: lath.light, usual: lath.weight, value: 3 lb/yd2, " + BASIS + "}"));
        assertEquals(List.of("amendments.yaml:4:5: the rule has no examples; give some that hold, break and leave a gap"),
            problems("- {rule: lath.light, holds: 'lath.weight >= q(\"3 lb/yd2\")', " + BASIS + "}"));
    }
}
