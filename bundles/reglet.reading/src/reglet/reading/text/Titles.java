package reglet.reading.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;

/** The product's name and its maker, as far as they can be told: the largest line of the first page, and a line that says who made it. */
public final class Titles {
    private static final int HEAD = 8;
    private static final int DESCRIBING = 8;
    private static final int SAID = 14;
    private static final Pattern SUBJECT = Pattern.compile("(?i)\\W*(?:product|subject|(?:report|evaluation) subject|item|product "
        + "(?:certified|evaluated|covered))\\W*");
    private static final int TITLES = 4;
    private static final int LONGEST_TITLE = 8;
    /** What a title goes on with. */
    private static final Pattern ASIDE = Pattern.compile("\\s[—–|•-]\\s|:");
    private static final Pattern MORE = Pattern.compile("[,;(]");
    /** Points. */
    private static final double LARGER = 0.5;
    private static final Pattern MAKER = Pattern.compile("(?i)^(?:manufactured by|manufacturer|made by|maker|produced by|report "
        + "holder|by)\\b[:\\s]+(.{3,80})$");
    private static final Pattern FIRM = Pattern.compile("(?i).*\\b(?:inc|llc|ltd|corp|corporation|company|co|gmbh|works|industries|"
        + "products|manufacturing|"
        + "chemical|sealants|boards|goods)\\b.*");

    /** What a maker of several things calls itself by: "Wire & Lath", "Brick & Tile". */
    private static final String TRADE = "(?:wire|lath|beads?|trim|metals?|steel|iron|brick|block|tile|stone|slate|cement|lime|plaster"
        + "|glass|gypsum|board|lumber|supply|forge|foam)";
    private static final Pattern MAKERS_NAME = Pattern.compile("(?i).*\\b(?:inc|llc|ltd|corp|corporation|company|co|gmbh|works|mills"
        + "|industries|quarries|laborator(?:y|ies))\\.?|(?=.*\\S \\S+ (?:&|and) ).*\\b" + TRADE + " (?:&|and) " + TRADE);

    private static final Pattern APART = Pattern.compile("(?i)\\s(?:for|sets|bonds|fills|seals|behind|under|beneath|over|with|against"
        + "|to be used|used"
        + "|on|in)\\s.*");

    /** An item of a list: of uses, of what it goes with. */
    static final Pattern ITEM = Pattern.compile("\\s*[•·▪■●◦‣*+✓✔→»–-]\\s");

    /** A line in the midst of running text, which says what goes with the product too. */
    private static final Pattern CONTINUED = Pattern.compile("\\s*\\p{Ll}{2,}\\b.*[.,]");

    private Titles() {
    }

    /** The first lines of the first page, and its largest one. */
    public static String head(List<Layout> layouts) {
        StringBuilder head = new StringBuilder(product(layouts));
        first(layouts).stream().limit(HEAD).forEach(line -> head.append(' ').append(line.text()));
        return head.toString();
    }

    /** What the head says the product is, without what it is for or goes with: "mortar for adhered veneer" is a mortar. */
    public static List<String> subject(List<Layout> layouts) {
        List<String> subject = new ArrayList<>(List.of(product(layouts)));
        first(layouts).stream().limit(HEAD).flatMap(line -> line.cells().stream()).filter(cell -> !ITEM.matcher(cell.text()).lookingAt()
            && !CONTINUED.matcher(cell.text()).lookingAt()).forEach(cell -> subject.add(APART.matcher(cell.text()).replaceFirst("")));
        described(layouts, 1).forEach(text -> subject.add(APART.matcher(text).replaceFirst("")));
        return subject;
    }

    /**
     * Titles that may say in their last words what the product is: "Polymer-Modified Veneer Setting Mortar — Product Data". They are set
     * larger than the rest, or stand below what is set largest; a maker's name need not.
     */
    public static List<String> kinds(List<Layout> layouts) {
        // from the top, whatever stands in a bar at the side
        List<Line> lines = first(layouts).stream().sorted(Comparator.comparingDouble(Line::y)).toList();
        double usual = lines.stream().mapToDouble(Line::size).sorted().skip(lines.size() / 2).findFirst().orElse(0);
        double largest = lines.stream().mapToDouble(Line::size).max().orElse(0);
        List<Line> titles = IntStream.range(0, Math.min(lines.size(), TITLES)).filter(i -> lines.get(i).size() > usual + LARGER
            || i > 0 && lines.get(i - 1).size() > largest - 0.1).mapToObj(lines::get).toList();
        // "Product | Corner lath for plaster" at the head of a certificate
        List<String> said = lines.stream().limit(SAID).filter(line -> line.cells().size() == 2 && SUBJECT.matcher(line.cells().get(0)
            .text()).matches()).map(line -> line.cells().get(1).text()).toList();
        return Stream.concat(titles.stream().flatMap(line -> line.cells().stream()).map(Cell::text), said.stream())
            .flatMap(text -> ASIDE.splitAsStream(text)).map(text -> MORE.split(text, 2)[0].strip())
            .filter(text -> !text.isEmpty() && !text.endsWith(".") && text.split("\\s+").length <= LONGEST_TITLE)
            .map(Titles::ofItself).toList();
    }

    /** A text without what the product is for or goes with. */
    static String ofItself(String text) {
        return APART.matcher(text).replaceFirst("");
    }

    /** The first sentences of running text, which say what the product is. */
    static List<String> described(List<Layout> layouts, int most) {
        return layouts.stream().limit(1).flatMap(layout -> layout.sentences().stream()).map(sentence -> sentence.cell().text())
            .filter(text -> text.split("\\s+").length >= DESCRIBING && !ITEM.matcher(text).lookingAt()).limit(most).toList();
    }

    private static List<Line> first(List<Layout> layouts) {
        return layouts.stream().filter(layout -> layout.page() == layouts.get(0).page()).flatMap(layout -> layout.lines().stream())
            .toList();
    }

    public static String product(List<Layout> layouts) {
        List<Line> lines = first(layouts);
        double usual = lines.stream().mapToDouble(Line::size).sorted().skip(lines.size() / 2).findFirst().orElse(0);
        double largest = lines.stream().mapToDouble(Line::size).max().orElse(0);
        Optional<String> title = lines.stream().filter(line -> line.size() > largest - 0.1).findFirst().map(Titles::plain);
        // a maker's name may be set largest
        Optional<String> below = title.filter(text -> MAKERS_NAME.matcher(text).matches()).flatMap(maker -> lines.stream().limit(HEAD)
            .filter(line -> (line.size() > usual + LARGER || line.cells().get(0).bold()) && !MAKERS_NAME.matcher(plain(line)).matches()
                && plain(line).contains(" ")).max(Comparator.comparingDouble(Line::size)).map(Titles::plain));
        return below.or(() -> title).filter(text -> text.length() <= 100).orElse("");
    }

    private static String plain(Line line) {
        return line.text().replaceAll("\\s+", " ").strip();
    }

    public static String maker(List<Layout> layouts) {
        List<Line> lines = first(layouts);
        for (Line line : lines) {
            Matcher maker = MAKER.matcher(line.text().strip());
            if (maker.matches()) {
                return tidy(maker.group(1));
            }
        }
        String product = product(layouts);
        return lines.stream().limit(HEAD).map(Line::text).filter(text -> !text.equals(product) && text.length() < 100
            && !ITEM.matcher(text).lookingAt() && FIRM.matcher(text).matches())
            .findFirst().map(text -> tidy(text.substring(text.lastIndexOf(". ") + 1))).orElse("");
    }

    private static String tidy(String maker) {
        return maker.replaceAll("[(,].*$", "").strip();
    }
}
