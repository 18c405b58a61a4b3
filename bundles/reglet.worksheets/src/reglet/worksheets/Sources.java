package reglet.worksheets;

import reglet.model.Basis;
import reglet.model.Known;

/**
 * Where formulas, factors and ranges come from, each named once. <em>Read</em> means read in a public source that gives the fact
 * (an adopted code, a published example, an open implementation), seldom the document itself.
 */
final class Sources {
    private static final String ASCE = "ASCE 7";
    private static final String NDS = "NDS for Wood Construction";
    private static final String HANDBOOK = "handbooks of building materials";

    static final Basis TRADE = new Basis("trade practice", "", "adhered veneer", Known.COMMON_PRACTICE);
    static final Basis GEOMETRY = new Basis("geometry", "", "", Known.COMMON_PRACTICE);
    static final Basis SANE = new Basis("this workbench", "", "values beyond this are taken for slips of the keyboard",
        Known.COMMON_PRACTICE);

    static final Basis MORTAR_DENSITY = new Basis(HANDBOOK, "", "cement mortar, 130 lb/ft³", Known.FROM_MEMORY);
    static final Basis ABSORPTION = new Basis(HANDBOOK, "",
        "water taken up by mortar and cement units; the test report of the product decides",
        Known.COMMON_PRACTICE);
    static final Basis UNIT_WEIGHT_2021 = new Basis("TMS 402", "2016", "12.3, adhered veneer: 15 psf", Known.FROM_MEMORY);
    static final Basis UNIT_WEIGHT_2024 = new Basis("TMS 402", "2022", "prescriptive adhered veneer: 30 psf, as a summary tells it",
        Known.FROM_MEMORY);
    static final Basis UNIT_THICKNESS = new Basis("TMS 402", "2016", "12.3, adhered veneer: 2-5/8 in", Known.FROM_MEMORY);

    static final Basis VELOCITY_PRESSURE = new Basis(ASCE, "2016", "26.10.2", Known.READ);
    static final Basis SPEEDS = new Basis(ASCE, "2016", "26.5, basic wind speeds", Known.FROM_MEMORY);
    static final Basis KZ_2016 = new Basis(ASCE, "2016", "Table 26.10-1; components and cladding in exposure B from 30 ft up", Known.READ);
    static final Basis KZ_2022 = new Basis(ASCE, "2022", "Table 26.10-1", Known.FROM_MEMORY);
    static final Basis KZT = new Basis(ASCE, "2016", "26.8", Known.FROM_MEMORY);
    static final Basis KE = new Basis(ASCE, "2016", "26.9", Known.FROM_MEMORY);
    static final Basis KD = new Basis(ASCE, "2016", "26.6, components and cladding 0.85", Known.READ);
    static final Basis KD_2022 = new Basis(ASCE, "2022", "Kd stands with the pressure, no longer in qh", Known.FROM_MEMORY);
    static final Basis GCP = new Basis(ASCE, "2016", "Figure 30.3-1: ends of the curves read, straight on the logarithmic axis from memory",
        Known.FROM_MEMORY);
    static final Basis GCP_HEIGHT = new Basis(ASCE, "2016", "Figure 30.3-1, buildings up to 60 ft", Known.READ);
    static final Basis GCP_SLOPE = new Basis(ASCE, "2016", "Figure 30.3-1, note on roof slopes up to 10°", Known.READ);
    static final Basis GCPI = new Basis(ASCE, "2016", "Table 26.13-1", Known.READ);
    static final Basis ZONE_WIDTH = new Basis(ASCE, "2016", "Figure 30.3-1, dimension a", Known.FROM_MEMORY);
    static final Basis CLADDING_PRESSURE = new Basis(ASCE, "2016", "30.3.2", Known.READ);
    static final Basis LEAST_PRESSURE = new Basis(ASCE, "2016", "30.2.2", Known.FROM_MEMORY);
    static final Basis WIND_ASD = new Basis(ASCE, "2016", "2.4.1, 0.6 W", Known.READ);

