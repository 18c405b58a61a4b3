package reglet.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;

/**
 * Changes that reach beyond one choice: what a wall meets, choices as another wall has them, the list of wall types, findings that
 * are no longer accepted. Spliced as {@link Edits} are; text in, text out.
 */
public final class WallEdits {

    private WallEdits() {
    }

    /** The text of a wall file that meets one thing more, as yet without facts. */
    public static String meet(String wallYaml, String id, String subject) throws UnusableInput {
        Edits edits = new Edits(wallYaml);
        String line = Edits.scalar(id) + ": {as: " + Edits.scalar(subject) + "}";
        Optional<NodeTuple> meets = Edits.member(edits.root, "meets");
        if (meets.isEmpty()) {
            return edits.append("meets:" + edits.lineEnd + "  " + line);
        }
        if (!(meets.get().getValueNode() instanceof MappingNode map) || map.getValue().isEmpty()) {
            Node none = meets.get().getValueNode();
            return wallYaml.substring(0, edits.end(meets.get().getKeyNode())) + ": {" + line + "}" + wallYaml.substring(edits.end(none));
        }
        if (map.getFlowStyle() == FlowStyle.FLOW) {
            return edits.put(meets.get(), Edits.scalar(id), "{as: " + Edits.scalar(subject) + "}");
        }
        int first = edits.start(map.getValue().get(0).getKeyNode());
        String indent = wallYaml.substring(edits.lineStart(first), first);
        int after = edits.lineAfter(edits.end(map.getValue().get(map.getValue().size() - 1).getValueNode()));
        String before = wallYaml.substring(0, after);
        return before + (before.endsWith("\n") ? "" : edits.lineEnd) + indent + line + edits.lineEnd + wallYaml.substring(after);
    }

    /** The text of a wall file that no longer meets a thing; "meets" goes with the last one. */
    public static String unmeet(String wallYaml, String id) throws UnusableInput {
        Edits edits = new Edits(wallYaml);
        Optional<NodeTuple> meets = Edits.member(edits.root, "meets");
        if (meets.isEmpty() || !(meets.get().getValueNode() instanceof MappingNode map) || Edits.member(map, id).isEmpty()) {
            return wallYaml;
        }
        return map.getValue().size() == 1 ? Edits.remove(wallYaml, "meets") : edits.without(map, id);
    }

    /**
     * The text of a wall file with the choice of a component as another wall file has it, to the letter; without one where the other
     * has none.
     */
    public static String same(String wallYaml, String component, String otherYaml) throws UnusableInput {
        Edits other = new Edits(otherYaml);
        Optional<NodeTuple> wanted = Edits.member(other.root, component);
        if (wanted.isEmpty()) {
            return Edits.remove(wallYaml, component);
        }
        String value = flow(other, wanted.get().getValueNode());
        Edits edits = new Edits(wallYaml);
        Optional<NodeTuple> there = Edits.member(edits.root, component);
        if (there.isEmpty()) {
            return edits.append(component + ": " + value);
        }
        return wallYaml.substring(0, edits.end(there.get().getKeyNode())) + ": " + value
            + wallYaml.substring(edits.end(there.get().getValueNode()));
    }

    /** A value on one line: as it is written when it is so already. */
    static String flow(Edits edits, Node node) {
        String written = edits.text.substring(edits.start(node), edits.end(node));
        if (node instanceof MappingNode map && (map.getFlowStyle() != FlowStyle.FLOW || written.contains("\n"))) {
            List<String> parts = new ArrayList<>();
            map.getValue().forEach(pair -> parts.add(flow(edits, pair.getKeyNode()) + ": " + flow(edits, pair.getValueNode())));
            return "{" + String.join(", ", parts) + "}";
        } else if (node instanceof SequenceNode list && (list.getFlowStyle() != FlowStyle.FLOW || written.contains("\n"))) {
            return "[" + String.join(", ", list.getValue().stream().map(item -> flow(edits, item)).toList()) + "]";
        }
        return node instanceof ScalarNode scalar ? Edits.scalar(scalar.getValue()) : written;
    }

    /** The text of a file with another text as a value of its root: a wall's "title". */
    public static String named(String yaml, String name, String value) throws UnusableInput {
        Edits edits = new Edits(yaml);
        Optional<NodeTuple> there = Edits.member(edits.root, name);
        if (there.isEmpty()) {
            return edits.append(name + ": " + Edits.scalar(value));
        }
        Node old = there.get().getValueNode();
        return yaml.substring(0, edits.start(old)) + Edits.scalar(value) + yaml.substring(edits.end(old));
    }

