package reglet.desk;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.model.Finding;
import reglet.model.Pack;
import reglet.model.Proposal;
import reglet.model.Remedies;
import reglet.model.WhatIf;

/** What could be done, in words. */
public final class RemedyReport {

    private RemedyReport() {
    }

    /** "  remedy: W1.lath = woven-17", a line each; or why there is none. */
    public static String lines(Remedies remedies) {
        return remedies.none().isEmpty() ? String.join("", remedies.all().stream().map(remedy -> "  remedy: " + remedy.text() + "\n")
            .toList())
            : "  no remedy: " + remedies.none() + "\n";
    }

    /** What changes would clear and bring. */
    public static String tried(OpenJob before, OpenJob after) {
        StringBuilder page = new StringBuilder();
        lines(page, "cleared", before, after);
        lines(page, "new", after, before);
        long stays = before.checked().findings().stream().filter(finding -> keys(after).contains(finding.key())).count();
        return page.append(stays).append(stays == 1 ? " finding stays" : " findings stay").append('\n').toString();
    }

    private static void lines(StringBuilder page, String word, OpenJob in, OpenJob notIn) {
        Set<String> there = keys(notIn);
        in.checked().findings().stream().filter(finding -> !there.contains(finding.key()))
            .forEach(finding -> page.append(word).append(": ").append(Report.line(finding)).append('\n'));
    }

    private static Set<String> keys(OpenJob job) {
        return job.checked().findings().stream().map(Finding::key).collect(Collectors.toSet());
    }

    /** A line for each option not taken: that it fits, or what it would bring, and what it would clear. */
    public static String whatIf(Pack pack, List<WhatIf> each) {
        StringBuilder page = new StringBuilder();
        for (WhatIf one : each) {
            page.append(one.option()).append(", ").append(pack.component(one.component()).flatMap(found -> found.option(one.option()))
                .orElseThrow().title()).append(one.fits() ? ": fits" : ": doesn't fit");
            names(page, "; brings ", one.brings());
            names(page, "; clears ", one.clears());
            page.append('\n');
        }
        return page.toString();
    }

    private static void names(StringBuilder page, String word, List<Finding> findings) {
        if (!findings.isEmpty()) {
            page.append(word).append(String.join(", ", findings.stream().map(finding -> finding.rule() + " (" + finding.kind().text() + ")")
                .distinct().toList()));
        }
    }

    /** A proposal by wall type, each pick with the rules that decided it; or what keeps one from being. */
    public static String proposal(Pack pack, Proposal proposal) {
        StringBuilder page = new StringBuilder();
        if (!proposal.stands()) {
            if (proposal.together().isEmpty()) {
                return "No options stand together here, whatever is fixed: the facts of the job or the pack contradict each other.\n";
            }
            page.append("These choices can't stand together").append(proposal.smallest() ? ", and no fewer are the reason" : "")
                .append(":\n");
            proposal.together().forEach(fixed -> page.append("  ").append(fixed.wall()).append('.').append(fixed.component()).append(" = ")
                .append(fixed.option()).append('\n'));
            return page.toString();
        }
        proposal.picks().forEach((wall, picks) -> {
            page.append(wall).append(picks.isEmpty() ? ": everything is decided\n" : "\n");
            picks.forEach((component, pick) -> page.append("  ").append(component).append(" = ").append(pick.option()).append(", ")
                .append(pack.component(component).flatMap(found -> found.option(pick.option())).orElseThrow().title())
                .append(because(pick.because())).append('\n'));
        });
        page.append("cost class ").append(proposal.cost()).append(proposal.optimal() ? ", and none is cheaper" : "").append('\n');
        if (!proposal.left().isEmpty()) {
            page.append("no option clears: ").append(String.join(", ", proposal.left().stream().map(Finding::key).distinct().toList()))
                .append('\n');
        }
        return page.append("Proposed only: each stays so until a person accepts it.\n").toString();
    }

    private static String because(List<String> rules) {
        return rules.isEmpty() ? "" : " [" + String.join(", ", rules) + "]";
    }
}
