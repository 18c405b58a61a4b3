package reglet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Change;
import reglet.model.Checked;
import reglet.model.Finding;
import reglet.model.Remedy;
import reglet.model.Rule.Result;
import reglet.model.UnusableInput;

/**
 * What rules do with dates. Days between dates are those that java.time and GNU date come to: 2026-11-29 is 90 days before 2027-02-27,
 * and 2024-02-29 is 366 days before 2025-03-01.
 */
class DatesInRulesTest {
    private static final String SITE = "pack/subjects/site.yaml";
    private static final String JOB = "job/job.yaml";

    private static SmallPack dated() {
        return new SmallPack().replacing(SITE, "  climate:", "  ends: {date: true, compare: at most}\n  starts: {date: true}\n  climate:")
            .replacing(JOB, "climate: dry", "climate: dry, starts: 2026-11-29, ends: 2027-02-27");
    }

    private static Result result(SmallPack files) throws Exception {
        return files.engine().explain(files.job(), "r").get(0).result();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "site.starts < site.ends                                  | HOLDS",
        "site.starts >= site.ends                                 | BREAKS",
        "site.starts <= site.starts                               | HOLDS",
        "site.starts == date(\"2026-11-29\")                      | HOLDS",
        "site.starts != date(\"2026-11-29\")                      | BREAKS",
        "site.starts > date(\"2026-11-28\")                       | HOLDS",
        "site.ends - site.starts == q(\"90 d\")                   | HOLDS",
        "site.ends - site.starts > q(\"89 d\")                    | HOLDS",
        "site.starts - site.ends == q(\"-90 d\")                  | HOLDS",
        "site.ends - site.starts <= q(\"3 months\")               | HOLDS",
        "site.starts + q(\"90 d\") == site.ends                   | HOLDS",
        "q(\"90 d\") + site.starts == site.ends                   | HOLDS",
        "site.ends - q(\"90 d\") == site.starts                   | HOLDS",
        "site.starts + q(\"48 h\") == date(\"2026-12-01\")        | HOLDS",
        "date(\"2025-03-01\") - date(\"2024-02-29\") == q(\"366 d\") | HOLDS",
        "date(\"2025-03-01\") - date(\"2024-02-29\") == q(\"365 d\") | BREAKS",
        "max(site.starts, site.ends) == site.ends                 | HOLDS",
        "min(site.starts, site.ends) == site.ends                 | BREAKS",
        "site.starts in [date(\"2026-11-29\")]                    | HOLDS",
        "abs(site.starts - site.ends) == q(\"90 d\")              | HOLDS",
        "(site.climate == \"dry\" ? site.starts : site.ends) == site.starts | HOLDS",
        "site.starts + q(\"1 months\") > site.starts              | ERROR",
        "site.starts + q(\"36 h\") > site.starts                  | ERROR",
        "site.starts + q(\"9000000 d\") > site.starts             | ERROR"})
    void datesAreComparedSubtractedAndMovedByDays(String holds, Result expected) throws Exception {
        assertEquals(expected, result(dated().rule("", holds.strip())));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "site.starts < \"2026-11-29\"                  | found no matching overload",
        "site.starts < q(\"3 d\")                      | found no matching overload",
        "site.starts + site.ends < site.ends           | found no matching overload",
        "site.starts * 2 < site.ends                   | found no matching overload",
        "site.starts < date(\"2026-02-30\")            | \"2026-02-30\" is no date; February 2026 has 28 days; expected year",
        "site.starts < date(\"11/29/26\")              | \"11/29/26\" is no date; write 2026-11-29",
        "site.starts < date(site.climate)              | date(…) takes a day in quotes, such as date(\"2026-11-29\")",
        "site.ends - site.starts > 3                   | found no matching overload"})
    void whatADateIsNotIsToldWhenThePackIsRead(String holds, String said) {
        UnusableInput refused = assertThrows(UnusableInput.class, () -> result(dated().rule("", holds.strip())));
        assertTrue(refused.getMessage().contains(said), refused.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"today", "now()", "today()", "date()", "site.starts.getFullYear()",
        "timestamp(\"2026-11-29T00:00:00Z\") > site.starts"})
    void noRuleCanReadToday(String clock) {
        assertThrows(UnusableInput.class, () -> result(dated().rule("", clock.contains(" > ") ? clock : "site.starts < " + clock)));
    }

    @Test
    void aDateThatIsNotStatedIsAGapThatNamesIt() throws Exception {
        SmallPack files = dated().rule("", "site.starts < site.ends").replacing(JOB, ", ends: 2027-02-27", "");
        assertEquals(Result.GAP, result(files));
        Finding gap = files.engine().check(files.job()).findings().get(0);
        assertEquals(List.of("site.ends"), gap.missing());
    }

    @Test
    void aFindingTellsTheDaysItReadAndARemedyNamesADay() throws Exception {
        SmallPack files = dated().rule("", "site.starts >= site.ends");
        Checked checked = files.engine().check(files.job());
        Finding finding = checked.findings().get(0);
        assertEquals(Map.of("site.starts", "2026-11-29", "site.ends", "2027-02-27"), finding.facts().entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, fact -> fact.getValue().text())));
        List<Remedy> remedies = files.engine().open(files.job()).remedies(finding).all();
        assertTrue(remedies.stream().anyMatch(remedy -> remedy.changes().equals(List.of(new Change("site.ends", "2026-11-29")))),
            remedies.toString());
    }

    @Test
    void aChangeTakesADayAsItIsTypedAndExplainsWhatIsNone() throws Exception {
        SmallPack files = dated().rule("", "site.starts < site.ends");
        Check check = files.engine().open(files.job());
        assertEquals("2026-12-24", check.after(List.of(new Change("site.ends", "Dec 24, 2026"))).job().facts().get("site").get("ends")
            .value().text());
        UnusableInput refused = assertThrows(UnusableInput.class, () -> check.after(List.of(new Change("site.ends", "3/4/27"))));
        assertTrue(refused.getMessage().contains("can't be \"3/4/27\"; write 2027-03-04 or 2027-04-03"), refused.getMessage());
    }

    @Test
    void aTableIsLookedUpFromADayOnwards() throws Exception {
        SmallPack files = dated().with("pack/tables/edition.yaml", """
            table: edition
            title: Edition in force
            given: {day: {date: true, match: from}}
            gives: {since: {date: true}}
            rows:
              - {day: 2026-11-29, since: 2026-11-29}
              - {day: 2020-01-01, since: 2020-01-01}
            basis: [{document: test, known: read}]
            """);
        assertEquals(Result.HOLDS, result(files.rule("", "edition(site.starts) == date(\"2026-11-29\")")));
        assertEquals(Result.HOLDS, result(files.rule("", "edition(site.starts - q(\"1 d\")) == date(\"2020-01-01\")")));
        assertEquals(Result.GAP, result(files.rule("", "edition(date(\"2019-12-31\")) == site.starts")));
    }

    @Test
    void checkedExpressionsWithDatesAreKeptAndReadBack() throws Exception {
        Map<String, Node> trees = Map.of("a", new Node.Constant(reglet.model.Day.parse("2026-11-29").orElseThrow()));
        assertEquals(trees, Trees.read(Trees.write(trees)));
    }
}
