package reglet.reading.table;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import reglet.reading.page.Cell;
import reglet.reading.value.Around;
import reglet.reading.value.Taken;
import reglet.reading.words.Citations;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;

/** Several names beside as many values: "Nominal size / shank dia. | No. 8 / 0.164 in.". */
record SeveralNames(Labels labels, Taken taken) {
    private static final Pattern STROKE = Pattern.compile("\\s+/\\s+");
    private static final double SHARE = 0.9;

    /** Takes down what the names that are known are of; false where none is, or where names and values are not as many. */
    boolean read(Cell label, Cell value, Citations citations) {
        String[] names = STROKE.split(label.text());
        String[] values = STROKE.split(value.text());
        if (names.length < 2 || names.length != values.length) {
            return false;
        }
        boolean any = false;
        int from = 0;
        for (int i = 0; i < names.length; i++) {
            int at = value.text().indexOf(values[i], from);
            from = at + values[i].length();
            Optional<Label> named = labels.read(names[i].strip());
            // the same property twice is one told in two units, or on two things
            boolean own = named.isPresent() && List.of(names).stream().filter(name -> labels.read(name.strip()).map(Label::properties)
                .equals(named.map(Label::properties))).count() == 1;
            any |= own && taken.quietly(named.get(), names[i], value.part(at, from), Around.of(citations.in(label.text()), SHARE));
        }
        return any;
    }
}
