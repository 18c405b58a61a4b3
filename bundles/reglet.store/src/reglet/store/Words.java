package reglet.store;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

import reglet.model.Compare;
import reglet.model.DayCount;
import reglet.model.Evidence;
import reglet.model.Finding;
import reglet.model.Known;
import reglet.model.Office;
import reglet.model.RegisterFile;
import reglet.model.RegisterItem;
import reglet.model.Rule;
import reglet.model.Scope;
import reglet.model.SectionPlan.Made;
import reglet.model.Table;

/** The fixed words of the file formats and what they mean. */
final class Words {
    static final Map<String, Compare> COMPARE = by(Compare.values(), Compare::text);
    static final Map<String, Evidence> EVIDENCE = by(Evidence.values(), Evidence::text);
    static final Map<String, Known> KNOWN = by(Known.values(), Known::text);
    static final Map<String, RegisterItem.Kind> REGISTER = by(RegisterItem.Kind.values(), RegisterItem.Kind::text);
    static final Map<String, RegisterItem.Sort> SORT = by(Arrays.copyOfRange(RegisterItem.Sort.values(), 1,
        RegisterItem.Sort.values().length), RegisterItem.Sort::text);
    static final Map<String, RegisterFile.Scheme> SCHEMES = by(RegisterFile.Scheme.values(), RegisterFile.Scheme::text);
    static final Map<String, RegisterFile.Meaning> MEANINGS = by(RegisterFile.Meaning.values(), RegisterFile.Meaning::text);
    static final Map<String, DayCount.Kind> DAYS = by(DayCount.Kind.values(), DayCount.Kind::text);
    static final Map<String, Office.Paper> PAPERS = by(Office.Paper.values(), paper -> paper == Office.Paper.A4 ? "A4" : "letter");
    static final Map<String, Office.Face> FACES = by(Office.Face.values(), face -> face.name().toLowerCase(Locale.ROOT));
    static final Map<String, Scope> SUBJECT_SCOPE = by(new Scope[] {Scope.JOB, Scope.WALL, Scope.MEETING}, Scope::text);
    static final Map<String, Scope> RULE_SCOPE = by(Scope.values(), Scope::text);
    static final Map<String, Rule.Result> RESULTS = by(Rule.Result.values(), Rule.Result::text);
    static final Map<String, Finding.Kind> RULE_KINDS = by(new Finding.Kind[] {Finding.Kind.CONFLICT, Finding.Kind.CAUTION},
        Finding.Kind::text);
    static final Map<String, Table.Match> MATCHES = Map.of("exactly", Table.Match.EXACTLY, "up to", Table.Match.UP_TO, "from",
        Table.Match.FROM);
    static final Map<String, Made> MADE = Map.of("references", Made.REFERENCES, "action submittals", Made.ACTION_SUBMITTALS,
        "informational submittals", Made.INFORMATIONAL_SUBMITTALS, "closeout submittals", Made.CLOSEOUT_SUBMITTALS,
        "related sections", Made.RELATED_SECTIONS, "alternates", Made.ALTERNATES, "allowances", Made.ALLOWANCES, "unit prices",
        Made.UNIT_PRICES);

    private Words() {
    }

    private static <T> Map<String, T> by(T[] values, Function<T, String> word) {
        Map<String, T> words = new LinkedHashMap<>();
        for (T value : values) {
            words.put(word.apply(value), value);
        }
        return words;
    }
}
