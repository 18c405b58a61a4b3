package reglet.drafting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import reglet.model.Assembly;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Meeting;
import reglet.model.Option;
import reglet.model.Property;
import reglet.model.Requirement;
import reglet.model.SectionDocument.Cited;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.Stated;
import reglet.model.Value;
import reglet.model.WallType;

/**
 * What slots print. For a text that stands for several settings at once the different phrases are joined: alternatives of
 * one wall with "or", walls with "and". What isn't decided prints in brackets, so that it can't be overlooked.
 */
final class Slots {
    private static final String CHANGED = ", changed to the values required here";

    private final Assembly assembly;
    private final String section;
    /** Looked up for every slot of every text. */
    private final Map<String, WallType> walls = new HashMap<>();

    Slots(Assembly assembly, String section) {
        this.assembly = assembly;
        this.section = section;
        assembly.job().walls().forEach(wall -> walls.putIfAbsent(wall.id(), wall));
    }

    /** The span for a slot whose name has been checked. A reference within the section gets its text when numbers are known. */
    Span span(String slot, List<Setting> settings) {
        if (SlotNames.isCitation(slot)) {
            String id = SlotNames.standard(assembly.pack(), slot).orElseThrow().id();
            return new Cited(id, id);
        }
        if (SlotNames.isReference(slot)) {
            return SlotNames.section(assembly.pack(), slot)
                .map(plan -> new CrossReference(plan.number(), "Section " + plan.number() + ", " + plan.title()))
                .orElseGet(() -> new CrossReference(SlotNames.target(assembly.pack(), section, slot).orElseThrow(), ""));
        }
        Map<String, Set<String>> texts = new LinkedHashMap<>();
        Set<Requirement> requirements = new LinkedHashSet<>();
        for (Setting setting : settings) {
            texts.computeIfAbsent(setting.wall(), wall -> new LinkedHashSet<>()).add(text(slot, setting));
            if (!slot.endsWith(SlotNames.METHOD)) {
                requirement(slot, setting).ifPresent(requirements::add);
            }
        }
        Set<String> walls = new LinkedHashSet<>();
        texts.values().forEach(alternatives -> walls.add(Phrases.list(new ArrayList<>(alternatives), "or")));
        return new Slot(slot, Phrases.list(new ArrayList<>(walls), "and"), new ArrayList<>(requirements));
    }

    /**
     * The settings in which a text has to be looked at: the one given, with every accepted option of each component that the
     * slots name and the setting doesn't fix yet. A setting without a wall becomes one for each wall if a slot needs one.
     */
    List<Setting> settings(Setting given, List<String> slots) {
        List<String> components = slots.stream().map(SlotNames::head)
            .filter(head -> assembly.pack().component(head).isPresent() && !given.options().containsKey(head)).distinct().toList();
        boolean needsWall = !components.isEmpty() || slots.stream().map(SlotNames::head).anyMatch("wall"::equals);
        List<Setting> settings = new ArrayList<>();
        if (given.wall().isEmpty() && needsWall && !assembly.job().walls().isEmpty()) {
            assembly.job().walls().forEach(wall -> settings.add(new Setting(wall.id(), "", given.options())));
        } else {
            settings.add(given);
        }
        for (String component : components) {
            List<Setting> extended = new ArrayList<>();
            for (Setting setting : settings) {
                List<String> accepted = accepted(setting.wall(), component);
                accepted.forEach(option -> {
                    Map<String, String> options = new LinkedHashMap<>(setting.options());
                    options.put(component, option);
                    extended.add(new Setting(setting.wall(), setting.meeting(), options));
                });
                if (accepted.isEmpty()) {
                    extended.add(setting);
                }
            }
            settings.clear();
            settings.addAll(extended);
        }
        return settings;
    }

    private Optional<WallType> wall(String id) {
        return Optional.ofNullable(walls.get(id));
    }

    List<String> accepted(String wall, String component) {
        return wall(wall).flatMap(type -> type.choice(component)).map(Choice::accept).orElse(List.of());
    }

    private String text(String slot, Setting setting) {
        String head = SlotNames.head(slot);
        Optional<Component> component = assembly.pack().component(head);
        if (component.isPresent() && slot.equals(head)) {
            return Optional.ofNullable(setting.options().get(head)).flatMap(component.get()::option)
                .map(option -> option.title() + (isChanged(option, setting.wall(), head) ? CHANGED : ""))
                .orElse("[" + component.get().title() + ": not decided]");
        }
        Property property = assembly.pack().property(SlotNames.path(slot)).orElseThrow();
        if (slot.endsWith(SlotNames.METHOD)) {
            return Phrases.method(property.method());
        }
        if (component.isPresent()) {
            return requirement(slot, setting).map(found -> slot.endsWith(SlotNames.VALUE) ? Phrases.value(found) : Phrases.of(found))
                .orElse("[" + component.get().title() + ", " + property.label() + ": not decided]");
        }
        return fact(head, property, setting).map(value -> slot.endsWith(SlotNames.VALUE) ? Phrases.fact(property, value)
            : Phrases.asked(property, value)).orElse("[" + property.label() + ": not stated]");
    }

    /** Whether the job sets another value than the option's own, so that the option's title alone would say what isn't required. */
    private boolean isChanged(Option option, String wall, String component) {
        return wall(wall).flatMap(type -> type.choice(component)).stream()
            .flatMap(choice -> choice.values().entrySet().stream())
            .anyMatch(set -> option.value(set.getKey()).filter(own -> !own.text().equals(set.getValue().value().text())).isPresent());
    }

    private Optional<Requirement> requirement(String slot, Setting setting) {
        String path = SlotNames.path(slot);
        String component = SlotNames.head(slot);
        String option = setting.options().get(component);
        return option == null || path.equals(component) ? Optional.empty()
            : assembly.requirement(setting.wall(), component, option, path.substring(component.length() + 1));
    }

    private Optional<Value> fact(String subject, Property property, Setting setting) {
        Optional<WallType> wall = wall(setting.wall());
        Optional<Stated> stated = switch (assembly.pack().subject(subject).orElseThrow().scope()) {
            case WALL -> wall.map(type -> type.facts().get(property.name()));
            case MEETING -> wall.flatMap(type -> type.meetings().stream().filter(meeting -> meeting.id().equals(setting.meeting()))
                .findFirst()).map(Meeting::facts).map(facts -> facts.get(property.name()));
            default -> Optional.ofNullable(assembly.job().facts().getOrDefault(subject, Map.of()).get(property.name()));
        };
        return stated.map(Stated::value).or(property::usual);
    }
}
