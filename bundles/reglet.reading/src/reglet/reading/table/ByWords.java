package reglet.reading.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Property;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
import reglet.reading.table.Columns.Column;
import reglet.reading.table.Columns.Role;
import reglet.reading.text.Designations;
import reglet.reading.value.Around;
import reglet.reading.value.Taken;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;

/** Rows and columns of models whose heading says nothing, but whose words do: "Family" above "steel, drill point" and "wood, coarse". */
final class ByWords {
    private static final double THICK = 0.85;

    private final Labels labels;
    private final Taken taken;
    private final Designations designations;
    private final List<Column> told = new ArrayList<>();

    ByWords(Labels labels, Taken taken, Designations designations) {
        this.labels = labels;
        this.taken = taken;
        this.designations = designations;
    }

    /** Whether a column was told by its words alone. */
    boolean isTold(Column column) {
        return told.contains(column);
    }

    /** "Make-up | organic felt | kraft paper": what a row of models is about. */
    Optional<Label> row(Columns table, Map<Column, Cell> cells) {
        List<Column> models = models(table);
        return models.isEmpty() || !models.stream().allMatch(cells::containsKey) ? Optional.empty()
            : taken.told(models.stream().map(cells::get).toList()).map(Label::of);
    }

    /** "Standard | ASTM E2556 Type I | ASTM E2556 Type II" of models; false when the row says no such thing. */
    boolean designated(Columns table, Map<Column, Cell> cells) {
        boolean any = false;
        for (Column model : models(table)) {
            any |= cells.containsKey(model) && designations.alone(cells.get(model), TableStart.shortEnough(model.head().text()));
        }
        return any;
    }

    private static List<Column> models(Columns table) {
        List<Column> models = table.of(Role.MODEL);
        return table.of(Role.VALUE).isEmpty() && models.size() > 1 ? models : List.of();
    }

    /** The columns above some rows, of which those without a name are named by their words. */
    Columns columns(Columns columns, List<Line> below) {
        List<Line> rows = below.stream().takeWhile(row -> row.cells().size() > 2).toList();
        return rows.size() < 2 ? columns : Columns.of(columns.all().stream().map(column -> named(column, columns, rows)).toList());
    }

    private Column named(Column column, Columns columns, List<Line> rows) {
        List<Cell> cells = rows.stream().map(row -> row.cells().stream().filter(cell -> columns.of(cell).filter(own -> own == column)
            .isPresent()).findFirst()).flatMap(Optional::stream).toList();
        Optional<Property> property = column.role() == Role.OTHER && cells.size() == rows.size() ? taken.told(cells) : Optional.empty();
        boolean twice = property.filter(one -> columns.of(Role.PROPERTY).stream().anyMatch(other -> Columns.label(other, labels)
            .filter(label -> label.properties().contains(one)).isPresent())).isPresent();
        if (property.isEmpty() || twice) {
            return column;
        }
        Column named = new Column(column.head().named(property.get().label()), Role.PROPERTY);
        told.add(named);
        return named;
    }

    /** Columns headed "1 in.", "1-1/2 in." are of products that thick. */
    void thicknesses(Columns table) {
        List<Column> models = table.byRows() ? List.of() : table.of(Role.MODEL);
        Optional<Label> thickness = labels.component().property("thickness").map(Label::of).filter(label -> models.size() > 1
            && models.stream().allMatch(column -> TableStart.isLength(column.head().text())));
        thickness.ifPresent(label -> models.forEach(column -> taken.quietly(label, label.properties().get(0).label(), column.head(),
            new Around("", List.of(), TableStart.shortEnough(column.head().text()), Optional.empty(), THICK))));
    }
}
