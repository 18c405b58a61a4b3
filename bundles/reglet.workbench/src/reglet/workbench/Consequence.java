package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.model.Finding;
import reglet.model.Option;

/**
 * What would stand if an option were the one accepted for a component.
 *
 * @param option   the option
 * @param accepted whether it is accepted now
 * @param brings   findings that would stand and have to do with the component, or are not there now
 * @param clears   findings there now that have nothing to do with the component and would be gone
 */
record Consequence(Option option, boolean accepted, List<Finding> brings, List<Finding> clears) {

    Consequence {
        brings = List.copyOf(brings);
        clears = List.copyOf(clears);
    }

    /**
     * What each option of a component would bring.
     *
     * @param options one for each option, in the pack's order, without what stands anyway
     * @param anyway  findings that would stand whichever option is accepted
     */
    record Outlook(List<Consequence> options, List<Finding> anyway) {
        Outlook {
            options = List.copyOf(options);
            anyway = List.copyOf(anyway);
        }

        /** "Whatever is accepted: ≠ 1 conflict, corner.lath"; "" when it all depends. */
        String sentence() {
            return anyway.isEmpty() ? "" : "Whatever is accepted: " + Marks.counts(anyway) + ", " + rules(anyway);
        }
    }

    /** Sorts what every option would bring from what depends on the option. */
    static Outlook outlook(List<Consequence> each) {
        List<Finding> anyway = each.size() < 2 ? List.of() : each.get(0).brings.stream().filter(finding -> each.stream()
            .allMatch(other -> other.brings.stream().anyMatch(brought -> said(brought).equals(said(finding))))).toList();
        Set<String> common = said(anyway);
        return new Outlook(each.stream().map(one -> new Consequence(one.option, one.accepted,
            one.brings.stream().filter(finding -> !common.contains(said(finding))).toList(), one.clears)).toList(), anyway);
    }

    /** Works it out by checking the job with the option; takes as long as a check does. */
    static Consequence of(Snapshot now, String wall, String component, Option option) {
        List<Finding> after = now.job().choosing(wall, component, List.of(option.id())).checked().findings();
        Set<String> before = said(now.findings());
        Set<String> then = said(after);
        boolean accepted = now.wall(wall).flatMap(found -> found.choice(component))
            .map(choice -> choice.accept().contains(option.id())).orElse(false);
        return new Consequence(option, accepted,
            after.stream().filter(finding -> !before.contains(said(finding)) || finding.wall().equals(wall)
                && concerns(finding, component)).toList(),
            now.findings().stream().filter(finding -> !then.contains(said(finding)) && !concerns(finding, component)).toList());
    }

    /** "3.4 lb lath: fits", "2.5 lb lath: 1 conflict, lath.weight". */
    String sentence() {
        return option.title() + ": " + outcome();
    }

    /** "fits", "fits, adds 1 caution, lath.furring", "1 conflict, lath.weight". */
    String outcome() {
        List<String> parts = new ArrayList<>();
        for (Finding.Kind kind : Finding.Kind.values()) {
            List<Finding> ofKind = brings.stream().filter(finding -> finding.kind() == kind).toList();
            if (!ofKind.isEmpty()) {
                parts.add((kind == Finding.Kind.CAUTION ? "" : Marks.shape(kind) + " ") + Marks.number(ofKind.size(), kind.text()) + ", "
                    + rules(ofKind));
            }
        }
        boolean fits = brings.stream().allMatch(finding -> finding.kind() == Finding.Kind.CAUTION);
        String outcome = String.join("; ", parts);
        if (fits) {
            outcome = parts.isEmpty() ? Marks.FITS : Marks.FITS + ", with △ " + outcome;
        }
        return accepted || clears.isEmpty() ? outcome : outcome + "; clears " + rules(clears);
    }

    private static String rules(List<Finding> findings) {
        return findings.stream().map(Finding::rule).distinct().collect(Collectors.joining(", "));
    }

    /** A finding has to do with a component when it points at it, read one of its values or misses one. */
    static boolean concerns(Finding finding, String component) {
        String owned = component + ".";
        return finding.component().equals(component) || finding.facts().keySet().stream().anyMatch(name -> name.startsWith(owned))
            || finding.missing().stream().anyMatch(name -> name.startsWith(owned));
    }

    private static Set<String> said(List<Finding> findings) {
        return findings.stream().map(Consequence::said).collect(Collectors.toSet());
    }

    private static String said(Finding finding) {
        return finding.key() + "\n" + finding.says();
    }
}
