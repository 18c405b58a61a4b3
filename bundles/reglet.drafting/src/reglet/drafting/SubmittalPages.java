package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.drafting.PdfSheets.Edges;
import reglet.model.Assembly;
import reglet.model.Box;
import reglet.model.Calculated;
import reglet.model.Comparison;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.Drawing;
import reglet.model.Pack;
import reglet.model.ProductData;
import reglet.model.RegisterItem;
import reglet.model.SectionPlan;
import reglet.model.SheetValue;
import reglet.model.Submittal;

/**
 * The pages of a submittal package that are ours: transmittal with the statement of review, contents, extract of the
 * register, compliance table, a divider for each sheet, worksheets, and what is missing. Everything that has to be known of the sheets is
 * how many pages they have; page numbers are those of the whole package. Bookmarks and links are added by whoever puts the
 * package together, from the parts and boxes returned.
 */
public final class SubmittalPages {
    private static final String TRANSMITTAL = "transmittal";
    private static final String CONTENTS = "contents";
    private static final String REGISTER = "register";
    private static final String COMPLIANCE = "compliance";
    private static final String WORKSHEETS = "worksheets";
    private static final String DETAILS = "details";
    private static final float DETAIL_HEIGHT = 560;
    private static final String MISSING = "missing";
    private static final String DIVIDER = "divider/";
    private static final Map<String, String> TITLES = Map.of(TRANSMITTAL, "Transmittal", CONTENTS, "Contents", REGISTER,
        "Register items covered",
        COMPLIANCE, "Compliance table", WORKSHEETS, "Worksheets", DETAILS, "Details", MISSING, "Missing evidence");

    /**
     * A sheet to be bound in.
     *
     * @param id      path of the sheet as product data name it: "sheets/lath-a.pdf"
     * @param title   words for contents and divider
     * @param pages   number of its pages; 0 when it can't be bound in
     * @param problem why it can't; "" when it can
     */
    public record Sheet(String id, String title, int pages, String problem) {
    }

    /**
     * What a package is made from.
     *
     * @param items  register items that the submittal covers
     * @param sheets in the order in which they are bound
     * @param worksheets that show the submittal's products to be enough for the walls; only those that go in by choice
     * @param details    drawings that go in by choice
     */
    public record Contents(Assembly assembly, Submittal submittal, List<RegisterItem> items, Comparison comparison, List<Sheet> sheets,
            List<Calculated> worksheets, List<Drawing> details) {
        public Contents {
            items = List.copyOf(items);
            sheets = List.copyOf(sheets);
            worksheets = List.copyOf(worksheets);
            details = List.copyOf(details);
        }
    }

    /**
     * A part of the package. The package is the parts in order.
     *
     * @param id          "transmittal", "divider/sheets/lath-a.pdf"; for a sheet the sheet's id
     * @param title       title of its bookmark
     * @param level       1, or 2 for a sheet below its divider
     * @param firstPage   first page in our own file, counted from 1; 0 for a sheet
     * @param pages       number of pages
     * @param packagePage first page in the whole package, counted from 1
     */
    public record Part(String id, String title, int level, int firstPage, int pages, int packagePage) {
    }

    /**
     * A box that shall lead somewhere.
     *
     * @param page       page in our own file, counted from 1
     * @param target     id of the part that it leads to
     * @param targetPage page within that part, counted from 1
     */
    public record LinkBox(int page, Box box, String target, int targetPage) {
    }

    /** Our own file, the parts of the whole package, and the links on our pages. */
    public record Pages(byte[] pdf, List<Part> parts, List<LinkBox> links) {
        public Pages {
            parts = List.copyOf(parts);
            links = List.copyOf(links);
        }

        /** Number of pages of the whole package. */
        public int total() {
            return parts.stream().mapToInt(Part::pages).sum();
        }
    }

    private final Contents contents;
    private final Assembly assembly;
    private final Submittal submittal;
    /** Parts as an earlier layout found them; empty for the first. */
    private final Map<String, Part> known;
    private final PdfSheets sheets;
    private final List<LinkBox> links = new ArrayList<>();
    /** Id, title and first own page of our parts, in order. */
    private final List<Part> own = new ArrayList<>();

    private SubmittalPages(Contents contents, List<Part> parts) {
        this.contents = contents;
        this.assembly = contents.assembly();
        this.submittal = contents.submittal();
        this.known = new LinkedHashMap<>();
        parts.forEach(part -> known.put(part.id(), part));
        int total = parts.stream().mapToInt(Part::pages).sum();
        this.sheets = new PdfSheets("Submittal " + submittal.id(), PdfSheets.UPRIGHT, new Edges(assembly.job().title(),
            "Submittal " + submittal.id(), "Section " + submittal.section() + title(", "),
            sheet -> "page " + packagePage(sheet) + " of " + total));
    }

