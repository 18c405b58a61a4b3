package reglet.desk;

import java.util.ArrayList;
import java.util.List;

import reglet.drafting.Registers;
import reglet.model.Finding;
import reglet.model.RegisterItem;
import reglet.model.UnusableInput;

/** The register as lines for a terminal. */
public final class RegisterReport {

    private RegisterReport() {
    }

    /** The items by the last day to hand them in; those that the job gives no dates for come last. */
    public static String dates(OpenJob job, List<String> sections) throws UnusableInput {
        List<RegisterItem> items = new ArrayList<>();
        for (String section : sections) {
            items.addAll(job.register(section));
        }
        StringBuilder page = new StringBuilder();
        Registers.byDate(items).forEach(item -> page.append(item.timing().map(timing -> timing.submitBy() + ", for " + timing.onSite())
            .orElse("no date")).append(": ").append(item.section()).append(' ')
            .append(item.paragraph().isEmpty() ? "" : item.paragraph() + " ").append(item.item()).append(", ").append(item.sends())
            .append(" (").append(item.id()).append("): ").append(item.status()).append('\n'));
        return page.toString();
    }

    /** A finding in the register, with what to do. */
    public static String line(Finding finding) {
        return finding.at() + ": " + finding.says() + " " + finding.fix();
    }
}
