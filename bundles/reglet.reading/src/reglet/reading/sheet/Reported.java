package reglet.reading.sheet;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Component;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.page.Sentence;
import reglet.reading.sheet.Flow.Placed;
import reglet.reading.sheet.Flow.Spot;
import reglet.reading.sheet.ReportCodes.Edition;
import reglet.reading.value.Around;
import reglet.reading.value.Taken;
import reglet.reading.words.Label;

/**
 * Reads what a data sheet says of the product's evaluation report: that there is one, its number, the codes' editions and its end. For
 * components whose pack asks for these: properties "report", "report_number", "report_editions", "report_until".
 */
final class Reported {
    private static final double SURE = 0.82;
    private static final Pattern REPORT = Pattern.compile("(?i)\\b(?:evaluation|code|research|listing)\\s+(?:report|listing)(?:s)?"
        + "(?:\\s*(?:no\\.?"
        + "|number|#))?"
        + "\\s*[:,(]?\\s*((?:[A-Z]{1,6}-|(?-i:[A-Z]{2,6}) )?[A-Z]{1,6}[- ]?\\d[\\w-]*|\\d{3,}[\\w-]*)");
    private static final Pattern TITLE = Pattern.compile("(?i)\\s*(?:(?:product|code|building|technical|compliance) )*"
        + "(?:evaluation|code|listing|research|compliance) (?:report|certificate)"
        + "\\s*(?:(?:no\\.?|number)\\s*)?(?:(?:[A-Z]+[- ])?[A-Z]+[- ]?\\d[\\w-]*)?\\s*");
    private static final Pattern YEARS = Pattern.compile("(?i)((?:20\\d\\d(?:\\s*(?:,|and|&|,\\s*and)\\s*)?)+)\\s*(?:editions?|codes?"
        + "|international|IBC|IRC)");
    /** "IBC and IRC 2018, 2021", "editions 2018 and 2021 of the IBC". */
    private static final Pattern CODES = Pattern.compile("\\b(?:IBC|IRC|editions?)\\s+(20\\d\\d(?:\\s*(?:,|and|&|,\\s*and)\\s*20\\d\\d)*)");
    private static final String MONTH = "(?:jan|feb|mar|apr|may|june?|july?|aug|sept?|oct|nov|dec)[a-z]*\\.?";
    private static final Pattern ENDS = Pattern.compile("(?i)(?:expires?|expiration|runs? (?:to|until|through)"
        + "|valid (?:until|through|to)|renewal|subject to renewal|(?:in force|good"
        + "|current) (?:until|to|through))\\b[^.]{0,24}?(20\\d\\d-\\d\\d?-\\d\\d?|\\d{1,2}/\\d{1,2}/20\\d\\d"
        + "|(?:\\d{1,2}(?:st|nd|rd|th)?\\s+)?\\b" + MONTH
        + "\\s+(?:\\d{1,2}(?:st|nd|rd|th)?,?\\s+)?20\\d\\d|20\\d\\d)");
    /** "The report runs to October 1, 2027" in a sentence of its own. */
    private static final Pattern OF_REPORT = Pattern.compile("(?i)\\breport\\b");
    private static final Pattern CODE_ROW = Pattern.compile("(?i)\\s*(?:applicable |building "
        + "|model )?codes?(?: and)?(?: editions?)?(?: named"
        + "| covered)?\\s*:?\\s*");
    private static final int HEAD = 12;
    /** Lines in which a title stands that makes a sheet a report by itself. */
    private static final int TOP = 3;
    /** Parts of a sentence behind the one that names the report. */
    private static final int NEXT = 4;

    private final Component component;
    private final Taken taken;

    Reported(Component component, Taken taken) {
        this.component = component;
        this.taken = taken;
    }

    void read(List<Layout> layouts) {
        if (component.properties().stream().noneMatch(property -> property.name().startsWith("report")) || layouts.isEmpty()) {
            return;
        }
        boolean isReport = ReportReader.isReport(layouts);
        if (component.property("report_number").isPresent()) {
            if (isReport) {
                own(layouts);
            } else {
                head(layouts);
            }
        }
        if (taken.has("report")) {
            return;
        }
        for (Layout layout : layouts) {
            for (Sentence sentence : layout.sentences()) {
                Matcher report = REPORT.matcher(sentence.cell().text());
                if (!(isReport && sentence.conditions()) && report.find()) {
                    taken.page(layout);
                    read(sentence.cell(), report);
                    int next = layout.sentences().indexOf(sentence) + 1;
                    layout.sentences().stream().map(Sentence::cell).filter(cell -> cell.y() > sentence.cell().y() - 1
                        && OF_REPORT.matcher(cell.text()).find()).forEach(this::until);
                    // "…; in force until March 31, 2027"
                    layout.sentences().stream().skip(next).limit(NEXT).map(Sentence::cell).filter(cell -> ENDS.matcher(cell.text())
                        .lookingAt()).forEach(this::until);
                    // "The report names the 2018 and 2021 IBC and IRC."
                    layout.sentences().stream().skip(next).limit(NEXT).map(Sentence::cell).filter(cell -> OF_REPORT.matcher(cell.text())
                        .find()).forEach(this::editions);
                    return;
                }
            }
        }
        layouts.forEach(this::rows);
        if (taken.has("report") && !isReport) {
            layouts.forEach(this::editionsListed);
        }
        if (!taken.has("report")) {
            titled(layouts.get(0), isReport ? HEAD : TOP);
        }
    }

