package reglet.drafting;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import reglet.drafting.Letterhead.Edge;
import reglet.drafting.Letterhead.Subject;
import reglet.drafting.SubmittalPages.Sheet;
import reglet.model.Assembly;
import reglet.model.Box;
import reglet.model.Comparison;
import reglet.model.Comparison.Row;
import reglet.model.Office;
import reglet.model.Pack;
import reglet.model.ProductData;
import reglet.model.RegisterItem;
import reglet.model.Resubmittal;
import reglet.model.Review;
import reglet.model.SectionPlan;
import reglet.model.SheetValue;
import reglet.model.Submittal;
import reglet.model.UnusableInput;

/**
 * The report of a review: dates, recommendation and action in the reviewer's words, the comparison with the reviewer's notes, and
 * what a resubmittal changes. The sheets follow it, with a numbered flag at each value; whoever binds them adds flags and links.
 */
public final class ReviewPages {
    private static final String BLANK = "________________";
    private static final List<String> CAUTIONS = List.of(
        "This review looks at whether what was submitted agrees with the design in general. It is no check of quantities, dimensions, "
            + "means and methods, or safety on site; these stay with the contractor.",
        "A deviation is accepted only where the reviewer accepts it in so many words; the contractor's duty to meet the contract "
            + "documents stays as it was.",
        "Results in the table come from values read from sheets. A value that is marked as not confirmed was read by the program only.");

    /**
     * What a report is made from.
     *
     * @param items  register items that the submittal covers
     * @param since  what changed since the submittal that this one replaces
     * @param sheets in the order in which they follow the report
     */
    public record Contents(Assembly assembly, Submittal submittal, List<RegisterItem> items, Comparison comparison,
            Optional<Resubmittal> since, List<Sheet> sheets) {
        public Contents {
            items = List.copyOf(items);
            sheets = List.copyOf(sheets);
        }
    }

    /** A box on a page of the report, counted from 1, that leads to a page of the whole, counted from 1. */
    public record Link(int page, Box box, int target) {
    }

    /** A value's place on a page of the whole, counted from 1, with the numbers of its rows and what is to be seen there. */
    public record Flag(int page, Box box, String text) {
    }

    /** The report, how many pages it has, and what is added where it is bound with its sheets. */
    public record Pages(byte[] pdf, int pages, List<Link> links, List<Flag> flags) {
    }

    private final Contents contents;
    private final Assembly assembly;
    private final Submittal submittal;
    private final Optional<Review> review;
    private final Letterhead letterhead;
    private final PdfSheets sheets;
    private final List<Link> links = new ArrayList<>();
    /** Pages of the report, as an earlier layout found them. */
    private final int own;

    private ReviewPages(Contents contents, Letterhead letterhead, int own) {
        this.letterhead = letterhead;
        this.contents = contents;
        this.assembly = contents.assembly();
        this.submittal = contents.submittal();
        this.review = submittal.review();
        this.own = own;
        int total = own + contents.sheets().stream().mapToInt(Sheet::pages).sum();
        String name = letterhead.office().name().isEmpty() ? "" : "Review of submittal " + submittal.id() + ", ";
        this.sheets = PdfLetterhead.cited("Review of submittal " + submittal.id(), assembly.job().title(), letterhead, true,
            String::valueOf, sheet -> String.valueOf(total), sheet -> name + "page " + sheet + " of " + total);
    }

    private static Subject subject(Contents contents) {
        Submittal submittal = contents.submittal();
        String job = contents.assembly().job().title();
        String name = "Review of submittal " + submittal.id();
        return new Subject(job, contents.assembly().job().note(), submittal.section(), contents.assembly().pack().plan(submittal.section())
            .map(SectionPlan::title).orElse(""), name, new Edge(job, "Section " + submittal.section()), new Edge(name, ""));
    }

    /** Lays out a report without an office's letterhead. The same contents give the same bytes. */
    public static Pages of(Contents contents) {
        return of(contents, subject(contents).plain());
    }

    /**
     * Lays out a report.
     *
     * @throws UnusableInput if a template, picture or font of the office can't be used
     */
    public static Pages of(Contents contents, Office office) throws UnusableInput {
        return of(contents, subject(contents).of(office));
    }

