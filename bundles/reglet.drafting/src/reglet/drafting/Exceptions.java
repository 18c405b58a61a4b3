package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import reglet.model.Accepted;
import reglet.model.Assembly;
import reglet.model.Basis;
import reglet.model.Finding;
import reglet.model.Pack;

/** The findings that somebody accepted, each with the reason and the name: a register for those who have to agree. */
public final class Exceptions {
    static final String TITLE = "Register of exceptions";
    static final String ABOUT = "Each line is a finding that somebody accepted with a reason. It still stands: the rule is not met. "
        + "Those who answer for the design have to agree, and the authority where a code is concerned.";
    static final String NONE = "No finding is accepted.";
    static final String GONE = "Nothing is found now; the entry can go.";
    private static final List<String> TITLES = List.of("No.", "Rule", "Kind", "Wall", "At", "Finding", "Reason", "Accepted by", "Basis");

    private Exceptions() {
    }

    /**
     * What a job accepts.
     *
     * @param findings those that it covers; none when the mistake has been mended since
     */
    public record Entry(Accepted accepted, List<Finding> findings) {
        public Entry {
            findings = List.copyOf(findings);
        }
    }

    /**
     * A line of the register, each cell in words.
     *
     * @param number counted from 1
     */
    record Line(int number, String rule, String kind, String wall, String at, String says, String because, String by, String basis) {
        List<String> cells() {
            return List.of(Integer.toString(number), rule, kind, wall, at, says, because, by, basis);
        }
    }

    /** One line for each finding that is covered; an entry that covers none has a line that says so. */
    static List<Line> lines(List<Entry> entries) {
        List<Line> lines = new ArrayList<>();
        for (Entry entry : entries) {
            Accepted accepted = entry.accepted();
            if (entry.findings().isEmpty()) {
                lines.add(new Line(lines.size() + 1, accepted.rule(), "", accepted.wall(), "", GONE, accepted.because(),
                    accepted.by(), ""));
            }
            for (Finding finding : entry.findings()) {
                lines.add(new Line(lines.size() + 1, finding.rule(), finding.kind().text(), finding.wall(), finding.meeting(),
                    finding.says(), accepted.because(), accepted.by(),
                    finding.basis().stream().map(Basis::text).collect(Collectors.joining("; "))));
            }
        }
        return lines;
    }

    /** The register as CSV (RFC 4180, lines end CR LF). */
    public static String csv(List<Entry> entries) {
        StringBuilder csv = new StringBuilder(Csv.line(TITLES));
        lines(entries).forEach(line -> csv.append(Csv.line(line.cells())));
        return csv.toString();
    }

    /** The register as a page of Markdown. */
    public static String markdown(Assembly assembly, List<Entry> entries) {
        StringBuilder page = new StringBuilder("# ").append(TITLE).append(": ").append(assembly.job().title()).append("\n\n");
        if (!assembly.job().note().isEmpty()) {
            page.append(assembly.job().note()).append("\n\n");
        }
        page.append(entries.isEmpty() ? NONE : ABOUT).append('\n');
        for (Line line : lines(entries)) {
            page.append("\n## ").append(line.number()).append(". ").append(line.rule()).append(where(line)).append("\n\n")
                .append(line.kind().isEmpty() ? "" : "**" + line.kind() + "** ").append(line.says()).append("\n\n");
            page.append("- Reason: ").append(line.because()).append("\n- Accepted by: ").append(line.by()).append('\n');
            if (!line.basis().isEmpty()) {
                page.append("- Basis: ").append(line.basis()).append('\n');
            }
        }
        if (!assembly.cautions().isEmpty()) {
            page.append("\n## Cautions\n\n");
            assembly.cautions().stream().map(Pack.Caution::text).forEach(caution -> page.append("- ").append(caution).append('\n'));
        }
        return page.toString();
    }

    private static String where(Line line) {
        return (line.wall().isEmpty() ? "" : ", wall type " + line.wall()) + (line.at().isEmpty() ? "" : " at " + line.at());
    }
}
