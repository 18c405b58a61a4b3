package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.model.Assembly;
import reglet.model.Clause;
import reglet.model.Meeting;
import reglet.model.Option;
import reglet.model.Requirement;
import reglet.model.Scope;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;
import reglet.model.WallType;

/**
 * Makes the paragraphs of one clause out of its texts for every wall, meeting and alternative: a text that is the same
 * everywhere prints once, others say for which wall types or accepted options they stand.
 */
final class Merge {
    private final Assembly assembly;
    private final Slots slots;
    private final Clause clause;

    Merge(Assembly assembly, Slots slots, Clause clause) {
        this.assembly = assembly;
        this.slots = slots;
        this.clause = clause;
    }

    /**
     * A clause's text in one setting.
     *
     * @param content what has to be equal for two texts to be printed once
     */
    record Use(Setting setting, Draft draft, List<String> content) {
        static Use of(Setting setting, Draft draft) {
            return new Use(setting, draft, Merge.content(draft));
        }
    }

    /** A place on the job that a clause can stand for: a wall type, or a meeting of one. */
    private record Spot(String wall, String meeting) {
    }

    /** What has to be equal for texts to be printed once. */
    private record Key(List<Map<String, String>> alternatives, List<String> text) {
    }

    List<Draft> paragraphs(List<Use> uses) {
        Map<Spot, Map<List<String>, List<Use>>> bySpot = new LinkedHashMap<>();
        for (Use use : uses) {
            bySpot.computeIfAbsent(new Spot(use.setting().wall(), use.setting().meeting()), spot -> new LinkedHashMap<>())
                .computeIfAbsent(use.content(), text -> new ArrayList<>()).add(use);
        }
        Map<Key, Map<Spot, List<Use>>> groups = new LinkedHashMap<>();
        bySpot.forEach((spot, texts) -> texts.forEach((text, same) ->
            groups.computeIfAbsent(new Key(alternatives(spot.wall(), same), text), key -> new LinkedHashMap<>()).put(spot, same)));
        List<Draft> paragraphs = new ArrayList<>();
        groups.forEach((key, spots) -> paragraphs.add(paragraph(key, spots)));
        return paragraphs;
    }

    private Draft paragraph(Key key, Map<Spot, List<Use>> spots) {
        List<Use> uses = spots.values().stream().flatMap(List::stream).toList();
        Draft merged = merge(uses.stream().map(Use::draft).toList());
        String places = places(spots.keySet());
        List<String> lead = new ArrayList<>();
        StringBuilder id = new StringBuilder(clause.id());
        if (!places.isEmpty()) {
            lead.add(places);
            id.append('@').append(spots.keySet().stream().map(Merge::id).collect(Collectors.joining(",")));
        }
        if (!key.alternatives().isEmpty()) {
            lead.add(isNamed(key.alternatives(), merged) ? "Contractor's option"
                : (places.isEmpty() ? "Where " : "where ") + titles(key.alternatives()) + " is furnished");
            id.append('~').append(key.alternatives().stream().map(options -> String.join("&", options.values()))
                .collect(Collectors.joining(",")));
        }
        List<Span> text = new ArrayList<>();
        if (!lead.isEmpty()) {
            text.add(new Strong(String.join(", ", lead) + ":"));
            text.add(new Plain(" "));
        }
        text.addAll(merged.text());
        return merged.with(text).named(id.toString(), false, uses.stream().map(Use::setting).toList());
    }

    /** Whether a text itself prints the options that it stands for, so that its lead needn't. */
    private static boolean isNamed(List<Map<String, String>> alternatives, Draft draft) {
        List<String> printed = draft.text().stream().filter(Slot.class::isInstance).map(span -> ((Slot) span).ref()).toList();
        return alternatives.stream().allMatch(options -> printed.containsAll(options.keySet()));
    }

    /**
     * The options that a text stands for on a wall, where the wall accepts others for which it doesn't. Components that all
     * accepted options of were seen with the text are left out; nothing is left when it stands for every alternative.
     */
    private List<Map<String, String>> alternatives(String wall, List<Use> same) {
        Set<Map<String, String>> seen = same.stream().map(use -> use.setting().options())
            .collect(Collectors.toCollection(LinkedHashSet::new));
        for (String component : same.get(0).setting().options().keySet()) {
            seen = withoutIndifferent(component, slots.accepted(wall, component), seen);
        }
        return seen.size() == 1 && seen.iterator().next().isEmpty() ? List.of() : List.copyOf(seen);
    }

