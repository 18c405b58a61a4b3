package reglet.reading.sheet;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import reglet.model.Box;
import reglet.model.Dimension;
import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Found;
import reglet.model.UnusableInput;
import reglet.model.Value;
import reglet.model.WordSet;
import reglet.reading.sheet.DrawnSheet.Truth;
import reglet.reading.sheet.SheetFixtures.Fixture;

/** Judges what was read of a sheet by what stands on it. */
final class SheetJudge {
    /** Width of a figure, in points. */
    private static final double FIGURE = 4;

    private SheetJudge() {
    }

    /** Reads and judges all sheets of a set, and prints the totals. */
    static Score score(String set, List<Fixture> sheets) {
        Score total = sheets.parallelStream().map(fixture -> judge(fixture, SheetFixtures.read(fixture))).reduce(new Score(0, 0, 0, 0, 0,
            List.of()), Score::plus);
        System.out.printf("%s: %d of %d values found, %d of %d shown are right, %d wrong ones are shown as sure%n", set, total.found(),
            total.truths(), total.right(), total.shown(), total.sure());
        return total;
    }

    /**
     * How a sheet was read.
     *
     * @param shown  values shown, and of those that stand beside them the ones that the truths name
     * @param truths values on the sheet
     * @param found  of these, how many are shown at all
     * @param right  how many of the shown ones are right in value, sense, method, edition, model, page and place
     * @param sure   wrong ones shown with a confidence of nine tenths and more
     * @param faults what is wrong or lacking, in words
     */
    record Score(int shown, int truths, int found, int right, int sure, List<String> faults) {
        Score plus(Score other) {
            List<String> all = new ArrayList<>(faults);
            all.addAll(other.faults);
            return new Score(shown + other.shown, truths + other.truths, found + other.found, right + other.right, sure + other.sure, all);
        }

        double share() {
            return (double) found / truths;
        }

        double correctness() {
            return (double) right / shown;
        }
    }

    static Score judge(Fixture fixture, SheetReading reading) {
        List<String> faults = new ArrayList<>();
        List<String> fitting = List.of(fixture.component().split(" "));
        if (!fitting.contains(reading.component())) {
            faults.add(fixture.name() + ": taken for " + reading.components());
        }
        int found = 0;
        int right = 0;
        int sure = 0;
        int repeated = 0;
        List<Found> used = new ArrayList<>();
        for (Truth truth : fixture.truths().stream().filter(truth -> !isOptional(truth)).toList()) {
            List<Found> stated = reading.values().stream().filter(value -> property(value, reading, fitting).equals(truth.property())
                && value.model().equals(truth.more("model"))).toList();
            // what stands beside the value shown counts when it is right; a person sees both
            List<Found> beside = stated.stream().flatMap(value -> value.also().stream()).filter(value -> wrong(truth, value).isEmpty())
                .toList();
            List<Found> shown = Stream.concat(stated.stream().filter(value -> beside.isEmpty() || wrong(truth, value).isEmpty()),
                beside.stream()).filter(value -> used.stream().noneMatch(other -> other == value)).toList();
            // what is said of each model is said of all
            List<Found> each = !shown.isEmpty() || !truth.more("model").isEmpty() ? List.of() : reading.values().stream().filter(value ->
                property(value, reading, fitting).equals(truth.property()) && !value.model().isEmpty()).toList();
            if (each.size() > 1 && each.stream().allMatch(value -> wrong(truth, value).isEmpty())) {
                found++;
                right++;
                repeated += each.size() - 1;
                used.addAll(each);
                continue;
            }
            if (shown.isEmpty()) {
                faults.add(fixture.name() + ": " + truth.property() + " " + truth.more("model") + " not found");
                continue;
            }
            // what another truth of the same property says right isn't this one said wrong
            boolean another = fixture.truths().stream().anyMatch(other -> other != truth && other.property().equals(truth.property())
                && other.more("model").equals(truth.more("model")) && wrong(other, shown.get(0)).isEmpty());
            if (another && !wrong(truth, shown.get(0)).isEmpty()) {
                faults.add(fixture.name() + ": " + truth.property() + " " + truth.more("model") + " not found");
                continue;
            }
            found++;
            Found one = shown.get(0);
            used.add(one);
            String wrong = wrong(truth, one);
            if (wrong.isEmpty()) {
                right++;
            } else {
                sure += one.confidence() >= 0.9 ? 1 : 0;
                faults.add(fixture.name() + ": " + truth.property() + " " + truth.more("model") + " " + wrong + " (" + one.confidence()
                    + ")");
            }
        }
        int passing = 0;
        for (Found one : reading.values()) {
            String property = property(one, reading, fitting);
            boolean optional = fixture.truths().stream().anyMatch(truth -> isOptional(truth) && same(truth.value(), one.value().value())
                && truth.property().equals(property));
            boolean counted = used.stream().anyMatch(other -> other == one);
            // it stands on the sheet, and the reading itself says that nobody asks for it
            boolean unasked = one.doubt().equals(Fitting.UNASKED) && fixture.truths().stream().noneMatch(truth -> truth.property().equals(
                property));
            boolean also = Stream.of(property, one.value().property()).anyMatch(path -> fixture.also().contains(path + "; " + one.value()
                .value().text()));
            if (!counted && (optional || unasked || also)) {
                passing++;
            } else if (used.stream().noneMatch(other -> other == one)) {
                sure += one.confidence() >= 0.9 ? 1 : 0;
                faults.add(fixture.name() + ": " + one.value().property() + " " + one.model() + " = " + one.value().value().text()
                    + " isn't on the sheet (" + one.confidence() + ")");
            }
        }
        int beside = (int) used.stream().filter(one -> reading.values().stream().noneMatch(other -> other == one)).count();
        return new Score(reading.values().size() - passing - repeated + beside, (int) fixture.truths().stream()
            .filter(truth -> !isOptional(truth)).count(), found, right, sure, faults);
    }

