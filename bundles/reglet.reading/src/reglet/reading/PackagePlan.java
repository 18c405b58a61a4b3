package reglet.reading;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Box;
import reglet.reading.process.Request;

/**
 * How a package is put together.
 *
 * @param title    title of the document
 * @param ownPages a PDF of our own with the pages that are not foreign
 * @param parts    the parts in the order in which they are bound
 * @param links    boxes on our own pages that lead to a page of the package
 * @param flags    what is flagged on sheets
 */
public record PackagePlan(String title, byte[] ownPages, List<Part> parts, List<Link> links, List<Flag> flags) {

    /** @throws IllegalArgumentException when a link starts on a page of no part, or leads out of the package */
    public PackagePlan {
        parts = List.copyOf(parts);
        links = List.copyOf(links);
        flags = List.copyOf(flags);
        int total = parts.stream().mapToInt(Part::pages).sum();
        for (Flag flag : flags) {
            if (flag.page() < 1 || flag.page() > total) {
                throw new IllegalArgumentException("a flag is on page " + flag.page() + " of a package of " + total + " pages");
            }
        }
        for (Link link : links) {
            if (link.target() < 1 || link.file().isEmpty() && link.target() > total) {
                throw new IllegalArgumentException("a link leads to page " + link.target() + " of a package of " + total + " pages");
            }
            if (parts.stream().noneMatch(part -> part.holds(link.page()))) {
                throw new IllegalArgumentException("a link starts on own page " + link.page() + ", which is in no part of the package");
            }
        }
    }

    /** A plan without flags. */
    public PackagePlan(String title, byte[] ownPages, List<Part> parts, List<Link> links) {
        this(title, ownPages, parts, links, List.of());
    }

    /** Number of pages of the package. */
    public int total() {
        return parts.stream().mapToInt(Part::pages).sum();
    }

    /** @param without sheets that stopped the process before, with the reason */
    Request request(Map<String, String> without) {
        return Request.assemble(title, parts.stream().map(PackagePlan::asked).toList(), links.stream().map(link -> new Request.Link(
            link.page(), link.box(), link.target(), link.at().orElse(null), link.file())).toList(),
            flags.stream().map(flag -> new Request.Flag(flag.page(), flag.box(), flag.text())).toList(), without);
    }

    private static Request.Part asked(Part part) {
        return new Request.Part(part.title(), part.level(), part.firstPage(), part.pages(),
            part.sheet().map(sheet -> sheet.file().toAbsolutePath().toString()).orElse(""), part.sheet().map(Sheet::pages).orElse(0),
            part.mark(), part.spots().stream().map(spot -> new Request.Spot(spot.page(), spot.box(), spot.number())).toList());
    }

    /**
     * Some pages in a row.
     *
     * @param title     title of the bookmark
     * @param level     1, 2 for a bookmark below the last of level 1, or 0 for none
     * @param firstPage first page in our own file, or in the sheet, counted from 1
     * @param pages     number of pages, at least 1
     * @param sheet     the foreign file; empty for pages of our own
     * @param mark      what is marked at the foot of each foreign page; {@code {page}} stands for the page within the sheet and
     *                  {@code {package page}} for the page within the package, both counted from 1; "" for no mark
     * @param spots     what is marked on the foreign pages
     */
    public record Part(String title, int level, int firstPage, int pages, Optional<Sheet> sheet, String mark, List<Spot> spots) {

        /** @throws IllegalArgumentException when the numbers make no sense */
        public Part {
            spots = List.copyOf(spots);
            if (pages < 1 || level < 0 || level > 2 || firstPage < 1
                || sheet.filter(whole -> firstPage + pages - 1 > whole.pages()).isPresent()) {
                throw new IllegalArgumentException("part \"" + title + "\" has " + pages + " pages from " + firstPage
                    + " at level " + level);
            }
        }

        /** Pages of our own file. */
        public static Part own(String title, int level, int firstPage, int pages) {
            return new Part(title, level, firstPage, pages, Optional.empty(), "", List.of());
        }

        /** A whole sheet on which nothing but its foot is marked. */
        public static Part of(String title, int level, Sheet sheet, String mark) {
            return new Part(title, level, 1, sheet.pages(), Optional.of(sheet), mark, List.of());
        }

        boolean holds(int ownPage) {
            return sheet.isEmpty() && ownPage >= firstPage && ownPage < firstPage + pages;
        }
    }

    /**
     * A foreign file.
     *
     * @param pages number of all its pages, as {@link Child#measure} counted them
     */
    public record Sheet(Path file, int pages) {
    }

    /**
     * A place on a foreign page that is marked so that a reader finds it.
     *
     * @param page   page within the sheet, counted from 1
     * @param box    on the page as it is shown, origin at its upper left
     * @param number what stands beside it in the margin; "" for nothing
     */
    public record Spot(int page, Box box, String number) {
    }

    /**
     * A link.
     *
     * @param page   page in our own file, counted from 1
     * @param box    where on it
     * @param target page that it leads to, counted from 1
     * @param at     the place on that page; empty for the page as a whole
     * @param file   name of the file beside this one that the page is in; "" for this one
     */
    public record Link(int page, Box box, int target, Optional<Box> at, String file) {

        /** To a page of the same file. */
        public Link(int page, Box box, int target) {
            this(page, box, target, Optional.empty(), "");
        }
    }

    /**
     * A flag at a place of a sheet; left out where pages stand for a sheet that can't be bound in.
     *
     * @param page page of the package, counted from 1
     * @param box  in units of the page from its upper left corner, as it is shown
     * @param text a few words
     */
    public record Flag(int page, Box box, String text) {
    }
}
