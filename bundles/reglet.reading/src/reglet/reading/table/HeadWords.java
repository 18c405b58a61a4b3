package reglet.reading.table;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.reading.page.Cell;
import reglet.reading.table.Columns.Role;
import reglet.reading.words.Plain;
import reglet.reading.words.UnitSpelling;

/** The words by which makers head the columns of their tables. */
final class HeadWords {
    static final Pattern LABEL = Pattern.compile("(?:(?:physical|typical|technical|performance|material|test|mechanical|key|"
        + "product) )*"
        + "(?:property|characteristic|attribute|parameter|feature|criterion|performance property)(?:(?: and)? (?:(?:test "
            + ")?(?:method|standard)|units?))?"
        + "|test and (?:method|standard)");
    static final Pattern LABEL_BESIDE_METHOD = Pattern.compile("(?:technical |product |physical |typical |test )?data|test|"
        + "test description|description|title|item|typical property|performance|requirement name|what|what was tested|tested for");
    /** Heads the letters of a drawing, or the numbers of rows. */
    static final Pattern MARK = Pattern.compile("(?:mark|letter|key|dim|dimension|symbol|ref|no|number|line|item|item no|detail)?");
    static final Pattern TEST = Pattern.compile("test|test (?:performed|run|description|name)|tested for|property tested");
    /** Names the rows where names of models stand beside it. */
    static final Pattern DIMENSION = Pattern.compile("(?:nominal )?(?:dimension|size|measure|measurement|data)(?: (?:and|or) "
        + "(?:weight|size))?");
    static final Pattern METHOD = Pattern.compile("(?:(?:astm|test|testing|reference|ref) )*(?:method|standard|procedure|"
        + "astm|specification|reference|norm|"
        + "standard test method|test method)|method of test|tested to|per astm|test astm|astm test|how"
        + "|how (?:it was )?(?:tested|measured|found)");
    static final Pattern METHOD_BESIDE_LABEL = Pattern.compile("test|test no|standard specification|spec|code|basis?");
    static final Pattern VALUE = Pattern.compile("(?:(?:typical|nominal|average|avg|test|tested|minimum|maximum|measured|"
        + "actual|certified|published|"
        + "product|property|mean|our|declared) )*(?:value|result|our|figure|performance|rating|reading|data|average|typical|typical value"
        + "|typ|as supplied|supplied|as submitted|submitted|as furnished|furnished|as "
        + "tested|as measured|found|declared|measured|reached|achieved|obtained"
        + "|(?:average|mean) of (?:five|three|ten|\\d+)(?: unit| specimen)?)"
        + "(?: (?:minimum|maximum|avg|average|typical|reported|obtained|measured|determined|achieved|stated|declared|certified|given"
        + "|listed|furnished))*(?: (?:at|after) \\d+ (?:day|hour|week|cycle))?");
    /** What a product reaches, where a column of bounds stands beside it. */
    static final Pattern REACHED = Pattern.compile("(?:typical|average|avg|mean|actual|test|tested|measured)(?: .*)?|result|typ");
    static final Pattern BOUND = Pattern.compile("(?:minimum|min|maximum|max|guaranteed|certified)(?: .*)?");
    static final Pattern REQUIRED = Pattern.compile("(?:(?:astm|code|project|specified|minimum|maximum|standard|spec|"
        + "acceptance|ac\\d*) )*"
        + "(?:requirement|required|specified|usual specification|common specification|limit|criteria|criterion|acceptance"
        + "|target|allowable|min req"
        + "|pass criteria)(?: value)?|as specified|spec|"
            + "minimum|maximum|"
        + "required value|condition of acceptance|asked for|asked|wanted|needed|requires?|required by|asks?(?: for)?|calls? for"
        + "|demand(?:ed)?(?: (?:of|by) .*)?");
    private static final int LONGEST = 45;
    /** "Result, avg. of five": behind a word for results and a comma how they are meant. */
    private static final Pattern REMARK = Pattern.compile("(?:(?:avg|average|mean|typical|typ|minimum|maximum|of|\\d+"
        + "|two|three|five|six|ten|unit"
        + "|specimen|sample|test|dry|cured|°|%|f|c|rh|humidity|at|day|d|lot|laboratory|lab) ?)+");
    /** "C920 limit", "A118.15 requirement". */
    private static final Pattern OF_STANDARD = Pattern.compile("[a-z]{1,2} ?\\d{2,4}\\S*(?: \\d+)*"
        + " (?:requirement|limit|minimum|maximum|spec|criteria|value required)");
    /** "A118.15 spec" above a column of limits. */
    static final Pattern ASKED = Pattern.compile(".+ (?:spec|requirement|limit|minimum|maximum)");
    /** "KT-20 result" above the only column of results. */
    static final Pattern RESULT = Pattern.compile(".+ (?:result|value|reading|average|test result|(?:average|avg|mean) of \\w+)");
    /** Asks for something where another column names the methods. */
    static final Pattern SPECIFIED = Pattern.compile("(?:product |project |astm )?(?:specification|spec|standard)(?: "
        + "(?:limit|value))?");
    private static final Pattern STANDARD = Pattern.compile("(?:astm )?[a-g] ?\\d{2,4}(?: (?:grade|type|class) \\w+)?"
        + "|(?:ansi|aama|ac) ?[a-z]?\\d[\\d ]*");
    static final Pattern UNIT = Pattern.compile("unit|unit of measure|uom|measure|dimension unit");
    static final Pattern SYSTEM = Pattern.compile("(?:(?:typical|nominal) )?(?:metric|si|english|imperial|us|u s|u s "
        + "customary|u s unit|inch pound|inch|customary|us customary)"
        + "(?: (?:unit|value))?");
    /** "Value, English" and "Value, Metric" are one value in two systems of units. */
    static final Pattern VALUE_IN = Pattern.compile("(.+?) (?:in )?(?:metric|si|english|imperial|us|u s|us customary|inch pound)"
        + "(?: unit)?|(?:metric|si|english|imperial|us|u s|us customary|inch pound) (.+)");
    static final Pattern MODEL = Pattern.compile("(?:our|stock|order|order no|our no|cat|catalog|article|reorder) (?:number|no)"
        + "|(?:order|item|part|stock|catalog|article|model|ordering) code"
        + "|model|item|item no|item number|part|part no|part number|product|product "
        + "code|product no|code|"
        + "catalog no|cat no|number|catalog number|catalogue no|designation|sku|series|style|name|product name"
        + "|pattern|texture|collection|version|model no|model number|type no|type number|"
        + "ref|type no|article|art|art no|reference|ref no|reference no|stock no|profile no");

