package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import reglet.model.Assembly;
import reglet.model.Problem;
import reglet.model.RegisterItem;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Slot;
import reglet.model.TextChange;
import reglet.model.UnusableInput;

class DrafterTest {
    @Test
    void smallJobDraftsThisSection() throws UnusableInput {
        assertEquals("""
            1.1 SUMMARY
            A. Related sections:
              1. Section 06 10 00, Rough Carpentry: Framing.
              2. Section 07 92 00, Joint Sealants.
            1.2 REFERENCES
            A. ASTM C847-2018, Standard Specification for Metal Lath.
            1.3 ACTION SUBMITTALS
            A. Lath: Product data showing kind and weight.
            B. Lath: one piece of light expanded metal lath, full width.
            2.1 LATH AND ACCESSORIES
            A. Lath: Self-furring expanded metal lath, galvanized.
              1. Weight: at least 2.5 lb/yd² (1.36 kg/m²), ASTM C847.
            3.1 LATH INSTALLATION
            A. Fasten lath of Article 2.1 to wood studs, studs at most 16 in (406 mm) apart; seal as Section 07 92 00, Joint Sealants says.
              1. Over 2.5 lb/yd² (1.36 kg/m²):
                a. ASTM C847 lath lies flat.
            """, outline(draft(Sample.small())));
    }

    @Test
    void slotsCarryTheRequirementsThatTheyPrint() throws UnusableInput {
        Assembly assembly = Sample.small().assembly();
        SectionDocument section = Drafter.draft(assembly, Sample.SECTION, "");
        assertEquals("2.1.A.1", section.pathOf(assembly.requirement("W1", "lath", "metal-2.5", "weight").orElseThrow()).orElseThrow());
        assertEquals(List.of(), slot(section, "lath").requirements());
        assertEquals(List.of(), slot(section, "lath.weight.method").requirements());
        assertEquals(1, slot(section, "lath.weight.value").requirements().size());
    }

    @Test
    void textsEqualForAllWallsPrintOnce() throws UnusableInput {
        Sample sample = walls("metal-2.5", "metal-2.5");
        SectionDocument section = draft(sample.uses("lath.weight", "lath", "Weight: ${lath.weight}.", "W1 lath=metal-2.5",
            "W2 lath=metal-2.5"));
        assertEquals(List.of("Weight: at least 2.5 lb/yd² (1.36 kg/m²), ASTM C847."), article(section, "lath"));
        assertEquals(List.of("lath.weight"), ids(section, "lath"));
        assertEquals(List.of("W1", "W2"), slot(section, "lath.weight").requirements().stream().map(found -> found.wall()).toList());
    }

    @Test
    void unequalTextsNameTheirWalls() throws UnusableInput {
        Sample sample = walls("metal-2.5", "metal-3.4", "metal-2.5");
        SectionDocument section = draft(sample.uses("lath.weight", "lath", "Weight: ${lath.weight}.",
            "W1 lath=metal-2.5", "W2 lath=metal-3.4", "W3 lath=metal-2.5"));
        assertEquals(List.of("Wall types W1, W3: Weight: at least 2.5 lb/yd² (1.36 kg/m²), ASTM C847.",
            "Wall type W2: Weight: at least 3.4 lb/yd² (1.85 kg/m²), ASTM C847."), article(section, "lath"));
        assertEquals(List.of("lath.weight@W1,W3", "lath.weight@W2"), ids(section, "lath"));
    }

    @Test
    void textsThatLookEqualButRequireOtherValuesStayApart() throws UnusableInput {
        // The method alone prints alike, but what stands below it doesn't.
        SectionDocument section = draft(walls("metal-2.5", "metal-3.4").uses("lath.weight", "lath",
            "Shown by ${lath.weight.method}.\n\n1. ${lath.weight}", "W1 lath=metal-2.5", "W2 lath=metal-3.4"));
        assertEquals(List.of("lath.weight@W1", "lath.weight@W2"), ids(section, "lath"));
    }

