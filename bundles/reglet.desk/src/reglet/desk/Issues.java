package reglet.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.comparing.Changing;
import reglet.model.Choice;
import reglet.model.Finding;
import reglet.model.Issue;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;
import reglet.model.WallType;
import reglet.store.IssueFiles;

/** Gives out a job's sections: issues, addenda, bulletins, each frozen in the job's {@code issues} folder. */
public final class Issues {
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} _.-]{0,78}[\\p{L}\\p{N}])?");

    private Issues() {
    }

    /**
     * What is to be given out.
     *
     * @param name "" for an addendum's or bulletin's own: "Addendum 1"
     * @param note a line about it; ""
     * @param withOpenConflicts whether it is given out though conflicts stand
     * @param office folder of the office whose letterhead its papers bear; empty for the job's or the person's own
     */
    public record Request(String name, Issue.Kind kind, Optional<LocalDate> date, String note, boolean withOpenConflicts,
            Optional<Path> office) {

        /** In the letterhead of the job or the person. */
        public Request(String name, Issue.Kind kind, Optional<LocalDate> date, String note, boolean withOpenConflicts) {
            this(name, kind, date, note, withOpenConflicts, Optional.empty());
        }
    }

    /** The job as it stands now. */
    public static Issue present(OpenJob job) throws UnusableInput {
        return issue(job, "", Issue.Kind.ISSUE, 0, 0, Optional.empty(), "");
    }

    /** All issues of a job in the order in which they were given out. */
    public static List<Issue> of(OpenJob job) throws UnusableInput, IOException {
        List<Issue> issues = new ArrayList<>();
        for (Path folder : IssueFiles.folders(job.folder())) {
            try {
                issues.add(read(folder, job.pack()));
            } catch (UnusableInput unusable) {
                throw unusable.below(IssueFiles.FOLDER + "/" + folder.getFileName());
            }
        }
        issues.sort(Comparator.comparingInt(Issue::order));
        return issues;
    }

    public static Optional<Issue> last(OpenJob job) throws UnusableInput, IOException {
        List<Issue> issues = of(job);
        return issues.isEmpty() ? Optional.empty() : Optional.of(issues.get(issues.size() - 1));
    }

    /** Whether a folder holds a frozen issue. */
    public static boolean isIssue(Path folder) {
        return IssueFiles.isIssue(folder);
    }

    /** The name of the pack that an issue was drafted with. */
    public static String packName(Path folder) throws UnusableInput, IOException {
        return IssueFiles.packName(folder);
    }

    /** A frozen issue; refused when one of its files isn't as it was issued. */
    public static Issue read(Path folder, Pack pack) throws UnusableInput, IOException {
        return IssueFiles.read(folder, pack);
    }

    /**
     * Freezes the job as it stands, with its papers; an addendum or bulletin also with what it changes since the last issue.
     *
     * @return the files written
     * @throws UnusableInput when it can't be given out: conflicts stand, the name is taken or not its turn, nothing was issued before
     */
    public static List<Path> freeze(OpenJob job, Request request, Progress progress) throws UnusableInput, IOException, Cancelled {
        List<Issue> before = of(job);
        int number = 1 + (int) before.stream().filter(issue -> issue.kind() == request.kind()).count();
        String name = name(request, number);
        List<Finding> conflicts = job.checked().findings().stream().filter(finding -> finding.kind() == Finding.Kind.CONFLICT).toList();
        if (!conflicts.isEmpty() && !request.withOpenConflicts()) {
            List<Problem> problems = new ArrayList<>();
            conflicts.forEach(finding -> problems.add(new Problem(finding.at(), "conflict: " + finding.says(), finding.fix())));
            problems.add(new Problem(Place.of(IssueFiles.FOLDER + "/" + name), "is not issued while conflicts stand",
                "clear them, accept them with a reason, or issue with --with-open-conflicts"));
            throw new UnusableInput(problems);
        }
        if (before.isEmpty() && request.kind() != Issue.Kind.ISSUE) {
            throw new UnusableInput(new Problem(Place.of(IssueFiles.FOLDER + "/" + name), "has nothing to change: nothing was issued yet",
                "issue the sections first, with --kind issue"));
        }
        Issue issue = issue(job.issued(name), name, request.kind(), before.size() + 1, number, request.date(), request.note());
        Map<String, byte[]> papers = new LinkedHashMap<>();
        Outputs outputs = Outputs.of(job.issued(name)).office(request.office().orElse(null)).findings();
        job.job().sections().forEach(outputs::section);
        put(outputs.make(), papers);
        if (progress.cancelled()) {
            throw new Cancelled();
        }
        if (request.kind() != Issue.Kind.ISSUE) {
            put(ChangePapers.of(Changing.between(before.get(before.size() - 1), issue), "changes/", Offices.find(job.folder(),
                request.office())), papers);
        }
        return IssueFiles.freeze(job.folder(), issue, papers);
    }

    private static void put(List<Output> outputs, Map<String, byte[]> papers) {
        outputs.forEach(output -> papers.put(output.name(), output.bytes()));
    }

    private static String name(Request request, int number) throws UnusableInput {
        String next = request.kind().title() + " " + number;
        if (request.name().isEmpty() && request.kind() != Issue.Kind.ISSUE) {
            return next;
        }
        if (!NAME.matcher(request.name()).matches()) {
            throw new UnusableInput(new Problem(Place.of(IssueFiles.FOLDER), "\"" + request.name() + "\" can't be the name of an issue",
                "expected at most 80 letters, digits, blanks, points, hyphens and underscores, such as \"Bid set\""));
        }
        Matcher counted = Pattern.compile("(?i)" + request.kind().text() + " (\\d+)").matcher(request.name());
        if (request.kind() != Issue.Kind.ISSUE && counted.matches() && !counted.group(1).equals(String.valueOf(number))) {
            throw new UnusableInput(new Problem(Place.of(IssueFiles.FOLDER + "/" + request.name()), "is not the next of its kind",
                "expected " + next));
        }
        return request.name();
    }

    private static Issue issue(OpenJob job, String name, Issue.Kind kind, int order, int number, Optional<LocalDate> date, String note)
            throws UnusableInput {
        Map<String, Issue.Made> choices = new LinkedHashMap<>();
        for (WallType wall : job.job().walls()) {
            wall.choices().forEach((component, choice) -> choices.put(wall.id() + "." + component, made(choice)));
        }
        return new Issue(name, kind, order, number, date, note, job.job().title(), job.job().note(), job.pack().name(), job.packDigest(),
            job.checked().findings().stream().map(Report::line).toList(), choices, job.job().questions(),
            job.assembly().cautions().stream().map(Pack.Caution::text).toList(), job.sections());
    }

    private static Issue.Made made(Choice choice) {
        StringBuilder accept = new StringBuilder(String.join(", ", choice.accept()));
        choice.values().forEach((property, stated) -> accept.append("; ").append(property).append(' ').append(stated.value().text()));
        return new Issue.Made(accept.toString(), choice.by());
    }
}
