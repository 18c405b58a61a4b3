package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import javax.xml.parsers.DocumentBuilderFactory;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

import reglet.drafting.SubmittalPages.Contents;
import reglet.drafting.SubmittalPages.Pages;
import reglet.model.Basis;
import reglet.model.Calculated;
import reglet.model.Chart;
import reglet.model.Known;
import reglet.model.Quantity;
import reglet.model.Unit;
import reglet.model.Worksheet;

/** Worksheets on paper, their charts and the tables of quantities. */
class WorksheetPagesTest {
    private static final Basis BASIS = new Basis("ASCE 7", "2016", "26.10.2", Known.READ);
    private static final Chart CHART = new Chart("Load across a gap", new Chart.Axis("gap", Unit.IN), new Chart.Axis("load", Unit.LBF),
        List.of(new Chart.Curve("free to turn", List.of(new Chart.Point(0, 100, "III"), new Chart.Point(0.0254, 50, "IV"))),
            new Chart.Curve("held upright", List.of(new Chart.Point(0, 120, "III"), new Chart.Point(0.0254, 70, "III")))));

    private static Worksheet worksheet(double margin) {
        Map<String, Worksheet.Input> inputs = new LinkedHashMap<>();
        inputs.put("speed", new Worksheet.Input("basic wind speed", Quantity.parse("115 mph").orElseThrow(), "job.yaml"));
        Map<String, Worksheet.Amount> results = new LinkedHashMap<>();
        results.put("pressure", new Worksheet.Amount("suction, strength", Unit.PSF.toSi(31.85), Unit.PSF));
        results.put("lath", new Worksheet.Amount("sheets of lath, 27 by 96 in", 24, Unit.ONE));
        return new Worksheet("wind", "Wind at the corners", "lath", "W1", "", inputs,
            List.of(new Worksheet.Step("qh", "velocity pressure", "qh = 0.00256 Kz V²", "0.00256 × 0.7 × (115 mph)²",
                new Worksheet.Amount("velocity pressure", Unit.PSF.toSi(20.16), Unit.PSF), List.of(BASIS))), results,
            OptionalDouble.of(margin), List.of("The building is enclosed."), List.of("Zone 5 governs along the corners."));
    }

    private static String text(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void aReaderFindsInputsOriginsFormulasNumbersBasisMarginAndAssumptions() throws Exception {
        String page = text(WorksheetPages.of(PackageSample.contents("Reviewed.").assembly(),
            List.of(new Calculated(worksheet(0.9), List.of(), List.of()))));
        for (String said : List.of("Wind at the corners", "Wall type W1", "basic wind speed", "115 mph", "job.yaml", "qh = 0.00256 Kz V²",
            "0.00256 × 0.7 × (115 mph)²", "20.16 psf", "31.85 psf", "1520 Pa", "Margin 0.90: less is there than is needed.",
            "1 ASCE 7 2016, 26.10.2 (read)", "The building is enclosed.", "Zone 5 governs along the corners.")) {
            assertTrue(page.contains(said), said + " in " + page);
        }
    }

    @Test
    void aPackageCarriesTheWorksheetsItIsGivenAndListsThem() throws Exception {
        Contents sample = PackageSample.contents("Reviewed.");
        Pages with = SubmittalPages.of(new Contents(sample.assembly(), sample.submittal(), sample.items(), sample.comparison(),
            sample.sheets(), List.of(new Calculated(worksheet(1.2), List.of(CHART), List.of())), List.of()));
        assertTrue(with.parts().stream().anyMatch(part -> part.title().equals("Worksheets") && part.pages() >= 1));
        assertTrue(text(with.pdf()).contains("Margin 1.20: what is there over what is needed."));
        assertFalse(SubmittalPages.of(sample).parts().stream().anyMatch(part -> part.title().equals("Worksheets")));
    }

    @Test
    void aChartIsDrawnInLinesAndItsCurvesDifferByTheirDashes() throws Exception {
        String svg = Plot.svg(CHART);
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        assertFalse(svg.contains("<image"), "vectors, no picture");
        for (String said : List.of("free to turn", "held upright", "gap, in", "load, lbf", "Load across a gap", "III", "IV")) {
            assertTrue(svg.contains(said), said);
        }
        assertTrue(svg.contains("stroke-dasharray:7.0,3.0") || svg.contains("stroke-dasharray:7,3"), "the second curve is dashed");
        assertEquals(svg, Plot.svg(CHART));
    }

    @Test
    void theSameWorksheetsGiveTheSameBytes() throws Exception {
        List<Calculated> worksheets = List.of(new Calculated(worksheet(1.2), List.of(CHART), List.of()));
        assertArrayEquals(WorksheetPages.of(PackageSample.contents("Reviewed.").assembly(), worksheets),
            WorksheetPages.of(PackageSample.contents("Reviewed.").assembly(), worksheets));
        assertArrayEquals(Quantities.xlsx(List.of(worksheet(1))), Quantities.xlsx(List.of(worksheet(1))));
    }

    @Test
    void quantitiesComeAsCsvWithTheUnitBesideTheNumber() {
        String csv = Quantities.csv(List.of(worksheet(1)));
        assertEquals(List.of("Wall,Item,Amount,Unit", "W1,\"suction, strength\",31.85,psf", "W1,\"sheets of lath, 27 by 96 in\",24,each"),
            List.of(csv.split("\r\n")));
        assertTrue(csv.endsWith("\r\n"), "RFC 4180");
    }

    @Test
    void quantitiesComeAsAWorkbookWhoseNumbersAreNumbers() throws Exception {
        String sheet = "";
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(Quantities.xlsx(List.of(worksheet(1)))))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().equals("xl/worksheets/sheet1.xml")) {
                    sheet = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
                }
            }
        }
        // ECMA-376, part 1, 18.3.1.4: a cell of type n holds a number
        assertTrue(sheet.matches("(?s).*<c r=\"C2\" t=\"n\"[^>]*><v>31.85</v></c>.*"), sheet);
        assertTrue(sheet.matches("(?s).*<c r=\"C3\" t=\"n\"[^>]*><v>24.0</v></c>.*"), sheet);
    }
}
