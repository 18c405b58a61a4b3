package reglet.reading.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.reading.page.Layout.Line;

/** Puts lines together to the paragraphs of running text, and parts these into sentences. */
public final class Paragraphs {
    private static final int NEAREST = 6;
    private static final int RUNNING = 4;
    /** How far lines of a paragraph are apart at most, in heights of their letters. */
    private static final double APART = 1.6;
    private static final double SCANNED = 2.1;
    /** "Thickness: 3/8 in" begins anew. */
    private static final Pattern LABELLED = Pattern.compile("\\p{Lu}[^:.]{2,40}:\\s+\\S");
    private static final Pattern BULLET = Pattern.compile("\\s*(?:[•·▪■●◦‣*+✓✔→»-]|\\d{1,2}[.)]|[a-z][.)])\\s+");
    /** "3.2 Oxbow QM-16", in bold letters. */
    private static final Pattern SECTION = Pattern.compile("\\s*\\d{1,2}(?:\\.\\d{1,2})+\\.?\\s+\\p{Lu}.*");
    /** A heading in capitals ends where words in small letters begin. */
    private static final Pattern CAPITALS = Pattern.compile("(?=.*\\p{Lu}{4})[^\\p{Ll}]{4,60}");
    private static final Pattern SENTENCE = Pattern.compile("[.;]\\s+|[.;]$");
    /** A stop that ends no sentence: "1/4 in. ground", "No. 15". */
    private static final Pattern ABBREVIATED = Pattern.compile("(?is).*(?:[\\d½¼¾⅛⅜⅝⅞⅓⅔]\\s*-?(?:in|ft|lbs?|oz|sq|yd|ga|min|max|hr"
        + "|deg)|\\b(?:no"
        + "|approx|nom|thk|avg|temp|wt|dia|min|max|incl"
        + "|sq|cu|e\\.g|i\\.e|fig|o\\.c|avg|galv|proc|cat|(?:sq|cu|lin)\\.? ?(?:ft|in|yd)))\\.");
    /** "ASTM E96 Proc. A" goes on, though with a capital. */
    private static final Pattern NAMED = Pattern.compile("(?is).*\\b(?:proc|no|cat|fig)\\.");
    /** "40 to 95 F" is a value, though of some words. */
    private static final Pattern ASIDE = Pattern.compile("\\((?=[^()]*\\p{L}{2})[^().]*[^().\\s]\\)");
    private static final Pattern AMOUNT = Pattern.compile("\\W{0,2}\\d.{0,30}");
    private static final Pattern CONDITIONS = Pattern.compile("(?i)^\\s*(?:\\d+(?:\\.0)?\\.?\\s+)?(?:(?:terms and )?(?:conditions?"
        + "|limitations?|limits|restrictions?)(?: (?:of|on|for) (?:use|its use|acceptance|listing|certification|approval|installation))?"
        + "|use conditions|(?:conditions|limitations) and (?:limitations|conditions)(?: of use)?)\\s*:?\\s*$");
    private static final Pattern HEADING = Pattern.compile("^\\s*\\d+\\.0?\\s+[A-Z][A-Z \\-,&]{3,}$|(?i)^\\s*(?:\\d+(?:\\.0?)?\\s+)?(?:"
        + "evidence(?: submitted| reviewed)?|(?:supporting )?data (?:reviewed|submitted|examined)|basis(?: of (?:the )?\\w+)?|(?:product )?"
        + "identification|marking|labels?|labell?ing|statement|findings?|references|quality (?:control|assurance)|disclaimer|validity"
        + "|test results)\\s*:?\\s*$");

    /** Of the letters of a title: those beside it are no larger. */
    private static final double TITLED = 0.75;

    private Paragraphs() {
    }

    /** The sentences of lines, in the order in which they are read. */
    static List<Sentence> sentences(List<Line> lines) {
        List<Sentence> all = new ArrayList<>();
        boolean conditions = false;
        for (Cell paragraph : joined(lines)) {
            conditions = isConditions(paragraph.text()) || conditions && !isHeading(paragraph.text());
            Matcher stop = SENTENCE.matcher(paragraph.text());
            int from = 0;
            while (stop.find()) {
                boolean starts = stop.end() >= paragraph.text().length() || Character.isUpperCase(paragraph.text().charAt(stop.end()));
                String said = paragraph.text().substring(0, stop.start() + 1);
                boolean named = NAMED.matcher(said).matches() && paragraph.text().substring(stop.end())
                    .matches("(?s)(?:\\p{Lu}\\b|\\p{Lu}*-?\\d).*");
                // "30 lb/in. (ASTM C794)": a bracket behind a stop is of the words before it, unless it holds a sentence
                boolean aside = ASIDE.matcher(paragraph.text()).region(stop.end(), paragraph.text().length()).lookingAt();
                if (!named && !aside && (starts || !ABBREVIATED.matcher(said).matches())) {
                    all.add(Sentence.of(paragraph.part(from, stop.start()), conditions, paragraph.text().substring(0, from)));
                    from = stop.end();
                }
            }
            if (from < paragraph.text().length()) {
                all.add(Sentence.of(paragraph.part(from, paragraph.text().length()), conditions, paragraph.text().substring(0,
                    from)));
            }
        }
        return all;
    }

