package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.desk.AlternateBeside.Group;
import reglet.desk.AlternateBeside.Row;
import reglet.desk.AlternateChanges.Offer;
import reglet.model.Alternate.State;
import reglet.model.UnusableInput;

/** Alternates made and changed from where choices are made: the library, which offers stainless lath as its alternate 1. */
class AlternateChangesTest {
    private static final Offer MAT = new Offer("W1", "mat", List.of("filament-3-8"), 2, "thicker mat", "mat of 3/8 in", "drains more");

    @TempDir
    Path folder;
    private OpenJob job;

    @BeforeEach
    void openTheLibrary() throws Exception {
        Samples.copy("mesa-library", folder);
        job = Samples.desk().open(folder);
    }

    private String file(String name) throws Exception {
        return Files.readString(folder.resolve(name));
    }

    private static String why(UnusableInput refused) {
        return refused.problems().get(0).what();
    }

    @Test
    void anotherOptionIsOfferedAsAnAlternateWithNumberTitleAndReason() throws Exception {
        assertEquals(2, AlternateChanges.next(job.job()));
        OpenJob offered = AlternateChanges.offer(job, MAT);
        assertTrue(file("job.yaml").contains("  - {number: 2, kind: alternate, title: thicker mat, description: mat of 3/8 in}\n"),
            file("job.yaml"));
        assertTrue(file("walls/W1.yaml").contains("mat: {accept: [filament-1-4], by: specifier, alternates: {2: {accept: [filament-3-8], "
            + "because: drains more}}}"), file("walls/W1.yaml"));
        assertTrue(offered.section("04 73 00").paragraphs().stream()
            .anyMatch(paragraph -> paragraph.id().equals("mat.material~alternate-2")));
        assertEquals(3, AlternateChanges.next(offered.job()));
    }

    @Test
    void aFurtherChoiceJoinsAnAlternateThatTheJobHas() throws Exception {
        String before = file("job.yaml");
        OpenJob offered = AlternateChanges.offer(job, new Offer("W1", "mat", List.of("filament-3-8"), 1, "", "", ""));
        assertEquals(before, file("job.yaml"));
        assertEquals(List.of("filament-3-8"), offered.job().wall("W1").orElseThrow().choice("mat").orElseThrow().alternates().get(1)
            .accept());
    }

    @Test
    void whatCannotBeOfferedIsExplainedAndWritesNothing() throws Exception {
        String wall = file("walls/W1.yaml");
        assertEquals("an alternate needs a title", why(assertThrows(UnusableInput.class, () -> AlternateChanges.offer(job,
            new Offer("W1", "mat", List.of("filament-3-8"), 2, " ", "", "")))));
        assertEquals("number 0 counts nothing", why(assertThrows(UnusableInput.class, () -> AlternateChanges.offer(job,
            new Offer("W1", "mat", List.of("filament-3-8"), 0, "a", "", "")))));
        assertEquals("the base bid accepts that already", why(assertThrows(UnusableInput.class, () -> AlternateChanges.offer(job,
            new Offer("W1", "mat", List.of("filament-1-4"), 2, "a", "", "")))));
        assertEquals("Alternate No. 1, stainless lath, has a choice of its own here already", why(assertThrows(UnusableInput.class,
            () -> AlternateChanges.offer(job, new Offer("W1", "lath", List.of("woven-17"), 1, "", "", "")))));
        assertTrue(why(assertThrows(UnusableInput.class, () -> AlternateChanges.offer(job,
            new Offer("W1", "water_repellent", List.of("x"), 2, "a", "", "")))).startsWith("the base bid accepts nothing here"));
        assertEquals(wall, file("walls/W1.yaml"));
    }

    @Test
    void itsChoicesAreEditedAsAComponentsAndTheBaseBidStays() throws Exception {
        OpenJob offered = AlternateChanges.offer(job, MAT);
        Bid bid = Bid.with(2);
        OpenJob other = AlternateChanges.choose(offered, bid, "W1", "mat", List.of("filament-3-4"));
        assertEquals(List.of("filament-3-4"), other.as(bid).assembly().job().wall("W1").orElseThrow().choice("mat").orElseThrow().accept());
        assertEquals(List.of("filament-1-4"), other.assembly().job().wall("W1").orElseThrow().choice("mat").orElseThrow().accept());
        OpenJob joined = AlternateChanges.choose(other, bid, "W1", "lath", List.of("woven-17"));
        assertTrue(file("walls/W1.yaml").contains("2: {accept: [woven-17]}"), "the base's product is not the alternate's");
        OpenJob set = AlternateChanges.set(joined, bid, "W1", "sealant", "width", "3/4 in");
        assertEquals("3/4 in", set.as(bid).assembly().job().wall("W1").orElseThrow().choice("sealant").orElseThrow().values().get("width")
            .value().text());
        String because = "asked for by phone: the owner";
        AlternateChanges.remark(set, bid, "W1", "lath", "because", because);
        assertTrue(file("walls/W1.yaml").contains("because: \"" + because + "\"}"), file("walls/W1.yaml"));
        OpenJob back = AlternateChanges.takeBack(Samples.desk().open(folder), bid, "W1", "lath");
        assertFalse(back.job().wall("W1").orElseThrow().choice("lath").orElseThrow().alternates().containsKey(2));
    }

