package reglet.reading.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Quantity;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout.Line;
import reglet.reading.value.Around;
import reglet.reading.value.Bare;
import reglet.reading.value.Paired;
import reglet.reading.value.Taken;
import reglet.reading.value.Unnamed;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;
import reglet.reading.words.Plain;
import reglet.reading.words.PropertyNames;
import reglet.reading.words.Reading;
import reglet.reading.words.Reading.Read;
import reglet.reading.words.UnitSpelling;

/** Reads rows outside tables: "label: value", a label and a value beside it, or both in one run of words. */
public final class ListReader {
    private static final double IN_LIST = 0.95;
    private static final double CUT = 0.9;
    private static final double BESIDE = 0.93;
    private static final double BESIDE_REQUIRED = 0.85;
    private static final double IN_WORDS = 0.8;
    private static final int MOST_WORDS = 12;
    private static final int LONGEST_HEADING = 60;
    private static final Pattern STANDING = Pattern.compile("(?i).*\\b(?:tested|results?|determined|measured)\\b.*:\\s*");
    private static final Pattern NEXT_SENTENCE = Pattern.compile("(?<=[.;])\\s+(?=\\p{Lu})");
    /** Where a value may end and a remark begin; "or" and "and" go on with another value. */
    private static final Pattern REMARK = Pattern.compile("\\s*;\\s|\\.\\s|,\\s(?!or\\b|and\\b|\\d)|\\s(?:when|per|by|in accordance)\\s");
    /** "+5 °C to +40 °C, min. 3 °C above the dew point": what a full stop seems to end is the sense of the next amount. */
    private static final Pattern NEXT_SENSE = Pattern.compile("(?is).*[,;]\\s*(?:min|max|approx)");
    private static final Pattern AMOUNT = Pattern.compile("(?s)[^\\p{L}]*\\d.*|(?i:min|max|at least|at most|not).*\\d.*");

    private final Labels labels;
    private final Citations citations;
    private final Reading reading;
    private final Taken taken;
    /** The standards that a heading names for the rows below it. */
    private List<Citation> group = List.of();
    /** The standards by which a sentence says that all below it was measured. */
    private List<Citation> standing = List.of();
    /** What a heading names for rows of conditions: "ASTM C482 – shear bond" above "7 days" and "28 days". */
    private Optional<Label> heading = Optional.empty();

    public ListReader(Labels labels, Citations citations, Reading reading, Taken taken) {
        this.labels = labels;
        this.citations = citations;
        this.reading = reading;
        this.taken = taken;
    }

    public void page() {
        group = List.of();
        standing = List.of();
        heading = Optional.empty();
    }

