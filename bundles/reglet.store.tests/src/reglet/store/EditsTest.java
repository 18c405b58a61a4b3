package reglet.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Accepted;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Job;
import reglet.model.Option;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.UnusableInput;

class EditsTest {
    private static final Path ROOT = Path.of(System.getProperty("reglet.root", "../.."));

    @TempDir
    Path folder;

    @Test
    void aChoiceIsReplacedInItsPlaceWithTheRemarkBehindIt() throws UnusableInput {
        assertEquals("a: 1 # first\nlath: {accept: [rib], by: me}  # why\nb: 2\n",
            Edits.choose("a: 1 # first\nlath: {accept: [metal, wire], by: me}  # why\nb: 2\n", "lath", List.of("rib")));
    }

    @Test
    void aChoiceInBlockStyleIsReplacedToo() throws UnusableInput {
        assertEquals("lath:\n  accept: [rib]\n  by: me\n", Edits.choose("lath:\n  accept:\n    - metal\n    - wire\n  by: me\n", "lath",
            List.of("rib")));
    }

    @Test
    void howAProductIsSpecifiedAndItsAlternatesStayWhenOptionsAndValuesChange() throws UnusableInput {
        String rest = "specify: proprietary, product: A 1, maker: B, alternates: {1: {accept: [wire]}}}\n";
        String chosen = Edits.choose("lath: {accept: [metal], " + rest, "lath", List.of("rib"));
        assertEquals("lath: {accept: [rib], " + rest, chosen);
        assertTrue(Edits.set(chosen, "lath", "weight", "3 lb/yd2").contains("alternates: {1: {accept: [wire]}}"));
    }

    @Test
    void aNewChoiceIsAddedAtTheEnd() throws UnusableInput {
        assertEquals("title: A\nlath: {accept: [rib, metal]}\n", Edits.choose("title: A", "lath", List.of("rib", "metal")));
    }

    @Test
    void aValueIsAddedOrReplaced() throws UnusableInput {
        assertEquals("lath: {accept: [rib], weight: 3.4 lb/yd2}\n", Edits.set("lath: {accept: [rib]}\n", "lath", "weight", "3.4 lb/yd2"));
        assertEquals("lath: {accept: [rib], weight: 4 lb/yd2}\n", Edits.set("lath: {accept: [rib], weight: 3 lb/yd2}\n", "lath", "weight",
            "4 lb/yd2"));
    }

    @Test
    void windowsLineEndsStay() throws UnusableInput {
        assertEquals("title: A\r\nlath: {accept: [rib]}\r\nmat: {accept: [thin]}\r\n",
            Edits.choose("title: A\r\nlath: {accept: [rib]}\r\n", "mat", List.of("thin")));
    }

    @Test
    void charactersBeyondTheBasicPlaneDontShiftThePlace() throws UnusableInput {
        assertEquals("title: \"\uD83E\uDDF1 wall\"\nlath: {accept: [rib]}\n",
            Edits.choose("title: \"\uD83E\uDDF1 wall\"\nlath: {accept: [metal]}\n", "lath", List.of("rib")));
    }

    @Test
    void aChoiceIsTakenBackWithItsLines() throws UnusableInput {
        assertEquals("a: {accept: [x]}\nb: {accept: [y]}\n",
            Edits.remove("a: {accept: [x]}\nlath:\n  accept: [metal]\n  by: me\nb: {accept: [y]}\n", "lath"));
    }

    @Test
    void anAcceptedFindingIsAppendedAndReadsBack() throws Exception {
        String text = Edits.accept("# remarks stay\n", new Accepted("lath.light", "W1", "tested: \"fine\" #1", "A. Reviewer",
            Place.of("")));
        new SmallPack().with("job/accepted.yaml", text).write(folder);
        Job job = Jobs.read(folder.resolve("job"), Packs.read(folder.resolve("pack")).pack());
        assertEquals("tested: \"fine\" #1", job.accepted().get(0).because());
        assertTrue(text.startsWith("# remarks stay\n"));
    }

    @Test
    void aValueForAnUndecidedComponentIsRefused() {
        assertThrows(UnusableInput.class, () -> Edits.set("title: A\n", "lath", "weight", "3 lb/yd2"));
    }

