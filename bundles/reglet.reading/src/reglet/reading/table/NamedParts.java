package reglet.reading.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.reading.page.Cell;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;

/** "Flame spread = 0; smoke developed = 0": a cell whose parts name what each of them is of. */
final class NamedParts {
    private static final Pattern NAMED = Pattern.compile("(\\p{L}[\\p{L} -]{2,40}?)\\s*[=:]\\s*(\\S[^=:;]*)");
    private static final Pattern STOP = Pattern.compile(";\\s*|$");

    private NamedParts() {
    }

    /** @param written the name as it stands there */
    record Part(Label label, String written, Cell value) {
    }

    /** The parts of a cell; empty where one of them names nothing. */
    static List<Part> of(Cell cell, Labels labels) {
        List<Part> parts = new ArrayList<>();
        Matcher stop = STOP.matcher(cell.text());
        int from = 0;
        while (stop.find()) {
            Matcher named = NAMED.matcher(cell.text()).region(from, stop.start());
            Optional<Label> label = named.matches() ? labels.read(named.group(1)) : Optional.empty();
            if (label.isEmpty()) {
                return List.of();
            }
            parts.add(new Part(label.get(), named.group(1), cell.part(named.start(2), named.end(2))));
            from = stop.end();
        }
        return parts;
    }
}
