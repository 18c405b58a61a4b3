package reglet.reading.words;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import reglet.model.Compare;
import reglet.model.Component;
import reglet.model.Evidence;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.words.Citations.Citation;

/** Tells which property of a component a maker's label names. A label with a word too many, such as "roll width", names none. */
public final class Labels {
    private static final double LAST = 0.9;
    /** "Weight lb/yd²": a unit at the end that can be nothing else. */
    private static final Pattern UNIT_LAST = Pattern.compile("(.*\\S)\\s+((?:\\S*[/²%°]\\S*|mm|psi|psf|perms?|mils?|mil|kPa|MPa|days"
        + "|inches|in\\.?|ft\\.?))\\s*");
    /** "Permeance, ng/(Pa·s·m²)". */
    private static final Pattern FRACTION = Pattern.compile(".*\\S[,\\s]\\s*[(\\[]?([\\p{L}µ²³·.]{1,8}/\\([^()]{2,14}\\))[)\\]]?\\s*");
    private static final Pattern UNIT_WORD = Pattern.compile("(?i)perms?|mils?|days|psi|psf");
    /** "…, cfm/ft² at 75 Pa". */
    private static final Pattern MEASURED_AT = Pattern.compile("\\s*(\\S.*?)\\s+((?:at|@|after)\\s.*)");
    /** "Oversize, % of joint width": a share, and of what. */
    private static final Pattern SHARE_OF = Pattern.compile("^(.*\\S)(?:,\\s*|\\s+\\()%\\s+(?:of|by)\\s[\\p{L} ]+\\)?");
    /** "Face area of one unit, in.² max.". */
    private static final Pattern UNIT_SENSE = Pattern.compile("^(.*,\\s*\\S{1,9})\\s+((?:max|min)(?:imum|\\.)?)");
    /** What stands last between commas. */
    private static final Pattern TAIL = Pattern.compile(",([^,]*)$");
    /** No minutes: "strength, min." */
    private static final Pattern SENSE = Pattern.compile("(?i)\\s*(?:(?:min|max)\\.?|(?:at )?(?:least|most)|not? (?:less|more) than"
        + "|not (?:under|over)|up to)\\s*");
    /** "Application temperature, minimum": whatever the pack asks for, also where it knows the whole as a name. */
    private static final Pattern SENSE_LAST = Pattern.compile("(?i).*, *(?:minimum|maximum|at least|at most"
        + "|not? (?:less|more) than|up to)\\s*");
    /** "24-hour cold water absorption", "28 day shear bond". */
    private static final Pattern TIMED = Pattern.compile("(?i)^\\W*(?:after )?\\d+[ -]?(?:h|hr|hour|d|day|week|month|cycle)s?\\.?[ ,-]+"
        + "(?=\\p{L})");
    /** "Max. length": a limit on lengths, and no name such as "maximum face dimension". */
    private static final Pattern ABBREVIATED = Pattern.compile("(?i)(?:max|min)\\.\\s");
    /** "R (h·ft²·°F/Btu)", of a figure that the pack knows without its unit. */
    private static final Pattern THERMAL = Pattern.compile("(?i)[\\p{L}°²2·⋅*/.\\s-]*(?:\\bbtu|/w)");
    private static final Pattern PARENTHESES = Pattern.compile("[(\\[]([^()\\[\\]]*)[)\\]]");
    /** What is measured, and in brackets at least four words of what it is measured on. */
    private static final Pattern ASIDE = Pattern.compile("([^()]*[^()\\s])\\s*\\((?:[\\p{L}-]+,? ){3,}[\\p{L}-]+\\)");
    private static final Pattern NOTED = Pattern.compile("(?<=\\p{L}{3})(?:[1-9]| [a-e](?=,)|\\s?\\([1-9a-f]\\)"
        + "|\\s?[*†‡]+)(?=\\s*(?:$|[(,:]))");
    private static final Pattern LETTERED = Pattern.compile("(?i:(?!.*(?:type|class|grade|method|procedure|use|level|style|option"
        + "|annex|part)\\W+[A-H]\\W*$))(\\p{Lu}?[\\p{Ll}\\s]{3,30})[,\\s]+[(\"“]?[A-HLTW][)\"”]?((?:,|\\s?\\()\\s*\\S+"
        + "|\\s+(?:in|mm|ft)\\.?(?:\\s*\\([^()]*\\))?)?");
    private static final Pattern DOT = Pattern.compile("^\\s*[•▪■●◦‣]\\s*");
    /** "Face (H × L)". */
    private static final Pattern HEIGHT_LENGTH = Pattern.compile("(?:(?i:face|size|face size|nominal size|unit size|dimensions?)"
        + "\\s*)?\\(?\\bH\\s*[×x]\\s*[LW]\\b\\)?");
    /** "Joint width as shipped". */
    private static final Pattern AS_MADE = Pattern.compile("(?i)(?<=\\p{L})[,\\s(]+as (?:shipped|supplied|delivered|furnished|sold|packed"
        + "|made|installed)\\)?\\s*$");
    /** "Nailing flange, all sizes". */
    private static final Pattern OF_ALL = Pattern.compile("(?i)(?<=[\\p{L}\"”)])[,\\s]\\s*\\(?(?:all|each|every) "
        + "(?:sizes?|models?|items?|styles?"
        + "|parts?|types?|profiles?|widths?|lengths?|grades?|thicknesses|grounds?)\\)?\\s*$");
    private static final Pattern SIDED = Pattern.compile("(?i)(\\p{L}[\\p{L} ]*?)\\s*(?:×|\\bx\\b|\\bby\\b)\\s*"
        + "(\\p{L}[\\p{L} ]*?)(,\\s*\\S+|\\s*\\([^()]*\\))?");
    private static final Pattern UNIT_BEHIND = Pattern.compile("[,(\\[]\\s*([^,()\\[\\]]{1,20})[)\\]]?\\s*$");
    /** The first of two units: "strength, psi (kPa), min.". */
    private static final Pattern UNIT_BEFORE = Pattern.compile(",\\s*([^,()]{1,12}?)\\s*$");
    /** "Mils (gauge)" above "43 (18)". */
    private static final Pattern GAUGED = Pattern.compile("(?i)\\((?:gauge|gage|ga\\.?)\\)");
    private static final int LONGEST_MISSPELT = 50;
    private static final int LONGEST_LIST = 70;
    private static final double MISSPELT = 0.8;
    private static final double TIMED_SHARE = 0.97;
    private static final double BY_METHOD = 0.82;

