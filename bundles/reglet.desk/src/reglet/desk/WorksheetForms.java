package reglet.desk;

import java.util.List;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import reglet.model.JobWorksheets;
import reglet.model.JobWorksheets.Undone;
import reglet.model.UnusableInput;
import reglet.model.Worksheet;
import reglet.worksheets.InputSpec;
import reglet.worksheets.Worksheets;

/** Worksheets as the commands print them for programs; as {@link Forms} has it. */
public final class WorksheetForms {

    private WorksheetForms() {
    }

    /** The worksheets of a job; those that can't be made stand under "undone", which is left out when there are none. */
    public static JsonObject worksheets(JobWorksheets worksheets) {
        JsonObject form = worksheets(worksheets.made());
        if (!worksheets.undone().isEmpty()) {
            JsonArray undone = new JsonArray();
            worksheets.undone().forEach(one -> undone.add(undone(one)));
            form.add("undone", undone);
        }
        return form;
    }

    /** Worksheets run alone. */
    public static JsonObject worksheets(List<Worksheet> worksheets) {
        JsonArray all = new JsonArray();
        worksheets.forEach(worksheet -> all.add(worksheet(worksheet)));
        JsonObject form = new JsonObject();
        form.add("worksheets", all);
        return form;
    }

    private static JsonObject worksheet(Worksheet worksheet) {
        JsonObject form = new JsonObject();
        form.addProperty("name", worksheet.name());
        form.addProperty("title", worksheet.title());
        Forms.word(form, "wall", worksheet.wall());
        Forms.word(form, "meeting", worksheet.meeting());
        JsonObject inputs = new JsonObject();
        worksheet.inputs().forEach((key, input) -> {
            JsonObject one = new JsonObject();
            one.addProperty("label", input.label());
            Forms.value(one, input.value());
            one.addProperty("from", input.from());
            inputs.add(key, one);
        });
        form.add("inputs", inputs);
        JsonArray steps = new JsonArray();
        for (Worksheet.Step step : worksheet.steps()) {
            JsonObject one = new JsonObject();
            one.addProperty("symbol", step.symbol());
            one.addProperty("label", step.label());
            one.addProperty("formula", step.formula());
            one.addProperty("substitution", step.substitution());
            amount(one, step.value());
            one.add("basis", Forms.bases(step.basis()));
            steps.add(one);
        }
        form.add("steps", steps);
        JsonObject results = new JsonObject();
        worksheet.results().forEach((key, amount) -> {
            JsonObject one = new JsonObject();
            one.addProperty("label", amount.label());
            amount(one, amount);
            results.add(key, one);
        });
        form.add("results", results);
        worksheet.margin().ifPresent(margin -> form.addProperty("margin", margin));
        form.add("assumed", Forms.strings(worksheet.assumed()));
        form.add("warnings", Forms.strings(worksheet.warnings()));
        return form;
    }

    private static void amount(JsonObject form, Worksheet.Amount amount) {
        form.addProperty("value", amount.si());
        form.addProperty("unit", amount.unit().dimension().si());
        form.addProperty("text", amount.quantity().text());
    }

    private static JsonObject undone(Undone undone) {
        JsonObject form = new JsonObject();
        form.addProperty("name", undone.name());
        form.addProperty("title", undone.title());
        form.addProperty("wall", undone.wall());
        Forms.word(form, "meeting", undone.meeting());
        form.add("missing", Forms.strings(undone.missing()));
        Forms.word(form, "why", undone.why());
        return form;
    }

    /** What a worksheet asks for. Ends of ranges are in SI, as all numbers. */
    public static JsonObject inputs(String name) throws UnusableInput {
        JsonObject form = new JsonObject();
        form.addProperty("worksheet", name);
        JsonArray all = new JsonArray();
        for (InputSpec input : Worksheets.describe(name)) {
            JsonObject one = new JsonObject();
            one.addProperty("key", input.key());
            one.addProperty("label", input.label());
            one.addProperty("kind", input.kind().text());
            input.unit().ifPresent(unit -> {
                one.addProperty("unit", unit.dimension().si());
                one.addProperty("written in", unit.symbol());
            });
            if (!input.words().isEmpty()) {
                one.add("words", Forms.strings(input.words()));
            }
            input.range().ifPresent(range -> {
                one.addProperty("low", input.unit().orElseThrow().toSi(range.low()));
                one.addProperty("high", input.unit().orElseThrow().toSi(range.high()));
                one.addProperty("range", input.rangeText());
                one.add("basis", Forms.bases(List.of(range.basis())));
            });
            Forms.word(one, "usual", input.usual());
            one.addProperty("required", input.required());
            Forms.word(one, "help", input.help());
            all.add(one);
        }
        form.add("inputs", all);
        return form;
    }

    /** The names there are. */
    public static JsonObject names(List<String> names) {
        JsonObject form = new JsonObject();
        form.add("names", Forms.strings(names));
        return form;
    }
}