    private static Pages of(Contents contents, Letterhead letterhead) {
        ReviewPages trial = new ReviewPages(contents, letterhead, 0);
        trial.write();
        int own = trial.sheets.sheet();
        ReviewPages pages = new ReviewPages(contents, letterhead, own);
        pages.write();
        if (pages.sheets.sheet() != own) {
            throw new IllegalStateException("the second layout of the review of " + contents.submittal().id()
                + " has other pages than the first");
        }
        return new Pages(pages.sheets.bytes(), own, List.copyOf(pages.links), new ReviewFlags(contents, own).flags());
    }

    private void write() {
        PdfLetterhead.sender(sheets, letterhead);
        PdfText.title(sheets, "Review of submittal " + submittal.id(), "");
        facts();
        PdfText.heading(sheets, "Answer");
        answer();
        if (!submittal.deviations().isEmpty()) {
            PdfText.heading(sheets, "Deviations that the contractor lists");
            PdfText.bullets(sheets, submittal.deviations());
        }
        PdfText.heading(sheets, "Comparison");
        comparison();
        List<String> unplaced = unplaced(contents.comparison(), review).stream().map(row -> row + ": " + review.orElseThrow().notes()
            .get(row).text()).toList();
        if (!unplaced.isEmpty()) {
            PdfText.heading(sheets, "Notes on rows that are no longer there");
            PdfText.bullets(sheets, unplaced);
        }
        contents.since().ifPresent(this::since);
        List<String> cautions = new ArrayList<>(CAUTIONS);
        assembly.cautions().stream().map(Pack.Caution::text).forEach(cautions::add);
        PdfText.cautions(sheets, cautions);
    }

    private void facts() {
        String section = assembly.pack().plan(submittal.section()).map(SectionPlan::title).map(title -> ", " + title).orElse("");
        PdfTable table = new PdfTable(sheets, false, 16, 84);
        fact(table, "Job", assembly.job().title());
        fact(table, "Section", submittal.section() + section);
        fact(table, "From", submittal.from());
        fact(table, "Handed in", submittal.date());
        fact(table, "Replaces", submittal.replaces());
        fact(table, "Covers", contents.items().stream().map(item -> item.item() + ", " + item.sends() + " (" + item.kind().text() + ")")
            .collect(Collectors.joining("; ")));
        fact(table, "Alternates accepted", Taken.names(assembly));
        fact(table, "Job note", assembly.job().note());
        table.write();
    }

    private static void fact(PdfTable table, String name, String text) {
        if (!text.isEmpty()) {
            table.strong(name).add(text);
        }
    }

    private void answer() {
        PdfTable table = new PdfTable(sheets, false, 16, 84);
        table.strong("Received").add(date(review.flatMap(Review::received)));
        table.strong("Due").add(date(review.flatMap(Review::due)));
        table.strong("Returned").add(date(review.flatMap(Review::returned)) + late());
        review.flatMap(Review::recommends).ifPresent(recommends -> table.strong("Consultant recommends")
            .add(recommends.action() + ", " + recommends.by()));
        String action = review.map(Review::action).orElse("");
        if (action.isEmpty()) {
            table.strong("Action").add(forInformation(contents.items()) ? "None is needed: what is covered is for information."
                : "Not chosen yet.  " + BLANK + BLANK);
        } else {
            table.strong(review.flatMap(Review::recommends).isPresent() ? "Architect acts" : "Action").strong(action + ", "
                + review.orElseThrow().by());
        }
        review.map(Review::remark).filter(remark -> !remark.isEmpty()).ifPresent(remark -> table.strong("Remark").add(remark));
        table.write();
    }

    private static String date(Optional<LocalDate> date) {
        return date.map(LocalDate::toString).orElse(BLANK);
    }

    private String late() {
        return review.filter(found -> found.due().isPresent() && found.returned().isPresent())
            .map(found -> ChronoUnit.DAYS.between(found.due().get(), found.returned().get())).filter(days -> days > 0)
            .map(days -> " (" + days + (days == 1 ? " day" : " days") + " after it was due)").orElse("");
    }

    /** Whether nothing that is covered waits for an action. */
    public static boolean forInformation(List<RegisterItem> items) {
        return !items.isEmpty() && items.stream().allMatch(item -> item.kind() == RegisterItem.Kind.INFORMATIONAL);
    }

