package reglet.reading.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Standard;
import reglet.model.Synonym;

/** Finds standards named in a text, however they are spaced, glued or misspelt. */
public final class Citations {
    private static final String EDITION = "(?:\\s?[-–:]\\s?((?:19|20)?\\d\\d[a-z]?)(?![\\d.])\\s?(?:\\(((?:19|20)\\d\\d)[^)]*\\))?|"
        + "\\s?\\(((?:19|20)\\d\\d[a-z]?)\\))?";
    private static final Pattern ASTM = Pattern.compile("(?:\\bA[STM]{2,3}N?|\\bA\\.S\\.T\\.M\\.)\\s?[-:.]?\\s?([A-G])\\s?[-.]?\\s?("
        + "\\d{2,4})M?"
        + "(?:\\s?/\\s?(?:ASTM\\s?)?[A-G]\\s?-?\\s?\\d{2,4}M?)?" + EDITION, Pattern.CASE_INSENSITIVE);
    private static final Pattern OTHER = Pattern.compile("\\b(CAN/ULC|AAMA|AATCC|ANSI|NFPA|AISI|UL|ISO|EN|CSA|TAPPI|NCHRP|ICC-ES AC"
        + "|AC|PS(?=[\\s-]?(?:1|2|20)\\b))"
        + "\\s?[-/]?"
        + "\\s?([A-Z]{0,2}\\s?\\d+(?:\\.\\d+)?(?:(?<=(?:EN|ISO)[\\s/-]?\\d{3,5})-\\d(?!\\d))?)"
        + EDITION);
    /** Which of the tests of a report: "NCHRP 244, Series II". */
    private static final Pattern SERIES = Pattern.compile("[\\s,–-]*(?:(?:Test )?Series )?(IV|I{1,3})\\b");
    private static final Pattern NEXT = Pattern.compile("\\s?(?:[,;/&+]|and\\b|or\\b)\\s?([A-G])\\s?-?\\s?(\\d{2,4})M?\\b" + EDITION);
    /** "E96-A", "E96A", "E96 (B)". */
    private static final Pattern LETTER = Pattern.compile("\\s?[-/,]?\\s?\\(?([A-Z])\\)?(?![\\p{L}\\d])");
    private static final Pattern BARE = Pattern.compile("\\b([A-G])\\s?-?\\s?(\\d{2,4})M?(?=[A-D]?\\b)(?:\\s?/\\s?[A-G]\\s?\\d{2,4}M?)?"
        + EDITION);

    private static final Pattern LIKE = Pattern.compile("(?i)\\s?-?\\s?like\\b");

    private final Set<String> known;
    private final List<Synonym> parts;
    private final Map<String, List<Citation>> seen = new ConcurrentHashMap<>();

    /** A standard named in a text: from one place to another, its name, edition and the part of it that is named. */
    public record Citation(int from, int to, String name, String edition) {
    }

    public Citations(Pack pack) {
        this.known = pack.standards().stream().map(Standard::id).collect(Collectors.toSet());
        this.parts = pack.synonyms().stream().filter(synonym -> known.stream().anyMatch(id -> synonym.property().startsWith(id + " ")))
            .toList();
    }

    /** The standards that a text names, in its order. A letter and a number alone count when the pack knows such a standard. */
    public List<Citation> in(String text) {
        return in(text, text);
    }

    /** As {@link #in(String)}, where the part of a standard may be named elsewhere, such as in the label beside it. */
    public List<Citation> in(String text, String beside) {
        // components are tried one after the other on the same words
        return seen.computeIfAbsent(text + '\n' + beside, key -> find(text, beside));
    }

