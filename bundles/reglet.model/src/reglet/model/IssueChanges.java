package reglet.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import reglet.model.SectionChanges.Line;
import reglet.model.SectionChanges.Side;

/**
 * What changed from one issue to another, or to the present draft.
 *
 * @param sections sections of either, in the later one's order, the same ones too
 */
public record IssueChanges(Issue before, Issue after, List<SectionChanges> sections) {

    public IssueChanges {
        sections = List.copyOf(sections);
    }

    public boolean isEmpty() {
        return sections.stream().allMatch(section -> section.provisions().isEmpty());
    }

    /** Questions that a change goes back to: "RFI 12"; those that the choices cite which the paragraph prints, or printed. */
    public List<String> origins(Line line) {
        Set<String> cited = new LinkedHashSet<>();
        Stream.concat(line.after().stream(),
            line.before().stream()).map(Side::id).distinct().forEach(id -> after.sections().forEach(section ->
            SectionChanges.paragraph(Optional.of(section), id).ifPresent(paragraph -> cited.addAll(after.cited(paragraph)))));
        line.before().ifPresent(side -> before.sections().forEach(section -> SectionChanges.paragraph(Optional.of(section), side.id())
            .ifPresent(paragraph -> cited.addAll(after.cited(paragraph)))));
        return new ArrayList<>(cited);
    }

    /** Choices that are not as they were, by address: what they cite now, "" for nothing. */
    public Map<String, String> choices() {
        Map<String, String> changed = new LinkedHashMap<>();
        after.choices().forEach((address, made) -> {
            if (!made.equals(before.choices().get(address))) {
                changed.put(address, made.by());
            }
        });
        before.choices().keySet().stream().filter(address -> !after.choices().containsKey(address))
            .forEach(address -> changed.put(address, ""));
        return changed;
    }

    /** Questions answered after the earlier issue was given out. */
    public List<Question> answered() {
        return after.questions().stream().filter(question -> !question.isOpen())
            .filter(question -> before.questions().stream().noneMatch(old -> old.number() == question.number() && !old.isOpen())).toList();
    }
}