    /** The property of a value, as that of the first of the components that the sheet may be taken for. */
    private static String property(Found value, SheetReading reading, List<String> fitting) {
        return fitting.contains(reading.component()) ? value.value().property().replace(reading.component() + ".", fitting.get(0) + ".")
            : value.value().property();
    }

    /** Whether a reader may tell it or not. */
    private static boolean isOptional(Truth truth) {
        return truth.more("optional").equals("yes");
    }

    private static String wrong(Truth truth, Found found) {
        if (!same(truth.value(), found.value().value()) && (truth.more("alt").isEmpty() || !same(truth.more("alt"), found.value()
            .value()))) {
            return "is " + found.value().value().text() + ", not " + truth.value();
        }
        String compare = found.value().compare().map(sense -> sense.text()).orElse("");
        // what may stand so long at most stands so long: the sense of such a time says nothing
        boolean endured = found.value().value() instanceof Quantity time && time.dimension() == Dimension.TIME && compare.isEmpty()
            && truth.more("compare").equals("at most");
        // a limit of use is the number itself: "40 °F", "40 °F and above"
        if (!endured && !isLimit(truth.property()) && !compare.equals(truth.more("compare"))) {
            return "has the sense \"" + compare + "\", not \"" + truth.more("compare") + "\"";
        }
        boolean either = found.value().method().isEmpty() && !truth.more("conforms").isEmpty();
        if (!either && !found.value().method().equals(truth.more("method") + truth.more("conforms")) || !truth.more("edition").equals("any")
            && !found.value().edition().equals(truth.more("edition"))) {
            return "is shown by " + found.value().method() + " " + found.value().edition() + ", not " + truth.more("method") + " "
                + truth.more("edition");
        }
        Box box = found.value().box().orElseThrow();
        double x = box.x() + box.width() / 2;
        double y = box.y() + box.height() / 2;
        Box place = truth.more("at").equals("any") ? null : truth.box();
        boolean around = place != null && box.height() < 3 * place.height()
            && new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height())
            .contains(place.x() + place.width() / 2, place.y() + place.height() / 2);
        boolean outside = place != null && !around && !shares(box, place) && (x < place.x() - 1 || x > place.x() + place.width() + 1 || y < place.y() - 2
            || y > place.y() + place.height() + 2);
        if (found.value().page() != truth.page() || outside) {
            return "stands at " + place + ", not at " + box;
        }
        return "";
    }

    private static boolean isLimit(String property) {
        try {
            return SheetFixtures.pack().property(property).filter(Property::limit).isPresent();
        } catch (IOException | UnusableInput broken) {
            throw new IllegalStateException(broken);
        }
    }

    /** Whether two places are on one line and share a figure: "no more than 7 in." and "7 in. on center". */
    private static boolean shares(Box one, Box other) {
        double width = Math.min(one.x() + one.width(), other.x() + other.width()) - Math.max(one.x(), other.x());
        double height = Math.min(one.y() + one.height(), other.y() + other.height()) - Math.max(one.y(), other.y());
        return width > FIGURE && height > Math.min(one.height(), other.height()) / 2;
    }

    private static boolean same(String truth, Value value) {
        if (value instanceof Quantity quantity) {
            return Quantity.parse(truth).filter(right -> right.dimension() == quantity.dimension()
                && Math.abs(right.si() - quantity.si()) <= 1e-9 * Math.abs(right.si())).isPresent();
        }
        if (value instanceof Range range) {
            String[] ends = truth.split(" to ");
            String unit = ends.length < 2 ? "" : ends[1].replaceAll("^[-\\d./ ]+", "");
            return ends.length == 2 && same(ends[1], range.high())
                && same(Quantity.parse(ends[0]).filter(low -> low.unit() != reglet.model.Unit.ONE).isPresent() ? ends[0] : ends[0] + " "
                    + unit,
                    range.low());
        }
        if (value instanceof WordSet set) {
            // "2024, 2021 and 2018" are the same editions in whatever order
            return Set.copyOf(set.words()).equals(Set.of(truth.split(", ")));
        }
        return truth.equals(value.text());
    }
}