    private List<Citation> find(String text, String beside) {
        List<Citation> found = new ArrayList<>();
        add(found, ASTM.matcher(text), text, "ASTM ");
        Matcher other = OTHER.matcher(text);
        while (other.find()) {
            String body = other.group(1).startsWith("ICC") ? "AC" : other.group(1);
            Matcher series = SERIES.matcher(text).region(other.end(), text.length());
            boolean one = body.equals("NCHRP") && series.lookingAt();
            add(found, new Citation(other.start(), one ? series.end() : other.end(), body + (body.equals("AC") ? "" : " ") + other.group(2)
                .replace(" ", "") + (one ? " Series " + series.group(1) : ""), edition(other, 3)));
        }
        Matcher bare = BARE.matcher(text);
        while (bare.find()) {
            if (known.contains("ASTM " + bare.group(1) + bare.group(2))) {
                add(found, new Citation(bare.start(), bare.end(), "ASTM " + bare.group(1) + bare.group(2), edition(bare, 3)));
            }
        }
        found.sort((a, b) -> Integer.compare(a.from, b.from));
        for (int i = 0; i + 1 < found.size(); i++) {
            if (LIKE.matcher(text).region(found.get(i).to, text.length()).lookingAt()) {
                // "C666-like per C1670" is shown by the latter
                Citation by = found.remove(i + 1);
                found.set(i, new Citation(found.get(i).from, by.to, by.name, by.edition));
            }
        }
        return found.stream().map(citation -> {
            String whole = part(citation.name, beside);
            Matcher letter = LETTER.matcher(text).region(citation.to, text.length());
            if (whole.equals(citation.name) && letter.lookingAt()) {
                String named = citation.name + " Procedure " + letter.group(1);
                if (parts.stream().anyMatch(part -> part.property().equals(named))) {
                    return new Citation(citation.from, letter.end(), named, citation.edition);
                }
            }
            return new Citation(citation.from, whole.equals(citation.name) ? citation.to : past(whole, text, citation.to), whole,
                citation.edition);
        }).toList();
    }

    private static void add(List<Citation> found, Matcher matcher, String text, String body) {
        while (matcher.find()) {
            add(found, new Citation(matcher.start(), matcher.end(), body + matcher.group(1).toUpperCase(Locale.ROOT) + matcher.group(2),
                edition(matcher, 3)));
            // "ASTM C39, C192 and C140"
            Matcher next = NEXT.matcher(text).region(matcher.end(), text.length());
            while (next.lookingAt()) {
                add(found, new Citation(next.start(1), next.end(), body + next.group(1) + next.group(2), edition(next, 3)));
                next.region(next.end(), text.length());
            }
        }
    }

    private static void add(List<Citation> found, Citation citation) {
        if (found.stream().noneMatch(other -> other.from < citation.to && citation.from < other.to)) {
            found.add(citation);
        }
    }

    private static String edition(Matcher matcher, int group) {
        String year = matcher.group(group);
        if (year == null) {
            return matcher.group(group + 2) == null ? "" : matcher.group(group + 2);
        }
        return year + (matcher.group(group + 1) == null ? "" : " (reapproved " + matcher.group(group + 1) + ")");
    }

    /** Where a citation ends whose part is named right behind it: "ASTM E96, Procedure A". */
    private int past(String whole, String text, int end) {
        for (Synonym part : parts) {
            if (part.property().equals(whole)) {
                List<String> names = new ArrayList<>(part.labels());
                names.add(whole.substring(whole.indexOf(' ', whole.indexOf(' ') + 1) + 1));
                names.sort((a, b) -> b.length() - a.length());
                for (String name : names) {
                    Matcher behind = Pattern.compile("^[\\s,;(–-]*" + Pattern.quote(name).replace(" ", "\\E\\.?\\s+\\Q") + "\\b\\)?",
                        Pattern.CASE_INSENSITIVE)
                        .matcher(text.substring(end));
                    if (behind.find()) {
                        return end + behind.end();
                    }
                }
            }
        }
        return end;
    }

    /** The name with the part of it that the text names in one of its spellings: "ASTM E96 Procedure A". */
    public String part(String name, String text) {
        String plain = " " + Plain.of(text) + " ";
        for (Synonym part : parts) {
            if (part.property().startsWith(name + " ")) {
                String own = part.property().substring(name.length() + 1);
                if (plain.contains(" " + Plain.of(own) + " ")
                    || part.labels().stream().anyMatch(label -> plain.contains(" " + Plain.of(label) + " "))) {
                    return part.property();
                }
            }
        }
        return name;
    }

