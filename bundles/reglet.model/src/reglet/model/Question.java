package reglet.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A request for information: what somebody asked about the papers, and what was answered. A choice that an answer fixed cites it in
 * its {@code by}.
 *
 * @param number   counted by the job
 * @param from     who asked
 * @param asked    when
 * @param about    what it is about: "W1", "W1.lath", the id of a paragraph
 * @param answer   "" while it is open
 * @param answered when
 */
public record Question(int number, String from, Optional<LocalDate> asked, String question, List<String> about, String answer,
        Optional<LocalDate> answered, Place at) {
    public static final String FILE = "questions.yaml";
    private static final Pattern CITED = Pattern.compile("RFI (\\d{1,6})");

    public Question {
        about = List.copyOf(about);
    }

    /** "RFI 12", as a choice cites it. */
    public String name() {
        return name(number);
    }

    public static String name(int number) {
        return "RFI " + number;
    }

    public boolean isOpen() {
        return answer.isEmpty();
    }

    /** The number of the question that a choice's {@code by} cites; empty when it cites none. */
    public static Optional<Integer> cited(String by) {
        Matcher cited = CITED.matcher(by.strip());
        return cited.matches() ? Optional.of(Integer.valueOf(cited.group(1))) : Optional.empty();
    }
}
