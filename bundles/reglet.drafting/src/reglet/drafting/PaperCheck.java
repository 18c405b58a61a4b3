package reglet.drafting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.model.Assembly;
import reglet.model.Clause;
import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Layout;
import reglet.model.Nearest;
import reglet.model.PaperRule;
import reglet.model.Place;
import reglet.model.Scope;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Article;
import reglet.model.SectionDocument.Cited;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionPlan;
import reglet.model.SectionPlan.Made;
import reglet.model.TextChange;
import reglet.model.UnusableInput;

/**
 * Checks the drafted sections of a job as papers: that what a person wrote into them, or struck from them, leaves no standard unlisted,
 * no product without its installation, no blank, no dead reference, and no value beside the one that the choices require.
 */
public final class PaperCheck {
    private static final List<Made> SUBMITTALS = List.of(Made.ACTION_SUBMITTALS, Made.INFORMATIONAL_SUBMITTALS, Made.CLOSEOUT_SUBMITTALS);
    /** Codes govern by law; a section doesn't list them as it lists what it calls up itself. */
    private static final Set<String> CODES = Set.of("IBC", "IRC", "IECC", "ICC");
    private static final Pattern BLANK = Pattern.compile("\\[[^\\]]*]|_{3,}|<[A-Za-z][A-Za-z ,]*>|\\bTBD\\b"
        + "|\\b(?:select|choose) (?:one|from|between)\\b|\\bto be (?:decided|determined|selected|confirmed)\\b"
        + "|\\binsert (?:name|number|date|value|product|requirement)\\b",
        Pattern.CASE_INSENSITIVE);
    private static final Pattern ARTICLE = Pattern.compile("\\b(Article|Paragraph) ([123]\\.\\d+(?:\\.[A-Za-z0-9]+)*)");
    private static final Pattern SECTION = Pattern.compile("\\bSection (\\d\\d[ -]?\\d\\d[ -]?\\d\\d(?:\\.\\d\\d)?)");
    private static final Pattern WORD = Pattern.compile("\\p{L}{4,}");
    /** Words that say what is sent or done and not about what. */
    private static final Set<String> GENERAL = Set.of("product", "data", "sample", "test", "report", "shop", "drawing", "certificate",
        "statement", "maker", "manufacturer", "manufacturers", "warranty", "submit", "send", "showing", "show", "list", "letter", "written",
        "provide", "install", "with", "each", "from", "that", "type", "qualification", "record", "plan", "material",
        "instruction", "calculation", "compatibility", "maintenance", "closeout", "information", "complete", "full", "copy", "copies");
    private static final Map<String, String> WORDING = wording();

    private final Assembly assembly;
    private final List<SectionDocument> sections;
    private final List<Finding> findings = new ArrayList<>();

    private PaperCheck(Assembly assembly, List<SectionDocument> sections) {
        this.assembly = assembly;
        this.sections = sections;
    }

    private static Map<String, String> wording() {
        Map<String, String> words = new LinkedHashMap<>();
        String measure = "Say what is measured, with its number and its test.";
        String who = "Say who decides, and by what.";
        String when = "Say in which case.";
        Stream.of("best practice", "good practice", "industry standard", "high quality", "good quality", "top quality", "first class",
            "first-class", "workmanlike", "state of the art", "adequate", "adequately", "sufficient", "sufficiently", "properly",
                "reasonable",
            "appropriate",
            "acceptable quality").forEach(phrase -> words.put(phrase, measure));
        Stream.of("to the satisfaction of", "as directed", "as approved", "or equal", "or approved equal", "in the opinion of")
            .forEach(phrase -> words.put(phrase, who));
        Stream.of("as required", "if required", "where required", "as necessary", "if necessary", "where necessary", "as needed",
            "where applicable", "if applicable", "where possible", "etc\\.", "and/or").forEach(phrase -> words.put(phrase, when));
        return words;
    }