    @Test
    void clauseThatAppliesToSomeWallsOnlySaysSo() throws UnusableInput {
        SectionDocument section = draft(walls("metal-2.5", "woven-17")
            .uses("lath.kind", "lath", "Lath: ${lath.kind}.", "W1 lath=metal-2.5"));
        assertEquals(List.of("Wall type W1: Lath: expanded metal."), article(section, "lath"));
    }

    @Test
    void alternativesPrintOneByOneWithTheirTitles() throws UnusableInput {
        SectionDocument section = draft(walls("metal-2.5,woven-17").uses("lath.kind", "lath", "Lath: ${lath.kind}.",
            "W1 lath=metal-2.5", "W1 lath=woven-17"));
        assertEquals(List.of("Where light expanded metal lath is furnished: Lath: expanded metal.",
            "Where woven wire lath is furnished: Lath: woven wire."), article(section, "lath"));
        assertEquals(List.of("lath.kind~metal-2.5", "lath.kind~woven-17"), ids(section, "lath"));
    }

    @Test
    void alternativesWithOneTextPrintOnce() throws UnusableInput {
        SectionDocument section = draft(walls("metal-2.5,metal-3.4").uses("lath.kind", "lath", "Lath: ${lath.kind}.",
            "W1 lath=metal-2.5", "W1 lath=metal-3.4"));
        assertEquals(List.of("Lath: expanded metal."), article(section, "lath"));
        assertEquals(2, slot(section, "lath.kind").requirements().size());
    }

    @Test
    void clauseForSomeOfTheAlternativesNamesThem() throws UnusableInput {
        SectionDocument section = draft(walls("metal-2.5,metal-3.4,woven-17").uses("lath.kind", "lath", "Lath: ${lath.kind}.",
            "W1 lath=metal-2.5", "W1 lath=metal-3.4"));
        assertEquals(List.of("Where light expanded metal lath or heavy expanded metal lath is furnished: Lath: expanded metal."),
            article(section, "lath"));
    }

    @Test
    void alternativesOfAWallBesideAnotherWallNameBoth() throws UnusableInput {
        SectionDocument section = draft(walls("metal-2.5", "metal-2.5,metal-3.4")
            .uses("lath.weight", "lath", "Weight: ${lath.weight.value}.",
            "W1 lath=metal-2.5", "W2 lath=metal-2.5", "W2 lath=metal-3.4"));
        assertEquals(List.of("Wall type W1: Weight: 2.5 lb/yd² (1.36 kg/m²).",
            "Wall type W2, where light expanded metal lath is furnished: Weight: 2.5 lb/yd² (1.36 kg/m²).",
            "Wall type W2, where heavy expanded metal lath is furnished: Weight: 3.4 lb/yd² (1.85 kg/m²)."), article(section, "lath"));
    }

    @Test
    void alternativesOfAComponentThatOnlyTheTextNamesArePrintedToo() throws UnusableInput {
        SectionDocument section = draft(walls("metal-2.5,woven-17").uses("lath.kind", "lath", "Lath: ${lath.kind}.", "W1"));
        assertEquals(2, article(section, "lath").size());
    }

    @Test
    void clauseForMeetingsNamesThoseThatDiffer() throws UnusableInput {
        Sample sample = new Sample().wall("W1", "28 ft", List.of(Sample.opening("window-1", "window"), Sample.opening("door-1", "door")),
            "lath=metal-2.5")
            .uses("head", "lath", "Head of ${opening.kind}.", "W1/window-1", "W1/door-1")
            .uses("sill", "lath", "Sill below.", "W1/window-1", "W1/door-1");
        assertEquals(List.of("Wall type W1 at window-1: Head of window.", "Wall type W1 at door-1: Head of door.", "Sill below."),
            article(draft(sample), "lath"));
    }

