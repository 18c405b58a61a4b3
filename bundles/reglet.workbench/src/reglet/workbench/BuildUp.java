package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Finding;
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
     * @param findings those that point at the component
     */
    record Row(Component component, Optional<Choice> choice, List<Option> options, List<Finding> findings) {

        /** The accepted options in words. */
        String accepted() {
            if (options.isEmpty()) {
                return findings.isEmpty() ? "not needed here" : "not decided";
            }
            return String.join("; or ", options.stream().map(Option::title).toList());
        }

        /** Shape and word: "fits", "≠ 1 conflict". */
        String state() {
            return options.isEmpty() && findings.isEmpty() ? "–" : Marks.state(findings);
        }
    }

    /** Every component that the pack knows, in build-up order. */
    static List<Row> rows(Snapshot snapshot, WallType wall) {
        List<Row> rows = new ArrayList<>();
        for (Component component : snapshot.job().pack().components()) {
            Optional<Choice> choice = wall.choice(component.id());
            List<Option> options = choice.stream().flatMap(made -> made.accept().stream()).flatMap(id -> component.option(id).stream())
                .toList();
            rows.add(new Row(component, choice, options, snapshot.findings(wall.id(), component.id())));
        }
        return rows;
    }
}
