package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.Finding;
import reglet.model.SectionDocument.Paragraph;

/** The library with three alternates, of which 2 and 3 can't stand together, and 1 and 3 choose differently for one component. */
abstract class ThreeAlternates {
    static final String SECTION = "04 73 00";

    @TempDir
    Path folder;

    @BeforeEach
    void threeAlternates() throws Exception {
        Samples.copy("mesa-library", folder);
        change("job.yaml", "alternates:\n", "alternates:\n  - {number: 2, title: thicker mat, kind: alternate}\n"
            + "  - {number: 3, title: shorter screws, kind: alternate}\n");
        change("walls/W1.yaml", "mat: {accept: [filament-1-4], by: specifier}",
            "mat: {accept: [filament-1-4], by: specifier, alternates: {2: {accept: [filament-3-8]}}}");
        change("walls/W1.yaml", "alternates: {1: {accept: [screw-steel-stainless], by: specifier}}",
            "alternates: {1: {accept: [screw-steel-stainless], by: specifier}, 3: {accept: [screw-steel-1-1-4]}}");
    }

    void change(String file, String old, String text) throws Exception {
        String before = Files.readString(folder.resolve(file));
        assertTrue(before.contains(old), old);
        Files.writeString(folder.resolve(file), before.replace(old, text));
    }

    /** Writes the owner's word on an alternate. */
    void taken(int number, String word) throws Exception {
        change("job.yaml", "{number: " + number + ", " + (number == 1 ? "kind: alternate, title" : "title"),
            "{number: " + number + ", taken: " + word + ", " + (number == 1 ? "kind: alternate, title" : "title"));
    }

    OpenJob open() throws Exception {
        return Samples.desk().open(folder);
    }

    static String paragraph(OpenJob job, String id) throws Exception {
        return job.section(SECTION).paragraphs().stream().filter(paragraph -> paragraph.id().equals(id)).map(Paragraph::plain).findFirst()
            .orElse("");
    }

    static List<Finding> brought(OpenJob job, Integer... alternates) {
        return job.checked().findings().stream().filter(finding -> finding.alternates().equals(List.of(alternates))).toList();
    }
}
