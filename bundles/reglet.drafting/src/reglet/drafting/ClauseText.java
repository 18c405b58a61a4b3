package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.Emphasis;
import com.vladsch.flexmark.ast.HardLineBreak;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.ListBlock;
import com.vladsch.flexmark.ast.SoftLineBreak;
import com.vladsch.flexmark.ast.StrongEmphasis;
import com.vladsch.flexmark.ast.TextBase;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.MutableDataSet;

import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;

/**
 * Reads the Markdown of clauses and of people's own texts: paragraphs with nested lists below them. Links to slots become
 * spans; of everything else only strong text is kept, what remains is read as plain text so that nothing is lost.
 */
final class ClauseText {
    static final String SLOT = "slot:";
    /** Levels below a paragraph that the section format has marks for: 1. a. 1) a) */
    static final int DEEPEST = 4;

    /** Markdown knows list marks of digits only; people write "a." as well. */
    private static final Pattern LETTER_MARK = Pattern.compile("(?m)^([ \\t]+)[a-z]([.)][ \\t])");
    private static final Pattern SPECIAL = Pattern.compile("[\\\\`*_\\[\\]<>&!]");

    private ClauseText() {
    }

    /** Text in which Markdown sees no mark-up. */
    static String escape(String text) {
        return SPECIAL.matcher(text.replaceAll("\\s+", " ")).replaceAll("\\\\$0");
    }

    /** The link that stands for a slot in Markdown: <code>[at least 2.5 lb/yd²](slot:lath.weight)</code>. */
    static String link(String slot, String text) {
        // A link needs a text even where it is made later, as for references.
        return "[" + (text.isEmpty() ? "…" : escape(text)) + "](" + SLOT + slot + ")";
    }

    /**
     * The paragraphs of a text, without ids.
     *
     * @param span what a slot prints, by its name
     * @throws IllegalArgumentException with what is wrong, when the text starts with a list, is empty or is nested too deep
     */
    static List<Draft> paragraphs(String markdown, Function<String, Span> span) {
        List<Draft> paragraphs = new ArrayList<>();
        Node document = Reader.PARSER.parse(LETTER_MARK.matcher(markdown).replaceAll("$11$2"));
        for (Node block : document.getChildren()) {
            if (!(block instanceof ListBlock)) {
                paragraphs.add(Draft.of("", spans(block, span)));
            } else if (paragraphs.isEmpty()) {
                throw new IllegalArgumentException("the text starts with a list; a list stands below a paragraph");
            } else {
                Draft last = paragraphs.remove(paragraphs.size() - 1);
                List<Draft> children = new ArrayList<>(last.children());
                children.addAll(items(block, span, 1));
                paragraphs.add(last.withChildren(children));
            }
        }
        if (paragraphs.isEmpty()) {
            throw new IllegalArgumentException("the text is empty");
        }
        return paragraphs;
    }

    /**
     * A paragraph or an item of a list, and where its own words stand in the text.
     *
     * @param draft    without ids; its slots print their names
     * @param start    -1 where the words don't stand together
     * @param indent   columns before its further lines
     * @param children one for each of the draft's
     */
    record Part(Draft draft, int start, int end, int indent, List<Part> children) {
    }

