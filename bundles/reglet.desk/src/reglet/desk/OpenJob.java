package reglet.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.comparing.Comparing;
import reglet.drafting.Drafter;
import reglet.drafting.PaperCheck;
import reglet.drafting.Registers;
import reglet.drafting.Unprinted;
import reglet.model.Accepted;
import reglet.model.Alternate;
import reglet.model.Alternate.State;
import reglet.model.AmendedPack;
import reglet.model.Assembly;
import reglet.model.Calculated;
import reglet.model.Change;
import reglet.model.Checked;
import reglet.model.Choice;
import reglet.model.Comparison;
import reglet.model.Drawing;
import reglet.model.Explanation;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.JobWorksheets;
import reglet.model.Pack;
import reglet.model.Problem;
import reglet.model.Proposal;
import reglet.model.Register;
import reglet.model.RegisterFile;
import reglet.model.RegisterItem;
import reglet.model.Remedies;
import reglet.model.Requirement;
import reglet.model.SectionDocument;
import reglet.model.ShownUnits;
import reglet.model.Submittal;
import reglet.model.UnusableInput;
import reglet.model.WallType;
import reglet.model.WhatIf;
import reglet.model.Worksheet;
import reglet.rules.Check;
import reglet.rules.Engine;
import reglet.worksheets.Worksheets;


/**
 * A job on the desk with everything that follows from it. Immutable: a change gives another one, so that undo is an older value
 * and "what if" the same question of another value. What follows is worked out when first asked for.
 */
public final class OpenJob {
    private final Path folder;
    private final Job job;
    private final Engine engine;
    private final Optional<AmendedPack> amended;
    private final String packDigest;
    private final String issue;
    /** Numbers of the alternates that are looked at as if they were accepted. */
    private final List<Integer> supposed;
    private final Later<Assembly> assembly;
    private final Later<List<Finding>> paper;
    private final Later<Check> check;
    private final Later<Checked> checked;
    private final Later<JobWorksheets> worksheets;
    private final Map<String, SectionDocument> sections = new LinkedHashMap<>();

    OpenJob(Path folder, Job job, Engine engine, Optional<AmendedPack> amended) {
        this(folder, job, engine, amended, "");
    }

    OpenJob(Path folder, Job job, Engine engine, Optional<AmendedPack> amended, String packDigest) {
        this(folder, job, engine, amended, packDigest, "", List.of(), () -> engine.open(job));
    }

    private OpenJob(Path folder, Job job, Engine engine, Optional<AmendedPack> amended, String packDigest, String issue,
            List<Integer> supposed, Supplier<Check> check) {
        this.folder = folder;
        this.job = job;
        this.engine = engine;
        this.amended = amended;
        this.packDigest = packDigest;
        this.issue = issue;
        this.supposed = supposed;
        this.assembly = new Later<>(() -> engine.resolve(job));
        this.paper = new Later<>(this::papers);
        this.check = new Later<>(check);
        this.checked = new Later<>(() -> withPaper(this.check.get().checked()));
        this.worksheets = new Later<>(() -> engine.worksheets(job));
    }

    public Path folder() {
        return folder;
    }

    public Job job() {
        return job;
    }

    public Pack pack() {
        return engine.pack();
    }

    /** What the job's jurisdiction asks otherwise than the pack; empty when it has no amendments. {@link #pack} has them worked in. */
    public Optional<AmendedPack> amended() {
        return amended;
    }

    /** Digest of the pack's text; "" when it isn't known. */
    public String packDigest() {
        return packDigest;
    }

    /** The name that the papers bear; "" for a draft. */
    public String issue() {
        return issue;
    }

    /** The same job, its papers under the name of an issue. */
    OpenJob issued(String name) {
        return new OpenJob(folder, job, engine, amended, packDigest, name, supposed, check::get);
    }

