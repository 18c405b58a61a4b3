package reglet.reading.table;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
import reglet.reading.page.Sentence;
import reglet.reading.table.Columns.Column;
import reglet.reading.table.Columns.Role;
import reglet.reading.text.Mentions;
import reglet.reading.value.Around;
import reglet.reading.value.Taken;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Reading;

/** What stands beside a label in a row below a heading, of one product or of several. */
record RowValues(Columns table, RowMethods methods, Citations citations, Taken taken, Mentions mentions, Line row,
        Map<Column, Cell> cells, Cell labelCell) {
    private static final double SURE = 0.98;
    private static final double ASKED = 0.75;
    private static final Pattern WORDS = Pattern.compile("(?<![\\p{L}-])\\p{Ll}{4,} \\p{Ll}{3,}");

    /** The cells that hold values. */
    List<Cell> values() {
        return valued().stream().map(cells::get).filter(cell -> cell != null).toList();
    }

    private List<Column> valued() {
        return table.of(Role.VALUE).isEmpty() ? table.of(Role.MODEL) : table.of(Role.VALUE);
    }

    /** Takes the values down as those of what a label names; false where there is none. */
    boolean take(Label named) {
        Label label = result(named);
        List<Column> valued = valued();
        List<Column> models = table.of(Role.VALUE).isEmpty() ? table.of(Role.MODEL) : List.of();
        boolean any = false;
        List<Column> stated = valued.stream().filter(cells::containsKey).toList();
        Across across = Across.of(cells, stated, models, methods.layout());
        if (across == Across.UNKNOWN) {
            taken.unread(cells.get(stated.get(0)), labelCell, "which of the models it is of can't be told");
            return true;
        }
        Meant meant = new Meant(table, cells);
        String asked = label.properties().get(0).type().unit().map(unit -> unit.symbol()).orElse("");
        if (models.isEmpty() && !asked.isEmpty() && stated.stream().map(meant::unit).distinct().count() > 1) {
            // of a result in two systems of units the one in the pack's, which isn't rounded
            stated = stated.stream().sorted(Comparator.comparing(column -> !meant.unit(column).equals(asked))).toList();
        }
        if (stated.isEmpty() || stated.stream().allMatch(column -> Reading.isMissing(cells.get(column).text()))) {
            if (stated.size() == 1 && taken.untested(label, labelCell.text(), cells.get(stated.get(0)), methods.of(row, cells,
                labelCell, cells.get(stated.get(0)), label))) {
                return true;
            }
            return asked(label, meant) || !stated.isEmpty();
        }
        for (Column column : stated) {
            Cell value = cells.get(column);
            List<Citation> shown = citations.narrowed(methods.of(row, cells, labelCell, value, label), column.head().text() + " "
                + labelCell.text());
            Optional<Cell> met = table.of(Role.REQUIRED).stream().map(cells::get).filter(cell -> cell != null).findFirst()
                .filter(required -> Met.isMet(label.properties().get(0), required, value));
            String model = models.size() > 1 && across.isOfOne() || models.size() == 1 ? column.model() : ofRow();
            String written = labelCell.text() + (Columns.isOfCondition(column) ? ", " + column.head().text() : "");
            Around around = new Around(meant.unit(column), shown, TableStart.shortEnough(model), meant.sense(column),
                SURE * across.share());
            if (met.isPresent()) {
                taken.said(label.properties().get(0), "yes", value, around);
            }
            boolean read = met.isPresent() || isSaid(label, written, around, value) || taken.value(label, written, value, around);
            any |= read;
            if (read && models.isEmpty() && !stated.stream().allMatch(Columns::isOfCondition)) {
                // further columns say the same in another system of units
                break;
            }
        }
        return any || !stated.isEmpty();
    }

    /**
     * "Embedment | 3/4 in. into the stud | 3/8 in. past steel": of each model in words which property it is of, or an amount among others.
     */
    private boolean isSaid(Label label, String written, Around around, Cell value) {
        boolean plain = around.model().isEmpty() || label.properties().stream().anyMatch(property -> taken.isValue(property, value.text()));
        boolean said = !plain && WORDS.matcher(value.text()).find() && mentions.of(around.model(), label.sense().or(around::sense),
            Sentence.of(value));
        return said || !plain && taken.within(label, written, value, around);
    }

    /** "Thickness, greatest | ≤ 2-5/8 in. | 48 mm": beside what is asked for a result is what was found, not a limit. */
    private Label result(Label label) {
        boolean required = label.sense().isPresent() && !table.of(Role.VALUE).isEmpty() && table.of(Role.REQUIRED).stream().map(cells::get)
            .anyMatch(cell -> cell != null && HeadWords.LIMIT.matcher(cell.text()).matches());
        return !required ? label : new Label(label.properties(), label.quality(), label.unit(), Optional.empty(), label.methods());
    }

    /** The model that a row of one value is of: "1.37 mm | wire diameter | KW-17". */
    private String ofRow() {
        return table.of(Role.VALUE).isEmpty() ? "" : table.of(Role.MODEL).stream().limit(1).map(cells::get).filter(cell -> cell != null)
            .map(cell -> TableStart.shortEnough(cell.text())).findFirst().orElse("");
    }

    /** What the maker asks for where nothing is tested, such as a film's thickness, may stand as a requirement alone. */
    private boolean asked(Label label, Meant meant) {
        Optional<Column> asked = table.of(Role.REQUIRED).stream().filter(cells::containsKey).findFirst();
        boolean tested = label.properties().stream().anyMatch(property -> !property.method().isNone());
        return asked.isPresent() && !tested && taken.quietly(label, labelCell.text(), cells.get(asked.get()), new Around(meant.unit(asked
            .get()), List.of(), "", meant.sense(asked.get()), ASKED));
    }
}
