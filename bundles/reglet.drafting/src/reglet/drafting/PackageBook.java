package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.drafting.Letterhead.Edge;
import reglet.drafting.Letterhead.Subject;
import reglet.drafting.SubmittalPages.Contents;
import reglet.drafting.SubmittalPages.LinkBox;
import reglet.drafting.SubmittalPages.Part;
import reglet.drafting.SubmittalPages.Sheet;
import reglet.model.Assembly;
import reglet.model.Box;
import reglet.model.ProductData;
import reglet.model.SectionPlan;
import reglet.model.Submittal;

/** A package's own pages while they are written: the sheets of paper, what is known of all parts, and the links laid so far. */
final class PackageBook {
    static final String NOT_READY = "NOT READY";
    /** Stands in a first layout for what only the second knows, and is no narrower. */
    private static final int UNKNOWN = 0;

    final Contents contents;
    final Assembly assembly;
    final Submittal submittal;
    final PdfSheets sheets;
    final Markings marks;
    private final Letterhead letterhead;
    final List<LinkBox> links = new ArrayList<>();
    private final List<Part> known;
    private final int volumes;
    /** Starts of our parts: id, title, level, group, first own page. */
    private final List<Part> own = new ArrayList<>();

    /**
     * @param known   parts as an earlier layout found them; empty for the first
     * @param volumes number of files
     */
    PackageBook(Contents contents, List<Part> known, int volumes, Letterhead letterhead) {
        this.contents = contents;
        this.assembly = contents.assembly();
        this.submittal = contents.submittal();
        this.known = known;
        this.volumes = volumes;
        this.marks = Markings.of(contents, products());
        this.letterhead = letterhead;
        this.sheets = PdfLetterhead.cited("Submittal " + submittal.id(), assembly.job().title(), letterhead, false, this::page, this::pages,
            this::foot);
    }

    /** What the edges of a package's own pages say; an office's templates may say something else. */
    static Subject subject(Contents contents) {
        Submittal submittal = contents.submittal();
        String job = contents.assembly().job().title();
        String title = contents.assembly().pack().plan(submittal.section()).map(SectionPlan::title).orElse("");
        String name = "Submittal " + submittal.id();
        return new Subject(job, contents.assembly().job().note(), submittal.section(), title, name,
            new Edge(job, (submittal.statement().isBlank() ? NOT_READY + " · " : "") + name),
            new Edge("Section " + submittal.section() + (title.isEmpty() ? "" : ", ") + title, ""));
    }

    boolean ready() {
        return !submittal.statement().isBlank();
    }

    int volumes() {
        return volumes;
    }

    List<Part> known() {
        return known;
    }

    List<Part> own() {
        return own;
    }

    /** The submittal's products, in the order in which the job has them. */
    List<ProductData> products() {
        return assembly.job().products().stream().filter(product -> submittal.products().contains(product.id())).toList();
    }

    String sectionTitle(String before) {
        return assembly.pack().plan(submittal.section()).map(SectionPlan::title).map(title -> before + title).orElse("");
    }

    /** Starts a part on a sheet of its own, under its title. */
    void begin(String id, String title, int level, PackageGroup group) {
        if (!own.isEmpty()) {
            sheets.next();
        }
        own.add(new Part(id, title, level, group, true, sheets.sheet(), 1, 1, 0, 1));
        if (own.size() == 1) {
            PdfLetterhead.sender(sheets, letterhead);
        }
        PdfText.title(sheets, title, "");
        if (!ready() && group == PackageGroup.FRONT) {
            PdfText.strong(sheets, "■ " + NOT_READY + ": the contractor's statement of review is missing.");
            sheets.space(10);
        }
    }

    /** "14", or "part 2, page 14" in a package of several files. */
    String page(String id, int page) {
        Optional<Part> part = part(id, page);
        int at = part.map(found -> found.packagePage() + page - found.within()).orElse(UNKNOWN);
        return volumes == 1 ? String.valueOf(at) : "part " + part.map(Part::volume).orElse(UNKNOWN) + ", page " + at;
    }

    private Optional<Part> part(String id, int page) {
        return known.stream().filter(part -> part.id().equals(id) && part.holds(page)).findFirst();
    }

    PdfTable.Placed link(String id, int page) {
        return link(id, page, Optional.empty());
    }

    /** A link to a place on a page of a part. */
    PdfTable.Placed link(String id, int page, Optional<Box> at) {
        return (sheet, box) -> links.add(new LinkBox(sheet, box, id, page, at));
    }

    /** The sheet that shows a product, when it is bound in. */
    Optional<Sheet> sheetOf(String product) {
        return assembly.job().products().stream().filter(found -> found.id().equals(product)).map(ProductData::sheet)
            .flatMap(path -> contents.sheets().stream().filter(sheet -> sheet.id().equals(path) && sheet.pages() > 0)).findFirst();
    }

    private Optional<Part> onSheet(int sheet) {
        return known.stream().filter(found -> found.own() && sheet >= found.firstPage()
            && sheet < found.firstPage() + found.pages()).findFirst();
    }

    private String page(int sheet) {
        return String.valueOf(onSheet(sheet).map(found -> found.packagePage() + sheet - found.firstPage()).orElse(UNKNOWN));
    }

    private String pages(int sheet) {
        int here = onSheet(sheet).map(Part::volume).orElse(1);
        return String.valueOf(known.stream().filter(found -> found.volume() == here).mapToInt(Part::pages).sum());
    }

    /** Which page it is; and of which submittal, and whether that can be sent, where an office's head may not say it. */
    private String foot(int sheet) {
        return (letterhead.office().name().isEmpty() ? "" : (ready() ? "" : NOT_READY + " · ") + "Submittal " + submittal.id() + ", ")
            + (volumes == 1 ? "" : "part " + onSheet(sheet).map(Part::volume).orElse(1) + " of " + volumes + ", ") + "page " + page(sheet)
            + " of " + pages(sheet);
    }
}