    static final Basis FP = new Basis(ASCE, "2016", "13.3.1", Known.FROM_MEMORY);
    static final Basis FP_VERTICAL = new Basis(ASCE, "2016", "13.3.1, vertical force", Known.FROM_MEMORY);
    static final Basis FP_FACTORS = new Basis(ASCE, "2016", "Table 13.5-1", Known.FROM_MEMORY);
    static final Basis IP = new Basis(ASCE, "2016", "13.1.3", Known.FROM_MEMORY);
    static final Basis SDS = new Basis(ASCE, "2016", "11.4, mapped accelerations", Known.FROM_MEMORY);
    static final Basis SEISMIC_ASD = new Basis(ASCE, "2016", "2.4.5, 0.7 E", Known.FROM_MEMORY);

    static final Basis WITHDRAWAL_NAIL = new Basis(NDS, "2018", "12.2, nails: 1380 G^2.5 D", Known.FROM_MEMORY);
    static final Basis WITHDRAWAL_SCREW = new Basis(NDS, "2018", "12.2, wood screws: 2850 G² D", Known.READ);
    static final Basis WITHDRAWAL_STAPLE = new Basis("evaluation reports", "", "a staple as two nail legs of its wire's diameter",
        Known.FROM_MEMORY);
    static final Basis DOWEL_BEARING = new Basis(NDS, "2018", "12.3, under 1/4 in: 16600 G^1.84, to the nearest 50 psi", Known.FROM_MEMORY);
    static final Basis BENDING_YIELD = new Basis(NDS, "2018", "Appendix I, common nails", Known.FROM_MEMORY);
    static final Basis KD_DOWEL = new Basis(NDS, "2018", "Table 12.3.1B", Known.READ);
    static final Basis DIAMETER = new Basis(NDS, "2018", "12.3, these bearing strengths and reduction terms hold under 1/4 in", Known.READ);
    static final Basis PENETRATION = new Basis(NDS, "2018", "12.1, at least 6 D into the framing", Known.READ);
    static final Basis POINT = new Basis(NDS, "2018", "12.3, under 10 D the point (2 D) doesn't bear", Known.READ);
    static final Basis GRAVITIES = new Basis(NDS, "2018", "specific gravities by species", Known.READ);
    static final Basis DEAD_DURATION = new Basis(NDS, "2018", "2.3.2, permanent load 0.9", Known.FROM_MEMORY);
    static final Basis SHORT_DURATION = new Basis(NDS, "2018", "2.3.2, wind and earthquake 1.6", Known.READ);
    static final Basis COMBINED = new Basis(NDS, "2018", "12.4, nails: the two shares add up to no more than one", Known.FROM_MEMORY);
    static final Basis TR12 = new Basis("AWC TR12", "2015", "Table 1-1, general dowel equations with a gap", Known.FROM_MEMORY);
    static final Basis FREE_HEAD = new Basis("mechanics", "",
        "TR12's model with a side member that holds the head in place but not upright; conservative "
        + "judgement for lath", Known.COMMON_PRACTICE);
    static final Basis COAT_BEARING = new Basis("judgement", "", "no bearing value of lath in mortar was found; softwood's is taken",
        Known.COMMON_PRACTICE);
    static final Basis SLIP = new Basis("IRC", "2018", "R703.15: the factor 1.5 on the yield value holds short-term slip near 0.015 in",
        Known.FROM_MEMORY);
    static final Basis FOAM = new Basis("IRC", "2018", "Table R703.15.1, foam up to 4 in, nails 1-1/4 in into the framing",
        Known.FROM_MEMORY);
    static final Basis FRAMING_SPACING = new Basis("IRC", "2021", "R703.7.1, framing up to 24 in", Known.READ);
    static final Basis LATH_SPACING_2018 = new Basis("IRC", "2018", "R703.7.1, 6 in along the framing", Known.READ);
    static final Basis LATH_SPACING = new Basis("IRC", "2021", "R703.7.1, 7 in along the framing", Known.READ);
    static final Basis LATH_PENETRATION = new Basis("ASTM C1063", "2021", "fasteners 3/4 in into wood", Known.FROM_MEMORY);
    static final Basis STEEL_PULL_OUT = new Basis("AISI S100", "2016", "J4.4.1, screw pull-out 0.85 t d Fu, safety factor 3",
        Known.FROM_MEMORY);
    static final Basis STEEL_SHEET = new Basis("AISI S240", "2015", "design thicknesses of 33 to 68 mil sheet", Known.FROM_MEMORY);
    static final Basis STEEL_STRENGTH = new Basis("ASTM A1003", "2015", "tensile strength 45 ksi (grade 33) and 65 ksi (grade 50)",
        Known.FROM_MEMORY);

