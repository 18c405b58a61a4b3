package reglet.store;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Place;
import reglet.model.TextChange;
import reglet.model.TextChange.Kind;

/** Reads what a job changes in a drafted section: blocks that begin with {@code ## change ID}, {@code ## strike ID} or {@code ## add after ID}. */
final class SectionText {
    private static final Pattern HEAD = Pattern.compile("##\\s+(change|strike|add after)\\s+(\\S+)\\s*");
    private static final String EXPECTED = "expected \"## change PARAGRAPH\", \"## strike PARAGRAPH\" or \"## add after PARAGRAPH\"";

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
                changes.add(change(section, head, List.of(lines).subList(line + 1, end), at, problems));
            } else {
                problems.add(at, "unknown heading \"" + lines[line] + "\"", EXPECTED);
            }
            line = end;
        }
        return changes;
    }

    private static TextChange change(String section, Matcher head, List<String> lines, Place at, Problems problems) {
        Kind kind = switch (head.group(1)) {
            case "change" -> Kind.CHANGE;
            case "strike" -> Kind.STRIKE;
            default -> Kind.ADD;
        };
        StringBuilder madeOn = new StringBuilder();
        StringBuilder text = new StringBuilder();
        Place textAt = at;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.startsWith(">")) {
                madeOn.append(line.substring(1).strip()).append('\n');
            } else {
                if (text.toString().isBlank() && !line.isBlank()) {
                    textAt = new Place(at.file(), at.line() + 1 + i, 1);
                }
                text.append(line).append('\n');
            }
        }
        String own = text.toString().strip();
        if (kind == Kind.STRIKE && !own.isEmpty()) {
            problems.add(at, "a struck paragraph has a text", "take the text away, or write \"## change " + head.group(2) + "\"");
        }
        if (kind != Kind.STRIKE && own.isEmpty()) {
            problems.add(at, "the block has no text of its own", "write it below, or write \"## strike " + head.group(2) + "\"");
        }
        return new TextChange(section, head.group(2), kind, own, madeOn.toString().strip(), at, textAt);
    }
}
