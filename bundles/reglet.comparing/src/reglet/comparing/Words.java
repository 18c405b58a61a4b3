package reglet.comparing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.jgit.diff.Edit;

import reglet.model.SectionChanges;
import reglet.model.SectionChanges.Run;
import reglet.model.SectionDocument.Cited;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;

/** Tells two texts apart word by word. References count as the same when they lead to the same place, whatever its number is now. */
final class Words {
    /** A number with its fraction or unit stays one word, a blank is one of its own. */
    private static final Pattern WORD = Pattern.compile("\\s+|[\\p{L}\\p{N}]+(?:[./'’-][\\p{L}\\p{N}]+)*|.", Pattern.DOTALL);
    private static final int LONGEST_VALUE = 60;

    /** A word of a span; {@code key} is equal where words count as the same. */
    private record Piece(String text, String key, Span span) {
    }

    private Words() {
    }

    /** The runs that lead from one text to the other; text of the same kind from the same span is one run. */
    static List<Run> runs(List<Span> before, List<Span> after) {
        List<Piece> old = pieces(before);
        List<Piece> now = pieces(after);
        List<Hunk> hunks = new ArrayList<>();
        int a = 0;
        int b = 0;
        for (Edit edit : Keys.edits(keys(old), keys(now))) {
            hunks.add(new Hunk(now.subList(b, edit.getBeginB()), old.subList(edit.getBeginA(), edit.getEndA()),
                now.subList(edit.getBeginB(), edit.getEndB()), old.subList(a, edit.getBeginA())));
            a = edit.getEndA();
            b = edit.getEndB();
        }
        List<Run> runs = new ArrayList<>();
        for (Hunk hunk : joined(hunks)) {
            add(runs, SectionChanges.Edit.KEPT, hunk.kept());
            add(runs, SectionChanges.Edit.DELETED, hunk.deleted());
            add(runs, SectionChanges.Edit.INSERTED, hunk.inserted());
        }
        add(runs, SectionChanges.Edit.KEPT, now.subList(b, now.size()));
        return runs;
    }

    /** A text that is kept, taken out or put in as a whole. */
    static List<Run> whole(List<Span> text, SectionChanges.Edit edit) {
        return text.stream().map(span -> new Run(edit, span)).toList();
    }

    /** What is kept, in the later and in the earlier words, and the change behind it. */
    private record Hunk(List<Piece> kept, List<Piece> deleted, List<Piece> inserted, List<Piece> keptBefore) {
    }

    /** Changes that only blanks and marks keep apart are one change, as a person reads it. */
    private static List<Hunk> joined(List<Hunk> hunks) {
        List<Hunk> joined = new ArrayList<>();
        for (Hunk hunk : hunks) {
            if (!joined.isEmpty()
                && hunk.kept().stream().noneMatch(piece -> piece.text().codePoints().anyMatch(Character::isLetterOrDigit))) {
                Hunk last = joined.remove(joined.size() - 1);
                joined.add(new Hunk(last.kept(), and(last.deleted(), hunk.keptBefore(), hunk.deleted()),
                    and(last.inserted(), hunk.kept(), hunk.inserted()), last.keptBefore()));
            } else {
                joined.add(hunk);
            }
        }
        return joined;
    }

    private static List<Piece> and(List<Piece> first, List<Piece> second, List<Piece> third) {
        List<Piece> all = new ArrayList<>(first);
        all.addAll(second);
        all.addAll(third);
        return all;
    }

    private static void add(List<Run> runs, SectionChanges.Edit edit, List<Piece> pieces) {
        int at = 0;
        while (at < pieces.size()) {
            Span span = pieces.get(at).span();
            StringBuilder text = new StringBuilder();
            while (at < pieces.size() && pieces.get(at).span() == span) {
                text.append(pieces.get(at++).text());
            }
            runs.add(new Run(edit, part(span, text.toString())));
        }
    }

    /** A span, or the words that remain of it: part of a slot is no slot. */
    private static Span part(Span span, String text) {
        return text.equals(span.text()) ? span : span instanceof Strong ? new Strong(text) : new Plain(text);
    }

    private static List<Piece> pieces(List<Span> text) {
        List<Piece> pieces = new ArrayList<>();
        for (Span span : text) {
            if (span instanceof CrossReference reference) {
                pieces.add(new Piece(span.text(), "see " + reference.target(), span));
            } else if (span instanceof Cited cited) {
                pieces.add(new Piece(span.text(), "cited " + cited.standard() + " " + cited.text(), span));
            } else if (span instanceof Slot slot && isValue(slot)) {
                // A value with its units is one word: half of it tells nobody anything.
                pieces.add(new Piece(span.text(), "value " + span.text(), span));
            } else {
                Matcher words = WORD.matcher(span.text());
                Function<String, String> key = span instanceof Strong ? word -> "strong " + word : word -> "word " + word;
                while (words.find()) {
                    pieces.add(new Piece(words.group(), key.apply(words.group()), span));
                }
            }
        }
        return pieces;
    }

    /** Whether a slot prints a value: one that is required, or a fact that begins with its number; not a long list of them. */
    private static boolean isValue(Slot slot) {
        return slot.text().length() <= LONGEST_VALUE
            && (!slot.requirements().isEmpty() || !slot.text().isEmpty() && Character.isDigit(slot.text().charAt(0)));
    }

    private static List<String> keys(List<Piece> pieces) {
        return pieces.stream().map(Piece::key).toList();
    }
}
