package reglet.reading.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.TreeSet;

import reglet.model.Box;
import reglet.reading.page.SheetPage.Piece;
import reglet.reading.page.SheetPage.Rule;

/** The text of a page that runs one way, as lines of cells: stretches of words with no wide gap and no upright rule between them. */
public final class Layout {
    /** Of the size of the letters: a wider gap is one between columns. */
    private static final double COLUMN = 0.85;
    private static final double BLANK = 0.14;
    private static final double SMALL = 0.8;
    /** Words smaller than this beside larger ones have a size and a foot of their own. */
    private static final double OWN = 0.97;
    /** Letters are moved apart so far without a blank: "ver|tical". */
    private static final double KERNED = 0.06;
    /** Points within which raised letters stand beside those that they belong to. */
    private static final Pattern MARK = Pattern.compile("[*†‡§]+|\\d|[a-e]");
    private static final double BAND = 24;
    private static final double BESIDE = 0.6;

    private final SheetPage page;
    private final int turn;
    private final List<Line> lines = new ArrayList<>();
    private final List<Rule> level = new ArrayList<>();
    private final List<Rule> upright = new ArrayList<>();
    private List<Sentence> sentences;

    /** Cells on one line, from left to right. */
    public record Line(List<Cell> cells, double y, double size) {
        public double left() {
            return cells.get(0).left();
        }

        public double right() {
            return cells.get(cells.size() - 1).right();
        }

        public String text() {
            return String.join(" ", cells.stream().map(Cell::text).toList());
        }
    }

    private Layout(SheetPage page, int turn) {
        this.page = page;
        this.turn = turn;
    }

    /** A layout for each way that text runs on the page. */
    public static List<Layout> of(SheetPage page) {
        Set<Integer> turns = new TreeSet<>();
        page.pieces().forEach(piece -> turns.add(piece.turn()));
        List<Layout> all = new ArrayList<>();
        for (int turn : turns) {
            Layout layout = new Layout(page, turn);
            layout.turnRules();
            List<Piece> pieces = Ticks.taken(page.pieces().stream().filter(piece -> piece.turn() == turn).toList());
            Map<Piece, Piece> dots = Dots.leading(pieces);
            layout.arrange(pieces.stream().filter(piece -> dots.values().stream().noneMatch(dot -> dot == piece)).toList());
            layout.lines.replaceAll(line -> Dots.with(line, dots));
            all.add(layout);
        }
        return all;
    }

    public List<Line> lines() {
        return lines;
    }

    /** Its running text. */
    public synchronized List<Sentence> sentences() {
        if (sentences == null) {
            sentences = Paragraphs.sentences(lines);
        }
        return sentences;
    }

    public int page() {
        return page.number();
    }

    /** A box of this layout on the page as it is shown. */
    public Box shown(Cell cell) {
        double x = cell.left();
        double y = cell.top();
        double w = cell.right() - x;
        double h = cell.bottom() - y;
        Box box = switch (turn) {
            case 90 -> new Box(y, page.height() - x - w, h, w);
            case 180 -> new Box(page.width() - x - w, page.height() - y - h, w, h);
            case 270 -> new Box(page.width() - y - h, x, h, w);
            default -> new Box(x, y, w, h);
        };
        return new Box(tenth(Math.max(0, box.x())), tenth(Math.max(0, box.y())), tenth(box.width()), tenth(box.height()));
    }

    private static double tenth(double points) {
        return Math.round(points * 10) / 10.0;
    }

    /** Whether a level rule lies between two heights and crosses some place. */
    boolean ruledBetween(double above, double below, double x) {
        return level.stream().anyMatch(rule -> rule.y1() > above && rule.y1() < below && rule.x1() <= x + 1 && rule.x2() >= x - 1);
    }

    /** Heights of the rules next above and next below a point; empty where there is none on either side. */
    public double[] between(double x, double y) {
        double above = Double.NEGATIVE_INFINITY;
        double below = Double.POSITIVE_INFINITY;
        for (Rule rule : level) {
            if (rule.x1() <= x + 1 && rule.x2() >= x - 1) {
                if (rule.y1() <= y && rule.y1() > above) {
                    above = rule.y1();
                }
                if (rule.y1() > y && rule.y1() < below) {
                    below = rule.y1();
                }
            }
        }
        return Double.isFinite(above) && Double.isFinite(below) ? new double[] {above, below} : new double[0];
    }

    /** Whether an upright rule stands between two places at some height. */
    public boolean upright(double left, double right, double y) {
        return upright.stream().anyMatch(rule -> rule.x1() > Math.min(left, right) - 1 && rule.x1() < Math.max(left, right) + 1
            && rule.y1() < y && rule.y2() > y);
    }

