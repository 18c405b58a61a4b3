package reglet.drafting;

import java.util.stream.Collectors;

import reglet.drafting.PdfSheets.Edges;
import reglet.model.Assembly;
import reglet.model.Comparison;
import reglet.model.Comparison.Row;
import reglet.model.Pack;
import reglet.model.SectionPlan;
import reglet.model.Submittal;

/** The comparison of a submittal as a PDF of its own. */
public final class ComparisonPages {
    private final PdfSheets sheets;
    private final Assembly assembly;
    private final Submittal submittal;
    private final Comparison comparison;

    private ComparisonPages(Assembly assembly, Submittal submittal, Comparison comparison, int of) {
        this.assembly = assembly;
        this.submittal = submittal;
        this.comparison = comparison;
        this.sheets = new PdfSheets("Comparison of submittal " + submittal.id(), PdfSheets.WIDE, new Edges(assembly.job().title(),
            "Section " + submittal.section(), "Comparison of submittal " + submittal.id(), sheet -> "page " + sheet + " of " + of));
    }

    public static byte[] of(Assembly assembly, Submittal submittal, Comparison comparison) {
        ComparisonPages trial = new ComparisonPages(assembly, submittal, comparison, 0);
        trial.write();
        ComparisonPages pages = new ComparisonPages(assembly, submittal, comparison, trial.sheets.sheet());
        pages.write();
        return pages.sheets.bytes();
    }

    private void write() {
        PdfText.title(sheets, "Comparison of submittal " + submittal.id(), "");
        String section = assembly.pack().plan(submittal.section()).map(SectionPlan::title).map(title -> ", " + title).orElse("");
        PdfText.text(sheets, assembly.job().title() + ". Section " + submittal.section() + section + "."
            + (submittal.from().isEmpty() ? "" : " From " + submittal.from()
            + (submittal.date().isEmpty() ? "." : ", " + submittal.date() + ".")));
        if (!assembly.job().note().isEmpty()) {
            PdfText.text(sheets, assembly.job().note());
        }
        PdfText.text(sheets, "This table sets values read from sheets against what the section requires. "
            + "It decides nothing: the reviewer does.");
        PdfText.strong(sheets, Results.counts(comparison).entrySet().stream().map(entry -> entry.getKey().text() + ": " + entry.getValue())
            .collect(Collectors.joining("    ")));
        sheets.space(8);
        PdfTable table = new PdfTable(sheets, true, 36, 92, 52, 92, 110, 110, 82, 66, 96)
            .head("Wall", "Product", "Paragraph", "Property", "Required", "Submitted", "Result", "Short by", "Note");
        comparison.rows().forEach(row -> row(table, row));
        table.write();
        PdfText.cautions(sheets, assembly.cautions().stream().map(Pack.Caution::text).toList());
    }

    private void row(PdfTable table, Row row) {
        table.row(row.requirement().wall(), Results.product(assembly, row.product()), Papers.paragraph(row.paragraph()),
            Results.property(assembly, row.requirement()), Phrases.of(row.requirement()), Results.submitted(row))
            .strong(Results.result(row)).row(Results.shortBy(row), row.note());
    }
}
