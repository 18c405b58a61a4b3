package reglet.reading.value;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import reglet.model.Compare;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.page.SheetPage.Piece;
import reglet.reading.words.Citations;
import reglet.reading.words.Citations.Citation;

/** The standards that notes at the foot name, and the senses, by the marks that stand for them: "* Tested by ASTM E96, Procedure A." */
public final class Footnotes {
    private static final Pattern OF_ALL = Pattern.compile("(?<=[.;])\\s+(?:All|Each|Every) (?=\\p{Ll})");
    private static final String RAISED = "¹²³⁴⁵⁶⁷⁸⁹";
    /** "*", "¹", "(1)", "1.", "Note 1:" before the words of a note. */
    private static final Pattern NOTE = Pattern.compile("(?s)^\\s*(?:(?i:notes?)\\s*)?(?:([*†‡§]+|[" + RAISED
        + "])|\\(?([1-9a-e])(?:[.):]|\\s)|\\[([1-9a-e])\\])[\\s:]*(?:(?=[\\p{Lu}°])|(?<=[*†‡§][\\s:]{0,3})(?=[°\\d\\p{Ll}])).*");
    /** Where another note begins on the same line. */
    private static final Pattern NEXT = Pattern.compile("(?<=[.;])\\s+(?=(?:[*†‡§]+|\\(?[1-9a-e]\\)?)\\s+\\p{Lu}|[†‡§]+\\s*[°\\d\\p{Ll}])");
    private static final Pattern SIGN = Pattern.compile("(?<=\\S)\\s?([*†‡§]+)(?=\\s|$|[,;:)])");
    private static final Pattern SIGNS = Pattern.compile("[*†‡§]+");
    private static final Pattern BEHIND = Pattern.compile("(?<=\\S)\\s?([*†‡§]+|[" + RAISED + "])(?=\\s|$|[,;:)])");
    /** What stands before the last of several names. */
    private static final Pattern PARTS = Pattern.compile("(?s)^.*(?:[,;:&]|\\band\\b)");
    private static final Pattern POWER = Pattern.compile("(?i).*(?:^|[^a-z])(?:in|ft|yd|mm|cm|m|s)\\.?$", Pattern.DOTALL);
    private static final Pattern BRACKETS = Pattern.compile("[(\\[](?:see )?(?:notes?\\s*)?([1-9a-e])[)\\]]\\s*$|\\bnote ([1-9a-e])\\b",
        Pattern.CASE_INSENSITIVE);
    private static final int MOST_LINES = 3;

    /** "¹ Minimum, uncoated": the sense of the amounts that it is marked at. */
    private static final Pattern LIMIT = Pattern.compile("(?is)^\\W*(?:[1-9a-e]\\b)?\\W*(?:(min(?:imums?|\\.))"
        + "|(max(?:imums?|\\.)))(?=[\\s,.;]|$).*");

    private final Map<String, List<Citation>> notes = new HashMap<>();
    private final Map<String, Compare> senses = new HashMap<>();

    public Footnotes(List<Layout> layouts, Citations citations) {
        for (Layout layout : layouts) {
            List<Line> lines = layout.lines();
            for (int i = 0; i < lines.size(); i++) {
                for (Cell cell : lines.get(i).cells()) {
                    String mark = mark(raw(cell.pieces()));
                    if (!mark.isEmpty()) {
                        String[] parts = NEXT.split(whole(lines, i, cell));
                        note(layout.page() + mark, own(parts[0]), citations);
                        for (int j = 1; j < parts.length; j++) {
                            note(layout.page() + mark(parts[j]), own(parts[j]), citations);
                        }
                    }
                }
            }
        }
        notes.values().removeIf(List::isEmpty);
    }

    private void note(String mark, String words, Citations citations) {
        notes.putIfAbsent(mark, citations.in(words));
        Matcher limit = LIMIT.matcher(words);
        if (limit.matches()) {
            senses.putIfAbsent(mark, limit.group(1) == null ? Compare.AT_MOST : Compare.AT_LEAST);
        }
    }

    /** What a note says of what it is marked at: "All parts: coated, 1,000 h of salt spray (ASTM B117)" behind it is of the product. */
    private static String own(String note) {
        return OF_ALL.split(note, 2)[0];
    }

    /** The mark of the note that some words begin; "". */
    private static String mark(String words) {
        Matcher note = NOTE.matcher(words);
        if (!note.matches()) {
            return "";
        }
        String sign = note.group(1) != null ? note.group(1) : note.group(2) != null ? note.group(2) : note.group(3);
        return plain(sign);
    }

