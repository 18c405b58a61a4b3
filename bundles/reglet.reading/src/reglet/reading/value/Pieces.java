package reglet.reading.value;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import reglet.model.Component;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Unit;
import reglet.reading.page.Cell;
import reglet.reading.words.Amounts;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Reading;
import reglet.reading.words.Reading.Read;

/** What a part of a cell's words says where they are no value as a whole. */
final class Pieces {
    private static final Pattern SENSE_BEFORE = Pattern.compile("(?i)(?:[≥≤<>]=?|\\b(?:min(?:imum)?|max(?:imum)?)\\b\\.?(?: of)?"
        + "|\\b(?:at (?:least|most)"
        + "|(?:not|no) (?:less|more) than|up to|within))\\s*$");
    /** Answers whatever is asked. */
    private static final Pattern ANSWER = Pattern.compile("(?i)(?:yes|no|none|pass(?:ed|es)?|fail(?:ed|s)?|n|y|included|required"
        + "|provided|not .*)\\b.*");
    /** The number of a standard of the body that is named before another: "ANSI A118.4, A118.11". */
    private static final Pattern NUMBERED = Pattern.compile("\\b[A-Z]\\d+\\.\\d+\\b");
    private static final Pattern NUMBER = Pattern.compile("(?i)(?:#|\\bno\\.?)\\s?\\d+(?:-\\d+)?");
    private static final double ANOTHER = 0.88;
    static final double WITHIN = 0.82;
    static final double REPEATED = 0.9;

    private final Component component;
    private final Reading reading;
    private final Bounds bounds;

    /** A value, and the part of the cell that it was read in. */
    record Piece(Property property, Cell cell, Read read) {
    }

    Pieces(Component component, Reading reading, Bounds bounds) {
        this.component = component;
        this.reading = reading;
        this.bounds = bounds;
    }

    /** The only amount among other words that may be one. */
    Optional<Piece> amount(Label label, Cell cell, String text) {
        for (Property property : label.properties()) {
            if (property.type().unit().filter(unit -> !unit.symbol().isEmpty()).isEmpty()) {
                continue;
            }
            List<String> amounts = Amounts.in(text, property, reading).stream().filter(words -> reading.read(property, words, "")
                .filter(read -> holds(property, read)).isPresent()).toList();
            int from = amounts.size() == 1 ? cell.text().indexOf(amounts.get(0)) : -1;
            // "2.5 or 3.4 lb"; "#8" is a screw's number
            boolean either = from > 0 && NUMBER.matcher(cell.text().substring(0,
                from)).replaceAll("").matches("(?s).*\\d\\S*\\s*(?:or|and|&|/|,|to|x|×|by|[-–—])\\s*");
            if (from >= 0 && !either) {
                // "min. 2 in. on all edges"
                Matcher sense = SENSE_BEFORE.matcher(cell.text().substring(0, from));
                int start = sense.find() && reading.read(property, cell.text().substring(sense.start(), from + amounts.get(0).length()), "")
                    .isPresent() ? sense.start() : from;
                Cell part = cell.part(start, from + amounts.get(0).length());
                return Optional.of(new Piece(property, part, reading.read(property, part.text(), "").orElseThrow().with(WITHIN,
                    "Other words stand with it: " + cell.text() + ".")));
            }
        }
        return Optional.empty();
    }

    /**
     * What a cell says beside the value that was read: "furring: V-grooves 3/8 in. deep" answers "self-furring?" and is an amount, "largest
     * unit: 20 × 6 in. (120 sq in.)" says a length and an area.
     */
    Optional<Piece> beside(Label label, Property read, Cell cell, String text, Around around) {
        List<Property> others = label.properties().stream().filter(property -> property != read && !property.type().unit().map(Unit
            ::dimension).equals(read.type().unit().map(Unit::dimension))).toList();
        boolean asked = around.model().isEmpty() && (read.type().kind() == Kind.FLAG || read.type().kind() == Kind.QUANTITY);
        return asked ? amount(new Label(others, 1, "", Optional.empty(), List.of()), cell, text) : Optional.empty();
    }

    /** "Type: flat" tells of another property than which type it is: the only one that has such a word. */
    Optional<Piece> another(Label label, Cell cell, String text) {
        if (label.properties().stream().anyMatch(property -> property.type().kind() != Kind.WORD) || ANSWER.matcher(text).matches()) {
            return Optional.empty();
        }
        List<Property> others = component.properties().stream().filter(property -> !label.properties().contains(property)
            && (property.type().kind() == Kind.WORD || property.type().kind() == Kind.FLAG) && !property.type().words().equals(List.of())
            == (property.type().kind() == Kind.WORD) && reading.read(property, text, "").isPresent()).toList();
        return others.size() != 1 ? Optional.empty() : Optional.of(new Piece(others.get(0), cell, reading.read(others.get(0), text, "")
            .orElseThrow().with(ANOTHER, "")));
    }

    /** "Aluminum 3105-H14, PVDF coil coating": the word that a turn of phrase says, of the only property that has one such. */
    Optional<Piece> turned(Label label, Cell cell, String text) {
        List<Piece> all = label.properties().stream().flatMap(property -> reading.turned(property, text).map(read -> new Piece(property,
            cell, read)).stream()).toList();
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    /** A value whose label is repeated in its cell, by the text that is left without that. */
    Optional<Piece> unrepeated(Label label, Cell cell, String text, Around around) {
        for (Property property : label.properties()) {
            Optional<Read> read = reading.read(property, text, label.unit().isEmpty() ? around.unit() : label.unit());
            if (property.type().unit().isPresent() && read.isPresent() && holds(property, read.get())) {
                return Optional.of(new Piece(property, cell, read.get().with(REPEATED, "")));
            }
        }
        return Optional.empty();
    }

    /** The standard that shows a value: of "A118.4, A118.11 and A118.15" the one by whose name a word is known that no test shows. */
    Optional<Citation> by(Property property, Read read, Cell cell, List<Citation> methods) {
        if (property.type().kind() != Kind.WORD || !property.method().isNone() || methods.isEmpty()) {
            return Citations.asked(property, methods);
        }
        Citation first = methods.get(0);
        String body = first.name().substring(0, first.name().indexOf(' ') + 1);
        Stream<Citation> further = NUMBERED.matcher(cell.text()).results().map(one -> new Citation(one.start(), one.end(), body + one
            .group(), ""));
        return Stream.concat(methods.stream(), NUMBERED.matcher(first.name()).find() ? further : Stream.of()).filter(one -> reading
            .read(property, one.name(), "").filter(word -> word.value().text().equals(read.value().text())).isPresent()).findFirst()
            .or(() -> Citations.asked(property, methods));
    }

    private boolean holds(Property property, Read read) {
        return bounds.holds(component.id() + "." + property.name(), read.value());
    }
}