    @Test
    void clauseOfTheJobJoinsWallsAndAlternatives() throws UnusableInput {
        SectionDocument section = draft(walls("metal-2.5", "metal-3.4,woven-17")
            .uses("scope", "summary", "Includes ${lath}; walls of ${wall.height}.", ""));
        assertEquals("Includes light expanded metal lath and heavy expanded metal lath or woven wire lath; walls of 28 ft (8.53 m).",
            article(section, "summary").get(0));
    }

    @Test
    void whatIsNotDecidedStandsInBrackets() throws UnusableInput {
        SectionDocument section = draft(new Sample().wall("W1", "28 ft", "lath=woven-17")
            .uses("lath.weight", "lath", "Over ${framing}: ${lath.weight}.", "W1"));
        assertEquals(List.of("Over [Framing: not decided]: [Lath, weight: not decided]."), article(section, "lath"));
    }

    @Test
    void standardsAreListedOnceInOrderWithTheEditionOfTheJobsCode() throws UnusableInput {
        Sample sample = Sample.small().uses("seal", "units", "Class ${sealant.class}; ${std.ASTM_C90}, ${std.ASTM_C90}.",
            "W1 sealant=class-50");
        assertEquals(List.of("ASTM C90, Standard Specification for Loadbearing Concrete Masonry Units.",
            "ASTM C847-2018, Standard Specification for Metal Lath.",
            "ASTM C920-2014, Standard Specification for Elastomeric Joint Sealants."),
            article(draft(sample), "references"));
        sample.codeEdition = "2024";
        assertEquals("ASTM C847, Standard Specification for Metal Lath.", article(draft(sample), "references").get(1));
    }

    @Test
    void valueAloneCitesNoStandard() throws UnusableInput {
        Sample sample = new Sample().wall("W1", "28 ft", "lath=metal-2.5").uses("lath.weight", "lath", "${lath.weight.value}", "W1");
        assertEquals(List.of(), article(draft(sample), "references"));
    }

    @Test
    void submittalsComeFromTheEvidenceOfOwnedComponents() throws UnusableInput {
        SectionDocument section = draft(Sample.small().entry("mockup", "", RegisterItem.Kind.INFORMATIONAL, "mock-up",
            "Mock-up: one panel."));
        assertEquals(List.of("lath.product-data", "lath.sample"), ids(section, "action"));
        assertEquals(List.of("mockup"), ids(section, "informational"));
        assertTrue(section.paragraphs().stream().noneMatch(paragraph -> paragraph.id().startsWith("sealant.")),
            "another section owns the sealant");
    }

    @Test
    void entryForTheSameEvidenceSaysWhatToShow() throws UnusableInput {
        SectionDocument section = draft(Sample.small().entry("lath.product-data", "lath", RegisterItem.Kind.ACTION, "product data",
            "Lath: the maker's sheet for ${lath}."));
        assertEquals("Lath: the maker's sheet for light expanded metal lath. Show kind and weight.", article(section, "action").get(0));
    }

    @Test
    void changedParagraphIsOwnTextWithSlotsAndKeepsWhatStandsBelow() throws UnusableInput {
        SectionDocument section = draft(Sample.small().change(TextChange.Kind.CHANGE, "lath.metal", "Lath: ${lath.kind}, **stainless**."));
        Paragraph changed = paragraph(section, "lath.metal");
        assertEquals("Lath: expanded metal, stainless.", changed.plain());
        assertTrue(changed.own());
        assertEquals("Weight: at least 2.5 lb/yd² (1.36 kg/m²), ASTM C847.", changed.children().get(0).plain());
        assertFalse(changed.children().get(0).own());
    }

    @Test
    void slotsCopiedFromADraftStaySlots() throws UnusableInput {
        SectionDocument section = draft(Sample.small().change(TextChange.Kind.CHANGE, "lath.metal/1",
            "Weight: [at least 9 lb/yd²](slot:lath.weight), tested."));
        assertEquals("Weight: at least 2.5 lb/yd² (1.36 kg/m²), ASTM C847, tested.", paragraph(section, "lath.metal/1").plain());
    }

