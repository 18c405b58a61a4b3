package reglet.reading;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Component;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.Layout.Line;
import reglet.reading.Sentences.Sentence;
import reglet.reading.Taken.Around;

/**
 * Reads what a data sheet says of the product's evaluation report: that there is one, its number, the codes' editions and its end. For
 * components whose pack asks for these: properties "report", "report_number", "report_editions", "report_until".
 */
final class Reported {
    private static final double SURE = 0.82;
    private static final Pattern REPORT = Pattern.compile("(?i)\\b(?:evaluation|code|research|listing)\\s+report(?:s)?(?:\\s*(?:no\\.?"
        + "|number|#))?"
        + "\\s*:?\\s*([A-Z]{1,6}[- ]?\\d[\\w-]*|\\d{3,}[\\w-]*)");
    private static final Pattern YEARS = Pattern.compile("(?i)((?:20\\d\\d(?:\\s*(?:,|and|&|,\\s*and)\\s*)?)+)\\s*(?:editions?|codes?"
        + "|international|IBC|IRC)");
    /** "IBC and IRC 2018, 2021". */
    private static final Pattern CODES = Pattern.compile("\\b(?:IBC|IRC)\\s+(20\\d\\d(?:\\s*(?:,|and|&|,\\s*and)\\s*20\\d\\d)*)");
    private static final Pattern ENDS = Pattern.compile("(?i)(?:expires?|valid (?:until|through|to)|renewal|in force (?:until"
        + "|to))\\b[^.]{0,24}?(20\\d\\d)");

    private final Component component;
    private final Taken taken;

    Reported(Component component, Taken taken) {
        this.component = component;
        this.taken = taken;
    }

    void read(List<Layout> layouts) {
        for (Layout layout : layouts) {
            for (Sentence sentence : layout.sentences()) {
                Matcher report = REPORT.matcher(sentence.cell().text());
                if (!sentence.conditions() && report.find()) {
                    taken.page(layout);
                    read(sentence.cell(), report);
                    return;
                }
            }
        }
        layouts.forEach(this::rows);
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

    private void read(Cell cell, Matcher report) {
        say("report", "yes", cell.part(report.start(), report.end(1)));
        say("report_number", report.group(1), cell.part(report.start(1), report.end(1)));
        Matcher years = YEARS.matcher(cell.text());
        Matcher after = CODES.matcher(cell.text());
        if (years.find()) {
            say("report_editions", years.group(1), cell.part(years.start(1), years.end(1)));
        } else if (after.find()) {
            say("report_editions", after.group(1), cell.part(after.start(1), after.end(1)));
        }
        Matcher ends = ENDS.matcher(cell.text());
        if (ends.find()) {
            say("report_until", ends.group(1), cell.part(ends.start(1), ends.end(1)));
        }
    }

    private void say(String name, String words, Cell place) {
        for (Property property : component.properties()) {
            if (property.name().equals(name) && !taken.has(property)) {
                if (property.type().kind() == Kind.FLAG) {
                    taken.said(property, words, place, Around.of(List.of(), SURE));
                } else {
                    taken.quietly(Sayings.label(property), property.label(), place.named(words), Around.of(List.of(), SURE));
                }
            }
        }
    }
}
