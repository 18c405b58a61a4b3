package reglet.model;

import java.util.List;
import java.util.Optional;

import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Span;

/**
 * What differs between two drafts of a section, line by line in the order of the later one; what was deleted stands where it stood.
 * Taking what is inserted gives the later draft, taking what is deleted the earlier.
 *
 * @param before the earlier draft; empty when the section is new
 * @param after  the later draft; empty when the section is no longer written
 */
public record SectionChanges(Optional<SectionDocument> before, Optional<SectionDocument> after, List<Line> lines) {

    public SectionChanges {
        lines = List.copyOf(lines);
    }

    /** What became of a line. A paragraph that moved has two lines: where it stood and where it stands. */
    public enum Kind {
        SAME("same"), CHANGED("changed"), ADDED("added"), DELETED("deleted"), LEFT("moved"), MOVED("moved");

        private final String text;

        Kind(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }

        /** Whether the line stands in the earlier draft. */
        public boolean stood() {
            return this != ADDED && this != MOVED;
        }

        /** Whether the line stands in the later draft. */
        public boolean stands() {
            return this != DELETED && this != LEFT;
        }
    }

    /** What a line is on the paper. */
    public enum Sort { TITLE, NOTE, PART, EMPTY, ARTICLE, PARAGRAPH, CAUTION }

    /**
     * A line of a draft.
     *
     * @param id    id of the article or paragraph; a word of our own for the others
     * @param level of a paragraph, 1 for A.; 0 for others
     * @param mark  own mark with its punctuation: "A.", "2.3"; ""
     * @param path  full address: "2.3.A"; ""
     * @param holds whether paragraphs stand below it
     */
    public record Side(Sort sort, String id, int level, String mark, String path, boolean holds, List<Span> text) {
        public Side {
            text = List.copyOf(text);
        }

        /** The text without marks. */
        public String plain() {
            StringBuilder line = new StringBuilder();
            text.forEach(span -> line.append(span.text()));
            return line.toString();
        }
    }

    /** Whether a run of text was kept, taken out or put in. */
    public enum Edit { KEPT, DELETED, INSERTED }

    /** A run of text of one kind; kept references bear the later draft's number. */
    public record Run(Edit edit, Span span) {
    }

    /**
     * @param before the line in the earlier draft; for one that moved on both of its lines
     * @param after  the line in the later draft; for one that moved on both of its lines
     * @param runs   its text; of a line that left or moved as if nothing else had changed
     */
    public record Line(Kind kind, Optional<Side> before, Optional<Side> after, List<Run> runs) {
        public Line {
            runs = List.copyOf(runs);
        }

        /** The side that names the line: as it stands, or as it stood. */
        public Side side() {
            return kind.stands() ? after.orElseThrow() : before.orElseThrow();
        }
    }

    /** The draft that stands, or the one that stood. */
    public SectionDocument section() {
        return after.or(() -> before).orElseThrow();
    }

    /**
     * Changes of articles and paragraphs, each once, in the order of the paper. What moves along with the article or paragraph that it
     * stands below, and reads as before, is no change of its own.
     */
    public List<Line> provisions() {
        return lines.stream().filter(line -> line.kind() != Kind.SAME && line.kind() != Kind.LEFT)
            .filter(line -> line.side().sort() == Sort.ARTICLE || line.side().sort() == Sort.PARAGRAPH).filter(line -> !movesAlong(line))
            .toList();
    }

    private boolean movesAlong(Line line) {
        return line.kind() == Kind.MOVED && line.before().orElseThrow().plain().equals(line.after().orElseThrow().plain())
            && lines.stream().anyMatch(other -> other.kind() == Kind.MOVED
                && above(line.before().orElseThrow()).equals(other.before().orElseThrow().path())
                && above(line.after().orElseThrow()).equals(other.after().orElseThrow().path()));
    }

    /** The address that a line stands below: "2.3" of "2.3.A". */
    private static String above(Side side) {
        return side.sort() == Sort.ARTICLE ? "none" : side.path().substring(0, Math.max(0, side.path().lastIndexOf('.')));
    }

    /** Changes of the cautions, in the order of the paper. */
    public List<Line> cautions() {
        return lines.stream().filter(line -> line.kind() != Kind.SAME && line.side().sort() == Sort.CAUTION).toList();
    }

    /** The paragraph of a draft with an id. */
    public static Optional<Paragraph> paragraph(Optional<SectionDocument> draft, String id) {
        return draft.stream().flatMap(section -> section.paragraphs().stream()).filter(paragraph -> paragraph.id().equals(id)).findFirst();
    }
}