    @Test
    void aFactIsReplacedOrAddedWhereItBelongs() throws UnusableInput {
        assertEquals("wall:\n  height: 26 ft\n  cavity: drained # why\n",
            Edits.state("wall:\n  height: 26 ft\n  cavity: none # why\n", List.of("wall", "cavity"), "drained"));
        assertEquals("wall:\n  cavity: drained\n  height: 26 ft\n",
            Edits.state("wall:\n  height: 26 ft\n", List.of("wall", "cavity"), "drained"));
        assertEquals("title: A\nwall: {cavity: drained}\n", Edits.state("title: A\n", List.of("wall", "cavity"), "drained"));
    }

    @Test
    void aFactOfWhatTheWallMeetsIsReplacedInItsPlace() throws UnusableInput {
        assertEquals("meets:\n  base-1: {as: base, clearance: 4 in, open: yes}  # paving\n  base-2: {as: base, clearance: 2 in}\n",
            Edits.state("meets:\n  base-1: {as: base, clearance: 2 in, open: yes}  # paving\n  base-2: {as: base, clearance: 2 in}\n",
                List.of("meets", "base-1", "clearance"), "4 in"));
        UnusableInput refused = assertThrows(UnusableInput.class, () -> Edits.state("meets:\n  base-2: {as: base}\n",
            List.of("meets", "base-1", "clearance"), "4 in"));
        assertTrue(refused.getMessage().contains("base-1"), refused.getMessage());
    }

    @Test
    void aValueIsTakenAwayWithItsComma() throws UnusableInput {
        List<String> weight = List.of("lath", "weight");
        assertEquals("lath: {accept: [rib], by: me}  # why\n",
            Edits.unstate("lath: {accept: [rib], weight: 4 lb/yd2, by: me}  # why\n", weight));
        assertEquals("lath: {accept: [rib]}\n", Edits.unstate("lath: {weight: 4 lb/yd2, accept: [rib]}\n", weight));
        assertEquals("lath:\n  accept: [rib]\nmat: {accept: [thin]}\n",
            Edits.unstate("lath:\n  accept: [rib]\n  weight: 4 lb/yd2\nmat: {accept: [thin]}\n", weight));
        assertEquals("lath: {accept: [rib]}\n", Edits.unstate("lath: {accept: [rib]}\n", weight));
    }

    @Test
    void everyChoiceOfTheSampleJobsCanBeChangedWithNothingElseTouched() throws Exception {
        Pack pack = Packs.read(ROOT.resolve("bundles/reglet.pack.adheredveneer/pack")).pack();
        int changed = 0;
        for (String name : List.of("harbour-clinic/walls/W1.yaml", "mesa-library/walls/W1.yaml", "orchard-row/walls/W1.yaml")) {
            String before = Files.readString(ROOT.resolve("sample-specs").resolve(name));
            for (Component component : pack.components()) {
                Option option = component.options().get(component.options().size() - 1);
                String after = Edits.choose(before, component.id(), List.of(option.id()));
                Path wall = folder.resolve("W1.yaml");
                Files.writeString(wall, after);
                Choice choice = wall(pack, after).choice(component.id()).orElseThrow();
                assertEquals(List.of(option.id()), choice.accept(), component.id());
                assertEquals(without(before, component.id()), without(after, component.id()), component.id());
                changed++;
            }
        }
        assertTrue(changed >= 60);
    }

    private reglet.model.WallType wall(Pack pack, String text) throws Exception {
        Path job = Files.createDirectories(folder.resolve("job/walls")).getParent();
        Files.writeString(job.resolve("walls/W1.yaml"), text);
        Files.writeString(job.resolve("job.yaml"), "format: 1\ntitle: T\npack: adheredveneer\nwalls: [W1]\n"
            + "alternates: [{number: 1, kind: alternate, title: A}]\n");
        return Jobs.read(job, pack).walls().get(0);
    }

    private static List<String> without(String text, String component) {
        return text.lines().filter(line -> !line.startsWith(component + ":")).toList();
    }
}
