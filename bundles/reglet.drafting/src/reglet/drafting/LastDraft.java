package reglet.drafting;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import reglet.model.Assembly;
import reglet.model.Assembly.ClauseUse;
import reglet.model.Choice;
import reglet.model.Clause;
import reglet.model.OnWall;
import reglet.model.Scope;
import reglet.model.WallType;

/**
 * What the clauses of a section printed when it was last drafted. A clause's paragraphs follow from how it applies, from the choices and
 * facts that it reads, and from the wall types that there are: where all of these are as they were, so are the paragraphs.
 *
 * @param assembly what was drafted
 * @param entries  by clause id
 */
record LastDraft(Assembly assembly, Map<String, Entry> entries) {
    /** Above the number of sections, and of alternates beside them, that a job is drafted for at once. */
    private static final int MOST = 32;
    /** Stands among what a clause reads for the facts of the job, its walls and what they meet, which are looked at as one. */
    private static final String FACTS = "facts";
    private static final Map<String, LastDraft> LAST = Collections.synchronizedMap(new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, LastDraft> eldest) {
            return size() > MOST;
        }
    });

    /**
     * What a clause printed.
     *
     * @param uses  how it applied
     * @param reads ids of the components on whose choices it depends, and {@value #FACTS} where it depends on these
     */
    record Entry(List<ClauseUse> uses, Set<String> reads, List<Draft> paragraphs) {
        Entry {
            uses = List.copyOf(uses);
            reads = Set.copyOf(reads);
            paragraphs = List.copyOf(paragraphs);
        }

        static Entry of(Assembly assembly, Clause clause, Body body, List<ClauseUse> uses, List<Draft> paragraphs) {
            Set<String> reads = new HashSet<>();
            uses.forEach(use -> reads.addAll(use.options().keySet()));
            body.slots().stream().map(SlotNames::head).forEach(head -> reads.add(assembly.pack().subject(head).isPresent() ? FACTS : head));
            if (clause.each() == Scope.MEETING) {
                reads.add(FACTS);
            }
            return new Entry(uses, reads, paragraphs);
        }
    }

    /**
     * What may be taken over into a draft: nothing where the pack or the wall types are others.
     *
     * @param name of the section, and of the alternate that is looked at
     */
    static Map<String, Entry> standing(String name, Assembly now) {
        LastDraft last = LAST.get(name);
        if (last == null || last.assembly.pack() != now.pack() || !ids(last.assembly).equals(ids(now))) {
            return Map.of();
        }
        Set<String> changed = last.changed(now);
        Map<String, Entry> standing = new LinkedHashMap<>(last.entries);
        standing.values().removeIf(entry -> !Collections.disjoint(entry.reads, changed));
        return standing;
    }

    static void keep(String name, LastDraft draft) {
        LAST.put(name, draft);
    }

    private static List<String> ids(Assembly assembly) {
        return assembly.job().walls().stream().map(WallType::id).toList();
    }

    private Set<String> changed(Assembly now) {
        Set<String> changed = new HashSet<>();
        if (!assembly.job().facts().equals(now.job().facts())) {
            changed.add(FACTS);
        }
        for (int i = 0; i < now.job().walls().size(); i++) {
            changed(assembly.job().walls().get(i), now, now.job().walls().get(i), changed);
        }
        return changed;
    }

    private void changed(WallType before, Assembly now, WallType after, Set<String> changed) {
        Optional<OnWall> on = assembly.on(before.id());
        if (on.isPresent() && on.equals(now.on(after.id()))) {
            return;
        }
        if (!before.facts().equals(after.facts()) || !before.meetings().equals(after.meetings())) {
            changed.add(FACTS);
        }
        Stream.of(before, after).flatMap(wall -> wall.choices().keySet().stream()).filter(component -> {
            Choice choice = before.choices().get(component);
            return !Objects.equals(choice, after.choices().get(component)) || choice.accept().stream().anyMatch(option ->
                !assembly.requirements(before.id(), component, option).equals(now.requirements(after.id(), component, option)));
        }).forEach(changed::add);
    }
}