    /** Heads what is told apart in the rows, where a column beside it names what is told of them. */
    static final Pattern KIND = Pattern.compile("size|nominal|nominal size|grade|format|profile|variant|species|wood species"
        + "|species group|block|panel|bead"
        + "|plate|gasket|piece|stud|rod|tape|mat|lath|board"
        + "|sheet|screw|nail|fastener|roll|strip");

    /** Heads what was tested one by one, of which no row is a model. */
    static final Pattern SPECIMEN = Pattern.compile("(?:test )?(?:specimen|sample|trial|replicate)(?: (?:no|number|id|mark))?|unit "
        + "(?:no|number|id)");
    /** Of specimens what holds for all of them. */
    static final Pattern MEAN = Pattern.compile("(?:the )?(?:average|avg|mean)(?: (?:of|value|result)(?: .*)?)?");

    /** "Requirement per ASTM C1670". */
    static final Pattern CITED = Pattern.compile("(?<=\\S)\\s+(?:(?:per|to|of|by|under|in)\\s+)?(?:ASTM|ANSI|AAMA|ISO|EN"
        + "|AC)\\s?-?[A-Z]?"
        + "\\s?\\d[\\d.]*\\S*(?:\\s+(?i:type|class|grade)\\s+\\w+)?$|^(?:ASTM|ANSI|AAMA|ISO|EN"
            + "|AC)\\s?-?[A-Z]?\\s?\\d[\\d.]*\\s+(?=\\p{L})");

    static final Pattern AMOUNT = Pattern.compile("(?s)[≥≤<>±]?\\s*[-−]?\\.?\\d+(?:[.,]\\d+)?(?:\\s.*|[%\"].*)?");

