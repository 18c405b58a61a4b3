package reglet.model;

import java.util.List;
import java.util.Optional;

/**
 * What a data sheet was read to say. Everything in it is a proposal with its place until a person confirms it.
 *
 * @param product    the product's name; "" when the sheet shows none that can be told
 * @param maker      its maker; ""
 * @param components ids of the components that the product may be for, the likeliest first; empty when none fits
 * @param values     property values of the first component, in the order of the sheet
 * @param unread     what was seen and could not be read as a value, in the order of the sheet
 * @param report     what an evaluation report or certificate says of itself; empty for other sheets
 */
public record SheetReading(String product, String maker, List<String> components, List<Found> values, List<Unread> unread,
        Optional<Report> report) {

    public SheetReading {
        components = List.copyOf(components);
        values = List.copyOf(values);
        unread = List.copyOf(unread);
    }

    /** The component that the values belong to; "" when none fits. */
    public String component() {
        return components.isEmpty() ? "" : components.get(0);
    }

    /** The models that the sheet tells apart, in its order. */
    public List<String> models() {
        return values.stream().map(Found::model).filter(model -> !model.isEmpty()).distinct().toList();
    }

    /**
     * A value and where it stands.
     *
     * @param value      the value, not confirmed
     * @param label      what the sheet calls the property
     * @param model      the model that it is of; "" when it is of all
     * @param confidence from 0 to 1: how sure it is that the sheet says this of this property
     * @param doubt      what a person should look at; ""
     * @param also       what else the sheet states of this property of this model, in its order: by another method, at other conditions,
     *                   of another size. They hold no further ones
     */
    public record Found(SheetValue value, String label, String model, double confidence, String doubt, List<Found> also) {
        public Found {
            also = List.copyOf(also);
        }

        /** The only value of its property that the sheet states. */
        public Found(SheetValue value, String label, String model, double confidence, String doubt) {
            this(value, label, model, confidence, doubt, List.of());
        }

        /** The same as another value, such as one that a person corrected. */
        public Found with(SheetValue other) {
            return new Found(other, label, model, confidence, doubt, also);
        }

        /** The same with another confidence, and a reason for it. */
        public Found with(double sure, String why) {
            return new Found(value, label, model, sure, why, also);
        }

        /** The same of another model; "" for all. */
        public Found of(String other) {
            return new Found(value, label, other, confidence, doubt, also.stream().map(one -> one.of(other)).toList());
        }
    }

    /**
     * Something that needs a person.
     *
     * @param page from 1
     * @param box  its place; empty for a whole page
     * @param text the words; "" for a page without
     */
    public record Unread(int page, Optional<Box> box, String text, String why) {
    }

    /**
     * An evaluation report or certificate.
     *
     * @param number     its number
     * @param holder     whom it was given to; ""
     * @param subject    what it is about; ""
     * @param codes      the codes and editions that it was evaluated to
     * @param issued     as written; ""
     * @param ends       when it is to be renewed or ends, as written; ""
     * @param conditions of use
     */
    public record Report(String number, String holder, String subject, List<String> codes, String issued, String ends,
            List<Condition> conditions) {
        public Report {
            codes = List.copyOf(codes);
            conditions = List.copyOf(conditions);
        }
    }

    /**
     * A condition of use.
     *
     * @param number "5.1"; ""
     * @param text   the sentence
     * @param limits what it asks of properties: each a value with its sense, to be required of the wall
     */
    public record Condition(String number, String text, int page, Box box, List<SheetValue> limits) {
        public Condition {
            limits = List.copyOf(limits);
        }
    }
}
