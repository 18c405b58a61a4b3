package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.Alternate;
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
     * @param alternates what alternates choose instead: "Alternate No. 1, offered: woven wire lath"
     */
    record Row(Component component, Optional<Choice> choice, List<Option> options, List<Finding> findings, List<String> alternates) {

        /** The accepted options in words, and what alternates choose instead. */
        String accepted() {
            if (options.isEmpty()) {
                return findings.isEmpty() ? "not needed here" : "not decided";
            }
            String accepted = String.join("; or ", options.stream().map(Option::title).toList());
            return alternates.isEmpty() ? accepted : accepted + " · " + String.join(" · ", alternates);
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
            rows.add(new Row(component, choice, options, snapshot.findings(wall.id(), component.id()),
                choice.map(made -> alternates(snapshot, component, made)).orElse(List.of())));
        }
        return rows;
    }

    private static List<String> alternates(Snapshot snapshot, Component component, Choice choice) {
        return snapshot.job().job().alternates().stream().filter(one -> one.kind() == Alternate.Kind.ALTERNATE
            && choice.alternates().containsKey(one.number())).map(one -> one.name() + ", " + one.state().text() + ": "
            + String.join("; or ", choice.alternates().get(one.number()).accept().stream()
                .map(id -> component.option(id).map(Option::title).orElse(id)).toList())).toList();
    }
}
