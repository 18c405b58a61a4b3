package reglet.store;

import java.util.List;
import java.util.Optional;

import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

import reglet.model.Accepted;
import reglet.model.Choice;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.ProductData;
import reglet.model.SheetValue;
import reglet.model.UnusableInput;

/**
 * Changes to the text of YAML files, made by replacing the characters that change: comments, order, quotes and line ends of
 * everything else stay as they are. Text in, text out; nothing is written here.
 */
public final class Edits {
    private static final LoadSettings SETTINGS = LoadSettings.builder().setSchema(new FailsafeSchema()).setUseMarks(true).build();

    final String text;
    final MappingNode root;
    final String lineEnd;

    Edits(String text) throws UnusableInput {
        this(text, root(text));
    }

    /** Changes to a text whose root is read already. */
    Edits(String text, MappingNode root) {
        this.text = text;
        this.lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
        this.root = root;
    }

    private static MappingNode root(String text) throws UnusableInput {
        if (node(text).orElse(null) instanceof MappingNode map) {
            return map;
        }
        throw new UnusableInput(new Problem(Place.of("the file"), "is no YAML with names and values", "mend it before changing a choice"));
    }

    /** The root of a text, whatever it is; empty for none, and for what is no YAML: reading the file says where. */
    static Optional<Node> node(String text) {
        try {
            return new Compose(SETTINGS).composeString(text);
        } catch (YamlEngineException noYaml) {
            return Optional.empty();
        }
    }

    private static String list(List<String> accept) {
        return "[" + String.join(", ", accept.stream().map(Edits::scalar).toList()) + "]";
    }

    /** The text of a wall file with these options accepted in an alternate's version of a choice, which has to be there. */
    public static String choose(String wallYaml, String component, String alternate, List<String> accept) throws UnusableInput {
        Edits edits = new Edits(wallYaml);
        return edits.put(edits.owner(List.of(component, Choice.VERSIONS, alternate, "accept")), "accept", list(accept));
    }

    /** The text of a wall file with these options accepted for a component. */
    public static String choose(String wallYaml, String component, List<String> accept) throws UnusableInput {
        String list = list(accept);
        Edits edits = new Edits(wallYaml);
        Optional<NodeTuple> choice = member(edits.root, component);
        return choice.isEmpty() ? edits.append(component + ": {accept: " + list + "}") : edits.put(choice.get(), "accept", list);
    }

    /** The text of a wall file with a value set over those of the component's options; the component must be chosen. */
    public static String set(String wallYaml, String component, String property, String value) throws UnusableInput {
        Edits edits = new Edits(wallYaml);
        NodeTuple choice = member(edits.root, component).orElseThrow(() -> new UnusableInput(new Problem(Place.of("the wall file"),
            "nothing is accepted for " + component, "choose an option before setting a value")));
        return edits.put(choice, property, scalar(value));
    }

    /** The text of a wall file without the choice of a component. */
    public static String remove(String wallYaml, String component) throws UnusableInput {
        Edits edits = new Edits(wallYaml);
        Optional<NodeTuple> choice = member(edits.root, component);
        if (choice.isEmpty()) {
            return wallYaml;
        }
        int start = edits.lineStart(edits.start(choice.get().getKeyNode()));
        return wallYaml.substring(0, start) + wallYaml.substring(edits.lineAfter(edits.end(choice.get().getValueNode())));
    }

    /**
     * The text of a file with a value at a path of names: {@code [wall, cavity]} or {@code [meets, base-1, clearance]} of a wall file,
     * {@code [site, climate]} of a job's. All but the last name, or the first alone where it is one of two, have to be there.
     */
    public static String state(String yaml, List<String> path, String value) throws UnusableInput {
        Edits edits = new Edits(yaml);
        if (path.size() == 2 && member(edits.root, path.get(0)).isEmpty()) {
            return edits.append(path.get(0) + ": {" + path.get(1) + ": " + scalar(value) + "}");
        }
        return edits.put(edits.owner(path), path.get(path.size() - 1), scalar(value));
    }

    /** The text of a file without the value at a path of names; the same text when there is none. */
    public static String unstate(String yaml, List<String> path) throws UnusableInput {
        Edits edits = new Edits(yaml);
        return edits.owner(path).getValueNode() instanceof MappingNode map ? edits.without(map, path.get(path.size() - 1)) : yaml;
    }