    private final Component component;
    private final Citations citations;
    private final PropertyNames names;
    private final ConditionedNames conditioned;
    private final Map<String, Optional<Label>> seen = new HashMap<>();
    private final Map<String, Optional<Label>> held = new HashMap<>();

    public Labels(Vocabulary vocabulary, Component component, Citations citations) {
        this.component = component;
        this.citations = citations;
        this.names = new PropertyNames(vocabulary, component);
        this.conditioned = new ConditionedNames(names);
    }

    /** What whoever builds the wall decides, such as the width of a joint: a sheet says what its product suits, not what it is. */
    public static boolean isOfTheWork(Property property) {
        return property.type().unit().isPresent() && property.compare() == Compare.EXACTLY && property.evidence() == Evidence.NONE;
    }

    public Component component() {
        return component;
    }

    /** The properties that words in one spelling name, without anything else. */
    public List<Property> named(String plain) {
        return names.of(plain);
    }

    /** What a label says; empty when it names no property of the component. */
    public Optional<Label> read(String written) {
        return seen.computeIfAbsent(written, whole -> bare(HEIGHT_LENGTH.matcher(OF_ALL.matcher(whole).replaceFirst("")).replaceFirst(
            "height × length")));
    }

    private Optional<Label> bare(String one) {
        return find(one).or(() -> AS_MADE.matcher(one).find() ? find(AS_MADE.matcher(one).replaceFirst("")) : Optional.empty()).or(
            () -> DOT.matcher(one).find() ? bare(DOT.matcher(one).replaceFirst("")) : Optional.empty()).or(() -> lettered(one)).or(() -> noted(one)).or(() -> timed(one)).or(() -> sided(one)).or(() -> misspelt(one));
    }

    /**
     * As {@link #read(String)}; a label that names nothing names what is measured by a standard that is cited beside it, where only one
     * property of the component is, and where it says a word of that property's names.
     */
    public Optional<Label> read(String written, List<Citation> beside) {
        return read(written).or(() -> beside.isEmpty() ? Optional.empty() : measuredBy(written, beside));
    }

    /**
     * As {@link #read(String, List)} beside a value, which has to be one of the property's: a label that holds a name names what it does,
     * unless what else it says is of another thing: "Lap, course over course", "Bed thickness after pressing".
     */
    public Optional<Label> besideValue(String written, List<Citation> cited) {
        return nearest(written).or(() -> read(written, cited)).or(() -> on(written)).or(() -> held.computeIfAbsent(written, one -> find(one,
            true)));
    }

