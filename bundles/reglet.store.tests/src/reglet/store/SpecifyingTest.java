package reglet.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Alternate;
import reglet.model.Alternate.State;
import reglet.model.Choice;
import reglet.model.Clause;
import reglet.model.Job;
import reglet.model.Pack;
import reglet.model.Problem;
import reglet.model.Specifying;
import reglet.model.Specifying.How;
import reglet.model.UnusableInput;

/** How products are specified, and what is priced apart, as a person writes it. */
class SpecifyingTest {
    private static final String TEXTS = """
        - id: basis
          when: 'it.specify == "basis of design"'
          text: "${it}: ${it.product}."
        """;
    private static final String ALTERNATES = "\nalternates: [{number: 1, kind: alternate, title: Heavier}, "
        + "{number: 1, kind: unit price, title: Sheathing, section: 04 73 00, unit: ft2}]";

    @TempDir
    Path folder;

    private static SmallPack lath(String more) {
        return new SmallPack().with("pack/specifying.yaml", TEXTS).replacing("job/walls/W1.yaml", "by: specifier", "by: specifier, "
            + more);
    }

    private static SmallPack alternates(String version) {
        return lath("alternates: {" + version + "}").replacing("job/job.yaml", "sections: [04 73 00]", "sections: [04 73 00]" + ALTERNATES);
    }

    private Job read(SmallPack files) throws Exception {
        files.write(folder);
        return Jobs.read(folder.resolve("job"), Packs.read(folder.resolve("pack")).pack());
    }

    private Choice choice(SmallPack files) throws Exception {
        return read(files).wall("W1").orElseThrow().choice("lath").orElseThrow();
    }

    private List<String> problems(SmallPack files) {
        return assertThrows(UnusableInput.class, () -> read(files)).problems().stream().map(Problem::toString).toList();
    }

    @Test
    void aChoiceThatSaysNothingIsSpecifiedByPerformance() throws Exception {
        assertEquals(Specifying.PERFORMANCE, choice(new SmallPack()).specified());
    }

    @Test
    void aBasisOfDesignAcceptsComparableProductsUnlessItSaysNo() throws Exception {
        assertEquals(new Specifying(How.BASIS_OF_DESIGN, "Mesh 1", "Maker", true),
            choice(lath("specify: basis of design, product: Mesh 1, maker: Maker")).specified());
        assertEquals(new Specifying(How.BASIS_OF_DESIGN, "Mesh 1", "Maker", false),
            choice(lath("specify: basis of design, product: Mesh 1, maker: Maker, comparable: no")).specified());
        assertEquals(new Specifying(How.PROPRIETARY, "Mesh 1", "Maker", false),
            choice(lath("specify: proprietary, product: Mesh 1, maker: Maker")).specified());
    }

    @Test
    void whatContradictsItselfIsRefusedWithItsPlace() {
        assertEquals(List.of("walls/W1.yaml:5:49: unknown word \"by taste\"; expected one of: performance, reference standard, "
            + "basis of design, proprietary"), problems(lath("specify: by taste")));
        assertEquals(List.of("walls/W1.yaml:5:49: \"product\" says nothing when lath is specified by performance; "
            + "write \"specify: basis of design\" or \"specify: proprietary\", or leave it out"), problems(lath("product: Mesh 1")));
        assertEquals(List.of("walls/W1.yaml:5:74: a proprietary specification accepts no comparable products; "
            + "write \"specify: basis of design\", or leave it out"), problems(lath("specify: proprietary, comparable: yes")));
    }

    @Test
    void aComponentWithoutAProductParagraphCannotBeSpecifiedOtherwise() {
        assertEquals(List.of("walls/W1.yaml:5:49: lath has no product paragraph that could say so; leave \"specify\" out"),
            problems(lath("specify: basis of design").replacing("pack/sections/04-73-00.yaml", "part: 2", "part: 1")));
    }

    @Test
    void aTextOfThePackStandsBehindTheProductParagraphOfEachComponent() throws Exception {
        lath("specify: basis of design").write(folder);
        Pack pack = Packs.read(folder.resolve("pack")).pack();
        Clause made = pack.clauses().stream().filter(clause -> clause.id().equals("lath.specified-basis")).findFirst().orElseThrow();
        assertEquals("lath", made.article());
        assertEquals("Lath: ${lath.product}.", made.body());
        assertEquals("lath.specify == \"basis of design\"", made.when());
    }

    @Test
    void anAlternateHasAChoiceOfItsOwn() throws Exception {
        Job job = read(alternates("1: {accept: [metal], weight: 3.4 lb/yd2}"));
        assertEquals(List.of(1), job.versions(State.OFFERED));
        assertEquals(List.of(Alternate.Kind.ALTERNATE, Alternate.Kind.UNIT_PRICE),
            job.alternates().stream().map(Alternate::kind).toList());
        assertEquals("3.4 lb/yd2", job.taking(List.of(1)).wall("W1").orElseThrow().choice("lath").orElseThrow().values().get("weight").value()
            .text().replace("²", "2"));
        assertEquals(List.of(), job.taking(List.of(1)).versions(State.OFFERED));
    }

    @Test
    void anAlternateThatTheJobDoesNotDeclareIsRefusedWithItsPlace() {
        assertEquals(List.of("walls/W1.yaml:5:56: the job declares no alternate 2; expected one of: 1"),
            problems(alternates("2: {accept: [metal]}")));
    }

    @Test
    void anAllowanceNeedsTheSectionThatListsIt() {
        assertEquals(List.of("job.yaml:6:14: \"section\" is missing; name the section that lists the allowance, such as 04 73 00"),
            problems(new SmallPack().replacing("job/job.yaml", "sections: [04 73 00]",
                "sections: [04 73 00]\nalternates: [{number: 1, kind: allowance, title: Colour}]")));
    }
}
