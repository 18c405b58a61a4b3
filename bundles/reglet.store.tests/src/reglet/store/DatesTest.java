package reglet.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Dates;
import reglet.model.Day;
import reglet.model.Job;
import reglet.model.Pack;
import reglet.model.Problem;
import reglet.model.Quantity;
import reglet.model.UnusableInput;

/** Calendar days: in files, as people type them, and counted. The calendar is that of ISO 8601-1; its clauses are named from memory. */
class DatesTest {
    private static final String WALL = "pack/subjects/wall.yaml";
    private static final String PROPERTIES = "  height: {unit: ft, compare: exactly}\n";
    @TempDir
    Path folder;

    private static SmallPack dated() {
        return new SmallPack().replacing(WALL, PROPERTIES, PROPERTIES + "  starts: {date: true, compare: at least, usual: 2026-03-02}\n");
    }

    private Job read(SmallPack files) throws Exception {
        files.write(folder);
        return Jobs.read(folder.resolve("job"), Packs.read(folder.resolve("pack")).pack());
    }

    /** A day that the pack gives as usual is kept with the built pack. */
    @Test
    void aUsualDayIsKeptWithThePack() throws Exception {
        Pack pack = Packs.read(dated().write(folder).resolve("pack")).pack();
        assertEquals("2026-03-02", pack.property("wall.starts").orElseThrow().usual().orElseThrow().text());
        assertEquals(pack, PackBytes.read(PackBytes.write(pack)));
    }

    private List<String> problems(SmallPack files) {
        return assertThrows(UnusableInput.class, () -> read(files)).problems().stream().map(Problem::toString).toList();
    }

    /** The first is an example of ISO 8601 (2004, clause 4.1.2.2). */
    @ParameterizedTest
    @ValueSource(strings = {"1985-04-12", "2024-02-29", "2000-02-29", "1583-01-01", "9999-12-31"})
    void aDayIsWrittenAsYearMonthAndDay(String day) throws Exception {
        Job job = read(dated().replacing("job/walls/W1.yaml", "height: 20 ft", "starts: " + day));
        assertEquals(day, job.wall("W1").orElseThrow().facts().get("starts").value().text());
    }

