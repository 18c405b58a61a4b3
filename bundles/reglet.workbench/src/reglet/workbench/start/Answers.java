package reglet.workbench.start;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import reglet.desk.FreshFolder;
import reglet.desk.NewJob;
import reglet.desk.NeededFact;
import reglet.desk.NeededFacts;
import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.UnitSystem;

/** What the person has answered so far about a new job. */
final class Answers {
    private final Pack pack;
    private final Path below;
    private final Map<String, String> typed = new LinkedHashMap<>();
    String title = "";
    String folder = "";
    String wallTitle = "";
    String backing = "";
    UnitSystem units;

    /** @param below folder in which the new job's own is proposed */
    Answers(Pack pack, Path below, UnitSystem units) {
        this.pack = pack;
        this.below = below;
        this.units = units;
    }

    Pack pack() {
        return pack;
    }

    Component backing() {
        return NeededFacts.ofBacking(pack);
    }

    void put(NeededFact fact, String answer) {
        typed.put(fact.name(), answer);
    }

    String get(NeededFact fact) {
        return typed.getOrDefault(fact.name(), "");
    }

    String wrong(NeededFact fact) {
        return fact.wrong(get(fact), units);
    }

    /** A folder named after the title that holds nothing yet. */
    String proposedFolder() {
        String name = title.strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
        return name.isEmpty() ? "" : FreshFolder.free(below.resolve(name)).toString();
    }

    /** Why the folder can't be used; "" when it can. */
    String folderRefusal() {
        if (folder.isBlank()) {
            return "";
        }
        try {
            Path path = Path.of(folder);
            String refusal = path.isAbsolute() ? FreshFolder.refusal(path) : "is no whole path";
            return refusal.isEmpty() ? "" : "The folder " + refusal + "; choose a new or an empty one.";
        } catch (java.nio.file.InvalidPathException noPath) {
            return "That is no path of a folder.";
        }
    }

    NewJob job() {
        Map<String, Map<String, String>> facts = new LinkedHashMap<>();
        written(NeededFacts.ofJob(pack)).forEach((fact, value) -> facts.computeIfAbsent(fact.subject().id(),
            id -> new LinkedHashMap<>()).put(fact.property().name(), value));
        Map<String, String> wall = new LinkedHashMap<>();
        written(NeededFacts.ofWall(pack)).forEach((fact, value) -> wall.put(fact.property().name(), value));
        return new NewJob(title, facts, wallTitle, wall, backing.isEmpty() ? Map.of() : Map.of(backing().id(), backing));
    }

    private Map<NeededFact, String> written(List<NeededFact> facts) {
        Map<NeededFact, String> written = new LinkedHashMap<>();
        facts.stream().filter(fact -> !get(fact).isBlank())
            .forEach(fact -> written.put(fact, fact.written(get(fact), units)));
        return written;
    }
}
