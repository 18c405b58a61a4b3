package reglet.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Calculation;
import reglet.model.Calculation.How;
import reglet.model.Calculation.Source;
import reglet.model.Compare;
import reglet.model.Evidence;
import reglet.model.Method;
import reglet.model.Property;
import reglet.model.Scope;

/** Reads the files that say which worksheets a pack asks for, and what their inputs are in a job. */
final class CalculationFiles {

    private CalculationFiles() {
    }

    static Calculation calculation(Cursor file) {
        Fields fields = file.fields("id", "worksheet", "title", "component", "order", "each", "subject", "when", "inputs", "if_known",
            "results");
        Scope each = fields.oneOf("each", Words.RULE_SCOPE, Scope.WALL);
        if (each != Scope.WALL && each != Scope.MEETING) {
            file.wrong("a worksheet is made for each " + each.text(), "expected wall or meeting");
        }
        Map<String, Source> inputs = new LinkedHashMap<>();
        fields.members("inputs").forEach((key, input) -> inputs.put(key, source(input, false)));
        fields.members("if_known").forEach((key, input) -> {
            if (inputs.put(key, source(input, true)) != null) {
                input.wrong("\"" + key + "\" stands under \"inputs\" too", "keep one of them");
            }
        });
        List<Property> results = new ArrayList<>();
        fields.members("results").forEach((key, result) -> result(key, result).ifPresent(results::add));
        return new Calculation(fields.text("id"), fields.text("worksheet"), fields.text("title"), fields.text("component", ""),
            fields.number("order", 0), each,
            RuleFiles.subject(fields, each), fields.text("when", ""), inputs, results, fields.at());
    }

    /** An expression; or a sum or list over the meetings of a subject. */
    private static Source source(Cursor cursor, boolean maybe) {
        if (!cursor.isMap()) {
            return new Source(How.VALUE, "", "", List.of(cursor.text()), maybe);
        }
        Fields fields = cursor.fields("sum", "list", "over", "when");
        boolean sum = fields.find("sum").isPresent();
        if (sum == fields.find("list").isPresent()) {
            cursor.wrong("says neither or both of \"sum\" and \"list\"", "give one: sum: an expression, or list: [expressions]");
        }
        return new Source(sum ? How.SUM : How.LIST, fields.text("over"), fields.text("when", ""),
            sum ? List.of(fields.text("sum")) : fields.texts("list"), maybe);
    }

    private static Optional<Property> result(String name, Cursor cursor) {
        Fields fields = cursor.fields("label", "unit");
        return Knowledge.type(cursor, fields).map(type -> new Property(name, fields.text("label"), type, Compare.EXACTLY, false,
            Method.NONE,
            Evidence.NONE, "", Optional.empty(), "", List.of(), cursor.at()));
    }
}
