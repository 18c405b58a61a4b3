package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.model.SheetReading;

/** How makers' pages part what they tell, on small drawn sheets: chapters of series, cells across rows, tables beside each other, items. */
class ChaptersOfMakersTest extends SmallSheets {
    /** With bold letters that are called so, as a printed sheet has them. */
    private SheetReading printed(String component, List<String> lines) throws Exception {
        List<String> all = new ArrayList<>(List.of("font Helvetica 9"));
        all.addAll(lines);
        return readingOf(component, all.toArray(String[]::new));
    }

    private String sentence(String component, String line, String property) throws Exception {
        return said(readingOf(component, "text 18b Product", "at 54 110", "text 9 " + line), component + "." + property);
    }

    private static List<String> page(String... lines) {
        return new ArrayList<>(List.of(lines));
    }

    @Test
    void aHeadingInBoldLettersNamesASeriesThoughItSaysMore() throws Exception {
        SheetReading reading = printed("lath_fastener", page("text 18b Fasteners for Lath", "at 54 110",
            "text 10b RS Series staples – for wood framing", "at 54 126", "text 9 16 ga. steel wire, 0.0625\" dia., 15/16\" crown, "
                + "electro-galvanized. Drive into wood not less than 3/4\".", "at 54 144", "table lined 18 90,100,90",
            "| Item | Leg length | Per box", "| RS-125 | 1-1/4\" | 10,000", "| RS-175 | 1-3/4\" | 7,500", "at 54 220",
            "text 10b RN Series nails – for wood framing", "at 54 236", "text 9 11 ga. (0.120\") ring shank, 7/16\" head, hot-dip "
                + "galvanized to ASTM A153. Penetration into wood framing at least 1\".", "at 54 254", "table lined 18 90,100,90",
            "| Item | Length | Carton", "| RN-150 | 1-1/2\" | 50 lb", "| RN-200 | 2\" | 50 lb"));
        assertEquals("15/16 in of RS-125; 15/16 in of RS-175; 7/16 in of RN-150; 7/16 in of RN-200", said(reading, "lath_fastener.head"));
        assertEquals("at least 1 in of RN-150; at least 1 in of RN-200; at least 3/4 in of RS-125; at least 3/4 in of RS-175", said(reading,
            "lath_fastener.penetration"));
        assertEquals("nail of RN-150; nail of RN-200; staple of RS-125; staple of RS-175", said(reading, "lath_fastener.kind"));
    }

    @Test
    void aHeadingAboveASentenceAndATableTellsOfTheModelsInIt() throws Exception {
        SheetReading reading = printed("casing_bead", page("text 18b Casing Beads", "at 54 110", "text 10b Metal styles", "at 54 126",
            "text 9 Roll-formed of galvanized steel, 26 ga., with an expanded flange that keys into the mortar.", "at 54 144",
            "table lined 18 90,100,90", "| Style | Ground, in. | Pieces", "| EF-50 | 1/2 | 35", "| EF-75 | 3/4 | 35", "at 54 220",
            "text 10b Extruded styles", "at 54 236", "text 9 Made of exterior-grade PVC, white, with a flange that is perforated for "
                + "keying.", "at 54 254", "table lined 18 90,100,90", "| Style | Ground, in. | Pieces", "| PV-50 | 1/2 | 50",
            "| PV-75 | 3/4 | 50"));
        assertEquals("PVC of PV-50; PVC of PV-75; galvanized steel of EF-50; galvanized steel of EF-75", said(reading,
            "casing_bead.material"));
    }