    /** What holds the last name of a path. */
    private NodeTuple owner(List<String> path) throws UnusableInput {
        NodeTuple owner = null;
        for (String name : path.subList(0, path.size() - 1)) {
            Node in = owner == null ? root : owner.getValueNode();
            owner = (in instanceof MappingNode map ? member(map, name) : Optional.<NodeTuple>empty()).orElseThrow(() -> new UnusableInput(
                new Problem(Place.of("the file"), "there is no \"" + name + "\"", "write it before setting " + String.join(".", path))));
        }
        return owner;
    }

    String without(MappingNode map, String name) {
        List<NodeTuple> all = map.getValue();
        NodeTuple gone = member(map, name).orElse(null);
        if (gone == null) {
            return text;
        }
        int at = all.indexOf(gone);
        int from = start(gone.getKeyNode());
        int to = end(gone.getValueNode());
        if (map.getFlowStyle() != FlowStyle.FLOW) {
            boolean behindDash = !text.substring(lineStart(from), from).isBlank() && all.size() > 1;
            from = behindDash ? from : lineStart(from);
            to = behindDash ? start(all.get(1).getKeyNode()) : lineAfter(to);
        } else if (at > 0) {
            // the comma before it goes with it
            from = end(all.get(at - 1).getValueNode());
        } else if (all.size() > 1) {
            to = start(all.get(1).getKeyNode());
        }
        return text.substring(0, from) + text.substring(to);
    }

    /** The text of accepted.yaml with one finding more. */
    public static String accept(String acceptedYaml, Accepted accepted) {
        String end = acceptedYaml.contains("\r\n") ? "\r\n" : "\n";
        String before = acceptedYaml.isBlank() || acceptedYaml.endsWith("\n") ? acceptedYaml : acceptedYaml + end;
        StringBuilder item = new StringBuilder("- rule: ").append(scalar(accepted.rule())).append(end);
        if (!accepted.wall().isEmpty()) {
            item.append("  wall: ").append(scalar(accepted.wall())).append(end);
        }
        return before + item.append("  because: ").append(scalar(accepted.because())).append(end).append("  by: ")
            .append(scalar(accepted.by())).append(end);
    }

    /**
     * The text of a product file with these values in it: those there are replaced, the others added, and everything else stays.
     *
     * @param productYaml the text there is; "" for a product that has no file yet, which gets one of this product
     */
    public static String product(String productYaml, ProductData product) throws UnusableInput {
        if (productYaml.isBlank()) {
            return ProductText.of(product);
        }
        String text = productYaml;
        for (SheetValue value : product.values()) {
            text = new Edits(text).value(value);
        }
        if (product.report().isPresent()) {
            Edits edits = new Edits(text);
            // what a person wrote of the report stays
            boolean there = member(edits.root, "report").isPresent() || member(edits.root, "conditions").isPresent();
            text = there ? text : edits.append(ReportText.of(product.report().get()).stripTrailing().replace("\n", edits.lineEnd));
        }
        return text;
    }

    private String value(SheetValue value) throws UnusableInput {
        Optional<NodeTuple> values = member(root, "values");
        if (values.isEmpty()) {
            return append("values:\n" + ProductText.value(value, "  ").stripTrailing()).replace("\n", lineEnd).replace("\r\r", "\r");
        }
        if (!(values.get().getValueNode() instanceof MappingNode map) || map.getFlowStyle() == FlowStyle.FLOW || map.getValue().isEmpty()) {
            throw new UnusableInput(new Problem(Place.of("the product file"), "its values do not stand one below the other",
                "write each on a line of its own below \"values:\", or take the line away"));
        }
        int first = start(map.getValue().get(0).getKeyNode());
        String indent = text.substring(lineStart(first), first);
        String written = ProductText.value(value, indent).replace("\n", lineEnd);
        Optional<NodeTuple> there = member(map, value.property().substring(value.property().indexOf('.') + 1));
        if (there.isPresent()) {
            return text.substring(0, lineStart(start(there.get().getKeyNode()))) + written + text.substring(lineAfter(end(there.get()
                .getValueNode())));
        }
        int last = lineAfter(end(map.getValue().get(map.getValue().size() - 1).getValueNode()));
        String before = text.substring(0, last);
        return before + (before.endsWith("\n") ? "" : lineEnd) + written + text.substring(last);
    }

