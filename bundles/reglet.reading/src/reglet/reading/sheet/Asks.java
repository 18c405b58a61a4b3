package reglet.reading.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.model.Box;
import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.SheetValue;
import reglet.reading.text.Limits;
import reglet.reading.text.Limits.Limit;
import reglet.reading.words.Plain;
import reglet.reading.words.Reading;
import reglet.reading.words.Vocabulary;

/** What a condition of use asks of the product itself and, where it names them, of other parts of the wall. */
final class Asks {
    private static final List<String> OF = List.of(" of ", " of the ", " of each ", " of any ", " of all ");
    private final Pack pack;
    private final Vocabulary vocabulary;
    private final String own;
    private final Map<Component, Limits> limits = new LinkedHashMap<>();

    /** @param own id of the component that the report is about; "" when that isn't known */
    Asks(Pack pack, Vocabulary vocabulary, String own) {
        this.vocabulary = vocabulary;
        this.pack = pack;
        this.own = own;
        pack.components().forEach(component -> limits.put(component, new Limits(vocabulary, component, new Reading(vocabulary,
            component))));
    }

    List<SheetValue> in(String sentence, int page, Box box) {
        Map<String, Limit> longest = new LinkedHashMap<>();
        String plain = " " + Plain.of(sentence) + " ";
        for (Component component : pack.components()) {
            boolean named = component.id().equals(own) || names(component).stream().anyMatch(name -> plain.contains(" " + name + " "));
            // "weight of adhered units" in the report of a lath
            boolean whose = names(component).stream().anyMatch(name -> OF.stream().anyMatch(of -> plain.contains(of + name + " ")));
            for (Limit limit : named ? limits.get(component).in(sentence, page, box) : List.<Limit>of()) {
                // "the saturated weight of the veneer" is no weight of the lath
                longest.merge(limit.value().text(), limit, (one, other) -> other.letters() > one.letters()
                    || other.letters() == one.letters() && (component.id().equals(own) || whose) ? other : one);
            }
        }
        return longest.values().stream().map(Limit::value).toList();
    }

    private Set<String> names(Component component) {
        Set<String> names = vocabulary.names(component.id()).stream().map(Plain::of).collect(Collectors.toSet());
        names.add(Plain.of(component.id()));
        return names;
    }
}