    /**
     * What is found in the drafted sections of a job.
     *
     * @param sections the sections that the job writes
     * @return in the order of sections, rules and places
     */
    public static List<Finding> findings(Assembly assembly, List<SectionDocument> sections) throws UnusableInput {
        PaperCheck check = new PaperCheck(assembly, sections);
        sections.forEach(check::section);
        for (SectionDocument section : sections) {
            check.findings.addAll(UnprintedWords.of(assembly, section));
        }
        return check.findings.stream().sorted(Comparator.comparing((Finding finding) -> finding.at().file())
            .thenComparing(finding -> finding.at().line()).thenComparing(Finding::rule).thenComparing(Finding::says)).distinct().toList();
    }

    /** Texts of a person that can't be printed, as findings. */
    public static List<Finding> findings(UnusableInput unusable) {
        return unusable.problems().stream().map(problem -> new Finding(PaperRule.TEXT.id(), PaperRule.TEXT.kind(), Scope.SECTION,
            "", "", "",
            Map.of(), problem.at(), sentence(problem.what()), problem.expected().isEmpty() ? "" : sentence(problem.expected()), Map.of(),
            List.of(), PaperRule.TEXT.basis())).toList();
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + (words.matches(".*[.?!]") ? "" : ".");
    }

    private void section(SectionDocument section) {
        List<OwnText> own = OwnText.of(assembly, section);
        List<TextChange> struck = assembly.job().changes().stream().filter(change -> change.section().equals(section.number())
            && change.kind() == TextChange.Kind.STRIKE).toList();
        standards(section, own, struck);
        products(section, own, struck);
        submittals(section, own, struck);
        references(section, own, struck);
        own.forEach(this::wording);
        assembly.job().changes().stream().filter(change -> change.section().equals(section.number())).forEach(this::library);
        if (assembly.job().changes().stream().anyMatch(change -> change.section().equals(section.number()))) {
            Drafter.lost(assembly, section.number()).forEach(change -> lost(section, change));
        }
        own.forEach(text -> OwnValues.of(Alternates.of(assembly, text.paragraph().id()), text).forEach(wrong -> found(wrong.rule(),
            wrong.at(), wrong.component(), wrong.says(),
            wrong.fix())));
    }

    private void found(PaperRule rule, Place at, String component, String says, String fix) {
        found(rule, rule.kind(), at, component, says, fix);
    }

    private void found(PaperRule rule, Finding.Kind kind, Place at, String component, String says, String fix) {
        findings.add(new Finding(rule.id(), kind, Scope.SECTION, "", "", component, Map.of(), at, says, fix, Map.of(), List.of(),
            rule.basis()));
    }

    private List<SectionPlan.Article> planned(SectionDocument section) {
        return assembly.pack().plan(section.number()).map(SectionPlan::articles).orElse(List.of());
    }

    private Set<String> articles(SectionDocument section, List<Made> made) {
        return planned(section).stream().filter(article -> made.contains(article.made())).map(SectionPlan.Article::id)
            .collect(Collectors.toSet());
    }

    // ---- standards

    private void standards(SectionDocument section, List<OwnText> own, List<TextChange> struck) {
        Set<String> made = articles(section, List.of(Made.REFERENCES));
        if (made.isEmpty() || assembly.job().layout().references() == Layout.References.OFF) {
            return;
        }
        Set<String> cited = new LinkedHashSet<>();
        Set<String> listed = new LinkedHashSet<>();
        section.parts().forEach(part -> part.articles().forEach(article -> article.paragraphs().forEach(paragraph ->
            all(paragraph).forEach(one -> one.text().forEach(span -> {
                if (!made.contains(article.id())) {
                    References.cite(assembly, span, cited);
                } else if (span instanceof Cited standard) {
                    listed.add(standard.standard());
                }
            })))));
        Map<String, OwnText> typed = new LinkedHashMap<>();
        own.stream().filter(text -> !made.contains(text.article())).forEach(text -> Designations.of(assembly.pack(), text.text())
            .forEach(standard -> typed.putIfAbsent(standard, text)));
        Map<String, OwnText> typedThere = new LinkedHashMap<>();
        own.stream().filter(text -> made.contains(text.article())).forEach(text -> Designations.of(assembly.pack(), text.text())
            .forEach(standard -> typedThere.putIfAbsent(standard, text)));
        typed.forEach((standard, text) -> {
            if (!listed.contains(standard) && !typedThere.containsKey(standard) && !CODES.contains(standard.split(" ")[0])) {
                found(PaperRule.CITED, text.at(standard), "", "Paragraph " + text.path() + " of Section " + section.number() + " cites "
                    + standard + ", which its references do not list.", "Cite it with a slot such as ${std." + SlotNames.key(standard)
                    + "} where the library knows it; else add it after a paragraph of the references.");
            }
        });
        cited.stream().filter(standard -> !listed.contains(standard) && !typedThere.containsKey(standard)).forEach(standard ->
            found(PaperRule.CITED, struckAt(struck, "references." + SlotNames.key(standard)), "", "Section " + section.number() + " cites "
                + standard + ", which its references do not list any more.", "Leave it among the references, or strike what cites it."));
        typedThere.forEach((standard, text) -> {
            if (!cited.contains(standard) && !typed.containsKey(standard)) {
                found(PaperRule.LISTED, text.at(standard), "", "The references of Section " + section.number() + " list " + standard
                    + ", which nothing in the section cites.", "Cite it where it is to be followed, or take it from the references.");
            }
        });
    }

