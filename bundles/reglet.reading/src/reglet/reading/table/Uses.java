package reglet.reading.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import reglet.model.Component;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
import reglet.reading.table.Columns.Column;
import reglet.reading.table.Columns.Role;
import reglet.reading.words.Naming;
import reglet.reading.words.Plain;

/** Tables of a product with several uses, each in a column of its own: "Scratch coat | Setting bed | Pointing". */
record Uses(Naming naming, Component component) {
    /** The columns below a row that names several components alone, where the rows below it begin with one cell more. */
    Optional<Columns> heading(List<Line> rows, int index) {
        Line row = rows.get(index);
        Optional<Line> next = rows.stream().skip(index + 1L).findFirst();
        boolean heads = areSeveral(row.cells()) && next.filter(line -> line.cells().size() == row.cells().size() + 1
            && line.cells().get(0).right() < row.left()).isPresent();
        if (!heads) {
            return Optional.empty();
        }
        List<Column> columns = new ArrayList<>(List.of(new Column(next.get().cells().get(0).named(""), Role.LABEL)));
        row.cells().forEach(cell -> columns.add(new Column(cell, role(cell))));
        return Optional.of(Columns.of(columns));
    }

    /** The same columns, of which those of the component alone hold values where they are of several. */
    Columns own(Columns columns) {
        return !areSeveral(columns.of(Role.MODEL).stream().map(Column::head).toList()) ? columns : Columns.of(columns.all().stream()
            .map(column -> column.role() == Role.MODEL ? new Column(column.head(), role(column.head())) : column).toList());
    }

    private Role role(Cell head) {
        return naming.named(Plain.of(head.text())).contains(component) ? Role.VALUE : Role.OTHER;
    }

    /** Whether each heading is a name of a component, and not all of the same. */
    private boolean areSeveral(List<Cell> heads) {
        List<Set<Component>> named = heads.stream().map(head -> naming.named(Plain.of(head.text()))).toList();
        return named.size() > 1 && named.stream().noneMatch(Set::isEmpty) && named.stream().distinct().count() > 1;
    }
}
