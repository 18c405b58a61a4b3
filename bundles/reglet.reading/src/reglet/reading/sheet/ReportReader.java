package reglet.reading.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.SheetReading.Condition;
import reglet.model.SheetReading.Report;
import reglet.model.SheetValue;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.page.Paragraphs;

/** Reads what an evaluation report or a certificate says of itself: number, holder, codes, dates, conditions of use. */
final class ReportReader {
    private static final Pattern KIND = Pattern.compile("(?i)\\b(?:evaluation|code|listing|research|compliance)\\s+report\\b|\\bcert"
        + "ificate of (?:conformance|conformity|"
        + "compliance|analysis|approval)\\b|^\\s*certificate\\b");
    /** Only a report names its holder and its subject. */
    private static final Pattern HOLDER = Pattern.compile("(?i)\\s*(?:report holder|evaluation subject|holder of (?:the )?report)\\b");
    private static final Pattern CERTIFICATE = Pattern.compile("(?i)\\s*certificate of (?:conformance|conformity|compliance"
        + "|evaluation)\\b");
    /** "It is listed in" before "Evaluation Report": a data sheet that tells of its report. */
    private static final Pattern IN_PASSING = Pattern.compile(".*\\b(?:in|see|See|under|by|per|has|have|holds|with|to|its|an|a|our) $");
    private static final Pattern NUMBER = Pattern.compile("(?i)(?:report|certificate|listing)\\s*(?:no\\.?|number|#)?\\s*[:#]?\\s*(["
        + "A-Z]{1,6}[- ]?\\d[\\w.-]*|\\d{3,}[\\w.-]*)");
    private static final Pattern CODE = Pattern.compile("((?:19|20)\\d\\d(?:\\s*(?:,|and|&)\\s*(?:19|20)\\d\\d)*)\\s+(?:edition\\s+o"
        + "f\\s+(?:the\\s+)?)?"
        + "((?:International|National|State|California|Florida)[\\w\\s]*?Code)\\b[^()]{0,6}(?:\\(([A-Z]{2,5})\\))?");
    private static final Pattern SHORT_CODE = Pattern.compile("\\b((?:19|20)\\d\\d)\\s+(I[BREF]C|IECC|IEBC|CBC|CRC|FBC)\\b");
    private static final Pattern ITEM = Pattern.compile("^\\s*(?:(\\d+(?:\\.\\d+)+|\\d+\\.|[a-z][.)]|\\([a-z0-9]+\\))|[•▪-])\\s+(.*)$");

    private static final int HEAD = 12;

    private ReportReader() {
    }

    /** Whether a sheet is a report or a certificate, by its head. */
    static boolean isReport(List<Layout> layouts) {
        return layouts.stream().flatMap(layout -> layout.lines().stream()).limit(HEAD).anyMatch(line -> {
            if (HOLDER.matcher(line.text()).lookingAt()) {
                return true;
            }
            Matcher kind = KIND.matcher(line.text());
            return kind.find() && !IN_PASSING.matcher(line.text().substring(0, kind.start())).matches();
        });
    }

    /** Whether a sheet certifies one product, so that its conditions are those of the product and not of what else a wall is made of. */
    static boolean isCertificate(List<Layout> layouts) {
        return layouts.stream().flatMap(layout -> layout.lines().stream()).limit(HEAD).anyMatch(line -> CERTIFICATE.matcher(line.text())
            .lookingAt());
    }

