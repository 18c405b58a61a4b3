package reglet.drafting;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.drafting.Addresses.Step;
import reglet.model.SectionChanges;
import reglet.model.SectionChanges.Edit;
import reglet.model.SectionChanges.Kind;
import reglet.model.SectionChanges.Line;
import reglet.model.SectionChanges.Run;
import reglet.model.SectionChanges.Side;
import reglet.model.SectionChanges.Sort;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;

/**
 * The changes of a section as a word processor's file with tracked changes (ECMA-376, part 1, 17.13.5), numbered as the section itself:
 * taking all of them gives the later draft, refusing all the earlier. The same bytes for the same changes.
 */
public final class MarkedDocx {
    /** Steps of an address whose marks end with a point, which fields leave out. */
    private static final int DEEPEST_ADDRESS = 4;

    private final SectionChanges changes;
    private final String stamp;
    private final Map<String, List<Step>> now;
    private final Map<String, List<Step>> old;
    /** Ids that a bookmark stands for. */
    private final Set<String> marked = new LinkedHashSet<>();
    private final StringBuilder body = new StringBuilder();
    private long marks;

    private MarkedDocx(SectionChanges changes, Optional<LocalDate> date) {
        this.changes = changes;
        this.stamp = " w:author=\"Reglet\" w:date=\"" + date.map(LocalDate::toString).orElse(SameBytes.day().toInstant().toString()
            .substring(0, 10)) + "T00:00:00Z\"";
        this.now = addresses(changes.after());
        this.old = addresses(changes.before());
    }

    /**
     * @param marks what the paper is: "Changes from Bid set to Addendum 1"
     * @param date  that the changes bear; a fixed one when there is none
     */
    public static byte[] of(SectionChanges changes, String marks, Optional<LocalDate> date) {
        return of(changes, marks, date, Letterhead.marked(changes, marks));
    }

    public static byte[] of(SectionChanges changes, String marks, Optional<LocalDate> date, Letterhead letterhead) {
        MarkedDocx docx = new MarkedDocx(changes, date);
        docx.write(marks);
        SectionDocument section = changes.section();
        return DocxPaper.of("Section " + section.number() + ", " + section.title(), section.job(), letterhead, docx.body.toString());
    }

    private void write(String marks) {
        body.append(DocxPaper.paragraph("SectionNumber", "", DocxPaper.text("SECTION " + changes.section().number())));
        boolean ended = false;
        boolean cautioned = changes.section().cautions().isEmpty();
        for (Line line : changes.lines()) {
            if (line.side().sort() == Sort.CAUTION && !ended) {
                end();
                ended = true;
            }
            if (line.side().sort() == Sort.CAUTION && !cautioned) {
                body.append(DocxPaper.paragraph("CautionTitle", "", DocxPaper.text(Papers.CAUTIONS)));
                cautioned = true;
            }
            line(line);
        }
        if (!ended) {
            end();
        }
        // The last paragraph of a file can't be taken out, so that it has to be one that stays.
        body.append(DocxPaper.paragraph("JobNote", "", DocxPaper.text(marks + ".")));
    }

    private void end() {
        body.append(DocxPaper.paragraph("EndOfSection", "", DocxPaper.text(Papers.end(changes.section()))));
    }

    private void line(Line line) {
        Side side = line.side();
        String style = switch (side.sort()) {
            case TITLE -> "SectionTitle";
            case NOTE -> "JobNote";
            case PART -> "Part";
            case EMPTY -> "Normal";
            case ARTICLE -> "Article";
            case PARAGRAPH -> "Paragraph" + side.level();
            case CAUTION -> "Caution";
        };
        String list = switch (side.sort()) {
            case PART -> DocxPaper.listed(DocxParts.SECTION_LIST, DocxParts.PART);
            case ARTICLE -> DocxPaper.listed(DocxParts.SECTION_LIST, DocxParts.ARTICLE);
            case PARAGRAPH -> DocxPaper.listed(DocxParts.SECTION_LIST, DocxParts.ARTICLE + side.level());
            case CAUTION -> DocxPaper.listed(DocxParts.CAUTION_LIST, 0);
            default -> "";
        };
        String mark = line.kind().stood() && line.kind().stands() ? ""
            : "<w:rPr><w:" + (line.kind().stands() ? "ins" : "del") + tracked() + "/></w:rPr>";
        List<Long> open = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        if (side.sort() == Sort.ARTICLE || side.sort() == Sort.PARAGRAPH) {
            names(line).forEach(name -> text.append(bookmark(name, open)));
        }
        Edit inside = Edit.KEPT;
        for (Run run : line.runs()) {
            // Neighbours of one kind are one change, to be taken or refused as one.
            text.append(run.edit() == inside ? "" : end(inside) + start(run.edit())).append(run(run));
            inside = run.edit();
        }
        text.append(end(inside));
        open.forEach(number -> text.append("<w:bookmarkEnd w:id=\"").append(number).append("\"/>"));
        body.append(DocxPaper.paragraph(style, (side.holds() && side.sort() == Sort.PARAGRAPH ? "<w:keepNext/>" : "") + list + mark,
            text.toString()));
    }

