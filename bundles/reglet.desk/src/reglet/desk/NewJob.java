package reglet.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import reglet.model.Component;
import reglet.model.Dates;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.Scope;
import reglet.model.SectionPlan;
import reglet.model.Subject;
import reglet.model.UnusableInput;
import reglet.store.Edits;

/**
 * A job to be begun with one wall type. What isn't answered is left out, and stands among the findings as a gap.
 *
 * @param title     of the job; not blank
 * @param facts     values of job-wide subjects as their files have them, by subject id and property name
 * @param wallTitle of the wall type W1; not blank
 * @param wallFacts values of the wall type by property name
 * @param choices   an option for each component that is decided already
 */
public record NewJob(String title, Map<String, Map<String, String>> facts, String wallTitle, Map<String, String> wallFacts,
        Map<String, String> choices) {
    private static final String WALL = "W1";

    public NewJob {
        facts = new LinkedHashMap<>(facts);
        wallFacts = new LinkedHashMap<>(wallFacts);
        choices = new LinkedHashMap<>(choices);
    }

    /**
     * Writes the job into a folder that holds nothing yet.
     *
     * @return the files written
     * @throws UnusableInput with everything that the pack can't read, before anything is written; or when the folder holds files
     */
    public List<Path> write(Path folder, Pack pack) throws UnusableInput, IOException {
        List<Problem> problems = new ArrayList<>();
        if (title.isBlank()) {
            problems.add(new Problem(Place.of("title"), "the job has no title", "give it one"));
        }
        if (wallTitle.isBlank()) {
            problems.add(new Problem(Place.of(WALL), "the wall type has no title", "say where it stands, such as \"Street front\""));
        }
        facts.forEach((subject, values) -> check(pack.subject(subject).map(Subject::properties).orElse(List.of()), subject, values,
            problems));
        check(wallProperties(pack), WALL, wallFacts, problems);
        choices.forEach((component, option) -> {
            if (pack.component(component).flatMap(found -> found.option(option)).isEmpty()) {
                problems.add(new Problem(Place.of(component), "has no option \"" + option + "\"", "expected one of: " + String.join(", ",
                    pack.component(component).map(Component::options).orElse(List.of()).stream().map(one -> one.id()).toList())));
            }
        });
        if (!problems.isEmpty()) {
            throw new UnusableInput(problems);
        }
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("walls/" + WALL + ".yaml", wallText(pack).getBytes(StandardCharsets.UTF_8));
        files.put("job.yaml", jobText(pack).getBytes(StandardCharsets.UTF_8));
        return FreshFolder.fill(folder, files);
    }

    private static void check(List<Property> known, String owner, Map<String, String> values, List<Problem> problems) {
        values.forEach((name, value) -> {
            if (known.stream().noneMatch(property -> property.name().equals(name) && property.type().read(value).isPresent())) {
                problems.add(new Problem(Place.of(owner + "." + name), "can't be \"" + value + "\"",
                    known.stream().filter(property -> property.name().equals(name)).findFirst()
                        .map(property -> expected(property.type(), value)).orElse("the pack doesn't know it")));
            }
        });
    }

    private static String expected(PropertyType type, String value) {
        return type.kind() == PropertyType.Kind.DATE ? Dates.expected(value) : "expected " + type.unit()
            .map(unit -> "a number in a unit such as " + unit.symbol()).orElse("one of: " + String.join(", ", type.words()));
    }

    private String jobText(Pack pack) {
        StringBuilder text = new StringBuilder("format: 1\n");
        text.append("title: ").append(Edits.scalar(title.strip())).append('\n');
        text.append("pack: ").append(Edits.scalar(pack.name())).append('\n');
        text.append("walls: [").append(WALL).append("]\n");
        text.append("sections: [").append(String.join(", ", pack.plans().stream().map(SectionPlan::number).toList())).append("]\n");
        pack.subjects().stream().filter(subject -> facts.containsKey(subject.id()))
            .forEach(subject -> block(text, subject.id(), subject.properties(), facts.get(subject.id())));
        return text.toString();
    }

    private String wallText(Pack pack) {
        StringBuilder text = new StringBuilder();
        text.append("title: ").append(Edits.scalar(wallTitle.strip())).append('\n');
        block(text, "wall", wallProperties(pack), wallFacts);
        pack.components().stream().filter(component -> choices.containsKey(component.id())).forEach(component -> text
            .append(component.id()).append(": {accept: [").append(Edits.scalar(choices.get(component.id()))).append("]}\n"));
        return text.toString();
    }

    private static List<Property> wallProperties(Pack pack) {
        return pack.subjects().stream().filter(subject -> subject.scope() == Scope.WALL)
            .flatMap(subject -> subject.properties().stream()).toList();
    }

    /** In the pack's order, whatever the order of the answers. */
    private static void block(StringBuilder text, String name, List<Property> order, Map<String, String> values) {
        if (!values.isEmpty()) {
            text.append(name).append(":\n");
            order.stream().map(Property::name).filter(values::containsKey).forEach(key -> text.append("  ").append(key).append(": ")
                .append(Edits.scalar(values.get(key))).append('\n'));
        }
    }
}
