package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;
import reglet.model.TextChange;

/**
 * Where the words of one drafted paragraph stand in the text of a person's block, which may hold several and lists below them: its own
 * words, without what stands below it. What is written in their place leaves all else in the block as it is.
 *
 * @param block  the whole text of the block, Markdown with slots
 * @param start  of the words in it
 * @param end    behind them
 * @param indent columns before each further line of them
 */
public record BlockPart(String block, int start, int end, int indent) {
    /** What an id says behind that of the block: a further paragraph, and what stands below. */
    private static final Pattern PLACE = Pattern.compile("(?:\\+(\\d+))?((?:/\\d+)*)");

    /** The part that a paragraph comes from; empty where that can't be told, such as where the library's words were merged in. */
    public static Optional<BlockPart> of(TextChange block, SectionDocument section, Paragraph paragraph) {
        if (!paragraph.id().startsWith(block.paragraph())) {
            return Optional.empty();
        }
        Matcher place = PLACE.matcher(paragraph.id().substring(block.paragraph().length()));
        if (!place.matches()) {
            return Optional.empty();
        }
        List<ClauseText.Part> parts = ClauseText.parts(block.text());
        int more = place.group(1) == null ? 0 : Integer.parseInt(place.group(1));
        Optional<ClauseText.Part> found = top(block, section, parts, more);
        for (String step : place.group(2).isEmpty() ? new String[0] : place.group(2).substring(1).split("/")) {
            int child = Integer.parseInt(step) - 1;
            found = found.filter(part -> child < part.children().size()).map(part -> part.children().get(child));
        }
        return found.filter(part -> part.start() >= 0 && words(part.draft().text()).equals(words(paragraph.text())))
            .map(part -> new BlockPart(block.text(), part.start(), part.end(), part.indent()));
    }

    /**
     * Of a changed text, further paragraphs are counted from it on; of an added one, from all that were added behind the same paragraph
     * before, so that the words tell which count is meant.
     */
    private static Optional<ClauseText.Part> top(TextChange block, SectionDocument section, List<ClauseText.Part> parts, int more) {
        if (block.kind() == TextChange.Kind.CHANGE) {
            return more < parts.size() ? Optional.of(parts.get(more)) : Optional.empty();
        }
        List<String> printed = IntStream.range(0, parts.size() + more).mapToObj(i -> words(section, block.paragraph() + "+" + (i + 1)))
            .toList();
        List<String> written = parts.stream().map(part -> words(part.draft().text())).toList();
        return IntStream.rangeClosed(Math.max(0, more - parts.size()), more - 1).boxed()
            .filter(before -> printed.subList(before, before + parts.size()).equals(written)).findFirst()
            .map(before -> parts.get(more - 1 - before));
    }

    private static String words(SectionDocument section, String id) {
        return section.paragraphs().stream().filter(one -> one.id().equals(id)).findFirst().map(one -> words(one.text())).orElse("");
    }

    /** What stands between slots. */
    private static String words(List<Span> text) {
        return text.stream().map(span -> span instanceof Plain || span instanceof Strong ? span.text() : "\n")
            .collect(Collectors.joining());
    }

    /** Whether the block holds nothing else. */
    public boolean isWhole() {
        return (block.substring(0, start) + block.substring(end)).isBlank();
    }

    /** The words as they are written, the lines of a list's item without its indent. */
    public String text() {
        return Stream.of(block.substring(start, end).split("\n", -1)).map(line -> line.replaceFirst("^ {0," + indent + "}", ""))
            .collect(Collectors.joining("\n"));
    }

    /** The block with other words in their place. */
    public String with(String words) {
        List<String> lines = new ArrayList<>(List.of(words.strip().split("\\R", -1)));
        for (int i = 1; i < lines.size(); i++) {
            lines.set(i, lines.get(i).isBlank() ? "" : " ".repeat(indent) + lines.get(i));
        }
        return block.substring(0, start) + String.join("\n", lines) + block.substring(end);
    }
}
