package reglet.model;

/**
 * A place in a text file.
 *
 * @param file   path relative to the job or pack folder, with "/" between names
 * @param line   counted from 1; 0 when the whole file is meant
 * @param column counted from 1; 0 when the whole line is meant
 */
public record Place(String file, int line, int column) {

    public static Place of(String file) {
        return new Place(file, 0, 0);
    }

    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line + ":" + column;
    }
}
