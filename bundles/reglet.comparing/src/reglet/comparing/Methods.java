package reglet.comparing;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Comparison.Result;
import reglet.model.Method;
import reglet.model.Requirement;
import reglet.model.SheetValue;

/** Whether a value was found as the requirement asks. "Meets" is said across no difference of method or edition. */
final class Methods {
    private static final Pattern YEAR = Pattern.compile("(?:19|20)(\\d\\d.*)");

    private Methods() {
    }

    /**
     * @param edition the edition that the code lists; ""
     * @param bare    what the values alone say
     */
    static Result judge(Requirement requirement, SheetValue submitted, String edition, Result bare, List<String> notes) {
        Method asked = requirement.property().method();
        if (asked.isNone()) {
            return bare;
        }
        if (submitted.method().isEmpty()) {
            notes.add("The sheet names no method; " + text(asked) + " is asked for.");
            return bare == Result.MEETS ? Result.CANNOT_COMPARE : bare;
        }
        if (!plain(submitted.method()).equals(plain(asked.standard())) && !plain(submitted.method()).equals(plain(text(asked)))) {
            notes.add("Shown by " + submitted.method() + "; " + text(asked) + " is asked for.");
            return Result.DIFFERENT_METHOD;
        }
        if (!asked.part().isEmpty() && !plain(submitted.method()).equals(plain(text(asked)))) {
            notes.add("The sheet names " + submitted.method() + " as a whole; " + asked.part() + " of it is asked for.");
        }
        return edition(asked.standard(), submitted.edition(), edition, bare, notes);
    }

    private static Result edition(String standard, String shown, String listed, Result bare, List<String> notes) {
        if (shown.isEmpty()) {
            if (!listed.isEmpty()) {
                notes.add("The sheet names no edition of " + standard + "; the code lists " + listed + ".");
            }
            return bare;
        }
        if (listed.isEmpty()) {
            notes.add("The sheet names the " + shown + " edition of " + standard + "; which one the code lists is not known here.");
            return bare;
        }
        if (yearOf(shown).equals(yearOf(listed))) {
            return bare;
        }
        notes.add("Shown by the " + shown + " edition of " + standard + "; the code lists " + listed + ".");
        return bare == Result.MEETS ? Result.DIFFERENT_METHOD : bare;
    }

    private static String text(Method method) {
        return method.part().isEmpty() ? method.standard() : method.standard() + " " + method.part();
    }

    /** "ASTM C847" and its key "ASTM_C847" are one standard. */
    private static String plain(String standard) {
        return standard.replaceAll("[^A-Za-z0-9]+", " ").strip().toLowerCase(Locale.ROOT);
    }

    /** "2018" and "18" are one edition. */
    private static String yearOf(String edition) {
        Matcher year = YEAR.matcher(edition.strip());
        return year.matches() ? year.group(1) : edition.strip();
    }
}