    /** Cells of lines that follow each other closely, joined; beside other cells only such as hold running text. */
    public static List<Cell> joined(List<Line> lines) {
        List<Cell> all = new ArrayList<>();
        List<Cell> last = new ArrayList<>();
        // cells with a few words beside them, as labels have values
        Set<Cell> labels = Collections.newSetFromMap(new IdentityHashMap<>());
        Broken broken = new Broken();
        for (Line line : lines) {
            broken.line(line, last);
            for (Cell cell : line.cells()) {
                boolean alone = line.cells().size() == 1 || isTitle(cell, line);
                if (!alone && line.cells().stream().anyMatch(other -> other.left() > cell.left()
                    && (!isRunning(other) || AMOUNT.matcher(other.text()).matches()))) {
                    labels.add(cell);
                }
                int above = -1;
                for (int i = Math.max(0, all.size() - NEAREST); i < all.size(); i++) {
                    boolean first = all.get(i) == last.get(i);
                    boolean rows = labels.contains(cell) && labels.contains(last.get(i)) && Character.isUpperCase(cell.text()
                        .codePointAt(0));
                    above = !rows && (follows(last.get(i), cell) || first && isSetIn(last.get(i), cell)) ? i : above;
                }
                above = above < 0 ? broken.goesOn(cell) : above;
                if (above >= 0 && (alone || isRunning(cell) || isRunning(last.get(above)))) {
                    all.set(above, all.get(above).with(cell));
                    last.set(above, cell);
                } else if (alone || isRunning(cell)) {
                    all.add(cell);
                    last.add(cell);
                }
            }
        }
        return all;
    }

    /** Text laid below the picture of a page by a program that reads pictures, which knows the size of letters only nearly. */
    private static boolean isScanned(Cell cell) {
        return !cell.pieces().isEmpty() && cell.pieces().get(0).hidden();
    }

    /** Whether a cell is set far larger than what stands beside it: a title beside the number and date of the sheet. */
    private static boolean isTitle(Cell cell, Line line) {
        return line.cells().size() > 1 && line.cells().stream().allMatch(other -> other == cell || other.size() < TITLED * cell.size());
    }

    private static boolean isRunning(Cell cell) {
        return cell.text().split("\\s+").length >= RUNNING;
    }

    /** Whether a cell goes on with the one above it: right below, in line with it or with its words behind a dot. */
    private static boolean follows(Cell last, Cell cell) {
        boolean bullet = BULLET.matcher(last.text()).lookingAt();
        double in = cell.left() - last.left();
        return cell.y() > last.y() && cell.y() - last.y() < (isScanned(cell) ? SCANNED : APART) * cell.size()
            && (Math.abs(in) < 3 || bullet && in > 0
            && in < 3 * cell.size())
            && Math.abs(cell.size() - last.size()) < 0.5 && !last.text().endsWith(":") && !BULLET.matcher(cell.text()).lookingAt()
            && !LABELLED.matcher(cell.text()).lookingAt() && !Items.isItem(last.text(), cell.text()) && isSection(last) == isSection(cell)
            && !(CAPITALS.matcher(last
                .text()).matches() && !CAPITALS.matcher(cell.text()).matches());
    }

    /** Whether a line is a numbered heading, in bold letters to its end. */
    private static boolean isSection(Cell cell) {
        return cell.pieces().stream().allMatch(piece -> piece.bold()) && SECTION.matcher(cell.text()).matches();
    }

    /** Whether a line is the first of a paragraph, set in or as a hanging title is, and the one below it goes on with it. */
    private static boolean isSetIn(Cell first, Cell cell) {
        double in = first.left() - cell.left();
        return in >= 3 && in < 4 * cell.size() && first.right() > cell.right() - 4 * cell.size() && isRunning(first)
            && cell.y() > first.y() && cell.y() - first.y() < 1.6 * cell.size() && Math.abs(cell.size() - first.size()) < 0.5
            && !first.text().matches("(?s).*[.:]\\s*") && Character.isLowerCase(cell.text().codePointAt(0));
    }

    /** Whether a line heads the conditions under which a product may be used. */
    public static boolean isConditions(String line) {
        return CONDITIONS.matcher(line).matches();
    }

    /** Whether a line is a numbered heading of a report. */
    public static boolean isHeading(String line) {
        return HEADING.matcher(line).matches();
    }
}
