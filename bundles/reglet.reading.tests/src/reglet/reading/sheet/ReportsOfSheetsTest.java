package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import reglet.model.Dates;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Condition;
import reglet.model.SheetReading.Report;

/** How agencies of several countries word and place what a report or certificate says of itself. All of them are invented. */
class ReportsOfSheetsTest extends SmallSheets {
    private static final String GLASS = "text 9 The lath is an alkali-resistant glass fiber mesh with a coating, for cement plaster.";

    private static String told(SheetReading reading, String property) {
        return reading.values().stream().filter(found -> found.value().property().equals(property)).map(found -> found.value().compare()
            .map(sense -> sense.text() + " ").orElse("") + found.value().value().text()).collect(Collectors.joining("; "));
    }

    private static String lath(SheetReading reading) {
        return told(reading, "lath.report_number") + " | " + told(reading, "lath.report_editions") + " | " + told(reading,
            "lath.report_until");
    }

    private static String dates(Report report) {
        return report.number() + " | " + report.issued() + " | " + report.ends();
    }

    private static List<String> limits(Report report) {
        return report.conditions().stream().flatMap(condition -> condition.limits().stream()).map(limit -> limit.property() + " "
            + limit.compare().orElseThrow().text() + " " + limit.value().text()).toList();
    }

    private Report report(String... lines) throws Exception {
        return reading(lines).report().orElseThrow();
    }

    @Test
    void numberAndEndStandAtTheRightAboveTheSecondColumnOfText() throws Exception {
        SheetReading reading = reading("text 14b Evaluation Report", "text 9 Harrow Product Evaluation Bureau", "at 54 110",
            "text 8 REPORT HOLDER:", "text 8 Sallow Mesh Mills Ltd.", "text 8 9 Reed Lane, Withy, NC 28999", "text 8 EVALUATION SUBJECT:",
            "text 8 SALLOW G GLASS FIBER LATH", "text 8b 1.0 EVALUATION SCOPE", "text 8 Compliance with the following codes:",
            "text 8 ■ 2024 and 2021 International Building Code", "text 8 ■ 2024 and 2021 International Residential Code",
            "text 8b 2.0 USES", "text 8 The lath is used under scratch coats that carry",
            "text 8 cement plaster or adhered masonry veneer on",
            "text 8 exterior walls of Type V construction.", "text 8b 3.0 DESCRIPTION",
            "text 8 Sallow G is an alkali-resistant glass fiber mesh",
            "text 8 of an open weave with a coating of polymer, and",
            "text 8 it comes in rolls that are 48 inches wide and", "text 8 150 feet long, in a sleeve of film, without",
            "text 8 any paper on its back, as the holder makes it",
            "text 8 for all of the uses that this report covers.", "at 450 54", "text 8 Report No. HPB-2231", "text 8 Issued June 1, 2025",
            "text 8 Valid through May 31, 2027", "at 310 110", "text 8b 5.0 CONDITIONS OF USE",
            "text 8 5.1 Installation complies with this report and with", "text 8 the instructions of the holder at the site.",
            "text 8 5.2 Studs are spaced no more than 16 inches on", "text 8 center and are wood with a gravity of 0.42.",
            "text 8 5.3 Saturated weight of adhered units does not exceed 15 psf.", "text 8 5.4 A water-resistive barrier is installed as",
            "text 8 the code asks for walls of this kind.", "text 8b 6.0 EVIDENCE SUBMITTED",
            "text 8 Data under the criteria for glass lath, dated",
            "text 8 June 2021, and a report of tests by others.", "text 8b 7.0 IDENTIFICATION",
            "text 8 Each roll bears a label with the name of the",
            "text 8 holder, the product and the number of this report.");
        assertEquals("HPB-2231 | 2021, 2024 | 2027-05-31", lath(reading).replace("2024, 2021", "2021, 2024"));
        Report report = reading.report().orElseThrow();
        assertEquals("Sallow Mesh Mills Ltd.", report.holder());
        assertEquals("SALLOW G GLASS FIBER LATH", report.subject());
        assertEquals(List.of("framing.spacing at most 16 in", "veneer.weight at most 15 psf"), limits(report));
        assertEquals(4, report.conditions().size());
    }

