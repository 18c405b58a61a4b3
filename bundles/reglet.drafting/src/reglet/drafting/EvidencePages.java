package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import reglet.drafting.SubmittalPages.Sheet;
import reglet.model.Calculated;
import reglet.model.Comparison.Result;
import reglet.model.Enclosures.Paper;
import reglet.model.Evidence;
import reglet.model.RegisterItem;
import reglet.model.Requirement;
import reglet.model.ShownUnits;
import reglet.model.Worksheet;

/** What was asked for and is not in a package, with who asks; and what calculations by others have to satisfy. */
final class EvidencePages {
    private static final Set<String> ON_PAPER = Set.of(Evidence.EVALUATION_REPORT.text(), Evidence.TEST_REPORT.text(),
        Evidence.CERTIFICATE.text(), Evidence.COMPATIBILITY.text(), Evidence.CALCULATION.text(), Evidence.SHOP_DRAWING.text());

    private EvidencePages() {
    }

    /**
     * Something that is missing.
     *
     * @param what      a sentence
     * @param paragraph who asks for it; ""
     * @param sent      what would show it
     */
    record Missing(String what, String paragraph, String sent) {
    }

    static List<Missing> missing(PackageBook book) {
        List<Missing> missing = new ArrayList<>();
        for (Sheet sheet : book.contents.sheets()) {
            if (!sheet.problem().isEmpty()) {
                missing.add(new Missing("Sheet " + sheet.id() + " (" + sheet.title() + "): " + sheet.problem(), "", "a sheet that opens"));
            }
        }
        book.products().stream().filter(product -> product.sheet().isEmpty())
            .forEach(product -> missing.add(new Missing(Results.name(product) + ": no sheet is named for this product.", "",
                "product data")));
        for (RegisterItem item : book.contents.items()) {
            if (item.isDue() && !isHere(book, item)) {
                missing.add(new Missing(item.item() + ": " + item.sends() + " is asked for and is not enclosed.", item.paragraph(),
                    item.sends()));
            }
        }
        book.contents.comparison().rows().stream().filter(row -> row.result() == Result.NOT_SHOWN)
            .map(row -> new Missing(Results.product(book.assembly, row.product()) + ": no value for "
                + Results.property(book.assembly, row.requirement()) + Taken.mark(book.assembly, row.requirement()) + " ("
                + Phrases.of(row.requirement())
                + (row.paragraph().isEmpty() ? "" : ", paragraph " + row.paragraph()) + ").", row.paragraph(),
                row.requirement().property().evidence().text())).distinct().forEach(missing::add);
        return missing;
    }

    /** Whether what an item asks for is in the package; samples and the like travel otherwise. */
    private static boolean isHere(PackageBook book, RegisterItem item) {
        if (item.sends().equals(Evidence.PRODUCT_DATA.text())) {
            return book.products().stream().anyMatch(product -> product.component().equals(item.component()));
        }
        return !ON_PAPER.contains(item.sends()) || paper(book, item).isPresent();
    }

    private static Optional<Paper> paper(PackageBook book, RegisterItem item) {
        return book.submittal.encloses().papers().stream().filter(paper -> paper.kind().text().equals(item.sends())
            && (paper.component().isEmpty() || paper.component().equals(item.component()))).findFirst();
    }

    static void write(PackageBook book, List<Missing> missing) {
        PdfText.text(book.sheets, "The following was asked for and is not in this package.");
        book.sheets.space(8);
        PdfTable table = new PdfTable(book.sheets, true, 54, 304, 110).head("Asked by", "What is missing", "What would show it");
        missing.forEach(one -> table.row(one.paragraph().isEmpty() ? "" : "paragraph " + one.paragraph(), one.what(), one.sent()));
        table.write();
    }

    /** Items whose design is delegated. */
    static List<RegisterItem> delegated(PackageBook book) {
        return book.contents.items().stream().filter(RegisterItem::isDue).filter(item -> item.sort() == RegisterItem.Sort.DELEGATED
            || item.sends().equals(Evidence.CALCULATION.text())).toList();
    }

    static void criteria(PackageBook book, RegisterItem item) {
        PdfText.text(book.sheets, "Paragraph " + item.paragraph() + " of section " + item.section() + " asks for: " + item.item() + ", "
            + item.sends() + ". This part of the design is delegated to the contractor.");
        Optional<Paper> paper = paper(book, item);
        if (paper.isPresent()) {
            PdfText.text(book.sheets, "Enclosed: " + paper.get().title() + ", " + (book.volumes() == 1 ? "page " : "")
                + book.page(paper.get().file(), 1) + ".");
        } else {
            PdfText.strong(book.sheets, "■ Not enclosed. Calculations sealed by a professional licensed where the building stands are asked for.");
        }
        PdfText.heading(book.sheets, "What they have to satisfy");
        PdfTable table = new PdfTable(book.sheets, true, 40, 210, 218).head("Wall", "Criterion", "Value");
        for (Requirement requirement : book.assembly.requirements()) {
            if (requirement.component().equals(item.component()) && !requirement.asksNothing()) {
                table.row(requirement.wall(), Results.property(book.assembly, requirement), Phrases.of(requirement)
                    + Taken.mark(book.assembly, requirement));
            }
        }
        List<Worksheet> sheets = book.contents.criteria().stream().map(Calculated::worksheet)
            .filter(worksheet -> worksheet.component().equals(item.component())).toList();
        for (Worksheet worksheet : sheets) {
            worksheet.inputs().values().forEach(input -> table.row(worksheet.wall(), worksheet.title() + ": " + input.label(),
                input.value().text()));
            worksheet.results().values().forEach(amount -> table.row(worksheet.wall(), worksheet.title() + ": " + amount.label())
                .strong(ShownUnits.BOTH.text(amount.quantity())));
        }
        table.write();
        if (!sheets.isEmpty()) {
            PdfText.text(book.sheets, "Loads and results come from the design's own worksheets, which are not sealed. "
                + "Whoever seals the calculations checks them and answers for the loads.");
        }
    }
}
