package reglet.reading.sheet;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.SheetReading.Report;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.sheet.Flow.Placed;
import reglet.reading.sheet.Flow.Spot;
import reglet.reading.sheet.ReportCodes.Edition;

/** Reads what an evaluation report or a certificate says of itself: number, holder, codes, dates, conditions of use. */
final class ReportReader {
    private static final Pattern KIND = Pattern.compile("(?i)\\b(?:(?:code|product|compliance|building|technical"
        + "|evaluation) )*(?:evaluation"
        + "|code|listing|research|compliance)\\s+report\\b|\\bcert"
        + "ificate of (?:conformance|conformity|"
        + "compliance|analysis|approval)\\b|^\\s*certificate\\b");
    /** A line that says nothing but what kind of paper it is, with a number: "Technical Approval 21/0345"; a data sheet only lists them. */
    private static final String NUMBERED = "\\s*(?i:no\\.?|nr\\.?|number|#)?\\s*:?\\s*[A-Z]{0,6}[-–. /]?\\d[\\dA-Z./–-]*";
    private static final Pattern TITLE = Pattern.compile("(?:\\p{Lu}[\\p{L}&.-]*,? ){0,5}(?:(?i:certificate of (?:listing|acceptance"
        + "|evaluation|suitability)|notice of acceptance)(?:" + NUMBERED + ")?|(?i:(?:technical|product|type|evaluation) (?:approval"
        + "|assessment|appraisal|opinion|certificate)|listing)" + NUMBERED + ")\\s*");
    private static final Pattern BY_NAME = Pattern.compile("(?i)\\s*(?:\\p{L}+ )?technical (?:assessment|approval|appraisal)\\s*");
    private static final int FIRST = 4;
    /** Only a report names its holder and its subject. */
    private static final Pattern HOLDER = Pattern.compile("(?i)\\s*(?:(?:report|certificate|approval|assessment|listing)[ -]?holder"
        + "|evaluation subject|holder of (?:the )?(?:report|certificate|approval|assessment))\\b");
    private static final Pattern CERTIFICATE = Pattern.compile("(?i)\\s*certificate of (?:conformance|conformity|compliance|listing"
        + "|evaluation)\\b");
    /** "It is listed in" before "Evaluation Report": a data sheet that tells of its report. */
    private static final Pattern IN_PASSING = Pattern.compile(".*(?:(?<![\\p{L}-])\\p{Ll}+|\\bSee) $");
    /** "… WER-2207: water-resistive barrier behind plaster" behind "Evaluation report": a data sheet that tells what its report is for. */
    private static final Pattern TELLS = Pattern.compile(NUMBERED + "\\s*[:,–—-]\\s*\\p{Ll}.*");
    private static final String HOLDERS = "(?:report|certificate|approval|assessment|listing|opinion)[ -]?holder"
        + "|holder(?: of (?:the )?(?:report"
        + "|certificate|approval|assessment))?|licensee|listee|issued to|applicant|client|granted to|awarded to|proponent|company";
    private static final String SUBJECTS = "evaluation subject|subject(?: of (?:the )?(?:evaluation|approval|assessment|report))?"
        + "|products?(?: names?| covered| evaluated| certified| listed)?|listed products?|certified products?|trade names?"
        + "|trade name of the (?:construction )?product";
    /** Another label, or a heading of the column beside. */
    private static final Pattern NO_VALUE = Pattern.compile(".*:\\s*|\\s*\\d{1,2}\\.\\d?\\s+\\p{Lu}.*");
    private static final int HEAD = 12;
    /** Lines, points and sizes of letters within which a value stands below its label. */
    private static final int NEXT = 3;
    private static final double IN_LINE = 6;
    private static final double LOW = 3;

    private ReportReader() {
    }

    /** Whether a sheet is a report or a certificate, by its head. */
    static boolean isReport(List<Layout> layouts) {
        List<Line> lines = layouts.stream().flatMap(layout -> layout.lines().stream()).limit(HEAD).toList();
        return lines.stream().anyMatch(line -> {
            boolean first = lines.indexOf(line) < FIRST;
            if (HOLDER.matcher(line.text()).lookingAt() || TITLE.matcher(line.text()).matches() || first && BY_NAME.matcher(line.text())
                .matches()) {
                return true;
            }
            Matcher kind = KIND.matcher(line.text());
            // a row of a data sheet's list: "Code report | WRR-0923"
            boolean row = !first && line.cells().size() == 2 && KIND.matcher(line.cells().get(0).text()).lookingAt();
            return !row && kind.find() && !IN_PASSING.matcher(line.text().substring(0, kind.start())).matches()
                && (first || !TELLS.matcher(line.text().substring(kind.end())).matches());
        });
    }

    /** Whether a sheet certifies one product, so that its conditions are those of the product and not of what else a wall is made of. */
    static boolean isCertificate(List<Layout> layouts) {
        return layouts.stream().flatMap(layout -> layout.lines().stream()).limit(HEAD).anyMatch(line -> CERTIFICATE.matcher(line.text())
            .lookingAt());
    }

    /** @param asks reads limits out of conditions */
    static Optional<Report> read(List<Layout> layouts, Asks asks) {
        if (!isReport(layouts)) {
            return Optional.empty();
        }
        ReportHead head = new ReportHead(layouts);
        List<Placed> lines = head.whole().lines();
        return Optional.of(new Report(head.number().map(number -> number.number().text()).orElse(""),
            stated(lines, HOLDERS), stated(lines, SUBJECTS), ReportCodes.in(head.whole()).stream().map(Edition::name).toList(),
            ReportDates.issued(head).map(Spot::text).orElse(""), ReportDates.ends(head).map(Spot::text).orElse(""),
            ReportConditions.in(lines, asks)));
    }

    /** What stands behind a name in its cell, in the cell beside it, or below it. */
    private static String stated(List<Placed> lines, String names) {
        Pattern within = Pattern.compile("(?i)\\s*(?:" + names
            + ")\\s*(?::|(?=\\s(?-i:\\p{Lu}|\\d))(?!\\s(?:evaluation|report|certif|approval|assessment|listing|number|no\\b|data"
            + "|sheet)))\\s*(\\S.*)");
        Pattern alone = Pattern.compile("(?i)\\s*(?:" + names + ")\\s*:?\\s*");
        for (int i = 0; i < lines.size(); i++) {
            List<Cell> cells = lines.get(i).line().cells();
            for (int j = 0; j < cells.size(); j++) {
                Matcher found = within.matcher(cells.get(j).text());
                if (found.matches()) {
                    return ended(found.group(1));
                }
                if (alone.matcher(cells.get(j).text()).matches()) {
                    return ended(j + 1 < cells.size() && !NO_VALUE.matcher(cells.get(j + 1).text()).matches() ? cells.get(j + 1).text()
                        : below(lines, i, cells.get(j)));
                }
            }
        }
        return "";
    }

    /** What stands right below a label, in line with it. */
    private static String below(List<Placed> lines, int at, Cell label) {
        return lines.stream().skip(at + 1).limit(NEXT).flatMap(line -> line.line().cells().stream()).filter(cell -> Math.abs(cell.left()
            - label.left()) < IN_LINE && cell.y() > label.y() && cell.y() - label.y() < LOW * label.size()).map(Cell::text).findFirst()
            .orElse("");
    }

    private static String ended(String words) {
        return words.strip().replaceAll("(?i)(?<!\\b(?:inc|ltd|co|corp|mfg|bros|s\\.a|s\\.p\\.a)|\\b\\p{L})\\.$", "");
    }
}