    @Test
    void aBareNumberAboveTheDatesIsTheReports() throws Exception {
        SheetReading reading = reading("at 450 54", "text 9 QRB-5518", "text 9 Issued May 1, 2025", "text 9 Subject to renewal May 1, 2028",
            "at 54 60", "text 12b Evaluation Report", "text 9 QUARRY REVIEW BUREAU", "at 54 130",
            "text 9 REPORT HOLDER: Linden Fabrics, Inc.",
            "text 9 EVALUATION SUBJECT: Linden G-Lath 40 glass fiber lath", "text 9b 1.0 SCOPE",
            "text 9 Compliance with the following codes: 2024 and 2021 International Building Code (IBC).",
            "text 9b 2.0 DESCRIPTION", GLASS);
        assertEquals("QRB-5518 | 2024, 2021 | 2028-05-01", lath(reading));
        assertEquals("Linden Fabrics, Inc.", reading.report().orElseThrow().holder());
        assertEquals("Linden G-Lath 40 glass fiber lath", reading.report().orElseThrow().subject());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "Evaluation Report No. ABR-101   | Issued: March 1, 2025       | Expires: March 1, 2027                | ABR-101",
        "EVALUATION REPORT #2217-R1      | Reissued March 1, 2025      | Renewal due March 1, 2027              | 2217-R1",
        "Code Listing Report LR 0731     | Effective date: 2025-03-01  | Expiration date: 2027-03-01            | LR 0731",
        "Technical Approval No. 21/0345  | Date of issue: 1 March 2025 | Valid until: 1 March 2027              | 21/0345",
        "Certificate of Listing CL-3310  | Issued on 1 March 2025      | This certificate expires on 1 March 2027 | CL-3310",
        "Product Certificate: PC.1187    | Approved March 1, 2025      | In force until March 1, 2027           | PC.1187",
        "Certificate No. 4471            | Date granted: 1st March 2025 | Period of validity: 1 March 2025 to 1 March 2027 | 4471",
        "Technical Assessment TA-15/0316 | Valid from 1 March 2025 to 1 March 2027 | Reviewed each year         | TA-15/0316",
        "Notice of Acceptance No. 21-0316.04 | Approval Date: March 1, 2025 | Good through March 1, 2027        | 21-0316.04",
        "Research Report RR-2201 | First issued May 2019, reissued March 1, 2025 | Subject to re-examination March 1, 2027 | RR-2201",
        "Compliance Report CR-88-2       | Revised: May 9, 2026 Issued: March 1, 2025 | Renew by March 1, 2027 | CR-88-2"})
    void numberIssueAndEndAreReadHoweverTheyAreWorded(String title, String first, String second, String number) throws Exception {
        SheetReading reading = reading("text 14b " + title, "text 10 Alder Building Review", "text 9 " + first, "text 9 " + second,
            "text 9 Holder: Sedge Mesh Ltd.", "text 9 Product: Sedge glass fiber lath", "at 54 160", "text 9b 1 Codes",
            "text 9 IBC and IRC, 2021 and 2024 editions", "text 9b 2 Description", GLASS);
        assertEquals(number + " | 2021, 2024 | 2027-03-01", lath(reading));
        Report report = reading.report().orElseThrow();
        assertEquals("Sedge Mesh Ltd.", report.holder());
        assertEquals("Sedge glass fiber lath", report.subject());
        assertEquals("2025-03-01", Dates.meant(report.issued()).orElseThrow().text());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "2024 and 2018 International Building Code and International Residential Code | IBC 2024, IBC 2018, IRC 2024, IRC 2018",
        "2021 IBC and IRC; 2018 IBC                     | IBC 2021, IRC 2021, IBC 2018",
        "International Building Code®, 2021 and 2018 Editions | IBC 2021, IBC 2018",
        "IBC 2021, IRC 2018                             | IBC 2021, IRC 2018",
        "IBC-2021 and IRC-2021                          | IBC 2021, IRC 2021",
        "International Building Code (IBC): 2024, 2021; International Residential Code (IRC): 2021 | IBC 2024, IBC 2021, IRC 2021",
        "2021 edition of the International Building Code | IBC 2021",
        "2022 California Building Code (CBC), 2023 Florida Building Code | CBC 2022, FBC 2023",
        "National Building Code of Canada 2020          | NBC 2020",
        "2021 IBC. Not evaluated for the 2024 IBC       | IBC 2021",
        "2021 IBC. Earlier editions of 2015 IBC are withdrawn | IBC 2021"})
    void eachCodeIsReadWithItsOwnEditions(String written, String codes) throws Exception {
        assertEquals(codes, String.join(", ", report("text 14b Evaluation Report XR-1001", "text 9 Holder: Sedge Mesh Ltd.", "at 54 110",
            "text 9b 1.0 CODES", "text 9 " + written + ".", "text 9b 2.0 DESCRIPTION", GLASS).codes()));
    }

    @Test
    void datesAreReadOfARowOfHeadingsAboveThem() throws Exception {
        assertEquals("TR-771 | 2025-04-02 | 2028-04-01", dates(report("text 14b Product Evaluation Report", "at 54 90",
            "table ruled 16 110,110,110,110", "| Report no. | Issued | Revised | Valid through | ",
            "| TR-771 | 2025-04-02 | 2026-01-10 | 2028-04-01",
            "at 54 140", "text 9 Holder: Sedge Mesh Ltd.", "text 9b 1.0 DESCRIPTION", GLASS)));
    }

    @Test
    void aCertificateMaySayItsEndInItsLastSentence() throws Exception {
        assertEquals("KC-4410 | 12 May 2025 | 11 May 2027", dates(report("text 16b Certificate of Conformity", "text 10 No. KC-4410",
            "text 9 Issued to: Sedge Mesh Ltd.", "text 9 Product: Sedge glass fiber lath", "text 9 Date of issue: 12 May 2025", "at 54 150",
            "text 9b 1 Description", GLASS, "at 54 300",
            "text 9 This certificate remains valid until 11 May 2027 while the works are inspected.")));
    }

    @Test
    void whatIsNotTheReportsOwnNumberOrEndIsNotShownAsIt() throws Exception {
        SheetReading reading = reading("text 14b Evaluation Report", "text 9 Supersedes report OLD-1199", "text 9 Test report no. 88123",
            "text 9 Revised May 2, 2026", "text 9 Next inspection: June 1, 2027", "text 9 Product: RG-2000",
            "text 9 Holder: Sedge Mesh Ltd.",
            "at 54 160", "text 9b 1.0 DESCRIPTION", GLASS);
        assertEquals(" |  | ", lath(reading));
        assertEquals(" |  | ", dates(reading.report().orElseThrow()));
        assertEquals("RG-2000", reading.report().orElseThrow().subject());
    }

    @Test
    void aDateThatMayBeTwoDaysIsToldAsWrittenAndNotAsADay() throws Exception {
        SheetReading reading = reading("text 14b Evaluation Report XR-1002", "text 9 Issued 03/04/2025, expires 04/05/2027",
            "text 9 Holder: Sedge Mesh Ltd.", "at 54 110", "text 9b 1.0 DESCRIPTION", GLASS);
        assertEquals("", told(reading, "lath.report_until"));
        assertEquals("XR-1002 | 03/04/2025 | 04/05/2027", dates(reading.report().orElseThrow()));
    }

    @Test
    void conditionsEndWhereTheNextSectionBeginsAndHoldNoFoot() throws Exception {
        Report report = report("text 14b Evaluation Report XR-1003", "text 9 Holder: Sedge Mesh Ltd.",
            "text 9 Subject: Sedge glass fiber lath",
            "at 54 130", "text 9b 4. Conditions of use", "text 9 a. Stud spacing shall not exceed 16 inches on center.",
            "text 9 b. Weight of adhered veneer units must not exceed 15 psf.", "text 9 c. Use is limited to Type V-B construction.",
            "at 54 200", "text 7 XR-1003 | Page 1 of 2", "at 54 215", "text 9b 5. Evidence submitted", "text 9 Data of tests by others.");
        assertEquals(List.of("a", "b", "c"), report.conditions().stream().map(Condition::number).toList());
        assertEquals("Use is limited to Type V-B construction.", report.conditions().get(2).text());
        assertEquals(List.of("framing.spacing at most 16 in", "veneer.weight at most 15 psf"), limits(report));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Studs shall be spaced not more than 16 inches on center.            | at most 16 in |",
        "The maximum stud spacing is 16 inches (406 mm).                     | at most 16 in |",
        "Framing must be at a maximum of 16 in. o.c.                         | at most 16 in |",
        "Spacing of framing members is limited to 24 inches on center.       | at most 24 in |",
        "Supports shall be no farther apart than 16 inches.                  | at most 16 in |",
        "Studs shall be spaced 16 inches on center or less.                  | at most 16 in |",
        "The installed weight of the veneer shall not exceed 15 psf.         |  | at most 15 psf",
        "Adhered veneer units shall weigh no more than 15 pounds per square foot. |  | at most 15 psf",
        "Veneer is limited to a saturated weight of 15 psf (73 kg/m²).       |  | at most 15 psf",
        "The maximum weight of adhered units is 15 psf.                      |  | at most 15 psf"})
    void whatStudsAndUnitsAReportCoversIsReadHoweverItIsWorded(String condition, String spacing, String weight) throws Exception {
        SheetReading reading = reading("text 14b Evaluation Report XR-1004", "text 9 Holder: Sedge Mesh Ltd.",
            "text 9 Subject: Sedge glass fiber lath", "at 54 130", "text 9b 3.0 DESCRIPTION", GLASS, "at 54 180",
            "text 9b 5.0 CONDITIONS OF USE",
            "text 9 5.1 " + condition);
        assertEquals(spacing == null ? "" : spacing, told(reading, "lath.report_spacing"));
        assertEquals(weight == null ? "" : weight, told(reading, "lath.report_weight"));
    }

    @Test
    void aDataSheetThatListsApprovalsIsNoReport() throws Exception {
        SheetReading reading = reading("text 18b Sedge G glass fiber lath", "text 9 Product Data",
            "text 9 Product approval: held in two states",
            "text 9 See certificate of listing on request.", "text 9 Mesh opening: 1/4 in.");
        assertFalse(reading.report().isPresent());
        assertTrue(told(reading, "lath.report_number").isEmpty());
    }

    @Test
    void theYearOfADateAboveTheCodesIsNoEdition() throws Exception {
        SheetReading reading = reading("text 14b Product Evaluation Report", "at 54 90", "table ruled 18 120,130,120,130",
            "| Report number | HEP-0417-24 | Issue date | 04/15/2024", "| Report holder | Sedge Mesh Co. | Revision date | 01/20/2025",
            "| Product | Sedge glass lath | Renewal date | 04/30/2026", "at 54 160", "text 9b Code editions",
            "text 9 International Building Code and International Residential Code: 2018, 2021 and 2024", "text 9b Description", GLASS);
        assertEquals("HEP-0417-24 | 2018, 2021, 2024 | 2026-04-30", lath(reading));
        assertEquals("Sedge Mesh Co.", reading.report().orElseThrow().holder());
        assertEquals("04/15/2024", reading.report().orElseThrow().issued());
    }

    @Test
    void aNumberOfFiguresStandsBelowTheTitleOfACertificateAndStudsAtCentresAreNoMeshOpening() throws Exception {
        SheetReading reading = reading("text 9 Isles Approvals Board", "text 16b Agrément Certificate", "text 12 22/6031",
            "text 10 Product Sheet 1", "text 10 Certificate holder: Sedge Meshes plc", "text 10 Date of First issue: 14 February 2022",
            "text 10 Date of Third issue: 20 June 2025", "text 10 Valid until: 19 June 2028", "at 54 190", "text 10b 1 Description", GLASS,
            "text 10b 2 Conditions", "text 10 2.1 The mesh must be carried by studs at not more than 400 mm centres.");
        assertEquals("22/6031 | 20 June 2025 | 19 June 2028", dates(reading.report().orElseThrow()));
        assertEquals("at most 400 mm", told(reading, "lath.report_spacing"));
        assertEquals(List.of(), limits(reading.report().orElseThrow()));
    }

    @Test
    void thePaperThatAnAssessmentReplacesLendsItNoDate() throws Exception {
        Report report = report("text 14b European Technical Assessment", "text 12b ETA-00/9999 of 12/03/2024",
            "text 9 Trade name of the construction product: Rendernet G7", "text 9 This version replaces ETA-00/9998 issued on 04/05/2019",
            "at 54 160", "text 9b 1 Technical description", GLASS);
        assertEquals("ETA-00/9999 |  | ", dates(report));
        assertEquals("Rendernet G7", report.subject());
    }

    @Test
    void monthsBetweenHyphensAndDaysBetweenDotsAreDatesToo() throws Exception {
        assertEquals("C-4471 | 17 JAN 2025 | 2027-01-16", dates(report("text 16b CERTIFICATE OF COMPLIANCE",
            "text 9 Certificate Number: C-4471",
            "text 9 Issue Date: 2025-JAN-17", "text 9 Valid to: 16.01.2027", "text 9 Issued to: Sedge Lath Works", "at 54 150", GLASS)));
    }

    @Test
    void aDataSheetThatListsItsReportTellsNumberEditionsAndEndInRows() throws Exception {
        SheetReading reading = reading("text 18b SEDGE G-41", "text 10 Glass Fiber Lath - Product Data Sheet", "at 54 110",
            "table open 16 200,260", "| Property | Value", "| Material | alkali-resistant glass fiber", "| Mesh opening | 1/4 in.",
            "| Code report | WRR-0923", "| Code report valid through | June 30, 2027", "| Code editions | IBC and IRC: 2018, 2021, 2024",
            "| Stud spacing | 16 in. max.", "| Veneer weight | 15 psf max.");
        assertEquals("WRR-0923 | 2018, 2021, 2024 | 2027-06-30", lath(reading));
        assertFalse(reading.report().isPresent());
    }

    @Test
    void aNoticeSaysItsLimitsBehindColons() throws Exception {
        SheetReading reading = reading("text 14b NOTICE OF ACCEPTANCE", "text 9 NOA No.: 23-1107.05", "text 9 Approval Date: 12/21/2023",
            "text 9 Expiration Date: 12/21/2028", "text 9 APPLICANT: Sedge Lath, Inc.", "text 9 PRODUCT: Sedge glass fiber lath",
            "at 54 160",
            "text 9b DESCRIPTION", GLASS, "text 9b LIMITATIONS", "text 9 1. Maximum stud spacing: 16 inches on center.",
            "text 9 2. Maximum weight of veneer: 15 psf.");
        assertEquals(List.of("framing.spacing at most 16 in", "veneer.weight at most 15 psf"), limits(reading.report().orElseThrow()));
        assertEquals("23-1107.05 |  | 2028-12-21", lath(reading));
        assertEquals("at most 16 in", told(reading, "lath.report_spacing"));
    }
}