    /**
     * The job as if alternates were accepted besides those that are: every paper says so in the job's title, and goes to a folder of its
     * own.
     *
     * @throws UnusableInput when the job doesn't have one of them, no wall type chooses anything for it, or two choose differently
     */
    public OpenJob supposing(List<Integer> numbers) throws UnusableInput {
        if (numbers.isEmpty()) {
            return this;
        }
        List<Integer> known = job.alternates().stream().filter(one -> one.kind() == Alternate.Kind.ALTERNATE).map(Alternate::number)
            .filter(number -> Stream.of(State.values()).anyMatch(state -> job.versions(state).contains(number))).toList();
        List<Integer> together = Stream.concat(job.alternates(State.ACCEPTED).stream(), numbers.stream()).distinct().toList();
        for (int number : numbers) {
            if (!known.contains(number)) {
                throw new UnusableInput(new Problem(job.at(), "no wall type chooses anything for an alternate " + number, known.isEmpty()
                    ? "this job has none" : "expected one of: " + String.join(", ", known.stream().map(String::valueOf).toList())));
            }
            for (int other : together) {
                if (other != number && job.exclude(number, other)) {
                    throw new UnusableInput(new Problem(job.alternate(number).orElseThrow().at(), Alternate.names(List.of(number, other))
                        + " choose differently for the same component", "look at one of them at a time"));
                }
            }
        }
        List<Integer> sorted = numbers.stream().distinct().sorted().toList();
        Job as = job.accepting(sorted).titled(job.title() + ", as if " + Alternate.names(sorted) + (sorted.size() == 1 ? " was" : " were")
            + " accepted");
        return new OpenJob(folder, as, engine, amended, packDigest, issue, sorted, () -> check.get().after(as));
    }

    /** Where its papers go: "out" in its folder, and for what is only supposed a folder in that, such as "alternate-2". */
    public Path out() {
        Path out = folder.resolve("out");
        return supposed.isEmpty() ? out
            : out.resolve("alternate-" + supposed.stream().map(String::valueOf).collect(Collectors.joining("-")));
    }

    public Assembly assembly() {
        return assembly.get();
    }

    public Checked checked() {
        return checked.get();
    }

    /** What is found in the drafted sections as papers. */
    public List<Finding> paper() {
        return paper.get();
    }

    private List<Finding> papers() {
        try {
            List<Finding> found = new ArrayList<>(PaperCheck.findings(assembly(), sections()));
            found.addAll(Registers.findings(register()));
            found.addAll(Questions.findings(job));
            return found;
        } catch (UnusableInput unprintable) {
            return Stream.concat(PaperCheck.findings(unprintable).stream(), Questions.findings(job).stream()).toList();
        }
    }

    /**
     * Drafting takes time, and without a person's own text there is nothing to find in it, so that a check drafts only what was touched.
     */
    private Checked withPaper(Checked rules) {
        List<Finding> found = job.changes().isEmpty() ? untouched() : paper();
        if (found.isEmpty()) {
            return rules;
        }
        List<Finding> standing = new ArrayList<>(rules.findings());
        List<Finding> accepted = new ArrayList<>(rules.accepted());
        Set<String> taken = job.accepted().stream().map(Accepted::rule).collect(Collectors.toSet());
        found.forEach(finding -> (taken.contains(finding.rule()) ? accepted : standing).add(finding));
        return new Checked(standing, accepted, rules.rules(), rules.instances());
    }

    /** What is found around sections that nobody wrote in. */
    private List<Finding> untouched() {
        Stream<Finding> register = job.register().equals(RegisterFile.NONE) ? Stream.of() : Registers.findings(assembly()).stream();
        return Stream.concat(register, Questions.findings(job).stream()).toList();
    }

    /** The smallest changes that clear a finding of this job and add none. */
    public Remedies remedies(Finding finding) {
        return check.get().remedies(finding);
    }

    /**
     * The job after changes.
     *
     * @throws UnusableInput when one of them can't be made
     */
    public OpenJob after(List<Change> changes) throws UnusableInput {
        return with(check.get().after(changes).job());
    }

    /** What every option not taken of a component of a wall type would clear and bring, were it the one accepted. */
    public List<WhatIf> whatIf(String wall, String component) {
        return check.get().whatIf(wall, component);
    }

