package reglet.drafting;

import java.util.Optional;

import reglet.drafting.Markings.Mark;
import reglet.drafting.SubmittalPages.Sheet;
import reglet.model.Comparison.Row;
import reglet.model.SheetValue;

/** Each requirement, what the product's sheet states, and where: the page, and the number in its margin. */
final class CompliancePages {
    private CompliancePages() {
    }

    static void write(PackageBook book) {
        PdfText.text(book.sheets, "The contractor sets what the sheets state against what the section requires. The reviewer decides. "
            + "The last column is the number that stands in the sheet's margin beside the value.");
        book.sheets.space(8);
        PdfTable table = new PdfTable(book.sheets, true, 52, 88, 96, 96, 64, 44, 28)
            .head("Paragraph", "Wall, property", "Required", "Submitted", "Result", "Page", "Mark");
        book.contents.comparison().rows().forEach(row -> row(book, table, row));
        table.write();
    }

    private static void row(PackageBook book, PdfTable table, Row row) {
        table.row(Papers.paragraph(row.paragraph()), row.requirement().wall() + ", "
            + Results.property(book.assembly, row.requirement()),
            Phrases.of(row.requirement()) + Taken.mark(book.assembly, row.requirement()),
            Results.submitted(row)).strong(Results.result(row));
        where(book, table, row);
    }

    /** Two cells: the page of the package where the value stands, and its number there; both lead to the very place. */
    static void where(PackageBook book, PdfTable table, Row row) {
        Optional<Sheet> sheet = book.sheetOf(row.product());
        Optional<Integer> page = row.submitted().map(SheetValue::page).filter(number -> sheet.isPresent() && number >= 1
            && number <= sheet.get().pages());
        if (page.isEmpty()) {
            table.row("none", "");
            return;
        }
        Optional<Mark> mark = book.marks.of(row);
        PdfTable.Placed link = book.link(sheet.get().id(), page.get(), mark.map(Mark::box));
        table.placed(book.page(sheet.get().id(), page.get()), link).placed(mark.map(Mark::number).orElse(""), link);
    }
}
