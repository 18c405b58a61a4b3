package reglet.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is checked of the drafted text when a person wrote some of it. The library's own text is made so that nothing of this can happen.
 */
public enum PaperRule {
    CITED("paper.cited", Finding.Kind.CONFLICT, "a standard that a paragraph cites stands in the section's references article",
        "references article"),
    LISTED("paper.listed", Finding.Kind.CAUTION, "a standard in the references article is cited by a paragraph of the section",
        "references article"),
    EXECUTION("paper.execution", Finding.Kind.CAUTION, "a product of Part 2 has a paragraph in Part 3 that says how it is built in",
        "three parts of a section"),
    SUBMITTAL("paper.submittal", Finding.Kind.CAUTION, "what is to be sent is specified in Part 2 or 3", "submittals articles"),
    UNDECIDED("paper.undecided", Finding.Kind.CONFLICT, "no bracket, blank or \"select one\" is left in the text", "options and blanks"),
    VALUES("paper.values", Finding.Kind.CONFLICT, "a value or kind typed into the text is the one that the choices require",
        "a requirement is stated once"),
    SECTIONS("paper.sections", Finding.Kind.CONFLICT,
        "a value or kind typed into one section is the one that the section which owns the component requires",
            "a requirement is stated once"),
    PRINTED("paper.printed", Finding.Kind.GAP, "a requirement of the choices is still stated where a person changed or struck its text",
        "a requirement is stated once"),
    REFERENCE("paper.reference", Finding.Kind.CONFLICT, "articles, paragraphs and sections that the text refers to are there",
        "cross references"),
    TEXT("paper.text", Finding.Kind.CONFLICT, "the text can be printed: its paragraph and its slots are there", "slots"),
    LIBRARY("paper.library", Finding.Kind.CAUTION, "a text that a person changed or struck is still the library's text of today",
        "changed text"),
    REGISTER("paper.register", Finding.Kind.CONFLICT,
        "what the register file and the submittals say of an item is said of one that the sections ask for", "register"),
    QUESTION("paper.question", Finding.Kind.GAP, "a question that a choice cites stands among the job's questions, and is answered",
        "requests for information"),
    WORDING("paper.wording", Finding.Kind.CAUTION, "the text says what can be measured, or who decides by what",
        "enforceable wording");

    private final String id;
    private final Finding.Kind kind;
    private final String holds;
    private final String at;

    PaperRule(String id, Finding.Kind kind, String holds, String at) {
        this.id = id;
        this.kind = kind;
        this.holds = holds;
        this.at = at;
    }

    public String id() {
        return id;
    }

    public Finding.Kind kind() {
        return kind;
    }

    /** What holds when nothing is found, in words. */
    public String holds() {
        return holds;
    }

    public List<Basis> basis() {
        return List.of(new Basis("specification practice", "", at, Known.COMMON_PRACTICE));
    }

    public static Optional<PaperRule> of(String id) {
        return Stream.of(values()).filter(rule -> rule.id.equals(id)).findFirst();
    }
}
