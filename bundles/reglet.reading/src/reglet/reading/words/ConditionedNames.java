package reglet.reading.words;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import reglet.model.Compare;

/** Names of properties with the conditions, faces or tests that they were measured at: "permeance after 7 days", "Peel, glass / mortar". */
final class ConditionedNames {
    private static final Pattern CONDITIONS = Pattern.compile("[,;@]|\\s[-–—]\\s|\\bat\\b|\\bafter\\b|\\bwhen\\b");
    /** "24 h cold soak, …", "72-h immersion, …", "after 7 days, …": names a test before what it tells. */
    private static final Pattern TESTED = Pattern.compile("(?is).*\\b(?:soak|immersion|exposure|boil|ag(?:e)?ing|weathering|test|cure"
        + "|cycles?|hours?|days?|\\d+ ?-?(?:h|hr|d))\\b.*,.*");
    private static final Pattern FACES = Pattern.compile(CONDITIONS + "|\\bto\\b|\\bon\\b|\\bwithout\\b|\\bexcluding\\b|\\bless\\b");
    private static final double LAST = 0.9;

    private final PropertyNames names;

    ConditionedNames(PropertyNames names) {
        this.names = names;
    }

    Optional<Label> named(String text, double quality) {
        int stroke = text.indexOf(" / ");
        if (stroke > 0 && text.indexOf(" / ", stroke + 1) < 0) {
            // the same in another language, of which the pack knows no word
            String other = Plain.of(text.substring(stroke + 3));
            if (other.matches("(?:smoke|sd|sdi)(?: .*)?")) {
                // "flame spread / smoke developed": the first of two figures
                return names.exact(Plain.of(text.substring(0, stroke)), quality * 0.95);
            }
            Optional<Label> one = names.exact(Plain.of(text.substring(0, stroke)), quality * 0.95);
            if (one.isPresent() && names.exact(other, 1).filter(label -> label.properties().equals(one.get().properties())).isPresent()) {
                // "finish / coating"
                return one;
            }
            boolean foreign = !other.isEmpty() && List.of(other.split(" ")).stream().noneMatch(names::isOfThePack);
            // "Peel, glass / mortar": on what it was found
            return foreign ? named(text.substring(0, stroke), quality * 0.95) : measured(text, CONDITIONS, quality);
        }
        if (text.contains(":") && !text.strip().endsWith(":")) {
            // "surface burning: flame spread index"
            return names.exact(Plain.of(text.substring(text.lastIndexOf(':') + 1)), quality * 0.93);
        }
        Optional<Label> whole = names.exact(Plain.of(text), quality);
        if (whole.isPresent()) {
            return whole;
        }
        // "compressive strength, average of five units", "permeance after 7 days"
        return measured(text, CONDITIONS, quality).or(() -> measured(text, FACES, quality))
            .or(() -> TESTED.matcher(text).matches() ? soaked(text, quality) : Optional.empty());
    }

    /** A name with the conditions or faces that it was measured at. */
    private Optional<Label> measured(String text, Pattern apart, double quality) {
        String[] parts = apart.split(text);
        if (parts.length > 1) {
            Optional<Label> first = names.exact(Plain.of(parts[0]), quality * 0.97);
            boolean conditions = true;
            for (int i = 1; i < parts.length; i++) {
                conditions &= PropertyNames.isCondition(Plain.of(parts[i]));
            }
            if (first.isPresent() && conditions) {
                Optional<Compare> sense = PropertyNames.sense(Plain.of(text));
                return first.map(label -> label.sense().isPresent() ? label : new Label(label.properties(), label.quality(), label.unit(),
                    sense, label.methods()));
            }
        }
        return Optional.empty();
    }

    /** "24 h cold soak, reduction of absorption": how it was tested, and what. */
    private Optional<Label> soaked(String text, double quality) {
        int comma = text.lastIndexOf(',');
        String first = comma < 0 ? "" : Plain.of(text.substring(0, comma));
        return comma < 0 || names.exact(first, 1).isPresent() ? Optional.empty()
            : names.exact(Plain.of(text.substring(comma + 1)), quality * LAST);
    }
}
