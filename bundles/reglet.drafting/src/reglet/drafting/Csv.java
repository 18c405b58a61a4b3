package reglet.drafting;

import java.util.List;
import java.util.stream.Collectors;

/** Comma-separated values as RFC 4180 has them: lines end CR LF, and what holds a comma, a quote or a line end is quoted. */
final class Csv {

    private Csv() {
    }

    static String line(List<String> cells) {
        return cells.stream().map(Csv::cell).collect(Collectors.joining(",")) + "\r\n";
    }

    private static String cell(String text) {
        return text.matches("[^\",\r\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
