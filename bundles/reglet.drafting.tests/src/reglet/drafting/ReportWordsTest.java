package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalLong;

import org.junit.jupiter.api.Test;

import reglet.model.Dates;
import reglet.model.ReportCheck;
import reglet.model.SheetReading.Report;

/** How it is told whether a report is in force on a submittal's day. */
class ReportWordsTest {

    private static String told(String ends, String on) {
        OptionalLong left = Dates.last(ends).isPresent() && Dates.last(on).isPresent() ? OptionalLong.of(Dates.last(ends).get()
            .since(Dates.last(on).get())) : OptionalLong.empty();
        return ReportWords.state(new ReportCheck("p", new Report("R-1", "", "", List.of(), "", ends, List.of()), on, left, List.of()));
    }

    @Test
    void theDayBeforeTheDayItselfAndTheDayAfterAreThreeThings() {
        assertEquals("Report R-1 ended 2027-05-31, 1 day before the submittal of 2027-06-01.", told("2027-05-31", "2027-06-01"));
        assertEquals("Report R-1 ends 2027-06-01, the day of the submittal.", told("2027-06-01", "2027-06-01"));
        assertEquals("Report R-1 ends 2027-06-02, 1 day after the submittal of 2027-06-01.", told("2027-06-02", "2027-06-01"));
    }

    @Test
    void aMonthSaysTheDayThatItIsCountedAs() {
        assertEquals("Report R-1 ended 05/2027 (2027-05-31), 1 day before the submittal of 2027-06-01.", told("05/2027", "2027-06-01"));
    }

    @Test
    void aDayThatCannotBeReadIsNamedWithWhatToWrite() {
        assertEquals("Report R-1 ends 10/11/12; how many days that are from the submittal can't be told: \"10/11/12\" is no date; write "
            + "2012-10-11 or 2012-11-10 or 2010-11-12, whichever is meant.", told("10/11/12", "2027-06-01"));
        assertEquals("Report R-1 ends 2027-05-31; how many days that are from the submittal can't be told: \"spring\" is no date; expected "
            + "year, month and day, such as 2026-03-02.", told("2027-05-31", "spring"));
        assertEquals("Report R-1 ends 2027-05-31; how many days that are from the submittal can't be told, which has no date.",
            told("2027-05-31", ""));
    }
}
