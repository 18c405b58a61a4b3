package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import reglet.desk.AlternateBeside;
import reglet.model.Alternate;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.Option;
import reglet.model.WallType;

/** The components of a wall type from inside to outside, with what is accepted and how it stands. */
final class BuildUp {

    private BuildUp() {
    }

    /**
     * A component of the wall.
     *
     * @param choice   what is accepted; empty when nothing is
     * @param options  the accepted options in the order written
     * @param findings those that point at the component as it will be built
     * @param alternates what alternates choose instead: "Alternate No. 1, offered: woven wire lath"
     * @param others   what alternates that are only offered would bring here
     */
    record Row(Component component, Optional<Choice> choice, List<Option> options, List<Finding> findings, List<String> alternates,
            List<Finding> others) {

        /** The accepted options in words, and what alternates choose instead. */
        String accepted() {
            if (options.isEmpty()) {
                return findings.isEmpty() ? "not needed here" : "not decided";
            }
            String accepted = String.join("; or ", options.stream().map(Option::title).toList());
            return alternates.isEmpty() ? accepted : accepted + " · " + String.join(" · ", alternates);
        }

        /** Shape and word: "fits", "≠ 1 conflict"; with what offered alternates would bring: "fits · Alternate No. 2: ≠ 1". */
        String state() {
            String here = options.isEmpty() && findings.isEmpty() ? "–" : Marks.state(findings);
            return here + others.stream().map(Finding::alternates).distinct().map(numbers -> " · " + Alternate.names(numbers) + ": "
                + Marks.shapes(others.stream().filter(finding -> finding.alternates().equals(numbers)).toList()))
                .collect(Collectors.joining());
        }
    }

    /** Every component that the pack knows, in build-up order. */
    static List<Row> rows(Snapshot snapshot, WallType wall) {
        List<Row> rows = new ArrayList<>();
        for (Component component : snapshot.job().pack().components()) {
            Optional<Choice> choice = wall.choice(component.id());
            List<Option> options = choice.stream().flatMap(made -> made.accept().stream()).flatMap(id -> component.option(id).stream())
                .toList();
            List<Finding> here = snapshot.standing(wall.id(), component.id());
            rows.add(new Row(component, choice, options, here, alternates(snapshot, component, wall),
                snapshot.findings(wall.id(), component.id()).stream().filter(finding -> !here.contains(finding)).toList()));
        }
        return rows;
    }

    /** What alternates choose otherwise than what is in force, and what the one in force stands in place of. */
    private static List<String> alternates(Snapshot snapshot, Component component, WallType wall) {
        Job job = snapshot.job().job();
        Choice written = job.wall(wall.id()).flatMap(found -> found.choice(component.id())).orElse(null);
        if (written == null || written.alternates().isEmpty()) {
            return List.of();
        }
        List<String> words = new ArrayList<>();
        for (Alternate one : job.alternates()) {
            if (one.kind() == Alternate.Kind.ALTERNATE && written.alternates().containsKey(one.number())) {
                words.add(one.is(Alternate.State.ACCEPTED) ? one.name() + ", in place of " + AlternateBeside.words(component, written)
                    : one.name() + ", " + one.state().text() + ": "
                        + AlternateBeside.words(component, written.alternates().get(one.number())));
            }
        }
        return words;
    }
}
