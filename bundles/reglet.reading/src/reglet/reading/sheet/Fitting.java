package reglet.reading.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.model.Component;
import reglet.model.Property;
import reglet.model.SheetReading.Found;
import reglet.model.SheetValue;
import reglet.reading.value.Taken;

/** Fits what was found to what the sheet says the product is: a retarding barrier's permeance is the one with a limit above. */
final class Fitting {
    private static final double LESS = 0.85;
    /** Why a value that stands on the sheet is of no use. */
    static final String UNASKED = "The pack asks for no such value of a product of this kind.";

    private Fitting() {
    }

    static List<Found> fit(List<Found> found, Component component) {
        return found.stream().flatMap(one -> each(one, found, component)).map(one -> fit(one, found, component)).toList();
    }

    /**
     * What is said of all models at once, of those that it has a meaning for: the joint round blocks, and not round the plates in the same
     * table.
     */
    private static Stream<Found> each(Found one, List<Found> all, Component component) {
        Optional<Property> property = component.properties().stream().filter(own -> path(component, own).equals(one.value().property()))
            .findFirst();
        if (!one.model().isEmpty() || property.isEmpty() || property.get().only().isEmpty()) {
            return Stream.of(one);
        }
        List<String> models = all.stream().filter(other -> other.confidence() >= Taken.LEAST_CONFIDENCE).map(Found::model).filter(
            model -> !model.isEmpty()).distinct().toList();
        List<String> own = models.stream().filter(model -> applies(property.get(), one.of(model), all, component)).toList();
        return own.size() < 2 || own.size() == models.size() ? Stream.of(one) : own.stream().map(one::of);
    }

    private static Found fit(Found one, List<Found> all, Component component) {
        Optional<Property> property = component.properties().stream().filter(own -> path(component, own).equals(one.value().property()))
            .findFirst();
        if (property.isEmpty() || applies(property.get(), one, all, component)) {
            return one;
        }
        Optional<Property> other = component.properties().stream().filter(own -> own != property.get() && own.label().equals(property.get()
            .label())
            && own.type().equals(property.get().type()) && applies(own, one, all, component)).findFirst();
        return other.map(own -> as(one, path(component, own))).orElseGet(() -> one.with(Math.min(one.confidence(), LESS),
            one.doubt().isEmpty() ? UNASKED : one.doubt()));
    }

    private static Found as(Found one, String path) {
        SheetValue value = one.value();
        return new Found(new SheetValue(path, value.value(), value.compare(), value.method(), value.edition(), value.text(), value.page(),
            value.box(), value.confirmed()), one.label(), one.model(), one.confidence(), one.doubt(), one.also().stream()
                .map(also -> as(also, path)).toList());
    }

    private static String path(Component component, Property property) {
        return component.id() + "." + property.name();
    }

    private static boolean applies(Property property, Found one, List<Found> all, Component component) {
        return Applying.applies(property, name -> all.stream().filter(other -> other.value().property().equals(component.id() + "." + name)
            && (other.model().isEmpty() || one.model().isEmpty() || other.model().equals(one.model()))).map(other -> other.value().value()
                .text())
            .findFirst().orElse(null));
    }
}
