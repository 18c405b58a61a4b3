package reglet.workbench.sheets;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.widgets.Composite;

import reglet.desk.DataSheets;
import reglet.desk.OpenJob;
import reglet.desk.Reviews;
import reglet.model.Basis;
import reglet.model.Component;
import reglet.model.ConditionCheck;
import reglet.model.Comparison.Row;
import reglet.model.ProductData;
import reglet.model.Requirement;
import reglet.model.ShownUnits;
import reglet.workbench.Marks;
import reglet.workbench.Prose;
import reglet.workbench.settings.Units;
import reglet.workbench.sheets.Compared.Line;

/** Why a result is as it is: what is asked for and where, what is shown, the paragraph, and on what the requirement rests. */
final class ReasonPane {
    private final Prose prose;
    private final Consumer<Line> jump;
    private Object about = "";

    /** @param jump leads to a line's paragraph in its section */
    ReasonPane(Composite parent, Consumer<Line> jump) {
        this.jump = jump;
        prose = new Prose(parent, "Why this result");
    }

    /** @param row null where the product has nothing to show there */
    void show(OpenJob job, Line line, Row row, Compared compared) {
        if (line == null) {
            prose.line("Choose a requirement: why its result is as it is stands here.");
        } else {
            prose.title(line.wall() + "  " + line.label());
            if (row == null) {
                prose.line("Nothing is asked of this product here.");
            } else {
                write(job, line, row, compared);
            }
        }
        Object now = List.of(line == null ? "" : line.key(), row == null ? "" : row.id());
        prose.show();
        if (!now.equals(about)) {
            about = now;
            prose.top();
        }
    }

    private void write(OpenJob job, Line line, Row row, Compared compared) {
        Requirement requirement = row.requirement();
        prose.strong(Compared.result(row)).end(0, 0);
        if (!row.note().isEmpty()) {
            prose.line(row.note());
        }
        String method = requirement.property().method().isNone() ? "" : ", by " + (requirement.property().method().standard() + " "
            + requirement.property().method().part()).strip();
        prose.strong("Asked for: ").plain(Reviews.asked(row, new ShownUnits(Units.shown().first(), true)) + method
            + "; fixed at " + requirement.at() + ".").end(0, 0);
        prose.strong("Shown: ").plain(shown(job, row)).end(0, 0);
        paragraph(job, line, row, compared);
        List<Basis> bases = requirement.property().basis();
        if (!bases.isEmpty()) {
            prose.title("On what it rests");
            bases.forEach(basis -> prose.item("•", basis.text()));
        }
        Compared.data(job, row.product()).ifPresent(product -> conditions(job, line, product));
    }

    private static String shown(OpenJob job, Row row) {
        ProductData product = Compared.data(job, row.product()).orElse(null);
        String name = product == null ? "" : product.name() + (product.maker().isEmpty() ? "" : ", " + product.maker()) + ": ";
        return row.submitted().map(value -> name + Compared.shown(row) + ", page " + value.page() + " of " + (product == null
            || product.sheet().isEmpty() ? "its sheet" : product.sheet()) + "; " + (value.confirmed() ? "confirmed by a person"
                : "not confirmed by a person") + ".").orElse(name.isEmpty() ? "no product of the job is for it." : name + "no value.");
    }

    private void paragraph(OpenJob job, Line line, Row row, Compared compared) {
        String section = job.pack().component(line.component()).map(Component::section).orElse("");
        if (row.paragraph().isEmpty()) {
            prose.line("No paragraph of the job's sections prints it.");
            return;
        }
        prose.title("Paragraph");
        prose.lead("Section " + section + ", " + row.paragraph(), () -> jump.accept(line)).end(0, 0);
        String text = compared.paragraphs().getOrDefault(section + " " + row.paragraph(), "");
        if (!text.isEmpty()) {
            prose.line(text);
        }
    }

    private void conditions(OpenJob job, Line line, ProductData product) {
        product.report().ifPresent(report -> {
            prose.title("Conditions of use of report " + report.number()
                + (report.ends().isEmpty() ? "" : ", which ends " + report.ends()));
            List<ConditionCheck> checks = DataSheets.conditions(job, product).stream()
                .filter(check -> check.wall().equals(line.wall())).toList();
            report.conditions().forEach(condition -> {
                List<ConditionCheck> own = checks.stream().filter(check -> check.condition().equals(condition)).toList();
                prose.item("•", (condition.number() + " " + condition.text()).strip() + " " + (own.isEmpty() ? "A person has to check it."
                    : String.join(" ", own.stream().map(check -> Marks.sentence(check.result().text()) + (check.note().isEmpty() ? "."
                        : ": " + check.note())).toList())));
            });
        });
    }
}
