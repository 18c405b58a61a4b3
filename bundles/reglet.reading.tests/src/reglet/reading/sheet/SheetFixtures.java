package reglet.reading.sheet;

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
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

import reglet.model.Box;
import reglet.model.Pack;
import reglet.model.SheetReading;
import reglet.model.UnusableInput;
import reglet.reading.page.Pages;
import reglet.reading.page.SheetPage;
import reglet.reading.sheet.DrawnSheet.Truth;
import reglet.store.Packs;

/**
 * The invented sheets that reading is judged on. Most are drawn from descriptions ({@link DrawnSheet}); those with an
 * HTML page beside them were laid out and exported by a word processor (LibreOffice 7.4, by way of ODT), and what stands on them is
 * told in a file of truths. In such a file {@code edition=any} says that the edition isn't judged, {@code conforms=X} that the sheet
 * says the product conforms to X, which may be told as the value's method or not, {@code optional=yes} that a reader need not tell it,
 * and {@code at=any} that the sheet says it in several places.
 */
public final class SheetFixtures {
    private static final Path ROOT = Path.of(System.getProperty("reglet.root", "../..")).toAbsolutePath().normalize();
    private static final Path SHEETS = ROOT.resolve("bundles/reglet.reading.tests/src/reglet/reading/sheets");
    private static final Map<String, SheetReading> READ = new ConcurrentHashMap<>();
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
    static SheetReading read(Fixture fixture) {
        // sheets of two sets may bear the same name
        String key = fixture.name() + fixture.asked() + Arrays.hashCode(fixture.pdf());
        return READ.computeIfAbsent(key, fresh -> {
            try {
                Path sheet = Files.createTempFile("sheet", ".pdf");
                try {
                    Files.write(sheet, fixture.pdf());
                    return SheetReader.read(pages(sheet), pack(), fixture.asked());
                } finally {
                    Files.delete(sheet);
                }
            } catch (IOException | UnusableInput unreadable) {
                throw new IllegalStateException(fixture.name(), unreadable);
            }
        });
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
}
