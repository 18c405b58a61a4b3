package reglet.reading.process;

import java.util.List;
import java.util.Map;

import reglet.model.Box;

/**
 * What the process is asked, as JSON.
 *
 * @param verb    "measure", "open", "read", "find", "picture" or "assemble"
 * @param sheets  for all but "assemble": paths of the sheets
 * @param words   for "find": what is looked for on each of the sheets; for "picture": the page and the
 *                dots per inch
 * @param title   for "assemble": as the plan of the package
 * @param without for "assemble": sheets that stopped the process before, with the reason; pages in their place say so
 */
public record Request(String verb, List<String> sheets, List<List<String>> words, String title, List<Part> parts, List<Link> links,
        List<Flag> flags, Map<String, String> without) {

    public static Request measure(List<String> sheets) {
        return plain("measure", sheets, List.of());
    }

    /** As "measure"; the sheets stay open, and a second request to assemble them follows. */
    public static Request open(List<String> sheets) {
        return plain("open", sheets, List.of());
    }

    public static Request read(String sheet) {
        return plain("read", List.of(sheet), List.of());
    }

    public static Request picture(String sheet, int page, int dpi) {
        return plain("picture", List.of(sheet), List.of(List.of(Integer.toString(page), Integer.toString(dpi))));
    }

    static Request find(List<String> sheets, List<List<String>> words) {
        return plain("find", sheets, words);
    }

    private static Request plain(String verb, List<String> sheets, List<List<String>> words) {
        return new Request(verb, sheets, words, "", List.of(), List.of(), List.of(), Map.of());
    }

    /** A package; the pages of our own come with the request. */
    public static Request assemble(String title, List<Part> parts, List<Link> links, List<Flag> flags, Map<String, String> without) {
        return new Request("assemble", List.of(), List.of(), title, parts, links, flags, without);
    }

    /** A part of a package; {@code sheet} is "" for pages of our own, and {@code of} the number of all its pages. */
    public record Part(String title, int level, int firstPage, int pages, String sheet, int of, String mark, List<Spot> spots) {

        public boolean own() {
            return sheet.isEmpty();
        }
    }

    /** A link; {@code at} is null for the page as a whole. */
    public record Link(int page, Box box, int target, Box at, String file) {
    }

    public record Flag(int page, Box box, String text) {
    }

    /** A place of a sheet's page that is marked; {@code number} is "" for nothing beside it. */
    public record Spot(int page, Box box, String number) {
    }
}
