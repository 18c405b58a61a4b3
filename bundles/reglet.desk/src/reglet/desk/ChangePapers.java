package reglet.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import reglet.comparing.Changing;
import reglet.drafting.Letterhead;
import reglet.drafting.MarkedDocx;
import reglet.drafting.MarkedMarkdown;
import reglet.drafting.MarkedPdf;
import reglet.drafting.Narrative;
import reglet.drafting.NarrativePages;
import reglet.model.Issue;
import reglet.model.IssueChanges;
import reglet.model.Office;
import reglet.model.SectionChanges;
import reglet.model.SectionChanges.Kind;
import reglet.model.SectionChanges.Line;
import reglet.model.UnusableInput;
import reglet.store.SafeFile;

/** What changed between two issues: told in words, marked in the sections, and for programs. */
public final class ChangePapers {

    private ChangePapers() {
    }

    /**
     * The papers, below a folder that ends in "/" or is "". Sections in which nothing changed have none.
     *
     * @param office whose letterhead they bear
     * @throws UnusableInput if the letterhead can't be used
     */
    public static List<Output> of(IssueChanges changes, String folder, Office office) throws UnusableInput {
        List<Output> papers = new ArrayList<>();
        Narrative narrative = Narrative.of(changes);
        Letterhead letterhead = Letterhead.of(office, narrative);
        papers.add(text(folder + "changes.md", NarrativePages.markdown(narrative)));
        papers.add(new Output(folder + "changes.docx", NarrativePages.docx(narrative, letterhead)));
        papers.add(new Output(folder + "changes.pdf", NarrativePages.pdf(narrative, letterhead)));
        papers.add(text(folder + "changes.json", Forms.text(form(changes))));
        String marks = "Changes from " + changes.before().called() + " to " + changes.after().called();
        for (SectionChanges section : changes.sections()) {
            if (!section.provisions().isEmpty() || !section.cautions().isEmpty()) {
                String name = folder + Outputs.fileName(section.section().number()) + "-marked";
                Letterhead around = Letterhead.marked(office, section, marks);
                papers.add(text(name + ".md", MarkedMarkdown.of(section, marks)));
                papers.add(new Output(name + ".docx", MarkedDocx.of(section, marks, changes.after().date(), around)));
                papers.add(new Output(name + ".pdf", MarkedPdf.of(section, marks, around)));
            }
        }
        return papers;
    }

    /** What changed from one issue to another. */
    public static IssueChanges between(Issue before, Issue after) {
        return Changing.between(before, after);
    }

    /** The office for papers of a job, or of an issue in a job. */
    public static Office office(Path folder, Path asked) throws UnusableInput, IOException {
        Path job = Issues.isIssue(folder) ? folder.toAbsolutePath().getParent().getParent() : folder;
        return Offices.find(job, Optional.ofNullable(asked));
    }

    /** Writes the papers into a folder; gives the files written. */
    public static List<Path> write(IssueChanges changes, Path folder, Office office) throws UnusableInput, IOException {
        List<Path> written = new ArrayList<>();
        for (Output output : of(changes, "", office)) {
            SafeFile.write(folder.resolve(output.name()), output.bytes());
            written.add(folder.resolve(output.name()));
        }
        return written;
    }

    /** For programs. */
    public static JsonObject form(IssueChanges changes) {
        JsonArray all = new JsonArray();
        for (SectionChanges section : changes.sections()) {
            for (Line line : section.provisions()) {
                JsonObject form = new JsonObject();
                form.addProperty("section", section.section().number());
                form.addProperty("paragraph", line.side().id());
                form.addProperty("at", line.side().path());
                form.addProperty("kind", line.kind().text());
                if (line.kind() == Kind.MOVED) {
                    form.addProperty("from", line.before().orElseThrow().path());
                }
                line.before().ifPresent(side -> form.addProperty("before", side.plain()));
                line.after().ifPresent(side -> form.addProperty("after", side.plain()));
                List<String> origins = changes.origins(line);
                if (!origins.isEmpty()) {
                    form.add("by", Forms.strings(origins));
                }
                all.add(form);
            }
        }
        JsonObject form = new JsonObject();
        form.addProperty("from", changes.before().called());
        form.addProperty("to", changes.after().called());
        form.add("changes", all);
        JsonArray cautions = cautions(changes);
        if (!cautions.isEmpty()) {
            form.add("cautions", cautions);
        }
        return form;
    }

    private static JsonArray cautions(IssueChanges changes) {
        JsonArray all = new JsonArray();
        for (SectionChanges section : changes.sections()) {
            for (Line line : section.cautions()) {
                JsonObject form = new JsonObject();
                form.addProperty("section", section.section().number());
                form.addProperty("kind", line.kind().text());
                line.before().ifPresent(side -> form.addProperty("before", side.plain()));
                line.after().ifPresent(side -> form.addProperty("after", side.plain()));
                all.add(form);
            }
        }
        return all;
    }

    /** A line for each change, for a terminal. */
    public static String report(IssueChanges changes) {
        StringBuilder page = new StringBuilder();
        for (SectionChanges section : changes.sections()) {
            for (Line line : section.provisions()) {
                List<String> origins = changes.origins(line);
                page.append(section.section().number()).append(' ').append(line.side().path()).append(": ").append(line.kind().text())
                    .append(origins.isEmpty() ? "" : ", by " + String.join(", ",
                        origins)).append(": ").append(line.side().plain()).append('\n');
            }
        }
        String none = page.isEmpty() ? "no paragraph changed\n" : "";
        for (SectionChanges section : changes.sections()) {
            section.cautions().forEach(line -> page.append(section.section().number()).append(" cautions: ").append(line.kind().text())
                .append(": ").append(line.side().plain()).append('\n'));
        }
        return none + page;
    }

    private static Output text(String name, String text) {
        return new Output(name, text.getBytes(StandardCharsets.UTF_8));
    }
}