    private static List<Paragraph> all(Paragraph paragraph) {
        List<Paragraph> all = new ArrayList<>(List.of(paragraph));
        paragraph.children().forEach(child -> all.addAll(all(child)));
        return all;
    }

    /** The block that struck a paragraph; the first that struck any when none did so by name. */
    private Place struckAt(List<TextChange> struck, String paragraph) {
        return struck.stream().filter(change -> change.paragraph().equals(paragraph)).findFirst()
            .or(() -> struck.stream().filter(change -> OwnText.head(change.paragraph()).equals(OwnText.head(paragraph))).findFirst())
            .or(() -> struck.stream().findFirst()).map(TextChange::at).orElse(assembly.job().at());
    }

    // ---- products and what is sent of them

    /** Components that the paragraphs of some parts are about. */
    private Set<String> about(SectionDocument section, int... parts) {
        Set<String> about = new LinkedHashSet<>();
        for (int number : parts) {
            section.parts().stream().filter(part -> part.number() == number).flatMap(part -> part.articles().stream())
                .flatMap(article -> article.paragraphs().stream()).flatMap(paragraph -> all(paragraph).stream()).forEach(paragraph -> {
                    about.add(OwnText.head(paragraph.id()));
                    paragraph.text().stream().filter(Slot.class::isInstance)
                        .forEach(slot -> about.add(SlotNames.head(((Slot) slot).ref())));
                });
        }
        return about;
    }

    private List<Component> owned(SectionDocument section) {
        return assembly.pack().components().stream().filter(component -> component.section().equals(section.number())).toList();
    }

    private void products(SectionDocument section, List<OwnText> own, List<TextChange> struck) {
        Set<String> specified = about(section, 2);
        Set<String> built = about(section, 3);
        owned(section).stream().filter(component -> specified.contains(component.id()) && !built.contains(component.id()))
            .forEach(component -> found(PaperRule.EXECUTION, struckAt(struck, component.id()), component.id(), component.title()
                + " stands in Part 2 of Section " + section.number() + ", and nothing in Part 3 says how it is built in.",
                "Leave a paragraph for it in Part 3, or write one."));
        String execution = words(section, 3);
        own.stream().filter(text -> text.part() == 2 && text.names() && !spokenOf(text.lead(), execution))
            .forEach(text -> found(PaperRule.EXECUTION, text.at(text.lead()), "", "\"" + text.lead().strip() + "\" of Paragraph "
            + text.path()
                + " of Section " + section.number() + " stands in Part 2, and nothing in Part 3 says how it is built in.",
                "Write a paragraph for it in Part 3."));
    }