    @Test
    void aListOfASeriesTellsOfItsItems() throws Exception {
        List<String> page = page("text 18b Lath fasteners");
        row(page, 100, "54 TS screw, for steel");
        row(page, 118, "54 Type", "200 Self-drilling screw, for steel studs");
        row(page, 134, "54 Shank diameter", "200 No. 10, 0.190\"");
        row(page, 150, "54 Head diameter", "200 0.437\"");
        row(page, 166, "54 Finish", "200 Polymer coat over zinc");
        page.addAll(List.of("at 54 184", "table lined 18 90,90,90,90", "| Part | Length | Drill point | Box", "| TS-114 | 1-1/4\" | No. 2 "
            + "| 5M", "| TS-200 | 2\" | No. 3 | 4M"));
        row(page, 270, "54 TP staple, for wood");
        row(page, 288, "54 Type", "200 Pneumatic staple, for wood framing");
        row(page, 304, "54 Wire diameter", "200 0.0625\"");
        row(page, 320, "54 Crown", "200 7/8\"");
        row(page, 336, "54 Finish", "200 Electroplated zinc");
        page.addAll(List.of("at 54 354", "table lined 18 90,90,90,90", "| Part | Leg length | Sticks | Carton", "| TP-16-100 | 1\" | 100 | "
            + "20M", "| TP-16-150 | 1-1/2\" | 100 | 12M"));
        SheetReading reading = readingOf("lath_fastener", page.toArray(String[]::new));
        assertEquals("0.437 in of TS-114; 0.437 in of TS-200; 7/8 in of TP-16-100; 7/8 in of TP-16-150", said(reading,
            "lath_fastener.head"));
        assertEquals("0.0625 in of TP-16-100; 0.0625 in of TP-16-150; 0.190 in of TS-114; 0.190 in of TS-200", said(reading,
            "lath_fastener.diameter"));
    }

    @Test
    void aModelWithARowOfItsOwnIsNoSeriesOfAnother() throws Exception {
        SheetReading reading = readingOf("lath", "text 18b Metal lath", "at 54 110", "table ruled 18 90,110,120", "| Item | Weight, "
            + "lb/sq yd "
            + "| Furring", "| DM-34SF | 3.4 | 1/4\"", "| DM-34SF-P | 3.4 | 1/4\"", "| DM-25F | 2.5 | –");
        assertEquals("2.5 lb/yd² of DM-25F; 3.4 lb/yd² of DM-34SF; 3.4 lb/yd² of DM-34SF-P", said(reading, "lath.weight"));
    }

    @Test
    void aSentenceMayNameASeriesByItsLettersAlone() throws Exception {
        SheetReading reading = readingOf("lath", "text 18b Metal lath", "at 54 110", "table ruled 18 90,130", "| Item | Weight, lb/sq yd",
            "| MD-250 | 2.5", "| MS-250 | 2.5", "| MS-340 | 3.4", "at 54 200", "text 9 The dimples of the MS items hold the mesh 1/4\" off "
                + "the backing.");
        assertEquals("1/4 in of MS-250; 1/4 in of MS-340", said(reading, "lath.furring"));
    }

    @Test
    void whatIsSaidOfSeveralModelsInOneBreathIsOfEach() throws Exception {
        SheetReading reading = readingOf("lath_accessories", "text 18b Corner and strip lath", "at 54 110", "table ruled 18 80,200,120",
            "| Item | Description | Material", "| PS-4 | Strip lath, flat | Galvanized steel", "| PC-2 | Corner lath | Galvanized steel",
            "| PC-3 | Corner lath | Galvanized steel", "at 54 200", "text 9 Set PC-2 or PC-3 over the sheets so that each wing laps the "
                + "lath by 2 in. or more.");
        assertEquals("at least 2 in of PC-2; at least 2 in of PC-3", said(reading, "lath_accessories.corner_lap"));
    }

    @Test
    void whatGoesOnBelowTheLettersOfASeriesIsOfIt() throws Exception {
        SheetReading reading = readingOf("base_screed", "text 18b Weep screed", "at 54 110", "table ruled 18 90,90", "| Item no. | Ground",
            "| KG7-078 | 7/8\"", "| KG7-138 | 1-3/8\"", "| KV7-078 | 7/8\"", "at 54 200", "text 9 KG7: Roll formed from hot-dip galvanized "
                + "steel sheet, ASTM", "at 54 212", "text 9 A653, coating G60. 26 ga., base steel thickness 0.0172\" minimum.", "at 54 236",
            "text 9 KV7: Extruded from rigid PVC compound.");
        assertEquals("at least 0.0172 in of KG7-078; at least 0.0172 in of KG7-138", said(reading, "base_screed.thickness"));
        assertEquals("PVC of KV7-078; galvanized steel of KG7-078; galvanized steel of KG7-138", said(reading, "base_screed.material"));
    }