    static final Basis JOINT_WIDTH = new Basis("university course notes", "2004", "width of a sealant joint, in the form of ASTM C1472",
        Known.READ);
    static final Basis TWO_SIDED = new Basis("university course notes", "2007",
        "worked solution: opening and closing from the temperature of installation",
        Known.READ);
    static final Basis EXPANSION = new Basis(HANDBOOK, "",
        "cement plaster and cement units 5 to 6, clay brick 3.6, aluminium 12.8 millionths per °F",
        Known.FROM_MEMORY);
    static final Basis SURFACE_TEMPERATURES = new Basis("architectural detailing text", "",
        "130 °F apart where nothing is known, up to 180 °F on dark walls", Known.READ);
    static final Basis SHRINKAGE = new Basis("ASTM C1670", "2020", "drying shrinkage up to 0.09 %", Known.FROM_MEMORY);
    static final Basis SEALANT_CLASS = new Basis("ASTM C920", "2018", "classes", Known.FROM_MEMORY);
    static final Basis SEALANT_SHAPE = new Basis("architectural detailing text", "",
        "at least 1/4 in wide; depth half the width, 1/4 to 1/2 in", Known.READ);
    static final Basis ROD = new Basis("ASTM C1330", "2018", "closed-cell rod 25 to 33 % over the joint; usual sizes of the trade",
        Known.COMMON_PRACTICE);
    static final Basis CARTRIDGE = new Basis("geometry", "", "volume over section", Known.READ);

    static final Basis JOINTS_DUE = new Basis("trade practice", "",
        "joints go through the veneer at backing joints, floor lines, deflection tracks, changes of "
        + "substrate and where the designer lays them out; finish-plaster grids are not veneer rules", Known.COMMON_PRACTICE);

    static final Basis CORNERS = new Basis("suppliers' estimating guides", "", "0.75 ft² a foot of corner; some take 0.5", Known.READ);
    static final Basis UNIT_WASTE = new Basis("suppliers' estimating guides", "", "10 % jointed, more for tight-fit or natural stone",
        Known.READ);
    static final Basis LAPS = new Basis("trade practice", "", "5 to 10 % for laps and cuts", Known.COMMON_PRACTICE);
    static final Basis BARRIER_LAP = new Basis("IRC", "2018", "R703.2, 2 in at horizontal laps", Known.READ);
    static final Basis LATH_SHEET = new Basis("builders' manual", "", "diamond mesh sheets 27 by 96 in", Known.READ);
    static final Basis LATH_LAP = new Basis("ASTM C1063", "2021", "laps 1 in at sides and ends", Known.FROM_MEMORY);
    static final Basis CORNER_WRAP = new Basis("ASTM C1780", "2020", "lath and barrier go round corners, usually 16 in", Known.FROM_MEMORY);
    static final Basis BAG = new Basis("mortar bags", "", "an 80 lb bag fills about 0.66 ft³; the label decides", Known.FROM_MEMORY);
    static final Basis COATS = new Basis("trade practice", "", "scratch coat and setting bed 1/2 in each", Known.READ);

    private Sources() {
    }
}