    private void submittals(SectionDocument section, List<OwnText> own, List<TextChange> struck) {
        Set<String> made = articles(section, SUBMITTALS);
        Set<String> printed = section.paragraphs().stream().map(Paragraph::id).collect(Collectors.toSet());
        Set<String> specified = about(section, 2, 3);
        Evidences.of(assembly, section.number()).stream()
            .filter(asked -> !asked.component().isEmpty() && printed.contains(asked.id()) && !specified.contains(asked.component()))
            .forEach(asked -> found(PaperRule.SUBMITTAL, struckAt(struck, asked.component()), asked.component(), "Section "
            + section.number()
                + " asks for " + asked.sends() + " of " + asked.item() + ", and specifies nothing of it.",
                "Strike " + asked.id() + " too, or leave what specifies it."));
        String words = words(section, 2) + " " + words(section, 3) + " " + words(section, "quality", "coordination", "delivery", "weather",
            "warranty");
        own.stream().filter(text -> made.contains(text.article()) && text.names() && !spokenOf(text.lead(), words))
            .forEach(text -> found(PaperRule.SUBMITTAL, text.at(text.lead()), "", "Paragraph " + text.path() + " of Section "
            + section.number()
                + " asks for \"" + text.lead().strip() + "\", and the section specifies nothing of it.",
                "Specify it, or do not ask for it."));
    }

    private static String words(SectionDocument section, int part) {
        return words(section.parts().stream().filter(one -> one.number() == part).flatMap(one -> one.articles().stream()));
    }

    private static String words(SectionDocument section, String... articles) {
        return words(section.parts().stream().flatMap(part -> part.articles().stream()).filter(article -> List.of(articles)
            .contains(article.id())));
    }

    private static String words(Stream<Article> articles) {
        return articles.flatMap(article -> article.paragraphs().stream()).flatMap(paragraph -> all(paragraph).stream())
            .map(Paragraph::plain)
            .collect(Collectors.joining(" ")).toLowerCase(Locale.ROOT);
    }

    /** Whether the word that names a thing, the last before its colon, stands in a text; plurals count. */
    private static boolean spokenOf(String lead, String text) {
        Matcher word = WORD.matcher(lead.toLowerCase(Locale.ROOT));
        String name = "";
        while (word.find()) {
            String stem = word.group().replaceFirst("(?:es|s)$", "");
            if (!GENERAL.contains(word.group()) && !GENERAL.contains(stem)) {
                name = stem;
            }
        }
        return text.contains(name);
    }

    // ---- references within the papers

    private void references(SectionDocument section, List<OwnText> own, List<TextChange> struck) {
        Set<String> numbers = new LinkedHashSet<>();
        Set<String> ids = new LinkedHashSet<>();
        section.parts().forEach(part -> part.articles().forEach(article -> {
            numbers.add(article.number());
            ids.add(article.id());
        }));
        section.paragraphs().forEach(paragraph -> {
            numbers.add(paragraph.path());
            ids.add(clause(paragraph.id()));
            ids.add(paragraph.id());
        });
        for (OwnText text : own) {
            Matcher article = ARTICLE.matcher(text.text());
            while (article.find()) {
                if (!numbers.contains(article.group(2))) {
                    found(PaperRule.REFERENCE, text.at(article.group()), "", "Paragraph " + text.path() + " of Section " + section.number()
                        + " refers to " + article.group() + ", which the section does not have.",
                        "Refer with a slot such as ${see.ARTICLE}, which follows the numbers.");
                }
            }
            Matcher other = SECTION.matcher(text.text());
            while (other.find()) {
                String number = other.group(1).replaceAll("^(\\d\\d)[ -]?(\\d\\d)[ -]?(\\d\\d)", "$1 $2 $3");
                if (assembly.pack().plan(number).isEmpty() && sections.stream().noneMatch(one -> one.number().equals(number))) {
                    found(PaperRule.REFERENCE, Finding.Kind.CAUTION, text.at(other.group()), "", "Paragraph " + text.path() + " of Section "
                        + section.number() + " refers to Section " + number + ", which this job does not write and the pack does not know.",
                        "Look whether the project manual has it.");
                }
            }
            SlotTemplate.slots(text.change().text()).stream().filter(SlotNames::isReference)
                .forEach(slot -> SlotNames.target(assembly.pack(), section.number(), slot).filter(target -> !ids.contains(target))
                    .ifPresent(target -> found(PaperRule.REFERENCE, text.at("${" + slot + "}"), "", "Paragraph " + text.path()
                    + " of Section "
                        + section.number() + " refers to \"" + target + "\", which is not printed in this job; it reads \"this Section\".",
                        "Refer to something that is printed.")));
        }
        struck.forEach(change -> referredTo(section, change, ids));
    }

