package reglet.drafting;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import reglet.model.Assembly;
import reglet.model.Component;
import reglet.model.Evidence;
import reglet.model.RegisterEntry;
import reglet.model.RegisterItem;
import reglet.model.Requirement;

/**
 * What a section asks to be sent: for each component that it owns, the evidence that the requirements ask for, and the
 * entries of the pack's register, in the order of the build-up.
 */
final class Evidences {
    private Evidences() {
    }

    /**
     * One thing to be sent.
     *
     * @param id     "lath.product-data", or the entry's id
     * @param item   what it is about: "Lath"
     * @param labels labels of the properties that it has to show
     * @param entry  the pack's entry; null when only the evidence asks for it
     */
    record Asked(String id, String item, String component, RegisterItem.Kind kind, String sends, List<String> labels, RegisterEntry entry) {
        Asked {
            labels = List.copyOf(labels);
        }
    }

    static List<Asked> of(Assembly assembly, String section) {
        List<RegisterEntry> entries = new ArrayList<>(assembly.entries().stream().filter(entry -> entry.section().equals(section))
            .toList());
        List<Asked> asked = new ArrayList<>();
        for (Component component : assembly.pack().components()) {
            if (component.section().equals(section)) {
                evidence(assembly, component, entries, asked);
            }
            List<RegisterEntry> own = entries.stream().filter(entry -> entry.component().equals(component.id())).toList();
            own.forEach(entry -> asked.add(asked(entry, component.title(), List.of())));
            entries.removeAll(own);
        }
        entries.forEach(entry -> asked.add(asked(entry, subject(entry), List.of())));
        return asked;
    }

    private static void evidence(Assembly assembly, Component component, List<RegisterEntry> entries, List<Asked> asked) {
        Map<Evidence, Set<String>> labels = new EnumMap<>(Evidence.class);
        for (Requirement requirement : assembly.requirements()) {
            Evidence evidence = requirement.property().evidence();
            if (requirement.component().equals(component.id()) && evidence != Evidence.NONE
                && !requirement.asksNothing()) {
                labels.computeIfAbsent(evidence, kind -> new LinkedHashSet<>()).add(requirement.property().label());
            }
        }
        labels.forEach((evidence, shown) -> {
            String id = component.id() + "." + evidence.text().replace(' ', '-');
            RegisterEntry same = entries.stream().filter(entry -> entry.id().equals(id)).findFirst().orElse(null);
            if (same == null) {
                asked.add(new Asked(id, component.title(), component.id(), kind(evidence), evidence.text(), List.copyOf(shown), null));
            } else {
                asked.add(asked(same, component.title(), List.copyOf(shown)));
                entries.remove(same);
            }
        });
    }

    private static Asked asked(RegisterEntry entry, String item, List<String> labels) {
        return new Asked(entry.id(), item, entry.component(), entry.kind(), entry.sends(), labels, entry);
    }

    /** An entry without component is about what its text starts with: "Mock-up: …". */
    private static String subject(RegisterEntry entry) {
        int colon = entry.text().indexOf(':');
        return colon > 0 && !entry.text().substring(0, colon).contains("$") ? entry.text().substring(0, colon).strip()
            : entry.sends().substring(0, 1).toUpperCase(Locale.ROOT) + entry.sends().substring(1);
    }

    /** Product data, samples and drawings wait for the designer's answer; reports and statements are for information. */
    private static RegisterItem.Kind kind(Evidence evidence) {
        return switch (evidence) {
            case PRODUCT_DATA, SAMPLE, SHOP_DRAWING, CALCULATION -> RegisterItem.Kind.ACTION;
            default -> RegisterItem.Kind.INFORMATIONAL;
        };
    }
}