    /** 1900 is no leap year and 2000 is one; ISO 8601 leaves years before 1583, longer ones and signs to agreement. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "2026-02-30           | February 2026 has 28 days; expected year, month and day, such as 2026-03-02",
        "1900-02-29           | February 1900 has 28 days; expected year, month and day, such as 2026-03-02",
        "2026-13-01           | a year has 12 months; expected year, month and day, such as 2026-03-02",
        "spring 2026          | expected year, month and day, such as 2026-03-02",
        "11/29/26             | write 2026-11-29",
        "11/29/2026           | write 2026-11-29",
        "3/4/2027             | write 2027-03-04 or 2027-04-03, whichever is meant",
        "10/11/12             | write 2012-10-11 or 2012-11-10 or 2010-11-12, whichever is meant",
        "Nov 29, 2026         | write 2026-11-29",
        "29 November 2026     | write 2026-11-29",
        "2026-3-5             | write 2026-03-05",
        "2026                 | a year is no day; write 2026-12-31 for its last day, 2026-01-01 for its first",
        "2024-02              | a month is no day; write 2024-02-29 for its last day, 2024-02-01 for its first",
        "June 2027            | a month is no day; write 2027-06-30 for its last day, 2027-06-01 for its first",
        "2026-11-29T10:00     | write the day alone: 2026-11-29",
        "2026-W48-7           | expected year, month and day, such as 2026-03-02",
        "0026-11-29           | years run from 1583 to 9999; expected year, month and day, such as 2026-03-02",
        "+12026-1-1           | expected year, month and day, such as 2026-03-02",
        "today                | expected year, month and day, such as 2026-03-02"})
    void whatIsNoDayIsToldWithItsPlaceAndWhatToWriteInstead(String written, String expected) {
        assertEquals(List.of("walls/W1.yaml:2:16: \"" + written + "\" is no date; " + expected),
            problems(dated().replacing("job/walls/W1.yaml", "height: 20 ft", "starts: \"" + written + "\"")));
    }

    /** What is declared wrongly is refused by the reader and by the schema, and what is right is taken by both. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "{date: true}                                         | yes",
        "{date: true, compare: at most, usual: 2026-03-02}    | yes",
        "{date: true, compare: between}                       | no",
        "{date: true, compare: one of}                        | no",
        "{date: any}                                          | no",
        "{date: [2026-01-01]}                                 | no",
        "{date: true, unit: d, compare: exactly}              | no",
        "{date: true, usual: spring 2026}                     | no",
        "{flag: any}                                          | no"})
    void readerAndSchemaAgreeOnWhatDeclaresADate(String declared, String right) throws Exception {
        SmallPack files = new SmallPack().replacing(WALL, PROPERTIES, PROPERTIES + "  starts: " + declared + "\n");
        boolean read = true;
        try {
            read(files);
        } catch (UnusableInput refused) {
            read = false;
        }
        assertEquals(right.equals("yes"), read, "reader");
        String subject = "{subject: a, title: A, each: job, properties: {starts: " + declared + "}}";
        assertEquals(read, SchemasTest.judge("subject", subject).isEmpty(), "schema of a subject");
        String component = "{component: a, title: A, section: b, order: 1, properties: {starts: " + declared
            + "}, options: {c: {title: C}}}";
        assertEquals(read, SchemasTest.judge("component", component).isEmpty(), "schema of a component");
    }

    @Test
    void aTableMayBeLookedUpByADate() throws Exception {
        String table = "table: t\ntitle: T\ngiven: {from: {date: true, match: from}}\ngives: {until: {date: true}}\n"
            + "rows:\n  - {from: 2026-01-01, until: 2027-06-30}\nbasis: [{document: d, known: read}]\n";
        assertTrue(SchemasTest.judge("table", table).isEmpty());
        read(new SmallPack().with("pack/tables/t.yaml", table));
        assertEquals(List.of("tables/t.yaml:6:31: \"2027-06-31\" is no date; June 2027 has 30 days; expected year, month and day, such as "
            + "2026-03-02"), problems(new SmallPack().with("pack/tables/t.yaml", table.replace("06-30", "06-31"))));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"2026-11-29 | 2026-11-29", "Nov 29, 2026 | 2026-11-29", "november 29th 2026 | 2026-11-29",
        "29 Nov. 2026 | 2026-11-29", "11/29/2026 | 2026-11-29", "11/29/26 | 2026-11-29", "2026/11/29 | 2026-11-29",
        "2026-3-5 | 2026-03-05", "5/5/2026 | 2026-05-05", "Sept 1 2026 | 2026-09-01"})
    void aDayIsUnderstoodAsPeopleTypeIt(String typed, String day) {
        assertEquals(Optional.of(day), Dates.meant(" " + typed + " ").map(Day::text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"3/4/2027", "26/11/29", "June 2027", "2027", "2/30/2027", "Februar 3 2027", "marble 3 2027",
        "Mayday 1 2027", ""})
    void whatMayBeSeveralDaysOrNoneIsNeverGuessed(String typed) {
        assertEquals(Optional.empty(), Dates.meant(typed));
    }

    /** Two outside sources: the platform's other calendar, and Modified Julian Dates of the Astronomical Almanac, from memory. */
    @Test
    void daysAreCountedAsCalendarsCountThem() {
        Day epoch = Day.parse("1858-11-17").orElseThrow();
        assertEquals(40_587, Day.parse("1970-01-01").orElseThrow().since(epoch));
        assertEquals(51_544, Day.parse("2000-01-01").orElseThrow().since(epoch));
        GregorianCalendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        calendar.clear();
        calendar.set(1895, GregorianCalendar.DECEMBER, 31);
        Day first = Day.parse("1895-12-31").orElseThrow();
        long start = TimeUnit.MILLISECONDS.toDays(calendar.getTimeInMillis());
        for (int days = 0; days < 146_097; days += 13) {
            String text = String.format(Locale.ROOT, "%04d-%02d-%02d", calendar.get(GregorianCalendar.YEAR),
                calendar.get(GregorianCalendar.MONTH) + 1, calendar.get(GregorianCalendar.DAY_OF_MONTH));
            Day day = Day.parse(text).orElseThrow();
            assertEquals(TimeUnit.MILLISECONDS.toDays(calendar.getTimeInMillis()) - start, day.since(first), text);
            assertEquals(day, first.plus(Quantity.parse(days + " d").orElseThrow()), text);
            calendar.add(GregorianCalendar.DAY_OF_MONTH, 13);
        }
        // the calendar repeats after 400 years
        assertEquals(146_097, Day.parse("2295-12-31").orElseThrow().since(first));
        assertEquals(LocalDate.parse("2026-11-29"), Day.parse("2026-11-29").orElseThrow().date());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 months", "1 years", "1.5 d", "36 h"})
    void onlyWholeDaysAreAddedToADate(String time) {
        Day day = Day.parse("2026-01-31").orElseThrow();
        String said = assertThrows(IllegalArgumentException.class, () -> day.plus(Quantity.parse(time).orElseThrow())).getMessage();
        assertTrue(said.startsWith("only whole days can be added to a date"), said);
    }

    @Test
    void wholeDaysAreComparedToTheDayAndOtherTimesAsMeasured() {
        Quantity year = Quantity.parse("365 d").orElseThrow();
        assertEquals(1, year.compareWith(Quantity.parse("364 d").orElseThrow()));
        assertEquals(0, year.compareWith(Quantity.parse("8760 h").orElseThrow()));
        assertEquals(0, Quantity.parse("8750 h").orElseThrow().compareWith(Quantity.parse("8760 h").orElseThrow()));
    }
}
