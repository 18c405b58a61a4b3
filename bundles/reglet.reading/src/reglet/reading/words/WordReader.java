package reglet.reading.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import reglet.model.Component;
import reglet.model.Dates;
import reglet.model.Grade;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Word;
import reglet.model.WordSet;
import reglet.reading.words.Reading.Read;

/** Reads what a sheet writes for a property that is told in words: one of a list, a step of a scale, several, or yes and no. */
final class WordReader {
    /** "Cast stone, buff or gray": a choice of colours behind what a thing is. */
    private static final Pattern COLOURS = Pattern.compile("(?i),\\s*(?:[\\p{L} ]+,\\s*)*(?:black|white|gr[ae]y|buff|brown|tan"
        + "|beige|bronze|clay|sand"
        + "|natural|red|green|blue|cream|ivory|charcoal|limestone|almond)(?:\\s*,\\s*\\p{L}+)*\\s+or\\s+\\p{L}+\\s*$");
    /** "No staining" answers another question than "no", so what follows has to be set apart. */
    private static final Pattern YES = Pattern.compile("(?i)\\s*(?:yes|y|pass|passes|passed|(?:pass|passes|passed) \\d+ cycles"
        + "|included|provided|required|necessary|present|x|●|✓|✔)(?:\\s*[,"
        + ";.(–-].*)?\\s*", Pattern.DOTALL);
    private static final Pattern NO = Pattern.compile("(?i)\\s*(?:no|none|n|not included|not required|not needed|not provided|not necessary"
        + "|unnecessary|absent"
        + "|fail|fails|failed"
        + "|✗)(?:\\s*[,;.(–—-].*)?\\s*",
        Pattern.DOTALL);

    /** "1/4" dia., 8" o.c.", "3/16 in. slots": an answer to whether there are any. */
    private static final Pattern HOLES = Pattern.compile("(?is)(?:[Ø⌀]|dia\\.?)?\\s*\\.?\\d[\\d./ -]*(?:in\\.?|mm|\"|″|inch)?.*?"
        + "(?:dia\\.?|diam\\.?|diameter|holes?|slots?"
        + "|round|o\\.c\\.?|oc|centers)(?![\\p{L}]).*");
    /** "3.5 oz/sy" beside "Filter fabric": what is weighed by its area is there. */
    private static final Pattern FABRIC = Pattern.compile("(?i)\\.?\\d[\\d.]*\\s?(?:oz|ounces?|g|gsm)\\.?"
        + "(?:\\s?(?:/|per)\\s?(?:sq(?:uare)?\\.?\\s?)?"
        + "(?:yd|yard|y|sy|m)[²2]?)?\\.?(?:\\s*\\([^()]*\\))?");
    private static final Pattern PASSED = Pattern.compile("(?is)(?!.*\\b(?:fail|not)).*[,;:(–—-]\\s*(?:pass|passes|passed"
        + "|no (?:visible )?(?:cracks?|cracking|breaks?|breakage|damage|spalls?|spalling|scaling|failures?))\\s*[).]*\\s*");
    /** "0.8 % mass loss, 100 cycles": what was found, so it was tested. */
    private static final Pattern RESULT = Pattern.compile("(?is)(?!.*\\b(?:fail|not|max|min"
        + "|required)).*\\d\\s?%.*\\bloss\\b.*\\bcycles\\b.*");
    /** "A118.4 (A118.15 with the admixture)": what it is only with something else in it. */
    private static final Pattern WITH = Pattern.compile("\\((?=[^()]*(?:\\bw/|\\bwith|\\bwhen)\\s)[^()]*\\)");
    /** "Most need none. The other …": no answer for all. */
    private static final Pattern MOSTLY = Pattern.compile("(?is)\\W*(?:most|many|some)\\b.*\\.\\s+\\p{Lu}.*");
    /** "C (closed cell)": a code, and what it stands for. */
    private static final Pattern BRACKETS = Pattern.compile("\\s*(?:(?i:type|grade|class)\\s+)?(\\p{Lu}{1,2})\\s*\\([^()]*\\)\\s*");
    /** "With weeps", "no primer", "not self-furring": the thing itself, there or denied. */
    private static final Pattern THING = Pattern.compile("(with|has|no|without|not(?: an?)?|non|un) ?(.+)");
    private static final Set<String> DENIED = Set.of("no", "without", "not", "not a", "not an", "non", "un");
    private static final double WITH_MORE = 0.93;

    /** "No ember passed" is what a test found, and no denial. */
    private static final String FOUND = "(?!(?:passed|passes|entered|enters|penetrated|penetration|intrusion|intruded|came|got|reached"
        + "|through|found|seen|observed) )";
    private static final Set<String> NONE = Set.of("none", "no", "not required", "not needed", "none required");
    private static final double PARTLY = 0.8;
    private static final double TURNED = 0.9;
    /** What denies or leaves a choice. */
    private static final Pattern OPENLY = Pattern.compile("(?i)\\b(?:no|not|non|without|or|unless|if|except)\\b");
    private static final double OPEN = 0.45;

