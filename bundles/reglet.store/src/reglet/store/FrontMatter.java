package reglet.store;

import java.util.Optional;

import reglet.model.Place;

/** A text file with YAML before its Markdown, between two lines of three hyphens. */
record FrontMatter(Cursor yaml, String body) {

    static Optional<FrontMatter> of(String file, String text, Problems problems) {
        String unix = text.replace("\r\n", "\n");
        int end = unix.startsWith("---\n") ? unix.indexOf("\n---\n", 3) : -1;
        if (end < 0) {
            problems.add(new Place(file, 1, 1), "has no YAML before its text",
                "expected a line ---, names with values, a line ---, the text");
            return Optional.empty();
        }
        Optional<Cursor> yaml = Cursor.parse(file, unix.substring(4, end + 1), 1, problems);
        if (yaml.isEmpty()) {
            if (problems.isEmpty()) {
                problems.add(new Place(file, 1, 1), "has nothing between the lines ---", "expected names with values");
            }
            return Optional.empty();
        }
        return Optional.of(new FrontMatter(yaml.get(), unix.substring(end + 5).strip() + "\n"));
    }
}