    /** A struck paragraph to which a printed one of the library still refers. */
    private void referredTo(SectionDocument section, TextChange struck, Set<String> printed) {
        String target = clause(struck.paragraph());
        if (printed.contains(target)) {
            return;
        }
        assembly.pack().clauses().stream().filter(clause -> clause.section().equals(section.number()) && printed.contains(clause.id()))
            .filter(clause -> SlotTemplate.slots(clause.body()).stream().filter(SlotNames::isReference)
                .anyMatch(slot -> SlotNames.target(assembly.pack(), section.number(), slot).filter(target::equals).isPresent()))
            .map(Clause::id).forEach(clause -> found(PaperRule.REFERENCE, struck.at(), "", "\"" + target + "\" is struck from Section "
                + section.number() + ", and \"" + clause + "\" still refers to it.", "Change that paragraph too, or leave this one."));
    }

    private static String clause(String paragraph) {
        return paragraph.replaceFirst("[@~/+].*", "");
    }

    // ---- the library's moves

    private void library(TextChange change) {
        LibraryMove.of(assembly.pack(), change).ifPresent(move -> {
            String says = "The library's text of \"" + change.paragraph() + "\" in Section " + change.section() + " was \"" + move.madeOn()
                + "\" when it was " + (change.kind() == TextChange.Kind.STRIKE ? "struck" : "changed") + " and is \"" + move.now()
                + "\" now";
            String prints = change.kind() == TextChange.Kind.STRIKE ? "it stays struck" : "your text prints as it is: \""
                + move.text() + "\"";
            found(PaperRule.LIBRARY, change.at(), OwnText.head(change.paragraph()).equals(change.paragraph()) ? ""
                : assembly.pack().component(OwnText.head(change.paragraph())).map(Component::id).orElse(""), switch (move.kind()) {
                    case TAKEN_IN -> says + "; what is new prints in yours: \"" + move.text() + "\".";
                    case LEFT_OUT -> says + "; " + prints + ".";
                    case SLOTS -> says + ", with other slots; " + prints + ".";
                }, "Decide what to take over, then quote the library's text of today behind \">\" in the block.");
        });
    }

    private void lost(SectionDocument section, TextChange change) {
        List<String> ids = section.paragraphs().stream().map(Paragraph::id).toList();
        String missing = change.kind() == TextChange.Kind.MOVE && ids.contains(change.paragraph()) ? change.after() : change.paragraph();
        String hint = Nearest.hint(missing, ids);
        String kept = section.paragraphs().stream().filter(paragraph -> paragraph.id().startsWith(change.paragraph() + TextChanges.KEPT))
            .findFirst().map(paragraph -> "your text is kept as " + paragraph.path()).orElse("nothing is done");
        boolean within = change.kind() == TextChange.Kind.MOVE && ids.contains(change.paragraph()) && ids.contains(change.after());
        String wrong = within ? "\"" + change.after() + "\" stands below \"" + change.paragraph() + "\" or goes along with it, "
            + "so that this can't be moved behind it"
            : "Section " + section.number() + " has no paragraph \"" + missing + "\"";
        found(PaperRule.TEXT, change.at(), "", wrong + "; " + kept + ".", hint.isEmpty() || within
            ? "Name a paragraph of the drafted section; the library or the job may have changed." : sentence(hint));
    }

    // ---- words

    private void wording(OwnText text) {
        Matcher blank = BLANK.matcher(text.text());
        while (blank.find()) {
            found(PaperRule.UNDECIDED, text.at(blank.group()), "", "Paragraph " + text.path() + " of Section " + text.section()
                + " leaves \""
                + blank.group() + "\" open.", "Decide it, and write what was decided.");
        }
        WORDING.forEach((phrase, fix) -> {
            Matcher vague = Pattern.compile("(?<!\\w)" + phrase + "(?!\\w)", Pattern.CASE_INSENSITIVE).matcher(text.text());
            if (vague.find()) {
                found(PaperRule.WORDING, text.at(vague.group()), "", "Paragraph " + text.path() + " of Section " + text.section()
                    + " says \""
                    + vague.group() + "\", which nobody can enforce.", fix);
            }
        });
    }
}
