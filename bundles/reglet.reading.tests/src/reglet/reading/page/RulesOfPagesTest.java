package reglet.reading.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.reading.page.SheetPage.Rule;

/** The straight lines that part what stands on a page. */
class RulesOfPagesTest {
    @TempDir
    Path folder;

    @Test
    void theRulesOfCellsThatTouchAreOneRuleOfTheTable() {
        List<Rule> joined = Rules.joined(List.of(new Rule(230, 389.7, 343, 389.7), new Rule(49, 389.7, 231, 389.7), new Rule(400, 389.7,
            560,
            389.7), new Rule(49, 420, 231, 420)));
        assertEquals(List.of(new Rule(49, 389.7, 343, 389.7), new Rule(400, 389.7, 560, 389.7), new Rule(49, 420, 231, 420)), joined);
    }

    @Test
    void ofABandOfColorThatIsClippedOutOfThePageTheEdgesThatAreSeenAreRules() throws Exception {
        assertBand("50 400 500 16 re W n 0 0 612 792 re f");
    }

    @Test
    void aBandThatIsPaintedAndClippedToAtOnceBoundsWhatIsPaintedNext() throws Exception {
        assertBand("50 400 500 16 re W f 0 0 612 792 re f");
    }

    /** Four sides of the band alone, from the upper left, in points. */
    private void assertBand(String drawing) throws Exception {
        Path file = folder.resolve("band.pdf");
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(PDRectangle.LETTER);
            document.addPage(page);
            PDStream content = new PDStream(document, new ByteArrayInputStream(drawing.getBytes(StandardCharsets.US_ASCII)));
            page.setContents(content);
            document.save(file.toFile());
        }
        List<Rule> rules = new ArrayList<>();
        Pages.read(file, part -> rules.addAll(part.rules()));
        assertTrue(rules.contains(new Rule(50, 392, 550, 392)), rules.toString());
        assertTrue(rules.contains(new Rule(50, 376, 550, 376)), rules.toString());
        assertTrue(rules.stream().allMatch(rule -> Math.max(rule.x1(), rule.x2()) <= 550 && Math.max(rule.y1(), rule.y2()) <= 392),
            rules.toString());
    }
}
