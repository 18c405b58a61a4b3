package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Calculation;
import reglet.model.Choice;
import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.JobWorksheets.Undone;
import reglet.model.Meeting;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.Stated;
import reglet.model.Unit;
import reglet.model.UnitSystem;
import reglet.model.Value;
import reglet.model.WallType;
import reglet.model.Worksheet;

/** Worksheets take their inputs from the job, and rules read their results. */
class WorksheetsOfJobsTest {
    private static final Place TEST = Place.of("test");

    private static Worksheet worksheet(OpenJob job, String wall, String title) {
        return job.worksheets().made().stream().filter(made -> made.wall().equals(wall) && made.title().startsWith(title)).findFirst()
            .orElseThrow();
    }

    private static Quantity quantity(String text) {
        return Quantity.parse(text).orElseThrow();
    }

    /** The job with another value of a property of a wall's component. */
    private static OpenJob setting(OpenJob job, String wall, String component, String property, String value) {
        WallType before = job.job().wall(wall).orElseThrow();
        Choice choice = before.choice(component).orElseThrow();
        Map<String, Stated> values = new LinkedHashMap<>(choice.values());
        values.put(property, new Stated(quantity(value), TEST));
        return job.with(job.job().with(before.with(new Choice(component, choice.accept(), values, "", "", TEST))));
    }

    private static OpenJob stating(OpenJob job, String subject, Map<String, Stated> facts) {
        Map<String, Map<String, Stated>> all = new LinkedHashMap<>(job.job().facts());
        all.put(subject, facts);
        return job.with(with(job.job(), all, job.job().walls()));
    }

    private static Job with(Job job, Map<String, Map<String, Stated>> facts, List<WallType> walls) {
        return new Job(job.title(), job.note(), job.pack(), facts, walls, job.sections(), job.changes(), job.accepted(), job.products(),
            job.submittals(), job.register(), job.questions(), job.at());
    }

    @ParameterizedTest
    @ValueSource(strings = {"harbour-clinic", "mesa-library"})
    void everyWorksheetOfACleanJobIsMade(String name) throws Exception {
        OpenJob job = Samples.open(name);
        assertEquals(List.of(), job.worksheets().undone());
        Set<String> made = new LinkedHashSet<>();
        job.worksheets().made().forEach(worksheet -> made.add(worksheet.name()));
        assertTrue(made.containsAll(List.of("weight", "wind", "lath_fastening", "movement_joints", "sealant_joint", "takeoff")),
            made.toString());
        // the samples stand in categories B and C: no earthquake worksheet is asked for
        assertFalse(made.contains("seismic"));
        assertTrue(job.worksheets().made().stream().noneMatch(WorksheetReport::fallsShort));
    }

