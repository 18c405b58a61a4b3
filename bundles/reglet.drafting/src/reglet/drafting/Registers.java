package reglet.drafting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.model.Assembly;
import reglet.model.Finding;
import reglet.model.PaperRule;
import reglet.model.Register;
import reglet.model.RegisterFile;
import reglet.model.RegisterItem;
import reglet.model.RegisterItem.Timing;
import reglet.model.Scope;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionPlan;

/** The register: what sections ask to be sent, with what a person changed, when it is needed, and what became of it. */
public final class Registers {

    private Registers() {
    }

    /**
     * The register of drafted sections. What a person struck from a section isn't asked for; what a section has no submittals
     * article for is listed without a paragraph. The changes of the job's register file are made to what is derived, so that they
     * stand the next time too; one that finds its item no more is among {@link Register#lost}.
     */
    public static Register of(Assembly assembly, List<SectionDocument> sections) {
        List<RegisterItem> derived = new ArrayList<>();
        sections.forEach(section -> derived.addAll(derived(assembly, section)));
        return changed(assembly, derived, sections.stream().map(SectionDocument::number).toList());
    }

    private static Register changed(Assembly assembly, List<RegisterItem> derived, List<String> sections) {
        RegisterFile file = assembly.job().register();
        RegisterChanges changed = RegisterChanges.of(derived, file, sections);
        List<RegisterItem> items = new ArrayList<>();
        // an item that was added stands behind the others of its section
        for (String section : sections) {
            changed.items().stream().filter(item -> item.section().equals(section))
                .forEach(item -> items.add(planned(item, file).standing(Statuses.of(item, assembly.job().submittals()))));
        }
        List<Register.Lost> lost = new ArrayList<>(changed.lost());
        lost.addAll(Statuses.lost(items, sections, assembly.job().submittals()));
        return new Register(items, lost);
    }

    private static List<RegisterItem> derived(Assembly assembly, SectionDocument section) {
        Map<String, String> paths = new LinkedHashMap<>();
        // a clause of a later article may bear the id of the paragraph that asks for something
        section.paragraphs().forEach(paragraph -> paths.putIfAbsent(paragraph.id(), paragraph.path()));
        boolean printed = assembly.pack().plan(section.number()).stream().flatMap(plan -> plan.articles().stream())
            .anyMatch(article -> List.of(SectionPlan.Made.ACTION_SUBMITTALS, SectionPlan.Made.INFORMATIONAL_SUBMITTALS,
                SectionPlan.Made.CLOSEOUT_SUBMITTALS).contains(article.made()));
        List<String> order = section.paragraphs().stream().map(Paragraph::id).toList();
        List<RegisterItem> items = new ArrayList<>();
        for (RegisterItem item : OfAlternates.items(assembly, section.number())) {
            if (!printed || !item.isDue() || paths.containsKey(item.id())) {
                // an alternate's paragraph that reads as the base's prints once
                items.add(item.at(paths.getOrDefault(item.id(), paths.getOrDefault(base(item), ""))));
            }
        }
        items.sort(Comparator.comparingInt(item -> order(order, item)));
        return items;
    }

    private static int order(List<String> order, RegisterItem item) {
        return Stream.of(item.id(), base(item)).map(order::indexOf).filter(place -> place >= 0).findFirst().orElse(order.size());
    }

    /** The id without the alternate's number. */
    private static String base(RegisterItem item) {
        return item.id().replaceFirst("~alternate-\\d+$", "");
    }

    private static RegisterItem planned(RegisterItem item, RegisterFile file) {
        RegisterFile.Plan plan = file.plan(item.section(), item.names());
        // without all three the last day can't be told
        Optional<Timing> timing = plan.onSite().filter(day -> item.isDue() && plan.lead().isPresent() && plan.review().isPresent())
            .map(day -> Timing.of(day, plan.lead().getAsInt(), plan.review().getAsInt(), file.days()));
        String code = file.scheme() == RegisterFile.Scheme.FEDERAL ? FederalCodes.of(item) : "";
        return item.planned(code, plan.sender(), timing);
    }

    /**
     * What refers to items that aren't there, without drafting: for a job that changes no drafted text, whose sections print all that
     * they ask for.
     */
    public static List<Finding> findings(Assembly assembly) {
        List<String> sections = assembly.job().sections();
        return findings(changed(assembly, sections.stream().flatMap(section -> OfAlternates.items(assembly, section).stream()).toList(),
            sections));
    }

    /** What refers to items that aren't there, as findings: nothing that a person wrote is lost without a word. */
    public static List<Finding> findings(Register register) {
        return register.lost().stream().map(lost -> new Finding(PaperRule.REGISTER.id(), PaperRule.REGISTER.kind(), Scope.JOB, "", "", "",
            Map.of(), lost.at(), lost.says(), lost.fix(), Map.of(), List.of(), PaperRule.REGISTER.basis())).toList();
    }

    /** The items by the last day to hand them in, the earliest first; those without one last. */
    public static List<RegisterItem> byDate(List<RegisterItem> items) {
        return items.stream().sorted(Comparator.comparing(item -> item.timing().map(Timing::submitBy).orElse(null),
            Comparator.nullsLast(Comparator.naturalOrder()))).toList();
    }

    /** The register as comma-separated values, with a line of column names; dates as ISO 8601. */
    public static String csv(List<RegisterItem> items) {
        StringBuilder lines = new StringBuilder(Csv.line(RegisterTable.TITLES));
        items.forEach(item -> lines.append(Csv.line(RegisterTable.texts(item))));
        return lines.toString();
    }
}
