package reglet.comparing;

import java.util.List;
import java.util.Locale;

import reglet.model.Compare;
import reglet.model.Comparison.Result;
import reglet.model.PropertyType;
import reglet.model.Requirement;
import reglet.model.Value;
import reglet.model.WordSet;

/** Words and sets of words. Only words that a pack lists can be told apart; free words that differ need a person. */
final class Wording {
    private Wording() {
    }

    static Verdict judge(Requirement requirement, Value shown, List<String> notes) {
        if (requirement.asksNothing()) {
            notes.add("It is not required, so either answer will do.");
            return new Verdict(Result.MEETS, "");
        }
        Compare sense = requirement.property().compare();
        List<String> asked = words(requirement.value());
        List<String> given = words(shown);
        PropertyType type = requirement.property().type();
        boolean free = type.words().isEmpty() && type.kind() != PropertyType.Kind.FLAG;
        Result result;
        if (requirement.value() instanceof WordSet && sense == Compare.AT_MOST) {
            result = all("Not allowed: ", missing(given, asked), free, notes);
        } else if (requirement.value() instanceof WordSet && sense != Compare.ONE_OF) {
            result = all("Lacking: ", missing(asked, given), free, notes);
        } else {
            result = one(asked, given, free, notes);
        }
        return new Verdict(result, "");
    }

    private static Result all(String what, List<String> missing, boolean free, List<String> notes) {
        if (missing.isEmpty()) {
            return Result.MEETS;
        }
        notes.add(what + String.join(", ", missing) + ".");
        return differs(free, notes);
    }

    private static Result one(List<String> asked, List<String> given, boolean free, List<String> notes) {
        List<String> others = missing(given, asked);
        if (others.isEmpty() && !given.isEmpty()) {
            return Result.MEETS;
        }
        if (others.size() < given.size()) {
            notes.add("The sheet also states " + String.join(", ", others) + "; it has to say which is sent.");
            return Result.CANNOT_COMPARE;
        }
        return differs(free, notes);
    }

    private static Result differs(boolean free, List<String> notes) {
        if (free) {
            notes.add("The words differ; whether they mean the same is for a person to say.");
        }
        return free ? Result.CANNOT_COMPARE : Result.FALLS_SHORT;
    }

    /** Words of the first list, as written there, that the second doesn't have. */
    private static List<String> missing(List<String> first, List<String> second) {
        List<String> plain = second.stream().map(Wording::plain).toList();
        return first.stream().filter(word -> !plain.contains(plain(word))).toList();
    }

    private static List<String> words(Value value) {
        return value instanceof WordSet set ? set.words() : List.of(value.text());
    }

    private static String plain(String word) {
        return word.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