    /** The parts of one standard that a text names, in its order: both procedures of "E96 (Method A) / (Method B)". */
    public List<Citation> parts(String text) {
        Optional<Citation> cited = in(text).stream().findFirst();
        String standard = cited.map(citation -> whole(citation.name)).orElse("");
        Map<Integer, Citation> places = new TreeMap<>();
        for (Synonym part : parts) {
            if (!standard.isEmpty() && part.property().startsWith(standard + " ")) {
                String own = part.property().substring(standard.length() + 1);
                String letter = own.substring(own.lastIndexOf(' ') + 1);
                Stream.concat(Stream.of(own), part.labels().stream())
                    .map(name -> "(?i)\\b" + Pattern.quote(name).replace(" ", "\\E\\W+\\Q") + "\\b")
                    .map(name -> Pattern.compile(name).matcher(text)).filter(Matcher::find).findFirst()
                    .or(() -> Optional.of(Pattern.compile("(?<=[\\s(/&,])" + Pattern.quote(letter) + "(?=\\s*(?:$|[/&,)]|and\\b))")
                        .matcher(text)).filter(Matcher::find))
                    .ifPresent(found -> places.put(found.start(), new Citation(found.start(), found.end(), part.property(),
                        cited.orElseThrow().edition)));
            }
        }
        return List.copyOf(places.values());
    }

    /** A standard without the part that is named of it. */
    private String whole(String name) {
        return known.stream().filter(id -> name.equals(id) || name.startsWith(id + " ")).findFirst().orElse("");
    }

    /** The same standards by the part that a text names: a heading "wet cup" above a column. */
    public List<Citation> narrowed(List<Citation> cited, String text) {
        return cited.stream().map(one -> new Citation(one.from, one.to, whole(one.name).isEmpty() || part(whole(one.name), text).equals(
            whole(one.name)) ? one.name : part(whole(one.name), text), one.edition)).toList();
    }

    /** Whether a text says nothing but the standards that it names. */
    public static boolean isAlone(String text, List<Citation> citations) {
        return !citations.isEmpty() && without(text, citations).matches("[\\s,;.()]*");
    }

    /** A text with the standards in it blanked out. */
    public static String without(String text, List<Citation> citations) {
        StringBuilder rest = new StringBuilder(text);
        for (Citation citation : citations) {
            for (int i = citation.from; i < citation.to; i++) {
                rest.setCharAt(i, ' ');
            }
        }
        return rest.toString();
    }

    /** A sentence cites standards for several things: of those the one that the pack asks for shows the amount. */
    public static List<Citation> own(Property property, List<Citation> cited) {
        String asked = property.method().standard();
        return cited.stream().filter(citation -> !asked.isEmpty() && citation.name().startsWith(asked)).toList();
    }

    /** Whether a type is one by standards other than that by which a property is classified: "D226 Type I". */
    public static boolean areOfOthers(Property property, List<Citation> cited) {
        String asked = property.method().standard();
        return !asked.isEmpty() && !cited.isEmpty() && cited.stream().allMatch(one -> !one.name().startsWith(asked)
            && one.name().startsWith("ASTM"));
    }

    /** Whether a class is told by another standard than that which classifies: it may be what a test of another name showed. */
    public static boolean isOfOthers(Property property, Optional<Citation> method) {
        boolean word = property.type().kind() == Kind.WORD || property.type().kind() == Kind.GRADE;
        String asked = property.method().standard();
        return word && !asked.isEmpty() && method.filter(one -> !one.name().startsWith(asked)).isPresent();
    }

    /** Of several standards the one that the pack asks for, else the first. */
    public static Optional<Citation> asked(Property property, List<Citation> methods) {
        String asked = property.method().standard();
        return methods.stream().filter(citation -> !asked.isEmpty() && citation.name().equals(asked + " " + property.method().part()))
            .findFirst().or(() -> methods.stream().filter(citation -> !asked.isEmpty() && citation.name().startsWith(asked)).findFirst())
            .or(() -> methods.stream().findFirst());
    }
}
