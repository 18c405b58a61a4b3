package reglet.store;

/** The number of a file format, by which an old program knows that it doesn't understand a new file. */
final class Formats {

    private Formats() {
    }

    /** Refuses a file of another format than the one known. */
    static void check(Fields fields, int known, String what) {
        int format = fields.number("format", 0);
        if (format > known) {
            fields.find("format").orElseThrow().wrong("format " + format + " is newer than this program",
                "this program reads " + what + " files of format " + known + "; use a newer program, the file is untouched");
        } else if (format < known) {
            fields.problems().add(fields.at(), fields.find("format").isEmpty() ? "\"format\" is missing" : "there never was a format "
                + format,
                "expected \"format: " + known + "\"");
        }
    }
}
