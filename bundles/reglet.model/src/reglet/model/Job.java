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
 * @param register what it says of its register
 * @param questions what was asked about the papers, and answered, by number
 * @param alternates what is priced apart, in the order listed
 */
public record Job(String title, String note, String pack, Map<String, Map<String, Stated>> facts, List<WallType> walls,
        List<String> sections, List<TextChange> changes, List<Accepted> accepted, List<ProductData> products, List<Submittal> submittals,
        RegisterFile register, List<Question> questions, List<Alternate> alternates, Place at) {

    public Job {
        facts = Ordered.copy(facts);
        walls = List.copyOf(walls);
        sections = List.copyOf(sections);
        changes = List.copyOf(changes);
        accepted = List.copyOf(accepted);
        products = List.copyOf(products);
        submittals = List.copyOf(submittals);
        questions = List.copyOf(questions);
        alternates = List.copyOf(alternates);
    }

    /** A job without alternates, allowances and unit prices. */
    public Job(String title, String note, String pack, Map<String, Map<String, Stated>> facts, List<WallType> walls, List<String> sections,
            List<TextChange> changes, List<Accepted> accepted, List<ProductData> products, List<Submittal> submittals, RegisterFile register,
            List<Question> questions, Place at) {
        this(title, note, pack, facts, walls, sections, changes, accepted, products, submittals, register, questions, List.of(), at);
    }

    public Optional<WallType> wall(String id) {
        return walls.stream().filter(wall -> wall.id().equals(id)).findFirst();
    }

    public Optional<Question> question(int number) {
        return questions.stream().filter(question -> question.number() == number).findFirst();
    }

    /** A fact of a job-wide subject: {@code fact("code", "edition")}. */
    public Optional<Value> fact(String subject, String property) {
        return Optional.ofNullable(facts.getOrDefault(subject, Map.of()).get(property)).map(Stated::value);
    }

    /** The same job with one wall type replaced. */
    public Job with(WallType changed) {
        return with(facts, walls.stream().map(wall -> wall.id().equals(changed.id()) ? changed : wall).toList(), alternates);
    }

    /** The same job with other facts. */
    public Job with(Map<String, Map<String, Stated>> others) {
        return with(others, walls, alternates);
    }

    /** The job as it is when these alternates, and no others, are taken up; it holds no alternates any more. */
    public Job taking(List<Integer> numbers) {
        return with(facts, walls.stream().map(wall -> wall.taking(numbers)).toList(), List.of());
    }

    private Job with(Map<String, Map<String, Stated>> otherFacts, List<WallType> otherWalls, List<Alternate> otherAlternates) {
        return new Job(title, note, pack, otherFacts, otherWalls, sections, changes, accepted, products, submittals, register, questions,
            otherAlternates, at);
    }

    /** Numbers of the alternates that a wall type has another choice for, in the order listed. */
    public List<Integer> versions() {
        return alternates.stream().filter(alternate -> alternate.kind() == Alternate.Kind.ALTERNATE).map(Alternate::number)
            .filter(number -> walls.stream().flatMap(wall -> wall.choices().values().stream())
                .anyMatch(choice -> choice.alternates().containsKey(number))).toList();
    }

    /** Numbers of the alternates that the owner has taken up. */
    public List<Integer> taken() {
        return alternates.stream().filter(alternate -> alternate.kind() == Alternate.Kind.ALTERNATE && alternate.taken())
            .map(Alternate::number).toList();
    }
}
