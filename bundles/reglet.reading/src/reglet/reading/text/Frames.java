package reglet.reading.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import reglet.model.Component;
import reglet.model.Property;
import reglet.model.PropertyType.Kind;
import reglet.reading.words.Plain;
import reglet.reading.words.Turn;
import reglet.reading.words.Vocabulary;

/** How a sentence says that a thing is there, or isn't, whatever the thing is: "has a …", "no … is needed". */
final class Frames {
    private static final int MOST_WORDS = 3;
    private static final List<String> THERE = List.of("has|have|include|includes|including|carries|carry|wears|needs|need|requires|require"
        + "|use|apply|install|gets|get ~ %s", "%s is|are ~ required|needed|provided|included|attached|supplied|furnished|necessary");
    private static final List<String> MISSING = List.of("no %s", "without ~ %s", "%s is|are not",
        "not need|require|have|include|carry ~ %s", "%s not required|needed|provided|included|necessary");

    private Frames() {
    }

    /** The turns that say yes and no of a flag about a thing; none of others. What may be answered by "none" is a thing. */
    static Map<String, List<Turn>> of(Component component, Property property, Vocabulary vocabulary) {
        String path = component.id() + "." + property.name();
        Map<String, List<Turn>> turns = new LinkedHashMap<>();
        if (property.type().kind() != Kind.FLAG || vocabulary.names(path + ".no").stream().noneMatch(name -> name.startsWith("none"))) {
            return turns;
        }
        List<String> names = new ArrayList<>(vocabulary.names(path).stream().filter(name -> !name.endsWith(":")).map(Plain::of).toList());
        // "no furring nails" says nothing of furring: one word alone has to be the thing's own
        names.removeIf(name -> name.split(" ").length > MOST_WORDS || name.contains(" on ") || name.contains(" for ")
            || !name.contains(" ") && !name.equals(Plain.of(property.name())));
        turns.put("yes", turns(THERE, names));
        turns.put("no", turns(MISSING, names));
        return turns;
    }

    private static List<Turn> turns(List<String> frames, List<String> names) {
        return names.stream().distinct().flatMap(name -> frames.stream().map(frame -> Turn.of(frame.replace("%s", name)))).toList();
    }
}
