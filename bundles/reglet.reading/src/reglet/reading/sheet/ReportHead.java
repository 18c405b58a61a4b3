package reglet.reading.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Dates;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.sheet.Flow.Placed;
import reglet.reading.sheet.Flow.Spot;

/** The head of a report or certificate: what stands above its first section, in each column of its first page, and the number there. */
final class ReportHead {
    private static final Pattern SECTION = Pattern.compile("\\s*(?:\\d{1,2}\\.\\d?\\s+|1\\s+)\\p{Lu}.*"
        + "|(?i:\\s*(?:evaluation )?scope\\s*:?)");
    private static final int MOST = 24;
    private static final int TOP = 3;
    /** Points. */
    private static final double NEAR = 36;
    private static final String LETTERS = "[A-Z]{1,6}(?:[-–/. ]|(?=\\d))(?:[A-Z]{1,4}[-/])?";
    private static final String DIGITS = "\\d[\\dA-Z]*(?:[-./–][\\dA-Z]+)*";
    private static final String TOKEN = "((?:" + LETTERS + ")?" + DIGITS + ")(?![\\w/]| \\d\\d\\b)";
    private static final String KIND = "\\b(?i:(?:(?:code|compliance|product|technical|building|research|evaluation) ){0,4}(?:report"
        + "|certificate|listing|approval|assessment|appraisal|opinion|acceptance))";
    private static final String NO = "(?i:no\\b\\.?|nr\\b\\.?|number|#|ref(?:erence)?\\b\\.?(?: no\\.?)?|id\\b)";
    private static final List<Pattern> NUMBERS = List.of(
        Pattern.compile(KIND + "\\s*" + NO + "\\s*[:#]?\\s*" + TOKEN),
        Pattern.compile(KIND + "\\s+[:–—-]?\\s*(" + LETTERS + DIGITS + ")(?![\\w/])"),
        Pattern.compile(KIND + " ?[:–—-]? " + TOKEN + "(?=\\s*(?:[\\n\\t·|•,;(]| [–—-] ))"),
        Pattern.compile(KIND + "\\s*[\\n\\t]\\s*" + TOKEN + "(?=\\s*[\\n\\t])"),
        Pattern.compile("(?m)^(" + LETTERS + DIGITS + "),? (?:of|dated|issued)\\b"),
        Pattern.compile("(?m)(?:^|\\t|[·|•–—-] )(?:(?!CSI|PO|FAX|TEL|ZIP|LOT|SKU|UPC|ITEM|PART)[A-Z]{2,5} )?" + NO + "\\s*[:#]?[ \\t]*"
            + TOKEN));
    /** A number of something else: "test report 4471", "supersedes report NEO-1106". */
    private static final Pattern OTHERS = Pattern.compile("(?is).*(?:\\b(?:test|tests|laboratory|audit|inspection|supersedes?|superseding"
        + "|replaces?|replacing|former|formerly|previous|see|also|file|iso|project|lot)\\b[^\\n\\t.]{0,24}|\\bby )$");
    private static final Pattern STANDARD = Pattern.compile("(?:I[BREF]C|IECC|ASTM|ANSI|ISO|EN|AC|NFPA|UL|CSA|AAMA|TYPE|TABLE"
        + "|PAGE)[-– ]?\\d.*");
    private static final Pattern BARE = Pattern.compile("\\s*([A-Z]{2,6}[-– /]?(?:[A-Z]{1,3}[-/])?\\d{2,}(?:[-./–][\\dA-Z]+)*)\\s*");
    private static final Pattern ABOUT = Pattern.compile("(?i).*\\b(?:products?|subject|models?|item|type|division|section|csi|name"
        + "|grade|series)\\s*:?\\s*");
    private static final Pattern TITLED = Pattern.compile("(?is).*\\b(?:report|certificate|approval|assessment|listing|evaluation"
        + "|issued|reissued|renewal|valid)\\b.*");

    private final Flow flow;
    private final Flow whole;