    private final Vocabulary vocabulary;
    private final Component component;

    WordReader(Vocabulary vocabulary, Component component) {
        this.vocabulary = vocabulary;
        this.component = component;
    }

    Optional<Read> read(Property property, String text) {
        return switch (property.type().kind()) {
            case FLAG -> flag(property, text);
            case SET -> set(property, text);
            case GRADE -> word(property, grade(text)).or(() -> word(property, text))
                .map(read -> new Read(new Grade(read.value().text(), property.type().words()), read.compare(), read.quality(),
                    read.doubt()));
            case DATE -> Dates.meant(text).map(day -> new Read(day, Optional.empty(), 0.95, ""));
            default -> property.type().words().isEmpty() ? Optional.of(new Read(new Word(text), Optional.empty(), 0.9, ""))
                : word(property, text).or(() -> word(property, text.replaceFirst("(?i)^\\s*(?:type|grade|class)\\s+", "")))
                    .or(() -> BRACKETS.matcher(text).matches() ? word(property, BRACKETS.matcher(text).replaceFirst("$1")) : Optional
                        .empty());
        };
    }

    /** "Class 50", "±50%", "+100/-50 %", "G-90" as the step alone; "+50/-50 %" is one step. */
    private static String grade(String text) {
        return text.replaceAll("(?i)\\bclass\\b|\\bplus or minus\\b|[±%+]", " ").replaceAll("(?<=[/,])\\s*[-–−]", "").replaceAll(
            "\\s*[/,]\\s*(?=\\d)", "/").replaceAll("\\b([\\d.]+)/\\1(?![\\d.])", "$1")
            .replaceAll("\\b(\\p{Lu})[- ](?=\\d{2})", "$1").strip();
    }

    private Optional<Read> flag(Property property, String text) {
        Optional<Read> own = word(property, text).or(() -> thing(property, Plain.of(text)));
        if (own.isPresent()) {
            return own;
        }
        boolean yes = YES.matcher(text).matches();
        boolean no = NO.matcher(text).matches();
        if (!yes && !no && PASSED.matcher(text).matches()) {
            // "0.4 %, pass"
            return Optional.of(new Read(new Word("yes"), Optional.empty(), WITH_MORE, ""));
        }
        if (!yes && !no && HOLES.matcher(text.strip()).matches()) {
            // who tells how large they are, and how far apart, has some
            return Optional.of(new Read(new Word("yes"), Optional.empty(), WITH_MORE, ""));
        }
        if (!yes && !no && property.label().contains("fabric") && FABRIC.matcher(text.strip()).matches()) {
            return Optional.of(new Read(new Word("yes"), Optional.empty(), WITH_MORE, ""));
        }
        if (!yes && !no && property.label().endsWith("tested") && RESULT.matcher(text).matches()) {
            return Optional.of(new Read(new Word("yes"), Optional.empty(), WITH_MORE, ""));
        }
        double quality = text.strip().contains(" ") ? 0.94 : 0.98;
        return yes == no ? Optional.empty() : Optional.of(new Read(new Word(yes ? "yes" : "no"), Optional.empty(), quality, ""));
    }

    /** An answer that names the thing once more, or denies it. */
    private Optional<Read> thing(Property property, String plain) {
        Matcher thing = THING.matcher(plain);
        boolean said = thing.matches();
        String rest = said ? thing.group(2) : plain;
        String path = component.id() + "." + property.name();
        boolean named = Stream.concat(Stream.of(property.label()), vocabulary.names(path).stream()).anyMatch(name -> Plain.of(name).equals(
            rest));
        boolean denied = said && DENIED.contains(thing.group(1));
        boolean answered = denied && vocabulary.names(path + ".yes").stream().anyMatch(name -> Plain.of(name).equals(rest));
        return named || answered ? Optional.of(new Read(new Word(denied ? "no" : "yes"), Optional.empty(), WITH_MORE, "")) : Optional
            .empty();
    }

    private Optional<Read> set(Property property, String text) {
        return listed(property, text).or(() -> codes(property, text));
    }

    /** Words of a list by their names: "Water spray, sealant adhesion and pull-off of units". */
    private Optional<Read> listed(Property property, String text) {
        List<String> words = new ArrayList<>();
        boolean whole = true;
        for (String part : text.replaceAll("\\([^()]*\\)", " ").split("\\s*(?:[,;/&]|\\band\\b)\\s*")) {
            Optional<Read> known = part.isBlank() ? Optional.empty() : word(property, part);
            whole &= part.isBlank() || known.isPresent();
            known.map(read -> read.value().text()).filter(word -> word.contains(" ") && !words.contains(word)).ifPresent(words::add);
        }
        return words.isEmpty() ? Optional.empty() : Optional.of(new Read(new WordSet(words), Optional.empty(), whole ? 1 : PARTLY, ""));
    }

