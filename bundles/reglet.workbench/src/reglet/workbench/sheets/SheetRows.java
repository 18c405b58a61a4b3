package reglet.workbench.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.desk.Confirming;
import reglet.desk.Confirming.Answer;
import reglet.desk.Confirming.Proposal;
import reglet.model.Box;
import reglet.model.Pack;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.SheetReading.Unread;
import reglet.model.SheetValue;
import reglet.model.Unit;
import reglet.model.Value;
import reglet.workbench.Marks;

/** What a sheet was read to say, as rows in words. */
final class SheetRows {
    /** From here on a value that isn't sure is likely. */
    private static final double LIKELY = 0.7;

    private SheetRows() {
    }

    /**
     * A row.
     *
     * @param key      the property's path; "" for something that was seen and not read as a value
     * @param state    what the person said of it, led by a shape
     * @param number   the amount or the words
     * @param unit     its unit; "" where it has none or stands with the number
     * @param sure     how sure it is, in words
     * @param look     what to look at; ""
     * @param says     what the sheet says, in its own words
     */
    record Row(String key, String state, String property, String number, String unit, String method, String model, int page, String sure,
            String look, String says, Optional<Box> box) {

        boolean isValue() {
            return !key.isEmpty();
        }
    }

    static List<Row> rows(Pack pack, Confirming confirming) {
        List<Row> rows = new ArrayList<>();
        confirming.proposals().forEach(proposal -> rows.add(row(pack, proposal)));
        confirming.reading().unread().forEach(unread -> rows.add(row(unread)));
        return List.copyOf(rows);
    }

    private static Row row(Pack pack, Proposal proposal) {
        SheetValue value = proposal.value();
        String sense = value.compare().map(compare -> compare.text() + " ").orElse("");
        String label = proposal.found().label();
        return new Row(proposal.property(), state(proposal), Marks.sentence(pack.property(proposal.property())
            .map(property -> property.label()).orElse(proposal.property())), sense + number(value.value()), unit(value.value()),
            value.method() + (value.edition().isEmpty() ? "" : ", " + value.edition()), proposal.found().model(), value.page(),
            label.isEmpty() ? "seen by you" : sure(proposal.found().confidence()), look(proposal),
            label.isEmpty() ? "You saw \"" + value.text() + "\" there." : "The sheet says \"" + label + ": "
                + proposal.found().value().text() + "\".", value.box());
    }

    private static Row row(Unread unread) {
        boolean whole = unread.text().isEmpty();
        return new Row("", "△ look", whole ? "The whole page" : "Not read", whole ? "" : unread.text(), "", "", "", unread.page(), "",
            whole ? "A picture without text: it needs a person" : Marks.sentence(unread.why()), whole
                ? "Page " + unread.page() + " holds a picture without text, so nothing could be read from it. Mark a value on it to add it."
                : "The sheet says \"" + unread.text() + "\": " + unread.why() + ".", unread.box());
    }

    private static String state(Proposal proposal) {
        if (proposal.goes() && proposal.isHeld()) {
            return "✓ in the job";
        }
        return switch (proposal.answer()) {
            case OPEN -> "○ open";
            case TAKEN -> "✓ taken";
            case CORRECTED -> proposal.found().label().isEmpty() ? "✓ added" : "✓ corrected";
            case LEFT_OUT -> "– left out";
            case HELD -> "= job's own stays";
        };
    }

    private static String look(Proposal proposal) {
        List<String> words = new ArrayList<>();
        proposal.before().filter(held -> !proposal.isHeld()).ifPresent(held -> words.add("the job has " + held.value().text()
            + (held.confirmed() ? ", confirmed" : ", not confirmed")));
        if (!proposal.found().doubt().isEmpty()) {
            words.add(proposal.found().doubt());
        }
        if (proposal.answer() == Answer.CORRECTED && !proposal.found().label().isEmpty()) {
            words.add("read as " + proposal.found().value().value().text());
        }
        return Marks.sentence(String.join("; ", words));
    }

    /** "sure", "likely", "unsure". */
    static String sure(double confidence) {
        return confidence >= Confirming.SURE ? "sure" : confidence >= LIKELY ? "likely" : "unsure";
    }

    /** The amount without its unit; words as they are. */
    static String number(Value value) {
        if (value instanceof Range range && range.low().unit() == range.high().unit()) {
            return range.low().amount() + " to " + range.high().amount();
        }
        return value instanceof Quantity quantity ? quantity.amount() : value.text();
    }

    static String unit(Value value) {
        Unit unit = value instanceof Range range && range.low().unit() == range.high().unit() ? range.high().unit()
            : value instanceof Quantity quantity ? quantity.unit() : Unit.ONE;
        return unit == Unit.PERCENT ? "%" : unit == Unit.ONE ? "" : unit.symbol();
    }
}
