package reglet.reading.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.table.Columns.Column;
import reglet.reading.table.Columns.Role;

/**
 * A cell that is ruled round several rows of a table of models, and holds for each of them.
 *
 * @param top the height of the rule above it
 * @param bottom the height of the rule below it
 * @param all whether these are all rows of the table
 */
record Spanned(Column column, Cell cell, double top, double bottom, boolean all) {
    /** Of the size of the letters: rows further apart are of another table. */
    private static final double NEAR = 4;
    private static final double EDGE = 2;

    /** @param below the rows below the heading */
    static List<Spanned> of(Columns table, List<Line> below, Layout layout) {
        List<Cell> models = models(table, below);
        List<Spanned> all = new ArrayList<>();
        if (models.size() < 2) {
            return all;
        }
        double last = models.get(models.size() - 1).y();
        List<Cell> cells = layout.lines().stream().flatMap(line -> line.cells().stream()).toList();
        for (Cell cell : cells) {
            Optional<Column> column = table.of(cell).filter(one -> one.role() != Role.MODEL);
            double[] box = column.isEmpty() || cell.y() < models.get(0).top() - NEAR * cell.size() || cell.y() > last + NEAR * cell
                .size() ? new double[0] : layout.between(cell.middle(), cell.y());
            List<Cell> within = box.length == 0 ? List.of() : models.stream().filter(model -> isWithin(model, box)).toList();
            boolean alone = box.length == 2 && cells.stream().noneMatch(other -> other != cell && isWithin(other, box) && table.of(other)
                .equals(column));
            // the models themselves stand in smaller ones
            boolean several = alone && within.size() > 1 && within.stream().allMatch(model -> {
                double[] own = layout.between(model.middle(), model.y());
                return own.length == 2 && own[1] - own[0] < box[1] - box[0] - EDGE;
            });
            if (several) {
                all.add(new Spanned(column.get(), cell, box[0], box[1], within.size() == models.size()));
            }
        }
        return all;
    }

    private static List<Cell> models(Columns table, List<Line> below) {
        List<Cell> models = new ArrayList<>();
        for (Line row : below) {
            Optional<Cell> model = row.cells().stream().filter(cell -> table.of(cell).filter(column -> column.role() == Role.MODEL)
                .isPresent()).findFirst();
            double end = models.isEmpty() ? row.y() : models.get(models.size() - 1).y();
            if (row.y() - end > NEAR * row.size()) {
                break;
            }
            // a row may hold but what is set between two others
            model.ifPresent(models::add);
        }
        return models;
    }

    private static boolean isWithin(Cell cell, double[] box) {
        return cell.y() > box[0] && cell.y() < box[1];
    }

    /** Whether the cell holds for the row of a model. */
    boolean holdsFor(Cell model) {
        return isWithin(model, new double[] {top, bottom});
    }
}