    public void read(Line row) {
        List<Cell> cells = row.cells();
        if (cells.size() == 1 && STANDING.matcher(row.text()).matches()) {
            standing = citations.in(row.text());
        }
        if (cells.size() == 1) {
            // "ASTM E84 – fire" above the rows that it heads
            String rest = Citations.without(row.text(), citations.in(row.text()));
            group = rest.length() < LONGEST_HEADING && !rest.matches(".*[:\\d].*") ? citations.in(row.text()) : List.of();
        }
        boolean condition = PropertyNames.isCondition(Plain.of(cells.get(0).text()));
        if (cells.size() == 1 || !condition) {
            heading = cells.size() == 1 && row.text().length() < LONGEST_HEADING ? labels.read(row.text()) : Optional.empty();
        } else if (heading.isPresent()) {
            taken.labelled(cells.get(0));
            beside(heading.get(), cells, 0, group);
            return;
        }
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            taken.labelled(cell);
            List<Citation> cited = citations.in(row.text());
            Optional<Label> label = i + 1 < cells.size() ? labels.besideValue(cell.text(), cited.isEmpty() ? group : cited)
                : labels.read(cell.text());
            if (i + 2 == cells.size() && new SeveralNames(labels, taken).read(cell, cells.get(i + 1), citations)) {
                continue;
            }
            if (label.isPresent() && i + 1 < cells.size()) {
                beside(label.get(), cells, i, group);
            } else if (label.isEmpty()) {
                unnamed(cells, i);
                List<Cell> sentences = sentences(cell);
                for (int j = 0; j < sentences.size(); j++) {
                    boolean last = j == sentences.size() - 1;
                    if (!colon(sentences.get(j), last ? cells.subList(i + 1, cells.size()) : List.of()) && sentences.size() == 1) {
                        inWords(cell);
                    }
                }
            }
        }
    }

    private static List<Cell> sentences(Cell cell) {
        List<Cell> all = new ArrayList<>();
        Matcher next = NEXT_SENTENCE.matcher(cell.text());
        int from = 0;
        while (next.find()) {
            all.add(cell.part(from, next.start() - 1));
            from = next.end();
        }
        String rest = cell.text().substring(from).replaceAll("(?<=[)\\p{L}%\"])[.;]$", "");
        all.add(from == 0 && rest.length() == cell.text().length() ? cell : cell.part(from, from + rest.length()));
        return all;
    }

    /** "Label: value", with what stands in the cells behind it; false when it is no such thing. */
    private boolean colon(Cell cell, List<Cell> behind) {
        int colon = cell.text().indexOf(": ");
        Optional<Label> label = colon <= 0 ? Optional.empty() : labels.read(cell.text().substring(0, colon));
        if (label.isEmpty()) {
            return false;
        }
        Cell value = cell.part(colon + 1, cell.text().length());
        Cell rest = value;
        for (Cell next : behind) {
            rest = rest.with(next);
        }
        List<Citation> methods = cited(rest, cell.text(), label.get());
        String written = cell.text().substring(0, colon);
        if (!taken.quietly(label.get(), written, value, Around.of(methods, IN_LIST)) && !cut(label.get(), written, value, methods)) {
            taken.value(label.get(), written, value, Around.of(methods, IN_LIST));
        }
        return true;
    }

    /** The value without the remarks behind it, or behind the conditions in front of it: "average of five, ASTM C1670: 2,300 psi; …". */
    private boolean cut(Label label, String written, Cell value, List<Citation> methods) {
        int colon = value.text().lastIndexOf(": ");
        String before = colon < 0 ? "" : Citations.without(value.text(), citations.in(value.text())).substring(0, colon);
        int from = colon > 0 && PropertyNames.isCondition(Plain.of(before)) ? colon + 1 : 0;
        List<Integer> ends = new ArrayList<>();
        Matcher remark = REMARK.matcher(value.text());
        while (remark.find()) {
            ends.add(0, remark.start());
        }
        if (from > 0) {
            ends.add(0, value.text().length());
        }
        for (int end : ends) {
            boolean next = end + 2 < value.text().length() && Character.isDigit(value.text().charAt(end + 2))
                && NEXT_SENSE.matcher(value.text().substring(0, end)).matches();
            if (end > from && !next && taken.quietly(label, written, value.part(from, end), Around.of(methods, CUT))) {
                return true;
            }
        }
        return false;
    }

    private List<Citation> cited(Cell value, String beside, Label label) {
        List<Citation> own = citations.in(value.text(), beside);
        return own.isEmpty() ? label.methods() : own;
    }

    private void unnamed(List<Cell> cells, int index) {
        List<Citation> heading = group;
        Cell cell = cells.get(index);
        int colon = cell.text().indexOf(": ");
        if (index + 1 < cells.size()) {
            taken.unnamed(new Unnamed(taken.layout(), cell, cells.subList(index + 1, cells.size()), label -> beside(label, cells, index,
                heading)));
        } else if (colon > 0) {
            Cell value = cell.part(colon + 1, cell.text().length());
            taken.unnamed(new Unnamed(taken.layout(), cell.part(0, colon), List.of(value), label -> taken.quietly(label, cell.text()
                .substring(0, colon), value, Around.of(cited(value, cell.text(), label), IN_LIST))));
        }
    }

    private boolean beside(Label label, List<Cell> cells, int index, List<Citation> group) {
        Cell labelCell = cells.get(index);
        List<Cell> values = cells.subList(index + 1, cells.size());
        List<NamedParts.Part> parts = values.stream().map(cell -> NamedParts.of(cell, labels)).filter(found -> found.size() > 1).findFirst()
            .orElse(List.of());
        if (!parts.isEmpty()) {
            List<Citation> shown = values.stream().flatMap(cell -> citations.in(cell.text(), labelCell.text()).stream()).toList();
            parts.forEach(part -> taken.quietly(part.label(), part.written(), part.value(), Around.of(shown, BESIDE)));
            return true;
        }
        Beside beside = new Beside(label, cells, index);
        if (beside.why != null) {
            List<Citation> own = cited(beside.at, labelCell.text(), label);
            int behind = cells.indexOf(beside.at) + 1;
            // "4.4 N/mm, mortar, 0 % loss of bond | (ASTM C 794)"
            List<Citation> further = own.isEmpty() && behind > 0 && behind < cells.size() ? citations.in(cells.get(behind).text(), labelCell
                .text() + " " + cells.get(behind).text()) : own;
            List<Citation> methods = own.isEmpty() && Citations.isAlone(behind > 0 && behind < cells.size() ? cells.get(behind).text() : "",
                further) ? further : own;
            if (beside.value == null && cut(label, labelCell.text(), beside.at, methods)) {
                return true;
            }
            if (!beside.why.isEmpty()) {
                taken.unread(beside.at, labelCell, beside.why);
            }
        } else if (beside.value != null) {
            return taken.value(label, labelCell.text(), beside.value, new Around(beside.unit, !beside.methods.isEmpty() ? beside.methods
                : !label.methods().isEmpty() ? label.methods()
                : group.isEmpty() ? Citations.own(label.properties().get(0), standing) : citations.narrowed(group, labelCell.text()), "",
                Optional.empty(), beside.required ? BESIDE_REQUIRED : BESIDE));
        }
        return false;
    }

    /** Which of the cells beside a label is its value. */
    private final class Beside {
        private final List<Citation> methods = new ArrayList<>();
        private Cell value;
        private String unit;
        private Read first;
        private boolean required;
        /** Why there is no value, about the cell {@code at}; "" for a reason that nobody needs to hear. */
        private String why;
        private Cell at;

        Beside(Label label, List<Cell> cells, int index) {
            String labelText = cells.get(index).text();
            unit = label.unit();
            if (index > 0 && Citations.isAlone(cells.get(index - 1).text(), citations.in(cells.get(index - 1).text()))) {
                // "ASTM C794 | peel strength | 32 lb/in"
                methods.addAll(citations.in(cells.get(index - 1).text(), labelText));
            }
            for (int i = index + 1; i < cells.size() && why == null; i++) {
                Cell cell = cells.get(i);
                if (value == null && i + 1 < cells.size() && UnitSpelling.isUnit(cell.text())) {
                    // "peel strength | lb/in | 32"
                    unit = cell.text();
                    continue;
                }
                List<Citation> cited = citations.in(cell.text(), labelText + " " + cell.text());
                boolean another = !cited.isEmpty() && Citations.without(cell.text(), cited)
                    .matches("[^\\d]*\\p{L}{4}[^\\d]*\\(\\s*\\)\\s*");
                if (value != null && (another || labels.read(cell.text()).isPresent())) {
                    // "peel strength (ASTM C794) | 28 lb/in | elongation (ASTM D412) | 900 %"
                    break;
                }
                methods.addAll(cited);
                Optional<Read> read = label.properties().stream().map(property -> reading.read(property, Bare.of(cell, cited),
                    unit)).flatMap(Optional::stream).findFirst();
                if (read.isPresent()) {
                    next(cell, read.get());
                } else if (value == null && cited.isEmpty() && Paired.amounts(cell).size() > 1) {
                    // "Peel, glass / mortar | 29 / 21 lb/in"
                    value = cell;
                    break;
                } else if (value == null && cited.isEmpty() && !(Reading.isMissing(cell.text()) && i + 1 < cells.size())) {
                    why = Reading.isMissing(cell.text()) ? "" : "it is no value that can be understood";
                    at = cell;
                }
            }
        }

        private void next(Cell cell, Read read) {
            if (value == null) {
                value = cell;
                first = read;
            } else if (first.compare().isPresent() && read.compare().isEmpty()) {
                // a requirement, and what was measured beside it
                value = cell;
                first = read;
                required = true;
            } else if (!first.value().text().equals(read.value().text()) && !near(first, read)) {
                why = "several values stand beside it, and no heading tells which is which";
                at = cell;
            }
        }
    }

    /** The same in two systems of units. */
    private static boolean near(Read one, Read other) {
        return one.value() instanceof Quantity a && other.value() instanceof Quantity b && a.unit() != b.unit()
            && Math.abs(a.si() - b.si()) <= 0.06 * Math.max(Math.abs(a.si()), Math.abs(b.si()));
    }

    /** "Drainage efficiency 95%" in one run: an amount with its unit that fills all that follows a label. */
    private void inWords(Cell cell) {
        String[] words = cell.text().split("\\s+");
        if (words.length < 2 || words.length > MOST_WORDS) {
            return;
        }
        for (int end = cell.text().lastIndexOf(' '); end > 0; end = cell.text().lastIndexOf(' ', end - 1)) {
            Optional<Label> label = labels.read(cell.text().substring(0, end));
            if (label.isPresent()) {
                Cell value = cell.part(end + 1, cell.text().length());
                Label amounts = label.get().amounts();
                if (!amounts.properties().isEmpty() && AMOUNT.matcher(value.text()).matches()) {
                    taken.quietly(amounts, cell.text().substring(0, end), value, Around.of(cited(value, cell.text(), label.get()),
                        IN_WORDS));
                    return;
                }
            }
        }
    }
}
