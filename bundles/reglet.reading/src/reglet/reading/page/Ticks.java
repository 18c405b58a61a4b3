package reglet.reading.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

import reglet.reading.page.SheetPage.Piece;

/**
 * Boxes to be ticked. Where some of a page are, what stands behind those that aren't is offered and isn't what is submitted. Rows of a
 * table that begin with a box and a designation stay: they tell of models.
 */
final class Ticks {
    private static final Pattern TICKED = Pattern.compile("[☑☒⊠🗹🗷]|\\[[xX]\\]");
    private static final Pattern EMPTY = Pattern.compile("[☐□▢◻⬜❏❑]|\\[_?\\]");
    private static final Pattern OPENED = Pattern.compile("\\[");
    /** "CB-087W". */
    private static final Pattern DESIGNATION = Pattern.compile("(?=.*\\d)\\p{Lu}[\\p{Lu}\\d./-]+");
    /** Of the size of the letters: how far words of one item are apart at most, and the first from its box. */
    private static final double APART = 1.2;
    private static final double BEHIND = 3;
    private static final double LEVEL = 0.35;

    private Ticks() {
    }

    /** The words of a page without the boxes of its models, and without what is not ticked where something is. */
    static List<Piece> taken(List<Piece> pieces) {
        boolean ticked = pieces.stream().anyMatch(piece -> TICKED.matcher(piece.text()).matches());
        Set<Piece> gone = new HashSet<>();
        for (Piece box : pieces) {
            if (OPENED.matcher(box.text()).matches()) {
                // "[ ]" typed with a blank between
                List<Piece> item = behind(box, pieces);
                boolean empty = item.size() > 1 && item.get(0).text().equals("]") && DESIGNATION.matcher(item.get(1).text()).matches();
                gone.addAll(empty ? List.of(box, item.get(0)) : List.of());
            } else if (EMPTY.matcher(box.text()).matches()) {
                List<Piece> item = behind(box, pieces);
                if (!item.isEmpty() && DESIGNATION.matcher(item.get(0).text()).matches()) {
                    gone.add(box);
                } else if (ticked) {
                    gone.add(box);
                    gone.addAll(item);
                }
            } else if (TICKED.matcher(box.text()).matches()) {
                gone.add(box);
            }
        }
        return pieces.stream().filter(piece -> !gone.contains(piece)).toList();
    }

    private static List<Piece> behind(Piece box, List<Piece> pieces) {
        List<Piece> item = new ArrayList<>();
        double end = box.end();
        for (Piece piece : pieces.stream().filter(other -> other != box && Math.abs(other.y() - box.y()) < LEVEL * other.size() && other.x()
            >= box.end() - 1).sorted(Comparator.comparingDouble(Piece::x)).toList()) {
            if (piece.x() - end > (item.isEmpty() ? BEHIND : APART) * piece.size()) {
                break;
            }
            item.add(piece);
            end = piece.end();
        }
        return item;
    }
}
