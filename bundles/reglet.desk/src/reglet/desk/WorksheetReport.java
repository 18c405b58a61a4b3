package reglet.desk;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import reglet.model.JobWorksheets;
import reglet.model.JobWorksheets.Undone;
import reglet.model.ShownUnits;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;
import reglet.worksheets.InputSpec;
import reglet.worksheets.Worksheets;

/** Worksheets in words, for a terminal. */
public final class WorksheetReport {

    private WorksheetReport() {
    }

    /** Whether every worksheet could be made and none falls short. */
    public static boolean isClean(JobWorksheets worksheets) {
        return worksheets.undone().isEmpty() && worksheets.made().stream().noneMatch(WorksheetReport::fallsShort);
    }

    /** Whether less is there than is needed. */
    public static boolean fallsShort(Worksheet worksheet) {
        return worksheet.margin().isPresent() && worksheet.margin().getAsDouble() < 1;
    }

    /** A line for each worksheet, with its margin where it has one, and what has to be looked at. */
    public static String summary(JobWorksheets worksheets) {
        StringBuilder page = new StringBuilder();
        for (Worksheet worksheet : worksheets.made()) {
            page.append(heading(worksheet)).append(margin(worksheet).map(margin -> ": " + margin).orElse("")).append('\n');
            worksheet.warnings().forEach(warning -> page.append("  ").append(warning).append('\n'));
        }
        for (Undone undone : worksheets.undone()) {
            page.append(where(undone.wall(), undone.meeting())).append(undone.title()).append(": can't be made; ")
                .append(undone.missing().isEmpty() ? undone.why() : "not known: " + String.join(", ", undone.missing())).append('\n');
        }
        return page.toString();
    }

    /** A whole worksheet. */
    public static String text(Worksheet worksheet) {
        StringBuilder page = new StringBuilder(heading(worksheet)).append("\n\nInputs\n");
        worksheet.inputs().forEach((key, input) -> page.append(String.format(Locale.ROOT, "  %-18s %s: %s (%s)%n", key, input.label(),
            input.value().text(), input.from())));
        page.append("\nSteps\n");
        for (Worksheet.Step step : worksheet.steps()) {
            page.append("  ").append(step.symbol()).append(", ").append(step.label()).append("\n      ").append(step.formula())
                .append("\n      ").append(step.substitution()).append(" = ").append(step.value().quantity().text()).append('\n');
            step.basis().forEach(basis -> page.append("      ").append(basis.text()).append('\n'));
        }
        page.append("\nResults\n");
        worksheet.results().forEach((key, amount) -> page.append(String.format(Locale.ROOT, "  %-22s %s: %s%n", key, amount.label(),
            ShownUnits.BOTH.text(amount.quantity()))));
        margin(worksheet).ifPresent(margin -> page.append("  ").append(margin).append('\n'));
        sentences(page, "Look at", worksheet.warnings());
        sentences(page, "Assumed", worksheet.assumed());
        return page.toString().replace(System.lineSeparator(), "\n");
    }

    private static Optional<String> margin(Worksheet worksheet) {
        return worksheet.margin().stream().mapToObj(margin -> String.format(Locale.ROOT, "margin %.2f", margin)
            + (fallsShort(worksheet) ? ", falls short" : "")).findFirst();
    }

    private static void sentences(StringBuilder page, String title, List<String> sentences) {
        if (!sentences.isEmpty()) {
            page.append('\n').append(title).append('\n');
            sentences.forEach(sentence -> page.append("  ").append(sentence).append('\n'));
        }
    }

    private static String heading(Worksheet worksheet) {
        return where(worksheet.wall(), worksheet.meeting()) + worksheet.title();
    }

    private static String where(String wall, String meeting) {
        return wall.isEmpty() ? "" : wall + (meeting.isEmpty() ? "" : " " + meeting) + ": ";
    }

    /** What a worksheet asks for, a line each. */
    public static String inputs(String name) throws UnusableInput {
        StringBuilder page = new StringBuilder();
        for (InputSpec input : Worksheets.describe(name)) {
            page.append(String.format(Locale.ROOT, "%-18s %s", input.key(), input.label()));
            input.unit().filter(unit -> !unit.symbol().isEmpty()).ifPresent(unit -> page.append(", ").append(unit.symbol()));
            if (!input.words().isEmpty()) {
                page.append("; one of: ").append(String.join(", ", input.words()));
            }
            if (!input.rangeText().isEmpty()) {
                page.append("; ").append(input.rangeText());
            }
            page.append(input.required() ? "; required" : input.usual().isEmpty() ? "; may be left out" : "; usually " + input.usual())
                .append('\n');
            if (!input.help().isEmpty()) {
                page.append(" ".repeat(19)).append(input.help()).append('\n');
            }
        }
        return page.toString();
    }
}