    private void turnRules() {
        for (Rule rule : page.rules()) {
            Rule turned = switch (turn) {
                case 90 -> new Rule(page.height() - rule.y1(), rule.x1(), page.height() - rule.y2(), rule.x2());
                case 180 -> new Rule(page.width() - rule.x1(), page.height() - rule.y1(), page.width() - rule.x2(),
                    page.height() - rule.y2());
                case 270 -> new Rule(rule.y1(), page.width() - rule.x1(), rule.y2(), page.width() - rule.x2());
                default -> rule;
            };
            Rule sorted = new Rule(Math.min(turned.x1(), turned.x2()), Math.min(turned.y1(), turned.y2()),
                Math.max(turned.x1(), turned.x2()), Math.max(turned.y1(), turned.y2()));
            (sorted.x2() - sorted.x1() > sorted.y2() - sorted.y1() ? level : upright).add(sorted);
        }
    }

    private void arrange(List<Piece> pieces) {
        Map<Long, List<Piece>> byHeight = new HashMap<>();
        pieces.forEach(piece -> byHeight.computeIfAbsent(Math.round(piece.y() / BAND), key -> new ArrayList<>()).add(piece));
        Map<Piece, Piece> hosts = new IdentityHashMap<>();
        for (Piece piece : pieces) {
            List<Piece> near = new ArrayList<>();
            for (long band = Math.round(piece.y() / BAND) - 1; band <= Math.round(piece.y() / BAND) + 1; band++) {
                near.addAll(byHeight.getOrDefault(band, List.of()));
            }
            Piece host = host(piece, near);
            if (host != null) {
                hosts.put(piece, host);
            }
        }
        List<Piece> plain = new ArrayList<>();
        List<Piece> small = new ArrayList<>();
        for (Piece piece : pieces) {
            (hosts.containsKey(piece) ? small : plain).add(piece);
        }
        plain.sort(Comparator.comparingDouble(Piece::y).thenComparingDouble(Piece::x));
        List<List<Piece>> grouped = new ArrayList<>();
        for (Piece piece : plain) {
            List<Piece> last = grouped.isEmpty() ? null : grouped.get(grouped.size() - 1);
            if (last != null && piece.y() - last.get(0).y() < 0.35 * Math.min(piece.size(), last.get(0).size())) {
                last.add(piece);
            } else {
                grouped.add(new ArrayList<>(List.of(piece)));
            }
        }
        for (Piece piece : small) {
            Piece host = hosts.get(piece);
            grouped.stream().filter(line -> line.stream().anyMatch(other -> other == host)).findFirst().ifPresent(line -> line.add(piece));
        }
        for (List<Piece> line : grouped) {
            line.sort(Comparator.comparingDouble(Piece::x));
            lines.add(line(line));
        }
        List<Line> apart = Gutter.apart(Sidebar.apart(Aligned.apart(List.copyOf(lines))), Rules.joined(level));
        lines.clear();
        lines.addAll(apart);
    }

    /** The letters that a small piece is raised or lowered beside; null for a piece that stands on a line of its own. */
    private static Piece host(Piece piece, List<Piece> pieces) {
        Piece best = null;
        Piece lead = null;
        for (Piece other : pieces) {
            if (isLowered(piece, other) || isNumerator(piece, other, pieces) || isMark(piece, other)) {
                return other;
            }
            double rise = (other.y() - piece.y()) / other.size();
            if (isLead(piece, other)) {
                lead = lead == null ? other : lead;
            } else if ((other.size() * SMALL > piece.size() && rise > -0.35 && Math.abs(rise) > 0.05 || Cell.isRaised(piece, other.y(),
                other.size())) && rise < 0.7
                && piece.x() > other.end() - 0.3 * other.size() && piece.x() < other.end() + 0.6 * other.size()
                && (best == null || other.end() > best.end())) {
                best = other;
            }
        }
        // what a mark stands right behind has it, and not what goes on behind the mark
        Piece host = best == null ? lead : best;
        return host == null || isOfALine(piece, pieces) ? null : host;
    }

    /** The raised mark in front of a note: "¹ Mat alone". */
    private static boolean isLead(Piece piece, Piece other) {
        double rise = (other.y() - piece.y()) / other.size();
        boolean raised = Cell.isRaised(piece, other.y(), other.size()) || piece.size() < other.size() && rise > 0.2;
        return MARK.matcher(piece.text()).matches() && raised && rise < 0.7 && other.x() > piece.end() - 0.1 * other.size()
            && other.x() < piece.end() + 0.5 * other.size();
    }

