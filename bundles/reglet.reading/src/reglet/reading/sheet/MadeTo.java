package reglet.reading.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import reglet.model.Box;
import reglet.model.Method;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.model.SheetReading.Found;
import reglet.model.SheetValue;
import reglet.model.Word;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.page.Sentence;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;
import reglet.reading.words.Reading;

/**
 * The standard that a product is made to, which a sheet names in a row, a column or a sentence of its own and not beside what it tells:
 * "Material standard | ASTM C1861". It is what shows the word that the pack asks it for: the material, the kind.
 */
final class MadeTo {
    private static final Pattern HEAD = Pattern.compile("(?i)\\W*(?:(?:\\w+ )?(?:standards?|specifications?|spec\\.?|norm)"
        + "|(?:made|manufactured"
        + "|conforms?|complies) (?:to|with)|compliance|conformance|conformity)(?: (?:met|no\\.?))?\\W*");
    private static final Pattern SAID = Pattern.compile("(?is).*\\b(?:made|manufactured|produced|formed|rolled|conform(?:s|ing)?|compl(?:y"
        + "|ies|ying)|meets?|meeting)\\b(?!.*\\bdimensions? of\\b)[^.;]{0,60}");
    /** Points that places of the same words differ by at most. */
    private static final double NEAR = 2;
    /** How far a column runs from a cell at most, up and down, in heights of the text. */
    private static final double TALL = 40;

    private final List<Layout> layouts;
    private final Citations citations;

    MadeTo(List<Layout> layouts, Citations citations) {
        this.layouts = layouts;
        this.citations = citations;
    }

    /** What was found, each word with the standard that the pack asks for it where the sheet says that the product is made to it. */
    List<Found> show(List<Found> found, Pack pack) {
        return found.stream().map(one -> one.value().value() instanceof Word && one.value().method().isEmpty() ? pack.property(one.value()
            .property()).filter(property -> property.type().kind() == Kind.WORD).map(Property::method).filter(asked -> !asked
                .isNone() && !isByAnother(one.value(), asked)).flatMap(this::cited).map(cited -> by(one, cited))
            .orElse(one) : one).toList();
    }

    private static Found by(Found one, Citation cited) {
        SheetValue value = one.value();
        return one.with(new SheetValue(value.property(), value.value(), value.compare(), cited.name(), cited.edition(), value.text(), value
            .page(), value.box(), value.confirmed()));
    }

    /** "Galvanized steel, ASTM A653" says by what its steel is made, whatever the whole is made to. */
    private boolean isByAnother(SheetValue value, Method asked) {
        List<Citation> beside = value.box().stream().flatMap(box -> layouts.stream().filter(layout -> layout.page() == value.page())
            .flatMap(layout -> layout.sentences().stream().map(Sentence::cell).filter(cell -> holds(layout, cell, value, box))))
            .flatMap(cell -> citations.in(cell.text()).stream()).toList();
        return !beside.isEmpty() && beside.stream().noneMatch(one -> one.name().startsWith(asked.standard()));
    }

    private static boolean holds(Layout layout, Cell sentence, SheetValue value, Box box) {
        for (int at = sentence.text().indexOf(value.text()); at >= 0 && !value.text().isEmpty(); at = sentence.text().indexOf(value.text(),
            at + 1)) {
            Box place = layout.shown(sentence.part(at, at + value.text().length()));
            if (Math.abs(place.y() - box.y()) < NEAR && Math.abs(place.x() - box.x()) < NEAR) {
                return true;
            }
        }
        return false;
    }

    private Optional<Citation> cited(Method asked) {
        return layouts.stream().flatMap(layout -> layout.lines().stream().flatMap(line -> alone(layout, line, asked).stream())).findFirst()
            .or(() -> layouts.stream().flatMap(layout -> layout.sentences().stream()).flatMap(sentence -> said(
                sentence.cell().text(), asked).stream()).findFirst());
    }

    /** The standard where it stands alone in each cell of a row or a column that says so; none where others stand there too. */
    private Optional<Citation> alone(Layout layout, Line line, Method asked) {
        List<Citation> all = new ArrayList<>();
        boolean named = HEAD.matcher(line.cells().get(0).text()).matches();
        for (int i = named ? 1 : 0; i < line.cells().size(); i++) {
            Cell cell = line.cells().get(i);
            List<Citation> in = citations.in(cell.text());
            boolean whole = in.size() == 1 && cell.text().length() - (in.get(0).to() - in.get(0).from()) < 2;
            if (whole && (named || isHeaded(layout, cell))) {
                all.add(in.get(0));
            } else if (named && !Reading.isMissing(cell.text())) {
                return Optional.empty();
            }
        }
        return all.isEmpty() || !all.stream().allMatch(one -> one.name().equals(asked.standard())) ? Optional.empty() : Optional.of(all
            .get(0));
    }

    /** Whether a cell stands in a column below such a heading, in which no other standard stands: else it is open which is whose. */
    private boolean isHeaded(Layout layout, Cell cell) {
        List<Cell> column = layout.lines().stream().flatMap(line -> line.cells().stream()).filter(other -> Math.abs(other.y() - cell.y())
            < TALL * cell.size() && other.left() < cell.right() && other.right() > cell.left()).toList();
        Optional<Cell> head = column.stream().filter(other -> other.y() < cell.y() && HEAD.matcher(other.text()).matches()).reduce((one,
            last) -> last);
        String own = citations.in(cell.text()).get(0).name();
        return head.isPresent() && column.stream().filter(other -> other.y() > head.get().y()).flatMap(other -> citations.in(other.text())
            .stream()).allMatch(one -> one.name().equals(own));
    }

    /** "All numbers are made to ASTM C1861." */
    private Optional<Citation> said(String sentence, Method asked) {
        List<Citation> all = citations.in(sentence);
        // "Metal models comply with ASTM C1861, model P with ASTM D1784" leaves open which is made to which
        return all.stream().filter(one -> all.stream().allMatch(other -> other.name().equals(asked.standard()))
            && SAID.matcher(sentence.substring(0, one.from())).matches()).findFirst();
    }
}
