package reglet.comparing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Random;
import java.util.function.Function;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import reglet.model.Compare;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.Evidence;
import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.SheetValue;
import reglet.model.Unit;

/** One value on a sheet against one requirement. */
class VerdictTest {
    private static final String PATH = "part.x";

    private static Compare sense(String text) {
        return Compare.valueOf(text.toUpperCase(Locale.ROOT).replace(' ', '_'));
    }

    /** "at least 2 in" as a sense and a value; a value alone has no sense. */
    private static String[] parts(String text) {
        for (Compare compare : Compare.values()) {
            if (text.startsWith(compare.text() + " ")) {
                return new String[] {compare.text(), text.substring(compare.text().length() + 1)};
            }
        }
        return new String[] {"", text};
    }

    private static Row row(String required, String shown, String... listed) {
        String[] asked = parts(required);
        Property property = Sample.property("x", Sample.value(asked[1]), sense(asked[0]), "", Evidence.PRODUCT_DATA, listed);
        String[] stated = parts(shown);
        SheetValue value = Sample.with(Sample.sheet(PATH, stated[1], ""), stated[0].isEmpty() ? null : sense(stated[0]), "", true);
        return Sample.one(property, asked[1], value);
    }

    private static String golden(Row row) {
        return (row.result().text() + row.shortBy().map(by -> String.format(Locale.ROOT, ", short by %.4g %s, %.3f of it", by.si(),
            by.dimension().si(), by.ofRequired())).orElse("") + (row.note().isEmpty() ? "" : ". " + row.note())).strip();
    }

    /** Each day tells, however far away: 2028 is a leap year, and the tolerance of measures has no say. */
    @ParameterizedTest(name = "{0} against {1}")
    @CsvSource(delimiter = '|', value = {
        "at least 2028-05-01 | 2028-05-01           | meets",
        "at least 2028-05-01 | 2030-01-01           | meets",
        "at least 2028-05-01 | 2028-04-30           | falls short. It is 1 day earlier.",
        "at least 2028-05-01 | 2027-05-01           | falls short. It is 366 days earlier.",
        "at most 2028-05-01  | 2028-05-01           | meets",
        "at most 2028-05-01  | 2028-05-02           | falls short. It is 1 day later.",
        "exactly 2028-05-01  | 2028-05-01           | meets",
        "exactly 2028-05-01  | 2028-05-02           | falls short. It is 1 day later.",
        "at least 2028-05-01 | at least 2028-06-01  | meets",
        "at least 2028-05-01 | at least 2028-04-01  | 'cannot compare. The sheet says \"at least 2028-04-01\", which does not settle "
            + "\"at least 2028-05-01\".'",
        "at least 2028-05-01 | at most 2028-04-01   | falls short. It is 30 days earlier.",
        "at least 2028-05-01 | on request           | 'cannot compare. The sheet says \"on request\", which is no date; one is asked for.'"})
    void aDateIsComparedToTheDay(String required, String shown, String expected) {
        assertEquals(expected, golden(row(required, shown)));
    }

    /** Common practice of sheets: "apply at 25 °F and above" names the lowest temperature, whatever sense stands with it. */
    @ParameterizedTest(name = "{0} against {1}")
    @CsvSource(delimiter = '|', value = {
        "at most 40 degF | at least 25 degF | meets. What the sheet gives is the limit of use itself, 25 °F.",
        "at most 25 degF | at least 40 degF | 'falls short, short by 8.333 K, 0.031 of it. What the sheet gives is the limit of use itself, 40 °F.'",
        "at most 40 degF | 25 degF          | meets"})
    void aLimitOfUseCountsByItsNumber(String required, String shown, String expected) {
        assertEquals(expected, golden(row(required, shown, "limit")));
    }

