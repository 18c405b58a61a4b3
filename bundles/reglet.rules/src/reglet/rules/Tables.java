package reglet.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;

import reglet.model.Day;
import reglet.model.Grade;
import reglet.model.Quantity;
import reglet.model.Table;
import reglet.model.Table.Column;
import reglet.model.Table.Match;
import reglet.model.Table.Row;
import reglet.model.Value;
import reglet.rules.Outcome.Known;

/** The pack's tables, looked up by rules. The first row that matches counts; no row is a gap and never a guess. */
final class Tables {
    private final Map<String, Table> tables = new LinkedHashMap<>();

    Tables(List<Table> all) {
        all.forEach(table -> tables.put(table.id(), table));
    }

    Outcome find(String id, List<Object> given) {
        Table table = tables.get(id);
        for (Row row : table.rows()) {
            if (matches(table.given(), row, given)) {
                return new Known(FactValues.plain(table.gives().type(), row.gives()));
            }
        }
        StringJoiner asked = new StringJoiner(", ", table.title() + " (", ")");
        for (int i = 0; i < given.size(); i++) {
            asked.add(table.given().get(i).name() + " " + FactValues.text(given.get(i)));
        }
        return Evaluator.miss(asked.toString());
    }

    private static boolean matches(List<Column> columns, Row row, List<Object> given) {
        for (int i = 0; i < columns.size(); i++) {
            Optional<Value> cell = row.given().get(i);
            if (cell.isPresent() && !matches(columns.get(i).match(), cell.get(), given.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean matches(Match match, Value cell, Object given) {
        int compared;
        if (cell instanceof Quantity limit) {
            compared = ((Quantity) given).compareWith(limit);
        } else if (cell instanceof Grade limit) {
            compared = Integer.compare(limit.scale().indexOf(FactValues.text(given)), limit.rank());
        } else if (cell instanceof Day limit) {
            compared = ((Day) given).compareTo(limit);
        } else {
            return FactValues.text(given).equals(cell.text());
        }
        return switch (match) {
            case EXACTLY -> compared == 0;
            case UP_TO -> compared <= 0;
            case FROM -> compared >= 0;
        };
    }
}
