package reglet.details;

import java.util.List;
import java.util.Optional;

import reglet.model.Assembly;
import reglet.model.Component;
import reglet.model.Dimension;
import reglet.model.Meeting;
import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Requirement;
import reglet.model.ShownUnits;
import reglet.model.ShownUnits.Sense;
import reglet.model.Stated;
import reglet.model.UnitSystem;
import reglet.model.Value;
import reglet.model.WallType;

/**
 * What a wall's drawings are made from: the requirements of the first accepted option of each component, or else the value that the
 * pack calls usual. Lengths are in millimetres.
 */
final class Facts {
    private final Assembly assembly;
    private final WallType wall;
    private final ShownUnits shown;

    /** @throws IllegalArgumentException when the job has no such wall type */
    Facts(Assembly assembly, String wall, ShownUnits shown) {
        this.assembly = assembly;
        this.shown = shown;
        this.wall = assembly.job().wall(wall).orElseThrow(() -> new IllegalArgumentException("the job has no wall type " + wall
            + "; it has " + assembly.job().walls().stream().map(WallType::id).toList()));
    }

    String wall() {
        return wall.id();
    }

    List<Meeting> meetings(String subject) {
        return wall.meetings().stream().filter(meeting -> meeting.subject().equals(subject)).toList();
    }

    boolean has(String component) {
        return wall.choice(component).isPresent() && assembly.pack().component(component).isPresent();
    }

    String title(String component) {
        return assembly.pack().component(component).map(Component::title).orElse(component);
    }

    /** A value in the units that are shown. */
    Optional<Value> value(String component, String property) {
        Optional<Property> declared = assembly.pack().component(component).flatMap(found -> found.property(property));
        return wall.choice(component).flatMap(choice -> assembly.requirement(wall.id(), component, choice.accept().get(0), property))
            .map(Requirement::value).or(() -> declared.flatMap(Property::usual))
            .map(value -> shown.turned(value, declared.map(Sense::required).orElse(Sense.PLAIN)));
    }

    Optional<Quantity> length(String component, String property) {
        return value(component, property).flatMap(Facts::quantity).filter(found -> found.dimension() == Dimension.LENGTH);
    }

    /** A length in millimetres; {@code otherwise} where neither job nor pack states one. */
    double mm(String component, String property, double otherwise) {
        return length(component, property).map(Lengths::mm).orElse(otherwise);
    }

    /** A ratio, or the least of a range of ratios: 0.25 for 25 %. */
    double ratio(String component, String property, double otherwise) {
        return value(component, property).flatMap(Facts::quantity).filter(found -> found.dimension() == Dimension.RATIO)
            .map(Quantity::si).orElse(otherwise);
    }

    /** A length as it is shown. */
    String text(String component, String property) {
        return value(component, property).map(Value::text).orElse("");
    }

    /** Whether a word is the value; false where nothing is stated. */
    boolean is(String component, String property, String word) {
        return value(component, property).filter(found -> found.text().equals(word)).isPresent();
    }

    boolean yes(String component, String property) {
        return is(component, property, "yes");
    }

    /** A fact of the wall type itself. */
    boolean wallIs(String property, String word) {
        return Optional.ofNullable(wall.facts().get(property)).filter(stated -> stated.value().text().equals(word)).isPresent();
    }

    /** A fact of something that the wall meets, or the value that the pack calls usual. */
    Optional<Value> value(Meeting meeting, String property) {
        Optional<Property> declared = assembly.pack().subject(meeting.subject()).flatMap(subject -> subject.property(property));
        return Optional.ofNullable(meeting.facts().get(property)).map(Stated::value).or(() -> declared.flatMap(Property::usual))
            .map(value -> shown.turned(value, declared.map(Sense::stated).orElse(Sense.PLAIN)));
    }

    Optional<Quantity> length(Meeting meeting, String property) {
        return value(meeting, property).flatMap(Facts::quantity).filter(found -> found.dimension() == Dimension.LENGTH);
    }

    double mm(Meeting meeting, String property, double otherwise) {
        return length(meeting, property).map(Lengths::mm).orElse(otherwise);
    }

    String text(Meeting meeting, String property) {
        return value(meeting, property).map(Value::text).orElse("");
    }

    boolean is(Meeting meeting, String property, String word) {
        return text(meeting, property).equals(word);
    }

    boolean yes(Meeting meeting, String property) {
        return is(meeting, property, "yes");
    }

    /** The units in which lengths are shown that nobody stated. */
    UnitSystem units() {
        return shown.first().orElseGet(this::written);
    }

    /** The units that the job writes lengths in: those of the first length that it states of the wall. */
    private UnitSystem written() {
        return wall.facts().values().stream().map(Stated::value).map(Facts::quantity).flatMap(Optional::stream)
            .filter(quantity -> quantity.dimension() == Dimension.LENGTH).flatMap(quantity -> quantity.unit().system().stream())
            .findFirst().orElse(UnitSystem.INCH_POUND);
    }

    /** A usual scale of the job's units: 1:4 is 3 in to the foot. */
    double scale(double inchPound, double metric) {
        return written() == UnitSystem.INCH_POUND ? inchPound : metric;
    }

    private static Optional<Quantity> quantity(Value value) {
        return value instanceof Quantity quantity ? Optional.of(quantity)
            : value instanceof Range range ? Optional.of(range.low()) : Optional.empty();
    }
}
