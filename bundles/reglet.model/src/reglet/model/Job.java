package reglet.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One building project.
 *
 * @param title     "Harbour clinic"
 * @param note      a line printed on covers, such as that the scenario is invented; may be ""
 * @param pack      name of the pack
 * @param facts     facts of the job-wide subjects: subject id, then property name ("site", "climate")
 * @param walls     wall types in the order listed
 * @param sections  numbers of the sections to be written, in order
 * @param changes   what this job changes, adds or strikes in drafted paragraphs
 * @param accepted  findings accepted with reason and name
 * @param products  product data
 * @param submittals what was handed in
 */
public record Job(String title, String note, String pack, Map<String, Map<String, Stated>> facts, List<WallType> walls,
        List<String> sections, List<TextChange> changes, List<Accepted> accepted, List<ProductData> products, List<Submittal> submittals,
        Place at) {

    public Job {
        facts = Ordered.copy(facts);
        walls = List.copyOf(walls);
        sections = List.copyOf(sections);
        changes = List.copyOf(changes);
        accepted = List.copyOf(accepted);
        products = List.copyOf(products);
        submittals = List.copyOf(submittals);
    }

    public Optional<WallType> wall(String id) {
        return walls.stream().filter(wall -> wall.id().equals(id)).findFirst();
    }

    /** A fact of a job-wide subject: {@code fact("code", "edition")}. */
    public Optional<Value> fact(String subject, String property) {
        return Optional.ofNullable(facts.getOrDefault(subject, Map.of()).get(property)).map(Stated::value);
    }

    /** The same job with one wall type replaced. */
    public Job with(WallType changed) {
        return new Job(title, note, pack, facts, walls.stream().map(wall -> wall.id().equals(changed.id()) ? changed : wall).toList(),
            sections, changes, accepted, products, submittals, at);
    }
}