    @Test
    void aCellRuledRoundAllRowsHoldsForAllAndOneRoundTwoForThese() throws Exception {
        List<String> page = page("text 18b Weep screed");
        row(page, 100, "60 Item no.", "150 Material", "250 Nailing flange", "350 Ground");
        row(page, 118, "60 KG7-078", "350 7/8\"");
        row(page, 127, "150 Galv. steel");
        row(page, 136, "60 KG7-138", "350 1-3/8\"");
        row(page, 145, "250 3-1/2\"");
        row(page, 154, "60 KV7-078", "350 7/8\"");
        row(page, 163, "150 PVC");
        row(page, 172, "60 KV7-138", "350 1-3/8\"");
        for (int y : new int[] {96, 114, 186}) {
            page.add("rule " + y + " 54 420");
        }
        for (int y : new int[] {132, 168}) {
            page.addAll(List.of("rule " + y + " 54 140", "rule " + y + " 340 420"));
        }
        page.addAll(List.of("rule 150 54 240", "rule 150 340 420"));
        SheetReading reading = readingOf("base_screed", page.toArray(String[]::new));
        assertEquals("3-1/2 in", said(reading, "base_screed.leg"));
        assertEquals("PVC of KV7-078; PVC of KV7-138; galvanized steel of KG7-078; galvanized steel of KG7-138", said(reading,
            "base_screed.material"));
    }

    @Test
    void aLimitAtTheHeadOfOneColumnMakesNoTableOfLimits() throws Exception {
        SheetReading reading = readingOf("sheathing", "text 18b Plywood sheathing", "at 54 110", "table ruled 18 80,110,90,110",
            "| Item | Thickness | Plies | Wall studs, max.", "| CV-38 | 3/8\" (9.5 mm) | 3 | 16\" o.c.", "| CV-1532 | 15/32\" (11.9 "
                + "mm) | 4 "
                + "| 24\" o.c.");
        assertEquals("15/32 in of CV-1532; 3/8 in of CV-38", said(reading, "sheathing.thickness"));
    }

    @Test
    void itemsWithTheirDescriptionAndStandardAreNoTests() throws Exception {
        SheetReading reading = readingOf("lath_accessories", "text 18b Reinforcing accessories", "at 54 110", "table ruled 18 "
            + "80,190,120,80",
            "| Item | Description | Material | Standard", "| [ ] CL-22 | Corner lath, inside | Galvanized steel | ASTM C847",
            "| [ ] CL-33S | Corner lath, inside | Stainless steel | ASTM C847", "| [ ] SL-6 | Strip lath, flat | Galvanized steel | "
                + "ASTM C847");
        assertEquals("galvanized steel of CL-22; galvanized steel of SL-6; stainless steel of CL-33S", said(reading,
            "lath_accessories.material"));
        assertEquals("corner lath of CL-22; corner lath of CL-33S", said(reading, "lath_accessories.corner"));
    }

    @Test
    void tablesBesideEachOtherAreReadEachForItself() throws Exception {
        SheetReading reading = readingOf("insulation", "text 18b Mineral wool board", "at 40 110", "table lined 18 120,60,70",
            "| Property | Standard | Result", "| Flame spread | ASTM E84 | 0", "| Density | ASTM C303 | 5.5 lb/ft³", "| Compressive "
                + "resistance | ASTM C165 | 4.2 psi", "at 320 110", "table lined 18 60,110,60", "| Item | Thickness | R-value",
            "| CW-15 | 1-1/2 in (38 mm) | 6.3", "| CW-20 | 2 in (51 mm) | 8.4", "| CW-25 | 2-1/2 in (64 mm) | 10.5");
        assertEquals("1-1/2 in of CW-15; 2 in of CW-20; 2-1/2 in of CW-25", said(reading, "insulation.thickness"));
        assertEquals("0 by ASTM E84", said(reading, "insulation.flame_spread"));
    }

