package reglet.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Job;
import reglet.model.Problem;
import reglet.model.Quantity;
import reglet.model.UnusableInput;

/** What a person is told about each kind of mistake, to the letter: file, line, column, what was found, what was expected. */
class MessagesTest {
    @TempDir
    Path folder;

    private List<String> problems(SmallPack files) throws Exception {
        files.write(folder);
        return assertThrows(UnusableInput.class, () -> Jobs.read(folder.resolve("job"), Packs.read(folder.resolve("pack")).pack()))
            .problems().stream().map(Problem::toString).toList();
    }

    @Test
    void aRightFolderIsRead() throws Exception {
        new SmallPack().write(folder);
        Job job = Jobs.read(folder.resolve("job"), Packs.read(folder.resolve("pack")).pack());
        assertEquals("20 ft", job.wall("W1").orElseThrow().facts().get("height").value().text());
        assertEquals(List.of("metal"), job.wall("W1").orElseThrow().choice("lath").orElseThrow().accept());
    }

    @Test
    void anUnknownKeyNamesTheNearestRightOne() throws Exception {
        assertEquals(List.of("walls/W1.yaml:5:1: unknown name \"lathe\"; did you mean 'lath'? expected one of: title, wall, meets, lath"),
            problems(new SmallPack().replacing("job/walls/W1.yaml", "lath: {", "lathe: {")));
    }

    @Test
    void whatASectionLeavesOutIsAPropertyThatItSpecifies() throws Exception {
        assertEquals(List.of("sections/04-73-00.md:1:1: Section 04 73 00 specifies no \"lath.wieght\"; did you mean 'lath.weight'? "
            + "expected one of: lath, lath.kind, lath.weight"),
            problems(new SmallPack().with("job/sections/04-73-00.md", "## leave out lath.wieght\nWhy.\n")));
    }

    @Test
    void anUnknownOptionNamesTheNearest() throws Exception {
        assertEquals(List.of("walls/W1.yaml:5:17: unknown option of lath \"metl\"; did you mean 'metal'? expected one of: metal"),
            problems(new SmallPack().replacing("job/walls/W1.yaml", "[metal]", "[metl]")));
    }

    @Test
    void aSecondKeyOfTheSameNameIsFound() throws Exception {
        assertEquals(List.of("job.yaml:6:1: \"title\" stands here a second time; keep one of them"),
            problems(new SmallPack().replacing("job/job.yaml", "sections: [04 73 00]", "sections: [04 73 00]\ntitle: Another")));
    }

    @Test
    void aValueOfAnotherDimensionIsExplained() throws Exception {
        assertEquals(List.of("walls/W1.yaml:2:16: \"20 psf\" is a pressure and not a length; expected a number with a unit, such as 1 ft"),
            problems(new SmallPack().replacing("job/walls/W1.yaml", "20 ft", "20 psf")));
    }

    @Test
    void aTextThatIsNoQuantityIsExplained() throws Exception {
        assertEquals(List.of("walls/W1.yaml:2:16: \"tall\" is no length; expected a number with a unit, such as 1 ft"),
            problems(new SmallPack().replacing("job/walls/W1.yaml", "20 ft", "tall")));
    }

    @Test
    void aMeetingWithoutItsKindIsExplained() throws Exception {
        assertEquals(List.of("walls/W1.yaml:4:13: \"as\" is missing; expected one of: opening"),
            problems(new SmallPack().replacing("job/walls/W1.yaml", "as: opening, ", "")));
    }

    @Test
    void aWordThatIsNotAllowedNamesThoseThatAre() throws Exception {
        assertEquals(List.of("walls/W1.yaml:4:33: unknown word \"windo\"; did you mean 'window'? expected one of: window, door"),
            problems(new SmallPack().replacing("job/walls/W1.yaml", "kind: window", "kind: windo")));
    }

    @Test
    void aRegisterEntryNamedLikeAClauseIsFoundAsBothBecomeParagraphs() throws Exception {
        assertEquals(List.of("register.yaml:2:3: the clause \"lath.metal\" is taken; it stands in clauses/04-73-00/lath.metal.md too"),
            problems(new SmallPack().with("pack/register.yaml",
                "lath.metal:\n  {section: 04 73 00, kind: action, sends: sample, text: One.}\n")));
    }

    @Test
    void aListedWallWithoutItsFileIsFound() throws Exception {
        assertEquals(List.of("job.yaml:4:13: wall type W2 has no file walls/W2.yaml; add the file, or take the wall type from the list"),
            problems(new SmallPack().replacing("job/job.yaml", "[W1]", "[W1, W2]")));
    }

    @Test
    void aWallFileThatNobodyListsIsFound() throws Exception {
        assertEquals(List.of("walls/W9.yaml: is not among the job's walls; add W9 to \"walls\" in job.yaml, or remove the file"),
            problems(new SmallPack().with("job/walls/W9.yaml", "title: Lost\n")));
    }