    /** The text of a job file with one wall type more in its list, behind another or, for "", at the end. */
    public static String list(String jobYaml, String wall, String behind) throws UnusableInput {
        Edits edits = new Edits(jobYaml);
        Optional<NodeTuple> walls = Edits.member(edits.root, "walls");
        if (walls.isEmpty()) {
            return edits.append("walls: [" + Edits.scalar(wall) + "]");
        }
        SequenceNode list = sequence(walls.get().getValueNode());
        return with(edits, list, Edits.scalar(wall), index(list, behind));
    }

    /** The text with one item more in a list, behind another or, for a negative place, at the end. */
    static String with(Edits edits, SequenceNode list, String item, int behind) {
        String text = edits.text;
        if (list.getValue().isEmpty()) {
            return text.substring(0, edits.start(list)) + "[" + item + "]" + text.substring(edits.end(list));
        }
        Node before = list.getValue().get(behind < 0 ? list.getValue().size() - 1 : behind);
        if (list.getFlowStyle() == FlowStyle.FLOW) {
            return text.substring(0, edits.end(before)) + ", " + item + text.substring(edits.end(before));
        }
        int start = edits.lineStart(edits.start(before));
        String mark = text.substring(start, edits.start(before));
        int after = edits.lineAfter(edits.end(before));
        String kept = text.substring(0, after);
        return kept + (kept.endsWith("\n") ? "" : edits.lineEnd) + mark + item + edits.lineEnd + text.substring(after);
    }

    /** The text of a job file without a wall type in its list. */
    public static String unlist(String jobYaml, String wall) throws UnusableInput {
        Edits edits = new Edits(jobYaml);
        Optional<NodeTuple> walls = Edits.member(edits.root, "walls");
        if (walls.isEmpty()) {
            return jobYaml;
        }
        SequenceNode list = sequence(walls.get().getValueNode());
        int at = index(list, wall);
        return at < 0 ? jobYaml : without(edits, list, at);
    }

    /** The text of accepted.yaml without the entries that accept a rule on a wall type; "" for those that name no wall type. */
    public static String takeBack(String acceptedYaml, String rule, String wall) throws UnusableInput {
        if (!(Edits.node(acceptedYaml).orElse(null) instanceof SequenceNode)) {
            return acceptedYaml;
        }
        String text = acceptedYaml;
        while (Edits.node(text).orElse(null) instanceof SequenceNode list) {
            int at = -1;
            for (int i = 0; i < list.getValue().size(); i++) {
                if (list.getValue().get(i) instanceof MappingNode item && says(item, "rule", rule) && says(item, "wall", wall)) {
                    at = i;
                }
            }
            if (at < 0) {
                break;
            }
            text = without(new Edits(text, (MappingNode) list.getValue().get(at)), list, at);
        }
        return text;
    }

    private static boolean says(MappingNode item, String name, String value) {
        return Edits.member(item, name).map(pair -> pair.getValueNode() instanceof ScalarNode said ? said.getValue() : "").orElse("")
            .equals(value);
    }

    private static SequenceNode sequence(Node node) throws UnusableInput {
        if (node instanceof SequenceNode list) {
            return list;
        }
        throw new UnusableInput(new Problem(Place.of("the file"), "its walls are no list", "write \"walls: [W1]\""));
    }

    private static int index(SequenceNode list, String word) {
        for (int i = 0; i < list.getValue().size(); i++) {
            if (list.getValue().get(i) instanceof ScalarNode scalar && scalar.getValue().equals(word)) {
                return i;
            }
        }
        return -1;
    }

    /** The text without an item of a list. */
    static String without(Edits edits, SequenceNode list, int at) {
        List<Node> all = list.getValue();
        int from = edits.start(all.get(at));
        int to = edits.end(all.get(at));
        if (list.getFlowStyle() != FlowStyle.FLOW) {
            from = edits.lineStart(from);
            to = edits.lineAfter(to);
        } else if (at > 0) {
            // the comma before it goes with it
            from = edits.end(all.get(at - 1));
        } else if (all.size() > 1) {
            to = edits.start(all.get(1));
        }
        return edits.text.substring(0, from) + edits.text.substring(to);
    }
}
