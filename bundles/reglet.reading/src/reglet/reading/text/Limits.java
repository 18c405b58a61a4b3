package reglet.reading.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Box;
import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Numbers;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.SheetValue;
import reglet.reading.words.Plain;
import reglet.reading.words.Reading;
import reglet.reading.words.Reading.Read;
import reglet.reading.words.Vocabulary;

/** Reads what a sentence asks of properties: a name, a sense and an amount in one clause. */
public final class Limits {
    private static final Pattern AMOUNT = Pattern.compile("(?i)(at least|not less than|no less than|(?:a )?minimum(?: of)?|not more than"
        + "|no more than|at most|(?:a )?maximum(?: of)?|within|not exceed(?:ing)?|(?:is|are) limited to|(?:maximum"
        + "|minimum)\\b[^.;\\d]{3,40}(?:\\bis|\\bof|:))\\s+(" + Numbers.pattern()
        + "\\s*[^\\s,.;(]+(?:\\s?/\\s?[^\\s,.;(]+)?)");
    private static final Pattern AFTER = Pattern.compile("(?i)(" + Numbers.pattern()
        + "\\s*[^\\s,.;()\\d]+\\.?)(?:\\s*\\([^()]*\\))?\\s+(?:(?:o\\.?c\\.?|on cent(?:er|re))"
        + "[\\s,]+)?(minimum|maximum|min\\b|max\\b|or (?:less|closer|fewer)|or (?:more|greater))");
    /** "At not more than 400 mm centres" is a spacing and nothing else. */
    private static final Pattern SPACED = Pattern.compile("(?i)\\s*\\.?\\s*(?:\\([^)]*\\)\\s*)?(?:on[- ]cent|cent(?:er|re)s?\\b"
        + "|o\\.?\\s?c\\b|apart).*");
    private static final Pattern SPACING = Pattern.compile("(?i).*(?:spac|apart|cent(?:er|re)|tie).*");
    private static final Pattern LEAST = Pattern.compile("(?i).*least|.*less than|.*min.*|or more|or greater");

    /** "Over the face of the nailing flange": what lies over a thing. */
    private static final Pattern PASSED = Pattern.compile(".* (?:over|behind|onto|against)(?: (?:the|its))? (?:face|back|front) of"
        + "(?: (?:the|a|an|its))?");

    private final Vocabulary vocabulary;
    private final Component component;
    private final Reading reading;

    public Limits(Vocabulary vocabulary, Component component, Reading reading) {
        this.vocabulary = vocabulary;
        this.component = component;
        this.reading = reading;
    }

    /** A limit, and how many letters of its property's name the clause has. */
    public record Limit(SheetValue value, int letters, String written) {
    }

    public List<Limit> in(String sentence, int page, Box box) {
        List<Limit> limits = new ArrayList<>();
        for (String clause : sentence.split(";|,|(?<=\\d.{0,14})\\band\\b(?!\\s+\\d)")) {
            Matcher amount = AMOUNT.matcher(clause);
            Matcher after = AFTER.matcher(clause);
            boolean before = amount.find();
            if (!before && !after.find()) {
                continue;
            }
            Matcher stated = before ? amount : after;
            String number = before ? amount.group(2) : after.group(1);
            boolean least = LEAST.matcher((before ? amount.group(1) : after.group(2)).toLowerCase(Locale.ROOT)).matches();
            boolean spaced = SPACED.matcher(clause.substring(stated.end())).matches();
            named(clause, number).filter(one -> !spaced || SPACING.matcher(one.property.label()).matches()).ifPresent(named -> {
                Property property = named.property;
                Read read = reading.read(property, number, "").orElseThrow();
                limits.add(new Limit(new SheetValue(component.id() + "." + property.name(), read.value(),
                    Optional.of(least ? Compare.AT_LEAST : Compare.AT_MOST), "", "", clause.strip(), page, Optional.of(box), false),
                        named.letters,
                    stated.group()));
            });
        }
        return limits;
    }

    private record Named(Property property, int letters) {
    }

    /** The property with the longest name in a clause. */
    private Optional<Named> named(String clause, String amount) {
        String plain = " " + Plain.of(clause) + " ";
        Property best = null;
        int length = 0;
        for (Property property : component.properties()) {
            for (String label : property.type().kind() == Kind.QUANTITY ? names(property) : List.<String>of()) {
                String wanted = Plain.of(label);
                int at = plain.indexOf(" " + wanted + " ");
                if (at >= 0 && !PASSED.matcher(plain.substring(0, at)).matches() && wanted.length() > length && reading.read(property,
                    amount, "").isPresent()) {
                    best = property;
                    length = wanted.length();
                }
            }
        }
        return best == null ? Optional.empty() : Optional.of(new Named(best, length));
    }

    private List<String> names(Property property) {
        List<String> names = new ArrayList<>(List.of(property.label()));
        names.addAll(vocabulary.names(component.id() + "." + property.name()));
        return names;
    }
}