    @Test
    void tablesBesideEachOtherMayBeRuledBelowTheirHeadingsAlone() throws Exception {
        List<String> page = page("text 18b Wall plates");
        row(page, 100, "44 Plate", "100 Fits O.D.", "190 Sealant joint to the stone", "330 Property", "430 Method", "490 Result");
        page.addAll(List.of("rule 114 40 310", "rule 114 326 560"));
        row(page, 120, "44 G-025", "100 1/4 to 1/2 in.", "190 1/4 in.", "330 Water penetration", "430 ASTM E331", "490 none");
        row(page, 138, "44 G-075", "100 5/8 to 1 in.", "190 1/4 in.", "330 Air leakage", "430 ASTM E283", "490 none");
        row(page, 156, "44 G-150", "100 1-1/4 to 2 in.", "190 3/8 in.", "330 Cuff hardness", "430 ASTM D2240", "490 45 Shore A");
        row(page, 174, "44 G-300", "100 2-3/8 to 3 in.", "190 3/8 in.", "330 Cuff tensile", "430 ASTM D412", "490 1,250 psi");
        assertEquals("1/4 in of G-025; 1/4 in of G-075; 3/8 in of G-150; 3/8 in of G-300", said(readingOf("penetration_seal", page.toArray(
            String[]::new)), "penetration_seal.width"));
    }

    @Test
    void columnsOnBothSidesOfACellRoundSeveralRowsAreOfOneTable() throws Exception {
        List<String> page = page("text 18b Weep screed");
        row(page, 100, "60 Code", "150 Ground", "250 Flange", "350 Metal", "440 Weight");
        row(page, 118, "60 FG-38", "150 3/8\"", "350 Zinc", "440 318 lb");
        row(page, 136, "60 FG-50", "150 1/2\"", "350 Zinc", "440 330 lb");
        row(page, 145, "250 3-1/2\"");
        row(page, 154, "60 FG-88", "150 7/8\"", "350 Zinc", "440 364 lb");
        row(page, 172, "60 FZ-88", "150 7/8\"", "350 Zinc alloy", "440 390 lb");
        for (int y : new int[] {96, 114, 186}) {
            page.add("rule " + y + " 54 500");
        }
        for (int y : new int[] {132, 150, 168}) {
            page.addAll(List.of("rule " + y + " 54 240", "rule " + y + " 340 500"));
        }
        SheetReading reading = readingOf("base_screed", page.toArray(String[]::new));
        assertEquals("1/2 in of FG-50; 3/8 in of FG-38; 7/8 in of FG-88; 7/8 in of FZ-88", said(reading, "base_screed.ledge"));
        assertEquals("3-1/2 in", said(reading, "base_screed.leg"));
    }

    @Test
    void aPartOfASheetMayDescribeItsProductBeforeItsTable() throws Exception {
        List<String> lines = page("text 14b Lath and plaster accessories", "at 54 100", "text 9b No. 7 Foundation weep screed", "at 54 114",
            "text 9 Ends the veneer at the base of framed walls and lets water that runs down the barrier fall out.", "at 54 130",
            "table lined 18 80,80,100", "| Item | Ground | Nailing flange", "| WS-50 | 1/2\" | 3-1/2\"", "| WS-75 | 3/4\" | 3-1/2\"",
            "at 54 210", "text 9b No. 66 Casing bead", "at 54 224", "text 9 A stop and ground for mortar at openings, and at the ends of "
                + "walls.", "at 54 240", "table lined 18 80,80,100", "| Item | Ground | Flange", "| CB-50 | 1/2\" | 1-1/4\"",
            "| CB-75X | 3/4\" | 3-1/8\"");
        assertEquals("1/2 in of WS-50; 3/4 in of WS-75", said(printed("base_screed", lines), "base_screed.ledge"));
        assertEquals("1/2 in of CB-50; 3/4 in of CB-75X", said(printed("casing_bead", lines), "casing_bead.ground"));
    }

    @Test
    void theStandardOfItsSteelShowsAMaterialAndNotThatOfTheWhole() throws Exception {
        SheetReading reading = readingOf("casing_bead", "text 18b Casing bead", "at 54 110", "text 9 Formed of zinc alloy, 99 % "
            + "pure, to ASTM "
            + "B69, in 10 ft lengths.", "at 54 130", "text 9 All beads are made to ASTM C1861 and are packed in cartons.");
        assertEquals("zinc alloy", said(reading, "casing_bead.material"));
    }