    /** Gives a member of a component's map a value: replaces the one there, or adds one as the first. */
    String put(NodeTuple choice, String name, String value) throws UnusableInput {
        if (!(choice.getValueNode() instanceof MappingNode map)) {
            throw new UnusableInput(new Problem(Place.of("the file"), "the choice holds no names with values", "mend it first"));
        }
        return put(map, name, value);
    }

    /** The same for a map. */
    String put(MappingNode map, String name, String value) {
        Optional<NodeTuple> there = member(map, name);
        if (there.isPresent()) {
            Node old = there.get().getValueNode();
            boolean block = old instanceof CollectionNode<?> collection && collection.getFlowStyle() == FlowStyle.BLOCK;
            // a list below its name moves up beside it
            String before = block ? text.substring(0, end(there.get().getKeyNode())) + ": " : text.substring(0, start(old));
            return before + value + text.substring(end(old));
        }
        if (map.getFlowStyle() == FlowStyle.FLOW) {
            int close = end(map) - 1;
            String before = text.substring(0, close);
            String gap = map.getValue().isEmpty() || before.stripTrailing().endsWith(",") ? "" : ", ";
            String kept = before.stripTrailing();
            return kept + gap + name + ": " + value + before.substring(kept.length()) + text.substring(close);
        }
        int first = start(map.getValue().get(0).getKeyNode());
        // the first name of an item of a list stands behind the item's dash
        String indent = text.substring(lineStart(first), first).replaceAll("\\S", " ");
        return text.substring(0, first) + name + ": " + value + lineEnd + indent + text.substring(first);
    }

    String append(String line) {
        String before = text.isEmpty() || text.endsWith("\n") ? text : text + lineEnd;
        return before + line + lineEnd;
    }

    static Optional<NodeTuple> member(MappingNode map, String name) {
        return map.getValue().stream().filter(pair -> pair.getKeyNode() instanceof ScalarNode key && key.getValue().equals(name))
            .findFirst();
    }

    int start(Node node) {
        return codeUnits(node.getStartMark().orElseThrow());
    }

    /** Index after the last character of a node; a block collection's own mark lies beyond the blanks and comments that follow it. */
    int end(Node node) {
        if (node instanceof CollectionNode<?> collection && collection.getFlowStyle() == FlowStyle.BLOCK) {
            Node last = node;
            if (node instanceof MappingNode map && !map.getValue().isEmpty()) {
                last = map.getValue().get(map.getValue().size() - 1).getValueNode();
            } else if (node instanceof org.snakeyaml.engine.v2.nodes.SequenceNode list && !list.getValue().isEmpty()) {
                last = list.getValue().get(list.getValue().size() - 1);
            }
            return last == node ? start(node) : end(last);
        }
        int end = codeUnits(node.getEndMark().orElseThrow());
        boolean block = node instanceof ScalarNode scalar
            && (scalar.getScalarStyle() == ScalarStyle.LITERAL || scalar.getScalarStyle() == ScalarStyle.FOLDED);
        return block ? text.substring(0, end).stripTrailing().length() : end;
    }

    private int codeUnits(org.snakeyaml.engine.v2.exceptions.Mark mark) {
        // marks count code points; a character beyond the basic plane takes two places in a string
        return text.offsetByCodePoints(0, mark.getIndex());
    }

    int lineStart(int index) {
        return text.lastIndexOf('\n', index - 1) + 1;
    }

    int lineAfter(int index) {
        int end = text.indexOf('\n', index);
        return end < 0 ? text.length() : end + 1;
    }

    /** A text as a YAML scalar: plain where it reads back the same in any style, else in double quotes. */
    public static String scalar(String value) {
        boolean plain = value.matches("[A-Za-z0-9./-][A-Za-z0-9 ./%²³°µ()+-]*[A-Za-z0-9./%²³°)]|[A-Za-z0-9]") && !value.startsWith("- ")
            && !value.equals("-") && !value.startsWith("---");
        return plain ? value : "\"" + value.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n").replace("\t", "\\t") + "\"";
    }
}
