package reglet.model;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The units that the trade writes. Each names its UCUM code; the conversion itself is the units library's
 * ({@link Ucum}), so no factor is typed here.
 */
public enum Unit {
    IN("in", "[in_i]", Dimension.LENGTH, UnitSystem.INCH_POUND, "in.", "inch", "inches", "\""),
    FT("ft", "[ft_i]", Dimension.LENGTH, UnitSystem.INCH_POUND, "ft.", "foot", "feet", "lf", "'"),
    YD("yd", "[yd_i]", Dimension.LENGTH, UnitSystem.INCH_POUND, "yard", "yards"),
    MIL("mil", "[mil_i]", Dimension.LENGTH, UnitSystem.INCH_POUND, "mils"),
    MM("mm", "mm", Dimension.LENGTH, UnitSystem.SI, "millimetre", "millimeter", "millimetres", "millimeters"),
    CM("cm", "cm", Dimension.LENGTH, UnitSystem.SI),
    M("m", "m", Dimension.LENGTH, UnitSystem.SI, "metre", "meter", "metres", "meters"),
    UM("µm", "um", Dimension.LENGTH, UnitSystem.SI, "um", "micron", "microns", "μm"),
    IN2("in²", "[in_i]2", Dimension.AREA, UnitSystem.INCH_POUND, "in2", "sq in", "sq. in.", "square inches"),
    FT2("ft²", "[ft_i]2", Dimension.AREA, UnitSystem.INCH_POUND, "ft2", "sf", "sq ft", "sq. ft.", "square feet"),
    MM2("mm²", "mm2", Dimension.AREA, UnitSystem.SI, "mm2"),
    M2("m²", "m2", Dimension.AREA, UnitSystem.SI, "m2", "sq m"),
    FT3("ft³", "[ft_i]3", Dimension.VOLUME, UnitSystem.INCH_POUND, "ft3", "cu ft"),
    FLOZ("fl oz", "[foz_us]", Dimension.VOLUME, UnitSystem.INCH_POUND, "floz", "fl. oz.", "fluid oz"),
    GAL("gal", "[gal_us]", Dimension.VOLUME, UnitSystem.INCH_POUND, "gallon", "gallons"),
    M3("m³", "m3", Dimension.VOLUME, UnitSystem.SI, "m3"),
    L("L", "L", Dimension.VOLUME, UnitSystem.SI, "l", "litre", "liter"),
    ML("mL", "mL", Dimension.VOLUME, UnitSystem.SI, "ml"),
    LB("lb", "[lb_av]", Dimension.MASS, UnitSystem.INCH_POUND, "lbs", "lb.", "pound", "pounds"),
    KG("kg", "kg", Dimension.MASS, UnitSystem.SI),
    G("g", "g", Dimension.MASS, UnitSystem.SI),
    LB_YD2("lb/yd²", "[lb_av]/[yd_i]2", Dimension.AREAL_MASS, UnitSystem.INCH_POUND,
        "lb/yd2", "lb/sq yd", "lb/sq. yd.", "lbs/yd2", "lbs/sq yd", "lb/sy", "lbs/yd²", "lb per sq yd", "psy"),
    LB_FT2("lb/ft²", "[lb_av]/[ft_i]2", Dimension.AREAL_MASS, UnitSystem.INCH_POUND,
        "lb/ft2", "lb/sq ft", "lb/sq. ft.", "lbs/ft2", "lbs/sq ft", "lb/sf", "lbs/ft²", "lb per sq ft"),
    OZ_YD2("oz/yd²", "[oz_av]/[yd_i]2", Dimension.AREAL_MASS, UnitSystem.INCH_POUND, "oz/yd2", "oz/sq yd", "oz/sq. yd.", "oz/sy"),
    LB_100FT2("lb/100 ft²", "[lb_av]/(100.[ft_i]2)", Dimension.AREAL_MASS, UnitSystem.INCH_POUND, "lb/100 ft2", "lb/100 sq ft",
        "lb/square"),
    KG_M2("kg/m²", "kg/m2", Dimension.AREAL_MASS, UnitSystem.SI, "kg/m2"),
    G_M2("g/m²", "g/m2", Dimension.AREAL_MASS, UnitSystem.SI, "g/m2", "gsm"),
    LB_FT3("lb/ft³", "[lb_av]/[ft_i]3", Dimension.DENSITY, UnitSystem.INCH_POUND, "lb/ft3", "pcf", "lb/cu ft"),
    KG_M3("kg/m³", "kg/m3", Dimension.DENSITY, UnitSystem.SI, "kg/m3"),
    LBF("lbf", "[lbf_av]", Dimension.FORCE, UnitSystem.INCH_POUND),
    N("N", "N", Dimension.FORCE, UnitSystem.SI),
    LBF_IN("lbf/in", "[lbf_av]/[in_i]", Dimension.LINE_FORCE, UnitSystem.INCH_POUND, "lb/in", "pli", "lbf/in."),
    N_M("N/m", "N/m", Dimension.LINE_FORCE, UnitSystem.SI),
    N_MM("N/mm", "N/mm", Dimension.LINE_FORCE, UnitSystem.SI),
    PSF("psf", "[lbf_av]/[ft_i]2", Dimension.PRESSURE, UnitSystem.INCH_POUND, "lbf/ft2", "lbf/ft²"),
    PSI("psi", "[psi]", Dimension.PRESSURE, UnitSystem.INCH_POUND, "lbf/in2", "lbf/in²", "lb/in2"),
    INHG("in Hg", "[in_i'Hg]", Dimension.PRESSURE, UnitSystem.INCH_POUND, "inHg"),
    PA("Pa", "Pa", Dimension.PRESSURE, UnitSystem.SI),
    KPA("kPa", "kPa", Dimension.PRESSURE, UnitSystem.SI),
    MPA("MPa", "MPa", Dimension.PRESSURE, UnitSystem.SI, "N/mm2", "N/mm²"),
    S("s", "s", Dimension.TIME, null, "sec", "second", "seconds"),
    MIN("min", "min", Dimension.TIME, null, "minute", "minutes", "min."),
    H("h", "h", Dimension.TIME, null, "hr", "hour", "hours", "hrs"),
    DAY("d", "d", Dimension.TIME, null, "day", "days"),
    MONTH("months", "mo", Dimension.TIME, null, "month", "mo"),
    YEAR("years", "a", Dimension.TIME, null, "year", "yr", "yrs"),
    DEG_F("°F", "[degF]", Dimension.TEMPERATURE, UnitSystem.INCH_POUND, "degF", "deg F", "F"),
    DEG_C("°C", "Cel", Dimension.TEMPERATURE, UnitSystem.SI, "degC", "deg C", "C"),
    K("K", "K", Dimension.TEMPERATURE, UnitSystem.SI),
    MPH("mph", "[mi_i]/h", Dimension.SPEED, UnitSystem.INCH_POUND, "mi/h"),
    M_S("m/s", "m/s", Dimension.SPEED, UnitSystem.SI),
    PERM("perm", "[gr]/(h.[ft_i]2.[in_i'Hg])", Dimension.PERMEANCE, UnitSystem.INCH_POUND, "perms", "US perm", "us perms",
        "grains/h·ft²·in Hg"),
    NG_PASM2("ng/(Pa·s·m²)", "ng/(s.m2.Pa)", Dimension.PERMEANCE, UnitSystem.SI,
        "ng/Pa·s·m²", "ng/(s·m²·Pa)", "ng/Pa s m2", "ng/(pa.s.m2)", "metric perm", "ng/s·m²·pa"),
    CFM_FT2("cfm/ft²", "[ft_i]3/(min.[ft_i]2)", Dimension.AREAL_FLOW, UnitSystem.INCH_POUND, "cfm/ft2", "cfm/sq ft"),
    L_SM2("L/(s·m²)", "L/(s.m2)", Dimension.AREAL_FLOW, UnitSystem.SI, "L/s·m²", "l/s/m2", "l/(s.m2)"),
    // The units library knows no degree Rankine; 9/5 of a kelvin's share is exactly that of a degree Fahrenheit.
    PPM_F("×10⁻⁶/°F", "9.[ppm]/(5.K)", Dimension.THERMAL_EXPANSION, UnitSystem.INCH_POUND,
        "e-6/°F", "e-6/F", "e-6 1/°F", "e-6 in/in/°F", "e-6 in/in/F", "x10-6/F", "x10^-6/°F", "×10-6/°F", "×10^-6/°F", "ppm/°F"),
    PPM_C("×10⁻⁶/°C", "[ppm]/K", Dimension.THERMAL_EXPANSION, UnitSystem.SI,
        "e-6/°C", "e-6/C", "e-6/K", "e-6 1/K", "e-6 mm/mm/°C", "x10-6/C", "x10^-6/°C", "×10-6/°C", "×10⁻⁶/K", "×10-6/K", "ppm/°C", "ppm/K"),
    PERCENT("%", "%", Dimension.RATIO, null, "percent", "per cent", "pct"),
    ONE("", "1", Dimension.COUNT, null);

