package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import reglet.model.SheetReading;

/** What belongs to one row or heading of a table, and what doesn't, on small drawn sheets. */
class RowsOfSheetsTest extends SmallSheets {
    /** The methods that the values are shown by. */
    private static String methods(SheetReading reading) {
        return reading.values().stream().filter(found -> !found.value().property().matches(".*\\.(?:kind|base)")).map(found -> found.value()
            .property() + " by " + found.value().method()).sorted().collect(Collectors.joining("; "));
    }

    @Test
    void wordsAboveEachModelAreOfItsName() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Penetrating water repellents"));
        row(page, 110, "308 Ortwin", "400 Ortwin");
        row(page, 122, "72 Property", "318 S20", "410 X10");
        row(page, 136, "72 Active ingredient", "314 silane", "402 siloxane");
        row(page, 148, "72 Reduction of water absorption (ASTM C67)", "314 84 %", "404 88 %");
        assertEquals("water_repellent.uptake 84% of Ortwin S20; water_repellent.uptake 88% of Ortwin X10", read(page));
    }

    @Test
    void theTitleOfATableIsNoLabelOfTheBoxThatEndsBesideIt() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Drainage mat"));
        row(page, 238, "391 CSI section");
        row(page, 250, "391 07 25 00");
        row(page, 261, "54 Typical properties");
        row(page, 290, "54 Thickness, nominal (ASTM D5199)", "480 0.40 in.");
        row(page, 311, "54 Drainage efficiency (ASTM E2273)", "480 97.4 %");
        row(page, 332, "54 Compressive resistance (ASTM D6364)", "480 720 psf");
        assertEquals("mat.compressive 720 psf; mat.drainage_efficiency 97.4%; mat.thickness 0.40 in", read(page));
    }

    @Test
    void wordsThatNamePropertiesBelowModelsAreARowAndNoHeading() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Expanded metal lath"));
        row(page, 110, "250 DM-25", "370 DM-34", "480 DM-40");
        row(page, 128, "66 Weight, lb/yd²", "255 2.5", "375 3.4", "485 3.4");
        row(page, 146, "66 Profile", "223 Self-furring, dimpled", "338 Self-furring, dimpled", "452 Flat (not self-furring)");
        row(page, 164, "66 Depth of furring dimple", "252 1/4 in.", "367 1/4 in.", "486 N/A");
        assertEquals("lath.furring 1/4 in of DM-25; lath.furring 1/4 in of DM-34; lath.self_furring no of DM-40; lath.self_furring yes of "
            + "DM-25; lath.self_furring yes of DM-34; lath.weight 2.5 lb/yd² of DM-25; lath.weight 3.4 lb/yd² of DM-34; "
            + "lath.weight 3.4 lb/yd² of DM-40", read(page));
    }

    @Test
    void aMethodThatStandsFirstHoldsForTheRowsBelowThatHaveNone() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Silicone joint sealant"));
        row(page, 110, "54 Test method", "150 Property", "350 Value");
        row(page, 124, "54 ASTM C920", "150 Type", "350 S");
        row(page, 138, "150 Grade", "350 NS");
        row(page, 152, "150 Class", "350 50");
        row(page, 166, "54 ASTM C794", "150 Adhesion in peel", "350 28 lb/in.");
        row(page, 180, "54 -", "150 Application temperature", "350 20 to 120 °F");
        assertEquals("sealant.class by ASTM C920; sealant.peel by ASTM C794; sealant.placing by ; sealant.sag by ASTM C920; "
            + "sealant.type by ASTM C920", methods(reading(page.toArray(String[]::new))));
    }

    @Test
    void howSomethingWasFoundAndWhoFoundItAreNoMethods() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Manufactured stone veneer"));
        row(page, 110, "54 Test method", "180 Property", "400 Result");
        row(page, 124, "54 Measured", "180 Greatest face dimension", "400 19.5 in.");
        row(page, 138, "54 In-house", "180 Greatest face area", "400 112 in²");
        row(page, 152, "54 ASTM C140", "180 Average thickness", "400 1.75 in.");
        assertEquals("veneer.face by ; veneer.longest by ; veneer.thickness by ASTM C140", methods(reading(page.toArray(String[]::new))));
    }

    @Test
    void whatANoteSaysOfAllPartsIsNotSaidOfTheFigureThatItIsMarkedAt() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Wafer-head screws for metal lath"));
        row(page, 110, "54 Part no.", "150 Length", "250 Shank dia.", "350 Root dia.*");
        row(page, 124, "54 LG-125", "150 1-1/4 in.", "250 0.138 in.", "350 0.099 in.");
        row(page, 138, "54 LG-200", "150 2 in.", "250 0.151 in.", "350 0.110 in.");
        row(page, 158, "54 * Diameter at the root of the thread. All parts: polymer coating, 1,000 h of salt spray (ASTM B117).");
        assertEquals("lath_fastener.root by ; lath_fastener.root by ", methods(reading(page.toArray(String[]::new))).replaceAll(
            "lath_fastener\\.(?!root)\\w+ by [^;]*(?:; )?", "").replaceAll("; $", ""));
    }

    @Test
    void linesInOneBoxAreRowsWhereSomeOfThemStateAnAmount() throws Exception {
        assertEquals("sealant.base silicone; sealant.class 50; sealant.sag NS; sealant.type S", read(List.of("text 18b Silicone joint sealant", "at 54 110",
            "table ruled 66 200,200", "| Type / Grade / Class / Hardness | S / NS / 50 / 22")));
    }

    @Test
    void theAverageCountsMoreThanTheLowestUnit() throws Exception {
        SheetReading reading = reading("text 18b Manufactured stone veneer", "at 54 110", "table ruled 19 250,150,120",
            "| Property | Test method | Result", "| Compressive strength, lowest unit | ASTM C1670 | 2510 psi",
            "| Compressive strength, avg. of 5 | ASTM C1670 | 2860 psi");
        assertEquals("2860 psi", reading.values().stream().filter(found -> found.value().property().equals("veneer.strength"))
            .map(found -> found.value().value().text()).collect(Collectors.joining(", ")));
    }

    @Test
    void rowsSetApartMayRunOverTwoLines() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Fluid-applied water-resistive barrier"));
        row(page, 110, "54 Property", "170 Test method", "290 Requirement", "400 Typical result");
        row(page, 136, "54 Air permeance at", "170 ASTM E2178", "290 ≤ 0.004 cfm/", "400 0.0012");
        row(page, 147, "54 75 Pa", "290 ft²", "400 cfm/ft²");
        row(page, 165, "54 Air leakage of", "170 ASTM E2357", "290 ≤ 0.04 cfm/ft²", "400 Pass");
        row(page, 176, "54 assembly");
        row(page, 194, "54 Water vapor", "170 ASTM E96,", "290 Report", "400 11.6");
        row(page, 205, "54 permeance", "170 Procedure A", "400 perms");
        row(page, 223, "54 Elongation", "170 ASTM D412", "290 -", "400 310 %");
        assertEquals("inner_ply.air_leakage 0.0012 cfm/ft²; inner_ply.permeance 11.6 perm", read(page).replaceAll(
            "inner_ply\\.(?!air_leakage|permeance)\\w+ [^;]*(?:; )?", "").replaceAll("; $", ""));
    }

    @Test
    void anArticleIsAModelBesideOneOfItsProperties() throws Exception {
        assertEquals("flexible_flashing.width 100 mm of FB-100; flexible_flashing.width 150 mm of FB-150", read(List.of(
            "text 18b Self-adhered butyl flashing", "at 54 110", "table ruled 19 120,120,120,120",
            "| Article | Width | Roll length | Rolls per carton", "| FB-100 | 100 mm | 22.9 m | 12", "| FB-150 | 150 mm | 22.9 m | 8")));
    }

    @Test
    void strengthInBendingIsNoneInCompression() throws Exception {
        assertEquals("insulation.flame_spread 15", read(List.of("text 18b Extruded polystyrene insulation board", "at 54 110",
            "table ruled 19 200,120,120", "| Property | Method | Value", "| Flexural strength, psi | ASTM C203 | 60",
            "| Flame spread index | ASTM E84 | 15")));
    }

    @Test
    void aTableAtTheFootOfTwoColumnsIsReadAcrossBoth() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Silicone joint sealant"));
        String[] left = {"Seal 50 is a neutral-curing silicone for joints", "between stone, concrete units, metal and glass, which",
            "stays soft in winter, does not slump and leaves a", "matt skin. It keeps the pull on weak edges small and",
            "takes the movement of the joint on both of its sides.", "Keep it off bituminous tapes and from joints in floors."};
        String[] right = {"Faces must be clean and dry, and free of frost,", "when the joint is filled. Put in backing so that the",
            "seal sticks to two sides only, and tool it within ten", "minutes of gunning. Boxes are stored off the floor and",
            "away from heat. Each carries its lot and the day", "of its making on the label beside the bar code."};
        for (int i = 0; i < left.length; i++) {
            row(page, 110 + 12 * i, "51 " + left[i], "305 " + right[i]);
        }
        row(page, 200, "51 Property", "203 Test method", "305 Requirement", "412 Result");
        row(page, 216, "51 Type, grade, class", "203 ASTM C920", "305 -", "412 Type S, Grade NS, Class 50");
        row(page, 232, "51 Hardness, Shore A", "203 ASTM C661", "305 15 to 50", "412 22");
        row(page, 248, "51 Tack-free time", "203 ASTM C679", "305 ≤ 72 h", "412 1.5 h");
        row(page, 264, "51 Adhesion in peel, mortar", "203 ASTM C794", "305 ≥ 0.88 N/mm", "412 2.6 N/mm");
        row(page, 280, "51 Weight loss after heat", "203 ASTM C1246", "305 ≤ 7 %", "412 2.9 %");
        assertEquals("sealant.base silicone; sealant.class 50; sealant.peel 2.6 N/mm; sealant.sag NS; sealant.type S", read(page));
    }

    @Test
    void aHeadingIsCompletedByTheLineBelowWhereModelsAreCalledTheSame() throws Exception {
        List<String> page = new ArrayList<>(List.of("text 18b Drainage mat of entangled filaments"));
        row(page, 110, "48 Property", "220 Test", "330 Vellis", "410 Vellis");
        row(page, 121, "48 unit", "220 method", "330 6 T", "410 10 T");
        row(page, 142, "48 Thickness");
        row(page, 147, "220 ASTM E2925", "330 6.5", "410 10.2");
        row(page, 152, "48 mm");
        row(page, 173, "48 Drainage efficiency");
        row(page, 178, "220 ASTM E2273", "330 93.1", "410 96.4");
        row(page, 183, "48 %");
        assertEquals("mat.drainage_efficiency 93.1% of Vellis 6 T; mat.drainage_efficiency 96.4% of Vellis 10 T; "
            + "mat.thickness 10.2 mm of Vellis 10 T; mat.thickness 6.5 mm of Vellis 6 T", read(page));
    }

    @Test
    void theNameOfAProductComesBeforeItsNumber() throws Exception {
        assertEquals("top_vent.material PVC of Ventra P8; top_vent.material galvanized steel of Ventra G10; "
            + "top_vent.opening 10 mm of Ventra G10; top_vent.opening 8 mm of Ventra P8", readingOf("top_vent", "text 18b Ventilation profiles for "
                + "the top of stone veneer", "at 54 110", "table ruled 19 120,100,120,120", "| Profile | Article no. | Material | Slot width, free, mm",
                "| Ventra P8 | 4008 | PVC | 8", "| Ventra G10 | 4110 | galvanized steel | 10").values().stream().map(found -> found.value()
                    .property() + " " + found.value().value().text() + " of " + found.model()).sorted().collect(Collectors.joining("; ")));
    }

    @Test
    void standardsOfTheMetalsInOneRowOfATableEndItNot() throws Exception {
        assertEquals("metal_flashing.thickness 0.018 in of WS-S; metal_flashing.thickness 0.024 in of WS-G; metal_flashing.thickness "
            + "0.032 in of WS-A", read(List.of("text 18b Head flashing of sheet metal", "at 54 110", "table open 19 130,130,130,130",
                "| Property | WS-G | WS-S | WS-A", "| Sheet standard | ASTM A653 | ASTM A240, type 304 | ASTM B209, 3003-H14",
                "| Thickness, in. (mm) | 0.024 (0.61) | 0.018 (0.46) | 0.032 (0.81)")).replaceAll("metal_flashing.metal [^;]*; ", ""));
    }
}