    /** Lays out our pages of a package. */
    public static Pages of(Contents contents) {
        // The first layout counts pages, the second prints their numbers; a number takes no line more than a missing one.
        SubmittalPages trial = new SubmittalPages(contents, List.of());
        trial.write();
        List<Part> parts = trial.parts();
        SubmittalPages pages = new SubmittalPages(contents, parts);
        pages.write();
        if (!pages.parts().equals(parts)) {
            throw new IllegalStateException("the second layout of submittal " + contents.submittal().id()
                + " has other pages than the first");
        }
        return new Pages(pages.sheets.bytes(), parts, pages.links);
    }

    private void write() {
        transmittal();
        begin(CONTENTS, TITLES.get(CONTENTS));
        contents();
        begin(REGISTER, TITLES.get(REGISTER));
        register();
        begin(COMPLIANCE, TITLES.get(COMPLIANCE));
        compliance();
        contents.sheets().forEach(this::divider);
        if (!contents.worksheets().isEmpty()) {
            begin(WORKSHEETS, TITLES.get(WORKSHEETS));
            PdfText.strong(sheets, "Not sealed. Where calculations by a licensed professional are asked for, these don't replace them.");
            WorksheetPages.write(sheets, assembly, contents.worksheets(), false);
        }
        if (!contents.details().isEmpty()) {
            begin(DETAILS, TITLES.get(DETAILS));
            PdfText.strong(sheets, "Details of the design, made from the wall's choices; not shop drawings.");
            contents.details().forEach(drawing -> sheets.drawing(drawing, DETAIL_HEIGHT));
        }
        if (!missing().isEmpty()) {
            begin(MISSING, TITLES.get(MISSING));
            PdfText.text(sheets, "The following was asked for and is not in this package.");
            PdfText.bullets(sheets, missing());
        }
    }

    private void begin(String id, String title) {
        sheets.next();
        part(id, title);
        PdfText.title(sheets, title, "");
    }

    private void part(String id, String title) {
        own.add(new Part(id, title, 1, sheets.sheet(), 1, 0));
    }

