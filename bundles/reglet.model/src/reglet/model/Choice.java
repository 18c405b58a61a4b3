package reglet.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The options accepted for a component of a wall type. Several are alternatives: each must pass the rules, and a product
 * complies when it meets one of them whole.
 *
 * @param component component id
 * @param accept    option ids in the order written; at least one
 * @param values    values that a person set over those of the options, by property name
 * @param by        who or what fixed it: "specifier", "RFI 12"; may be ""
 * @param because   the reason given; may be ""
 * @param specified how the product paragraph specifies it
 * @param alternates what is accepted instead when an alternate of the job is taken up, by its number
 * @param at        place in the wall's file
 */
public record Choice(String component, List<String> accept, Map<String, Stated> values, String by, String because, Specifying specified,
        Map<Integer, Choice> alternates, Place at) {

    /** What versions for alternates stand under, in files and in addresses. */
    public static final String VERSIONS = "alternates";

    public Choice {
        accept = List.copyOf(accept);
        values = Ordered.copy(values);
        alternates = Ordered.copy(alternates);
    }

    /** A choice specified by performance, without alternates. */
    public Choice(String component, List<String> accept, Map<String, Stated> values, String by, String because, Place at) {
        this(component, accept, values, by, because, Specifying.PERFORMANCE, Map.of(), at);
    }

    /**
     * The choice when these alternates are taken up: of several that have a version the last listed; itself where none has. The other
     * alternates' versions stay open to it.
     */
    Choice taking(List<Integer> numbers) {
        Choice version = numbers.stream().map(alternates::get).filter(Objects::nonNull).reduce((one, other) -> other).orElse(null);
        if (version == null) {
            return this;
        }
        Map<Integer, Choice> open = new LinkedHashMap<>(alternates);
        open.keySet().removeAll(numbers);
        return new Choice(component, version.accept, version.values, version.by, version.because, version.specified, open, version.at);
    }

    /** The same choice with another version for an alternate. */
    public Choice with(int number, Choice version) {
        Map<Integer, Choice> versions = new LinkedHashMap<>(alternates);
        versions.put(number, version);
        return new Choice(component, accept, values, by, because, specified, versions, at);
    }

    /** Whether it asks for the same, wherever it stands and whoever made it. */
    public boolean asksSame(Choice other) {
        return accept.equals(other.accept) && specified.equals(other.specified) && values.keySet().equals(other.values.keySet())
            && values.entrySet().stream().allMatch(set -> set.getValue().value().equals(other.values.get(set.getKey()).value()));
    }

    /** The same choice with other options. */
    public Choice accepting(List<String> others) {
        return new Choice(component, others, values, by, because, specified, alternates, at);
    }

    /** The same choice with other values set by a person. */
    public Choice setting(Map<String, Stated> others) {
        return new Choice(component, accept, others, by, because, specified, alternates, at);
    }
}