    /** "CODE EVALUATION REPORT" in the head of a sheet that is one. */
    private void titled(Layout layout, int lines) {
        layout.lines().stream().limit(lines).flatMap(line -> line.cells().stream()).filter(cell -> TITLE.matcher(cell.text()).matches())
            .findFirst().ifPresent(cell -> {
                taken.page(layout);
                say("report", "yes", cell);
            });
    }

    /** A sheet that is itself the report: its number and dates in its head, its codes where they are listed. */
    private void own(List<Layout> layouts) {
        ReportHead head = new ReportHead(layouts);
        head.number().ifPresent(number -> {
            say("report", "yes", number.said());
            say("report_number", number.number().text(), number.number());
        });
        ReportDates.ends(head).ifPresent(ends -> say("report_until", ends.text(), ends));
        if (!editions(head.whole(), ReportCodes.in(head.whole()))) {
            codes(layouts);
        }
    }

    /** "Listed in Evaluation Report KRP-1010" in the head of a data sheet. */
    private void head(List<Layout> layouts) {
        Layout layout = layouts.get(0);
        List<Line> lines = layout.lines().stream().limit(HEAD).toList();
        for (int i = 0; i < lines.size(); i++) {
            Cell cell = lines.get(i).cells().get(0);
            Cell whole = i + 1 < lines.size() ? cell.with(lines.get(i + 1).cells().get(0)) : cell;
            Matcher report = REPORT.matcher(whole.text());
            if (cell.text().matches("(?i).*\\b(?:evaluation|code|listing)\\s+report\\b.*") && report.find()) {
                taken.page(layout);
                read(whole, report);
                lines.stream().flatMap(line -> line.cells().stream()).forEach(this::until);
                codes(layouts);
                return;
            }
        }
    }

    private void codes(List<Layout> layouts) {
        for (Layout layout : layouts) {
            for (Sentence sentence : layout.sentences()) {
                taken.page(layout);
                editions(sentence.cell());
            }
        }
    }

    /** "Evaluation report | IR-1111, under IBC 2018, 2021". */
    private void rows(Layout layout) {
        for (Line line : layout.lines()) {
            if (line.cells().size() == 2) {
                Cell row = line.cells().get(0).with(line.cells().get(1));
                Matcher report = REPORT.matcher(row.text());
                if (report.lookingAt() && report.start(1) >= line.cells().get(0).text().length()) {
                    taken.page(layout);
                    read(row, report);
                    return;
                }
            }
        }
    }

    /** "Code editions | IBC and IRC: 2018, 2021", in the list that tells of the report. */
    private void editionsListed(Layout layout) {
        layout.lines().stream().filter(line -> line.cells().size() == 2 && CODE_ROW.matcher(line.cells().get(0).text()).matches())
            .map(line -> new Flow(List.of(new Placed(layout, line)))).forEach(row -> editions(row, ReportCodes.in(row)));
    }

    private boolean editions(Flow flow, List<Edition> editions) {
        List<String> years = component.property("report_editions").stream().flatMap(property -> ReportCodes.years(editions).stream()
            .filter(property.type().words()::contains)).toList();
        if (!years.isEmpty()) {
            say("report_editions", String.join(", ", years), ReportCodes.spot(flow, editions));
        }
        return !years.isEmpty();
    }

    private void read(Cell cell, Matcher report) {
        say("report", "yes", cell.part(report.start(), report.end(1)));
        say("report_number", report.group(1), cell.part(report.start(1), report.end(1)));
        editions(cell);
        until(cell);
    }

    private void until(Cell cell) {
        Matcher ends = ENDS.matcher(cell.text());
        if (ends.find()) {
            say("report_until", ends.group(1), cell.part(ends.start(1), ends.end(1)));
        }
    }

    private void editions(Cell cell) {
        Matcher years = YEARS.matcher(cell.text());
        Matcher after = CODES.matcher(cell.text());
        if (years.find()) {
            say("report_editions", years.group(1), cell.part(years.start(1), years.end(1)));
        } else if (after.find()) {
            say("report_editions", after.group(1), cell.part(after.start(1), after.end(1)));
        }
    }

    private void say(String name, String words, Spot spot) {
        taken.page(spot.layout());
        say(name, words, spot.cell());
    }

    private void say(String name, String words, Cell place) {
        for (Property property : component.properties()) {
            if (property.name().equals(name) && !taken.has(property)) {
                if (property.type().kind() == Kind.FLAG) {
                    taken.said(property, words, place, Around.of(List.of(), SURE));
                } else {
                    taken.quietly(Label.of(property), property.label(), place.named(words), Around.of(List.of(), SURE));
                }
            }
        }
    }
}
