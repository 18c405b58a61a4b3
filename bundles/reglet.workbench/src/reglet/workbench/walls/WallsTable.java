package reglet.workbench.walls;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Option;
import reglet.model.WallType;
import reglet.workbench.Marks;
import reglet.workbench.Snapshot;
import reglet.workbench.settings.Units;

/** All wall types beside each other: a row for each component, a cell for what a wall type accepts for it. */
final class WallsTable {
    static final String DIFFERS = "◇";

    private WallsTable() {
    }

    /**
     * A row.
     *
     * @param cells one for each wall type, in the job's order
     */
    record Row(Component component, List<Cell> cells) {
        Row {
            cells = List.copyOf(cells);
        }

        /** "same everywhere", "◇ 2 ways", or "–" where no wall type has it. */
        String agreement() {
            long ways = cells.stream().map(Cell::choice).distinct().count();
            if (ways > 1) {
                return DIFFERS + " " + ways + " ways";
            }
            return cells.size() < 2 ? "" : cells.get(0).options().isEmpty() ? "–" : "same everywhere";
        }
    }

    /**
     * What a wall type accepts for a component.
     *
     * @param choice   options and set values as written, to tell whether two are the same; "" for undecided
     * @param options  the options in words
     * @param values   what is set over the options, in words; ""
     * @param findings what stands against it
     */
    record Cell(String choice, String options, String values, List<Finding> findings) {
        Cell {
            findings = List.copyOf(findings);
        }

        /** In words; led by a shape where it differs from a wall type that it is held against. */
        String text(Cell reference) {
            String words = options.isEmpty() ? findings.isEmpty() ? "–" : "not decided" : options + (values.isEmpty() ? "" : ", " + values);
            String against = Marks.shapes(findings);
            return (choice.equals(reference.choice) ? "" : DIFFERS + " ") + words + (against.isEmpty() ? "" : "  " + against);
        }

        /** The same with every word written out. */
        String whole(String wall, Cell reference, String referenceWall) {
            String against = Marks.counts(findings);
            return wall + ": " + (options.isEmpty() ? "not decided" : options) + (values.isEmpty() ? "" : ", " + values)
                + (choice.equals(reference.choice) ? "" : "\n" + DIFFERS + " differs from " + referenceWall)
                + (against.isEmpty() ? "" : "\n" + against);
        }
    }

    /** The components that a wall type has something of, in build-up order. */
    static List<Row> rows(Snapshot now) {
        List<Row> rows = new ArrayList<>();
        for (Component component : now.job().pack().components()) {
            rows.add(new Row(component, now.job().job().walls().stream().map(wall -> cell(now, wall, component)).toList()));
        }
        return rows;
    }

    private static Cell cell(Snapshot now, WallType wall, Component component) {
        Optional<Choice> choice = wall.choice(component.id());
        List<String> set = choice.map(made -> made.values().entrySet().stream().map(value -> component.property(value.getKey())
            .map(property -> property.label()).orElse(value.getKey()) + " "
                + Units.text(component.property(value.getKey()), value.getValue().value())).toList()).orElse(List.of());
        String options = choice.map(made -> String.join("; or ", made.accept().stream()
            .map(id -> component.option(id).map(Option::title).orElse(id)).toList())).orElse("");
        String values = String.join(", ", set);
        String written = choice.map(made -> made.values().entrySet().stream().map(value -> value.getKey() + " " + value.getValue().value()
            .text()).toList().toString()).orElse("");
        return new Cell(options + "|" + written, options, values, now.findings(wall.id(), component.id()));
    }
}