    @Test
    void aTitleBesideASideBarDoesNotMakeALineOfTheBarTheTitle() throws Exception {
        List<String> page = page("at 170 60", "text 20b Zinc Control Joints and", "at 170 84", "text 20b Two-Piece Expansion Joints");
        String[] bar = {"CORBIN FELLS", "Metal Trim", "SECTION", "09 22 36 Lath", "09 24 00 Plastering", "Material", "Zinc alloy",
            "ASTM B69", "Flanges", "Expanded",
            "Finish", "Mill", "Carton", "24 pieces"};
        String[] text = {"", "", "Control joints relieve the shrinkage of mortar and thermal stress in a wall of cement", "plaster, or in "
            + "the scratch coat below veneer. Both wings of each joint are tied to the lath,", "and the lath is stopped at both sides of "
                + "it, as the maker of the lath asks for it there.", "The designer of the wall sets the place and the number of the "
                    + "joints, "
                    + "and shows these on", "the drawings; the maker of the joints does not design them, nor answers for them later on.",
            "Vertical members run through, and the horizontal ones are butted to them with sealant", "at the crossing. Stop the lath at "
                + "both sides of the joint and tie it to the wings there,", "and do not carry lath behind the joint, nor nail the wings "
                    + "through into the framing there.", "Remove the tape when the finish is done, and see that the joint is free "
                        + "of mortar."};
        for (int i = 0; i < bar.length; i++) {
            row(page, 67 + 14 * i, "16 " + bar[i]);
            if (i < text.length && !text[i].isEmpty()) {
                row(page, 102 + 14 * i, "170 " + text[i]);
            }
        }
        SheetReading reading = reading(page.toArray(String[]::new));
        assertEquals("Zinc Control Joints and", reading.product());
        assertEquals("movement_joint", reading.components().get(0));
    }

    @Test
    void cellsInTheMiddlesOfNarrowColumnsArePartedByTheWiderGaps() throws Exception {
        List<String> page = page("text 18b Drainage mat");
        row(page, 100, "193 Property", "336 Test method", "419.3 DV-6", "479.8 DV-10", "545.3 DV-19");
        row(page, 118, "193 Nominal thickness", "336 ASTM D5199", "403 1/4 in (6 mm)", "462 0.40 in (10 mm)", "531 3/4 in (19 mm)");
        row(page, 136, "193 Drainage efficiency", "336 ASTM E2273", "416.8 96.8%", "479.8 98.3%", "545.3 99.1%");
        assertEquals("0.40 in of DV-10 by ASTM D5199; 1/4 in of DV-6 by ASTM D5199; 3/4 in of DV-19 by ASTM D5199",
            said(readingOf("mat", page
            .toArray(String[]::new)), "mat.thickness"));
    }

    @Test
    void allResultsBelowATestAreByItsStandard() throws Exception {
        List<String> page = page("text 18b Mineral wool board");
        row(page, 100, "54 Property", "208 Standard", "298 Result");
        row(page, 114, "54 Surface burning:", "208 ASTM E84");
        row(page, 128, "58 flame spread", "298 0");
        row(page, 142, "58 smoke developed", "298 5");
        row(page, 156, "54 Density", "208 ASTM C303", "298 5.5 lb/ft³");
        SheetReading reading = readingOf("insulation", page.toArray(String[]::new));
        assertEquals("0 by ASTM E84", said(reading, "insulation.flame_spread"));
        assertEquals("5 by ASTM E84", said(reading, "insulation.smoke"));
    }

    @Test
    void theNumberAndTheEndOfAReportAreReadAsMakersWriteThem() throws Exception {
        String report = "An evaluation report, ER-4719, covers the lath under the 2018 and 2021 IBC and IRC, in force through April "
            + "30, 2027.";
        assertEquals("ER-4719", sentence("lath", report, "report_number"));
        assertEquals("2027-04-30", sentence("lath", report, "report_until"));
    }

    @Test
    void figuresAreReadWithWhatMakersPutRoundThem() throws Exception {
        SheetReading reading = readingOf("metal_flashing", "text 18b Flashing", "at 54 110", "table ruled 18 80,120,120",
            "| Profile | Back leg | Fall per foot", "| LH-3 | 3 in. | 1/4 in. per ft", "| LS-2 | 2 in. | 1 in. per ft");
        assertEquals("1 in of LS-2; 1/4 in of LH-3", said(reading, "metal_flashing.slope"));
        SheetReading wire = readingOf("lath", "text 18b Woven wire lath", "at 54 110", "table ruled 18 80,130,110",
            "| Style | Wire, gauge (diam.) | Weight, lb/sq yd", "| HG-17 | 17 (0.051 in.) | 1.5", "| HG-18 | 18 (0.0475 in.) | 1.9");
        assertEquals("0.0475 in of HG-18; 0.051 in of HG-17", said(wire, "lath.wire"));
        SheetReading screed = readingOf("base_screed", "text 18b Weep screed", "at 54 110", "text 9 Nailing flange \"B\", all "
            + "sizes: 3-1/2\" "
            + "(89 mm)");
        assertEquals("3-1/2 in", said(screed, "base_screed.leg"));
    }