    /** @param asks reads limits out of conditions */
    static Optional<Report> read(List<Layout> layouts, Asks asks) {
        List<Placed> lines = new ArrayList<>();
        layouts.forEach(layout -> layout.lines().forEach(line -> lines.add(new Placed(layout, line))));
        if (!isReport(layouts)) {
            return Optional.empty();
        }
        List<String> codes = new ArrayList<>();
        String number = "";
        for (int i = 0; i < lines.size(); i++) {
            Placed line = lines.get(i);
            // the name of a code may go on in the next line
            String two = line.text() + " " + (i + 1 < lines.size() ? lines.get(i + 1).text() : "");
            Matcher found = NUMBER.matcher(line.text());
            if (number.isEmpty() && found.find()) {
                number = found.group(1);
            }
            Matcher shortCode = SHORT_CODE.matcher(line.text());
            while (shortCode.find()) {
                codes.add(shortCode.group(2) + " " + shortCode.group(1));
            }
            Matcher code = CODE.matcher(two);
            while (code.find() && code.start() < line.text().length()) {
                String name = code.group(3) == null ? code.group(2).replaceAll("\\s+", " ") : code.group(3);
                for (String year : code.group(1).split("\\D+")) {
                    if (!codes.contains(name + " " + year)) {
                        codes.add(name + " " + year);
                    }
                }
            }
        }
        return Optional.of(new Report(number, stated(lines, "(?:report |certificate )?holder|issued to|applicant|client|granted to"),
            stated(lines, "evaluation subject|subject|product|products covered"), codes.stream().distinct().toList(),
            stated(lines, "(?:date )?(?:of )?(?:re)?issued?|issue date|date of issue|effective(?: date)?|date"),
            stated(lines, "renewal(?: due)?|(?:this report is )?subject to renewal|expir(?:y|es|ation)(?: date)?"
                + "|subject to renewal|valid (?:until|through|to)|renewal date"
                + "|reexamination due"),
            conditions(lines, asks)));
    }

    private record Placed(Layout layout, Line line) {
        String text() {
            return line.text();
        }

        Cell whole() {
            Cell whole = line.cells().get(0);
            for (Cell cell : line.cells().subList(1, line.cells().size())) {
                whole = whole.with(cell);
            }
            return whole;
        }
    }

    /** What stands after a name on its line, or on the line below it. */
    private static String stated(List<Placed> lines, String names) {
        Pattern beside = Pattern.compile("(?i)^\\s*(?:" + names + ")\\s*[:.]?\\s*[:\\s]\\s*(\\S.*)$");
        Pattern alone = Pattern.compile("(?i)^\\s*(?:" + names + ")\\s*:?\\s*$");
        for (int i = 0; i < lines.size(); i++) {
            List<String> parts = new ArrayList<>(lines.get(i).line.cells().size() > 2 ? List.of() : lines.get(i).line.cells().stream()
                .map(Cell::text).filter(text -> text.matches(".*[:\\d].*")).toList());
            parts.add(lines.get(i).text());
            for (String part : parts) {
                Matcher found = beside.matcher(part);
                if (found.matches() && found.group(1).length() < 120 && part.matches(".*[:\\d].*")) {
                    return found.group(1).replaceAll("\\.$", "").strip();
                }
            }
            if (alone.matcher(lines.get(i).text()).matches() && i + 1 < lines.size()) {
                return lines.get(i + 1).text().strip();
            }
        }
        return "";
    }

    private static List<Condition> conditions(List<Placed> lines, Asks asks) {
        List<Condition> conditions = new ArrayList<>();
        boolean within = false;
        String number = "";
        Cell cell = null;
        Layout layout = null;
        for (Placed line : lines) {
            if (Paragraphs.isConditions(line.text())) {
                within = true;
                continue;
            }
            if (!within) {
                continue;
            }
            if (Paragraphs.isHeading(line.text())) {
                within = false;
                continue;
            }
            Matcher item = ITEM.matcher(line.text());
            if (item.matches() || cell == null || layout != line.layout) {
                add(conditions, number, cell, layout, asks);
                number = item.matches() && item.group(1) != null ? item.group(1).replaceAll("[.)]$", "") : "";
                cell = line.whole();
                layout = line.layout;
            } else {
                cell = cell.with(line.whole());
            }
        }
        add(conditions, number, cell, layout, asks);
        return conditions;
    }

    private static void add(List<Condition> conditions, String number, Cell cell, Layout layout, Asks asks) {
        if (cell == null) {
            return;
        }
        Matcher item = ITEM.matcher(cell.text());
        String text = item.matches() ? item.group(2) : cell.text();
        List<SheetValue> limits = asks.in(text, layout.page(), layout.shown(cell));
        conditions.add(new Condition(number, text.replaceAll("\\s+", " "), layout.page(), layout.shown(cell), limits));
    }
}
