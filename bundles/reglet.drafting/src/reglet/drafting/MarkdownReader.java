package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.Cited;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Part;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;
import reglet.model.SectionPlan;
import reglet.model.UnusableInput;

/**
 * Reads back what {@link Markdown} writes: ids, addresses, spans and what slots print. The requirements behind a slot aren't in a text
 * for people, so that slots come back without them; an issue keeps them in a form of its own.
 */
public final class MarkdownReader {
    private static final Pattern TITLE = Pattern.compile("# Section (\\S+(?: \\S+)*?): (.*)");
    private static final Pattern PART = Pattern.compile("## PART (\\d) - (.*)");
    private static final Pattern ARTICLE = Pattern.compile("### (\\d+\\.\\d+) (.*)");
    private static final Pattern PARAGRAPH = Pattern.compile("( *)- \\*\\*([A-Za-z0-9]+)[.)]\\*\\* (.*) <!-- (\\S+)( \\(own text\\))? -->");
    private static final String CELL = "((?:[^|\\\\]|\\\\.)*)";
    private static final Pattern ROW = Pattern.compile("\\| \\*\\*((?:[A-Za-z0-9]+[.)] ?)+)\\*\\* \\| " + CELL + " \\| " + CELL
        + " <!-- (\\S+)( \\(own text\\))? --> \\|.*\\|");
    private static final Pattern CAUTION = Pattern.compile("- (.*)");
    private static final Pattern PIECE = Pattern.compile("\\[((?:\\\\.|[^\\]\\\\])*)]\\((slot|std|see):([^)]*)\\)"
        + "|\\*\\*((?:\\\\.|[^*\\\\])*)\\*\\*");
    private static final Pattern ESCAPED = Pattern.compile("\\\\(.)");
    private static final Pattern NUMBER = Pattern.compile("\\d\\d_\\d\\d_\\d\\d(?:\\.\\d\\d)?");
    private static final String DRAFT = ", draft";
    private static final String ISSUE = ", issue ";

    private final String file;
    private final SectionPlan plan;
    private final List<Part> parts = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();
    private final List<String> front = new ArrayList<>();
    private int line;

    private MarkdownReader(String file, SectionPlan plan) {
        this.file = file;
        this.plan = plan;
    }

    /**
     * A section from its Markdown.
     *
     * @param file name for messages
     * @param plan of the section; gives the ids of the articles, which the text names by their titles
     * @throws UnusableInput at the first line that is no line of a drafted section
     */
    public static SectionDocument read(String file, SectionPlan plan, String text) throws UnusableInput {
        return new MarkdownReader(file, plan).read(text.replace("\r\n", "\n").split("\n", -1));
    }

    private SectionDocument read(String[] lines) throws UnusableInput {
        boolean ended = false;
        for (String one : lines) {
            line++;
            if (one.isBlank() || one.equals(Papers.NOT_USED) || one.equals("## Cautions")) {
                continue;
            }
            if (one.startsWith("END OF SECTION ")) {
                ended = true;
            } else if (ended) {
                cautions.add(plain(matched(CAUTION, one, "a caution, such as \"- Words.\"").group(1)));
            } else if (one.startsWith("## ")) {
                Matcher part = matched(PART, one, "a part, such as \"## PART 1 - GENERAL\"");
                parts.add(new Part(Integer.parseInt(part.group(1)), part.group(2), List.of()));
            } else if (parts.isEmpty()) {
                front.add(one);
            } else if (one.startsWith("###")) {
                article(matched(ARTICLE, one, "an article, such as \"### 1.1 SUMMARY\""));
            } else if (one.equals(Markdown.TABLE_HEAD)) {
                table();
            } else if (one.startsWith("| **")) {
                row(matched(ROW, one, "a row, such as \"| **A.** | Number | Title <!-- id --> | |\""));
            } else if (!one.equals(Markdown.TABLE_RULE)) {
                paragraph(matched(PARAGRAPH, one, "a paragraph, such as \"- **A.** Words. <!-- id -->\""));
            }
        }
        if (!ended || front.size() < 2) {
            throw wrong("the text is no whole section", "expected its title, the job's, three parts and \"END OF SECTION\"");
        }
        line = 1;
        Matcher title = matched(TITLE, front.get(0), "a title, such as \"# Section 04 73 00: Manufactured Stone Masonry\"");
        int issue = front.get(1).lastIndexOf(ISSUE);
        boolean draft = front.get(1).endsWith(DRAFT);
        if (!draft && issue < 0) {
            throw wrong("the job's line names neither draft nor issue", "expected \"JOB, draft\" or \"JOB, issue NAME\"");
        }
        String job = draft ? front.get(1).substring(0, front.get(1).length() - DRAFT.length()) : front.get(1).substring(0, issue);
        return new SectionDocument(title.group(1), plain(title.group(2)), plain(job), front.size() > 2 ? plain(front.get(2)) : "",
            draft ? "" : plain(front.get(1).substring(issue + ISSUE.length())), cautions, parts);
    }

