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

    public PackagePlan {
        parts = List.copyOf(parts);
        links = List.copyOf(links);
    }

    /**
     * Some pages in a row.
     *
     * @param title     title of the bookmark
     * @param level     1, or 2 for a bookmark below the last of level 1
     * @param firstPage first page in our own file, counted from 1; 0 for a sheet
     * @param pages     number of pages
     * @param sheet     the foreign file; empty for pages of our own
     * @param mark      what is marked on each foreign page, with {@code %d} for the page within the sheet; ""
     */
    public record Part(String title, int level, int firstPage, int pages, Optional<Path> sheet, String mark) {
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
