package reglet.store;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Changes to the file in which a job keeps its changes of a section ({@code sections/04-73-00.md}): text in, text out. Only the block that
 * is meant changes; remarks, order and line ends stay. A file without
 * blocks and remarks comes out as "", which is no file.
 */
public final class SectionEdits {
    private static final String HEAD = "## ";
    private static final String QUOTE = ">";

    private SectionEdits() {
    }

    /** The file of a section: "sections/04-73-00.md". */
    public static String file(String section) {
        return "sections/" + section.replace(' ', '-').replace('.', '-') + ".md";
    }

    /**
     * A paragraph with another text, in place of what was done to it before; a move of it stays.
     *
     * @param own    Markdown of the person's text, with slots
     * @param madeOn the library's text that it was made on, with slots; "" when there is none
     * @throws IllegalArgumentException when the text is empty
     */
    public static String change(String text, String paragraph, String own, String madeOn) {
        return put(text, paragraph, HEAD + "change " + paragraph, quoted(madeOn) + written(own));
    }

    /** A paragraph struck. */
    public static String strike(String text, String paragraph, String madeOn) {
        return put(text, paragraph, HEAD + "strike " + paragraph, quoted(madeOn));
    }

    /** A paragraph more, behind another and what was added behind that before. */
    public static String add(String text, String after, String own) {
        return append(text, HEAD + "add after " + after, written(own));
    }

    /** A paragraph moved behind another, in place of a move before. */
    public static String move(String text, String paragraph, String after) {
        String head = HEAD + "move " + paragraph + " after " + after;
        return blocks(text).stream().filter(block -> block.moves(paragraph)).findFirst()
            .map(block -> replaced(text, block, head, "")).orElseGet(() -> append(text, head, ""));
    }

    /**
     * A requirement that the section leaves out on purpose, in place of what was said of it before.
     *
     * @param key the slot that would print it: "lath.weight"
     * @throws IllegalArgumentException when no reason is given
     */
    public static String leaveOut(String text, String key, String because) {
        if (because.isBlank()) {
            throw new IllegalArgumentException("\"" + key + "\" is left out without a reason");
        }
        String head = HEAD + "leave out " + key;
        return blocks(text).stream().filter(block -> block.leavesOut(key)).findFirst()
            .map(block -> replaced(text, block, head, written(because))).orElseGet(() -> append(text, head, written(because)));
    }

    /** A requirement that the section states again. */
    public static String stateAgain(String text, String key) {
        return blocks(text).stream().filter(block -> block.leavesOut(key)).findFirst().map(block -> without(text, block)).orElse(text);
    }

    /** A paragraph as the library has it: no longer changed, struck or moved. What was added behind it stays. */
    public static String giveBack(String text, String paragraph) {
        String left = text;
        for (Block block : reversed(blocks(text))) {
            if (block.changes(paragraph) || block.moves(paragraph)) {
                left = without(left, block);
            }
        }
        return left;
    }

    /**
     * The block whose heading stands in a line with another text of the person; what it quotes stays.
     *
     * @param line of the heading, from 1
     * @throws IllegalArgumentException when no block begins there, or the text is empty
     */
    public static String rewrite(String text, int line, String own) {
        Block block = at(text, line);
        List<Integer> words = IntStream.range(1, block.lines().size()).filter(i -> !block.lines().get(i).isBlank()
            && !block.lines().get(i).startsWith(QUOTE)).boxed().toList();
        if (!words.isEmpty() && block.lines().subList(words.get(0), words.get(words.size() - 1)).stream().noneMatch(one -> one.startsWith(
            QUOTE))) {
            List<String> whole = new ArrayList<>(lines(text));
            List<String> before = whole.subList(block.first() + words.get(0), block.first() + words.get(words.size() - 1) + 1);
            before.clear();
            before.addAll(lines(written(own).stripTrailing()));
            return joined(text, whole);
        }
        String quote = block.lines().stream().skip(1).filter(one -> one.startsWith(QUOTE)).collect(Collectors.joining("\n"));
        return replaced(text, block, block.head(), (quote.isEmpty() ? "" : quote + "\n\n") + written(own));
    }

    /** The block whose heading stands in a line, made on the library's text of today; what the person wrote stays. */
    public static String requote(String text, int line, String madeOn) {
        Block block = at(text, line);
        String own = block.lines().stream().skip(1).filter(one -> !one.startsWith(QUOTE)).collect(Collectors.joining("\n")).strip();
        return replaced(text, block, block.head(), quoted(madeOn) + (own.isEmpty() ? "" : own + "\n"));
    }

