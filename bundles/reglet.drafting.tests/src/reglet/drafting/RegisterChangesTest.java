package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import reglet.model.Assembly;
import reglet.model.DayCount;
import reglet.model.Enclosures;
import reglet.model.Register;
import reglet.model.RegisterFile;
import reglet.model.RegisterFile.Act;
import reglet.model.RegisterFile.Change;
import reglet.model.RegisterFile.Entry;
import reglet.model.RegisterFile.Plan;
import reglet.model.RegisterFile.Scheme;
import reglet.model.RegisterItem;
import reglet.model.RegisterItem.Sort;
import reglet.model.Review;
import reglet.model.Submittal;
import reglet.model.UnusableInput;

/** What a person changes in a register, its dates, and what becomes of its items. */
class RegisterChangesTest {
    private static final DayCount WORKING = new DayCount(DayCount.Kind.WORKING, List.of(LocalDate.parse("2026-04-03"),
        LocalDate.parse("2026-05-25")));

    private static Entry entry(String id, String item, Sort sort) {
        return new Entry(id, "", item, Optional.empty(), Optional.of(sort), "", Sample.AT);
    }

    private static Change change(Act act, List<String> items, Entry... into) {
        return new Change(act, items, List.of(into), "the owner asked", "A. Person", Sample.AT);
    }

    private static RegisterFile file(List<Plan> plans, Change... changes) {
        return new RegisterFile(Scheme.OWN, WORKING, OptionalInt.of(10), plans, List.of(changes), Map.of(), Map.of(), Sample.AT);
    }

    private static Register register(Sample sample, RegisterFile file) throws UnusableInput {
        sample.register = file;
        Assembly assembly = sample.assembly();
        return Registers.of(assembly, List.of(Drafter.draft(assembly, Sample.SECTION, "")));
    }

    private static List<String> ids(Register register) {
        return register.items().stream().map(RegisterItem::id).toList();
    }

    private static Submittal submittal(String id, String item, String replaces, Optional<Review> review) {
        return new Submittal(id, Sample.SECTION, List.of(item), List.of(), "", "", "", List.of(), "", List.of(), replaces,
            Enclosures.NONE, review, Sample.AT);
    }

    private static Optional<Review> returned(String action) {
        return Optional.of(new Review(action, "A. Person", Optional.empty(), Optional.empty(), Optional.of(LocalDate.parse("2026-03-13")),
            Optional.empty(), "", Map.of(), Sample.AT));
    }

    @Test
    void aSplitItemStandsWhereTheWholeStoodAndSaysWhy() throws UnusableInput {
        Register register = register(Sample.small(), file(List.of(), change(Act.SPLIT, List.of("lath.product-data"),
            entry("lath.range", "Lath, range", Sort.SELECTION), entry("lath.panel", "Lath, panel", Sort.VERIFICATION))));
        assertEquals(List.of("lath.range", "lath.panel", "lath.sample"), ids(register));
        RegisterItem first = register.items().get(0);
        assertEquals("1.3.A", first.paragraph());
        assertEquals("product data", first.sends());
        assertEquals(Sort.SELECTION, first.sort());
        assertEquals(List.of("lath.product-data"), first.from());
        assertEquals("split: the owner asked (A. Person)", first.note());
        assertEquals(List.of(), register.lost());
    }

    @Test
    void aMergedItemHasBothParagraphsAndWhatWasHandedInForEither() throws UnusableInput {
        Sample sample = Sample.small();
        sample.submittals.add(submittal("04-73-00-01", "lath.sample", "", Optional.empty()));
        Register register = register(sample, file(List.of(), change(Act.MERGE, List.of("lath.product-data", "lath.sample"),
            entry("lath.all", "Lath, all", Sort.NONE))));
        assertEquals(List.of("lath.all"), ids(register));
        assertEquals("1.3.A, 1.3.B", register.items().get(0).paragraph());
        assertEquals("handed in: 04-73-00-01", register.items().get(0).status());
    }

    @Test
    void itemsAreStruckAddedAndAltered() throws UnusableInput {
        Entry added = new Entry("green.label", Sample.SECTION, "Recycled share", Optional.of(RegisterItem.Kind.INFORMATIONAL),
            Optional.of(Sort.SUSTAINABILITY), "certificate", Sample.AT);
        Register register = register(Sample.small(), file(List.of(), change(Act.STRIKE, List.of("lath.sample")),
            change(Act.ADD, List.of(), added), change(Act.ALTER, List.of("lath.product-data"), entry("", "Ribbed lath", Sort.NONE))));
        assertEquals(List.of("lath.product-data", "green.label"), ids(register));
        assertEquals("Ribbed lath", register.items().get(0).item());
        assertEquals("", register.items().get(1).paragraph());
    }

