package reglet.reading.value;

import java.util.Optional;

import reglet.model.Compare;
import reglet.model.Dimension;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.Quantity;
import reglet.reading.words.Label;
import reglet.reading.words.Reading.Read;

/** The sense in which a value is stated, as its own words, its label and what stands round it tell. */
final class StatedSense {
    private StatedSense() {
    }

    static Optional<Compare> of(Property property, Label label, Read read, Around around) {
        boolean amount = property.type().kind() == Kind.QUANTITY;
        Optional<Compare> compare = read.compare().or(() -> amount ? label.sense().or(around::sense) : Optional.empty());
        if (amount && property.type().unit().orElseThrow().dimension() == Dimension.TIME && property.compare() == Compare.AT_LEAST) {
            // what may stand so long at most stands so long
            compare = compare.filter(one -> one != Compare.AT_MOST);
        }
        if (amount && property.type().unit().orElseThrow().dimension() == Dimension.TEMPERATURE) {
            // "above 90 °F fog the coat" says where a limit lies, and not that it may lie higher
            compare = compare.filter(one -> !property.label().contains(" above ") || one != Compare.AT_LEAST);
        }
        if (amount && read.value() instanceof Quantity share && share.dimension() == Dimension.RATIO && share.si() >= 1) {
            // "over 100 % of its back" tells where
            compare = compare.filter(one -> one != Compare.AT_LEAST);
        }
        return compare;
    }
}