    @Test
    void whatIsAllowedNowhereIsAtMost() throws Exception {
        assertEquals("at most 1/2 in", sentence("sealant", "The depth over the crown of the rod is at no place deeper than 1/2 in. "
            + "(13 mm).",
            "depth"));
    }

    @Test
    void theSecondEndOfARangeIsNoValueOfItsOwn() throws Exception {
        assertEquals("10 to 13 mm", sentence("setting_bed", "The finished bed should be 10–13 mm (3/8–1/2 in.) thick.", "thickness"));
    }

    @Test
    void whatCanBeHadOnAskingIsNotWhatTheProductIs() throws Exception {
        SheetReading reading = readingOf("base_screed", "text 18b Weep screed", "at 54 110", "text 9 The profiles are roll-formed from "
            + "hot-dip galvanized steel and made in 10 ft lengths.", "at 54 130", "text 9 All can be had in zinc alloy for coastal work; "
                + "allow four weeks.");
        assertEquals("galvanized steel", said(reading, "base_screed.material"));
    }

    @Test
    void aChaptersHeadingInTheMarginIsNoneOfATablesColumns() throws Exception {
        List<String> page = page("text 18b Penetrating repellents");
        row(page, 100, "44 Products", "285 Ravelle 40", "360 Ravelle Twin W", "457 Ravelle SX");
        row(page, 115, "137 Carrier", "285 Alcohol", "360 Water", "457 Mineral spirits");
        row(page, 128, "137 VOC, as supplied", "285 590 g/L", "360 < 50 g/L", "457 395 g/L");
        row(page, 141, "137 Chemistry", "285 Alkyl silane", "360 Silane/siloxane", "457 Oligomeric siloxane");
        row(page, 154, "137 Density, lb/gal", "285 6.9", "360 8.3", "457 6.6");
        row(page, 167, "137 Flash point", "285 58°F", "360 > 212°F", "457 106°F");
        SheetReading reading = readingOf("water_repellent", page.toArray(String[]::new));
        assertEquals("silane and siloxane of Ravelle Twin W; silane of Ravelle 40; siloxane of Ravelle SX", said(reading,
            "water_repellent.kind"));
    }

    @Test
    void aTitleRightAboveTheWordItemIsNoPartOfIt() throws Exception {
        List<String> page = page("text 18b Flashing tape", "rule 98 50 240", "rule 123 50 240", "at 54 100",
            "text 9b Rolls");
        row(page, 111, "54 Item", "120 Width", "200 Case");
        row(page, 122, "54 KT-04", "120 4 in. (102 mm)", "200 12");
        row(page, 133, "54 KT-06", "120 6 in. (152 mm)", "200 8");
        assertEquals("4 in of KT-04; 6 in of KT-06", said(printed("flexible_flashing", page), "flexible_flashing.width"));
    }

    @Test
    void theLettersOfHeightAndLengthTellWhichSideIsWhich() throws Exception {
        SheetReading reading = readingOf("veneer", "text 18b Thin brick", "at 54 110", "table ruled 18 130,130,130",
            "| | Mill Modular | Foundry Norman", "| Face (H × L) | 2-1/4 × 7-5/8 in. | 2-1/4 × 11-5/8 in.", "| Thickness | 1/2 in. "
                + "| 5/8 in.");
        assertEquals("11-5/8 in of Foundry Norman; 7-5/8 in of Mill Modular", said(reading, "veneer.longest"));
    }

    @Test
    void aSealantThatPassedWithoutAStainWasTested() throws Exception {
        SheetReading reading = readingOf("sealant", "text 18b Silicone sealant", "at 54 110", "table ruled 18 150,100,120",
            "| Property | Test | Result", "| Stain, porous stone | ASTM C1248 | Passes, no stain", "| Sag | ASTM C639 | 0 in.");
        assertEquals("yes by ASTM C1248", said(reading, "sealant.stain_tested"));
    }
}
