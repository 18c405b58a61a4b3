package reglet.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

import reglet.model.Alternate;
import reglet.model.Choice;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.Specifying;
import reglet.model.UnusableInput;

/**
 * Changes to what bidders price apart: the list of alternates in a job's file, and an alternate's own version of a choice in a wall's.
 * Spliced as {@link Edits} are; text in, text out.
 */
public final class AlternateEdits {
    private static final String LIST = "alternates";
    private static final String ACCEPT = "accept";
    /** What is said of one choice and of no other version of it. */
    private static final Set<String> REMARKS = Set.of("by", "because", Choice.VERSIONS);
    /** What names a product; another option is another product. */
    private static final Set<String> PRODUCT = Set.of("specify", "product", "maker", Specifying.COMPARABLE);

    private AlternateEdits() {
    }

    /** The text of a job's file with an alternate more at the end of its list. */
    public static String declare(String jobYaml, int number, String title, String description) throws UnusableInput {
        String item = "{number: " + number + ", kind: alternate, title: " + Edits.scalar(title)
            + (description.isEmpty() ? "" : ", description: " + Edits.scalar(description)) + "}";
        Edits edits = new Edits(jobYaml);
        Optional<NodeTuple> list = Edits.member(edits.root, LIST);
        if (list.isEmpty()) {
            return edits.append(LIST + ":" + edits.lineEnd + "  - " + item);
        }
        if (list.get().getValueNode() instanceof SequenceNode sequence) {
            return WallEdits.with(edits, sequence, item, -1);
        }
        return jobYaml.substring(0, edits.end(list.get().getKeyNode())) + ": [" + item + "]"
            + jobYaml.substring(edits.end(list.get().getValueNode()));
    }

    /** The text of a job's file with another word about an alternate: its "title", "description" or "taken"; "" takes it away. */
    public static String tell(String jobYaml, int number, String name, String words) throws UnusableInput {
        Edits edits = new Edits(jobYaml);
        MappingNode item = (MappingNode) list(edits).getValue().get(index(edits, number));
        return words.isEmpty() ? edits.without(item, name) : edits.put(item, name, Edits.scalar(words));
    }

    /** The text of a job's file that declares an alternate no longer; the list goes with its last item. */
    public static String remove(String jobYaml, int number) throws UnusableInput {
        Edits edits = new Edits(jobYaml);
        int at = index(edits, number);
        return list(edits).getValue().size() == 1 ? Edits.remove(jobYaml, LIST) : WallEdits.without(edits, list(edits), at);
    }

    /**
     * The text of a wall's file with an alternate's own version of a choice: these options, with the values that are set in the base.
     *
     * @param accept   option ids; the base's own for an empty list, and then its product too
     * @param because  why; may be ""
     */
    public static String offer(String wallYaml, String component, int number, List<String> accept, String because) throws UnusableInput {
        Edits edits = new Edits(wallYaml);
        NodeTuple choice = Edits.member(edits.root, component).orElseThrow(() -> new UnusableInput(new Problem(Place.of("the wall file"),
            "nothing is accepted for " + component, "choose an option of the base bid before an alternate of it")));
        Map<String, String> version = new LinkedHashMap<>();
        if (choice.getValueNode() instanceof MappingNode base) {
            for (NodeTuple pair : base.getValue()) {
                String name = ((ScalarNode) pair.getKeyNode()).getValue();
                boolean kept = !REMARKS.contains(name) && (accept.isEmpty() || !PRODUCT.contains(name));
                if (kept) {
                    version.put(name, WallEdits.flow(edits, pair.getValueNode()));
                }
            }
        }
        if (!accept.isEmpty()) {
            version.put(ACCEPT, "[" + String.join(", ", accept.stream().map(Edits::scalar).toList()) + "]");
        }
        if (!because.isEmpty()) {
            version.put("because", Edits.scalar(because));
        }
        List<String> members = new ArrayList<>();
        version.forEach((name, value) -> members.add(name + ": " + value));
        String written = "{" + String.join(", ", members) + "}";
        Optional<NodeTuple> versions = choice.getValueNode() instanceof MappingNode map ? Edits.member(map, Choice.VERSIONS)
            : Optional.empty();
        return versions.isPresent() ? edits.put(versions.get(), String.valueOf(number), written)
            : edits.put(choice, Choice.VERSIONS, "{" + number + ": " + written + "}");
    }

    /** The text of a wall's file without an alternate's own version of a choice; the same text where there is none. */
    public static String withdraw(String wallYaml, String component, int number) throws UnusableInput {
        Edits edits = new Edits(wallYaml);
        Optional<NodeTuple> choice = Edits.member(edits.root, component);
        if (choice.isEmpty() || !(choice.get().getValueNode() instanceof MappingNode base)
            || !(Edits.member(base, Choice.VERSIONS).map(NodeTuple::getValueNode).orElse(null) instanceof MappingNode versions)
            || Edits.member(versions, String.valueOf(number)).isEmpty()) {
            return wallYaml;
        }
        return versions.getValue().size() == 1 ? edits.without(base, Choice.VERSIONS) : edits.without(versions, String.valueOf(number));
    }

    private static SequenceNode list(Edits edits) throws UnusableInput {
        if (Edits.member(edits.root, LIST).map(NodeTuple::getValueNode).orElse(null) instanceof SequenceNode list) {
            return list;
        }
        throw new UnusableInput(new Problem(Place.of("job.yaml"), "lists no alternates", "read the job again"));
    }

    /** Place of an alternate in the list, among allowances and unit prices of the same number. */
    private static int index(Edits edits, int number) throws UnusableInput {
        SequenceNode list = list(edits);
        for (int i = 0; i < list.getValue().size(); i++) {
            if (list.getValue().get(i) instanceof MappingNode item && says(item, "number").equals(String.valueOf(number))
                && List.of("", Alternate.Kind.ALTERNATE.text()).contains(says(item, "kind"))) {
                return i;
            }
        }
        throw new UnusableInput(new Problem(Place.of("job.yaml"), "declares no alternate " + number, "read the job again"));
    }

    private static String says(MappingNode item, String name) {
        return Edits.member(item, name).map(pair -> pair.getValueNode() instanceof ScalarNode said ? said.getValue() : "").orElse("");
    }
}
