package reglet.drafting;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.HtmlBlock;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ListBlock;
import com.vladsch.flexmark.ast.ListItem;
import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;

import reglet.model.Office;
import reglet.model.Problem;
import reglet.model.SectionChanges;
import reglet.model.SectionDocument;
import reglet.model.UnusableInput;

/**
 * What stands around one section: an office's letterhead with its templates filled, or the usual.
 *
 * @param office  whose; {@link Office#none()} for none
 * @param picture the letterhead's picture as PNG without transparency; empty for none
 * @param head    left and right side of every sheet's head
 * @param foot    left and right side of every sheet's foot
 * @param cover   lines of a page before the section; none for no such page
 */
public record Letterhead(Office office, byte[] picture, Edge head, Edge foot, List<Line> cover) {
    /** Stand for the number of the page, and of the last page, in texts; private use characters, which no paper prints. */
    static final String PAGE = "\uE000";
    static final String PAGES = "\uE001";

    public Letterhead {
        cover = List.copyOf(cover);
    }

    public record Edge(String left, String right) {
    }

    public enum Kind { TITLE, HEADING, TEXT, ITEM }

    public record Line(Kind kind, String text) {
    }

    /** What a paper is: the model of an office's templates. */
    private record Paper(String job, String note, String number, String title, String issue) {
        static Paper of(SectionDocument section, String issue) {
            return new Paper(section.job(), section.note(), section.number(), section.title(), issue);
        }

        Letterhead plain() {
            return new Letterhead(Office.none(), new byte[0], new Edge(job, issue),
                new Edge((number + "  " + title).strip(), "page " + PAGE + " of " + PAGES), List.of());
        }

        Map<String, Object> model(Office office, boolean paged) {
            return Map.of("job", Map.of("title", job, "note", note), "section", Map.of("number", number, "title", title), "issue", issue,
                "office", Map.of("name", office.name(), "address", office.address()), "paged", paged, "page", paged ? PAGE : "",
                "pages", paged ? PAGES : "");
        }
    }

    /** No office's: job and issue in the head, section and pages in the foot. */
    public static Letterhead plain(SectionDocument section) {
        return Paper.of(section, Papers.issue(section)).plain();
    }

    /**
     * Around a section in which changes are marked, without a cover; an office's templates print as its issue what it is.
     *
     * @param marks what it is: "Changes from Bid set to Addendum 1"
     * @throws UnusableInput if a template, picture or font can't be used
     */
    public static Letterhead marked(Office office, SectionChanges changes, String marks) throws UnusableInput {
        List<String> texts = Stream.concat(changes.before().stream(), changes.after().stream())
            .flatMap(section -> section.paragraphs().stream()).map(SectionDocument.Paragraph::plain).toList();
        return of(office, Paper.of(changes.section(), marks), true, texts, "the changes of section " + changes.section().number()
            + " print")
            .coverless();
    }

    /** No office's, around a section in which changes are marked. */
    static Letterhead marked(SectionChanges changes, String marks) {
        return Paper.of(changes.section(), marks).plain();
    }

    /**
     * Around changes told in words, without a cover.
     *
     * @throws UnusableInput if a template, picture or font can't be used
     */
    public static Letterhead of(Office office, Narrative narrative) throws UnusableInput {
        List<String> texts = Stream.concat(narrative.sections().stream().flatMap(part -> part.instructions().stream()),
            narrative.answers().stream().flatMap(answer -> Stream.of(answer.question(), answer.answer()))).toList();
        return of(office, new Paper(narrative.job(), "", "", narrative.title(), narrative.title()), true, texts, "the changes print")
            .coverless();
    }

    /**
     * What a paper other than a section is, as an office's templates may name it.
     *
     * @param job    title of the job
     * @param note   the job's note
     * @param number number of the section that it is about, and the section's title; "" for none
     * @param issue  what the paper is: "Submittal 04-73-00-01"
     * @param head   what stands in the head where the office has no template for it
     * @param foot   the same for the foot
     */
    record Subject(String job, String note, String number, String title, String issue, Edge head, Edge foot) {

        Letterhead plain() {
            return new Letterhead(Office.none(), new byte[0], head, foot, List.of());
        }

        /**
         * Without a cover; signs that the office's fonts lack are printed in the usual ones.
         *
         * @throws UnusableInput if a template, picture or font can't be used
         */
        Letterhead of(Office office) throws UnusableInput {
            if (office.name().isEmpty()) {
                return plain();
            }
            Letterhead made = Letterhead.of(office, new Paper(job, note, number, title, issue), true, List.of(), "");
            return new Letterhead(office, made.picture, office.templates().containsKey(Office.HEADER) ? made.head : head,
                office.templates().containsKey(Office.FOOTER) ? made.foot : foot, List.of());
        }
    }