    /** Leaves a component out when every accepted option of it was seen with all the rest. */
    private static Set<Map<String, String>> withoutIndifferent(String component, List<String> accepted, Set<Map<String, String>> seen) {
        Set<Map<String, String>> rests = new LinkedHashSet<>();
        for (Map<String, String> options : seen) {
            Map<String, String> rest = new LinkedHashMap<>(options);
            rest.remove(component);
            rests.add(rest);
        }
        for (Map<String, String> rest : rests) {
            for (String option : accepted) {
                Map<String, String> whole = new LinkedHashMap<>(rest);
                whole.put(component, option);
                if (!seen.contains(whole)) {
                    return seen;
                }
            }
        }
        return rests;
    }

    private String titles(List<Map<String, String>> alternatives) {
        return Phrases.list(alternatives.stream().map(options -> options.entrySet().stream()
            .map(entry -> assembly.pack().component(entry.getKey()).flatMap(component -> component.option(entry.getValue()))
                .map(Option::title).orElse(entry.getValue()))
            .collect(Collectors.joining(" with "))).toList(), "or");
    }

    /** "Wall type W1", "Wall types W1, W3", "Wall type W1 at window-1"; "" when the spots are all that there are. */
    private String places(Set<Spot> spots) {
        Set<Spot> all = new LinkedHashSet<>();
        assembly.job().walls().forEach(wall -> all.addAll(spots(wall)));
        if (clause.each() == Scope.JOB || clause.each() == Scope.SECTION || spots.containsAll(all)) {
            return "";
        }
        List<String> names = new ArrayList<>();
        for (WallType wall : assembly.job().walls()) {
            List<Spot> here = spots.stream().filter(spot -> spot.wall().equals(wall.id())).toList();
            if (here.isEmpty()) {
                continue;
            }
            boolean whole = here.containsAll(spots(wall));
            names.add(whole ? wall.id() : wall.id() + " at " + Phrases.list(here.stream().map(Spot::meeting).toList(), "and"));
        }
        return (names.size() == 1 ? "Wall type " : "Wall types ") + String.join(", ", names);
    }

    private List<Spot> spots(WallType wall) {
        return clause.each() == Scope.MEETING
            ? wall.meetings().stream().filter(meeting -> meeting.subject().equals(clause.subject())).map(Meeting::id)
                .map(meeting -> new Spot(wall.id(), meeting)).toList()
            : List.of(new Spot(wall.id(), ""));
    }

    private static String id(Spot spot) {
        return spot.meeting().isEmpty() ? spot.wall() : spot.wall() + "." + spot.meeting();
    }

    /** Words, slots and required values of a text and all below it. */
    private static List<String> content(Draft draft) {
        List<String> content = new ArrayList<>();
        for (Draft paragraph : draft.all()) {
            content.add("¶" + paragraph.children().size());
            for (Span span : paragraph.text()) {
                content.add(span.getClass().getSimpleName() + " " + span.text());
                if (span instanceof Slot slot) {
                    content.add(slot.ref());
                    slot.requirements().forEach(requirement -> content.add(requirement.path() + " " + requirement.value()));
                }
            }
        }
        return content;
    }

    /** One of several equal texts, whose slots carry the requirements of all. */
    static Draft merge(List<Draft> equal) {
        Draft first = equal.get(0);
        List<Span> text = new ArrayList<>();
        for (int i = 0; i < first.text().size(); i++) {
            int place = i;
            if (first.text().get(i) instanceof Slot slot) {
                Set<Requirement> requirements = new LinkedHashSet<>();
                equal.forEach(draft -> requirements.addAll(((Slot) draft.text().get(place)).requirements()));
                text.add(new Slot(slot.ref(), slot.text(), new ArrayList<>(requirements)));
            } else {
                text.add(first.text().get(i));
            }
        }
        List<Draft> children = new ArrayList<>();
        for (int i = 0; i < first.children().size(); i++) {
            int place = i;
            children.add(merge(equal.stream().map(draft -> draft.children().get(place)).toList()));
        }
        return first.with(text).withChildren(children);
    }
}
