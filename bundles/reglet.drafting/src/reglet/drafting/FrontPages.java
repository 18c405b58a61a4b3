package reglet.drafting;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.Pack;
import reglet.model.Resubmittal;
import reglet.model.Review;
import reglet.model.Submittal;

/** What stands before a package's tables: transmittal with the statement of review, what changed since, the register items. */
final class FrontPages {
    private FrontPages() {
    }

    static void transmittal(PackageBook book) {
        Submittal submittal = book.submittal;
        if (book.volumes() > 1) {
            cover(book, 1);
        }
        PdfTable facts = new PdfTable(book.sheets, false, 20, 80);
        Stream.of(List.of("Job", book.assembly.job().title()), List.of("Section", submittal.section() + book.sectionTitle(", ")),
            List.of("From", submittal.from()), List.of("Date", submittal.date()), List.of("In place of", submittal.replaces()),
            List.of("Products", String.join("; ", book.products().stream().map(product -> Results.name(product)
                + Optional.ofNullable(submittal.encloses().colours().get(product.id())).map(colour -> ", " + colour).orElse("")).toList())),
            List.of("Alternates accepted", Taken.names(book.assembly)), List.of("Notes", submittal.notes()),
            List.of("Job note", book.assembly.job().note()))
            .filter(fact -> !fact.get(1).isEmpty()).forEach(fact -> facts.strong(fact.get(0)).add(fact.get(1)));
        facts.write();
        if (!book.contents.comparison().remarks().isEmpty()) {
            PdfText.heading(book.sheets, "Alternates");
            PdfText.bullets(book.sheets, book.contents.comparison().remarks());
        }
        PdfText.heading(book.sheets, "Statement of review");
        PdfText.text(book.sheets, book.ready() ? submittal.statement()
            : "Not made. The package cannot be sent before the contractor has reviewed it and says so.");
        PdfText.heading(book.sheets, "Deviations");
        if (submittal.deviations().isEmpty()) {
            PdfText.text(book.sheets, book.ready() ? "No deviations: the contractor lists none."
                : "None listed; without a statement of review that says nothing.");
        } else {
            PdfText.bullets(book.sheets, submittal.deviations());
        }
        long fallsShort = Results.counts(book.contents.comparison()).get(Result.FALLS_SHORT);
        if (fallsShort > 0) {
            PdfText.strong(book.sheets, "▼ The compliance table has " + fallsShort
                + (fallsShort == 1 ? " value that falls short." : " values that fall short."));
        }
        PdfText.cautions(book.sheets, book.assembly.cautions().stream().map(Pack.Caution::text).toList());
    }

    /** The line that a file of several begins with. */
    static void cover(PackageBook book, int volume) {
        PdfText.strong(book.sheets, "Part " + volume + " of " + book.volumes() + " of submittal " + book.submittal.id() + ", "
            + book.assembly.job().title() + ". Each part lists the contents of all.");
        book.sheets.space(8);
    }

    static void register(PackageBook book) {
        PdfTable table = new PdfTable(book.sheets, true, 54, 120, 80, 90, 124).head("Paragraph", "Item", "Kind", "Sends", "Id");
        book.contents.items().forEach(item -> table.row(Papers.paragraph(item.paragraph()), item.item() + item.under().map(under -> "\n"
            + under.text()).orElse(""), item.kind().text(), item.sends(), item.id()));
        table.write();
        if (book.contents.items().isEmpty()) {
            PdfText.text(book.sheets, "The submittal names no item of the register.");
        }
    }

    static void since(PackageBook book, Resubmittal since) {
        PdfText.text(book.sheets, "This submittal is handed in again in place of " + since.last()
            + ". Both are set against what the job requires today.");
        book.contents.last().flatMap(Submittal::review).ifPresent(review -> answer(book, review));
        List<Resubmittal.Change> changes = since.changes().stream().filter(change -> change.kind() != Resubmittal.Kind.SAME).toList();
        book.sheets.space(8);
        if (!changes.isEmpty()) {
            PdfTable table = new PdfTable(book.sheets, true, 52, 108, 118, 118, 72)
                .head("Paragraph", "Wall, property", "In " + since.last(), "Now", "Became");
            for (Resubmittal.Change change : changes) {
                Row row = change.after().or(change::before).orElseThrow();
                table.row(Papers.paragraph(row.paragraph()), change.wall() + ", " + Results.property(book.assembly, row.requirement()),
                    told(book, change.before()), told(book, change.after())).strong(change.kind().text());
            }
            table.write();
        }
        PdfText.text(book.sheets, since.changes().size() - changes.size() + " values are the same.");
    }

    private static void answer(PackageBook book, Review review) {
        if (!review.action().isEmpty()) {
            PdfText.text(book.sheets, "It was answered: " + review.action() + (review.by().isEmpty() ? "" : ", by " + review.by()) + ".");
        }
        if (!review.remark().isEmpty()) {
            PdfText.text(book.sheets, "Remark: " + review.remark());
        }
        PdfText.bullets(book.sheets, review.notes().entrySet().stream().map(note -> note.getKey() + ": "
            + note.getValue().text()).toList());
    }

    private static String told(PackageBook book, Optional<Row> row) {
        return row.map(found -> (found.product().isEmpty() ? "" : Results.product(book.assembly, found.product()) + "\n")
            + Results.submitted(found) + "\n" + Results.result(found)).orElse("nothing");
    }
}
