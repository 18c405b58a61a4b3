package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

import reglet.drafting.Docx;
import reglet.drafting.Html;
import reglet.drafting.Markdown;
import reglet.drafting.Pdf;
import reglet.model.Assembly;
import reglet.model.Assembly.ClauseUse;
import reglet.model.Calculation;
import reglet.model.Choice;
import reglet.model.Comparison;
import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Numbers;
import reglet.model.Option;
import reglet.model.Pack;
import reglet.model.Quantity;
import reglet.model.Requirement;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Slot;
import reglet.model.Submittal;
import reglet.model.Value;
import reglet.model.WallType;
import reglet.rules.Engine;
import reglet.worksheets.Worksheets;

/**
 * A requirement is stated once and used everywhere: whatever value of the pack or choice of a job changes, exactly the paragraphs,
 * register items, comparison rows and findings that use it change, in every format.
 */
class StatedOnceTest {

    /** Every paper of a job, taken apart. */
    private record Papers(Map<String, String> paragraphs, Map<String, SectionDocument> sections, List<String> register,
            Map<String, List<Comparison.Row>> rows, List<Finding> findings) {

        static Papers of(OpenJob job) throws Exception {
            Map<String, String> paragraphs = new TreeMap<>();
            Map<String, SectionDocument> sections = new LinkedHashMap<>();
            List<String> register = new ArrayList<>();
            for (SectionDocument section : job.sections()) {
                sections.put(section.number(), section);
                section.paragraphs().forEach(paragraph -> paragraphs.put(section.number() + " " + paragraph.id(), paragraph.plain()));
                job.register(section.number()).forEach(item -> register.add(item.toString()));
            }
            Map<String, List<Comparison.Row>> rows = new LinkedHashMap<>();
            for (Submittal submittal : job.job().submittals()) {
                for (Comparison.Row row : job.compare(submittal).rows()) {
                    rows.computeIfAbsent(submittal.id() + " " + row.requirement().component(), key -> new ArrayList<>()).add(row);
                }
            }
            return new Papers(paragraphs, sections, register, rows, job.checked().findings());
        }
    }

    @Test
    void aValueOfThePackChangesExactlyThePapersThatUseIt() throws Exception {
        OpenJob before = Samples.open("harbour-clinic");
        byte[] trees = Engine.compile(before.pack(), Worksheets::run).checkedTrees();
        Papers papers = Papers.of(before);
        int changedValues = 0;
        for (Requirement asked : distinct(before.assembly().requirements())) {
            if (!(asked.value() instanceof Quantity quantity) || isSet(before, asked)) {
                continue;
            }
            OpenJob after = new OpenJob(before.folder(), before.job(), Engine.load(with(before.pack(), asked, other(quantity)), trees,
                Worksheets::run), Optional.empty());
            Papers changed = Papers.of(after);
            String what = asked.path() + " of " + asked.option();
            Set<String> printing = printing(changed, asked);
            Set<String> different = differences(papers.paragraphs(), changed.paragraphs());
            assertEquals(clauses(printing), clauses(different), "clauses that change with " + what);
            different.retainAll(papers.paragraphs().keySet());
            different.retainAll(changed.paragraphs().keySet());
            assertTrue(printing.containsAll(different), different + " changed with " + what + ", which only " + printing + " print");
            assertEquals(papers.register(), changed.register(), "the register with " + what);
            papers.rows().forEach((key, rows) -> {
                if (!key.endsWith(" " + asked.component())) {
                    assertEquals(bare(rows), bare(changed.rows().get(key)), "rows of other components with " + what);
                }
            });
            assertEquals(without(before.pack(), papers.findings(), asked), without(before.pack(), changed.findings(), asked),
                "findings that don't read " + what);
            everyFormat(changed, papers, printing, what);
            changedValues += printing.isEmpty() ? 0 : 1;
        }
        assertTrue(changedValues >= 25, "only " + changedValues + " values are printed; the test has lost its subject");
    }

