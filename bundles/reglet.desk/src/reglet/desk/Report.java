package reglet.desk;

import java.util.List;
import java.util.Locale;

import reglet.model.AmendedPack;
import reglet.model.Amendment;
import reglet.model.Basis;
import reglet.model.Checked;
import reglet.model.Comparison;
import reglet.model.Explanation;
import reglet.model.Finding;
import reglet.model.Known;
import reglet.model.PaperRule;
import reglet.model.Rule;

/** The findings of a job in words. */
public final class Report {

    private Report() {
    }

    /** "2 conflicts, 1 gap, no cautions; 149 rules hold". */
    public static String summary(Checked checked) {
        return count(checked.count(Finding.Kind.CONFLICT), "conflict") + ", " + count(checked.count(Finding.Kind.GAP), "gap") + ", "
            + count(checked.count(Finding.Kind.CAUTION), "caution")
            + (checked.accepted().isEmpty() ? "" : ", " + checked.accepted().size() + " accepted") + "; "
            + checked.instances().getOrDefault(Rule.Result.HOLDS, 0) + " checks hold";
    }

    private static String count(long number, String word) {
        return (number == 0 ? "no" : Long.toString(number)) + " " + word + (number == 1 ? "" : "s");
    }

    /** One line for a terminal: place, kind, what and the fix. */
    public static String line(Finding finding) {
        String where = finding.wall().isEmpty() ? "" : finding.wall() + (finding.meeting().isEmpty() ? "" : " " + finding.meeting()) + ": ";
        return finding.at() + ": " + finding.kind().text() + ": " + where + finding.says()
            + (finding.fix().isEmpty() ? "" : " " + finding.fix()) + " [" + finding.rule() + (isRemembered(finding) ? ", from memory"
            : "") + "]";
    }

    /** Whether nothing that the rule rests on was read. */
    private static boolean isRemembered(Finding finding) {
        return finding.basis().stream().anyMatch(basis -> basis.known() == Known.FROM_MEMORY)
            && finding.basis().stream().noneMatch(basis -> basis.known() == Known.READ);
    }

    /** Whether every requirement is met. */
    public static boolean isClean(Comparison comparison) {
        return comparison.rows().stream().allMatch(row -> row.result() == Comparison.Result.MEETS);
    }

    /** "31 requirements: 29 meets, 1 falls short, 1 not shown". */
    public static String summary(Comparison comparison) {
        StringBuilder line = new StringBuilder(count(comparison.rows().size(), "requirement"));
        String mark = ": ";
        for (Comparison.Result result : Comparison.Result.values()) {
            long number = comparison.rows().stream().filter(row -> row.result() == result).count();
            if (number > 0) {
                line.append(mark).append(number).append(' ').append(result.text());
                mark = ", ";
            }
        }
        return line.toString();
    }

    /** How a rule came out, in words, once for each place it looks at. */
    public static String explanation(Rule rule, List<Explanation> explanations) {
        StringBuilder page = new StringBuilder(rule.id()).append(": ").append(rule.kind().text()).append(", looked at for each ")
            .append(rule.subject().isEmpty() ? rule.each().text() : rule.subject()).append('\n');
        if (!rule.when().isEmpty()) {
            page.append("  when   ").append(rule.when()).append('\n');
        }
        rule.let().forEach((name, expression) -> page.append("  let    ").append(name).append(" = ").append(expression).append('\n'));
        page.append("  holds  ").append(rule.holds()).append('\n');
        rule.basis().forEach(basis -> page.append("  basis  ").append(basis.text()).append('\n'));
        for (Explanation explanation : explanations) {
            page.append(explanation.wall().isEmpty() ? "job" : explanation.wall())
                .append(explanation.meeting().isEmpty() ? "" : " " + explanation.meeting())
                .append(": ").append(explanation.result().text()).append('\n');
            explanation.facts().forEach((name, value) -> page.append("  ").append(name).append(" is ").append(value.text()).append('\n'));
            explanation.let().forEach((name, value) -> page
                .append("  ").append(name).append(" comes to ").append(value.text()).append('\n'));
            explanation.missing().forEach(name -> page.append("  ").append(name).append(" is not known\n"));
            if (!explanation.error().isEmpty()) {
                page.append("  ").append(explanation.error()).append('\n');
            }
        }
        return page.toString();
    }

    /** What a rule for papers looks at, and what it found. */
    public static String explanation(PaperRule rule, List<Finding> paper) {
        StringBuilder page = new StringBuilder(rule.id()).append(": ").append(rule.kind().text())
            .append(", looked at for each section that the job writes\n  holds  ").append(rule.holds()).append('\n');
        rule.basis().forEach(basis -> page.append("  basis  ").append(basis.text()).append('\n'));
        List<Finding> found = paper.stream().filter(finding -> finding.rule().equals(rule.id())).toList();
        if (found.isEmpty()) {
            page.append("sections: holds\n");
        }
        found.forEach(finding -> page.append("sections: breaks\n  ").append(finding.at()).append(": ").append(finding.says()).append('\n'));
        return page.toString();
    }

    /** A page of Markdown, grouped by wall type. */
    public static String markdown(OpenJob job) {
        Checked checked = job.checked();
        StringBuilder page = new StringBuilder("# Findings: ").append(job.job().title()).append("\n\n");
        if (!job.job().note().isEmpty()) {
            page.append(job.job().note()).append("\n\n");
        }
        page.append(sentence(summary(checked))).append(".\n");
        job.amended().ifPresent(amended -> amendments(page, amended));
        group(page, "The whole job", checked.findings().stream().filter(finding -> finding.wall().isEmpty()).toList());
        job.job().walls().forEach(wall -> group(page, "Wall type " + wall.id() + ", " + wall.title(),
            checked.findings().stream().filter(finding -> finding.wall().equals(wall.id())).toList()));
        group(page, "Accepted", checked.accepted());
        if (!job.assembly().cautions().isEmpty()) {
            page.append("\n## Cautions\n\n");
            job.assembly().cautions().forEach(caution -> page.append("- ").append(caution.text()).append('\n'));
        }
        return page.toString();
    }

    private static void amendments(StringBuilder page, AmendedPack amended) {
        page.append("\n## Local amendments: ").append(amended.jurisdiction()).append("\n\n");
        amended.amendments().forEach(amendment -> page.append("- ").append(amendment(amendment)).append('\n'));
    }

    /** "Strikes the rule top_vent.embers; Town of …, Building Rules 2023, 4.2 (read); amendments.yaml:9:5". */
    public static String amendment(Amendment amendment) {
        StringBuilder line = new StringBuilder(sentence(amendment.text()));
        amendment.basis().forEach(basis -> line.append("; ").append(basis.text()));
        return line.append("; ").append(amendment.at()).toString();
    }

    private static void group(StringBuilder page, String title, List<Finding> findings) {
        if (findings.isEmpty()) {
            return;
        }
        page.append("\n## ").append(title).append("\n\n");
        for (Finding finding : findings) {
            page.append("- **").append(sentence(finding.kind().text())).append("** ")
                .append(finding.meeting().isEmpty() ? "" : "at " + finding.meeting() + ": ").append(finding.says());
            if (!finding.fix().isEmpty()) {
                page.append(' ').append(finding.fix());
            }
            page.append("  \n  ").append(finding.rule()).append(", ").append(finding.at());
            for (Basis basis : finding.basis()) {
                page.append("; ").append(basis.text());
            }
            page.append('\n');
        }
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
