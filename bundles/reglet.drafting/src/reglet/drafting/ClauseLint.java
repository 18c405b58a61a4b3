package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import reglet.model.Nearest;
import reglet.model.Clause;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.RegisterEntry;
import reglet.model.Scope;

/**
 * Checks the texts of a pack: nobody types a number, a standard or a comparing word into a clause, since the requirement
 * behind a slot is the one place for them; and every slot names something that exists.
 */
public final class ClauseLint {
    /** Marks of lists are the only digits that a clause types. */
    private static final Pattern LIST_MARK = Pattern.compile("(?m)^\\s*(?:\\d+|[a-z])[.)]\\s");
    private static final Pattern NUMBER = Pattern.compile("[\\p{L}./-]*\\d(?:[\\p{L}\\d./,-]*[\\p{L}\\d])?");
    private static final List<String> COMPARING = List.of("at least", "at most", "not less than", "no less than", "not more than",
        "no more than", "not fewer than", "no fewer than", "less than", "more than", "fewer than", "greater than", "larger than",
        "smaller than", "heavier than", "lighter than", "thicker than", "thinner than", "or more", "or less", "or greater", "or better",
        "or heavier", "or thicker", "minimum", "maximum", "min\\.", "max\\.", "not exceed", "not exceeding", "exceeding", "exceeds");
    private static final Pattern COMPARING_WORD =
        Pattern.compile("\\b(?:" + String.join("|", COMPARING).replace(" ", "\\s+") + ")(?!\\w)", Pattern.CASE_INSENSITIVE);
    private static final List<String> ISSUERS = List.of("ASTM", "ANSI", "IBC", "IRC", "IECC", "ICC", "AAMA", "FGIA", "TMS", "ACI", "AISI",
        "NFPA", "UL", "ISO", "EN", "AATCC", "ASCE", "AWC", "NDS", "ASHRAE", "CSA", "TCNA", "SMACNA", "SWR");

    private ClauseLint() {
    }

    /** Every problem in the pack's clauses and register entries, in their order. */
    public static List<Problem> problems(Pack pack) {
        List<Problem> problems = new ArrayList<>();
        Pattern issuer = designations(pack);
        for (Clause clause : pack.clauses()) {
            String name = "clause '" + clause.id() + "'";
            article(pack, clause, name, problems);
            if (shape(pack, clause.section(), clause.each(), clause.subject(), name, clause.body(), clause.at(), problems)) {
                words(clause, name, issuer, problems);
            }
        }
        for (RegisterEntry entry : pack.entries()) {
            shape(pack, entry.section(), Scope.JOB, "", "register entry '" + entry.id() + "'", entry.text(), entry.at(), problems);
        }
        return problems;
    }

    private static void article(Pack pack, Clause clause, String name, List<Problem> problems) {
        List<String> articles = pack.plan(clause.section()).stream().flatMap(plan -> plan.articles().stream())
            .map(article -> article.id()).toList();
        if (!articles.contains(clause.article())) {
            problems.add(new Problem(clause.at(), name + ": section " + clause.section() + " plans no article '" + clause.article() + "'",
                Nearest.hint(clause.article(), articles)));
        }
    }

    /** Whether a text holds plain slots that exist, in one paragraph with lists below it. */
    private static boolean shape(Pack pack, String section, Scope each, String subject, String name, String text, Place at,
            List<Problem> problems) {
        if (Body.check(pack, section, each, subject, name, text, at, problems).isEmpty()) {
            return false;
        }
        try {
            int paragraphs = ClauseText.paragraphs(SlotTemplate.without(text, "slot"), slot -> {
                throw new IllegalArgumentException("the link '" + slot + "' is no slot; write ${" + slot + "}");
            }).size();
            if (paragraphs > 1) {
                problems.add(new Problem(at, name + " has " + paragraphs + " paragraphs", "expected one, with lists below it"));
            }
        } catch (IllegalArgumentException e) {
            problems.add(new Problem(at, name + ": " + e.getMessage(), ""));
        }
        return true;
    }

    private static void words(Clause clause, String name, Pattern issuer, List<Problem> problems) {
        String text = LIST_MARK.matcher(SlotTemplate.without(clause.body(), " ")).replaceAll(" ");
        Set<String> standards = found(issuer, text);
        standards.forEach(word -> problems.add(new Problem(clause.at(), name + " types the standard '" + word + "'",
            "cite it with a slot such as ${std.ASTM_C847}, or let the property's method print it")));
        found(NUMBER, issuer.matcher(text).replaceAll(" ")).forEach(word -> problems.add(new Problem(clause.at(),
            name + " types the number '" + word + "'", "print it with the slot of the property or reference that holds it")));
        found(COMPARING_WORD, text).forEach(word -> problems.add(new Problem(clause.at(), name + " types '" + word + "'",
            "the property's compare says it; print the property with its slot")));
    }

    private static Set<String> found(Pattern pattern, String text) {
        Set<String> found = new LinkedHashSet<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            found.add(matcher.group().strip());
        }
        return found;
    }

    /** Names of issuers, those of the pack's own standards included, as parts of a pattern. */
    static Set<String> issuers(Pack pack) {
        Set<String> names = new LinkedHashSet<>(ISSUERS);
        pack.standards().forEach(standard -> names.add(standard.id().split(" ", 2)[0].toUpperCase(Locale.ROOT)));
        return names.stream().map(Pattern::quote).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Names of issuers with the designation that follows. */
    private static Pattern designations(Pack pack) {
        return Pattern.compile("\\b(?:" + String.join("|", issuers(pack))
            + ")\\b(?:[ -]?[A-Z]{0,3}\\d(?:[\\w./-]*\\w)?)?");
    }
}