    private static Optional<Read> codes(Property property, String text) {
        List<String> words = new ArrayList<>();
        for (String part : text.replaceAll("(?i)\\buses?\\b", " ").split("\\s*(?:[,;/&]|\\band\\b|[-–—])\\s*|\\s+")) {
            String plain = part.strip().replaceAll("[().]", "");
            if (plain.isEmpty()) {
                continue;
            }
            Optional<String> known = property.type().words().stream().filter(word -> word.equalsIgnoreCase(plain)).findFirst();
            if (known.isEmpty() && !property.type().words().isEmpty()) {
                return Optional.empty();
            }
            words.add(known.orElse(plain));
        }
        return words.isEmpty() ? Optional.empty() : Optional.of(new Read(new WordSet(words), Optional.empty(), 1, ""));
    }

    /** The listed word that a text says, by its own name or one of its synonyms; the longest one counts where one lies in another. */
    private Optional<Read> word(Property property, String text) {
        List<String> words = property.type().kind() == Kind.FLAG ? List.of("yes", "no") : property.type().words();
        String plain = " " + Plain.of(WITH.matcher(text).replaceAll(" ")) + " ";
        if (property.type().kind() == Kind.WORD && MOSTLY.matcher(text).matches()) {
            return Optional.empty();
        }
        String best = "";
        String spelling = "";
        boolean two = false;
        for (String word : words) {
            for (String name : names(property, word)) {
                String wanted = " " + Plain.of(name) + " ";
                boolean within = property.type().kind() == Kind.FLAG ? plain.startsWith(wanted)
                    : wanted.length() < 5 ? plain.equals(wanted) : plain.contains(wanted);
                if (within && wanted.length() > spelling.length()) {
                    two = !best.isEmpty() && !best.equals(word) && !wanted.contains(spelling) && !overlap(plain, spelling, wanted);
                    best = word;
                    spelling = wanted;
                } else if (within && !word.equals(best) && !spelling.contains(wanted) && !overlap(plain, spelling, wanted)) {
                    two = true;
                }
            }
        }
        // "cast stone, buff or gray" leaves open no more than its colour
        String head = text.contains(", ") ? " " + Plain.of(text.substring(0, text.indexOf(", "))) + " " : plain;
        boolean coloured = head.contains(spelling) && !head.contains(" or ") && COLOURS.matcher(text).find();
        boolean either = plain.contains(" or ") && !coloured && !spelling.contains(" or ") && !plain.matches(".* or (?:better"
            + "|greater|equal|more) ");
        if (best.isEmpty() || two || either || plain.matches(".* (?:not|non|without|un) (?:(?:usually|normally|generally|often) )?"
            + Pattern.quote(spelling.strip()) + " .*")) {
            return Optional.empty();
        }
        if (property.type().kind() == Kind.FLAG && best.equals("yes") && !spelling.contains(" no ") && isDenied(property, plain)) {
            return Optional.of(new Read(new Word("no"), Optional.empty(), WITH_MORE, ""));
        }
        // "none on glass and aluminum" leaves open what else there is
        boolean partly = NONE.contains(spelling.strip()) && plain
            .matches(".* " + Pattern.quote(spelling.strip()) + " (?:on|for|to|over) .*");
        return Optional.of(new Read(new Word(best), Optional.empty(), partly ? property.type().kind() == Kind.FLAG ? PARTLY
            : OPEN : plain.equals(spelling) ? 1 : 0.93, ""));
    }

    /** "Aluminum 3105-H14, PVDF coil coating", "Remains as part of the work": the only word that is said by a turn of phrase. */
    Optional<Read> turned(Property property, String text) {
        if (OPENLY.matcher(text).find()) {
            return Optional.empty();
        }
        Said said = new Said(text);
        List<String> asked = property.type().kind() == Kind.FLAG ? List.of("yes", "no") : property.type().words();
        List<String> words = asked.stream().filter(word -> vocabulary.turns(component.id() + "." + property.name() + "."
            + word).stream().filter(turn -> turn.fixed() > 1).anyMatch(turn -> IntStream.range(0, said.size()).anyMatch(i -> turn.at(said,
                i, at -> -1) != null))).toList();
        return words.size() == 1 ? Optional.of(new Read(new Word(words.get(0)), Optional.empty(), TURNED, "")) : Optional.empty();
    }

    /** "Polypropylene, no fabric": the thing itself is denied behind a word that could say that it is there. */
    private boolean isDenied(Property property, String plain) {
        return (plain.contains(" no ") || plain.contains(" without ")) && vocabulary.names(component.id() + "." + property.name()).stream()
            .map(Plain::of).anyMatch(name -> Pattern.compile(" (?:no|without) " + Pattern.quote(name) + " " + FOUND).matcher(plain).find());
    }

    /** "Painted aluminum 3003": two names that share a word are no two answers; both stand between blanks. */
    private static boolean overlap(String plain, String one, String other) {
        int a = plain.indexOf(one);
        int b = plain.indexOf(other);
        return a < b + other.length() - 1 && b < a + one.length() - 1;
    }

    private List<String> names(Property property, String word) {
        List<String> names = new ArrayList<>();
        if (property.type().kind() != Kind.FLAG) {
            names.add(word);
        }
        String key = component.id() + "." + property.name() + "." + word;
        names.addAll(vocabulary.names(key));
        return names;
    }
}