    private static String plain(String sign) {
        int raised = RAISED.indexOf(sign);
        return raised >= 0 ? Integer.toString(raised + 1) : sign.toLowerCase(Locale.ROOT);
    }

    /** The words of a note that may run over some lines. */
    private static String whole(List<Line> lines, int from, Cell first) {
        StringBuilder words = new StringBuilder(marked(first));
        double last = first.y();
        for (int i = from + 1; i < Math.min(lines.size(), from + MOST_LINES); i++) {
            Cell next = lines.get(i).cells().get(0);
            boolean goesOn = next.y() - last < 1.7 * first.size() && mark(raw(next.pieces())).isEmpty()
                && Math.abs(next.left() - first.left()) < 3 * first.size();
            if (!goesOn) {
                break;
            }
            words.append(' ').append(marked(next));
            last = next.y();
        }
        return words.toString();
    }

    /** The words of a cell; with the marks among them, which may begin further notes. */
    private static String marked(Cell cell) {
        return cell.pieces().stream().skip(1).anyMatch(piece -> Cell.isRaised(piece, cell.y(), cell.size())
            || SIGNS.matcher(piece.text()).matches()) ? raw(cell.pieces()) : cell.text();
    }

    private static String raw(List<Piece> pieces) {
        return pieces.stream().map(Piece::text).collect(Collectors.joining(" "));
    }

    /** The standards that the notes name whose marks stand in some cells of a page. */
    public List<Citation> of(int page, Cell... cells) {
        List<Citation> all = new ArrayList<>();
        if (!notes.isEmpty()) {
            marks(cells).forEach(mark -> all.addAll(notes.getOrDefault(page + mark, List.of())));
        }
        return all;
    }

    /** The sense that a note says the amounts have whose mark stands in one of some cells of a page. */
    public Optional<Compare> sense(int page, Cell... cells) {
        return senses.isEmpty() ? Optional.empty() : marks(cells).stream().map(mark -> senses.get(page + mark)).filter(Objects::nonNull)
            .findFirst();
    }

    private static Set<String> marks(Cell... cells) {
        Set<String> marks = new LinkedHashSet<>();
        for (Cell cell : cells) {
            if (cell != null) {
                marks(cell, marks);
            }
        }
        return marks;
    }

    /** The standards that the notes name whose marks stand right behind such words of a cell. */
    public List<Citation> behind(int page, Cell cell, Predicate<String> words) {
        String raw = notes.isEmpty() ? "" : raw(cell.pieces());
        Matcher sign = BEHIND.matcher(raw);
        while (sign.find()) {
            String before = PARTS.matcher(raw.substring(0, sign.start())).replaceFirst("").strip();
            List<Citation> cited = notes.getOrDefault(page + plain(sign.group(1)), List.of());
            if (!cited.isEmpty() && words.test(before)) {
                return cited;
            }
        }
        return List.of();
    }

    private static void marks(Cell cell, Set<String> marks) {
        StringBuilder before = new StringBuilder();
        Piece last = null;
        for (Piece piece : cell.pieces()) {
            // the mark may stand on the second line of a heading
            boolean raised = Cell.isRaised(piece, cell.y(), cell.size()) || last != null && piece.x() >= last.x() + last.width() - 1
                && Cell.isRaised(piece, last.y(), last.size());
            last = piece;
            boolean power = POWER.matcher(before).matches();
            if (raised && !power && !before.isEmpty()) {
                Matcher each = Pattern.compile("[*†‡§]+|[1-9a-e]").matcher(piece.text());
                while (piece.text().matches("[*†‡§1-9a-e,\\s]+") && each.find()) {
                    marks.add(each.group());
                }
            }
            for (int i = 0; i < piece.text().length(); i++) {
                char letter = piece.text().charAt(i);
                if (RAISED.indexOf(letter) >= 0 && !POWER.matcher(before + piece.text().substring(0, i)).matches()) {
                    marks.add(plain(String.valueOf(letter)));
                }
            }
            before.append(before.isEmpty() ? "" : " ").append(piece.text());
        }
        Matcher sign = SIGN.matcher(before);
        while (sign.find()) {
            marks.add(sign.group(1));
        }
        Matcher brackets = BRACKETS.matcher(before);
        while (brackets.find()) {
            marks.add((brackets.group(1) == null ? brackets.group(2) : brackets.group(1)).toLowerCase(Locale.ROOT));
        }
    }
}
