package reglet.reading.sheet;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

import reglet.model.Box;
import reglet.model.Dimension;
import reglet.model.Pack;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Found;
import reglet.model.UnusableInput;
import reglet.model.Value;
import reglet.model.WordSet;
import reglet.reading.page.Pages;
import reglet.reading.page.SheetPage;
import reglet.reading.sheet.DrawnSheet.Truth;
import reglet.store.Packs;

/**
 * The invented sheets that reading is judged on, and the judging. Most are drawn from descriptions ({@link DrawnSheet}); those with an
 * HTML page beside them were laid out and exported by a word processor (LibreOffice 7.4, by way of ODT), and what stands on them is
 * told in a file of truths. In such a file {@code edition=any} says that the edition isn't judged, {@code conforms=X} that the sheet
 * says the product conforms to X, which may be told as the value's method or not, and {@code optional=yes} that a reader need not tell it.
 */
public final class SheetFixtures {
    private static final Path ROOT = Path.of(System.getProperty("reglet.root", "../..")).toAbsolutePath().normalize();
    private static final Path SHEETS = ROOT.resolve("bundles/reglet.reading.tests/src/reglet/reading/sheets");
    private static final Map<String, SheetReading> READ = new HashMap<>();
    private static Pack pack;
    private static final Map<String, List<Fixture>> SETS = new HashMap<>();
    private static List<Fixture> drawn;

    private SheetFixtures() {
    }

    static Fixture named(String name) throws IOException {
        return all().stream().filter(fixture -> fixture.name().equals(name)).findFirst().orElseThrow();
    }

    public static synchronized Pack pack() throws UnusableInput, IOException {
        if (pack == null) {
            pack = Packs.read(ROOT.resolve("bundles/reglet.pack.adheredveneer/pack")).pack();
        }
        return pack;
    }

    /**
     * A sheet with what stands on it. A sheet of several products, whose components are listed with + between them, is one fixture for
     * each, and the reader is then asked for that component; else {@code asked} is "" and it has to find out.
     * Boxes are known of drawn ones alone. Some fit several components, which are listed with blanks
     * between them; the values are named as those of the first. {@code also}: what
     * it says in passing, "property; value", which may be found or not
     */
    record Fixture(String name, String asked, String component, byte[] pdf, List<Truth> truths, List<String> also) {
    }

    /**
     * What a set of sheets is read like.
     *
     * @param found    values found at least
     * @param wrong    values shown at most that aren't right
     * @param sure     of these, shown as sure at most
     * @param unopened whether nobody has looked at it, so that it is an estimate
     */
    record SetOfSheets(String name, int found, int wrong, int sure, boolean unopened) {
        private static SetOfSheets of(String line) {
            String[] words = line.replaceFirst(":.*", "").split(" ");
            return new SetOfSheets(words[0], Integer.parseInt(words[1]), Integer.parseInt(words[2]), Integer.parseInt(words[3]),
                words.length > 4 && words[4].equals("unopened"));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    /** The sets in {@code sets.txt}. */
    static List<SetOfSheets> sets() throws IOException {
        return Files.readAllLines(SHEETS.resolve("sets.txt")).stream().filter(line -> !line.startsWith("#")).map(SetOfSheets::of).toList();
    }

    /** The folders of sets, by name. */
    static List<String> folders() throws IOException {
        try (Stream<Path> files = Files.list(SHEETS)) {
            return files.filter(Files::isDirectory).map(folder -> folder.getFileName().toString()).sorted().toList();
        }
    }

    /** The sheets of a set. */
    static synchronized List<Fixture> set(String name) throws IOException {
        List<Fixture> set = SETS.get(name);
        if (set == null) {
            set = draw(SHEETS.resolve(name));
            SETS.put(name, set);
        }
        return set;
    }

    static synchronized List<Fixture> all() throws IOException {
        if (drawn == null) {
            drawn = draw(SHEETS);
        }
        return drawn;
    }

    private static List<Fixture> draw(Path folder) throws IOException {
        List<Fixture> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(path -> path.toString().matches(".*\\.(sheet|truth)")).sorted().toList()) {
                all.addAll(fixtures(file));
            }
        }
        return all;
    }

    private static List<Fixture> fixtures(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        String name = file.getFileName().toString().replaceAll("\\.\\w+$", "");
        String component = lines.stream().filter(line -> line.startsWith("component ")).findFirst().orElseThrow().substring(10).strip();
        List<String> also = lines.stream().filter(line -> line.startsWith("also ")).map(line -> line.substring(5).strip()).toList();
        if (file.toString().endsWith(".sheet")) {
            DrawnSheet.Drawn drawn = DrawnSheet.draw(lines);
            return List.of(new Fixture(name, "", component, drawn.pdf(), drawn.truths(), also));
        }
        List<Truth> truths = lines.stream().filter(line -> line.contains(";") && !line.startsWith("also "))
            .map(SheetFixtures::placed).toList();
        byte[] pdf = Files.readAllBytes(file.resolveSibling(name + ".pdf"));
        String[] products = component.split(" \\+ ");
        return products.length == 1 ? List.of(new Fixture(name, "", component, pdf, truths, also)) : Stream.of(products).map(one ->
            new Fixture(name, one, one, pdf, truths.stream().filter(truth -> truth.property().startsWith(one + "."))
                .toList(), also)).toList();
    }