    private final String symbol;
    private final String ucum;
    private final Dimension dimension;
    private final UnitSystem system;
    private final List<String> spellings;

    Unit(String symbol, String ucum, Dimension dimension, UnitSystem system, String... spellings) {
        this.symbol = symbol;
        this.ucum = ucum;
        this.dimension = dimension;
        this.system = system;
        this.spellings = List.of(spellings);
    }

    /** As printed: "lb/yd²". */
    public String symbol() {
        return symbol;
    }

    /** UCUM code: "[lb_av]/[yd_i]2". */
    public String ucum() {
        return ucum;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** The system of units it belongs to; empty for units that both systems use (minutes, per cent). */
    public Optional<UnitSystem> system() {
        return Optional.ofNullable(system);
    }

    /** The spellings by which it is known besides its symbol. */
    public List<String> spellings() {
        return spellings;
    }

    /** A number of this unit in the SI unit of its dimension. */
    public double toSi(double amount) {
        return Ucum.toSi(this, amount);
    }

    /** A number in the SI unit of its dimension as a number of this unit. */
    public double fromSi(double si) {
        return Ucum.fromSi(this, si);
    }

    /** The unit that a spelling means, in any case and with any spaces around it; the exact case wins (MPa, mPa). */
    public static Optional<Unit> of(String written) {
        String word = written.strip();
        for (Unit unit : values()) {
            if (unit.symbol.equals(word) || unit.spellings.contains(word)) {
                return Optional.of(unit);
            }
        }
        String lower = word.toLowerCase(Locale.ROOT);
        for (Unit unit : values()) {
            if (unit.symbol.toLowerCase(Locale.ROOT).equals(lower)
                || unit.spellings.stream().anyMatch(spelling -> spelling.toLowerCase(Locale.ROOT).equals(lower))) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /**
     * The unit of the other system beside this one, of a thing that is usually given in a certain unit: that one where it is of the
     * other system, so that a lath of 1.36 kg/m² is one of 2.5 lb/yd², and not of 0.28 lb/ft².
     */
    public Optional<Unit> other(Optional<Unit> usual) {
        return other().map(other -> usual.filter(unit -> unit.dimension == dimension && unit.system == other.system).orElse(other));
    }

    /** The unit of the other system in which this one is shown in parentheses; empty where both systems use it. */
    public Optional<Unit> other() {
        return Optional.ofNullable(switch (this) {
            case IN, YD -> MM;
            case FT -> M;
            case MIL -> MM;
            case MM, CM -> IN;
            case M -> FT;
            case UM -> MIL;
            case IN2 -> MM2;
            case FT2 -> M2;
            case MM2 -> IN2;
            case M2 -> FT2;
            case FT3 -> M3;
            case FLOZ -> ML;
            case GAL -> L;
            case M3 -> FT3;
            case L -> GAL;
            case ML -> FLOZ;
            case LB -> KG;
            case KG, G -> LB;
            case LB_YD2, LB_FT2, LB_100FT2 -> KG_M2;
            case OZ_YD2 -> G_M2;
            case KG_M2 -> LB_FT2;
            case G_M2 -> OZ_YD2;
            case LB_FT3 -> KG_M3;
            case KG_M3 -> LB_FT3;
            case LBF -> N;
            case N -> LBF;
            case LBF_IN -> N_MM;
            case N_M, N_MM -> LBF_IN;
            case PSF, INHG -> PA;
            case PSI -> MPA;
            case PA -> PSF;
            case KPA, MPA -> PSI;
            case DEG_F -> DEG_C;
            case DEG_C, K -> DEG_F;
            case MPH -> M_S;
            case M_S -> MPH;
            case PERM -> NG_PASM2;
            case NG_PASM2 -> PERM;
            case CFM_FT2 -> L_SM2;
            case L_SM2 -> CFM_FT2;
            case PPM_F -> PPM_C;
            case PPM_C -> PPM_F;
            case S, MIN, H, DAY, MONTH, YEAR, PERCENT, ONE -> null;
        });
    }
}