    private void article(Matcher found) throws UnusableInput {
        Part part = parts.get(parts.size() - 1);
        String title = plain(found.group(2));
        String id = plan.articles().stream().filter(article -> article.part() == part.number() && article.title().equals(title))
            .map(SectionPlan.Article::id).findFirst()
            .orElseThrow(() -> wrong("Part " + part.number() + " of Section " + plan.number() + " has no article \"" + title + "\"",
                "expected the title of an article that the pack plans"));
        List<Article> articles = new ArrayList<>(part.articles());
        articles.add(new Article(id, found.group(1), title, List.of()));
        parts.set(parts.size() - 1, new Part(part.number(), part.title(), articles));
    }

    private void paragraph(Matcher found) throws UnusableInput {
        Article article = article();
        Paragraph paragraph = new Paragraph(found.group(4), found.group(2), "", found.group(1).length() / 2 + 1, found.group(5) != null,
            spans(found.group(3)), List.of());
        put(new Article(article.id(), article.number(), article.title(), with(article.paragraphs(), paragraph, article.number(), 1),
            article.table()));
    }

    private void table() throws UnusableInput {
        Article article = article();
        put(new Article(article.id(), article.number(), article.title(), article.paragraphs(), true));
    }

    /** Where a row is cited follows from the other paragraphs, and isn't read. */
    private void row(Matcher found) throws UnusableInput {
        Article article = article();
        String[] marks = found.group(1).split(" ");
        String mark = marks[marks.length - 1];
        Paragraph paragraph = new Paragraph(found.group(4), mark.substring(0, mark.length() - 1), "", marks.length, found.group(5) != null,
            ReferenceTable.joined(spans(found.group(2)), spans(found.group(3))), List.of());
        put(new Article(article.id(), article.number(), article.title(), with(article.paragraphs(), paragraph, article.number(), 1), true));
    }

    /** The article that is being read. */
    private Article article() throws UnusableInput {
        List<Article> articles = parts.get(parts.size() - 1).articles();
        if (articles.isEmpty()) {
            throw wrong("a paragraph stands in no article", "expected a heading such as \"### 1.1 SUMMARY\" before it");
        }
        return articles.get(articles.size() - 1);
    }

    private void put(Article article) {
        Part part = parts.get(parts.size() - 1);
        List<Article> articles = new ArrayList<>(part.articles());
        articles.set(articles.size() - 1, article);
        parts.set(parts.size() - 1, new Part(part.number(), part.title(), articles));
    }

    /** Paragraphs with another at the end, as deep as it says. */
    private List<Paragraph> with(List<Paragraph> paragraphs, Paragraph added, String above, int level) throws UnusableInput {
        List<Paragraph> all = new ArrayList<>(paragraphs);
        if (level == added.level()) {
            all.add(new Paragraph(added.id(), added.number(), above + "." + added.number(), level, added.own(), added.text(), List.of()));
            return all;
        }
        if (all.isEmpty()) {
            throw wrong("a paragraph stands deeper than one below the paragraph before it", "expected two spaces for each level");
        }
        Paragraph last = all.remove(all.size() - 1);
        all.add(new Paragraph(last.id(), last.number(), last.path(), last.level(), last.own(), last.text(),
            with(last.children(), added, last.path(), level + 1)));
        return all;
    }

    // ---- within a line

    private static List<Span> spans(String text) {
        List<Span> spans = new ArrayList<>();
        int from = 0;
        int at = 0;
        Matcher piece = PIECE.matcher(text);
        while (at < text.length()) {
            if (text.charAt(at) == '\\') {
                at += 2;
            } else if (piece.region(at, text.length()).lookingAt()) {
                add(spans, text.substring(from, at));
                spans.add(span(piece));
                at = piece.end();
                from = at;
            } else {
                at++;
            }
        }
        add(spans, text.substring(from));
        return spans;
    }

    private static void add(List<Span> spans, String text) {
        if (!text.isEmpty()) {
            spans.add(new Plain(plain(text)));
        }
    }

    private static Span span(Matcher piece) {
        if (piece.group(2) == null) {
            return new Strong(plain(piece.group(4)));
        }
        String text = plain(piece.group(1));
        String name = piece.group(3);
        return switch (piece.group(2)) {
            case "slot" -> new Slot(name, text, List.of());
            // The link has the standard's designation as a name; its text has the designation itself.
            case "std" -> new Cited(text, text);
            default -> new CrossReference(NUMBER.matcher(name).matches() ? name.replace('_', ' ') : name, text);
        };
    }

    private static String plain(String text) {
        return ESCAPED.matcher(text).replaceAll("$1");
    }

    private Matcher matched(Pattern pattern, String text, String expected) throws UnusableInput {
        Matcher matcher = pattern.matcher(text);
        if (!matcher.matches()) {
            throw wrong("\"" + text.strip() + "\" is no such line", "expected " + expected);
        }
        return matcher;
    }

    private UnusableInput wrong(String what, String expected) {
        return new UnusableInput(new Problem(new Place(file, line, 1), what, expected));
    }
}
