package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.model.Alternate;
import reglet.model.Assembly;
import reglet.model.Choice;
import reglet.model.RegisterItem;
import reglet.model.RegisterItem.Under;

/** What a section asks to be sent, with what its alternates ask besides, brought in place, or replaced. */
final class OfAlternates {
    private final Assembly assembly;
    private final String section;

    private OfAlternates(Assembly assembly, String section) {
        this.assembly = assembly;
        this.section = section;
    }

    /**
     * The items of the work as it will be built, each marked with the accepted alternate that brought it; behind them those that accepted
     * alternates replaced, and those that would come with others. Without paragraphs.
     */
    static List<RegisterItem> items(Assembly assembly, String section) {
        OfAlternates items = new OfAlternates(assembly, section);
        Map<String, Evidences.Asked> built = asked(assembly, section);
        List<RegisterItem> all = new ArrayList<>(built.values().stream().map(asked -> items.accepted(asked)).toList());
        items.replaced(built.keySet(), all);
        assembly.alternates().forEach((number, other) -> items.beyond(number, other, built, all));
        return all;
    }

    private static Map<String, Evidences.Asked> asked(Assembly assembly, String section) {
        Map<String, Evidences.Asked> asked = new LinkedHashMap<>();
        Evidences.of(assembly, section).forEach(one -> asked.putIfAbsent(one.id(), one));
        return asked;
    }

    private RegisterItem accepted(Evidences.Asked asked) {
        List<Integer> brought = new ArrayList<>();
        assembly.without().forEach((numbers, other) -> {
            if (numbers.size() == 1 && isNew(asked, numbers.get(0), assembly, other)) {
                brought.addAll(numbers);
            }
        });
        RegisterItem item = item(asked, asked.id());
        return brought.isEmpty() ? item : item.under(new Under(brought, Under.State.ACCEPTED));
    }

    private void replaced(Set<String> built, List<RegisterItem> all) {
        Map<String, RegisterItem> gone = new LinkedHashMap<>();
        // by one alternate before by several together
        assembly.without().forEach((numbers, other) -> asked(other, section).forEach((id, asked) -> {
            if (!built.contains(id)) {
                gone.putIfAbsent(id, item(asked, id).under(new Under(numbers, Under.State.REPLACED)));
            }
        }));
        all.addAll(gone.values());
    }

    private void beyond(int number, Assembly other, Map<String, Evidences.Asked> built, List<RegisterItem> all) {
        boolean declined = assembly.job().alternate(number).filter(one -> one.is(Alternate.State.DECLINED)).isPresent();
        asked(other, section).values().stream().filter(asked -> isNew(asked, number, other, assembly))
            .forEach(asked -> all.add(item(asked, RegisterItem.id(asked.id(), number))
                .under(new Under(List.of(number), declined ? Under.State.DECLINED : Under.State.OFFERED))));
    }

    /** Whether something is asked for with an alternate and not without, or is about another product, or has to show other things. */
    private boolean isNew(Evidences.Asked asked, int number, Assembly with, Assembly without) {
        Optional<Evidences.Asked> before = Optional.ofNullable(asked(without, section).get(asked.id()));
        return before.filter(asked::equals).isEmpty() || choices(with, asked.component()).stream()
            .anyMatch(choice -> !choices(without, asked.component()).contains(choice));
    }

    /** What the walls choose for a component, without what may still be chosen. */
    private static Set<List<Object>> choices(Assembly assembly, String component) {
        return assembly.job().walls().stream().flatMap(wall -> wall.choice(component).stream().map(choice -> chosen(wall.id(), choice)))
            .collect(Collectors.toSet());
    }

    private static List<Object> chosen(String wall, Choice choice) {
        return List.of(wall, choice.accept(), choice.values(), choice.specified());
    }

    private RegisterItem item(Evidences.Asked asked, String id) {
        RegisterItem.Sort sort = asked.entry() == null ? RegisterItem.Sort.NONE : asked.entry().sort();
        return RegisterItem.of(id, section, "", asked.item(), asked.component(), asked.kind(), sort, asked.sends());
    }
}
