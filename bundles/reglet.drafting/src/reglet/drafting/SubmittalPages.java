package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import reglet.drafting.EvidencePages.Missing;
import reglet.drafting.Volumes.Run;
import reglet.model.Assembly;
import reglet.model.Box;
import reglet.model.Calculated;
import reglet.model.Comparison;
import reglet.model.Drawing;
import reglet.model.Office;
import reglet.model.ProductData;
import reglet.model.RegisterItem;
import reglet.model.Resubmittal;
import reglet.model.Submittal;
import reglet.model.UnusableInput;

/**
 * The pages of a submittal package that are ours: transmittal with the statement of review, contents, what changed since, extract
 * of the register, compliance table, substitution forms, what is missing, a divider for each sheet, criteria, worksheets, details.
 * Everything that has to be known of the sheets is how many pages they have; page numbers are those of the package, or of its parts
 * when it is divided into several files. Bookmarks, links and marks are added by whoever puts the package together, from the parts,
 * boxes and spots returned.
 */
public final class SubmittalPages {
    private static final float DETAIL_HEIGHT = 560;
    private static final String DIVIDER = "divider/";
    private static final String CONTENTS = "contents";
    private static final String COVER = "volume/";
    /** Bytes that binding adds to every file: the font of the marks, bookmarks, lists of objects. */
    private static final long BINDING = 30_000;

    /**
     * A sheet to be bound in.
     *
     * @param id      path of the sheet as product data or the submittal name it: "sheets/lath-a.pdf"
     * @param title   words for contents and divider
     * @param pages   number of its pages; 0 when it can't be bound in
     * @param problem why it can't; "" when it can
     * @param group   data sheet, or certificate and report
     * @param bytes   size of its file
     */
    public record Sheet(String id, String title, int pages, String problem, PackageGroup group, long bytes) {

        /** A data sheet of no known size. */
        public Sheet(String id, String title, int pages, String problem) {
            this(id, title, pages, problem, PackageGroup.DATA, 0);
        }
    }

    /** Words found on a page of a sheet, counted from 1; the box is on the page as it is shown. */
    public record Found(String sheet, String words, int page, Box box) {
    }

    /**
     * What a package is made from.
     *
     * @param items      register items that the submittal covers
     * @param sheets     data sheets in the order in which they are bound, then certificates and reports
     * @param worksheets that show the submittal's products to be enough for the walls; only those that go in by choice
     * @param details    drawings that go in by choice
     * @param criteria   worksheets that tell what a delegated design has to satisfy
     * @param last       the submittal that this one is handed in again for
     * @param since      what changed since
     * @param found      where {@link #wanted} words stand
     */
    public record Contents(Assembly assembly, Submittal submittal, List<RegisterItem> items, Comparison comparison, List<Sheet> sheets,
            List<Calculated> worksheets, List<Drawing> details, List<Calculated> criteria, Optional<Submittal> last,
            Optional<Resubmittal> since, List<Found> found) {
        public Contents {
            items = List.copyOf(items);
            sheets = List.copyOf(sheets);
            worksheets = List.copyOf(worksheets);
            details = List.copyOf(details);
            criteria = List.copyOf(criteria);
            found = List.copyOf(found);
        }

        /** A first submittal without delegated design, on whose sheets nothing was looked for. */
        public Contents(Assembly assembly, Submittal submittal, List<RegisterItem> items, Comparison comparison, List<Sheet> sheets,
                List<Calculated> worksheets, List<Drawing> details) {
            this(assembly, submittal, items, comparison, sheets, worksheets, details, List.of(), Optional.empty(), Optional.empty(),
                List.of());
        }
    }

    /**
     * A part of the package: some pages in a row. The package is the parts in order.
     *
     * @param id          "transmittal", "divider/sheets/lath-a.pdf"; for a sheet the sheet's id
     * @param title       title of its bookmark
     * @param level       of its bookmark, 1 or 2; 0 for none
     * @param own         whether its pages are ours
     * @param firstPage   first page in our own file, or in the sheet, counted from 1
     * @param pages       number of pages
     * @param volume      file that it is in, counted from 1
     * @param packagePage first page in that file, counted from 1
     * @param within      first page within what the id names, counted from 1; more than 1 where that is divided
     */
    public record Part(String id, String title, int level, PackageGroup group, boolean own, int firstPage, int pages, int volume,
            int packagePage, int within) {

        /** Whether it is what a file of several begins with. */
        public boolean isCover() {
            return id.startsWith(COVER);
        }

        /** Whether it holds a page of what the id names, counted from 1. */
        boolean holds(int page) {
            return page >= within && page < within + pages;
        }
    }

