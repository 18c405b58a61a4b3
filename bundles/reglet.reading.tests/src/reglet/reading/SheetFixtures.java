package reglet.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

import reglet.model.Box;
import reglet.model.Pack;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Found;
import reglet.model.UnusableInput;
import reglet.model.Value;
import reglet.reading.DrawnSheet.Truth;
import reglet.store.Packs;

/**
 * The invented sheets that reading is judged on, and the judging. Most are drawn from descriptions ({@link DrawnSheet}); those with an
 * HTML page beside them were laid out and exported by a word processor (LibreOffice 7.4, by way of ODT), and what stands on them is
 * told in a file of truths.
 */
final class SheetFixtures {
    private static final Path ROOT = Path.of(System.getProperty("reglet.root", "../..")).toAbsolutePath().normalize();
    private static final Path SHEETS = ROOT.resolve("bundles/reglet.reading.tests/src/reglet/reading/sheets");
    private static Pack pack;
    private static List<Fixture> drawn;

    private SheetFixtures() {
    }

    static Fixture named(String name) throws IOException {
        return all().stream().filter(fixture -> fixture.name().equals(name)).findFirst().orElseThrow();
    }

    static synchronized Pack pack() throws UnusableInput, IOException {
        if (pack == null) {
            pack = Packs.read(ROOT.resolve("bundles/reglet.pack.adheredveneer/pack")).pack();
        }
        return pack;
    }

    /**
     * A sheet with what stands on it; boxes are known of drawn ones alone. Some fit several components, which are listed with blanks
     * between them; the values are named as those of the first.
     */
    record Fixture(String name, String component, byte[] pdf, List<Truth> truths) {
    }

    static synchronized List<Fixture> all() throws IOException {
        if (drawn == null) {
            drawn = draw();
        }
        return drawn;
    }

    private static List<Fixture> draw() throws IOException {
        List<Fixture> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(SHEETS)) {
            for (Path file : files.filter(path -> path.toString().matches(".*\\.(sheet|truth)")).sorted().toList()) {
                all.add(fixture(file));
            }
        }
        return all;
    }

    private static Fixture fixture(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        String name = file.getFileName().toString().replaceAll("\\.\\w+$", "");
        String component = lines.stream().filter(line -> line.startsWith("component ")).findFirst().orElseThrow().substring(10).strip();
        if (file.toString().endsWith(".sheet")) {
            DrawnSheet.Drawn drawn = DrawnSheet.draw(lines);
            return new Fixture(name, component, drawn.pdf(), drawn.truths());
        }
        List<Truth> truths = lines.stream().filter(line -> line.contains(";")).map(line -> Truth.parse(line, 1, null)).toList();
        return new Fixture(name, component, Files.readAllBytes(file.resolveSibling(name + ".pdf")), truths);
    }

    /** What the process would hand over, taken off the pages here: starting a process for each of many sheets takes long. */
    static List<SheetPage> pages(Path sheet) throws IOException {
        Map<Integer, SheetPage> pages = new TreeMap<>();
        Pages.read(sheet, part -> pages.merge(part.number(), part, SheetPage::with));
        return List.copyOf(pages.values());
    }

    /** Names of the sheets that the reader is not tuned on. */
    static Set<String> setAside() throws IOException {
        return new LinkedHashSet<>(Files.readAllLines(SHEETS.resolve("set-aside.txt")).stream()
            .filter(line -> !line.startsWith("#") && !line.isBlank()).toList());
    }

    /**
     * How a sheet was read.
     *
     * @param shown  values shown
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
        List<String> fitting = List.of(fixture.component.split(" "));
        if (!fitting.contains(reading.component())) {
            faults.add(fixture.name + ": taken for " + reading.components());
        }
        int found = 0;
        int right = 0;
        int sure = 0;
        List<Found> used = new ArrayList<>();
        for (Truth truth : fixture.truths) {
            List<Found> shown = reading.values().stream().filter(value -> (fitting.contains(reading.component())
                ? value.value().property().replace(reading.component() + ".", fitting.get(0) + ".") : value.value().property())
                    .equals(truth.property())
                && value.model().equals(truth.more("model"))).toList();
            if (shown.isEmpty()) {
                faults.add(fixture.name + ": " + truth.property() + " " + truth.more("model") + " not found");
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
                faults.add(fixture.name + ": " + truth.property() + " " + truth.more("model") + " " + wrong + " (" + one.confidence()
                    + ")");
            }
        }
        for (Found one : reading.values()) {
            if (used.stream().noneMatch(other -> other == one)) {
                sure += one.confidence() >= 0.9 ? 1 : 0;
                faults.add(fixture.name + ": " + one.value().property() + " " + one.model() + " = " + one.value().value().text()
                    + " isn't on the sheet (" + one.confidence() + ")");
            }
        }
        return new Score(reading.values().size(), fixture.truths.size(), found, right, sure, faults);
    }

    private static String wrong(Truth truth, Found found) {
        if (!same(truth.value(), found.value().value())) {
            return "is " + found.value().value().text() + ", not " + truth.value();
        }
        String compare = found.value().compare().map(sense -> sense.text()).orElse("");
        if (!compare.equals(truth.more("compare"))) {
            return "has the sense \"" + compare + "\", not \"" + truth.more("compare") + "\"";
        }
        if (!found.value().method().equals(truth.more("method")) || !found.value().edition().equals(truth.more("edition"))) {
            return "is shown by " + found.value().method() + " " + found.value().edition() + ", not " + truth.more("method") + " "
                + truth.more("edition");
        }
        Box box = found.value().box().orElseThrow();
        double x = box.x() + box.width() / 2;
        double y = box.y() + box.height() / 2;
        Box place = truth.box();
        boolean outside = place != null && (x < place.x() - 1 || x > place.x() + place.width() + 1 || y < place.y() - 2
            || y > place.y() + place.height() + 2);
        if (found.value().page() != truth.page() || outside) {
            return "stands at " + place + ", not at " + box;
        }
        return "";
    }

    private static boolean same(String truth, Value value) {
        if (value instanceof Quantity quantity) {
            return Quantity.parse(truth).filter(right -> right.dimension() == quantity.dimension()
                && Math.abs(right.si() - quantity.si()) <= 1e-9 + 1e-9 * Math.abs(right.si())).isPresent();
        }
        if (value instanceof Range range) {
            String[] ends = truth.split(" to ");
            String unit = ends.length < 2 ? "" : ends[1].replaceAll("^[-\\d./ ]+", "");
            return ends.length == 2 && same(ends[1], range.high())
                && same(Quantity.parse(ends[0]).filter(low -> low.unit() != reglet.model.Unit.ONE).isPresent() ? ends[0] : ends[0] + " "
                    + unit,
                    range.low());
        }
        return truth.equals(value.text());
    }
}