    @Test
    void struckParagraphsAreGoneAndTheRestCountsOn() throws UnusableInput {
        SectionDocument section = draft(Sample.small().change(TextChange.Kind.STRIKE, "lath.product-data", "")
            .change(TextChange.Kind.STRIKE, "lath.metal", ""));
        assertEquals("1.3.A", paragraph(section, "lath.sample").path());
        assertEquals(List.of(), article(section, "lath"));
        assertTrue(paragraph(section, "lath.fastening").plain().startsWith("Fasten lath of this Section to"),
            "the article referred to is gone");
    }

    @Test
    void addedParagraphsFollowInTheOrderWritten() throws UnusableInput {
        SectionDocument section = draft(Sample.small().change(TextChange.Kind.ADD, "lath.metal", "First.\n\nSecond, of ${lath.kind}.")
            .change(TextChange.Kind.ADD, "lath.metal", "Third:\n\n1. below."));
        assertEquals(List.of("Lath: Self-furring expanded metal lath, galvanized.", "First.", "Second, of expanded metal.", "Third:"),
            article(section, "lath"));
        assertEquals(List.of("lath.metal", "lath.metal+1", "lath.metal+2", "lath.metal+3"), ids(section, "lath"));
        assertEquals("2.1.D.1", paragraph(section, "lath.metal+3/1").path());
    }

    @Test
    void ownTextForAMeetingMayPrintItsFacts() throws UnusableInput {
        Sample sample = new Sample().wall("W1", "28 ft", List.of(Sample.opening("window-1", "window")), "lath=metal-2.5")
            .uses("head", "lath", "Head.", "W1/window-1").change(TextChange.Kind.ADD, "head", "Sill of ${opening.kind}.")
            .change(TextChange.Kind.CHANGE, "head+1", "Pan below ${opening.kind}.");
        assertEquals(List.of("Head.", "Pan below window."), article(draft(sample), "lath"));
    }

    @Test
    void changesReachParagraphsThatTheProgramMakes() throws UnusableInput {
        SectionDocument section = draft(Sample.small().change(TextChange.Kind.STRIKE, "references.ASTM_C847", ""));
        assertEquals(List.of(), article(section, "references"));
    }

    @Test
    void unknownSlotNamesFileSlotAndNearestWord() {
        Problem problem = problems(Sample.small().uses("bad", "lath", "Lath: ${lath.wieght}.", "W1")).get(0);
        assertEquals("clauses/bad.md: clause 'bad': there is nothing to print for ${lath.wieght}; did you mean 'lath.weight'?",
            problem.toString());
    }

    @Test
    void everyProblemIsReportedAtOnce() {
        assertEquals(3, problems(Sample.small().uses("bad1", "lath", "${lath.wieght}", "W1").uses("bad2", "nowhere", "x", "W1")
            .uses("bad3", "lath", "One.\n\nTwo.", "W1")).size());
    }

    @Test
    void factOfAMeetingIsRefusedElsewhere() {
        assertTrue(problems(Sample.small().uses("bad", "lath", "${opening.kind}", "W1")).get(0).expected().contains("each meeting"));
    }

    @Test
    void listsDeeperThanTheFormatAreRefused() {
        assertTrue(problems(Sample.small().uses("bad", "lath", "A.\n\n1. a\n   1. b\n      1. c\n         1. d\n            1. e\n", "W1"))
            .get(0)
            .what().contains("nested"));
    }

    @Test
    void unknownSectionNamesTheNearest() {
        UnusableInput problem = assertThrows(UnusableInput.class, () -> Drafter.draft(Sample.small().assembly(), "04 73 01", ""));
        assertEquals("did you mean 04 73 00?", problem.problems().get(0).expected());
    }

