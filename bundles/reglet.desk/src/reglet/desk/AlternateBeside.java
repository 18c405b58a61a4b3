package reglet.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.comparing.Changing;
import reglet.model.Alternate;
import reglet.model.Alternate.State;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.Numbers;
import reglet.model.SectionChanges;
import reglet.model.SectionChanges.Run;
import reglet.model.SectionChanges.Sort;
import reglet.model.SectionDocument;
import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.WallType;
import reglet.model.Worksheet;

/**
 * An alternate beside the base bid: what each chooses, what stands against each, what the sections print for each, and what each takes.
 *
 * @param alternate the alternate
 * @param rows      what differs, by groups in the order of the groups
 */
public record AlternateBeside(Alternate alternate, List<Row> rows) {
    private static final String TAKEOFF = "takeoff";
    private static final int FIGURES = 4;

    public AlternateBeside {
        rows = List.copyOf(rows);
    }

    /** What a row compares. */
    public enum Group { CHOICE, FINDING, PARAGRAPH, QUANTITY }

    /**
     * Something that differs.
     *
     * @param what      "Lath, W1", "2.3.B, 04 73 00"
     * @param wall      wall type id; "" for none
     * @param component component id; "" for none
     * @param section   number of the section; "" for none
     * @param kind      of a finding
     * @param base      as the base bid has it; "" for not at all
     * @param with      the same with the alternate
     * @param runs      what leads from one to the other, word by word; none where the two have nothing in common
     */
    public record Row(Group group, String what, String wall, String component, String section, Optional<Finding.Kind> kind, String base,
            String with, List<Run> runs) {
        public Row {
            runs = List.copyOf(runs);
        }

        static Row of(Group group, String what, String wall, String component, String base, String with) {
            return new Row(group, what, wall, component, "", Optional.empty(), base, with, List.of());
        }
    }

    public List<Row> rows(Group group) {
        return rows.stream().filter(row -> row.group() == group).toList();
    }

    /**
     * An alternate of a job beside the job without it. Other accepted ones are in both, but for one that chooses otherwise than it. Takes
     * as long as checking, drafting and measuring twice.
     *
     * @throws UnusableInput when a text that the job changes can't be used
     */
    public static AlternateBeside of(OpenJob job, int number) throws UnusableInput {
        Alternate alternate = job.job().alternate(number).orElseThrow();
        OpenJob with = alternate.is(State.ACCEPTED) ? job : job.as(Bid.with(number));
        OpenJob base = with.with(with.job().deciding(List.of(number), State.OFFERED));
        List<Row> rows = new ArrayList<>(choices(base, with, number));
        rows.addAll(findings(base, with));
        rows.addAll(paragraphs(base, with, "~alternate-" + number));
        rows.addAll(quantities(base, with));
        return new AlternateBeside(alternate, rows);
    }

    private static List<Row> choices(OpenJob base, OpenJob with, int number) {
        List<Row> rows = new ArrayList<>();
        for (WallType wall : base.job().walls()) {
            for (Component component : base.pack().components()) {
                if (wall.choice(component.id()).filter(choice -> choice.alternates().containsKey(number)).isPresent()) {
                    rows.add(Row.of(Group.CHOICE, component.title() + ", " + wall.id(), wall.id(), component.id(),
                        words(base, wall, component), words(with, wall, component)));
                }
            }
        }
        return rows;
    }

    private static String words(OpenJob job, WallType wall, Component component) {
        return job.assembly().job().wall(wall.id()).flatMap(built -> built.choice(component.id())).map(choice -> words(component, choice))
            .orElse("");
    }

    /** "3.4 lb lath, width 1/2 in": the options in words with what is set over them. */
    public static String words(Component component, Choice choice) {
        String options = String.join("; or ", choice.accept().stream()
            .map(id -> component.option(id).map(option -> option.title()).orElse(id)).toList());
        String values = choice.values().entrySet().stream().map(set -> ", " + component.property(set.getKey())
            .map(property -> property.label()).orElse(set.getKey()) + " " + set.getValue().value().text()).collect(Collectors.joining());
        return options + values + (choice.specified().product().isEmpty() ? "" : ", " + choice.specified().product());
    }

