package reglet.drafting;

import java.util.ArrayList;
import java.util.List;

import reglet.model.SectionChanges.Edit;
import reglet.model.SectionChanges.Line;
import reglet.model.SectionChanges.Run;
import reglet.model.SectionChanges.Side;
import reglet.model.SectionChanges.Sort;

/**
 * Changes in words, as an addendum tells a person with the earlier paper in hand what to do to it. What is taken out is told by its old
 * number, what is put in by its new one.
 */
final class ChangeSentences {
    /** Words before a place, by which it is found. */
    private static final int LEAD = 4;
    /** More changed than this share of the old words: the whole paragraph is told anew. */
    private static final double REWRITTEN = 0.6;
    private static final int SHORT = 80;

    private ChangeSentences() {
    }

    /** The instruction to delete a paragraph with everything below it. */
    static String deletedWithAll(Line line) {
        return "Delete " + name(line.side()) + " and all below it" + beginning(line.side().plain());
    }

    /** The instruction for a caution that came, went or changed. */
    static String caution(Line line) {
        return switch (line.kind()) {
            case ADDED -> "Add to the cautions: " + ended(line.side().plain());
            case DELETED -> "Delete from the cautions: " + ended(line.side().plain());
            default -> "Replace the caution " + quoted(line.before().orElseThrow().plain()) + " with: " + ended(line.side().plain());
        };
    }

    /** Instructions for one changed line. */
    static List<String> of(Line line) {
        List<String> sentences = new ArrayList<>();
        switch (line.kind()) {
            case ADDED -> sentences.add("Add " + name(line.side()) + ": " + ended(line.side().plain()));
            case DELETED -> sentences.add("Delete " + name(line.side()) + beginning(line.side().plain()));
            case MOVED -> moved(line.before().orElseThrow(), line.after().orElseThrow(), sentences);
            case CHANGED -> changed(line, sentences);
            default -> throw new IllegalArgumentException(line.kind().text());
        }
        return sentences;
    }

    private static void moved(Side before, Side after, List<String> sentences) {
        sentences.add("Move " + name(before) + " to " + after.path() + ".");
        if (!before.plain().equals(after.plain())) {
            sentences.add("There it reads: " + ended(after.plain()));
        }
    }

    private static void changed(Line line, List<String> sentences) {
        Side before = line.before().orElseThrow();
        int kept = length(line.runs(), Edit.KEPT);
        int deleted = length(line.runs(), Edit.DELETED);
        if (deleted > REWRITTEN * (kept + deleted)) {
            sentences.add("Replace " + name(before) + " with: " + ended(line.after().orElseThrow().plain()));
            return;
        }
        List<Run> runs = line.runs();
        StringBuilder old = new StringBuilder();
        for (int at = 0; at < runs.size();) {
            if (runs.get(at).edit() == Edit.KEPT) {
                old.append(runs.get(at++).span().text());
                continue;
            }
            StringBuilder out = new StringBuilder();
            StringBuilder in = new StringBuilder();
            for (; at < runs.size() && runs.get(at).edit() != Edit.KEPT; at++) {
                (runs.get(at).edit() == Edit.DELETED ? out : in).append(runs.get(at).span().text());
            }
            sentences.add(hunk(before, old.toString(), out.toString(), in.toString()));
            old.append(out);
        }
    }

    private static String hunk(Side before, String lead, String out, String in) {
        String place = "In " + before.path() + ", ";
        String after = lead.isBlank() ? " at its beginning" : " after " + quoted(ending(lead));
        if (out.isBlank()) {
            return place + "insert " + quoted(in) + after + ".";
        }
        boolean once = before.plain().indexOf(out) == before.plain().lastIndexOf(out);
        String what = "delete " + quoted(out) + (once ? "" : after);
        return place + what + (in.isBlank() ? "." : " and insert " + quoted(in) + ".");
    }

    private static int length(List<Run> runs, Edit edit) {
        return runs.stream().filter(run -> run.edit() == edit).mapToInt(run -> run.span().text().length()).sum();
    }

    private static String name(Side side) {
        return side.sort() == Sort.ARTICLE ? "Article " + side.path() : "Paragraph " + side.path();
    }

    private static String beginning(String text) {
        if (text.length() <= SHORT) {
            return ": " + ended(text);
        }
        int end = text.lastIndexOf(' ', SHORT);
        return ", which begins " + quoted(text.substring(0, end < 0 ? SHORT : end) + " …") + ".";
    }

    private static String ending(String text) {
        String[] words = text.strip().split("\\s+");
        return String.join(" ", List.of(words).subList(Math.max(0, words.length - LEAD), words.length));
    }

    /** A text in quotes that ends a sentence. */
    private static String ended(String text) {
        return quoted(text) + (text.strip().endsWith(".") ? "" : ".");
    }

    private static String quoted(String text) {
        return "“" + text.strip() + "”";
    }
}
