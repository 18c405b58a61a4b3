package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.Component;
import reglet.model.Enclosures.Substitution;
import reglet.model.ProductData;

/**
 * A form for each product that falls short or that a substitution is asked for, and one for each deviation that no product of
 * these stands for: what is required and what is proposed side by side, what it changes, and blanks where nobody said yet.
 */
final class SubstitutionPages {
    static final String ID = "substitution/";
    private static final String BLANK = " \n \n ";

    private SubstitutionPages() {
    }

    /** A form. {@code product} is "" for a deviation. */
    record Form(String id, String title, String product, String deviation) {
    }

    static List<Form> of(PackageBook book) {
        Set<String> products = new LinkedHashSet<>();
        for (String product : book.submittal.products()) {
            boolean shorter = book.contents.comparison().rows().stream().anyMatch(row -> row.product().equals(product)
                && row.result() == Result.FALLS_SHORT);
            if (shorter || book.submittal.encloses().substitution(product).isPresent()) {
                products.add(product);
            }
        }
        List<Form> forms = new ArrayList<>();
        for (String product : products) {
            forms.add(new Form(ID + product, "Substitution asked for: " + Results.product(book.assembly, product), product, ""));
        }
        if (products.isEmpty()) {
            for (String deviation : book.submittal.deviations()) {
                forms.add(new Form(ID + "deviation/" + (forms.size() + 1), "Deviation " + (forms.size() + 1), "", deviation));
            }
        }
        return forms;
    }

    static void write(PackageBook book, Form form) {
        Optional<Substitution> asked = book.submittal.encloses().substitution(form.product());
        if (form.product().isEmpty()) {
            PdfText.text(book.sheets, form.deviation());
        } else {
            inPlaceOf(book, form, asked);
            table(book, form);
            if (!book.submittal.deviations().isEmpty()) {
                PdfText.heading(book.sheets, "Deviations that the contractor lists");
                PdfText.bullets(book.sheets, book.submittal.deviations());
            }
        }
        PdfText.heading(book.sheets, "What it changes");
        PdfTable effects = new PdfTable(book.sheets, true, 28, 72);
        effect(effects, "Cost", asked.map(Substitution::cost).orElse(""));
        effect(effects, "Time", asked.map(Substitution::time).orElse(""));
        effect(effects, "Work of others", asked.map(Substitution::work).orElse(""));
        effect(effects, "Reason", asked.map(Substitution::reason).orElse(""));
        effects.write();
        PdfText.heading(book.sheets, "Asked and answered");
        PdfTable names = new PdfTable(book.sheets, true, 28, 44, 28).head("", "Name", "Date");
        for (String who : List.of("Asked by", "Answered by")) {
            names.strong(who).row(BLANK, BLANK);
        }
        names.strong("Answer").row(BLANK, BLANK);
        names.write();
        PdfText.text(book.sheets, "Nothing is accepted by this form alone: the answer is the designer's, in writing.");
    }

    private static void inPlaceOf(PackageBook book, Form form, Optional<Substitution> asked) {
        String component = asked.map(Substitution::component).filter(id -> !id.isEmpty()).or(() -> book.products().stream()
            .filter(product -> product.id().equals(form.product())).map(ProductData::component).findFirst()).orElse("");
        PdfText.text(book.sheets, "In place of what section " + book.submittal.section() + " requires of: "
            + book.assembly.pack().component(component).map(Component::title).orElse(component) + ".");
        book.sheets.space(6);
    }

    private static void table(PackageBook book, Form form) {
        List<Row> rows = book.contents.comparison().rows().stream().filter(row -> row.product().equals(form.product())).toList();
        PdfTable table = new PdfTable(book.sheets, true, 52, 88, 96, 96, 64, 44, 28)
            .head("Paragraph", "Wall, property", "Required", "Proposed", "Result", "Page", "Mark");
        for (Row row : rows) {
            String shortBy = Results.shortBy(row);
            table.row(Papers.paragraph(row.paragraph()), row.requirement().wall() + ", " + Results.property(book.assembly,
                row.requirement()),
                Phrases.of(row.requirement()), Results.submitted(row))
                .strong(Results.result(row) + (shortBy.isEmpty() ? "" : " by " + shortBy));
            CompliancePages.where(book, table, row);
        }
        table.write();
    }

    private static void effect(PdfTable table, String what, String said) {
        table.strong(what).add(said.isBlank() ? BLANK : said);
    }
}
