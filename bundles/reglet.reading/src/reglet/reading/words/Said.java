package reglet.reading.words;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A sentence as words in one spelling, each with its place in the text. */
public final class Said {
    /** Numbers such as "1-1/2" stay whole; hyphens and strokes between letters part words. */
    private static final Pattern WORD = Pattern.compile("(?:(?<=[\\s(])–(?=\\d)|[-+−±]?)(?:[.\\d][\\d.,]*(?:[- ]\\d+/\\d+|/\\d+|"
        + "\\s?[½¼¾⅛⅜⅝⅞⅓⅔])?|[½¼¾⅛⅜⅝⅞⅓⅔])(?:\"|'|%"
        + "|°\\s?[CF]?)?|[oO]/[cC](?!\\p{L})|[^\\s/–—()\\[\\]-]+|[–—]");
    private static final Pattern STOP = Pattern.compile(".*[,;:)]|[–—]");

    private final String text;
    private final List<Word> words = new ArrayList<>();

    /**
     * A word.
     *
     * @param plain in one spelling; "" for a dash
     * @param stop  whether a clause may end behind it
     */
    public record Word(String plain, int from, int to, boolean stop) {
    }

    public Said(String text) {
        this.text = text;
        Matcher matcher = WORD.matcher(text);
        while (matcher.find()) {
            String written = matcher.group();
            boolean figure = written.matches("[-+−±–]?[.\\d½¼¾⅛⅜⅝⅞⅓⅔].*");
            String plain = figure ? written.replaceAll("[,;]$", "") : Plain.of(written);
            boolean stop = STOP.matcher(written).matches();
            if (!plain.isEmpty()) {
                words.add(new Word(plain, matcher.start(), matcher.end(), stop));
            } else if (stop && !words.isEmpty()) {
                Word last = words.remove(words.size() - 1);
                words.add(new Word(last.plain, last.from, last.to, true));
            }
        }
    }

    public String text() {
        return text;
    }

    public int size() {
        return words.size();
    }

    public Word at(int index) {
        return words.get(index);
    }

    /** The text of some words, without the marks that end a clause. */
    public String between(int first, int end) {
        return text.substring(words.get(first).from, to(first, end)).strip();
    }

    /** Where the text of some words ends; a bracket that opens within them closes there too: "L/(s·m²)". */
    public int to(int first, int end) {
        int to = to(end);
        String inside = text.substring(words.get(first).from, to);
        boolean open = inside.indexOf('(') > 0 && inside.lastIndexOf('(') > inside.lastIndexOf(')');
        // "75 mm (3 in.)"
        int close = text.startsWith(".)", to) ? to + 1 : to;
        return open && text.startsWith(")", close) ? close + 1 : to;
    }

    /** Where the text of the words before an index ends. */
    int to(int end) {
        int to = words.get(end - 1).to;
        while (to > 0 && ",;:.".indexOf(text.charAt(to - 1)) >= 0) {
            to--;
        }
        return to;
    }

    /** Some words in one spelling with blanks between them. */
    public String plain(int first, int end) {
        StringBuilder plain = new StringBuilder();
        for (int i = first; i < end; i++) {
            plain.append(i == first ? "" : " ").append(words.get(i).plain);
        }
        return plain.toString();
    }
}