    /** Whether a word stands beside others as small on a line of their own: right above a large title they are no raised letters. */
    private static boolean isOfALine(Piece piece, List<Piece> pieces) {
        return piece.text().matches("[\\p{L}-]{4,}") && pieces.stream().anyMatch(other -> other != piece && Math.abs(other.y() - piece.y())
            < 0.1 && Math.abs(other.size() - piece.size()) < 0.1 && other.text().matches("[\\p{L}-]{4,}")
            && (Math.abs(other.end() - piece.x()) < BESIDE * piece.size() || Math.abs(piece.end() - other.x()) < BESIDE * piece.size()));
    }

    /** "T₁" with a figure hardly smaller than the letter that it is set against. */
    private static boolean isLowered(Piece piece, Piece other) {
        double drop = (piece.y() - other.y()) / other.size();
        return piece.text().matches("\\d") && other.text().matches(".*\\p{L}|.*[/⁄]") && piece.size() <= other.size() && drop > 0.1
            && drop < 0.5
            && Math.abs(piece.x() - other.end()) < 0.12 * other.size();
    }

    /** The raised mark of a note, hardly smaller than the word that it is set against: "index¹". */
    static boolean isMark(Piece piece, Piece other) {
        double rise = (other.y() - piece.y()) / other.size();
        return MARK.matcher(piece.text()).matches() && other.text().matches(".*\\p{L}{2}") && piece.size() <= other.size() && rise > 0.2
            && rise < 0.5 && Math.abs(piece.x() - other.end()) < 0.12 * other.size();
    }

    /** The raised figure of a fraction behind a whole number, hardly smaller than that: "2⁵/₈". */
    private static boolean isNumerator(Piece piece, Piece other, List<Piece> pieces) {
        double rise = (other.y() - piece.y()) / other.size();
        return piece.text().matches("\\d{1,2}") && other.text().matches(".*\\d") && piece.size() <= other.size() && rise > 0.2 && rise < 0.5
            && Math.abs(piece.x() - other.end()) < 0.12 * other.size() && pieces.stream().anyMatch(stroke -> stroke.text().matches("[/⁄].*")
                && Math.abs(stroke.x() - piece.end()) < 0.12 * other.size() && Math.abs(stroke.y() - other.y()) < 0.1 * other.size());
    }

    private Line line(List<Piece> pieces) {
        double size = pieces.stream().mapToDouble(Piece::size).max().orElse(1);
        double y = pieces.stream().filter(piece -> piece.size() == size).mapToDouble(Piece::y).findFirst().orElse(0);
        List<Cell> cells = new ArrayList<>();
        List<Piece> cell = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            boolean dots = piece.text().matches("[.·…_]{2,}|…") || isDot(pieces, i) && (isDot(pieces, i - 1) || isDot(pieces, i + 1));
            if (!cell.isEmpty() && (dots || apart(cell.get(cell.size() - 1), piece, y, size))) {
                cells.add(cell(cell, y, size));
                cell = new ArrayList<>();
            }
            if (!dots) {
                cell.add(piece);
            }
        }
        if (!cell.isEmpty()) {
            cells.add(cell(cell, y, size));
        }
        if (cells.size() > 1) {
            cells.removeIf(one -> one.text().matches("[•▪■●◦‣]+"));
        }
        if (cells.isEmpty()) {
            // a line of dots alone
            cells.add(Cell.of(pieces.subList(0, 1), y, size));
        }
        return new Line(List.copyOf(cells), y, size);
    }

    /** Words and figures of a smaller size in a cell of their own beside larger ones are not raised letters, as a mark is. */
    private static Cell cell(List<Piece> pieces, double y, double size) {
        double own = pieces.stream().mapToDouble(Piece::size).max().orElse(size);
        boolean words = own < OWN * size && (pieces.size() > 1 || !MARK.matcher(pieces.get(0).text()).matches());
        return Cell.of(pieces, words ? pieces.stream().filter(piece -> piece.size() == own).mapToDouble(Piece::y).findFirst().orElse(y) : y,
            words ? own : size);
    }

    /** Leading dots may be set with blanks between them. */
    private static boolean isDot(List<Piece> pieces, int index) {
        return index >= 0 && index < pieces.size() && pieces.get(index).text().equals(".");
    }

    private boolean apart(Piece last, Piece next, double y, double size) {
        return next.x() - last.end() > COLUMN * size || upright.stream().anyMatch(rule -> rule.x1() > last.end() - 1
            && rule.x1() < next.x() + 1 && rule.y1() < y - 0.1 * size && rule.y2() > y - 0.6 * size);
    }

    /** Whether a blank stands between two words of one cell. */
    static boolean blank(Piece last, Piece next) {
        return next.spaced() && next.x() - last.end() > KERNED * last.size() || next.x() - last.end() > BLANK * Math.max(last.size(),
            next.size());
    }
}