    @Test
    void aChoiceOfTheJobChangesOnlyThePapersThatReadItsComponent() throws Exception {
        OpenJob before = Samples.open("harbour-clinic");
        Papers papers = Papers.of(before);
        int changedChoices = 0;
        for (WallType wall : before.job().walls()) {
            for (Choice choice : wall.choices().values()) {
                Component component = before.pack().component(choice.component()).orElseThrow();
                List<String> others = component.options().stream().map(Option::id).filter(id -> !choice.accept().contains(id)).toList();
                if (others.isEmpty()) {
                    continue;
                }
                OpenJob after = before.choosing(wall.id(), component.id(), List.of(others.get(0)));
                Papers changed = Papers.of(after);
                Set<String> reading = reading(before.assembly(), component.id());
                reading.addAll(reading(after.assembly(), component.id()));
                for (String paragraph : differences(papers.paragraphs(), changed.paragraphs())) {
                    String clause = paragraph.substring(paragraph.lastIndexOf(' ') + 1).replaceAll("[@~/+].*", "");
                    assertTrue(reading.contains(clause) || made(clause), paragraph + " changed with " + wall.id() + "." + component.id());
                }
                changed.rows().forEach((key, rows) -> {
                    if (!key.endsWith(" " + component.id()) && papers.rows().containsKey(key)) {
                        assertEquals(bare(papers.rows().get(key)), bare(rows), "rows of other components with " + component.id());
                    }
                });
                changedChoices++;
            }
        }
        assertTrue(changedChoices >= 30, "only " + changedChoices + " choices were changed");
    }

    /** Rows without the number of their paragraph, which moves when a paragraph before it comes or goes. */
    private static List<Comparison.Row> bare(List<Comparison.Row> rows) {
        return rows.stream().map(row -> new Comparison.Row(row.product(), "", row.requirement(), row.submitted(), row.result(),
            row.shortBy(), row.note())).toList();
    }

    /** Paragraphs that the program makes from all clauses: references, related sections, submittals. */
    private static boolean made(String id) {
        return id.startsWith("references") || id.startsWith("related") || id.endsWith("product-data") || id.contains("report")
            || id.endsWith("drawing") || id.endsWith("statement") || id.endsWith("field-check") || id.endsWith("certificate")
            || id.endsWith("sample") || id.endsWith("calculation");
    }

    private static Set<String> reading(Assembly assembly, String component) {
        Set<String> clauses = new TreeSet<>();
        for (ClauseUse use : assembly.clauses()) {
            if (use.options().containsKey(component) || use.clause().when().contains(component + ".")
                || use.clause().body().contains("${" + component)) {
                clauses.add(use.clause().id());
            }
        }
        assembly.entries().forEach(entry -> clauses.add(entry.id()));
        // a clause that stops or begins to apply is in one of the two assemblies only
        assembly.pack().clauses().stream().filter(clause -> clause.when().contains(component + ".")).forEach(clause ->
            clauses.add(clause.id()));
        return clauses;
    }

    private static List<Requirement> distinct(List<Requirement> requirements) {
        Map<String, Requirement> first = new LinkedHashMap<>();
        requirements.forEach(requirement -> first.putIfAbsent(requirement.path() + " " + requirement.option(), requirement));
        return List.copyOf(first.values());
    }

    /** Whether a person set the value on a wall type, so that the pack's value has no say there. */
    private static boolean isSet(OpenJob job, Requirement asked) {
        return job.job().walls().stream().anyMatch(wall -> wall.choice(asked.component())
            .filter(choice -> choice.values().containsKey(asked.property().name())).isPresent());
    }

    private static Quantity other(Quantity quantity) {
        double number = quantity.unit().fromSi(quantity.si()) * 1.37 + 0.013;
        return Quantity.of(Double.parseDouble(Numbers.significant(number, 4, Numbers.Side.NEAREST)), quantity.unit());
    }

    /** The pack with another value of one property of one option. */
    private static Pack with(Pack pack, Requirement asked, Value value) {
        List<Component> components = pack.components().stream().map(component -> {
            if (!component.id().equals(asked.component())) {
                return component;
            }
            List<Option> options = component.options().stream().map(option -> {
                if (!option.id().equals(asked.option())) {
                    return option;
                }
                Map<String, Value> values = new LinkedHashMap<>(option.values());
                values.put(asked.property().name(), value);
                return new Option(option.id(), option.title(), values, option.cost(), option.note(), option.at());
            }).toList();
            return new Component(component.id(), component.title(), component.section(), component.order(), component.needed(),
                component.properties(), options, component.at());
        }).toList();
        return new Pack(pack.name(), pack.version(), pack.title(), pack.cautions(), pack.subjects(), components, pack.rules(),
            pack.calculations(), pack.tables(), pack.standards(), pack.plans(), pack.clauses(), pack.entries(), pack.synonyms(),
            pack.holdPoints(), pack.touching(), pack.stock(), pack.plausible());
    }

