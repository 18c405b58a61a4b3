package reglet.drafting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.model.Assembly;
import reglet.model.RegisterItem;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionPlan;
import reglet.model.Submittal;

/** The register: what a section asks to be sent. */
public final class Registers {
    private static final String END_OF_LINE = "\r\n";

    private Registers() {
    }

    /**
     * The register of a drafted section. What a person struck from the section isn't asked for; what the section has no
     * submittals article for is listed without a paragraph.
     */
    public static List<RegisterItem> of(Assembly assembly, SectionDocument section) {
        Map<String, String> paths = new LinkedHashMap<>();
        section.paragraphs().forEach(paragraph -> paths.put(paragraph.id(), paragraph.path()));
        boolean printed = assembly.pack().plan(section.number()).stream().flatMap(plan -> plan.articles().stream())
            .anyMatch(article -> List.of(SectionPlan.Made.ACTION_SUBMITTALS, SectionPlan.Made.INFORMATIONAL_SUBMITTALS,
                SectionPlan.Made.CLOSEOUT_SUBMITTALS).contains(article.made()));
        List<String> order = section.paragraphs().stream().map(Paragraph::id).toList();
        List<RegisterItem> items = new ArrayList<>();
        for (Evidences.Asked asked : Evidences.of(assembly, section.number())) {
            if (!printed || paths.containsKey(asked.id())) {
                items.add(new RegisterItem(asked.id(), section.number(), paths.getOrDefault(asked.id(), ""), asked.item(),
                    asked.component(),
                    asked.kind(), asked.sends(), status(assembly, section.number(), asked.id())));
            }
        }
        items.sort(Comparator.comparingInt(item -> order.indexOf(item.id())));
        return List.copyOf(items);
    }

    private static String status(Assembly assembly, String section, String item) {
        List<String> submittals = assembly.job().submittals().stream()
            .filter(submittal -> submittal.section().equals(section) && submittal.items().contains(item)).map(Submittal::id).toList();
        return submittals.isEmpty() ? "open" : "handed in: " + String.join(", ", submittals);
    }

    /** The register as comma-separated values (RFC 4180), with a line of column names. */
    public static String csv(List<RegisterItem> items) {
        StringBuilder lines = new StringBuilder(line(Stream.of("section", "paragraph", "item", "kind", "sends", "status", "id")));
        items.forEach(item -> lines.append(line(Stream.of(item.section(), item.paragraph(), item.item(), item.kind().text(), item.sends(),
            item.status(), item.id()))));
        return lines.toString();
    }

    private static String line(Stream<String> cells) {
        return cells.map(Registers::cell).collect(Collectors.joining(",")) + END_OF_LINE;
    }

    private static String cell(String text) {
        boolean quoted = text.contains(",") || text.contains("\"") || text.contains("\n") || text.contains("\r");
        return quoted ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}