    /** Without the block whose heading stands in a line. */
    public static String remove(String text, int line) {
        return without(text, at(text, line));
    }

    // ---- blocks

    /**
     * @param first index of the heading's line
     * @param lines from the heading to the line before the next one, without line ends
     */
    private record Block(int first, List<String> lines) {
        String head() {
            return lines.get(0);
        }

        /** Whether it changes or strikes a paragraph. */
        boolean changes(String paragraph) {
            Matcher head = SectionText.HEAD.matcher(head());
            return head.matches() && List.of("change", "strike").contains(String.valueOf(head.group(1))) && head.group(2).equals(paragraph);
        }

        boolean leavesOut(String key) {
            Matcher head = SectionText.HEAD.matcher(head());
            return head.matches() && "leave out".equals(head.group(1)) && head.group(2).equals(key);
        }

        boolean moves(String paragraph) {
            Matcher head = SectionText.HEAD.matcher(head());
            return head.matches() && head.group(3) != null && head.group(4).equals(paragraph);
        }
    }

    private static List<String> lines(String text) {
        return List.of(text.replace("\r\n", "\n").split("\n", -1));
    }

    private static List<Block> blocks(String text) {
        List<String> lines = lines(text);
        List<Integer> heads = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(HEAD)) {
                heads.add(i);
            }
        }
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) {
            blocks.add(new Block(heads.get(i), lines.subList(heads.get(i), i + 1 < heads.size() ? heads.get(i + 1) : lines.size())));
        }
        return blocks;
    }

    private static List<Block> reversed(List<Block> blocks) {
        List<Block> reversed = new ArrayList<>(blocks);
        Collections.reverse(reversed);
        return reversed;
    }

    private static Block at(String text, int line) {
        return blocks(text).stream().filter(block -> block.first() == line - 1).findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no block begins in line " + line));
    }

    private static String put(String text, String paragraph, String head, String body) {
        return blocks(text).stream().filter(block -> block.changes(paragraph)).findFirst()
            .map(block -> replaced(text, block, head, body)).orElseGet(() -> append(text, head, body));
    }

    private static String replaced(String text, Block block, String head, String body) {
        List<String> lines = lines(text);
        List<String> after = lines.subList(block.first() + block.lines().size(), lines.size());
        List<String> whole = new ArrayList<>(lines.subList(0, block.first()));
        whole.add(head);
        whole.addAll(lines(body.stripTrailing()).stream().filter(line -> !body.isBlank()).toList());
        whole.add("");
        whole.addAll(after);
        return joined(text, whole);
    }

    private static String without(String text, Block block) {
        List<String> lines = lines(text);
        List<String> whole = new ArrayList<>(lines.subList(0, block.first()));
        whole.addAll(lines.subList(block.first() + block.lines().size(), lines.size()));
        while (whole.size() > 1 && whole.get(whole.size() - 1).isEmpty() && whole.get(whole.size() - 2).isEmpty()) {
            whole.remove(whole.size() - 1);
        }
        return whole.stream().anyMatch(line -> !line.isBlank()) ? joined(text, whole) : "";
    }

    private static String append(String text, String head, String body) {
        String before = text.replace("\r\n", "\n").stripTrailing();
        String whole = (before.isEmpty() ? "" : before + "\n\n") + head + "\n" + (body.isBlank() ? "" : body.stripTrailing() + "\n");
        return joined(text, lines(whole));
    }

    private static String joined(String like, List<String> lines) {
        return String.join(like.contains("\r\n") ? "\r\n" : "\n", lines);
    }

    private static String quoted(String madeOn) {
        return madeOn.isBlank() ? "" : Stream.of(madeOn.strip().split("\\R"))
            .map(line -> (QUOTE + " " + line).stripTrailing()).collect(Collectors.joining("\n")) + "\n\n";
    }

    /** A line of a person's that would begin a block or a quote is text: Markdown takes the sign behind a backslash as it is. */
    private static String written(String own) {
        if (own.isBlank()) {
            throw new IllegalArgumentException("the text is empty; a paragraph without text is struck");
        }
        return Stream.of(own.strip().split("\\R", -1)).map(line -> line.startsWith(HEAD) || line.startsWith(QUOTE) ? "\\" + line : line)
            .collect(Collectors.joining("\n")) + "\n";
    }
}