    /** The paragraphs with a slot that prints this requirement. */
    private static Set<String> printing(Papers papers, Requirement asked) {
        Set<String> ids = new TreeSet<>();
        papers.sections().forEach((number, section) -> section.paragraphs().forEach(paragraph -> {
            if (prints(paragraph, asked)) {
                ids.add(number + " " + paragraph.id());
            }
        }));
        return ids;
    }

    private static boolean prints(Paragraph paragraph, Requirement asked) {
        return paragraph.text().stream().anyMatch(span -> span instanceof Slot slot && slot.requirements().stream().anyMatch(printed ->
            printed.path().equals(asked.path()) && printed.option().equals(asked.option())));
    }

    /** The clauses of paragraphs: for walls or options that print alike a clause stands once until they differ, and then once for each. */
    private static Set<String> clauses(Set<String> paragraphs) {
        Set<String> clauses = new TreeSet<>();
        paragraphs.forEach(id -> clauses.add(id.replaceAll("[@~/+].*", "")));
        return clauses;
    }

    private static Set<String> differences(Map<String, String> before, Map<String, String> after) {
        Set<String> ids = new TreeSet<>(before.keySet());
        ids.addAll(after.keySet());
        ids.removeIf(id -> before.containsKey(id) && before.get(id).equals(after.get(id)));
        return ids;
    }

    private static Set<String> without(Pack pack, List<Finding> findings, Requirement asked) {
        Set<String> keys = new LinkedHashSet<>();
        findings.stream().filter(finding -> finding.facts().keySet().stream().noneMatch(fact -> reads(pack, fact, asked.path())))
            .forEach(finding -> keys.add(finding.key()));
        return keys;
    }

    /** Whether a fact is the one asked for, or the result of a worksheet with an input made from it. */
    private static boolean reads(Pack pack, String fact, String asked) {
        return fact.equals(asked) || pack.calculations().stream()
            .filter(calculation -> fact.startsWith(Calculation.OWNER + "." + calculation.id() + "."))
            .flatMap(calculation -> calculation.inputs().values().stream()).flatMap(input -> input.parts().stream())
            .flatMap(part -> Pattern.compile("[a-z_]+(?:\\.[a-z_]+)+").matcher(part).results())
            .anyMatch(read -> reads(pack, read.group(), asked));
    }

    /** Each format holds the new text of the changed paragraphs, and of a section without changed paragraphs the same text as before. */
    private static void everyFormat(Papers changed, Papers before, Set<String> printing, String what) throws IOException {
        for (String number : changed.sections().keySet()) {
            SectionDocument section = changed.sections().get(number);
            Set<String> here = new TreeSet<>(printing);
            here.removeIf(id -> !id.startsWith(number + " "));
            if (here.isEmpty()) {
                assertEquals(Markdown.of(before.sections().get(number)), Markdown.of(section), number + " with " + what);
                continue;
            }
            Map<String, String> formats = Map.of("Markdown", squeezed(linkless(Markdown.of(section))), "HTML",
                squeezed(tagless(Html.of(section))),
                "DOCX", squeezed(docx(Docx.of(section))), "PDF", squeezed(pdf(Pdf.of(section))));
            for (String id : here) {
                String text = squeezed(changed.paragraphs().get(id));
                formats.forEach((format, whole) -> assertTrue(whole.contains(text), format + " lacks \"" + text + "\" with " + what));
                assertFalse(text.equals(squeezed(before.paragraphs().getOrDefault(id, ""))), id + " is as before with " + what);
            }
        }
    }

    /** Only letters and digits: formats break lines, hyphenate and escape each in their way. */
    private static String squeezed(String text) {
        return text.replaceAll("&[a-z#0-9]+;", "").replaceAll("[^\\p{L}\\p{N}]", "");
    }

    private static String linkless(String markdown) {
        return markdown.replaceAll("\\]\\((?:slot|std|see):[^)]*\\)", "");
    }

    private static String tagless(String html) {
        return html.replaceAll("(?s)<[^>]*>", "");
    }

    private static String docx(byte[] bytes) throws IOException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().equals("word/document.xml")) {
                    return tagless(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
                }
            }
        }
        throw new IOException("no document in the DOCX file");
    }

    private static String pdf(byte[] bytes) throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            PDFTextStripper stripper = new PDFTextStripper();
            // heads and feet of pages would stand in the middle of paragraphs
            StringBuilder text = new StringBuilder();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String[] lines = stripper.getText(document).split("\n");
                for (String line : lines) {
                    boolean edge = line.contains("page " + page + " of ") || line.contains("Draft") && line.length() < 40;
                    text.append(edge ? "" : line).append('\n');
                }
            }
            return text.toString();
        }
    }
}