    @Test
    void whatRefersToAnItemThatIsGoneIsToldAndTheRestIsDone() throws UnusableInput {
        Sample sample = Sample.small();
        sample.submittals.add(submittal("04-73-00-01", "lath.gone", "", Optional.empty()));
        Plan plan = new Plan("", "lath.samples", Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), "", Sample.AT);
        Register register = register(sample, file(List.of(plan), change(Act.STRIKE, List.of("lath.colour")),
            change(Act.MERGE, List.of("lath.sample", "lath.smaple"), entry("lath.all", "Lath, all", Sort.NONE)),
            change(Act.ADD, List.of(), new Entry("lath.product-data", Sample.SECTION, "x", Optional.empty(), Optional.empty(),
            "x", Sample.AT))));
        assertEquals(List.of("lath.product-data", "lath.all"), ids(register));
        List<String> says = register.lost().stream().map(Register.Lost::says).toList();
        assertEquals(List.of("The register has no item \"lath.colour\" to strike; the reason was: the owner asked.",
            "The register has no item \"lath.smaple\" to merge; the reason was: the owner asked.",
            "The register has an item \"lath.product-data\" already.",
            "The register has no item \"lath.samples\" that this plan is for.",
            "Submittal 04-73-00-01 covers \"lath.gone\", which Section 04 73 00 does not ask for."), says);
        assertEquals(5, Registers.findings(register).size());
    }

    @Test
    void aResubmittalTakesTheReturnedOnesPlace() throws UnusableInput {
        Sample sample = Sample.small();
        sample.submittals.add(submittal("01", "lath.sample", "", returned("change and send again")));
        assertEquals("returned: 01, change and send again, 2026-03-13", register(sample, RegisterFile.NONE).items().get(1).status());
        sample.submittals.add(submittal("02", "lath.sample", "01", Optional.empty()));
        assertEquals("handed in: 02", register(sample, RegisterFile.NONE).items().get(1).status());
    }

    /** Outside source: busday_offset of NumPy 2.4.6 with the same days off, run once. */
    @ParameterizedTest
    @CsvSource({"2026-06-01, 40, 2026-04-02", "2026-05-11, 30, 2026-03-27", "2026-07-20, 25, 2026-06-15", "2026-01-05, 1, 2026-01-02",
        "2026-03-01, 10, 2026-02-16", "2026-03-02, 0, 2026-03-02"})
    void workingDaysAreCountedBackOverWeekendsAndDaysOff(LocalDate from, int days, LocalDate to) {
        assertEquals(to, WORKING.back(from, days));
    }

    @Test
    void calendarDaysCountThemAll() {
        assertEquals(LocalDate.parse("2026-04-22"), new DayCount(DayCount.Kind.CALENDAR,
            WORKING.off()).back(LocalDate.parse("2026-06-01"), 40));
    }

    @Test
    void anItemsPlanFillsUpFromItsSectionsAndDatesSort() throws UnusableInput {
        List<Plan> plans = List.of(new Plan("", "lath.sample", Optional.empty(), OptionalInt.of(45), OptionalInt.empty(), "", Sample.AT),
            new Plan(Sample.SECTION, "", Optional.of(LocalDate.parse("2026-06-01")), OptionalInt.of(30), OptionalInt.empty(), "Mason",
                Sample.AT));
        List<RegisterItem> items = register(Sample.small(), file(plans)).items();
        assertEquals(LocalDate.parse("2026-04-02"), items.get(0).timing().orElseThrow().submitBy());
        assertEquals("Mason", items.get(1).sender());
        assertTrue(items.get(1).timing().orElseThrow().submitBy().isBefore(LocalDate.parse("2026-04-02")));
        assertEquals(List.of("lath.sample", "lath.product-data"), Registers.byDate(items).stream().map(RegisterItem::id).toList());
    }

    private static String part(byte[] archive, String name) throws IOException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().equals(name)) {
                    return new String(zip.readAllBytes(), StandardCharsets.UTF_8);
                }
            }
        }
        return "";
    }

    /** SD-03 product data and SD-04 samples: UFGS 01 33 00, submittal descriptions. */
    @Test
    void federalCodesStandOnlyOnJobsThatChooseThem() throws UnusableInput {
        RegisterFile federal = new RegisterFile(Scheme.FEDERAL, WORKING, OptionalInt.empty(), List.of(), List.of(), Map.of(),
            Map.of(), Sample.AT);
        assertEquals(List.of("SD-03", "SD-04"), register(Sample.small(), federal).items().stream().map(RegisterItem::code).toList());
        assertEquals(List.of("", ""), register(Sample.small(), file(List.of())).items().stream().map(RegisterItem::code).toList());
    }

    @Test
    void theSpreadsheetHasAFrozenHeadFiltersAndRealDates() throws Exception {
        List<Plan> plans = List.of(new Plan(Sample.SECTION, "", Optional.of(LocalDate.parse("2026-06-01")), OptionalInt.of(30),
            OptionalInt.empty(), "Mason", Sample.AT));
        List<RegisterItem> items = register(Sample.small(), file(plans)).items();
        byte[] bytes = RegisterTable.xlsx(items);
        assertEquals(List.of(bytes.length, java.util.Arrays.hashCode(bytes)), List.of(RegisterTable.xlsx(items).length,
            java.util.Arrays.hashCode(RegisterTable.xlsx(items))));
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            XSSFSheet sheet = book.getSheetAt(0);
            assertEquals(1, sheet.getPaneInformation().getHorizontalSplitPosition());
            assertTrue(sheet.getPaneInformation().isFreezePane());
            assertTrue(part(bytes, "xl/worksheets/sheet1.xml").contains("<autoFilter ref=\"A1:Q3\"/>"));
            int at = RegisterTable.TITLES.indexOf("submit by");
            assertEquals(CellType.NUMERIC, sheet.getRow(1).getCell(at).getCellType());
            assertTrue(DateUtil.isCellDateFormatted(sheet.getRow(1).getCell(at)));
            assertEquals(LocalDate.parse("2026-04-02"), sheet.getRow(1).getCell(at).getLocalDateTimeCellValue().toLocalDate());
            assertTrue(sheet.getColumnWidth(RegisterTable.TITLES.indexOf("item")) > 20 * 256);
        }
    }
}