    @ParameterizedTest(name = "{0} against {1}")
    @CsvSource(delimiter = '|', value = {
        "at least 2.5 lb/yd2 | 3.4 lb/yd2          | meets",
        "at least 2.5 lb/yd2 | 2.5 lb/yd2          | meets",
        "at least 2.5 lb/yd2 | 1.9 lb/yd2          | 'falls short, short by 0.3255 kg/m2, 0.240 of it'",
        "at least 2.5 lb/yd2 | 1.8 kg/m2           | meets. 1.8 kg/m² is 3.32 lb/yd².",
        "at least 2.5 lb/yd2 | 0.9 kg/m2           | 'falls short, short by 0.4562 kg/m2, 0.336 of it. 0.9 kg/m² is 1.66 lb/yd².'",
        "at least 3/8 in     | 9.5 mm              | meets. 9.5 mm is 0.374 in. It counts as equal: the difference is within 0.4%.",
        "at least 3/8 in     | 9.4 mm              | 'falls short, short by 0.0001250 m, 0.013 of it. 9.4 mm is 0.37 in.'",
        "at least 0.4 in     | at most 0.5 in      |"
            + " 'cannot compare. The sheet says \"at most 0.5 in\", which does not settle \"at least 0.4 in\".'",
        "at least 0.4 in     | at most 0.3 in      | 'falls short, short by 0.002540 m, 0.250 of it'",
        "at least 0.4 in     | at least 0.5 in     | meets",
        "at least 0.4 in     | at least 0.3 in     |"
            + " 'cannot compare. The sheet says \"at least 0.3 in\", which does not settle \"at least 0.4 in\".'",
        "at least 0.4 in     | 0.5 in to 0.6 in    | meets",
        "at least 0.4 in     | 0.3 in to 0.6 in    |"
            + " 'falls short, short by 0.002540 m, 0.250 of it. All of the range that the sheet states has to lie "
            + "within what is required.'",
        "at most 16 in       | 12 in               | meets",
        "at most 16 in       | 24 in               | 'falls short, short by 0.2032 m, 0.500 of it'",
        "at most 16 in       | at most 12 in       | meets",
        "at most 16 in       | at most 24 in       |"
            + " 'cannot compare. The sheet says \"at most 24 in\", which does not settle \"at most 16 in\".'",
        "at most 16 in       | at least 24 in      | 'falls short, short by 0.2032 m, 0.500 of it'",
        "at most 0%          | 3%                  | falls short. It is off by 3%.",
        "exactly 16 in       | 16 in               | meets",
        "exactly 16 in       | 406.4 mm            | meets. 406.4 mm is 16 in.",
        "exactly 16 in       | 24 in               | 'falls short, short by 0.2032 m, 0.500 of it'",
        "exactly 16 in       | at most 16 in       |"
            + " 'cannot compare. The sheet says \"at most 16 in\", which does not settle \"exactly 16 in\".'",
        "between 1/2 in to 3/4 in | 0.5 in to 0.6 in  | meets",
        "between 1/2 in to 3/4 in | 5/8 in            | meets",
        "between 1/2 in to 3/4 in | 10 mm to 15 mm    |"
            + " 'falls short, short by 0.002700 m, 0.213 of it. 10 to 15 mm is 0.394 to 0.591 in. All of the range that "
            + "the sheet states has to lie within what is required.'",
        "between 1/2 in to 3/4 in | 1 in              | 'falls short, short by 0.006350 m, 0.333 of it'",
        "between 1/2 in to 3/4 in | at least 5/8 in   |"
            + " 'cannot compare. The sheet says \"at least 5/8 in\", which does not settle \"between 1/2 to 3/4 in\".'",
        "at least 0 °F to 100 °F  | -20 °F to 120 °F  | meets",
        "at least 0 °F to 100 °F  | 40 °F to 120 °F   | falls short",
        "at least 0.4 in     | 2 lb                | 'cannot compare. The sheet states a mass, \"2 lb\"; a length is asked for.'",
        "at least 0.4 in     | thick               |"
            + " 'cannot compare. The sheet says \"thick\", which is no amount; a length is asked for.'",
        "at least class 25   | class 50            | meets",
        "at least class 50   | class 25            | falls short",
        "at least class 25   | at least class 35   | meets",
        "at least class 35   | at least class 25   |"
            + " 'cannot compare. The sheet says \"at least 25\", which does not settle \"at least 35\".'",
        "at most class 25    | class 50            | falls short",
        "exactly class 25    | class 50            | falls short",
        "at least class 25   | good                | 'cannot compare. \"good\" is no step of the scale 12.5, 25, 35, 50, 100/50.'",
        "exactly [M, A, O]   | '[o, m, a, G]'      | meets",
    })
    void amountsAndGrades(String required, String shown, String expected) {
        assertEquals(expected, golden(row(required, shown)));
    }

