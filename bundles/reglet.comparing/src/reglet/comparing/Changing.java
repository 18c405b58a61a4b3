package reglet.comparing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.jgit.diff.Edit;

import reglet.model.Issue;
import reglet.model.IssueChanges;
import reglet.model.SectionChanges;
import reglet.model.SectionChanges.Kind;
import reglet.model.SectionChanges.Line;
import reglet.model.SectionChanges.Run;
import reglet.model.SectionChanges.Side;
import reglet.model.SectionChanges.Sort;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Span;

/**
 * Tells two issues apart, paragraph by paragraph by their ids and then word by word. That a paragraph or a reference bears another
 * number because something before it came or went is no change.
 */
public final class Changing {
    /** What an id says of walls and alternatives; the number of a paragraph below it stays. */
    private static final String PLACES = "[@~][^/]*";

    private Changing() {
    }

    /** What changed from one issue to another. */
    public static IssueChanges between(Issue before, Issue after) {
        Set<String> numbers = new LinkedHashSet<>();
        after.sections().forEach(section -> numbers.add(section.number()));
        before.sections().forEach(section -> numbers.add(section.number()));
        return new IssueChanges(before, after, numbers.stream().map(number -> between(before.section(number), after.section(number)))
            .toList());
    }

    /** What leads from one text to another, word by word. */
    public static List<Run> words(List<Span> before, List<Span> after) {
        return Words.runs(before, after);
    }

    /** What changed from one draft of a section to another; one of the two has to be there. */
    public static SectionChanges between(Optional<SectionDocument> before, Optional<SectionDocument> after) {
        List<Side> old = sides(before);
        List<Side> now = sides(after);
        List<Line> lines = new ArrayList<>();
        int b = 0;
        for (Edit edit : Keys.edits(keys(old), keys(now))) {
            int behind = edit.getBeginA() - (edit.getBeginB() - b);
            for (; b < edit.getBeginB(); b++) {
                lines.add(both(old.get(behind++), now.get(b)));
            }
            between(old.subList(edit.getBeginA(), edit.getEndA()), now.subList(b, edit.getEndB()), lines);
            b = edit.getEndB();
        }
        int behind = old.size() - (now.size() - b);
        for (; b < now.size(); b++) {
            lines.add(both(old.get(behind++), now.get(b)));
        }
        return new SectionChanges(before, after, moved(lines));
    }

    /** Where ids differ: a paragraph that is now one of its clause for other walls or alternatives is still that paragraph, changed. */
    private static void between(List<Side> old, List<Side> now, List<Line> lines) {
        int a = 0;
        for (Side side : now) {
            int same = a;
            while (same < old.size() && !stem(old.get(same)).equals(stem(side))) {
                same++;
            }
            if (same == old.size()) {
                lines.add(new Line(Kind.ADDED, Optional.empty(), Optional.of(side), Words.whole(side.text(),
                    SectionChanges.Edit.INSERTED)));
                continue;
            }
            for (; a < same; a++) {
                lines.add(deleted(old.get(a)));
            }
            lines.add(both(old.get(a++), side));
        }
        old.subList(a, old.size()).forEach(side -> lines.add(deleted(side)));
    }

    private static Line deleted(Side side) {
        return new Line(Kind.DELETED, Optional.of(side), Optional.empty(), Words.whole(side.text(), SectionChanges.Edit.DELETED));
    }

    private static Line both(Side old, Side now) {
        List<Run> runs = Words.runs(old.text(), now.text());
        // The number that a caution names is marked in the paper, and is no change that anybody has to be told.
        boolean same = now.sort() == Sort.CAUTION ? unaddressed(old).equals(unaddressed(now))
            : runs.stream().allMatch(run -> run.edit() == SectionChanges.Edit.KEPT);
        return new Line(same ? Kind.SAME : Kind.CHANGED, Optional.of(old), Optional.of(now), runs);
    }

    /** What was deleted here and added there under the same id has moved. */
    private static List<Line> moved(List<Line> lines) {
        Map<String, Side> gone = new HashMap<>();
        Map<String, Side> come = new HashMap<>();
        for (Line line : lines) {
            if (line.kind() == Kind.DELETED) {
                gone.put(name(line.side()), line.side());
            } else if (line.kind() == Kind.ADDED) {
                come.put(name(line.side()), line.side());
            }
        }
        return lines.stream().map(line -> {
            Side before = gone.get(name(line.side()));
            Side after = come.get(name(line.side()));
            boolean both = before != null && after != null && (before == line.before().orElse(null) || after == line.after().orElse(null));
            return !both || line.side().sort() == Sort.CAUTION ? line
                : new Line(line.kind() == Kind.DELETED ? Kind.LEFT : Kind.MOVED, Optional.of(before), Optional.of(after), line.runs());
        }).toList();
    }

    private static String name(Side side) {
        return side.sort() + " " + side.id();
    }

    /** Lines with the same key are the same line; a paragraph at another depth has moved. */
    private static List<String> keys(List<Side> sides) {
        Map<String, Integer> seen = new HashMap<>();
        List<String> keys = new ArrayList<>();
        for (Side side : sides) {
            String key = name(side) + " " + side.level() + (side.sort() == Sort.CAUTION ? unaddressed(side) : "");
            keys.add(key + " " + seen.merge(key, 1, Integer::sum));
        }
        return keys;
    }

    /** A caution's words without the numbers of paragraphs, which move along. */
    private static String unaddressed(Side side) {
        return side.plain().replaceAll("(?<=Paragraph )[123]\\.\\d+(?:\\.\\w+)*", "");
    }

    private static String stem(Side side) {
        return side.sort() + " " + side.level() + " " + side.id().replaceFirst(PLACES, "");
    }

    private static List<Side> sides(Optional<SectionDocument> draft) {
        List<Side> sides = new ArrayList<>();
        draft.ifPresent(section -> {
            sides.add(side(Sort.TITLE, "title", section.title()));
            if (!section.note().isEmpty()) {
                sides.add(side(Sort.NOTE, "note", section.note()));
            }
            section.parts().forEach(part -> part(part, sides));
            section.cautions().forEach(caution -> sides.add(side(Sort.CAUTION, "caution", caution)));
        });
        return sides;
    }

    private static void part(SectionDocument.Part part, List<Side> sides) {
        sides.add(new Side(Sort.PART, "part-" + part.number(), 0, "PART " + part.number() + " -", "", true,
            List.of(new Plain(part.title()))));
        if (part.articles().isEmpty()) {
            sides.add(side(Sort.EMPTY, "part-" + part.number() + "-empty", "Not used."));
        }
        part.articles().forEach(article -> {
            sides.add(new Side(Sort.ARTICLE, article.id(), 0, article.number(), article.number(), true,
                List.of(new Plain(article.title()))));
            article.paragraphs().forEach(paragraph -> paragraph(paragraph, sides));
        });
    }

    private static void paragraph(Paragraph paragraph, List<Side> sides) {
        sides.add(new Side(Sort.PARAGRAPH, paragraph.id(), paragraph.level(), paragraph.number() + (paragraph.level() < 4 ? "." : ")"),
            paragraph.path(), !paragraph.children().isEmpty(), paragraph.text()));
        paragraph.children().forEach(child -> paragraph(child, sides));
    }

    private static Side side(Sort sort, String id, String text) {
        List<Span> spans = List.of(new Plain(text));
        return new Side(sort, id, 0, "", "", false, spans);
    }
}