    /** "Staining of porous substrates: limestone, granite", "Strength (full-size brick of the same body)": what is measured, and on
     * what. */
    private Optional<Label> on(String written) {
        Matcher aside = ASIDE.matcher(written);
        if (aside.matches()) {
            return read(aside.group(1));
        }
        int colon = written.indexOf(": ");
        return colon < 0 || written.length() - colon > LONGEST_LIST || written.substring(colon).matches(".*\\d.*") ? Optional.empty()
            : read(written.substring(0, colon));
    }

    /** What a label names word by word by a name that holds beside a value alone: "Weight of veneer units" of a report is no lath's. */
    public Optional<Label> nearest(String written) {
        int comma = written.indexOf(',');
        return names.beside(Plain.of(written)).or(() -> comma < 0 || !PropertyNames.isCondition(Plain.of(written.substring(
            comma))) ? Optional.empty() : names.beside(Plain.of(written.substring(0, comma))).map(label -> new Label(label.properties(),
                label.quality(), "", PropertyNames.sense(Plain.of(written)), List.of())))
            .map(label -> new Label(label.properties(), label.quality(), unit(written), label.sense(), label.methods()));
    }

    /** "Load at crush, psf", "Load at crush (psf)". */
    private static String unit(String written) {
        Matcher last = UNIT_BEHIND.matcher(written);
        String alone = written.replaceAll("\\s*[(\\[][^()\\[\\]]*[)\\]]", "").strip();
        if (UnitSpelling.isUnit(alone)) {
            // "Mils (gauge)"
            return GAUGED.matcher(written).find() ? alone + " (gauge)" : alone;
        }
        return UnitSpelling.atEnd(written).or(() -> last.find() && UnitSpelling.isUnit(last.group(1)) ? Optional.of(last.group(1))
            : Optional.empty()).orElse("");
    }

    /** As {@link #read(String, List)}; a standard alone names the only property that it classifies by: "ASTM C1330 | Type C". */
    public Optional<Label> classified(String written, List<Citation> beside) {
        List<Citation> own = citations.in(written);
        List<Property> by = own.size() == 1 && Citations.isAlone(written, own) ? component.properties().stream().filter(property ->
            (property.type().kind() == Kind.WORD || property.type().kind() == Kind.GRADE) && isBy(property, own.get(0))).toList()
            : List.of();
        return read(written, beside).or(() -> by.size() != 1 ? Optional.empty() : Optional.of(new Label(by, BY_METHOD, "", Optional.empty(),
            own)));
    }

    private Optional<Label> measuredBy(String written, List<Citation> beside) {
        Set<String> words = new HashSet<>(List.of(Plain.of(written).split(" ")));
        List<Property> measured = component.properties().stream().filter(property -> isAmount(property) && beside.stream()
            .anyMatch(citation -> isBy(property, citation))).toList();
        boolean one = !measured.isEmpty() && component.properties().stream().filter(other -> other.method().standard()
            .equals(measured.get(0).method().standard()) && !other.label().equals(measured.get(0).label())).findAny().isEmpty();
        boolean said = one && names.areHintedAt(measured.get(0), words);
        // "Adhesion in peel, pli: concrete"
        int colon = written.indexOf(": ");
        return said ? Optional.of(new Label(measured, BY_METHOD, colon < 0 ? "" : unit(written.substring(0, colon)), Optional.empty(),
            beside)) : Optional.empty();
    }

    private static boolean isBy(Property property, Citation citation) {
        return !property.method().isNone() && citation.name().startsWith(property.method().standard());
    }

    private static boolean isAmount(Property property) {
        return property.type().unit().filter(unit -> !unit.symbol().isEmpty()).isPresent();
    }

    /** "Ground B", "Length L, in.": the letter of a drawing behind the name of what it shows. */
    private Optional<Label> lettered(String written) {
        Matcher letter = LETTERED.matcher(written);
        return letter.matches() ? find(letter.group(1) + (letter.group(2) == null ? "" : letter.group(2))) : Optional.empty();
    }

    /** "Flame spread2", "drainage efficiency3 (% drained)": the mark of a note as large as the letters. */
    private Optional<Label> noted(String written) {
        Matcher mark = NOTED.matcher(written);
        return mark.find() ? find(mark.replaceFirst("")) : Optional.empty();
    }

    /** What was measured after some time is what is measured: "5-hour boil absorption". */
    private Optional<Label> timed(String written) {
        Matcher time = TIMED.matcher(written);
        return time.find() ? find(written.substring(time.end())).map(label -> new Label(label.properties(), label.quality() * TIMED_SHARE,
            label.unit(), label.sense(), label.methods())) : Optional.empty();
    }