    @ParameterizedTest(name = "{0} against {1}")
    @CsvSource(delimiter = '|', value = {
        "exactly woven wire          | Woven  wire                    | meets",
        "exactly woven wire          | welded wire                    | falls short",
        "exactly woven wire          | '[woven wire, welded wire]'    |"
            + " cannot compare. The sheet also states welded wire; it has to say which is sent.",
        "'one of [woven wire, welded wire]' | welded wire             | meets",
        "'one of [woven wire, welded wire]' | '[welded wire, woven wire]' | meets",
        "'one of [woven wire, welded wire]' | rib                     | falls short",
        "'exactly [woven wire, rib]' | '[woven wire]'                 | falls short. Lacking: rib.",
        "'at most [woven wire, rib]' | '[woven wire, welded wire]'    | falls short. Not allowed: welded wire.",
        "'at most [woven wire, rib]' | '[rib]'                        | meets",
    })
    void wordsThatThePackLists(String required, String shown, String expected) {
        assertEquals(expected, golden(row(required, shown, "woven wire", "welded wire", "rib")));
    }

    @Test
    void freeWordsThatDifferNeedAPerson() {
        assertEquals("meets", golden(row("exactly two-part polyurethane", "Two-part polyurethane")));
        assertEquals("cannot compare. The words differ; whether they mean the same is for a person to say.",
            golden(row("exactly two-part polyurethane", "polyurethane, two parts")));
    }

    @Test
    void aFlagOfNoIsNotRequiredAndOneOfYesIs() {
        assertEquals("falls short", golden(row("exactly yes", "no", "flag")));
        assertEquals("meets", golden(row("exactly yes", "yes", "flag")));
        assertEquals("meets. It is not required, so either answer will do.", golden(row("exactly no", "yes", "flag")));
    }

    private static String byMethod(String asked, String shownMethod, String edition, String shown, boolean confirmed) {
        Property property = Sample.property("x", Sample.value("2.5 lb/yd2"), Compare.AT_LEAST, asked, Evidence.PRODUCT_DATA);
        return golden(Sample.one(property, "2.5 lb/yd2", Sample.with(Sample.sheet(PATH, shown, shownMethod), null, edition, confirmed)));
    }

    @Test
    void meetsIsNotSaidAcrossADifferenceOfMethod() {
        assertEquals("meets", byMethod("ASTM C847", "ASTM C847", "2018", "3 lb/yd2", true));
        assertEquals("meets", byMethod("ASTM C847", "ASTM_C847", "18", "3 lb/yd2", true));
        assertEquals("different method. Shown by ASTM C933; ASTM C847 is asked for.",
            byMethod("ASTM C847", "ASTM C933", "", "3 lb/yd2", true));
        assertEquals("different method. Shown by ASTM C933; ASTM C847 is asked for.",
            byMethod("ASTM C847", "ASTM C933", "", "1 lb/yd2", true));
        assertEquals("cannot compare. The sheet names no method; ASTM C847 is asked for.", byMethod("ASTM C847", "", "", "3 lb/yd2", true));
        assertTrue(byMethod("ASTM C847", "", "", "1 lb/yd2", true).startsWith("falls short"));
        assertEquals("meets", byMethod("", "ASTM C933", "", "3 lb/yd2", true));
    }

