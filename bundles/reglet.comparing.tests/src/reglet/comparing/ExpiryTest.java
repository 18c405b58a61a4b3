package reglet.comparing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalLong;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import reglet.model.Dates;
import reglet.model.Day;

/** When a report ends, to the day. */
class ExpiryTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"2026-03-01 | 2026-03-01", "05/2025 | 2025-05-31", "02/2024 | 2024-02-29", "2025-06 | 2025-06-30",
        "3/4/2023 | 2023-03-04", "March 31, 2025 | 2025-03-31", "Sept. 2025 | 2025-09-30", "Dec 1 2025 | 2025-12-01"})
    void datesAreReadAsReportsWriteThem(String written, String day) {
        assertEquals(Optional.of(LocalDate.parse(day)), Dates.last(written).map(Day::date));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"13/2025", "2025-02-30", "soon", "31.12.2025", "25", "''"})
    void whatIsNoDateEndsNothing(String written) {
        assertEquals(Optional.empty(), Dates.last(written));
    }

    @Test
    void theLastDayCountsAsInForceAndTheNextDoesNot() {
        assertEquals(OptionalLong.of(0), Expiry.daysLeft("05/2025", "2025-05-31"));
        assertEquals(OptionalLong.of(-1), Expiry.daysLeft("05/2025", "2025-06-01"));
        assertEquals(OptionalLong.of(366), Expiry.daysLeft("2024-12-31", "2023-12-31"));
        assertEquals(OptionalLong.empty(), Expiry.daysLeft("05/2025", ""));
    }
}