    /**
     * A box that shall lead somewhere.
     *
     * @param page       page in our own file, counted from 1
     * @param target     id of the part that it leads to
     * @param targetPage page within that part of ours, or within the sheet, counted from 1
     * @param at         the place there
     */
    public record LinkBox(int page, Box box, String target, int targetPage, Optional<Box> at) {
    }

    /** A place to be marked on a sheet; {@code number} stands in the margin, "" for none. */
    public record Spot(String sheet, int page, Box box, String number) {
    }

    /** Our own file, the parts of the whole package, and the links on our pages and the marks on the sheets. */
    public record Pages(byte[] pdf, List<Part> parts, List<LinkBox> links, List<Spot> spots) {
        public Pages {
            parts = List.copyOf(parts);
            links = List.copyOf(links);
            spots = List.copyOf(spots);
        }

        /** Number of files. */
        public int volumes() {
            return parts.get(parts.size() - 1).volume();
        }

        public List<Part> volume(int number) {
            return parts.stream().filter(part -> part.volume() == number).toList();
        }

        /** Number of pages of a file. */
        public int total(int volume) {
            return volume(volume).stream().mapToInt(Part::pages).sum();
        }

        /** The part that holds a page of a part of ours, or of a sheet. */
        public Part holding(String id, int page) {
            return parts.stream().filter(part -> part.id().equals(id) && part.holds(page)).findFirst().orElseThrow();
        }
    }

    /** Something of ours to be written, and the sheet that follows it. */
    private record Block(String id, String title, int level, PackageGroup group, Runnable writes, Optional<Sheet> sheet) {
    }

    private final PackageBook book;
    private final List<Block> blocks = new ArrayList<>();
    private final List<Run> runs;

    private SubmittalPages(Contents contents, Letterhead letterhead, List<Part> known, List<Run> runs) {
        this.book = new PackageBook(contents, known, runs.isEmpty() ? 1 : runs.get(runs.size() - 1).volume(), letterhead);
        front();
        sheets(PackageGroup.DATA);
        sheets(PackageGroup.REPORTS);
        work();
        this.runs = runs.isEmpty() ? whole() : runs;
        write();
    }

    /** Words to be looked for on the sheet of a product, so that they can be marked: its model, its colour, values without a place. */
    public static List<String> wanted(ProductData product, Submittal submittal) {
        return Markings.wanted(product, submittal.encloses().colours());
    }

    /** Lays out our pages of a package in one file. */
    public static Pages of(Contents contents) {
        return of(contents, Volumes.ONE);
    }

    /** Lays out our pages of a package without an office's letterhead. */
    public static Pages of(Contents contents, Volumes volumes) {
        return of(contents, volumes, PackageBook.subject(contents).plain());
    }

    /**
     * Lays out our pages of a package.
     *
     * @throws UnusableInput if a template, picture or font of the office can't be used
     */
    public static Pages of(Contents contents, Volumes volumes, Office office) throws UnusableInput {
        return of(contents, volumes, PackageBook.subject(contents).of(office));
    }

    private static Pages of(Contents contents, Volumes volumes, Letterhead letterhead) {
        // The first layout counts pages, the last prints their numbers; a number takes no line more than a missing one.
        SubmittalPages trial = new SubmittalPages(contents, letterhead, List.of(), List.of());
        if (!volumes.equals(Volumes.ONE)) {
            List<Run> runs = trial.divided(volumes);
            trial = new SubmittalPages(contents, letterhead, List.of(), runs);
        }
        List<Part> parts = trial.parts();
        SubmittalPages pages = new SubmittalPages(contents, letterhead, parts, trial.runs);
        if (!pages.parts().equals(parts)) {
            throw new IllegalStateException("the second layout of submittal " + contents.submittal().id()
                + " has other pages than the first");
        }
        List<Spot> spots = contents.sheets().stream().flatMap(sheet -> pages.book.marks.on(sheet.id()).stream())
            .map(mark -> new Spot(mark.sheet(), mark.page(), mark.box(), mark.number())).toList();
        return new Pages(pages.book.sheets.bytes(), parts, pages.book.links, spots);
    }

