package reglet.reading;

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
 * @param title   for "assemble": as {@link PackagePlan}
 * @param without for "assemble": sheets that stopped the process before, with the reason; pages in their place say so
 */
record Request(String verb, List<String> sheets, List<List<String>> words, String title, List<Part> parts, List<Link> links,
        List<Flag> flags, Map<String, String> without) {

    static Request measure(List<String> sheets) {
        return plain("measure", sheets, List.of());
    }

    /** As "measure"; the sheets stay open, and a second request to assemble them follows. */
    static Request open(List<String> sheets) {
        return plain("open", sheets, List.of());
    }

    static Request read(String sheet) {
        return plain("read", List.of(sheet), List.of());
    }

    static Request picture(String sheet, int page, int dpi) {
        return plain("picture", List.of(sheet), List.of(List.of(Integer.toString(page), Integer.toString(dpi))));
    }

    static Request find(List<String> sheets, List<List<String>> words) {
        return plain("find", sheets, words);
    }

    private static Request plain(String verb, List<String> sheets, List<List<String>> words) {
        return new Request(verb, sheets, words, "", List.of(), List.of(), List.of(), Map.of());
    }

    static Request assemble(PackagePlan plan, Map<String, String> without) {
        return new Request("assemble", List.of(), List.of(), plan.title(),
            plan.parts().stream().map(part -> new Part(part.title(), part.level(), part.firstPage(), part.pages(),
                part.sheet().map(sheet -> sheet.file().toAbsolutePath().toString()).orElse(""),
                part.sheet().map(PackagePlan.Sheet::pages).orElse(0), part.mark(), part.spots())).toList(),
            plan.links().stream().map(link -> new Link(link.page(), link.box(), link.target(), link.at().orElse(null), link.file()))
                .toList(),
            plan.flags().stream().map(flag -> new Flag(flag.page(), flag.box(), flag.text())).toList(), without);
    }

    /** A part of a package; {@code sheet} is "" for pages of our own, and {@code of} the number of all its pages. */
    record Part(String title, int level, int firstPage, int pages, String sheet, int of, String mark, List<PackagePlan.Spot> spots) {

        boolean own() {
            return sheet.isEmpty();
        }
    }

    /** A link; {@code at} is null for the page as a whole. */
    record Link(int page, Box box, int target, Box at, String file) {
    }

    record Flag(int page, Box box, String text) {
    }
}