    /** What tells results of one model apart; anything looser could be the name of a model. */
    static final Pattern CONDITION = Pattern.compile("(?:at |after )?\\d+ (?:day|hour|week|cycle)|(?:dry|wet) cup"
        + "|(?:desiccant|water) method|(?:procedure|method|proc) [a-d]|initial|aged|unaged|as received"
        + "|after (?:aging|weathering|exposure)");
    /** A heading of one or two common words: no name, and no designation. */
    static final Pattern ORDINARY = Pattern.compile("\\p{L}\\p{Ll}{2,}(?: \\p{Ll}{2,})?|\\p{Lu}{4,}");
    /** Two words of which the second is no name: "Value reported". */
    static final Pattern PLAIN_WORDS = Pattern.compile("\\p{Lu}\\p{Ll}{2,}(?: \\p{Ll}{2,}){1,2}");

    static final Pattern LIMIT = Pattern.compile("(?is)(?:[≥≤<>±]=?|min(?:imum|\\.)?|max(?:imum|\\.)?|at (?:least|most))\\s*"
        + "\\.?\\d.*|\\.?\\d.*(?:min|max)\\.?(?:imum)?");

    /** Behind a stroke the heading once more, if it isn't the second of two standards of one limit. */
    private static final String OTHER_LANGUAGE = " / (?!.*(?i:requirements?|limits?|min\\.?|max\\.?)$).*";

    private HeadWords() {
    }

    /** What a column with such a heading holds; {@code label} and {@code method}: whether another column holds these. */
    static Role role(String plain, boolean label, boolean method, boolean specified) {
        if (specified && SPECIFIED.matcher(plain).matches()) {
            return Role.REQUIRED;
        }
        if (LABEL.matcher(plain).matches() || method && !label && LABEL_BESIDE_METHOD.matcher(plain).matches()) {
            return Role.LABEL;
        }
        if (METHOD.matcher(plain).matches() || label && METHOD_BESIDE_LABEL.matcher(plain).matches()) {
            return Role.METHOD;
        }
        if (REQUIRED.matcher(plain).matches() || label && OF_STANDARD.matcher(plain).matches()) {
            return Role.REQUIRED;
        }
        if (VALUE.matcher(plain).matches() || SYSTEM.matcher(plain).matches() || isValueIn(plain)) {
            return Role.VALUE;
        }
        if (label && method && STANDARD.matcher(plain).matches()) {
            // "C1088" above what it asks for
            return Role.REQUIRED;
        }
        if (label && ASKED.matcher(plain).matches()) {
            // "AC38 / E2556 requirement"
            return Role.REQUIRED;
        }
        if (UNIT.matcher(plain).matches()) {
            return Role.UNIT;
        }
        return MODEL.matcher(plain).matches() ? Role.MODEL : Role.OTHER;
    }

    /** Whether the labels of rows stand below a heading, whatever heads the columns beside it. */
    static boolean areLabels(Cell cell) {
        String plain = plain(cell);
        return LABEL.matcher(plain).matches() || DIMENSION.matcher(plain).matches() || LABEL_BESIDE_METHOD.matcher(plain).matches();
    }

    /** "mm (in.)" below a heading. */
    static boolean isUnit(Cell cell) {
        return UnitSpelling.isUnit(cell.text().replaceFirst("\\s*\\([^()]*\\)$", ""));
    }

    private static boolean isValueIn(String plain) {
        Matcher system = VALUE_IN.matcher(plain);
        return system.matches() && VALUE.matcher(system.group(1) == null ? system.group(2) : system.group(1)).matches();
    }

    /** A heading in one spelling, without remarks in brackets and standards. */
    static String plain(Cell cell) {
        // of a heading in two languages the first counts
        String text = CITED.matcher(cell.text().replaceAll("[(\\[].*?[)\\]]", " ").replaceAll(OTHER_LANGUAGE, "")).replaceFirst("").strip();
        int comma = text.indexOf(',');
        if (comma < 0 || text.length() > LONGEST) {
            return Plain.of(text);
        }
        String rest = text.substring(comma + 1).strip();
        // "Property, US (metric)"
        boolean said = UnitSpelling.isUnit(rest) || REMARK.matcher(Plain.of(rest)).matches() || SYSTEM.matcher(Plain.of(rest)).matches();
        String first = said ? Plain.of(text.substring(0, comma)) : "";
        return LABEL.matcher(first).matches() || VALUE.matcher(first).matches() || REQUIRED.matcher(first).matches() ? first
            : Plain.of(text);
    }
}
