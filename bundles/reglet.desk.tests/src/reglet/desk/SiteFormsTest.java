package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.drafting.Form;
import reglet.drafting.SiteForms;
import reglet.model.Worksheet;

/** The forms for the site follow the job's choices. */
class SiteFormsTest {
    @TempDir
    Path folder;

    private static List<Form> forms(OpenJob job) throws Exception {
        List<Worksheet> quantities = job.worksheets().made().stream().filter(made -> made.name().equals("takeoff")).toList();
        return SiteForms.of(job.assembly(), job.register(), quantities, job::explain);
    }

    private static Form form(OpenJob job, String id) throws Exception {
        return forms(job).stream().filter(form -> form.id().equals(id)).findFirst().orElseThrow();
    }

    private static String text(Form form) {
        return String.join("\n", form.grids().stream().flatMap(grid -> grid.rows().stream()).map(row -> String.join(" | ", row)).toList());
    }

    @Test
    void everyHoldPointOfThePackHasAFormWhereItsComponentIsInAWall() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        List<String> expected = Stream.concat(job.pack().holdPoints().stream().map(point -> "hold-" + point.id().replace('_', '-')),
            Stream.of("closeout", "extra-stock", "touching")).toList();
        assertEquals(expected, forms(job).stream().map(Form::id).toList());
        assertEquals(List.of("mockup", "barrier", "flashing", "lath", "scratch_coat", "units", "sealant"),
            job.pack().holdPoints().stream().map(point -> point.id()).toList());
        job.pack().holdPoints().forEach(point -> point.looks().forEach(look -> assertTrue(!look.basis().isEmpty()
            && !look.often().isEmpty(),
            point.id() + ": " + look.text())));
    }

    @Test
    void aRequiredValueOnAFormIsTheOneOfTheChoice() throws Exception {
        assertTrue(text(form(Samples.open("harbour-clinic"), "hold-scratch-coat")).contains("thickness: at least 1/2 in (12.7 mm)"));
        Path job = Samples.copy("harbour-clinic", folder.resolve("job"));
        for (String wall : List.of("W1", "W2")) {
            Path file = job.resolve("walls/" + wall + ".yaml");
            Files.writeString(file, Files.readString(file).replaceFirst("(scratch_coat: \\{accept: \\[[^]]*\\])", "$1, thickness: 5/8 in"));
        }
        assertTrue(text(form(Samples.desk().open(job), "hold-scratch-coat")).contains("thickness: at least 5/8 in"),
            text(form(Samples.desk().open(job), "hold-scratch-coat")));
    }

    /** By hand: 2 % of 2014 ft² are 40.28 ft², five boxes of 10 ft²; of 12 ft² four; 2 % of 682 ft² are 13.64 ft², two boxes. */
    @Test
    void extraStockIsAShareOfWhatIsOrderedInWholePackages() throws Exception {
        List<List<String>> rows = form(Samples.open("harbour-clinic"), "extra-stock").grids().get(0).rows();
        assertEquals(List.of("flat units", "manufactured ledge stone with corner units", "W1 2014 ft²", "2%", "40.28 ft²", "10 ft²", "5"),
            rows.get(0).subList(0, 7));
        assertEquals(List.of("W2 682 ft²", "2%", "13.64 ft²", "10 ft²", "2"), rows.get(1).subList(2, 7));
        Path job = Samples.copy("harbour-clinic", folder.resolve("job"));
        Path file = job.resolve("register.yaml");
        Files.writeString(file, Files.readString(file) + "packages: {units.flat: 12 ft2}\n");
        assertEquals(List.of("12 ft²", "4"), form(Samples.desk().open(job), "extra-stock").grids().get(0).rows().get(0).subList(5, 7));
    }

    @Test
    void withoutQuantitiesTheFormSaysSoAndLeavesRoom() throws Exception {
        Form form = form(Samples.open("orchard-row"), "extra-stock");
        assertTrue(form.texts().contains("■ Without quantities, and not counted here: W1."), form.texts().toString());
        assertEquals("", text(form).replaceAll("[|\\s\u00A0]", ""));
    }

    @Test
    void touchingMaterialsAreToldWithWhatTheRulesKnowAndRoomForTheMakers() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        Form form = form(job, "touching");
        String list = text(form);
        assertTrue(list.contains("sealant.units: holds"), list);
        assertTrue(form.grids().get(1).rows().stream().allMatch(row -> row.get(7).isEmpty() && row.get(8).isEmpty()), "blanks to confirm");
        // two plies: the inner one doesn't touch the mat
        assertTrue(form.grids().get(1).rows().stream().noneMatch(row -> row.get(2).startsWith("Inner barrier ply")
            && row.get(3).startsWith("Drainage")), list);
        OpenJob bad = job.choosing("W1", "metal_flashing", List.of(bare(job)));
        assertTrue(text(form(bad, "touching")).contains("metal_flashing.cement: ■ conflict"), text(form(bad, "touching")));
    }

    private static String bare(OpenJob job) {
        return job.pack().component("metal_flashing").orElseThrow().options().stream()
            .filter(option -> String.valueOf(option.values().get("metal")).contains("bare aluminium")).findFirst().orElseThrow().id();
    }
}
