package reglet.store;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Place;
import reglet.model.TextChange;
import reglet.model.TextChange.Kind;

/**
 * Reads what a job changes in a drafted section: blocks that begin with {@code ## change ID}, {@code ## strike ID}, {@code ## add after
 * ID},
 * {@code ## move ID after ID} or {@code ## leave out COMPONENT.PROPERTY}. {@link SectionEdits} writes them.
 */
final class SectionText {
    static final Pattern HEAD = Pattern.compile("##\\s+(?:(change|strike|add after|leave out)\\s+(\\S+)"
        + "|(move)\\s+(\\S+)\\s+after\\s+(\\S+))\\s*");
    private static final String EXPECTED = "expected \"## change PARAGRAPH\", \"## strike PARAGRAPH\", \"## add after PARAGRAPH\", "
        + "\"## move PARAGRAPH after PARAGRAPH\" or \"## leave out COMPONENT.PROPERTY\"";

    private SectionText() {
    }

    static List<TextChange> read(String file, String section, String text, Problems problems) {
        List<TextChange> changes = new ArrayList<>();
        String[] lines = text.replace("\r\n", "\n").split("\n", -1);
        int line = 0;
        while (line < lines.length && !lines[line].startsWith("## ")) {
            // a title and remarks may stand above the first block
            line++;
        }
        while (line < lines.length) {
            Place at = new Place(file, line + 1, 1);
            Matcher head = HEAD.matcher(lines[line]);
            int end = line + 1;
            while (end < lines.length && !lines[end].startsWith("## ")) {
                end++;
            }
            if (head.matches()) {
                TextChange change = change(section, head, List.of(lines).subList(line + 1, end), at, problems);
                changes.stream().filter(before -> sameMatter(before, change)).findFirst().ifPresent(before -> problems.add(at,
                    "\"" + change.paragraph() + "\" is " + done(change.kind()) + " twice",
                    "expected one block; the other stands in line " + before.at().line()));
                changes.add(change);
            } else {
                problems.add(at, "unknown heading \"" + lines[line] + "\"", EXPECTED);
            }
            line = end;
        }
        return changes;
    }

    /** Whether only one of two blocks could come to pass. */
    private static boolean sameMatter(TextChange one, TextChange other) {
        return one.paragraph().equals(other.paragraph()) && one.kind() != Kind.ADD && other.kind() != Kind.ADD
            && done(one.kind()).equals(done(other.kind()));
    }

    private static String done(Kind kind) {
        return switch (kind) {
            case CHANGE, STRIKE -> "changed or struck";
            case ADD -> "added";
            case MOVE -> "moved";
            case LEAVE_OUT -> "left out";
        };
    }

    private static TextChange change(String section, Matcher head, List<String> lines, Place at, Problems problems) {
        Kind kind = head.group(3) != null ? Kind.MOVE : switch (head.group(1)) {
            case "change" -> Kind.CHANGE;
            case "strike" -> Kind.STRIKE;
            case "leave out" -> Kind.LEAVE_OUT;
            default -> Kind.ADD;
        };
        String paragraph = kind == Kind.MOVE ? head.group(4) : head.group(2);
        StringBuilder madeOn = new StringBuilder();
        StringBuilder text = new StringBuilder();
        Place textAt = at;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.startsWith(">")) {
                // A list below the library's text keeps its indents.
                madeOn.append(line.substring(line.startsWith("> ") ? 2 : 1).stripTrailing()).append('\n');
            } else {
                if (text.toString().isBlank() && !line.isBlank()) {
                    textAt = new Place(at.file(), at.line() + 1 + i, 1);
                }
                text.append(line).append('\n');
            }
        }
        String own = text.toString().strip();
        if (kind == Kind.STRIKE && !own.isEmpty()) {
            problems.add(at, "a struck paragraph has a text", "take the text away, or write \"## change " + paragraph + "\"");
        }
        if (kind == Kind.MOVE && !(own.isEmpty() && madeOn.toString().isBlank())) {
            problems.add(at, "a moved paragraph has a text", "write it in a block of its own: \"## change " + paragraph + "\"");
        }
        if (kind == Kind.MOVE && paragraph.equals(head.group(5))) {
            problems.add(at, "\"" + paragraph + "\" is moved behind itself", "expected the id of another paragraph");
        }
        if ((kind == Kind.CHANGE || kind == Kind.ADD) && own.isEmpty()) {
            problems.add(at, "the block has no text of its own", "write it below, or write \"## strike " + paragraph + "\"");
        }
        if (kind == Kind.LEAVE_OUT && own.isEmpty()) {
            problems.add(at, "\"" + paragraph + "\" is left out without a reason", "write below it why the section does not state it");
        }
        return new TextChange(section, paragraph, kind, own, madeOn.toString().strip(),
            kind == Kind.MOVE ? head.group(5) : "", at, textAt);
    }
}
