package reglet.workbench.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.desk.Confirming;
import reglet.desk.Confirming.Answer;
import reglet.desk.Confirming.Proposal;
import reglet.model.Box;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.SheetReading.Found;
import reglet.model.SheetReading.Unread;
import reglet.model.SheetValue;
import reglet.model.ShownUnits;
import reglet.model.ShownUnits.Sense;
import reglet.model.Unit;
import reglet.model.Value;
import reglet.workbench.Marks;
import reglet.workbench.settings.Units;

/** What a sheet was read to say, as rows in words. */
final class SheetRows {
    static final String OPEN = "○";
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
     * @param beside   the same in the other unit, where both are shown; ""
     * @param sure     how sure it is, in words
     * @param look     what to look at; ""
     * @param says     what the sheet says, in its own words
     * @param instead  what is taken in place of the value shown; empty for a row that is the value shown
     */
    record Row(String key, String state, String property, String number, String unit, String beside, String method, String model, int page,
            String sure, String look, String says, Optional<Box> box, Optional<Found> instead) {

        boolean isValue() {
            return !key.isEmpty();
        }
    }

    static List<Row> rows(Pack pack, Confirming confirming) {
        List<Row> rows = new ArrayList<>();
        confirming.proposals().forEach(proposal -> {
            rows.add(row(pack, proposal));
            proposal.found().also().forEach(other -> rows.add(beside(pack, other)));
        });
        confirming.reading().unread().forEach(unread -> rows.add(row(unread)));
        return List.copyOf(rows);
    }

    private static Row row(Pack pack, Proposal proposal) {
        return row(pack, proposal.found(), proposal.value(), state(proposal), look(pack, proposal), Optional.empty());
    }

    /** What the sheet also states of a property. */
    private static Row beside(Pack pack, Found other) {
        return row(pack, other, other.value(), "· also shown", "Take it to have it in place of the one above", Optional.of(other));
    }

    private static Row row(Pack pack, Found found, SheetValue value, String state, String look, Optional<Found> instead) {
        String compare = value.compare().map(one -> one.text() + " ").orElse("");
        String label = found.label();
        Optional<Property> property = pack.property(value.property());
        Sense sense = property.map(Sense::stated).orElse(Sense.PLAIN);
        ShownUnits units = Units.shown();
        Value shown = units.turned(value.value(), sense);
        return new Row(value.property(), state, Marks.sentence(property.map(Property::label).orElse(value.property())),
            compare + number(shown), unit(shown), units.both() ? units.beside(value.value(), sense) : "",
            value.method() + (value.edition().isEmpty()
                ? "" : ", " + value.edition()), found.model(), value.page(), label.isEmpty() ? "seen by you" : sure(found.confidence()),
            look, label.isEmpty() ? "You saw \"" + value.text() + "\" there." : "The sheet says \"" + label + ": "
                + found.value().text() + "\".", value.box(), instead);
    }

    private static Row row(Unread unread) {
        boolean whole = unread.text().isEmpty();
        return new Row("", "△ look", whole ? "The whole page" : "Not read", whole ? "" : unread.text(), "", "", "", "", unread.page(), "",
            whole ? "A picture without text: it needs a person" : Marks.sentence(unread.why()), whole
                ? "Page " + unread.page() + " holds a picture without text, so nothing could be read from it. Mark a value on it to add it."
                : "The sheet says \"" + unread.text() + "\": " + unread.why() + ".", unread.box(), Optional.empty());
    }

    private static String state(Proposal proposal) {
        if (proposal.goes() && proposal.isHeld()) {
            return "✓ in the job";
        }
        return switch (proposal.answer()) {
            case OPEN -> OPEN + " open";
            case TAKEN -> "✓ taken";
            case CORRECTED -> proposal.found().label().isEmpty() ? "✓ added" : "✓ corrected";
            case LEFT_OUT -> "– left out";
            case HELD -> "= job's own stays";
        };
    }

    private static String look(Pack pack, Proposal proposal) {
        Optional<Property> property = pack.property(proposal.property());
        List<String> words = new ArrayList<>();
        proposal.before().filter(held -> !proposal.isHeld()).ifPresent(held -> words.add("the job has " + Units.text(property, held.value())
            + (held.confirmed() ? ", confirmed" : ", not confirmed")));
        if (!proposal.found().doubt().isEmpty()) {
            words.add(proposal.found().doubt());
        }
        if (proposal.answer() == Answer.CORRECTED && !proposal.found().label().isEmpty()) {
            words.add("read as " + Units.text(property, proposal.found().value().value()));
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
