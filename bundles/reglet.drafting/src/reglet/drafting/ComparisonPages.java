package reglet.drafting;

import java.util.List;
import java.util.stream.Collectors;

import reglet.drafting.PdfSheets.Edges;
import reglet.model.Assembly;
import reglet.model.Comparison;
import reglet.model.Comparison.Row;
import reglet.model.ConditionCheck;
import reglet.model.Pack;
import reglet.model.ReportCheck;
import reglet.model.SectionPlan;
import reglet.model.SheetReading.Condition;
import reglet.model.Submittal;

/** The comparison of a submittal as a PDF of its own. */
public final class ComparisonPages {
    private final PdfSheets sheets;
    private final Assembly assembly;
    private final Submittal submittal;
    private final Comparison comparison;
    private final List<ReportCheck> reports;

    private ComparisonPages(Assembly assembly, Submittal submittal, Comparison comparison, List<ReportCheck> reports, int of) {
        this.assembly = assembly;
        this.submittal = submittal;
        this.comparison = comparison;
        this.reports = reports;
        this.sheets = new PdfSheets("Comparison of submittal " + submittal.id(), PdfSheets.WIDE, new Edges(assembly.job().title(),
            "Section " + submittal.section(), "Comparison of submittal " + submittal.id(), sheet -> "page " + sheet + " of " + of));
    }

    /** @param reports of the products submitted; empty for none */
    public static byte[] of(Assembly assembly, Submittal submittal, Comparison comparison, List<ReportCheck> reports) {
        ComparisonPages trial = new ComparisonPages(assembly, submittal, comparison, reports, 0);
        trial.write();
        ComparisonPages pages = new ComparisonPages(assembly, submittal, comparison, reports, trial.sheets.sheet());
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
        if (!Taken.names(assembly).isEmpty()) {
            PdfText.text(sheets, "Alternates accepted: " + Taken.names(assembly) + ".");
        }
        PdfText.bullets(sheets, comparison.remarks());
        sheets.space(8);
        PdfTable table = new PdfTable(sheets, true, 36, 92, 52, 92, 110, 110, 82, 66, 96)
            .head("Wall", "Product", "Paragraph", "Property", "Required", "Submitted", "Result", "Short by", "Note");
        comparison.rows().forEach(row -> row(table, row));
        table.write();
        reports.forEach(this::report);
        PdfText.cautions(sheets, assembly.cautions().stream().map(Pack.Caution::text).toList());
    }

    /** A report with its conditions of use: what the job requires of them, or that a person has to check. */
    private void report(ReportCheck check) {
        sheets.space(12);
        PdfText.strong(sheets, "Evaluation report of " + Results.product(assembly, check.product()));
        PdfText.text(sheets, (check.ended() ? "▼ " : "") + ReportWords.state(check));
        if (check.report().conditions().isEmpty()) {
            return;
        }
        sheets.space(8);
        PdfTable table = new PdfTable(sheets, true, 36, 230, 40, 130, 130, 82, 88)
            .head("Wall", "Condition of use", "Page", "Asks for", "The job requires", "Result", "Note");
        for (Condition condition : check.report().conditions()) {
            String words = (condition.number() + " " + condition.text()).strip();
            String page = Integer.toString(condition.page());
            for (ConditionCheck asked : check.of(condition)) {
                table.row(asked.wall(), words, page, Results.label(assembly, asked.limit().property()) + " " + asked.limit().compare()
                    .map(sense -> sense.text() + " ").orElse("") + asked.limit().value().text(),
                    asked.requirement().map(Phrases::of).orElse("nothing"))
                    .strong(Results.shape(asked.result()) + " " + asked.result().text()).row(asked.note());
            }
            if (check.byAPerson().contains(condition)) {
                table.row("", words, page, "", "").strong("□ a person has to check").row("");
            }
        }
        table.write();
    }

    private void row(PdfTable table, Row row) {
        table.row(row.requirement().wall(), Results.product(assembly, row.product()), Papers.paragraph(row.paragraph()),
            Results.property(assembly, row.requirement()), Phrases.of(row.requirement()), Results.submitted(row))
            .strong(Results.result(row)).row(Results.shortBy(row), row.note());
    }
}
