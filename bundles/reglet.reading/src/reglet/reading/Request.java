package reglet.reading;

import java.util.List;

/** What the process is asked, as JSON. */
record Request(String verb, List<String> sheets, String title, List<Part> parts, List<Link> links) {

    /** A part of a package; {@code sheet} is "" for pages of our own. */
    record Part(String title, int level, int firstPage, int pages, String sheet, String mark) {
    }

    record Link(int page, double x, double y, double width, double height, int target) {
    }
}
