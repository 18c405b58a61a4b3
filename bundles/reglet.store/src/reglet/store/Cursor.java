package reglet.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

import reglet.model.Dates;
import reglet.model.Day;
import reglet.model.Place;

/**
 * A place in a YAML file. Scalars are strings, whatever they look like, so that an edition "2021" is never a number. Whatever is
 * not as asked becomes a problem with its place, and reading goes on with nothing there.
 */
final class Cursor {
    private static final LoadSettings SETTINGS = LoadSettings.builder()
        .setSchema(new FailsafeSchema())
        .setMaxAliasesForCollections(0)
        .setAllowDuplicateKeys(true)
        .build();

    private final String file;
    private final int linesBefore;
    private final Node node;
    private final Problems problems;

    private Cursor(String file, int linesBefore, Node node, Problems problems) {
        this.file = file;
        this.linesBefore = linesBefore;
        this.node = node;
        this.problems = problems;
    }

    /**
     * @param linesBefore lines of the file before the text, for YAML that stands in front of another text
     * @return empty, with a problem unless the text holds nothing, when it is no YAML
     */
    static Optional<Cursor> parse(String file, String text, int linesBefore, Problems problems) {
        try {
            Optional<Node> node = new Compose(SETTINGS).composeString(text);
            return node.map(found -> new Cursor(file, linesBefore, found, problems));
        } catch (MarkedYamlEngineException wrong) {
            Place at = wrong.getProblemMark()
                .map(mark -> new Place(file, mark.getLine() + 1 + linesBefore, mark.getColumn() + 1)).orElse(Place.of(file));
            problems.add(at, "is not YAML: " + wrong.getProblem(), "check indentation, colons and quotes near here");
        } catch (YamlEngineException wrong) {
            problems.add(Place.of(file), "is not YAML: " + firstLine(wrong.getMessage()), "check indentation, colons and quotes");
        } catch (StackOverflowError tooDeep) {
            problems.add(Place.of(file), "is nested too deeply", "expected a few levels");
        }
        return Optional.empty();
    }

    private static String firstLine(String text) {
        int end = text.indexOf('\n');
        return end < 0 ? text : text.substring(0, end);
    }

    Place at() {
        return node.getStartMark().map(mark -> new Place(file, mark.getLine() + 1 + linesBefore, mark.getColumn() + 1))
            .orElse(Place.of(file));
    }

    Problems problems() {
        return problems;
    }

    void wrong(String what, String expected) {
        problems.add(at(), what, expected);
    }

    boolean isMap() {
        return node instanceof MappingNode;
    }

    boolean isList() {
        return node instanceof SequenceNode;
    }

    /** The text of a scalar; "" with a problem for anything else. */
    String text() {
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue();
        }
        wrong("found " + kind(), "expected a text");
        return "";
    }

    /** A date as ISO 8601 writes it; empty, with a problem, when the text is none. */
    Optional<LocalDate> date() {
        Optional<LocalDate> date = Day.parse(text()).map(Day::date);
        if (date.isEmpty()) {
            noDate();
        }
        return date;
    }

    /** Says that the text is no date, and what to write instead. */
    void noDate() {
        wrong("\"" + text() + "\" is no date", Dates.expected(text()));
    }

    /** The members of a list; a single text counts as a list of one. */
    List<Cursor> items() {
        if (node instanceof SequenceNode list) {
            List<Cursor> items = new ArrayList<>();
            list.getValue().forEach(item -> items.add(new Cursor(file, linesBefore, item, problems)));
            return items;
        }
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue().isEmpty() ? List.of() : List.of(this);
        }
        wrong("found " + kind(), "expected a list");
        return List.of();
    }

    List<String> texts() {
        return items().stream().map(Cursor::text).toList();
    }

    /** A map's members with any names, in the order written. */
    Map<String, Cursor> members() {
        Map<String, Cursor> members = new LinkedHashMap<>();
        if (node instanceof MappingNode map) {
            for (NodeTuple pair : map.getValue()) {
                Cursor key = new Cursor(file, linesBefore, pair.getKeyNode(), problems);
                String name = key.text();
                if (members.put(name, new Cursor(file, linesBefore, pair.getValueNode(), problems)) != null) {
                    key.wrong("\"" + name + "\" stands here a second time", "keep one of them");
                }
            }
        } else if (!(node instanceof ScalarNode scalar && scalar.getValue().isEmpty())) {
            wrong("found " + kind(), "expected names with values");
        }
        return members;
    }

    /** A map's members, of which each must be one of those known. */
    Fields fields(Collection<String> known) {
        Map<String, Cursor> members = members();
        if (node instanceof MappingNode map) {
            for (NodeTuple pair : map.getValue()) {
                Cursor key = new Cursor(file, linesBefore, pair.getKeyNode(), problems);
                if (pair.getKeyNode() instanceof ScalarNode name && !known.contains(name.getValue())) {
                    problems.unknown(key.at(), "unknown name", name.getValue(), known);
                }
            }
        }
        return new Fields(this, members);
    }

    Fields fields(String... known) {
        return fields(List.of(known));
    }

    private String kind() {
        return node instanceof MappingNode ? "names with values" : node instanceof SequenceNode ? "a list" : "a text";
    }
}