    ReportHead(List<Layout> layouts) {
        flow = new Flow(head(layouts));
        whole = Flow.of(layouts);
    }

    Flow flow() {
        return flow;
    }

    Flow whole() {
        return whole;
    }

    /** Lines above the first section; where a page has two columns, what stands at their height in the second is the head's too. */
    private static List<Placed> head(List<Layout> layouts) {
        List<Placed> head = new ArrayList<>();
        double foot = Double.NaN;
        for (Layout layout : layouts) {
            boolean open = layout.page() == layouts.get(0).page();
            int taken = 0;
            double last = 0;
            for (Line line : open ? layout.lines() : List.<Line>of()) {
                boolean column = line.y() < last - line.size();
                if (column) {
                    foot = Double.isNaN(foot) ? last : foot;
                    open = true;
                    taken = 0;
                }
                last = line.y();
                if (!open) {
                    continue;
                }
                boolean section = SECTION.matcher(line.text()).matches();
                foot = section && Double.isNaN(foot) ? line.y() : foot;
                open = !section && ++taken <= MOST && !(line.y() > foot);
                if (open) {
                    head.add(new Placed(layout, line));
                }
            }
        }
        return head;
    }

    /** A report's number, and the words that say that it is one. */
    record Number(Spot said, Spot number) {
    }

    /** The report's own number: named as such, else a number that stands alone beside the report's title or its dates. */
    Optional<Number> number() {
        for (Pattern pattern : NUMBERS) {
            Matcher number = pattern.matcher(flow.text());
            while (number.find()) {
                String before = flow.text().substring(Math.max(0, number.start() - 40), number.start());
                if (isNumber(number.group(1)) && !OTHERS.matcher(before).matches()) {
                    return Optional.of(new Number(flow.at(number.start(), number.end(1)), flow.at(number.start(1), number.end(1))));
                }
            }
        }
        List<Spot> bare = new ArrayList<>();
        for (int i = 0; i < flow.lines().size(); i++) {
            Placed line = flow.lines().get(i);
            String above = i == 0 ? "" : flow.lines().get(i - 1).text();
            for (Cell cell : line.line().cells()) {
                boolean about = ABOUT.matcher(above).matches();
                if (!about && BARE.matcher(cell.text()).matches() && isNumber(cell.text().strip()) && isOwn(line, cell, i)) {
                    bare.add(new Spot(line.layout(), cell.part(0, cell.text().length())));
                }
                above = cell.text();
            }
        }
        return bare.stream().map(Spot::text).distinct().count() == 1 ? Optional.of(new Number(bare.get(0), bare.get(0)))
            : Optional.empty();
    }

    private static boolean isNumber(String token) {
        String plain = token.strip();
        return plain.chars().filter(Character::isDigit).count() >= (Character.isLetter(plain.charAt(0)) ? 1 : 2)
            && !plain.matches("(?:19|20)\\d\\d") && Dates.possible(plain.replace('.', '/')).isEmpty() && Dates.month(plain.replaceFirst(
                "^(\\d\\d)-(\\d{4})$", "$1/$2")).isEmpty() && !STANDARD.matcher(plain).matches();
    }

    /** Whether a number that stands alone is near to the report's title or dates, at the top of the sheet, or told of as the report's. */
    private boolean isOwn(Placed line, Cell cell, int at) {
        String token = Pattern.quote(cell.text().strip());
        boolean near = flow.lines().stream().filter(other -> other.layout() == line.layout() && Math.abs(other.line().y() - line.line().y())
            < NEAR).anyMatch(other -> TITLED.matcher(other.text()).matches());
        boolean told = Pattern.compile("(?i)\\breport (?:no\\. |number )?\\(?" + token + "|" + token + "[^\\n]{0,40}\\bpage \\d|\\bpage \\d"
            + "[^\\n]{0,20}" + token).matcher(whole.text()).find();
        return near || told || at < TOP;
    }
}
