package reglet.workbench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import reglet.model.Checked;
import reglet.model.Finding;
import reglet.model.Rule;

/** The words for a state, each with a shape of its own, so that nothing is said by colour alone. */
public final class Marks {
    static final String FITS = "fits";

    private Marks() {
    }

    public static String shape(Finding.Kind kind) {
        return switch (kind) {
            case CONFLICT -> "≠";
            case GAP -> "○";
            case CAUTION -> "△";
        };
    }

    /** The gravest kind among findings, of which there is one at least. */
    static Finding.Kind worst(List<Finding> findings) {
        return findings.stream().map(Finding::kind).min(Comparator.naturalOrder()).orElseThrow();
    }

    /** "≠ conflict". */
    public static String word(Finding.Kind kind) {
        return shape(kind) + " " + kind.text();
    }

    /** "≠ 2 conflicts · △ 1 caution", or "fits" when there is nothing to say. */
    public static String state(List<Finding> findings) {
        String counts = counts(findings);
        return counts.isEmpty() ? FITS : counts;
    }

    /** "≠ 2 conflicts · △ 1 caution"; "" for none. */
    public static String counts(List<Finding> findings) {
        List<String> parts = new ArrayList<>();
        for (Finding.Kind kind : Finding.Kind.values()) {
            long number = findings.stream().filter(finding -> finding.kind() == kind).count();
            if (number > 0) {
                parts.add(shape(kind) + " " + number(number, kind.text()));
            }
        }
        return String.join(" · ", parts);
    }

    /** "≠ 2 △ 1": where there is no room for words. */
    public static String shapes(List<Finding> findings) {
        List<String> parts = new ArrayList<>();
        for (Finding.Kind kind : Finding.Kind.values()) {
            long number = findings.stream().filter(finding -> finding.kind() == kind).count();
            if (number > 0) {
                parts.add(shape(kind) + " " + number);
            }
        }
        return String.join(" ", parts);
    }

    /** "2 conflicts · 1 gap · 149 rules hold". */
    public static String summary(Checked checked) {
        List<String> parts = new ArrayList<>();
        for (Finding.Kind kind : Finding.Kind.values()) {
            if (kind == Finding.Kind.CONFLICT || checked.count(kind) > 0) {
                parts.add(checked.count(kind) == 0 ? "no " + kind.text() + "s" : number(checked.count(kind), kind.text()));
            }
        }
        if (!checked.accepted().isEmpty()) {
            parts.add(checked.accepted().size() + " accepted");
        }
        parts.add(checked.instances().getOrDefault(Rule.Result.HOLDS, 0) + " checks hold");
        return String.join(" · ", parts);
    }

    /** "1 gap", "2 gaps". */
    public static String number(long number, String word) {
        return number + " " + word + (number == 1 ? "" : "s");
    }

    /** With a capital first letter. */
    public static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
