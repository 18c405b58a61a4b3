package reglet.model;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Slot;

/**
 * The sections of a job as they stood when they were given out, or as they stand now.
 *
 * @param name      "Bid set", "Addendum 1"; "" for the present draft
 * @param order     counted over all issues of the job, from 1; 0 for the present draft
 * @param number    counted over the issues of its kind, from 1; 0 for the present draft
 * @param note      a line about it; ""
 * @param job       title of the job
 * @param jobNote   the job's note; ""
 * @param pack      name of the pack
 * @param packDigest of the pack's text; ""
 * @param findings  what the check found standing, one a line
 * @param choices   what every choice accepts, by address: "W1.lath"
 * @param questions the job's questions
 * @param cautions  sentences that its papers repeat
 */
public record Issue(String name, Kind kind, int order, int number, Optional<LocalDate> date, String note, String job, String jobNote,
        String pack, String packDigest, List<String> findings, Map<String, Made> choices, List<Question> questions, List<String> cautions,
        List<SectionDocument> sections) {

    /** What is given out: sections whole, or what changes in them. Addenda come before the contract is signed, bulletins after it. */
    public enum Kind {
        ISSUE("issue", "Issue"), ADDENDUM("addendum", "Addendum"), BULLETIN("bulletin", "Bulletin");

        private final String text;
        private final String title;

        Kind(String text, String title) {
            this.text = text;
            this.title = title;
        }

        public String text() {
            return text;
        }

        /** "Addendum", as papers print it. */
        public String title() {
            return title;
        }

        public static Map<String, Kind> words() {
            return Ordered.copy(Stream.of(values()).collect(Collectors.toMap(Kind::text, kind -> kind, (a, b) -> a,
                LinkedHashMap::new)));
        }
    }

    /**
     * A choice in short.
     *
     * @param accept what is accepted, with the values set over it, as one line
     * @param by     who or what fixed it
     */
    public record Made(String accept, String by) {
    }

    public Issue {
        findings = List.copyOf(findings);
        choices = Ordered.copy(choices);
        questions = List.copyOf(questions);
        cautions = List.copyOf(cautions);
        sections = List.copyOf(sections);
    }

    /** "Addendum 1", "Bid set", "present draft". */
    public String called() {
        return name.isEmpty() ? "present draft" : name;
    }

    public Optional<SectionDocument> section(String number) {
        return sections.stream().filter(section -> section.number().equals(number)).findFirst();
    }

    /** Names of the questions that the choices cite which a paragraph prints: "RFI 12". */
    public List<String> cited(Paragraph paragraph) {
        return paragraph.text().stream().filter(Slot.class::isInstance).map(Slot.class::cast).flatMap(slot -> choices.entrySet().stream()
            .filter(choice -> prints(slot, choice.getKey()))).map(choice -> choice.getValue().by())
            .filter(by -> Question.cited(by).isPresent()).distinct().toList();
    }

    private static boolean prints(Slot slot, String address) {
        if (slot.requirements().isEmpty()) {
            return slot.ref().split("\\.", 2)[0].equals(address.substring(address.indexOf('.') + 1));
        }
        return slot.requirements().stream().anyMatch(requirement -> address.equals(requirement.wall() + "." + requirement.component()));
    }
}
