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

    /** No office's: job and issue in the head, section and pages in the foot. */
    public static Letterhead plain(SectionDocument section) {
        return new Letterhead(Office.none(), new byte[0], new Edge(section.job(), Papers.issue(section)),
            new Edge(section.number() + "  " + section.title(), "page " + PAGE + " of " + PAGES), List.of());
    }

    /**
     * An office's.
     *
     * @param paged whether it is for sheets of paper; templates are told, and numbers of pages are empty where there are none
     * @throws UnusableInput if a template, picture or font can't be used
     */
    public static Letterhead of(Office office, SectionDocument section, boolean paged) throws UnusableInput {
        if (office.name().isEmpty()) {
            return plain(section);
        }
        Letterhead plain = plain(section);
        Map<String, Object> model = Map.of("job", Map.of("title", section.job(), "note", section.note()),
            "section", Map.of("number", section.number(), "title", section.title()), "issue", Papers.issue(section),
            "office", Map.of("name", office.name(), "address", office.address()), "paged", paged, "page", paged ? PAGE : "",
            "pages", paged ? PAGES : "");
        Letterhead made = new Letterhead(office, picture(office), edge(office, Office.HEADER, model, plain.head()),
            edge(office, Office.FOOTER, model, plain.foot()),
            office.templates().containsKey(Office.COVER) ? lines(office, Office.COVER, model) : List.of());
        Optional<Problem> lacking = new PdfFonts(office).lacking(section);
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
