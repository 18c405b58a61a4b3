package reglet.reading.page;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import reglet.reading.page.Layout.Line;
import reglet.reading.page.SheetPage.Piece;

/**
 * The dots in front of the items of lists, drawn or written: words of their own, which take no part in telling where columns begin, for the
 * lines of an item are set in behind its dot.
 */
final class Dots {
    static final String DOT = "•";
    /** Of the letters' size: how far a dot stands in front of its item at most. */
    private static final double BEFORE = 2.5;
    /** Of the letters' size, above their line: where the middle of a dot is. */
    private static final double LOWEST = 0.1;
    private static final double HIGHEST = 0.6;
    /** Of the letters' size: how large a dot is at most. */
    private static final double LARGE = 0.65;

    private static final Pattern WRITTEN = Pattern.compile("[•▪■●◦‣]");
    /** Of the letters' size: how far words of one line are apart upright at most. */
    private static final double LEVEL = 0.35;
    /** Of the letters' size: what stands no further in front of a dot is of the same line. */
    private static final double APART = 3;

    private Dots() {
    }

    /** The words of a page with a dot before each that one is drawn in front of; nothing else stands between them. */
    static List<Piece> before(List<Piece> pieces, List<Rectangle2D> dots) {
        Map<Piece, Rectangle2D> firsts = new IdentityHashMap<>();
        for (Rectangle2D dot : dots) {
            pieces.stream().filter(piece -> piece.turn() == 0 && isBeside(dot, piece)).min(Comparator.comparingDouble(Piece::x))
                .ifPresent(piece -> firsts.putIfAbsent(piece, dot));
        }
        List<Piece> all = new ArrayList<>();
        for (Piece piece : pieces) {
            Rectangle2D dot = firsts.get(piece);
            boolean alone = dot != null && pieces.stream().noneMatch(other -> other != piece && other.turn() == 0 && Math.abs(other.y()
                - piece.y()) < LOWEST * piece.size() && other.x() < piece.x() && other.end() > dot.getMinX() - BEFORE * piece.size());
            if (alone) {
                // no column of its own, however far it is set out
                double x = Math.max(dot.getMinX(), piece.x() - piece.size());
                all.add(new Piece(DOT, x, piece.y(), Math.min(dot.getWidth(), piece.x() - x), piece.size(), 0, piece.spaced(), piece
                    .bold(), piece.hidden()));
            }
            all.add(piece);
        }
        return all;
    }

    /** The dots that stand first in what they are written in, each by the word behind it. */
    static Map<Piece, Piece> leading(List<Piece> pieces) {
        Map<Piece, Piece> leading = new IdentityHashMap<>();
        for (Piece dot : pieces) {
            if (WRITTEN.matcher(dot.text()).matches()) {
                List<Piece> beside = pieces.stream().filter(piece -> piece != dot && Math.abs(piece.y() - dot.y()) < LEVEL * Math.min(piece
                    .size(), dot.size())).toList();
                boolean first = beside.stream().noneMatch(piece -> piece.x() < dot.x() && dot.x() - piece.end() < APART * dot.size());
                beside.stream().filter(piece -> first && piece.x() > dot.x() && piece.x() - dot.end() < BEFORE * dot.size()).min(Comparator
                    .comparingDouble(Piece::x)).ifPresent(piece -> leading.put(piece, dot));
            }
        }
        return leading;
    }

    /** A line whose cells have the dots again that stand in front of their first words. */
    static Line with(Line line, Map<Piece, Piece> leading) {
        return line.cells().stream().noneMatch(cell -> leading.containsKey(cell.pieces().get(0))) ? line : new Line(line.cells().stream()
            .map(cell -> with(cell, leading.get(cell.pieces().get(0)))).toList(), line.y(), line.size());
    }

    private static Cell with(Cell cell, Piece dot) {
        return dot == null ? cell : Cell.of(Stream.concat(Stream.of(dot), cell.pieces().stream()).toList(), cell.y(), cell.size());
    }

    private static boolean isBeside(Rectangle2D dot, Piece piece) {
        double above = piece.y() - dot.getCenterY();
        return piece.x() >= dot.getMaxX() && piece.x() - dot.getMaxX() < BEFORE * piece.size() && above > LOWEST * piece.size()
            && above < HIGHEST * piece.size() && dot.getWidth() < LARGE * piece.size();
    }
}