    /** "Height × length, in." above "4–12 × 6–20": that side which is asked for. */
    private Optional<Label> sided(String written) {
        Matcher sides = SIDED.matcher(written);
        return !sides.matches() ? Optional.empty() : Stream.of(sides.group(2), sides.group(1)).map(side -> find(side + (sides
            .group(3) == null ? "" : sides.group(3)))).flatMap(Optional::stream).filter(label -> label.properties().stream().allMatch(
                Reading::isLongerSide)).map(label -> new Label(label.properties(), label.quality() * LAST, label.unit(), label.sense(),
                    label.methods())).findFirst();
    }

    /** A label with slips of the pen: only of amounts, whose units have to fit too. */
    private Optional<Label> misspelt(String written) {
        if (written.length() > LONGEST_MISSPELT || written.matches(".*\\d.*")) {
            return Optional.empty();
        }
        return names.mended(Plain.of(written)).flatMap(this::find).filter(label -> label.properties().stream()
            .allMatch(Labels::isAmount)).map(label -> new Label(label.properties(), label.quality() * MISSPELT, label.unit(), label.sense(),
                label.methods()));
    }

    private Optional<Label> find(String written) {
        return find(written, false);
    }

    /** @param held whether the label may say more than a name */
    private Optional<Label> find(String written, boolean held) {
        if (written.length() > 120 || written.isBlank()) {
            return Optional.empty();
        }
        if (!names.holdWordOf(Plain.of(written))) {
            return Optional.empty();
        }
        List<Citation> methods = citations.in(written);
        String cleaned = ThermalResistance.withoutUnit(Citations.without(written, methods)).replaceAll("^[\\s•·▪■*-]+", "")
            .replaceAll("^(?:\\d{1,2}[.)]|[a-z][.)]|\\([a-zA-Z0-9]\\)|[A-Z]\\s?[,:=–-](?=\\s\\p{Ll})|[A-F]\\s[–—-](?=\\s\\p{L})"
                + "|[\"'][A-H][\"'])\\s+",
                "").replaceAll("[:=\\s]+$", "")
            .replaceAll("^[,\\s]*(?:\\p{Lu}{2,}[ -]?[\\w-]*\\d[\\w-]*)?\\s*(?:(?i:series|part|method) [ivxIVX\\d]+)?,\\s*(?=\\p{Ll})", "");
        cleaned = SHARE_OF.matcher(UNIT_SENSE.matcher(cleaned).replaceFirst("$1, $2")).replaceFirst("$1, %");
        // "Weight, lb/yd² (kg/m²)"
        Matcher fraction = FRACTION.matcher(cleaned);
        String unit = UnitSpelling.atEnd(cleaned).orElse(fraction.matches() && UnitSpelling.isUnit(fraction.group(1)) ? fraction.group(1)
            : "");
        String text = unit.isEmpty() ? cleaned : cleaned.substring(0, cleaned.lastIndexOf(unit)).replaceAll("[\\s,–(\\[-]+$", "");
        Optional<Compare> stated = Optional.empty();
        StringBuilder bare = new StringBuilder();
        StringBuilder whole = new StringBuilder();
        Matcher inside = PARENTHESES.matcher(text);
        int from = 0;
        while (inside.find()) {
            bare.append(text, from, inside.start()).append(' ');
            whole.append(text, from, inside.start()).append(' ');
            from = inside.end();
            String content = inside.group(1).strip();
            if (SENSE.matcher(content).matches()) {
                stated = PropertyNames.sense(Plain.of(content));
            } else if (!content.isEmpty() && UnitSpelling.isUnit(content)) {
                Matcher before = UNIT_BEFORE.matcher(bare);
                boolean two = before.find() && UnitSpelling.isUnit(before.group(1));
                unit = two ? before.group(1) + " (" + content + ")" : content;
                if (two) {
                    bare.setLength(before.start());
                    whole = new StringBuilder(bare);
                }
            } else {
                whole.append(content).append(' ');
            }
        }
        bare.append(text.substring(from));
        whole.append(text.substring(from));
        while (TAIL.matcher(bare).find()) {
            // "strength, vertical, psi, min."
            Matcher tail = TAIL.matcher(bare);
            tail.find();
            String last = tail.group(1).strip();
            if (stated.isEmpty() && SENSE.matcher(last).matches()) {
                stated = PropertyNames.sense(Plain.of(last));
            } else if (!last.isEmpty() && !(unit.isEmpty() && !SENSE.matcher(last).matches() && UnitSpelling.isUnit(last))) {
                break;
            } else if (!last.isEmpty()) {
                unit = last;
            }
            bare.setLength(tail.start());
            whole = new StringBuilder(bare);
        }
        int comma = bare.lastIndexOf(",");
        String behind = unit.isEmpty() && comma > 0 ? bare.substring(comma + 1).strip() : "";
        boolean thermal = THERMAL.matcher(behind).matches();
        if (thermal || !SENSE.matcher(behind).matches() && UnitSpelling.isUnit(behind)) {
            unit = thermal ? "" : behind;
            bare.setLength(comma);
            whole = new StringBuilder(bare);
        }
        Matcher measured = comma < 0 || comma >= bare.length() ? null : MEASURED_AT.matcher(bare.substring(comma + 1));
        if (unit.isEmpty() && measured != null && measured.matches() && UnitSpelling.isUnit(measured.group(1))
            && PropertyNames.isCondition(Plain.of(measured.group(2)))) {
            unit = measured.group(1).strip();
            bare.setLength(comma);
            whole = new StringBuilder(bare);
        }
        Matcher last = UNIT_LAST.matcher(bare);
        if (unit.isEmpty() && last.matches() && UnitSpelling.isUnit(last.group(2)) && conditioned.named(last.group(1), 1).isPresent()) {
            unit = last.group(2);
            bare = new StringBuilder(last.group(1));
            whole = new StringBuilder(bare);
        }
        if (unit.isEmpty()) {
            unit = wordsLast(bare, whole);
        }
        if (unit.isEmpty()) {
            // "perm rating", "dry mils": the unit of bare figures
            unit = Stream.of(text.split("[^\\p{L}]+")).filter(word -> UNIT_WORD.matcher(word).matches()).findFirst().orElse("");
        }
        String hint = !unit.isEmpty() && !unit.contains("(gauge)") && GAUGED.matcher(written).find() ? unit + " (gauge)" : unit;
        Optional<Compare> sense = stated.or(() -> ABBREVIATED.matcher(text).lookingAt() ? PropertyNames.sense(Plain.of(text))
            : Optional.empty());
        String outside = bare.toString();
        String inBrackets = whole.toString();
        return (held ? names.held(outside, Plain.of(inBrackets)) : conditioned.named(inBrackets, 1)).or(() -> held ? Optional.empty()
            : conditioned.named(outside, PARENTHESES.matcher(text).results()
            .allMatch(match -> PropertyNames.isCondition(Plain.of(match.group(1))) || isRemark(match.group(1))
                || THERMAL.matcher(match.group(1)).matches() || UnitSpelling.isUnit(match.group(1).strip())
                || !names.of(Plain.of(match.group(1))).isEmpty()) ? 0.97 : 0))
            .filter(label -> label.quality() > 0)
            .map(label -> new Label(label.properties(), label.quality(), label.properties().stream().allMatch(ThermalResistance::is)
                ? ThermalResistance.unit(written) : hint, label.sense().or(() -> sense
                .filter(one -> label.properties().stream().anyMatch(property -> property.compare() == one)))
                .or(() -> SENSE_LAST.matcher(text).matches() || held ? PropertyNames.sense(Plain.of(text)).filter(one -> !held || label
                    .properties().stream().anyMatch(property -> property.compare() == one)) : Optional.empty()), methods));
    }

    /** Takes a unit of two or three words off the end: "Weight lbs / sq. yd."; "" when there is none. */
    private String wordsLast(StringBuilder bare, StringBuilder whole) {
        String text = bare.toString().strip();
        int at = text.length();
        for (int i = 0; i < 4 && (at = text.lastIndexOf(' ', at - 1)) > 0; i++) {
            String unit = text.substring(at).strip();
            if (unit.matches(".*[/²%°].*|(?i).*\\bper\\b.*") && UnitSpelling.isUnit(unit)
                && conditioned.named(text.substring(0, at), 1).isPresent()) {
                bare.setLength(0);
                bare.append(text, 0, at);
                whole.setLength(0);
                whole.append(bare);
                return unit;
            }
        }
        return "";
    }

    /** "Total thickness (36 mil compound, 4 mil film)": figures that make up the value, or say how it was measured. */
    private static boolean isRemark(String words) {
        return words.matches(".*\\d.*\\s.*|(?i)(?:if|when|where|as) .*|option(?:al)?|nominal|typical|approx\\.?") && !words.contains(":");
    }
}