    @Test
    void aNewerFormatIsRefusedWithTheReason() throws Exception {
        assertEquals(List.of("job.yaml:1:9: format 2 is newer than this program; this program reads job files of format 1; use a newer "
            + "program, the file is untouched"), problems(new SmallPack().replacing("job/job.yaml", "format: 1", "format: 2")));
    }

    @Test
    void aFileThatIsNoYamlIsFoundWithItsPlace() throws Exception {
        List<String> problems = problems(new SmallPack().with("job/walls/W1.yaml", "title: [Front\nwall: {height: 20 ft}\n"));
        assertEquals("walls/W1.yaml:2:5: is not YAML: ", problems.get(0).substring(0, "walls/W1.yaml:2:5: is not YAML: ".length()));
    }

    @Test
    void aPathOutOfTheJobFolderIsRefused() throws Exception {
        Files.writeString(folder.resolve("secret.pdf"), "secret");
        assertEquals(List.of("products/a.yaml:3:8: there is no file ../secret.pdf in the job folder; expected a file such as sheets/a.pdf"),
            problems(new SmallPack().with("job/products/a.yaml", "component: lath\nname: A\nsheet: ../secret.pdf\n")));
    }

    @Test
    void aLinkOutOfTheJobFolderIsRefused() throws Exception {
        Path outside = Files.writeString(folder.resolve("W2.yaml"), "title: Outside\n");
        new SmallPack().replacing("job/job.yaml", "[W1]", "[W1, W2]").write(folder);
        Files.createSymbolicLink(folder.resolve("job/walls/W2.yaml"), outside);
        UnusableInput refused = assertThrows(UnusableInput.class,
            () -> Jobs.read(folder.resolve("job"), Packs.read(folder.resolve("pack")).pack()));
        assertEquals("job.yaml:4:13: wall type W2 has no file walls/W2.yaml; add the file, or take the wall type from the list",
            refused.problems().get(0).toString());
    }

    @Test
    void everyProblemOfAFolderIsToldAtOnce() throws Exception {
        assertEquals(2, problems(new SmallPack().replacing("job/walls/W1.yaml", "20 ft", "tall").replacing("job/walls/W1.yaml", "[metal]",
            "[wood]")).size());
    }

    @Test
    void aRuleWithoutExamplesIsRefused() throws Exception {
        assertEquals(List.of("rules/lath.light.yaml:1:1: the rule has no examples; give some that hold, break and leave a gap"),
            problems(new SmallPack().replacing("pack/rules/lath.light.yaml", "examples:\n  holds: [{lath.weight: 2.5 lb/yd2}]\n", "")));
    }

    @Test
    void aRuleWithoutBasisIsRefused() throws Exception {
        assertEquals(List.of("rules/lath.light.yaml:1:1: the rule has no basis; say in \"basis:\" where it comes from, and how that is known"),
            problems(new SmallPack().replacing("pack/rules/lath.light.yaml", "basis: [{document: none, known: common practice}]\n", "")));
    }

    @Test
    void aFileNamedOtherwiseThanItsIdIsFound() throws Exception {
        assertEquals(List.of("rules/other.yaml:1:1: the file says it is \"lath.light\"; rename the file to lath.light.yaml, or mend the id"),
            problems(new SmallPack().with("pack/rules/other.yaml", """
                id: lath.light
                kind: caution
                each: wall
                holds: 'true'
                says: x
                basis: [{document: none, known: read}]
                examples: {holds: [{lath.weight: 1 lb/yd2}]}
                """)));
    }

    @Test
    void aClauseInAnArticleThatIsNotPlannedIsFound() throws Exception {
        assertEquals(List.of("clauses/04-73-00/lath.metal.md:2:1: unknown article of section 04 73 00 \"lathe\"; did you mean 'lath'? "
            + "expected one of: lath"), problems(new SmallPack().replacing("pack/clauses/04-73-00/lath.metal.md", "article: lath",
            "article: lathe")));
    }

    @Test
    void aStandardThatNobodyDeclaresIsFound() throws Exception {
        assertEquals(List.of("components/lath.yaml:7:11: unknown standard \"ASTM C846\"; did you mean 'ASTM C847'? expected one of: ASTM C847"),
            problems(new SmallPack().replacing("pack/components/lath.yaml", "ASTM C847", "ASTM C846")));
    }

    @Test
    void aRangeTakesTheUnitOfItsHighEnd() throws Exception {
        new SmallPack().replacing("pack/components/lath.yaml", "weight: {unit: lb/yd2, compare: at least, method: ASTM C847}",
            "weight: {range: in}").replacing("pack/components/lath.yaml", "weight: 2.5 lb/yd2", "weight: 3/8 to 1/2 in")
            .with("pack/rules/lath.light.yaml", "id: lath.light\nkind: caution\neach: wall\nholds: 'true'\nsays: x\n"
                + "basis: [{document: none, known: read}]\nexamples: {holds: [{lath.kind: woven wire}]}\n").write(folder);
        var range = (reglet.model.Range) Packs.read(folder.resolve("pack")).pack().component("lath").orElseThrow().options().get(0).values()
            .get("weight");
        assertEquals(0, range.low().compareWith(Quantity.parse("3/8 in").orElseThrow()));
    }
}
