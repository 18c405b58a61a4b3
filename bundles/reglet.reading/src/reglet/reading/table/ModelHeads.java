package reglet.reading.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
import reglet.reading.table.Columns.Column;
import reglet.reading.table.Columns.Role;
import reglet.reading.words.Labels;

/** Headings that are names of models alone, without a word that heads the labels below. */
final class ModelHeads {
    /** Rows below names of models among which one has to be told by its label. */
    private static final int UNNAMED = 4;
    private static final Pattern STANDARD = Pattern.compile("(?:ASTM|ANSI|AAMA|AATCC|ISO|EN)\\s?-?[A-Z]?\\s?-?\\d+");

    private ModelHeads() {
    }

    /** Columns of models above rows whose labels have no heading: "| RN-1 | RN-2" above "Length | 1 in | 2 in". */
    static Optional<Columns> of(List<Line> rows, int index, Labels labels) {
        Line line = rows.get(index);
        // "ASTM E2925" may head the first rows; what is the same for all models may stand once, across their columns
        int first = index + 2 < rows.size() && isGroup(rows.get(index + 1), line) ? index + 2 : index + 1;
        // below designations much may be told that nobody asks for
        int most = line.cells().stream().allMatch(cell -> Columns.MODEL_NO.matcher(cell.text()).matches()) ? 3 * UNNAMED : UNNAMED;
        if (line.cells().stream().anyMatch(cell -> cell.text().startsWith("("))) {
            // "(Type I) | (Type II)" says more of the row above
            return Optional.empty();
        }
        List<Line> next = rows.subList(first, Math.min(rows.size(), first + most)).stream().takeWhile(row -> row.cells()
            .size() > 1 && row.cells().size() <= line.cells().size() + 1 && row.y() > line.y()).toList();
        List<Line> below = next.stream().filter(row -> row.cells().size() == line.cells().size() + 1).toList();
        if (below.isEmpty() || !below.contains(next.get(0)) && next.get(0).cells().size() > 2) {
            return named(line, next, labels);
        }
        List<Cell> cells = below.get(0).cells();
        boolean heads = line.cells().size() >= 2 && cells.get(0).right() < line.left()
            && next.get(0).y() - line.y() < (first > index + 1 ? 6 : 4) * line.size()
            && below.stream().anyMatch(row -> labels.read(row.cells().get(0).text()).isPresent())
            && line.cells().stream().allMatch(cell -> cell.text().length() <= Columns.LONGEST && labels.read(cell.text()).isEmpty()
                && !HeadWords.AMOUNT.matcher(cell.text()).matches());
        if (!heads) {
            return named(line, next, labels);
        }
        List<Column> columns = new ArrayList<>(List.of(new Column(cells.get(0).named(""), Role.LABEL)));
        for (Cell cell : line.cells()) {
            Role role = HeadWords.role(HeadWords.plain(cell), true, true, false);
            columns.add(new Column(cell, role == Role.OTHER || role == Role.LABEL ? Role.MODEL : role));
        }
        return Optional.of(Columns.of(Columns.models(columns)));
    }

    /** Whether a row is a short line before the columns of a heading, which heads the rows below it. */
    private static boolean isGroup(Line row, Line heading) {
        return row.cells().size() == 1 && row.y() > heading.y() && row.text().length() <= Columns.LONGEST && row.cells().get(0)
            .right() < heading.left();
    }

    /**
     * Columns of models beside a word for the product, or for the methods: "Board | CB-15 | CB-20" above "Thickness | ASTM C167 | 1.5 | 2",
     * "Standard | CB-15 | CB-20" above "ASTM C167 | Thickness | 1.5 | 2".
     */
    private static Optional<Columns> named(Line line, List<Line> next, Labels labels) {
        int size = line.cells().size();
        boolean beside = !next.isEmpty() && next.get(0).cells().size() == size + 1;
        boolean methods = beside && HeadWords.METHOD.matcher(HeadWords.plain(line.cells().get(0))).matches();
        int label = methods ? 1 : 0;
        List<Line> rows = next.stream().filter(row -> row.cells().size() == (beside ? size + 1 : size)).toList();
        boolean models = size > 2 && line.cells().stream().allMatch(cell -> cell.text().length() <= Columns.LONGEST && labels.read(cell
            .text()).isEmpty()) && line.cells().stream().skip(1).allMatch(cell -> Columns.MODEL_NO.matcher(cell.text()).matches());
        boolean labelled = models && rows.size() > 1 && next.get(0).y() - line.y() < 4 * line.size()
            && rows.stream().allMatch(row -> row.cells().get(label).left() < line.cells().get(1).left()
                && row.cells().get(label).text().matches("(?s)\\p{Lu}.*"))
            && rows.stream().filter(row -> labels.read(row.cells().get(label).text()).isPresent()).count() > 1;
        boolean cited = !beside || methods || rows.stream().allMatch(row -> STANDARD.matcher(row.cells().get(1).text()).find());
        if (!labelled || !cited) {
            return Optional.empty();
        }
        List<Column> columns = new ArrayList<>(List.of(new Column(line.cells().get(0), methods ? Role.METHOD : Role.LABEL)));
        if (methods) {
            columns.add(new Column(rows.get(0).cells().get(1).named(""), Role.LABEL));
        } else if (beside) {
            columns.add(new Column(rows.get(0).cells().get(1).named(""), Role.METHOD));
        }
        line.cells().stream().skip(1).forEach(cell -> columns.add(new Column(cell, Role.MODEL)));
        return Optional.of(Columns.of(columns));
    }
}