    /** The package's parts from our pages and the sheets between them. */
    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        int page = 1;
        for (int i = 0; i < own.size(); i++) {
            Part part = own.get(i);
            int end = i + 1 < own.size() ? own.get(i + 1).firstPage() : sheets.sheet() + 1;
            parts.add(new Part(part.id(), part.title(), 1, part.firstPage(), end - part.firstPage(), page));
            page += end - part.firstPage();
            Optional<Sheet> sheet = contents.sheets().stream()
                .filter(found -> (DIVIDER + found.id()).equals(part.id()) && found.pages() > 0)
                .findFirst();
            if (sheet.isPresent()) {
                parts.add(new Part(sheet.get().id(), sheet.get().title(), 2, 0, sheet.get().pages(), page));
                page += sheet.get().pages();
            }
        }
        return parts;
    }

    /** Page of the package that one of our sheets becomes. */
    private int packagePage(int sheet) {
        return known.values().stream().filter(part -> part.firstPage() > 0 && sheet >= part.firstPage()
            && sheet < part.firstPage() + part.pages()).mapToInt(part -> part.packagePage() + sheet - part.firstPage())
            .findFirst().orElse(0);
    }

    private String title(String before) {
        return assembly.pack().plan(submittal.section()).map(SectionPlan::title).map(title -> before + title).orElse("");
    }

    private boolean ready() {
        return !submittal.statement().isBlank();
    }

    private void transmittal() {
        part(TRANSMITTAL, TITLES.get(TRANSMITTAL));
        PdfText.title(sheets, "Submittal " + submittal.id(), "");
        if (!ready()) {
            PdfText.strong(sheets, "■ NOT READY: the contractor's statement of review is missing.");
        }
        sheets.space(8);
        PdfTable facts = new PdfTable(sheets, false, 20, 80);
        Stream.of(List.of("Job", assembly.job().title()), List.of("Section", submittal.section() + title(", ")),
            List.of("From", submittal.from()),
            List.of("Date", submittal.date()), List.of("Products", String.join("; ", products().stream().map(Results::name).toList())),
            List.of("Notes", submittal.notes()), List.of("Job note", assembly.job().note()))
            .filter(fact -> !fact.get(1).isEmpty()).forEach(fact -> facts.strong(fact.get(0)).add(fact.get(1)));
        facts.write();
        PdfText.heading(sheets, "Statement of review");
        PdfText.text(sheets, ready() ? submittal.statement()
            : "Not made. The package cannot be sent before the contractor has reviewed it and says so.");
        PdfText.heading(sheets, "Deviations");
        if (submittal.deviations().isEmpty()) {
            PdfText.text(sheets, ready() ? "No deviations are listed." : "None listed; without a statement of review that says nothing.");
        } else {
            PdfText.bullets(sheets, submittal.deviations());
        }
        long fallsShort = Results.counts(contents.comparison()).get(Result.FALLS_SHORT);
        if (fallsShort > 0) {
            PdfText.strong(sheets, "▼ The compliance table has " + fallsShort
                + (fallsShort == 1 ? " value that falls short." : " values that fall short."));
        }
        PdfText.cautions(sheets, assembly.cautions().stream().map(Pack.Caution::text).toList());
    }

    private List<ProductData> products() {
        return assembly.job().products().stream().filter(product -> submittal.products().contains(product.id())).toList();
    }

    private void contents() {
        PdfTable table = new PdfTable(sheets, true, 88, 12).head("Part", "Page");
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put(TRANSMITTAL, TITLES.get(TRANSMITTAL));
        lines.put(CONTENTS, TITLES.get(CONTENTS));
        lines.put(REGISTER, TITLES.get(REGISTER));
        lines.put(COMPLIANCE, TITLES.get(COMPLIANCE));
        contents.sheets().forEach(sheet -> lines.put(DIVIDER + sheet.id(), sheet.title()
            + (sheet.problem().isEmpty() ? "" : " (not bound in)")));
        if (!contents.worksheets().isEmpty()) {
            lines.put(WORKSHEETS, TITLES.get(WORKSHEETS));
        }
        if (!contents.details().isEmpty()) {
            lines.put(DETAILS, TITLES.get(DETAILS));
        }
        if (!missing().isEmpty()) {
            lines.put(MISSING, TITLES.get(MISSING));
        }
        lines.forEach((id, title) -> table.placed(title, link(id, 1)).placed(page(id, 1), link(id, 1)));
        table.write();
    }

    private PdfTable.Placed link(String target, int page) {
        return (sheet, box) -> links.add(new LinkBox(sheet, box, target, page));
    }

    private String page(String part, int page) {
        return Optional.ofNullable(known.get(part)).map(found -> String.valueOf(found.packagePage() + page - 1)).orElse("0");
    }

    private void register() {
        PdfTable table = new PdfTable(sheets, true, 54, 120, 80, 90, 124).head("Paragraph", "Item", "Kind", "Sends", "Id");
        contents.items().forEach(item -> table.row(Papers.paragraph(item.paragraph()), item.item(), item.kind().text(), item.sends(),
            item.id()));
        table.write();
        if (contents.items().isEmpty()) {
            PdfText.text(sheets, "The submittal names no item of the register.");
        }
    }

    private void compliance() {
        PdfText.text(sheets, "The contractor sets what the sheets state against what the section requires. The reviewer decides.");
        sheets.space(8);
        PdfTable table = new PdfTable(sheets, true, 54, 86, 102, 102, 80, 44)
            .head("Paragraph", "Property", "Required", "Submitted", "Result", "Sheet page");
        contents.comparison().rows().forEach(row -> row(table, row));
        table.write();
    }

    private void row(PdfTable table, Row row) {
        table.row(Papers.paragraph(row.paragraph()), row.requirement().wall() + ", "
            + Results.property(assembly, row.requirement()), Phrases.of(row.requirement()),
            Results.submitted(row)).strong(Results.result(row));
        Optional<Sheet> sheet = assembly.job().products().stream().filter(product -> product.id().equals(row.product()))
            .map(ProductData::sheet)
            .flatMap(path -> contents.sheets().stream().filter(found -> found.id().equals(path) && found.pages() > 0)).findFirst();
        Optional<Integer> page = row.submitted().map(SheetValue::page).filter(number -> sheet.isPresent() && number <= sheet.get().pages());
        if (page.isPresent()) {
            table.placed(page(sheet.get().id(), page.get()), link(sheet.get().id(), page.get()));
        } else {
            table.add("none");
        }
    }

    private void divider(Sheet sheet) {
        begin(DIVIDER + sheet.id(), sheet.title());
        PdfText.text(sheets, "Sheet: " + sheet.id());
        if (sheet.problem().isEmpty()) {
            PdfText.text(sheets, sheet.pages() == 1 ? "One page follows." : sheet.pages() + " pages follow.");
        } else {
            PdfText.strong(sheets, "■ Not bound in: " + sheet.problem());
        }
        List<String> products = products().stream().filter(product -> product.sheet().equals(sheet.id())).map(Results::name).toList();
        if (!products.isEmpty()) {
            PdfText.heading(sheets, "Products on this sheet");
            PdfText.bullets(sheets, products);
        }
    }

    private List<String> missing() {
        List<String> missing = new ArrayList<>();
        contents.sheets().stream().filter(sheet -> !sheet.problem().isEmpty())
            .forEach(sheet -> missing.add("Sheet " + sheet.id() + " (" + sheet.title() + "): " + sheet.problem()));
        products().stream().filter(product -> product.sheet().isEmpty())
            .forEach(product -> missing.add(Results.name(product) + ": no sheet is named for this product."));
        contents.comparison().rows().stream().filter(row -> row.result() == Result.NOT_SHOWN)
            .map(row -> Results.product(assembly, row.product()) + ": no value for " + Results.property(assembly, row.requirement())
                + " (" + Phrases.of(row.requirement()) + (row.paragraph().isEmpty() ? "" : ", paragraph " + row.paragraph()) + ").")
            .distinct().forEach(missing::add);
        return missing;
    }
}