    @Test
    void theOwnersWordIsGivenTakenBackAndAnAcceptedAlternatesChoiceIsTheOneInForce() throws Exception {
        String before = file("job.yaml");
        OpenJob accepted = AlternateChanges.decide(job, 1, State.ACCEPTED);
        assertTrue(file("job.yaml").contains("taken: yes"));
        OpenJob changed = AlternateChanges.choose(accepted, Bid.AGREED, "W1", "lath", List.of("woven-17"));
        assertTrue(file("walls/W1.yaml").contains("lath: {accept: [metal-3.4], "), "the base bid's stays");
        assertEquals(List.of("woven-17"), changed.assembly().job().wall("W1").orElseThrow().choice("lath").orElseThrow()
            .accept());
        assertEquals(List.of("metal-3.4"), changed.as(Bid.BASE).assembly().job().wall("W1").orElseThrow().choice("lath").orElseThrow()
            .accept());
        AlternateChanges.decide(changed, 1, State.DECLINED);
        assertTrue(file("job.yaml").contains("taken: no"));
        AlternateChanges.decide(changed, 1, State.OFFERED);
        assertEquals(before, file("job.yaml"));
    }

    @Test
    void aRemovedAlternateLeavesTheFilesAsTheyWereBeforeIt() throws Exception {
        String wall = file("walls/W1.yaml");
        String list = file("job.yaml");
        OpenJob offered = AlternateChanges.offer(job, MAT);
        OpenJob joined = AlternateChanges.choose(offered, Bid.with(2), "W1", "lath", List.of("woven-17"));
        AlternateChanges.remove(joined, 2);
        assertEquals(wall, file("walls/W1.yaml"));
        assertEquals(list, file("job.yaml"));
    }

    @Test
    void aJobIsLookedAtAsTheBidsThatItHas() throws Exception {
        assertEquals(List.of("Base bid", "With Alternate No. 1, stainless lath (offered)"),
            Bid.all(job.job()).stream().map(bid -> bid.words(job.job())).toList());
        OpenJob accepted = AlternateChanges.decide(job, 1, State.ACCEPTED);
        assertEquals(List.of("Base bid with Alternate No. 1, accepted", "Base bid alone"),
            Bid.all(accepted.job()).stream().map(bid -> bid.words(accepted.job())).toList());
        assertEquals(Bid.AGREED, Bid.with(1).in(accepted.job()));
        assertEquals(job.details("W1"), accepted.as(Bid.BASE).details("W1"));
    }

    @Test
    void anAlternateStandsBesideTheBaseBidWithChoicesFindingsParagraphsAndQuantities() throws Exception {
        OpenJob offered = AlternateChanges.offer(job, new Offer("W1", "mat", List.of("filament-3-4"), 2, "thick mat", "", ""));
        AlternateBeside beside = AlternateBeside.of(offered, 2);
        assertEquals(List.of("W1"), beside.rows(Group.CHOICE).stream().map(Row::wall).toList());
        assertTrue(beside.rows(Group.FINDING).stream().anyMatch(row -> row.what().equals("lath_fastener.past-steel, W1")
            && row.base().isEmpty() && !row.with().startsWith("Alternate")), beside.rows(Group.FINDING).toString());
        String path = offered.section("04 73 00").paragraphs().stream().filter(found -> found.id().equals("mat.material")).findFirst()
            .orElseThrow().path();
        Row paragraph = beside.rows(Group.PARAGRAPH).stream().filter(row -> row.what().equals(path + ", 04 73 00")).findFirst()
            .orElseThrow();
        assertTrue(paragraph.with().contains("3/4 in") && !paragraph.base().contains("3/4 in"), paragraph.toString());
        assertFalse(paragraph.runs().isEmpty());
        beside.rows(Group.QUANTITY).forEach(row -> assertFalse(row.base().equals(row.with())));

        OpenJob accepted = AlternateChanges.decide(offered, 2, State.ACCEPTED);
        assertEquals(beside.rows(Group.FINDING), AlternateBeside.of(accepted, 2).rows(Group.FINDING), "the same before and after");
    }
}