    /** A line of a file of truths; "page=" and "box=LEFT TOP WIDTH HEIGHT" tell the place. */
    private static Truth placed(String line) {
        Truth truth = Truth.parse(line, 1, null);
        double[] box = Stream.of(truth.more("box").split(" ")).filter(part -> !part.isEmpty()).mapToDouble(Double::parseDouble).toArray();
        return new Truth(truth.property(), truth.value(), truth.more(), truth.more("page").isEmpty() ? 1 : Integer.parseInt(truth.more(
            "page")), box.length < 4 ? null : new Box(box[0], box[1], box[2], box[3]));
    }

    /** What the reader makes of a sheet; each sheet is read once for all tests. */
    static synchronized SheetReading read(Fixture fixture) throws IOException, UnusableInput {
        // sheets of two sets may bear the same name
        String key = fixture.name() + fixture.asked() + Arrays.hashCode(fixture.pdf());
        SheetReading read = READ.get(key);
        if (read == null) {
            Path sheet = Files.createTempFile("sheet", ".pdf");
            try {
                Files.write(sheet, fixture.pdf());
                read = SheetReader.read(pages(sheet), pack(), fixture.asked());
            } finally {
                Files.delete(sheet);
            }
            READ.put(key, read);
        }
        return read;
    }

    /** Reads and judges all sheets of a set, and prints the totals. */
    static Score score(String set, List<Fixture> sheets) throws IOException, UnusableInput {
        Score total = new Score(0, 0, 0, 0, 0, List.of());
        for (Fixture fixture : sheets) {
            total = total.plus(judge(fixture, read(fixture)));
        }
        System.out.printf("%s: %d of %d values found, %d of %d shown are right, %d wrong ones are shown as sure%n", set, total.found(),
            total.truths(), total.right(), total.shown(), total.sure());
        return total;
    }

    /** What the process would hand over, taken off the pages here: starting a process for each of many sheets takes long. */
    static List<SheetPage> pages(Path sheet) throws IOException {
        Map<Integer, SheetPage> pages = new TreeMap<>();
        Pages.read(sheet, part -> pages.merge(part.number(), part, SheetPage::with));
        return List.copyOf(pages.values());
    }

    /** Names of the sheets that the reader is not tuned on. */
    static Set<String> setAside(String list) throws IOException {
        return new LinkedHashSet<>(Files.readAllLines(SHEETS.resolve(list)).stream()
            .filter(line -> !line.startsWith("#") && !line.isBlank()).toList());
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
        List<String> fitting = List.of(fixture.component.split(" "));
        if (!fitting.contains(reading.component())) {
            faults.add(fixture.name + ": taken for " + reading.components());
        }
        int found = 0;
        int right = 0;
        int sure = 0;
        List<Found> used = new ArrayList<>();
        for (Truth truth : fixture.truths.stream().filter(truth -> !isOptional(truth)).toList()) {
            List<Found> stated = reading.values().stream().filter(value -> (fitting.contains(reading.component())
                ? value.value().property().replace(reading.component() + ".", fitting.get(0) + ".") : value.value().property())
                    .equals(truth.property())
                && value.model().equals(truth.more("model"))).toList();
            // what stands beside the value shown counts when it is right; a person sees both
            List<Found> beside = stated.stream().flatMap(value -> value.also().stream()).filter(value -> wrong(truth, value).isEmpty())
                .toList();
            List<Found> shown = Stream.concat(stated.stream().filter(value -> beside.isEmpty() || wrong(truth, value).isEmpty()),
                beside.stream()).filter(value -> used.stream().noneMatch(other -> other == value)).toList();
            if (shown.isEmpty()) {
                faults.add(fixture.name + ": " + truth.property() + " " + truth.more("model") + " not found");
                continue;
            }
            // what another truth of the same property says right isn't this one said wrong
            boolean another = fixture.truths.stream().anyMatch(other -> other != truth && other.property().equals(truth.property())
                && other.more("model").equals(truth.more("model")) && wrong(other, shown.get(0)).isEmpty());
            if (another && !wrong(truth, shown.get(0)).isEmpty()) {
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
        int passing = 0;
        for (Found one : reading.values()) {
            boolean optional = fixture.truths.stream().anyMatch(truth -> isOptional(truth) && same(truth.value(), one.value().value())
                && truth.property().equals(one.value().property()));
            boolean counted = used.stream().anyMatch(other -> other == one);
            if (!counted && optional || fixture.also.contains(one.value().property() + "; " + one.value().value().text())) {
                passing++;
            } else if (used.stream().noneMatch(other -> other == one)) {
                sure += one.confidence() >= 0.9 ? 1 : 0;
                faults.add(fixture.name + ": " + one.value().property() + " " + one.model() + " = " + one.value().value().text()
                    + " isn't on the sheet (" + one.confidence() + ")");
            }
        }
        int beside = (int) used.stream().filter(one -> reading.values().stream().noneMatch(other -> other == one)).count();
        return new Score(reading.values().size() - passing + beside, (int) fixture.truths.stream()
            .filter(truth -> !isOptional(truth)).count(), found, right, sure, faults);
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
        if (!endured && !compare.equals(truth.more("compare"))) {
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
        boolean outside = place != null && !around && (x < place.x() - 1 || x > place.x() + place.width() + 1 || y < place.y() - 2
            || y > place.y() + place.height() + 2);
        if (found.value().page() != truth.page() || outside) {
            return "stands at " + place + ", not at " + box;
        }
        return "";
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
