package reglet.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import reglet.model.Issue;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.Question;
import reglet.model.SectionDocument;
import reglet.model.UnusableInput;

/**
 * Frozen issues on disk: {@code issues/NAME/issue.yaml} with the digest of every other file, {@code sections/NN-NN-NN.json} as drafted,
 * and the papers. What is frozen is never written again, and a file that was changed afterwards is noticed when the issue is read.
 */
public final class IssueFiles {
    /** The folder of a job's issues. */
    public static final String FOLDER = "issues";
    public static final String HEAD = "issue.yaml";
    /** The newest format that this program knows. */
    static final int FORMAT = 1;

    private final Problems problems = new Problems();
    private final Folder folder;
    private final Path root;

    private IssueFiles(Path root) {
        this.root = root;
        this.folder = new Folder(root, problems);
    }

    /** Whether a folder holds a frozen issue. */
    public static boolean isIssue(Path folder) {
        return Files.isRegularFile(folder.resolve(HEAD));
    }

    /** Folders of the issues of a job, by name. */
    public static List<Path> folders(Path job) throws IOException {
        List<Path> folders = new ArrayList<>();
        for (String name : new Folder(job, new Problems()).folders(FOLDER)) {
            if (isIssue(job.resolve(name))) {
                folders.add(job.resolve(name));
            }
        }
        return folders;
    }

    /** The name of the pack that an issue was drafted with. */
    public static String packName(Path root) throws UnusableInput, IOException {
        IssueFiles files = new IssueFiles(root);
        Optional<Fields> head = files.head();
        String name = head.flatMap(fields -> fields.find("pack")).map(cursor -> cursor.fields("name", "digest").text("name")).orElse("");
        files.problems.throwIfAny();
        return name;
    }

    /**
     * Reads an issue. Requirements that the pack no longer declares are left out of the slots that print them.
     *
     * @throws UnusableInput when a file is missing, can't be used, or isn't as it was issued
     */
    public static Issue read(Path root, Pack pack) throws UnusableInput, IOException {
        IssueFiles files = new IssueFiles(root);
        Issue issue = files.issue(pack);
        files.problems.throwIfAny();
        return issue;
    }

    private Optional<Fields> head() throws IOException {
        Optional<Fields> fields = folder.text(HEAD).flatMap(text -> Cursor.parse(HEAD, text, 0, problems)).map(file -> file.fields("format",
            "name", "kind", "order", "number", "date", "note", "job", "job-note", "pack", "findings", "choices", "questions", "cautions",
            "sections", "files"));
        if (fields.isEmpty() && problems.isEmpty()) {
            problems.add(Place.of(HEAD), "is empty", "put the issued file back");
        }
        fields.ifPresent(found -> Formats.check(found, FORMAT, "issue"));
        return fields;
    }

    private Issue issue(Pack pack) throws IOException, UnusableInput {
        Optional<Fields> found = head();
        problems.throwIfAny();
        Fields head = found.orElseThrow();
        Map<String, String> digests = head.textsByName("files");
        for (Map.Entry<String, String> file : digests.entrySet()) {
            unchanged(file.getKey(), file.getValue());
        }
        problems.throwIfAny();
        Map<String, Issue.Made> choices = new LinkedHashMap<>();
        head.members("choices").forEach((address, cursor) -> {
            Fields made = cursor.fields("accept", "by");
            choices.put(address, new Issue.Made(made.text("accept", ""), made.text("by", "")));
        });
        List<Question> questions = new ArrayList<>();
        head.members("questions").forEach((number, cursor) -> questions.add(QuestionFiles.question(number(number, cursor), cursor)));
        List<SectionDocument> sections = new ArrayList<>();
        for (Cursor number : head.items("sections")) {
            String file = sectionFile(number.text());
            if (!digests.containsKey(file)) {
                number.wrong("section " + number.text() + " has no file among the issue's", "put the issued " + HEAD + " back");
            } else {
                folder.text(file).flatMap(text -> Cursor.parse(file, text, 0, problems))
                    .ifPresent(cursor -> sections.add(IssuedSections.read(cursor, pack)));
            }
        }
        Optional<Fields> made = head.find("pack").map(cursor -> cursor.fields("name", "digest"));
        return new Issue(head.text("name"), head.oneOf("kind", Issue.Kind.words(), Issue.Kind.ISSUE), head.number("order", 0),
            head.number("number", 0), head.date("date"), head.text("note", ""), head.text("job", ""), head.text("job-note", ""),
            made.map(fields -> fields.text("name")).orElse(""), made.map(fields -> fields.text("digest", "")).orElse(""),
            head.texts("findings"), choices, questions, head.texts("cautions"), sections);
    }

    private static int number(String name, Cursor cursor) {
        try {
            return Integer.parseInt(name);
        } catch (NumberFormatException noNumber) {
            cursor.wrong("\"" + name + "\" is no number of a question", "expected a number such as 12");
            return 0;
        }
    }

    private void unchanged(String name, String digest) throws IOException {
        Path file = root.resolve(name);
        if (!folder.holds(name) || !Files.isRegularFile(file)) {
            problems.add(Place.of(name), "is missing from the issue", "put the issued file back");
        } else if (!digest(file).equals(digest)) {
            problems.add(Place.of(name), "was changed after it was issued", "put the issued file back, or give out a new issue");
        }
    }

    static String sectionFile(String number) {
        return "sections/" + number.replace(' ', '-').replace('.', '-') + ".json";
    }

    /**
     * Freezes an issue: writes its sections and papers, and its own page last, so that an issue which was interrupted is none.
     *
     * @param job    the job folder
     * @param papers the ready papers, by name
     * @return the files written
     * @throws UnusableInput when there is a folder of that name already; nothing is written then
     */
    public static List<Path> freeze(Path job, Issue issue, Map<String, byte[]> papers) throws UnusableInput, IOException {
        Path folder = job.resolve(FOLDER).resolve(issue.name());
        if (Files.exists(folder)) {
            throw new UnusableInput(new Problem(Place.of(FOLDER + "/" + issue.name()), isIssue(folder)
                ? "is issued already and stays as it is"
                : "is a folder already, but no whole issue", isIssue(folder) ? "give the next issue another name, such as an addendum's"
                : "look what is in it and move it away, or give the issue another name"));
        }
        Map<String, byte[]> files = new TreeMap<>(papers);
        issue.sections().forEach(section -> files.put(sectionFile(section.number()),
            IssueText.section(section).getBytes(StandardCharsets.UTF_8)));
        Map<String, String> digests = new LinkedHashMap<>();
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            SafeFile.write(folder.resolve(file.getKey()), file.getValue());
            digests.put(file.getKey(), HexFormat.of().formatHex(sha256().digest(file.getValue())));
            written.add(folder.resolve(file.getKey()));
        }
        SafeFile.write(folder.resolve(HEAD), IssueText.head(issue, digests).getBytes(StandardCharsets.UTF_8));
        written.add(folder.resolve(HEAD));
        return written;
    }

    private static String digest(Path file) throws IOException {
        MessageDigest digest = sha256();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