    /** The paragraphs of a text with the places of their words; none of a text that can't be used. */
    static List<Part> parts(String markdown) {
        List<Draft> drafts;
        try {
            drafts = LibraryText.texts(markdown);
        } catch (IllegalArgumentException unusable) {
            return List.of();
        }
        List<Node> tops = new ArrayList<>();
        List<List<Node>> items = new ArrayList<>();
        for (Node block : Reader.PARSER.parse(LETTER_MARK.matcher(markdown).replaceAll("$11$2")).getChildren()) {
            if (!(block instanceof ListBlock)) {
                tops.add(block);
                items.add(new ArrayList<>());
            } else if (!items.isEmpty()) {
                block.getChildren().forEach(items.get(items.size() - 1)::add);
            }
        }
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < Math.min(tops.size(), drafts.size()); i++) {
            parts.add(part(markdown, drafts.get(i), List.of(tops.get(i)), items.get(i)));
        }
        return tops.size() == drafts.size() ? parts : List.of();
    }

    private static Part part(String markdown, Draft draft, List<Node> words, List<Node> items) {
        List<Part> children = new ArrayList<>();
        for (int i = 0; i < Math.min(items.size(), draft.children().size()); i++) {
            List<Node> own = new ArrayList<>();
            List<Node> below = new ArrayList<>();
            boolean together = true;
            for (Node block : items.get(i).getChildren()) {
                if (block instanceof ListBlock) {
                    block.getChildren().forEach(below::add);
                } else {
                    // words behind a list of the item's don't stand together with those before it
                    own.add(block);
                    together &= below.isEmpty();
                }
            }
            children.add(part(markdown, draft.children().get(i), together ? own : List.of(), below));
        }
        if (words.isEmpty()) {
            return new Part(draft, -1, -1, 0, children);
        }
        int start = words.get(0).getStartOffset();
        int end = words.get(words.size() - 1).getEndOffset();
        int length = markdown.substring(start, end).stripTrailing().length();
        return new Part(draft, start, start + length, start - (markdown.lastIndexOf('\n', start - 1) + 1), children);
    }

    /** A paragraph's words without any mark-up. */
    static String plain(String markdown) {
        StringBuilder text = new StringBuilder();
        Reader.PARSER.parse(markdown).getChildren().forEach(block -> spans(block, Plain::new).forEach(span -> text.append(span.text())));
        return text.toString();
    }

    private static List<Draft> items(Node list, Function<String, Span> span, int depth) {
        if (depth > DEEPEST) {
            throw new IllegalArgumentException("lists are nested more than " + DEEPEST + " deep; a section has no marks for that");
        }
        List<Draft> items = new ArrayList<>();
        for (Node item : list.getChildren()) {
            List<Span> text = new ArrayList<>();
            List<Draft> children = new ArrayList<>();
            for (Node block : item.getChildren()) {
                if (block instanceof ListBlock) {
                    children.addAll(items(block, span, depth + 1));
                } else {
                    if (!text.isEmpty()) {
                        text.add(new Plain(" "));
                    }
                    text.addAll(spans(block, span));
                }
            }
            items.add(Draft.of("", joined(text)).withChildren(children));
        }
        return items;
    }

    private static List<Span> spans(Node block, Function<String, Span> span) {
        List<Span> spans = new ArrayList<>();
        if (block.hasChildren()) {
            collect(block, span, false, spans);
        } else {
            spans.add(new Plain(block.getChars().unescape().strip()));
        }
        return joined(spans);
    }

    private static void collect(Node parent, Function<String, Span> span, boolean strong, List<Span> spans) {
        for (Node node : parent.getChildren()) {
            if (node instanceof Link link && link.getUrl().startsWith(SLOT)) {
                spans.add(span.apply(link.getUrl().unescape().substring(SLOT.length())));
            } else if (node instanceof Image image && image.getUrl().startsWith(SLOT)) {
                // An exclamation mark before a slot looks like a picture.
                spans.add(new Plain("!"));
                spans.add(span.apply(image.getUrl().unescape().substring(SLOT.length())));
            } else if (node instanceof Link || node instanceof Emphasis || node instanceof TextBase) {
                collect(node, span, strong, spans);
            } else if (node instanceof StrongEmphasis) {
                collect(node, span, true, spans);
            } else {
                String text = text(node);
                spans.add(strong ? new Strong(text) : new Plain(text));
            }
        }
    }

    private static String text(Node node) {
        if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
            return " ";
        }
        if (node instanceof Code code) {
            return code.getText().toString();
        }
        if (node instanceof AutoLink link) {
            return link.getText().toString();
        }
        return node.getChars().unescape();
    }

    /** Neighbouring runs of one kind become one; white space is single and not at the ends. */
    private static List<Span> joined(List<Span> spans) {
        List<Span> joined = new ArrayList<>();
        for (Span span : spans) {
            Span last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (span instanceof Plain plain) {
                String text = (last instanceof Plain before ? before.text() : "") + plain.text();
                put(joined, last instanceof Plain, new Plain(single(text, joined.size() == (last instanceof Plain ? 1 : 0))));
            } else if (span instanceof Strong strong) {
                String text = (last instanceof Strong before ? before.text() : "") + strong.text();
                put(joined, last instanceof Strong, new Strong(single(text, false)));
            } else {
                joined.add(span);
            }
        }
        if (!joined.isEmpty() && joined.get(joined.size() - 1) instanceof Plain plain) {
            joined.set(joined.size() - 1, new Plain(plain.text().stripTrailing()));
        }
        joined.removeIf(span -> span instanceof Plain && span.text().isEmpty());
        return joined;
    }

    private static void put(List<Span> spans, boolean replace, Span span) {
        if (replace) {
            spans.set(spans.size() - 1, span);
        } else {
            spans.add(span);
        }
    }

    private static String single(String text, boolean first) {
        String single = text.replaceAll("\\s+", " ");
        return first ? single.stripLeading() : single;
    }

    /** Made on first use. Only paragraphs and lists are blocks here: a line that starts with # or &gt; is text. */
    private static final class Reader {
        static final Parser PARSER = Parser.builder(new MutableDataSet()
            .set(Parser.INDENTED_CODE_BLOCK_PARSER, false)
            .set(Parser.FENCED_CODE_BLOCK_PARSER, false)
            .set(Parser.BLOCK_QUOTE_PARSER, false)
            .set(Parser.HEADING_PARSER, false)
            .set(Parser.HTML_BLOCK_PARSER, false)
            .set(Parser.THEMATIC_BREAK_PARSER, false)).build();
    }
}