    /** A line that changed its id is found under both; one that moved only where it stands. */
    private static List<String> names(Line line) {
        Set<String> names = new LinkedHashSet<>();
        if (line.kind() != Kind.LEFT) {
            names.add(line.side().id());
            line.before().filter(side -> line.kind().stood()).map(Side::id).ifPresent(names::add);
        }
        return List.copyOf(names);
    }

    private String bookmark(String id, List<Long> open) {
        if (!marked.add(id)) {
            return "";
        }
        open.add(marks);
        return "<w:bookmarkStart w:id=\"" + marks++ + "\" w:name=\"" + Docx.bookmark(id) + "\"/>";
    }

    private String tracked() {
        return " w:id=\"" + marks++ + "\"" + stamp;
    }

    private String run(Run run) {
        String text = span(run.span(), run.edit());
        return run.edit() == Edit.KEPT && run.span() instanceof Slot slot ? "<w:sdt><w:sdtPr><w:tag w:val=\"" + Html.text(slot.ref())
            + "\"/></w:sdtPr><w:sdtContent>" + text + "</w:sdtContent></w:sdt>" : text;
    }

    private String start(Edit edit) {
        return edit == Edit.KEPT ? "" : (edit == Edit.INSERTED ? "<w:ins" : "<w:del") + tracked() + ">";
    }

    private static String end(Edit edit) {
        return edit == Edit.KEPT ? "" : edit == Edit.INSERTED ? "</w:ins>" : "</w:del>";
    }

    private String span(Span span, Edit edit) {
        boolean gone = edit == Edit.DELETED;
        if (span instanceof CrossReference reference) {
            List<Step> address = (gone ? old : now).get(reference.target());
            if (address != null) {
                return reference(reference, address, gone);
            }
        }
        return DocxPaper.run(span instanceof Strong ? "<w:b/>" : "", span.text(), gone);
    }

    /** As in the section itself: a field for each step, or the words where there is none that prints the mark. */
    private static String reference(CrossReference reference, List<Step> address, boolean gone) {
        String path = address.stream().map(Step::number).collect(Collectors.joining("."));
        if (address.size() > DEEPEST_ADDRESS || !reference.text().endsWith(" " + path)) {
            String link = DocxPaper.run("", reference.text(), gone);
            return gone ? link : "<w:hyperlink w:anchor=\"" + Docx.bookmark(reference.target()) + "\">" + link + "</w:hyperlink>";
        }
        StringBuilder text = new StringBuilder(DocxPaper.run("", reference.text().substring(0, reference.text().length() - path.length()),
            gone));
        for (int i = 0; i < address.size(); i++) {
            text.append(i > 0 ? DocxPaper.run("", ".", gone) : "").append(field(address.get(i), gone));
        }
        return text.toString();
    }

    private static String field(Step step, boolean gone) {
        String code = gone ? "delInstrText" : "instrText";
        return "<w:r><w:fldChar w:fldCharType=\"begin\"/></w:r><w:r><w:" + code + " xml:space=\"preserve\"> REF " + Docx.bookmark(step.id())
            + " \\n \\h </w:" + code + "></w:r><w:r><w:fldChar w:fldCharType=\"separate\"/></w:r>" + DocxPaper.run("", step.number(), gone)
            + "<w:r><w:fldChar w:fldCharType=\"end\"/></w:r>";
    }

    private static Map<String, List<Step>> addresses(Optional<SectionDocument> draft) {
        return draft.map(Addresses::of).orElse(Map.of());
    }
}