    /** Options for everything that is undecided, the cheapest that leave no conflict and no gap. */
    public Proposal propose() {
        return check.get().propose();
    }

    /** The worksheets that the pack asks for. */
    public JobWorksheets worksheets() {
        return worksheets.get();
    }

    /** All worksheets with what is drawn beside them. */
    public List<Calculated> calculated() {
        return worksheets().made().stream().map(OpenJob::calculated).toList();
    }

    private static Calculated calculated(Worksheet worksheet) {
        return new Calculated(worksheet, Worksheets.charts(worksheet), Worksheets.drawings(worksheet));
    }

    /**
     * The details of a wall type, each note with the section and paragraph of what it points at.
     *
     * @throws UnusableInput when a text that the job changes can't be used
     */
    public List<Drawing> details(String wall) throws UnusableInput {
        return details(wall, ShownUnits.AS_WRITTEN);
    }

    /** The same with lengths in some units. */
    public List<Drawing> details(String wall, ShownUnits units) throws UnusableInput {
        return Keynotes.details(this, wall, units);
    }

    /** The same folder and pack with another job. */
    public OpenJob with(Job changed) {
        return new OpenJob(folder, changed, engine, amended, packDigest, issue, supposed, () -> check.get().after(changed));
    }

    /** What the job would be with these options in force for a component of a wall type; values a person set are kept. */
    public OpenJob choosing(String wall, String component, List<String> accept) {
        WallType before = job.wall(wall).orElseThrow();
        Choice choice = before.choice(component).map(old -> choosing(old, accept))
            .orElseGet(() -> new Choice(component, accept, Map.of(), "", "", before.at()));
        return with(job.with(before.with(choice)));
    }

    /** Where an accepted alternate has a version of its own, that is the one in force. */
    private Choice choosing(Choice old, List<String> accept) {
        return job.alternates(State.ACCEPTED).stream().filter(old.alternates()::containsKey).reduce((one, other) -> other)
            .map(number -> old.with(number, old.alternates().get(number).accepting(accept))).orElseGet(() -> old.accepting(accept));
    }

    /** The same job looked at as another bid. Its papers bear no word of it: it is to be looked at, and nothing is written from it. */
    public OpenJob as(Bid bid) {
        return bid.equals(Bid.AGREED) ? this : with(bid.of(job));
    }

    /** How a rule came out at each wall and meeting that it looks at. */
    public List<Explanation> explain(String rule) {
        return engine.explain(job, rule);
    }

    /**
     * A drafted section.
     *
     * @throws UnusableInput when a text that the job changes can't be used
     */
    public SectionDocument section(String number) throws UnusableInput {
        synchronized (sections) {
            SectionDocument known = sections.get(number);
            if (known == null) {
                known = Drafter.draft(assembly(), number, issue);
                sections.put(number, known);
            }
            return known;
        }
    }

    /** The sections that the job writes, in its order. */
    public List<SectionDocument> sections() throws UnusableInput {
        List<SectionDocument> all = new ArrayList<>();
        for (String number : job.sections()) {
            all.add(section(number));
        }
        return all;
    }

    /** What all sections of the job ask to be sent, and what refers to items that they no longer ask for. */
    public Register register() throws UnusableInput {
        return Registers.of(assembly(), sections());
    }

    /** The register of a section. */
    public List<RegisterItem> register(String section) throws UnusableInput {
        return job.sections().contains(section) ? register().of(section) : Registers.of(assembly(), List.of(section(section))).items();
    }

    public Optional<Submittal> submittal(String id) {
        return job.submittals().stream().filter(submittal -> submittal.id().equals(id)).findFirst();
    }

    /** A submittal compared with what is required. */
    public Comparison compare(Submittal submittal) throws UnusableInput {
        SectionDocument section = section(submittal.section());
        Map<Requirement, String> printed = new LinkedHashMap<>();
        return Comparing.compare(assembly(), submittal,
            requirement -> printed.computeIfAbsent(requirement, asked -> section.pathOf(asked).orElse("")))
            .without(Unprinted.reasons(assembly(), section));
    }
}