    /** What stands in the job as it will be built, without what other offered alternates would bring. */
    public static List<Finding> standing(OpenJob job) {
        return standing(job.job(), job.checked().findings());
    }

    /** The findings among these that stand in a job as it will be built. */
    public static List<Finding> standing(Job job, List<Finding> findings) {
        List<Integer> accepted = job.alternates(State.ACCEPTED);
        return findings.stream().filter(finding -> accepted.containsAll(finding.alternates())).toList();
    }

    private static List<Row> findings(OpenJob base, OpenJob with) {
        List<Finding> before = standing(base);
        List<Finding> after = standing(with);
        Set<String> both = said(before);
        both.retainAll(said(after));
        return Stream.concat(before.stream().filter(finding -> !both.contains(said(finding))).map(finding -> row(finding, true)),
            after.stream().filter(finding -> !both.contains(said(finding))).map(finding -> row(finding, false))).toList();
    }

    private static Row row(Finding finding, boolean base) {
        return new Row(Group.FINDING, finding.rule() + (finding.wall().isEmpty() ? "" : ", " + finding.wall()), finding.wall(),
            finding.component(), "", Optional.of(finding.kind()), base ? finding.plain() : "", base ? "" : finding.plain(), List.of());
    }

    private static Set<String> said(List<Finding> findings) {
        return findings.stream().map(AlternateBeside::said).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static String said(Finding finding) {
        return finding.place() + " " + finding.plain();
    }

    private static List<Row> paragraphs(OpenJob base, OpenJob with, String mark) throws UnusableInput {
        List<Row> rows = new ArrayList<>();
        for (String section : base.job().sections()) {
            Map<String, String> paths = new LinkedHashMap<>();
            base.section(section).paragraphs().forEach(paragraph -> paths.put(paragraph.id(), paragraph.path()));
            for (SectionChanges.Line line : Changing.between(Optional.of(bare(base, section)), Optional.of(bare(with, section)))
                .provisions()) {
                String before = line.before().map(SectionChanges.Side::plain).orElse("");
                String after = line.after().map(SectionChanges.Side::plain).orElse("");
                if (line.side().sort() == Sort.PARAGRAPH && !before.equals(after)) {
                    String id = line.before().orElse(line.side()).id();
                    String path = paths.getOrDefault(before.isEmpty() ? id + mark : id, line.side().path());
                    rows.add(new Row(Group.PARAGRAPH, path + ", " + section, "", "", section, Optional.empty(), before, after,
                        before.isEmpty() || after.isEmpty() ? List.of() : line.runs()));
                }
            }
        }
        return rows;
    }

    /** A section without what alternates that aren't accepted would print, so that the two can be told apart paragraph by paragraph. */
    private static SectionDocument bare(OpenJob job, String section) throws UnusableInput {
        return job.with(job.job().withoutOffers()).section(section);
    }

    private static List<Row> quantities(OpenJob base, OpenJob with) {
        Map<List<String>, Worksheet.Amount> before = amounts(base);
        Map<List<String>, Worksheet.Amount> after = amounts(with);
        Set<List<String>> all = new LinkedHashSet<>(before.keySet());
        all.addAll(after.keySet());
        return all.stream().filter(name -> !text(before.get(name)).equals(text(after.get(name)))).map(name -> Row.of(Group.QUANTITY,
            name.get(1) + ", " + name.get(0), name.get(0), "", text(before.get(name)), text(after.get(name)))).toList();
    }

    private static Map<List<String>, Worksheet.Amount> amounts(OpenJob job) {
        Map<List<String>, Worksheet.Amount> amounts = new LinkedHashMap<>();
        job.worksheets().made().stream().filter(made -> made.name().equals(TAKEOFF)).forEach(made -> made.results().values()
            .forEach(amount -> amounts.putIfAbsent(List.of(made.wall(), amount.label(), amount.unit().symbol()), amount)));
        return amounts;
    }

    private static String text(Worksheet.Amount amount) {
        return amount == null ? "" : Numbers.significant(amount.unit().fromSi(amount.si()), FIGURES, Numbers.Side.NEAREST) + " "
            + (amount.unit() == Unit.ONE ? "each" : amount.unit().symbol());
    }
}
