package reglet.reading.table;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
import reglet.reading.table.Columns.Column;
import reglet.reading.table.Columns.Role;
import reglet.reading.value.Around;
import reglet.reading.value.Taken;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;

/**
 * A row of a table whose label is no name of one property: it names several, or the row's standard or the value itself tells which it is.
 */
record Unlabelled(Columns table, Labels labels, Citations citations, Taken taken, Map<Column, Cell> cells, Cell labelCell) {
    private static final double SURE = 0.98;

    /** "Water-resistive barrier | ASTM E2556 | Type II": the only property that the row's standard classifies by. */
    boolean classed() {
        Optional<Cell> value = first(Role.VALUE);
        Optional<Cell> method = first(Role.METHOD);
        if (value.isEmpty() || method.isEmpty() || !value.get().text().matches("(?i)(?:type|class|grade|level) \\w{1,3}")) {
            return false;
        }
        List<Citation> cited = citations.in(method.get().text());
        Optional<Label> label = cited.size() == 1 ? labels.classified(cited.get(0).name(), cited) : Optional.empty();
        return label.isPresent() && taken.quietly(label.get(), labelCell.text(), value.get(), new Around("", cited, "", Optional.empty(),
            SURE));
    }

    /** "Surface burning | Smoke developed = 5": the value, or each of its parts, names what it is of. */
    boolean named(Line row, RowMethods methods) {
        List<Cell> ofModels = table.of(Role.MODEL).stream().map(cells::get).filter(cell -> cell != null && cell != labelCell).toList();
        // or one value for all models
        Optional<Cell> value = first(Role.VALUE).or(() -> ofModels.size() == 1 ? Optional.of(ofModels.get(0)) : Optional.empty());
        boolean any = false;
        for (NamedParts.Part part : value.map(cell -> NamedParts.of(cell, labels)).orElse(List.of())) {
            any |= taken.quietly(part.label(), part.written(), part.value(), Around.of(methods.of(row, cells, labelCell, value.get(), part
                .label()), SURE));
        }
        return any;
    }

    /** "Type / Grade | S / NS", "Type, grade | Type S, Grade NS": as many values as names. */
    boolean pairs(Line row, RowMethods methods) {
        String between = labelCell.text().contains("/") ? "\\s*/\\s*" : ",\\s*";
        String[] names = labelCell.text().split(between);
        Optional<Cell> value = first(Role.VALUE);
        String[] values = value.map(cell -> cell.text().split(between)).orElse(new String[0]);
        if (names.length < 2 || values.length != names.length || Stream.of(names).anyMatch(name -> labels.read(name).isEmpty())) {
            return false;
        }
        for (int i = 0; i < names.length; i++) {
            Label label = labels.read(names[i]).orElseThrow();
            taken.quietly(label, names[i], value.get().named(values[i]), Around.of(methods.of(row, cells, labelCell, value.get(), label),
                SURE));
        }
        return true;
    }

    private Optional<Cell> first(Role role) {
        return table.of(role).stream().map(cells::get).filter(cell -> cell != null).findFirst();
    }
}
