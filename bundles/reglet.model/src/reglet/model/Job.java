package reglet.model;

import java.util.ArrayList;
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
 * @param alternates what is priced apart, by number
 * @param layout    how its sections are laid out
 */
public record Job(String title, String note, String pack, Map<String, Map<String, Stated>> facts, List<WallType> walls,
        List<String> sections, List<TextChange> changes, List<Accepted> accepted, List<ProductData> products, List<Submittal> submittals,
        RegisterFile register, List<Question> questions, List<Alternate> alternates, Layout layout, Place at) {

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

    /** A job whose sections are laid out as usual. */
    public Job(String title, String note, String pack, Map<String, Map<String, Stated>> facts, List<WallType> walls, List<String> sections,
            List<TextChange> changes, List<Accepted> accepted, List<ProductData> products, List<Submittal> submittals,
                RegisterFile register,
            List<Question> questions, List<Alternate> alternates, Place at) {
        this(title, note, pack, facts, walls, sections, changes, accepted, products, submittals, register, questions, alternates,
            Layout.USUAL, at);
    }

    /** A job without alternates, allowances and unit prices. */
    public Job(String title, String note, String pack, Map<String, Map<String, Stated>> facts, List<WallType> walls, List<String> sections,
            List<TextChange> changes, List<Accepted> accepted, List<ProductData> products, List<Submittal> submittals,
                RegisterFile register,
            List<Question> questions, Place at) {
        this(title, note, pack, facts, walls, sections, changes, accepted, products, submittals, register, questions, List.of(), at);
    }

    public Optional<WallType> wall(String id) {
        return Find.first(walls, WallType::id, id);
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

    /** The same job with other changes of its drafted sections. */
    public Job changing(List<TextChange> others) {
        return new Job(title, note, pack, facts, walls, sections, others, accepted, products, submittals, register, questions, alternates,
            layout, at);
    }

    /** The job as it is when these alternates, and no others, are taken up; it holds no alternates any more. */
    public Job taking(List<Integer> numbers) {
        return with(facts, walls.stream().map(wall -> wall.taking(numbers)).toList(), List.of()).changing(changes(numbers, List.of()));
    }

    private Job with(Map<String, Map<String, Stated>> otherFacts, List<WallType> otherWalls, List<Alternate> otherAlternates) {
        return new Job(title, note, pack, otherFacts, otherWalls, sections, changes, accepted, products, submittals, register, questions,
            otherAlternates, layout, at);
    }

    /**
     * The job as it will be built: what accepted alternates choose are the walls' choices, and alternates that are still offered have
     * their versions beside them. Everything that is worked out of a job starts here.
     */
    public Job built() {
        List<Integer> accepted = alternates(Alternate.State.ACCEPTED);
        List<TextChange> texts = changes(accepted, alternates(Alternate.State.OFFERED));
        Job built = texts.equals(changes) ? this : changing(texts);
        return accepted.isEmpty() ? built : built.with(facts, walls.stream().map(wall -> wall.taking(accepted)).toList(), alternates);
    }

    /**
     * The changes of its sections as they hold then: a text for an accepted alternate's paragraph takes the place of the base bid's own
     * there, and one for an alternate that is neither accepted nor offered waits.
     */
    private List<TextChange> changes(List<Integer> accepted, List<Integer> offered) {
        if (changes.stream().allMatch(change -> change.alternate() == 0)) {
            return changes;
        }
        List<TextChange> brought = changes.stream().filter(change -> accepted.contains(change.alternate())).map(TextChange::accepted)
            .toList();
        List<TextChange> all = new ArrayList<>();
        for (TextChange change : changes) {
            int number = change.alternate();
            boolean replaced = brought.stream().anyMatch(other -> other.section().equals(change.section())
                && other.takesTextOf(change.paragraph()) && change.takesTextOf(change.paragraph()));
            if (accepted.contains(number)) {
                all.add(change.accepted());
            } else if (number == 0 && !replaced || offered.contains(number) || number > 0 && alternate(number).isEmpty()) {
                all.add(change);
            }
        }
        return all;
    }

    /** The same job with these alternates accepted besides those that are. */
    public Job accepting(List<Integer> numbers) {
        return deciding(numbers, Alternate.State.ACCEPTED);
    }

    /** The same job with another word of the owner on these alternates. */
    public Job deciding(List<Integer> numbers, Alternate.State state) {
        return with(facts, walls, alternates.stream().map(one -> one.kind() == Alternate.Kind.ALTERNATE && numbers.contains(one.number())
            ? one.with(state) : one).toList());
    }

    /** The same job as it will be built, with no alternates told of any more. */
    public Job withoutOffers() {
        return taking(alternates(Alternate.State.ACCEPTED));
    }

    /** The same job under another title. */
    public Job titled(String other) {
        return new Job(other, note, pack, facts, walls, sections, changes, accepted, products, submittals, register, questions, alternates,
            layout, at);
    }

    /** An alternate by its number. */
    public Optional<Alternate> alternate(int number) {
        return alternates.stream().filter(one -> one.kind() == Alternate.Kind.ALTERNATE && one.number() == number).findFirst();
    }

    /** Numbers of the alternates of a state, from the first on. */
    public List<Integer> alternates(Alternate.State state) {
        return alternates.stream().filter(one -> one.is(state)).map(Alternate::number).toList();
    }

    /** Numbers of the alternates of a state that a wall type has another choice for, from the first on. */
    public List<Integer> versions(Alternate.State state) {
        return alternates(state).stream().filter(number -> walls.stream().flatMap(wall -> wall.choices().values().stream())
            .anyMatch(choice -> choice.alternates().containsKey(number))).toList();
    }

    /** Whether two alternates ask for different things in one place, so that they can't be taken up together. */
    public boolean exclude(int one, int other) {
        return walls.stream().flatMap(wall -> wall.choices().values().stream()).map(Choice::alternates)
            .anyMatch(versions -> versions.containsKey(one) && versions.containsKey(other)
                && !versions.get(one).asksSame(versions.get(other)));
    }

    /**
     * The address of the version that is in force: "W1.lath.alternates.1.weight" for "W1.lath.weight" where an accepted alternate has a
     * choice of its own; else the address itself.
     */
    public String inForce(String address) {
        String[] parts = address.split("\\.", 3);
        Optional<Choice> choice = parts.length < 2 || parts.length == 3 && parts[2].startsWith(Choice.VERSIONS + ".") ? Optional.empty()
            : wall(parts[0]).flatMap(wall -> wall.choice(parts[1]));
        return choice.flatMap(found -> alternates(Alternate.State.ACCEPTED).stream().filter(found.alternates()::containsKey)
            .reduce((one, other) -> other)).map(number -> parts[0] + "." + parts[1] + "." + Choice.VERSIONS + "." + number
            + (parts.length == 3 ? "." + parts[2] : "")).orElse(address);
    }
}