    private Letterhead coverless() {
        return new Letterhead(office, picture, head, foot, List.of());
    }

    /**
     * An office's.
     *
     * @param paged whether it is for sheets of paper; templates are told, and numbers of pages are empty where there are none
     * @throws UnusableInput if a template, picture or font can't be used
     */
    public static Letterhead of(Office office, SectionDocument section, boolean paged) throws UnusableInput {
        return of(office, Paper.of(section, Papers.issue(section)), paged, section.paragraphs().stream()
            .map(SectionDocument.Paragraph::plain)
            .toList(), "section " + section.number() + " prints");
    }

    private static Letterhead of(Office office, Paper paper, boolean paged, List<String> texts, String printing) throws UnusableInput {
        Letterhead plain = paper.plain();
        if (office.name().isEmpty()) {
            return plain;
        }
        Map<String, Object> model = paper.model(office, paged);
        Letterhead made = new Letterhead(office, picture(office), edge(office, Office.HEADER, model, plain.head()),
            edge(office, Office.FOOTER, model, plain.foot()),
            office.templates().containsKey(Office.COVER) ? lines(office, Office.COVER, model) : List.of());
        Optional<Problem> lacking = new PdfFonts(office).lacking(texts, printing);
        if (lacking.isPresent()) {
            throw new UnusableInput(lacking.get());
        }
        return made;
    }

    private static Edge edge(Office office, String template, Map<String, Object> model, Edge usual) throws UnusableInput {
        if (!office.templates().containsKey(template)) {
            return usual;
        }
        List<Line> lines = lines(office, template, model);
        if (lines.size() > 2) {
            throw new UnusableInput(new Problem(office.place(template), "prints " + lines.size() + " paragraphs",
                "expected one for the left side and one for the right"));
        }
        return new Edge(lines.isEmpty() ? "" : lines.get(0).text(), lines.size() < 2 ? "" : lines.get(1).text());
    }

    private static List<Line> lines(Office office, String template, Map<String, Object> model) throws UnusableInput {
        List<Line> lines = new ArrayList<>();
        Node document = Reader.PARSER.parse(OfficeTemplate.fill(office, template, model));
        for (Node node : document.getDescendants()) {
            if (node instanceof HtmlBlock || node instanceof HtmlInlineBase || node instanceof Image) {
                throw new UnusableInput(new Problem(office.place(template), "prints HTML or a picture: "
                    + node.getChars().toString().strip().lines().findFirst().orElse(""), "expected headings, paragraphs and lists"));
            }
        }
        collect(document, lines);
        return lines;
    }

    private static void collect(Node parent, List<Line> lines) {
        for (Node node : parent.getChildren()) {
            if (node instanceof Heading heading) {
                lines.add(new Line(heading.getLevel() == 1 ? Kind.TITLE : Kind.HEADING, text(heading)));
            } else if (node instanceof ListBlock) {
                node.getChildren().forEach(item -> lines.add(new Line(Kind.ITEM, text(item))));
            } else if (node instanceof Paragraph) {
                lines.add(new Line(Kind.TEXT, text(node)));
            } else {
                collect(node, lines);
            }
        }
    }

    /** The text without mark-up, as that of clauses. */
    private static String text(Node block) {
        Node inner = block instanceof ListItem && block.hasChildren() ? block.getFirstChild() : block;
        String markdown = (inner instanceof Heading heading ? heading.getText() : inner.getChars()).toString();
        return markdown.isBlank() ? "" : ClauseText.plain(markdown);
    }

    private static byte[] picture(Office office) throws UnusableInput {
        if (office.letterhead().isEmpty()) {
            return new byte[0];
        }
        try {
            BufferedImage read = ImageIO.read(new ByteArrayInputStream(office.letterhead().get().bytes()));
            if (read == null) {
                throw new IOException("no picture in it");
            }
            BufferedImage flat = new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D graphics = flat.createGraphics();
            graphics.drawImage(read, 0, 0, Color.WHITE, null);
            graphics.dispose();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(flat, "png", out);
            return out.toByteArray();
        } catch (IOException | RuntimeException e) {
            throw new UnusableInput(new Problem(office.place(office.letterhead().get().file()), "is damaged: " + e.getMessage(),
                "expected a PNG picture"));
        }
    }

    /** Made on first use. */
    private static final class Reader {
        static final Parser PARSER = Parser.builder().build();
    }
}
