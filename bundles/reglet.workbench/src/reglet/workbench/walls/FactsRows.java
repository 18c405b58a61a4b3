package reglet.workbench.walls;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.model.Finding;
import reglet.model.Meeting;
import reglet.model.Property;
import reglet.model.Scope;
import reglet.model.Stated;
import reglet.model.Subject;
import reglet.model.Value;
import reglet.model.WallType;
import reglet.workbench.Fields;
import reglet.workbench.Marks;
import reglet.workbench.Snapshot;
import reglet.workbench.settings.Units;

/** What a job states of itself, of a wall type and of what the wall meets: a row for each, and its facts as fields. */
final class FactsRows {

    private FactsRows() {
    }

    /**
     * A row.
     *
     * @param address  where its facts are changed: "site", "W1.wall", "W1.base-1"
     * @param meeting  id of the meeting; "" for none
     * @param subject  what declares its facts
     * @param facts    those stated
     * @param findings that stand against it
     */
    record Row(String address, String meeting, Subject subject, Map<String, Stated> facts, List<Finding> findings) {

        /** "base-1", "the wall", "the job". */
        String name() {
            return !meeting.isEmpty() ? meeting : subject.scope() == Scope.WALL ? "the wall" : "the job";
        }

        /** The facts in one line. */
        String summary() {
            return subject.properties().stream().filter(property -> facts.containsKey(property.name()))
                .map(property -> property.label() + " "
                + Units.text(Optional.of(property), facts.get(property.name()).value())).collect(Collectors.joining(" · "));
        }

        /** "fits", "≠ 1 conflict". */
        String state() {
            return Marks.state(findings);
        }

        /** A field for each fact that it takes. */
        List<Fields.Line> lines() {
            Set<String> missing = findings.stream().flatMap(finding -> finding.missing().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
            return subject.properties().stream().map(property -> line(property, missing)).toList();
        }

        private Fields.Line line(Property property, Set<String> missing) {
            boolean stated = facts.containsKey(property.name());
            Optional<Value> value = stated ? Optional.of(facts.get(property.name()).value()) : property.usual();
            String source = stated ? "" : missing.contains(subject.id() + "." + property.name()) ? "○ not known"
                : property.usual().isPresent() ? "usual" : "";
            return Fields.Line.of(property, false, source, value, "", true);
        }
    }

    /** What a wall meets, in the order written, then the wall itself and the job. */
    static List<Row> rows(Snapshot now, WallType wall) {
        List<Row> rows = new ArrayList<>();
        for (Meeting met : wall.meetings()) {
            now.job().pack().subject(met.subject()).ifPresent(subject -> rows.add(new Row(wall.id() + "." + met.id(), met.id(), subject,
                met.facts(), now.findings(wall.id()).stream().filter(finding -> finding.meeting().equals(met.id())).toList())));
        }
        for (Subject subject : now.job().pack().subjects()) {
            if (subject.scope() == Scope.WALL) {
                rows.add(new Row(wall.id() + "." + subject.id(), "", subject, wall.facts(), missing(now.findings(wall.id()), subject)));
            }
        }
        for (Subject subject : now.job().pack().subjects()) {
            if (subject.scope() == Scope.JOB) {
                rows.add(new Row(subject.id(), "", subject, now.job().job().facts().getOrDefault(subject.id(), Map.of()),
                    missing(now.findings(), subject)));
            }
        }
        return rows;
    }

    /** Findings that miss a fact of a subject. */
    private static List<Finding> missing(List<Finding> findings, Subject subject) {
        return findings.stream().filter(finding -> finding.missing().stream().anyMatch(name -> name.startsWith(subject.id() + ".")))
            .toList();
    }

    /** The kinds of things that a wall can meet. */
    static List<Subject> kinds(Snapshot now) {
        return now.job().pack().subjects().stream().filter(subject -> subject.scope() == Scope.MEETING).toList();
    }

    /** The first name of a kind that is free: "base-3". */
    static String next(WallType wall, String subject) {
        for (int number = 1;; number++) {
            String name = subject + "-" + number;
            if (wall.meetings().stream().noneMatch(met -> met.id().equals(name))) {
                return name;
            }
        }
    }
}
