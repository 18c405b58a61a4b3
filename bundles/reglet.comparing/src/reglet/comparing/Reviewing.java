package reglet.comparing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import reglet.model.Assembly;
import reglet.model.Candidates;
import reglet.model.Comparison;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.ProductData;
import reglet.model.Requirement;
import reglet.model.Resubmittal;
import reglet.model.Resubmittal.Change;
import reglet.model.Resubmittal.Kind;

/** Comparisons beside each other: of several candidates, and of a resubmittal with the last. */
public final class Reviewing {

    private Reviewing() {
    }

    /** Each product against what every wall type asks of its component, whatever the others are. */
    public static Candidates candidates(Assembly assembly, List<ProductData> products, Function<Requirement, String> paragraphOf) {
        Map<String, Map<String, Row>> lines = new LinkedHashMap<>();
        for (ProductData product : products) {
            for (Row row : Comparing.everywhere(assembly, product, paragraphOf)) {
                lines.computeIfAbsent(row.requirement().wall() + "\n" + row.requirement().path(), key -> new LinkedHashMap<>())
                    .put(product.id(), row);
            }
        }
        List<Candidates.Line> all = new ArrayList<>();
        // a property that only a later product's option asks for still stands with its wall
        assembly.job().walls().forEach(wall -> lines.forEach((key, rows) -> {
            String[] names = key.split("\n");
            if (names[0].equals(wall.id())) {
                all.add(new Candidates.Line(names[0], names[1], rows));
            }
        }));
        return new Candidates(products.stream().map(ProductData::id).toList(), all);
    }

    /** What became of each requirement that either comparison has a row for. */
    public static Resubmittal since(Comparison last, Comparison now) {
        Map<String, Row> before = rows(last);
        Map<String, Row> after = rows(now);
        List<Change> changes = new ArrayList<>();
        after.forEach((key, row) -> changes.add(change(Optional.ofNullable(before.get(key)), Optional.of(row))));
        before.forEach((key, row) -> {
            if (!after.containsKey(key)) {
                changes.add(change(Optional.of(row), Optional.empty()));
            }
        });
        return new Resubmittal(last.submittal(), now.submittal(), changes);
    }

    /** The rows by wall and property; of several products for one place each has a number. */
    private static Map<String, Row> rows(Comparison comparison) {
        Map<String, Row> rows = new LinkedHashMap<>();
        for (Row row : comparison.rows()) {
            String key = row.requirement().wall() + "\n" + row.requirement().path();
            int number = 1;
            while (rows.containsKey(key + "\n" + number)) {
                number++;
            }
            rows.put(key + "\n" + number, row);
        }
        return rows;
    }

    private static Change change(Optional<Row> before, Optional<Row> after) {
        Row either = after.or(() -> before).orElseThrow();
        return new Change(either.requirement().wall(), either.requirement().path(), kind(before, after), before, after);
    }

    private static Kind kind(Optional<Row> before, Optional<Row> after) {
        if (before.isEmpty()) {
            return Kind.ADDED;
        }
        if (after.isEmpty()) {
            return Kind.DROPPED;
        }
        boolean met = before.get().result() == Result.MEETS;
        boolean meets = after.get().result() == Result.MEETS;
        if (met && meets) {
            boolean same = before.get().submitted().map(value -> value.value().text()).equals(after.get().submitted()
                .map(value -> value.value().text()));
            return same ? Kind.SAME : Kind.CHANGED;
        }
        return met ? Kind.LOST : meets ? Kind.MENDED : Kind.STILL_OPEN;
    }
}
