package reglet.reading;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import reglet.model.Box;

/**
 * How a package is put together.
 *
 * @param title    title of the document
 * @param ownPages a PDF of our own with the pages that are not foreign
 * @param parts    the parts in the order in which they are bound
 * @param links    boxes on our own pages that lead to a page of the package
 */
public record PackagePlan(String title, byte[] ownPages, List<Part> parts, List<Link> links) {

    /** @throws IllegalArgumentException when a link starts on a page of no part, or leads out of the package */
    public PackagePlan {
        parts = List.copyOf(parts);
        links = List.copyOf(links);
        int total = parts.stream().mapToInt(Part::pages).sum();
        for (Link link : links) {
            if (link.target() < 1 || link.target() > total) {
                throw new IllegalArgumentException("a link leads to page " + link.target() + " of a package of " + total + " pages");
            }
            if (parts.stream().noneMatch(part -> part.holds(link.page()))) {
                throw new IllegalArgumentException("a link starts on own page " + link.page() + ", which is in no part of the package");
            }
        }
    }

    /** Number of pages of the package. */
    public int total() {
        return parts.stream().mapToInt(Part::pages).sum();
    }

    /**
     * Some pages in a row.
     *
     * @param title     title of the bookmark
     * @param level     1, or 2 for a bookmark below the last of level 1
     * @param firstPage first page in our own file, counted from 1; 0 for a sheet
     * @param pages     number of pages, at least 1; for a sheet as {@link Child#measure} counted them
     * @param sheet     the foreign file; empty for pages of our own
     * @param mark      what is marked at the foot of each foreign page; {@code {page}} stands for the page within the sheet and
     *                  {@code {package page}} for the page within the package, both counted from 1; "" for no mark
     */
    public record Part(String title, int level, int firstPage, int pages, Optional<Path> sheet, String mark) {

        /** @throws IllegalArgumentException when the numbers make no sense */
        public Part {
            if (pages < 1 || level < 1 || level > 2 || sheet.isEmpty() && firstPage < 1) {
                throw new IllegalArgumentException("part \"" + title + "\" has " + pages + " pages from " + firstPage
                    + " at level " + level);
            }
        }

        boolean holds(int ownPage) {
            return sheet.isEmpty() && ownPage >= firstPage && ownPage < firstPage + pages;
        }
    }

    /**
     * A link.
     *
     * @param page   page in our own file, counted from 1
     * @param box    where on it
     * @param target page of the package, counted from 1
     */
    public record Link(int page, Box box, int target) {
    }
}
