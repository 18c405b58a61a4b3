package reglet.store;

import reglet.model.SheetReading.Condition;
import reglet.model.SheetReading.Report;
import reglet.model.SheetValue;

/** What an evaluation report says of itself, as the text of a product file. */
final class ReportText {

    private ReportText() {
    }

    static String of(Report report) {
        StringBuilder text = new StringBuilder("report:\n");
        ProductText.line(text.append("  "), "number", report.number().isEmpty() ? "unknown" : report.number());
        member(text, "holder", report.holder());
        member(text, "subject", report.subject());
        if (!report.codes().isEmpty()) {
            text.append("  codes: [").append(String.join(", ", report.codes().stream().map(Edits::scalar).toList())).append("]\n");
        }
        member(text, "issued", report.issued());
        member(text, "ends", report.ends());
        if (!report.conditions().isEmpty()) {
            text.append("conditions:\n");
            report.conditions().forEach(condition -> condition(text, condition));
        }
        return text.toString();
    }

    private static void member(StringBuilder text, String name, String value) {
        if (!value.isEmpty()) {
            ProductText.line(text.append("  "), name, value);
        }
    }

    private static void condition(StringBuilder text, Condition condition) {
        ProductText.line(text.append("  - "), "text", condition.text());
        if (!condition.number().isEmpty()) {
            ProductText.line(text.append("    "), "number", condition.number());
        }
        text.append("    page: ").append(condition.page()).append("\n    box: ").append(ProductText.box(condition.box())).append('\n');
        if (!condition.limits().isEmpty()) {
            text.append("    limits:\n");
            for (SheetValue limit : condition.limits()) {
                text.append("      ").append(limit.property()).append(": {value: ").append(Edits.scalar(limit.value().text()));
                limit.compare().ifPresent(sense -> text.append(", compare: ").append(Edits.scalar(sense.text())));
                text.append("}\n");
            }
        }
    }
}
