package reglet.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.Specifying;
import reglet.model.Specifying.How;

/** Reads how a choice is specified. */
final class Choices {
    private static final Map<String, Boolean> FLAG = Map.of("yes", true, "no", false);

    private Choices() {
    }

    static Specifying specified(Fields fields, Pack pack, Component component) {
        Map<String, How> words = new LinkedHashMap<>();
        Stream.of(How.values()).forEach(how -> words.put(how.text(), how));
        Optional<Cursor> written = fields.find(Specifying.HOW);
        How how = fields.oneOf(Specifying.HOW, words).orElse(How.PERFORMANCE);
        if (written.isPresent() && how != How.PERFORMANCE && !SpecifyingTexts.has(pack, component)) {
            written.get().wrong(component.id() + " has no product paragraph that could say so", "leave \"specify\" out");
        }
        Optional<Boolean> comparable = fields.oneOf(Specifying.COMPARABLE, FLAG);
        Specifying read = new Specifying(how, fields.text("product", ""), fields.text("maker", ""),
            comparable.orElse(how != How.PROPRIETARY));
        if (!read.namesProduct()) {
            for (String name : List.of("product", "maker", Specifying.COMPARABLE)) {
                fields.find(name).ifPresent(cursor -> cursor.wrong("\"" + name + "\" says nothing when " + component.id()
                    + " is specified by " + how.text(), "write \"specify: basis of design\" or \"specify: proprietary\", or leave it out"));
            }
        } else if (how == How.PROPRIETARY && read.comparable()) {
            fields.find(Specifying.COMPARABLE).ifPresent(cursor -> cursor.wrong(
                "a proprietary specification accepts no comparable products", "write \"specify: basis of design\", or leave it out"));
        }
        return read;
    }
}