    @Test
    void editionsAreNotedAndMeetsIsNotSaidAcrossThem() {
        assertEquals("different method. Shown by the 2014 edition of ASTM C847; the code lists 2018.",
            byMethod("ASTM C847", "ASTM C847", "2014", "3 lb/yd2", true));
        assertTrue(byMethod("ASTM C847", "ASTM C847", "2014", "1 lb/yd2", true).startsWith("falls short"));
        assertEquals("meets. The sheet names no edition of ASTM C847; the code lists 2018.",
            byMethod("ASTM C847", "ASTM C847", "", "3 lb/yd2", true));
        assertEquals("meets. The sheet names the 2016 edition of ASTM E96; which one the code lists is not known here.",
            byMethod("ASTM E96", "ASTM E96", "2016", "3 lb/yd2", true));
    }

    @Test
    void aPartOfAMethodThatTheSheetDoesNotNameIsNoted() {
        assertEquals("meets. The sheet names ASTM E96 as a whole; Procedure B of it is asked for.",
            byMethod("ASTM E96 part Procedure B", "ASTM E96", "", "3 lb/yd2", true));
        assertEquals("meets", byMethod("ASTM E96 part Procedure B", "ASTM E96 Procedure B", "", "3 lb/yd2", true));
    }

    @Test
    void aValueThatNobodyConfirmedSaysSo() {
        assertEquals("meets. Read from the sheet and not confirmed by a person.", byMethod("", "", "", "3 lb/yd2", false));
    }

    @Test
    void moreOfWhatIsAskedNeverTurnsMeetsIntoShort() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            double required = 0.1 + random.nextDouble() * 100;
            double less = random.nextDouble() * 200;
            double more = less + random.nextDouble() * 50;
            boolean least = random.nextBoolean();
            Function<Double, Result> result = shown -> row((least ? "at least " : "at most ") + Quantity.of(required, Unit.IN).text(),
                Quantity.of(shown, Unit.IN).text()).result();
            if (result.apply(least ? less : more) == Result.MEETS) {
                assertEquals(Result.MEETS, result.apply(least ? more : less), required + " " + less + " " + more);
            }
        }
    }

    @Test
    void whatAnOpenStatementSettlesHoldsForEveryValueThatItLeavesPossible() {
        Random random = new Random(8);
        String[] senses = {"at least ", "at most "};
        for (int i = 0; i < 500; i++) {
            String required = senses[random.nextInt(2)] + Quantity.of(1 + random.nextInt(9), Unit.IN).text();
            int bound = 1 + random.nextInt(9);
            String sense = senses[random.nextInt(2)];
            Result stated = row(required, sense + Quantity.of(bound, Unit.IN).text()).result();
            for (int possible = 1; possible < 20; possible++) {
                if (stated != Result.CANNOT_COMPARE && (sense.equals("at least ") ? possible >= bound : possible <= bound)) {
                    assertEquals(stated, row(required, Quantity.of(possible, Unit.IN).text()).result(), required + " " + sense + bound);
                }
            }
        }
    }

    @Test
    void theUnitThatTheSheetIsWrittenInChangesNoResult() {
        Random random = new Random(9);
        for (int i = 0; i < 500; i++) {
            double shown = 0.5 + random.nextInt(40) / 8.0;
            String required = (random.nextBoolean() ? "at least " : "at most ") + "2.5 in";
            Row inches = row(required, Quantity.of(shown, Unit.IN).text());
            Row millimetres = row(required, Quantity.of(shown * 25.4, Unit.MM).text());
            assertEquals(inches.result(), millimetres.result(), required + " " + shown);
            assertEquals(inches.shortBy().isPresent(), millimetres.shortBy().isPresent());
            inches.shortBy().ifPresent(by -> assertEquals(by.si(), millimetres.shortBy().get().si(), 1e-9));
            Row otherWay = row(required.replace("2.5 in", "63.5 mm"), Quantity.of(shown, Unit.IN).text());
            assertEquals(inches.result(), otherWay.result());
        }
        assertFalse(row("at least 2.5 in", "63.5 mm").note().contains("counts as equal"));
    }
}