    @Test
    void inputsAreTakenFromTheJobAndSayFromWhere() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        Worksheet wind = worksheet(job, "W1", "Wind at the corners");
        assertEquals("115 mph", wind.inputs().get("speed").value().text());
        assertEquals("job.yaml", wind.inputs().get("speed").from());
        assertEquals("walls/W1.yaml", wind.inputs().get("height").from());
        assertEquals("usual value", wind.inputs().get("kzt").from());
        Worksheet lath = worksheet(job, "W1", "Fastening of the lath");
        assertEquals("option nail-2-1-2", lath.inputs().get("length").from());
        assertEquals("worksheet \"Weight of the wall\"", lath.inputs().get("weight").from());
        assertEquals(worksheet(job, "W1", "Weight of the wall").results().get("fasteners.saturated").si(),
            ((Quantity) lath.inputs().get("weight").value()).si(), 1e-9);
    }

    /** The joints of the wall that the sample describes: 8 windows of 48 by 60 in, a door of 72 by 84 in, jambs and sill sealed. */
    @Test
    void sumsGoOverEverythingTheWallMeets() throws Exception {
        Worksheet quantities = worksheet(Samples.open("harbour-clinic"), "W1", "Quantities");
        assertEquals(Unit.IN.toSi(8 * (2 * 60 + 48) + (2 * 84 + 72)), ((Quantity) quantities.inputs().get("joints").value()).si(), 1e-9);
        Worksheet joints = worksheet(Samples.open("harbour-clinic"), "W1", "Movement joints");
        assertEquals("13 ft floor line", joints.inputs().get("horizontal").value().text());
    }

    @Test
    void acceptedAlternativesThatChangeAWorksheetGiveOneEach() throws Exception {
        List<String> titles = Samples.open("harbour-clinic").worksheets().made().stream().filter(made -> made.wall().equals("W1")
            && made.name().equals("lath_fastening")).map(Worksheet::title).toList();
        assertEquals(2, titles.size());
        assertTrue(titles.get(0).contains("expanded metal") && titles.get(1).contains("woven wire"), titles.toString());
        assertFalse(titles.get(0).contains("mortar"), "both mortars give the same");
    }

    @Test
    void fastenersTooFarApartForTheWetWallAreFoundWithTheNumbersOfTheWorksheet() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        assertTrue(job.checked().findings().stream().noneMatch(finding -> finding.rule().equals("lath_fastener.capacity")));
        OpenJob wide = setting(job, "W1", "lath_fastener", "spacing", "7 in");
        Finding finding = wide.checked().findings().stream().filter(found -> found.rule().equals("lath_fastener.capacity")).findFirst()
            .orElseThrow();
        assertEquals("W1", finding.wall());
        Quantity margin = (Quantity) finding.facts().get("worksheets.lath_fastening.margin");
        assertEquals(worksheet(wide, "W1", "Fastening of the lath").margin().getAsDouble(), margin.si(), 1e-9);
        assertTrue(margin.si() < 1, margin.text());
        assertTrue(finding.says().contains("6 in apart at most, not 7 in"), finding.says());
    }

    @Test
    void aDeeperMatLowersWhatTheFastenersCarry() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        OpenJob deep = job.choosing("W1", "mat", List.of("filament-3-4"));
        assertTrue(worksheet(deep, "W1", "Fastening").margin().getAsDouble() < worksheet(job, "W1", "Fastening").margin().getAsDouble());
        assertTrue(deep.checked().findings().stream().anyMatch(finding -> finding.rule().equals("lath_fastener.capacity")));
    }

    @Test
    void whatAnEarthquakeWorksheetLacksIsAskedForOnceAsAFactOfTheJob() throws Exception {
        OpenJob job = Samples.open("harbour-clinic");
        Map<String, Stated> site = new LinkedHashMap<>(job.job().facts().get("site"));
        site.put("seismic", new Stated(new reglet.model.Grade("D", List.of("A", "B", "C", "D", "E", "F")), TEST));
        OpenJob shaking = stating(job, "site", site);
        List<Finding> gaps = shaking.checked().findings().stream().filter(finding -> finding.kind() == Finding.Kind.GAP).toList();
        assertEquals(List.of("site.sds.stated"), gaps.stream().map(Finding::rule).toList());
        List<Undone> undone = shaking.worksheets().undone();
        assertTrue(undone.stream().anyMatch(one -> one.name().equals("seismic") && one.missing().equals(List.of("site.sds"))),
            undone.toString());
        site.put("sds", new Stated(quantity("0.4"), TEST));
        OpenJob known = stating(job, "site", site);
        assertEquals(List.of(), known.worksheets().undone());
        assertTrue(((Quantity) worksheet(known, "W1", "Fastening").inputs().get("seismic").value()).si() > 0);
    }

    @Test
    void aBuildingAboveTheFiguresOfTheWindStandardIsLeftToAnEngineer() throws Exception {
        OpenJob job = Samples.open("mesa-library");
        WallType wall = job.job().walls().get(0);
        Map<String, Stated> facts = new LinkedHashMap<>(wall.facts());
        facts.put("building_height", new Stated(quantity("75 ft"), TEST));
        OpenJob high = job.with(job.job().with(new WallType(wall.id(), wall.title(), facts, wall.meetings(), wall.choices(), wall.at())));
        assertTrue(high.checked().findings().stream().anyMatch(finding -> finding.rule().equals("wall.wind-high")));
        assertTrue(high.worksheets().made().stream().noneMatch(made -> made.name().equals("wind")));
        assertTrue(high.checked().findings().stream().noneMatch(finding -> finding.says().contains("can't be worked out")));
    }

    /** Every fact of the job written in the other system of units: the same findings, and worksheets in that system. */
    @ParameterizedTest
    @ValueSource(strings = {"harbour-clinic", "mesa-library", "orchard-row"})
    void bothSystemsOfUnitsGiveTheSameFindings(String name) throws Exception {
        OpenJob job = Samples.open(name);
        Map<String, Map<String, Stated>> facts = new LinkedHashMap<>();
        job.job().facts().forEach((subject, stated) -> facts.put(subject, other(stated)));
        List<WallType> walls = job.job().walls().stream().map(wall -> new WallType(wall.id(), wall.title(), other(wall.facts()),
            wall.meetings().stream().map(meeting -> new Meeting(meeting.id(), meeting.subject(), other(meeting.facts()), meeting.at()))
                .toList(), wall.choices(), wall.at())).toList();
        OpenJob metric = job.with(with(job.job(), facts, walls));
        assertEquals(job.checked().findings().stream().map(Finding::key).toList(),
            metric.checked().findings().stream().map(Finding::key).toList());
        assertEquals(job.worksheets().made().size(), metric.worksheets().made().size());
        for (int i = 0; i < job.worksheets().made().size(); i++) {
            Worksheet one = job.worksheets().made().get(i);
            Worksheet two = metric.worksheets().made().get(i);
            one.results().forEach((key, amount) -> {
                Worksheet.Amount same = two.results().get(key);
                // three figures of the converted facts; whole counts may step by a few
                assertEquals(amount.si(), same.si(), 0.02 * Math.abs(amount.si()) + (amount.unit() == Unit.ONE ? 2 : 1e-3),
                    one.title() + key);
                assertTrue(same.unit().system().filter(UnitSystem.INCH_POUND::equals).isEmpty() || same.unit().other().isEmpty(), key);
            });
        }
    }

    private static Map<String, Stated> other(Map<String, Stated> facts) {
        Map<String, Stated> all = new LinkedHashMap<>();
        facts.forEach((property, stated) -> all.put(property, new Stated(other(stated.value()), stated.at())));
        return all;
    }

    private static Value other(Value value) {
        if (value instanceof Quantity quantity) {
            return quantity.unit().other().<Value>map(quantity::as).orElse(value);
        }
        return value instanceof Range range ? new Range((Quantity) other(range.low()), (Quantity) other(range.high())) : value;
    }

    @Test
    void everyResultThatThePackNamesComesInSomeJob() throws Exception {
        Set<String> come = new LinkedHashSet<>();
        List<OpenJob> jobs = new ArrayList<>();
        for (String name : Samples.JOBS) {
            jobs.add(Samples.open(name));
        }
        OpenJob harbour = jobs.get(0);
        Map<String, Stated> site = new LinkedHashMap<>(harbour.job().facts().get("site"));
        site.put("seismic", new Stated(new reglet.model.Grade("D", List.of("A", "B", "C", "D", "E", "F")), TEST));
        site.put("sds", new Stated(quantity("0.4"), TEST));
        jobs.add(stating(harbour, "site", site));
        for (OpenJob job : jobs) {
            for (Worksheet made : job.worksheets().made()) {
                job.pack().calculations().stream().filter(calculation -> made.title().startsWith(calculation.title()))
                    .forEach(calculation -> {
                    made.results().keySet().forEach(key -> come.add(calculation.id() + "." + key));
                    come.add(calculation.id() + ".margin");
                });
            }
        }
        for (Calculation calculation : harbour.pack().calculations()) {
            calculation.results().forEach(result -> assertTrue(come.contains(calculation.id() + "." + result.name()),
                calculation.id() + " " + result.name()));
        }
    }

    @Test
    void thePackGivesEveryWorksheetWhatItAsksFor() throws Exception {
        assertEquals(List.of(), CalculationLint.problems(Samples.open("harbour-clinic").pack()));
    }

    @Test
    void aPackThatGivesAWorksheetTheWrongInputsIsToldWhichOnesItTakes() throws Exception {
        reglet.model.Pack pack = Samples.open("harbour-clinic").pack();
        Calculation wind = pack.calculations().stream().filter(found -> found.id().equals("wind_corner")).findFirst().orElseThrow();
        Map<String, Calculation.Source> inputs = new LinkedHashMap<>(wind.inputs());
        inputs.put("hight", inputs.remove("height"));
        Calculation wrong = new Calculation(wind.id(), wind.worksheet(), wind.title(), wind.component(), wind.order(), wind.each(),
            wind.subject(), wind.when(), inputs, wind.results(), wind.at());
        Calculation unknown = new Calculation("gale", "gale", "Gale", "", 1, wind.each(), "", "", Map.of(), List.of(), wind.at());
        List<String> problems = CalculationLint.problems(new reglet.model.Pack(pack.name(), pack.version(), pack.title(), pack.cautions(),
            pack.subjects(), pack.components(), pack.rules(), List.of(wrong, unknown), pack.tables(), pack.standards(), pack.plans(),
            pack.clauses(), pack.entries(), pack.synonyms(), pack.holdPoints(), pack.touching(),
            pack.stock(), pack.plausible())).stream().map(Problem::toString).toList();
        assertEquals(3, problems.size(), problems.toString());
        assertTrue(problems.get(0).contains("no input \"hight\"") && problems.get(0).contains("height"), problems.get(0));
        assertTrue(problems.get(1).contains("needs the input \"height\""), problems.get(1));
        assertTrue(problems.get(2).contains("there is no worksheet \"gale\""), problems.get(2));
    }
}
