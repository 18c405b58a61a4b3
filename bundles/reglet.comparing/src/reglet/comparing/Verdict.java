package reglet.comparing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import reglet.model.Compare;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.ShortBy;
import reglet.model.Grade;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Requirement;
import reglet.model.SheetValue;
import reglet.model.Value;
import reglet.model.WordSet;

/** What a submitted value says of a requirement. */
record Verdict(Result result, Optional<ShortBy> shortBy, String note) {

    /**
     * @param edition the edition of the method that the job's code lists; ""
     */
    static Verdict of(Requirement requirement, SheetValue submitted, String edition) {
        List<String> notes = new ArrayList<>();
        Result bare = values(requirement.property().compare(), requirement.value(), submitted, notes);
        Result result = method(requirement, submitted, edition, bare, notes);
        if (!submitted.confirmed()) {
            notes.add("Read from the sheet and not confirmed by a person.");
        }
        Optional<ShortBy> by = result == Result.FALLS_SHORT ? shortBy(requirement.value(), submitted.value()) : Optional.empty();
        return new Verdict(result, by, String.join(" ", notes));
    }

    private static Result values(Compare sense, Value required, SheetValue submitted, List<String> notes) {
        Value value = submitted.value();
        if (required instanceof Quantity asked && value instanceof Quantity shown) {
            converted(asked, shown, notes);
            return quantity(sense, asked, shown, submitted.compare(), notes);
        }
        if (required instanceof Range asked && value instanceof Range shown) {
            converted(asked.low(), shown.low(), notes);
            boolean inside = shown.low().compareWith(asked.low()) >= 0 && shown.high().compareWith(asked.high()) <= 0;
            return inside ? Result.MEETS : Result.FALLS_SHORT;
        }
        if (required instanceof Grade asked && value instanceof Grade shown) {
            int order = Integer.compare(shown.rank(), asked.rank());
            return meets(sense == Compare.AT_LEAST ? order >= 0 : sense == Compare.AT_MOST ? order <= 0 : order == 0);
        }
        if (required instanceof WordSet asked && value instanceof WordSet shown) {
            List<String> lacking = asked.words().stream().filter(word -> !shown.words().contains(word)).toList();
            if (!lacking.isEmpty()) {
                notes.add("Lacking: " + String.join(", ", lacking) + ".");
            }
            return meets(lacking.isEmpty());
        }
        return meets(required.text().toLowerCase(Locale.ROOT).equals(value.text().toLowerCase(Locale.ROOT)));
    }

    private static Result meets(boolean yes) {
        return yes ? Result.MEETS : Result.FALLS_SHORT;
    }

    /** A sheet that bounds its value on the wrong side can show that a requirement is not met, but never that it is. */
    private static Result quantity(Compare sense, Quantity asked, Quantity shown, Optional<Compare> shownAs, List<String> notes) {
        int order = shown.compareWith(asked);
        boolean upperBound = shownAs.filter(as -> as == Compare.AT_MOST).isPresent();
        boolean lowerBound = shownAs.filter(as -> as == Compare.AT_LEAST).isPresent();
        Result result = switch (sense) {
            case AT_LEAST -> order < 0 ? (lowerBound ? Result.CANNOT_COMPARE : Result.FALLS_SHORT)
                : upperBound ? Result.CANNOT_COMPARE : Result.MEETS;
            case AT_MOST -> order > 0 ? (upperBound ? Result.CANNOT_COMPARE : Result.FALLS_SHORT)
                : lowerBound ? Result.CANNOT_COMPARE : Result.MEETS;
            default -> {
                boolean out = order > 0 ? !upperBound : order < 0 && !lowerBound;
                yield out ? Result.FALLS_SHORT : upperBound || lowerBound ? Result.CANNOT_COMPARE : Result.MEETS;
            }
        };
        if (result == Result.CANNOT_COMPARE) {
            notes.add("The sheet says \"" + shownAs.orElseThrow().text() + " " + shown.text() + "\", which does not settle \"" + sense.text()
                + " " + asked.text() + "\".");
        } else if (order == 0 && shown.si() != asked.si()) {
            notes.add("Equal within the tolerance of " + Quantity.TOLERANCE * 100 + "%.");
        }
        return result;
    }

    private static void converted(Quantity asked, Quantity shown, List<String> notes) {
        if (asked.unit() != shown.unit()) {
            notes.add(shown.text() + " is " + shown.as(asked.unit()).text() + ".");
        }
    }

    /** "Meets" is not said across a difference of method or edition, nor where the sheet names no method. */
    private static Result method(Requirement requirement, SheetValue submitted, String edition, Result bare, List<String> notes) {
        String asked = requirement.property().method().standard();
        if (asked.isEmpty() || bare == Result.CANNOT_COMPARE) {
            return bare;
        }
        if (submitted.method().isEmpty()) {
            notes.add("The sheet names no method; " + asked + " is asked for.");
            return bare == Result.MEETS ? Result.CANNOT_COMPARE : bare;
        }
        if (!submitted.method().equals(asked)) {
            notes.add("Shown by " + submitted.method() + "; " + asked + " is asked for.");
            return Result.DIFFERENT_METHOD;
        }
        if (!submitted.edition().isEmpty() && !edition.isEmpty() && !submitted.edition().equals(edition)) {
            notes.add("Shown by the " + submitted.edition() + " edition of " + asked + "; the code lists " + edition + ".");
            return bare == Result.MEETS ? Result.DIFFERENT_METHOD : bare;
        }
        return bare;
    }

    private static Optional<ShortBy> shortBy(Value required, Value submitted) {
        if (required instanceof Quantity asked && submitted instanceof Quantity shown && asked.si() != 0) {
            double by = Math.abs(asked.si() - shown.si());
            return Optional.of(new ShortBy(by, asked.dimension(), by / Math.abs(asked.si())));
        }
        return Optional.empty();
    }
}