    @Test
    void referencesReachArticlesParagraphsAndSections() throws UnusableInput {
        SectionDocument section = draft(Sample.small().uses("refer", "lath-installation",
            "See ${see.lath-installation}, ${see.lath.metal} and ${see.S06_10_00}.", "W1"));
        assertEquals("See Article 3.1, Paragraph 2.1.A and Section 06 10 00, Rough Carpentry.", paragraph(section, "refer").plain());
    }

    @Test
    void lettersGoOnAfterZAsInWordProcessors() {
        assertEquals(List.of("A", "Z", "AA", "BB", "ZZ", "AAA"), List.of(Marks.number(1, 1), Marks.number(1, 26), Marks.number(1, 27),
            Marks.number(1, 28), Marks.number(1, 52), Marks.number(1, 53)));
    }

    @Test
    void markUpInValuesStaysText() throws UnusableInput {
        Sample sample = new Sample().wall("W1", "28 ft", "lath=metal-2.5")
            .uses("odd", "lath", "a*b*c [d] \\<e> &amp; #1 `code` <b>f</b>!${lath.kind}", "W1");
        assertEquals(List.of("abc [d] <e> & #1 code <b>f</b>!expanded metal"), article(draft(sample), "lath"));
        assertEquals("x * _y_ [z](slot:lath) <b> & \\", ClauseText.paragraphs(ClauseText.escape("x * _y_ [z](slot:lath) <b> & \\"), slot ->
            null)
            .get(0).text().stream().map(span -> span.text()).collect(Collectors.joining()));
    }

    private static Sample walls(String... laths) {
        Sample sample = new Sample();
        for (String lath : laths) {
            sample.wall("W" + (sample.walls.size() + 1), "28 ft", "lath=" + lath);
        }
        return sample;
    }

    private static SectionDocument draft(Sample sample) throws UnusableInput {
        return Drafter.draft(sample.assembly(), Sample.SECTION, "");
    }

    private static List<Problem> problems(Sample sample) {
        return assertThrows(UnusableInput.class, () -> draft(sample)).problems();
    }

    private static List<String> article(SectionDocument section, String id) {
        return paragraphs(section, id).stream().map(Paragraph::plain).toList();
    }

    private static List<String> ids(SectionDocument section, String id) {
        return paragraphs(section, id).stream().map(Paragraph::id).toList();
    }

    private static List<Paragraph> paragraphs(SectionDocument section, String article) {
        List<Paragraph> paragraphs = new ArrayList<>();
        section.parts().forEach(part -> part.articles().stream().filter(found -> found.id().equals(article))
            .forEach(found -> paragraphs.addAll(found.paragraphs())));
        return paragraphs;
    }

    private static Paragraph paragraph(SectionDocument section, String id) {
        return section.paragraphs().stream().filter(paragraph -> paragraph.id().equals(id)).findFirst().orElseThrow();
    }

    private static Slot slot(SectionDocument section, String ref) {
        return section.paragraphs().stream().flatMap(paragraph -> paragraph.text().stream()).filter(Slot.class::isInstance)
            .map(Slot.class::cast)
            .filter(slot -> slot.ref().equals(ref)).findFirst().orElseThrow();
    }

    static String outline(SectionDocument section) {
        StringBuilder lines = new StringBuilder();
        section.parts().forEach(part -> part.articles().forEach(article -> {
            lines.append(article.number()).append(' ').append(article.title()).append('\n');
            article.paragraphs().forEach(paragraph -> outline(paragraph, lines));
        }));
        return lines.toString();
    }

    private static void outline(Paragraph paragraph, StringBuilder lines) {
        lines.append("  ".repeat(paragraph.level() - 1)).append(Marks.of(paragraph)).append(' ').append(paragraph.plain()).append('\n');
        paragraph.children().forEach(child -> outline(child, lines));
    }
}