    private List<Run> whole() {
        List<Run> all = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            all.add(new Run(i, 1, 1, 0, 1, blocks.get(i).sheet().map(Sheet::pages).orElse(0)));
        }
        return all;
    }

    private List<Run> divided(Volumes volumes) {
        List<Part> own = parts().stream().filter(Part::own).toList();
        PageSizes bytes = PageSizes.of(book.sheets.bytes());
        List<Volumes.Block> sizes = new ArrayList<>();
        long start = bytes.shared() + BINDING;
        for (int i = 0; i < blocks.size(); i++) {
            Optional<Sheet> sheet = blocks.get(i).sheet();
            List<Long> pages = bytes.pages().subList(own.get(i).firstPage() - 1, own.get(i).firstPage() - 1 + own.get(i).pages());
            sizes.add(new Volumes.Block(blocks.get(i).group(), pages, sheet.map(Sheet::pages).orElse(0),
                sheet.filter(found -> found.pages() > 0).map(Sheet::bytes).orElse(0L)));
            // each file begins with the contents of all
            start += own.get(i).id().equals(CONTENTS) ? pages.stream().mapToLong(Long::longValue).sum() : 0;
        }
        return volumes.divide(sizes, start);
    }

    private void add(String id, String title, PackageGroup group, Runnable writes) {
        blocks.add(new Block(id, title, 1, group, writes, Optional.empty()));
    }

    private void front() {
        add("transmittal", "Transmittal", PackageGroup.FRONT, () -> FrontPages.transmittal(book));
        book.contents.since().ifPresent(since -> add("since", "What changed since " + since.last(), PackageGroup.FRONT,
            () -> FrontPages.since(book, since)));
        add(CONTENTS, "Contents", PackageGroup.FRONT, this::contents);
        add("register", "Register items covered", PackageGroup.FRONT, () -> FrontPages.register(book));
        add("compliance", "Compliance table", PackageGroup.FRONT, () -> CompliancePages.write(book));
        for (SubstitutionPages.Form form : SubstitutionPages.of(book)) {
            add(form.id(), form.title(), PackageGroup.FRONT, () -> SubstitutionPages.write(book, form));
        }
        List<Missing> missing = EvidencePages.missing(book);
        if (!missing.isEmpty()) {
            add("missing", "Missing evidence", PackageGroup.FRONT, () -> EvidencePages.write(book, missing));
        }
    }

    private void sheets(PackageGroup group) {
        List<Sheet> all = book.contents.sheets().stream().filter(sheet -> sheet.group() == group).toList();
        if (!all.isEmpty()) {
            add("group/" + group.name().toLowerCase(Locale.ROOT), group.text(), group, () -> PdfText.bullets(book.sheets,
                all.stream().map(Sheet::title).toList()));
        }
        all.forEach(sheet -> blocks.add(new Block(DIVIDER + sheet.id(), sheet.title(), 2, group,
            () -> DividerPages.write(book, sheet, pieces(sheet)), Optional.of(sheet))));
    }

    private void work() {
        for (RegisterItem item : EvidencePages.delegated(book)) {
            add("criteria/" + item.id(), "Criteria: " + item.item() + ", " + item.sends(), PackageGroup.WORK,
                () -> EvidencePages.criteria(book, item));
        }
        if (!book.contents.worksheets().isEmpty()) {
            add("worksheets", "Worksheets", PackageGroup.WORK, () -> {
                PdfText.strong(book.sheets, "Not sealed. Where calculations by a licensed professional are asked for, these don't "
                    + "replace them.");
                WorksheetPages.write(book.sheets, book.assembly, book.contents.worksheets(), false);
            });
        }
        if (!book.contents.details().isEmpty()) {
            add("details", "Details", PackageGroup.WORK, () -> {
                PdfText.strong(book.sheets, "Details of the design, made from the wall's choices; not shop drawings.");
                book.contents.details().forEach(drawing -> book.sheets.drawing(drawing, DETAIL_HEIGHT));
            });
        }
    }

    private void write() {
        for (Block block : blocks) {
            book.begin(block.id(), block.id().equals("transmittal") ? "Submittal " + book.submittal.id() : block.title(), block.level(),
                block.group());
            block.writes().run();
        }
        // the first pages of further files stand behind everything else in our own file, so that a block can be divided at any page
        for (int volume = 2; volume <= book.volumes(); volume++) {
            int number = volume;
            book.begin(COVER + volume, "Submittal " + book.submittal.id() + ", part " + volume + " of " + book.volumes(), 1,
                runs.stream().filter(run -> run.volume() == number).map(run -> blocks.get(run.block()).group()).findFirst().orElseThrow());
            FrontPages.cover(book, volume);
            contents();
        }
    }

    /** The package's parts from our pages and the sheets between them. */
    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        int volume = 1;
        int page = 1;
        for (Run run : runs) {
            Block block = blocks.get(run.block());
            if (run.volume() > volume) {
                volume = run.volume();
                page = 1;
                int cover = blocks.size() + volume - 2;
                page += take(parts, cover, volume, page, 1, ownPages(cover));
            }
            if (!isBehind(run)) {
                int left = ownPages(run.block()) - run.ownFirst() + 1;
                page += take(parts, run.block(), volume, page, run.ownFirst(), isLast(run) ? left : Math.min(left, run.ownPages()));
            }
            if (run.pages() > 0) {
                Sheet sheet = block.sheet().orElseThrow();
                parts.add(new Part(sheet.id(), sheet.title(), 0, block.group(), false, run.firstPage(), run.pages(), volume, page,
                    run.firstPage()));
                page += run.pages();
            }
        }
        return parts;
    }

    /** Whether a run has pages of a sheet alone, since the sheet is divided. */
    private static boolean isBehind(Run run) {
        return run.firstPage() > 1;
    }

    /** Whether no own pages of its block follow those of a run. */
    private boolean isLast(Run run) {
        return runs.stream().noneMatch(other -> other.block() == run.block() && other.ownFirst() > run.ownFirst());
    }

    /** Number of pages of one of our parts. */
    private int ownPages(int index) {
        List<Part> own = book.own();
        return (index + 1 < own.size() ? own.get(index + 1).firstPage() : book.sheets.sheet() + 1) - own.get(index).firstPage();
    }

    private int take(List<Part> parts, int index, int volume, int page, int within, int pages) {
        Part part = book.own().get(index);
        String title = part.id().equals("transmittal") ? "Transmittal" : part.title();
        parts.add(new Part(part.id(), title + (pages < ownPages(index) ? pages(within, pages) : ""), part.level(), part.group(), true,
            part.firstPage() + within - 1, pages, volume, page, within));
        return pages;
    }

    private static String pages(int first, int pages) {
        return pages == 1 ? ", page " + first : ", pages " + first + " to " + (first + pages - 1);
    }

    private void contents() {
        PdfTable table = book.volumes() == 1 ? new PdfTable(book.sheets, true, 88, 12) : new PdfTable(book.sheets, true, 78, 22);
        table.head("Part", "Page");
        for (Run run : runs) {
            Block block = blocks.get(run.block());
            boolean ownCut = !isBehind(run) && !(run.ownFirst() == 1 && isLast(run));
            String title = (block.level() > 1 ? "    " : "") + block.title()
                + block.sheet().filter(sheet -> !sheet.problem().isEmpty()).map(sheet -> " (not bound in)").orElse("")
                + (ownCut ? pages(run.ownFirst(), run.ownPages()) : isCut(run) ? pages(run.firstPage(), run.pages()) : "");
            String id = isBehind(run) ? block.sheet().orElseThrow().id() : block.id();
            int page = isBehind(run) ? run.firstPage() : run.ownFirst();
            table.placed(title, book.link(id, page)).placed(book.page(id, page), book.link(id, page));
        }
        table.write();
    }

    private boolean isCut(Run run) {
        return blocks.get(run.block()).sheet().filter(sheet -> sheet.pages() > run.pages()).isPresent();
    }

    /** The runs that a sheet's pages are in. */
    private List<Run> pieces(Sheet sheet) {
        return runs.stream().filter(run -> run.pages() > 0 && blocks.get(run.block()).sheet().filter(sheet::equals).isPresent()).toList();
    }
}
