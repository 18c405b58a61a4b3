package reglet.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Job;
import reglet.model.Layout;
import reglet.model.Layout.References;
import reglet.model.Pack;
import reglet.model.Problem;
import reglet.model.SectionPlan;
import reglet.model.UnusableInput;

/** How a job lays out its sections. */
class LayoutFilesTest {
    @TempDir
    Path folder;

    private Pack pack;

    private static SmallPack files(String layout) {
        return new SmallPack().replacing("pack/sections/04-73-00.yaml", "  - {id: lath, part: 2, title: LATH}", """
              - {id: summary, part: 1, title: SUMMARY}
              - {id: references, part: 1, title: REFERENCES, made: references}
              - {id: quality, part: 1, title: QUALITY}
              - {id: lath, part: 2, title: LATH}
              - {id: cleaning, part: 3, title: CLEANING}
              - {id: protection, part: 3, title: PROTECTION}\
            """.indent(2).stripTrailing()).replacing("job/job.yaml", "sections: [04 73 00]", "sections: [04 73 00]\n" + layout);
    }

    private Job read(SmallPack files) throws Exception {
        files.write(folder);
        pack = Packs.read(folder.resolve("pack")).pack();
        return Jobs.read(folder.resolve("job"), pack);
    }

    private List<String> problems(String layout) {
        return assertThrows(UnusableInput.class, () -> read(files(layout))).problems().stream().map(Problem::toString).toList();
    }

    @Test
    void aJobThatSaysNothingHasTheUsualLayout() throws Exception {
        assertEquals(Layout.USUAL, read(files("")).layout());
    }

    @Test
    void referencesAreAListATableOrOff() throws Exception {
        assertEquals(References.TABLE, read(files("references: table")).layout().references());
        assertEquals(References.OFF, read(files("references: off")).layout().references());
        assertEquals(List.of("job.yaml:6:13: unknown word \"tabel\"; did you mean 'table'? expected one of: list, table, off"),
            problems("references: tabel"));
    }

    @Test
    void theArticlesNamedExchangePlacesAndTheOthersKeepTheirs() throws Exception {
        Job job = read(files("order: {04 73 00: {1: [quality, summary], 3: [protection, cleaning]}}"));
        assertEquals(Map.of("04 73 00", List.of("quality", "summary", "protection", "cleaning")), job.layout().order());
        assertEquals(List.of("quality", "references", "summary", "lath", "protection", "cleaning"),
            job.layout().ordered(pack.plan("04 73 00").orElseThrow()).articles().stream().map(SectionPlan.Article::id).toList());
    }

    @Test
    void anArticleThatIsUnknownTwiceOrInAnotherPartIsToldAtItsPlace() {
        assertEquals(List.of("job.yaml:8:9: Part 1 of Section 04 73 00 has no article \"qualty\"; did you mean 'quality'? "
            + "expected one of: summary, references, quality"), problems("order:\n  04 73 00:\n    1: [qualty]"));
        assertEquals(List.of("job.yaml:8:18: article quality stands here twice; keep one of them"),
            problems("order:\n  04 73 00:\n    1: [quality, quality]"));
        assertEquals(List.of("job.yaml:8:9: article cleaning stands in Part 3, not in Part 1; an article stays in its part; "
            + "write it under 3:"), problems("order:\n  04 73 00:\n    1: [cleaning]"));
        assertEquals(List.of("job.yaml:8:5: unknown name \"4\"; did you mean '1'? expected one of: 1, 2, 3"),
            problems("order:\n  04 73 00:\n    4: [quality]"));
        assertEquals(List.of("job.yaml:7:3: unknown name \"04 73 01\"; did you mean '04 73 00'? expected one of: 04 73 00"),
            problems("order:\n  04 73 01: {1: [quality]}"));
    }
}
