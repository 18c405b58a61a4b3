package reglet.drafting;

import java.util.List;

import reglet.drafting.SubmittalPages.Sheet;
import reglet.drafting.Volumes.Run;
import reglet.model.Enclosures.Paper;
import reglet.model.ProductData;

/** What stands before each sheet of a package: how many pages follow, whose products they show, what is marked on them. */
final class DividerPages {
    private DividerPages() {
    }

    /** @param pieces where the sheet's pages are */
    static void write(PackageBook book, Sheet sheet, List<Run> pieces) {
        PdfText.text(book.sheets, "Sheet: " + sheet.id());
        if (!sheet.problem().isEmpty()) {
            PdfText.strong(book.sheets, "■ Not bound in: " + sheet.problem());
        } else if (pieces.size() > 1) {
            PdfText.strong(book.sheets, "This sheet alone is larger than a part may be, so that its pages are divided: "
                + String.join("; ", pieces.stream().map(run -> "pages " + run.firstPage() + " to " + (run.firstPage() + run.pages() - 1)
                + " in part " + run.volume()).toList()) + ".");
        } else {
            PdfText.text(book.sheets, sheet.pages() == 1 ? "One page follows." : sheet.pages() + " pages follow.");
        }
        List<ProductData> products = book.products().stream().filter(product -> product.sheet().equals(sheet.id())).toList();
        if (!products.isEmpty()) {
            PdfText.heading(book.sheets, "Products on this sheet");
            PdfText.bullets(book.sheets, products.stream().map(product -> chosen(book, sheet, product)).toList());
        }
        List<Paper> papers = book.submittal.encloses().papers().stream().filter(paper -> paper.file().equals(sheet.id())).toList();
        if (!papers.isEmpty()) {
            PdfText.heading(book.sheets, "What it is");
            PdfText.bullets(book.sheets, papers.stream().map(paper -> paper.kind().text()
                + book.assembly.pack().component(paper.component()).map(component -> " for " + component.title()).orElse("")).toList());
        }
        if (!book.marks.on(sheet.id()).isEmpty()) {
            PdfText.text(book.sheets, "Marked on the sheet by the contractor: the model and colour chosen, where their words were "
                + "found, and each value that the compliance table cites, with its number in the margin.");
        }
    }

    /** A product with where its model and colour are marked, or that they were not found. */
    private static String chosen(PackageBook book, Sheet sheet, ProductData product) {
        StringBuilder line = new StringBuilder(Results.name(product));
        String colour = book.submittal.encloses().colours().getOrDefault(product.id(), "");
        if (!colour.isEmpty()) {
            line.append(", ").append(colour);
        }
        for (String word : sheet.pages() > 0 ? List.of(product.model(), colour) : List.<String>of()) {
            if (!word.isEmpty() && book.contents.found().stream().noneMatch(found -> found.sheet().equals(sheet.id())
                && found.words().equals(word))) {
                line.append("; \"").append(word).append("\" was not found on the sheet");
            }
        }
        return line.toString();
    }
}
