package reglet.details;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.model.Assembly;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Drawing;
import reglet.model.Job;
import reglet.model.Meeting;
import reglet.model.Option;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.RegisterFile;
import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.Requirement;
import reglet.model.Stated;
import reglet.model.UnusableInput;
import reglet.model.Value;
import reglet.model.WallType;
import reglet.model.Word;
import reglet.store.Jobs;
import reglet.store.Packs;

/** The sample jobs with the pack they are written for, and changes to them. */
final class Samples {
    static final Place AT = Place.of("test");
    static final Path ROOT = Path.of(System.getProperty("reglet.root", "../..")).toAbsolutePath().normalize();
    static final Pack PACK = pack();
    private static final Job JOB = job("harbour-clinic");

    private Samples() {
    }

    private static Pack pack() {
        try {
            return Packs.read(ROOT.resolve("bundles/reglet.pack.adheredveneer/pack")).pack();
        } catch (UnusableInput wrong) {
            throw new IllegalStateException(wrong.getMessage(), wrong);
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    static List<String> names() {
        try (Stream<Path> folders = Files.list(ROOT.resolve("sample-specs"))) {
            return folders.filter(folder -> Files.exists(folder.resolve("job.yaml"))).map(folder -> folder.getFileName().toString())
                .sorted().toList();
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    static Job job(String name) {
        try {
            return Jobs.read(ROOT.resolve("sample-specs").resolve(name), PACK);
        } catch (UnusableInput wrong) {
            throw new IllegalStateException(wrong.getMessage(), wrong);
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    static WallType wall(String job, String wall) {
        return job(job).wall(wall).orElseThrow();
    }

    /** Requirements as the job states them; conditions of properties are not read, for the drawings ask for what they need. */
    static Assembly assembly(Job job) {
        List<Requirement> requirements = new ArrayList<>();
        for (WallType wall : job.walls()) {
            for (Component component : PACK.components()) {
                wall.choice(component.id()).ifPresent(choice -> choice.accept().forEach(id -> {
                    Option option = component.option(id).orElseThrow();
                    for (Property property : component.properties()) {
                        Optional<Value> value = Optional.ofNullable(choice.values().get(property.name())).map(Stated::value)
                            .or(() -> option.value(property.name())).or(property::usual);
                        value.ifPresent(found -> requirements.add(new Requirement(wall.id(), component.id(), id, property, found, AT)));
                    }
                }));
            }
        }
        return new Assembly(PACK, job, List.of(), requirements, List.of(), List.of());
    }

    static List<Drawing> drawings(WallType wall) {
        Job changed = new Job(JOB.title(), JOB.note(), JOB.pack(), JOB.facts(), List.of(wall), JOB.sections(),
            List.of(), List.of(), List.of(), List.of(), RegisterFile.NONE, List.of(), AT);
        return Details.of(assembly(changed), wall.id());
    }

    static Drawing drawing(WallType wall, String id) {
        return drawings(wall).stream().filter(drawing -> drawing.id().equals(id)).findFirst().orElseThrow();
    }

    static WallType choose(WallType wall, String component, String option) {
        return wall.with(new Choice(component, List.of(option), Map.of(), "", "", AT));
    }

    static WallType without(WallType wall, String component) {
        Map<String, Choice> choices = new LinkedHashMap<>(wall.choices());
        choices.remove(component);
        return new WallType(wall.id(), wall.title(), wall.facts(), wall.meetings(), choices, AT);
    }

    /** The wall with its height written in another way. */
    static WallType height(WallType wall, String value) {
        Map<String, Stated> facts = new LinkedHashMap<>(wall.facts());
        facts.put("height", new Stated(Quantity.parse(value).orElseThrow(), AT));
        return new WallType(wall.id(), wall.title(), facts, wall.meetings(), wall.choices(), AT);
    }

    /** The wall with one fact of a meeting changed. */
    static WallType meets(WallType wall, String meeting, String fact, String value) {
        List<Meeting> meetings = wall.meetings().stream()
            .map(found -> found.id().equals(meeting) ? with(found, fact, value) : found).toList();
        return new WallType(wall.id(), wall.title(), wall.facts(), meetings, wall.choices(), AT);
    }

    private static Meeting with(Meeting meeting, String fact, String value) {
        Map<String, Stated> facts = new LinkedHashMap<>(meeting.facts());
        facts.put(fact, new Stated(Quantity.parse(value).<Value>map(found -> found).orElse(new Word(value)), AT));
        return new Meeting(meeting.id(), meeting.subject(), facts, AT);
    }
}