    private void comparison() {
        PdfText.strong(sheets, Results.counts(contents.comparison()).entrySet().stream()
            .map(entry -> entry.getKey().text() + ": " + entry.getValue()).collect(Collectors.joining("    ")));
        long unconfirmed = unconfirmed(contents.comparison());
        if (unconfirmed > 0) {
            PdfText.strong(sheets, "■ " + unconfirmed + (unconfirmed == 1 ? " value was" : " values were")
                + " read from the sheets and confirmed by nobody.");
        }
        PdfText.bullets(sheets, contents.comparison().remarks());
        sheets.space(4);
        PdfTable table = new PdfTable(sheets, true, 22, 30, 82, 50, 86, 108, 108, 76, 30, 104)
            .head("No.", "Wall", "Product", "Paragraph", "Property", "Required", "Submitted", "Result", "Page", "Reviewer's note");
        int number = 0;
        for (Row row : contents.comparison().rows()) {
            table.row(String.valueOf(++number), row.requirement().wall(), Results.product(assembly, row.product()),
                Papers.paragraph(row.paragraph()), Results.property(assembly, row.requirement()), Phrases.of(row.requirement()),
                Results.submitted(row)).strong(Results.result(row) + (row.shortBy().isPresent() ? ", by " + Results.shortBy(row) : ""));
            int page = page(contents, row, own);
            if (page > 0) {
                table.placed(String.valueOf(page), (sheet, box) -> links.add(new Link(sheet, box, page)));
            } else {
                table.add("none");
            }
            table.add(note(row, review));
        }
        table.write();
    }

    /** Page of the whole on which a row's value stands; 0 for none. */
    static int page(Contents contents, Row row, int own) {
        int page = row.submitted().map(SheetValue::page).orElse(0);
        String path = contents.assembly().job().products().stream().filter(product -> product.id().equals(row.product()))
            .map(ProductData::sheet).findFirst().orElse("");
        int before = own;
        for (Sheet sheet : contents.sheets()) {
            if (sheet.id().equals(path)) {
                return page > 0 && page <= sheet.pages() ? before + page : 0;
            }
            before += sheet.pages();
        }
        return 0;
    }

    /** The reviewer's note on a row: the one on the product, or the one on the place. */
    public static String note(Row row, Optional<Review> review) {
        Map<String, Review.Note> notes = review.map(Review::notes).orElse(Map.of());
        return Optional.ofNullable(notes.get(row.id())).or(() -> Optional.ofNullable(notes.get(row.place())))
            .map(Review.Note::text).orElse("");
    }

    /** Ids of rows that have a note and are not in the comparison. */
    public static List<String> unplaced(Comparison comparison, Optional<Review> review) {
        return review.map(Review::notes).orElse(Map.of()).keySet().stream().filter(id -> comparison.rows().stream()
            .noneMatch(row -> row.id().equals(id) || row.place().equals(id))).toList();
    }

    public static long unconfirmed(Comparison comparison) {
        return comparison.rows().stream().filter(row -> row.submitted().filter(value -> !value.confirmed()).isPresent()).count();
    }

    private void since(Resubmittal since) {
        PdfText.heading(sheets, "What changed since " + since.last());
        List<Resubmittal.Change> changes = since.changes().stream().filter(change -> change.kind() != Resubmittal.Kind.SAME).toList();
        PdfText.text(sheets, "Both are compared with what is required today; " + (since.changes().size() - changes.size())
            + " are the same as before.");
        if (!changes.isEmpty()) {
            sheets.space(6);
            PdfTable table = new PdfTable(sheets, true, 36, 130, 80, 190, 190).head("Wall", "Property", "Change", "Before", "Now");
            changes.forEach(change -> table.row(change.wall(), change.after().or(change::before)
                .map(row -> Results.property(assembly, row.requirement())).orElse(change.property())).strong(change.kind().text())
                .row(told(change.before()), told(change.after())));
            table.write();
        }
    }

    private String told(Optional<Row> row) {
        return row.map(found -> Results.product(assembly, found.product()) + ": " + Results.submitted(found) + ", " + Results.result(found))
            .orElse("nothing");
    }
}
