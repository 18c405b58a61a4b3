package reglet.reading;

import java.util.List;

import reglet.model.Box;

/**
 * What the process is asked, as JSON.
 *
 * @param verb   "measure", "read" or "assemble"
 * @param sheets for "measure" and "read": paths of the sheets
 * @param title  for "assemble": as {@link PackagePlan}
 */
record Request(String verb, List<String> sheets, String title, List<Part> parts, List<Link> links) {

    static Request measure(List<String> sheets) {
        return new Request("measure", sheets, "", List.of(), List.of());
    }

    static Request read(String sheet) {
        return new Request("read", List.of(sheet), "", List.of(), List.of());
    }

    static Request assemble(PackagePlan plan) {
        return new Request("assemble", List.of(), plan.title(),
            plan.parts().stream().map(part -> new Part(part.title(), part.level(), part.firstPage(), part.pages(),
                part.sheet().map(sheet -> sheet.toAbsolutePath().toString()).orElse(""), part.mark())).toList(),
            plan.links().stream().map(link -> new Link(link.page(), link.box(), link.target())).toList());
    }

    /** A part of a package; {@code sheet} is "" for pages of our own. */
    record Part(String title, int level, int firstPage, int pages, String sheet, String mark) {

        boolean own() {
            return sheet.isEmpty();
        }
    }

    record Link(int page, Box box, int target) {
    }
}
