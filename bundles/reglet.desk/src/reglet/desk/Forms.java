package reglet.desk;

import java.util.List;
import java.util.Map;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

import reglet.model.Basis;
import reglet.model.Checked;
import reglet.model.Comparison;
import reglet.model.Day;
import reglet.model.Explanation;
import reglet.model.Finding;
import reglet.model.Grade;
import reglet.model.Job;
import reglet.model.PaperRule;
import reglet.model.Place;
import reglet.model.Quantity;
import reglet.model.Range;
import reglet.model.RegisterItem;
import reglet.model.ReportCheck;
import reglet.model.Requirement;
import reglet.model.Rule;
import reglet.model.SheetValue;
import reglet.model.Value;
import reglet.model.Word;
import reglet.model.WordSet;

/**
 * What the commands print for programs. Numbers are in SI with the UCUM code of their unit beside them, {@code text} is what a
 * person wrote, order is stable, and what is unknown is absent. The schemas beside this class say the same and are tested.
 */
public final class Forms {
    private static final Gson GSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

    private Forms() {
    }

    /** JSON text with a line end. */
    public static String text(JsonElement form) {
        return GSON.toJson(form) + "\n";
    }

    /** The findings of a job. */
    public static JsonObject check(Job job, Checked checked) {
        JsonObject form = new JsonObject();
        form.addProperty("job", job.title());
        code(job, form);
        form.add("findings", findings(checked.findings()));
        form.add("accepted", findings(checked.accepted()));
        JsonObject rules = new JsonObject();
        rules.addProperty("in pack", checked.rules());
        JsonObject instances = new JsonObject();
        for (Rule.Result result : Rule.Result.values()) {
            instances.addProperty(result.text(), checked.instances().getOrDefault(result, 0));
        }
        rules.add("instances", instances);
        form.add("rules", rules);
        return form;
    }

    private static void code(Job job, JsonObject form) {
        JsonObject code = new JsonObject();
        job.fact("code", "name").ifPresent(name -> code.addProperty("name", name.text()));
        job.fact("code", "edition").ifPresent(edition -> code.addProperty("edition", edition.text()));
        if (code.size() > 0) {
            form.add("code", code);
        }
    }

    static JsonArray numbers(List<Integer> numbers) {
        JsonArray all = new JsonArray();
        numbers.forEach(all::add);
        return all;
    }

    static JsonArray findings(List<Finding> findings) {
        JsonArray all = new JsonArray();
        findings.forEach(finding -> all.add(finding(finding)));
        return all;
    }

    private static JsonObject finding(Finding finding) {
        JsonObject form = new JsonObject();
        form.addProperty("rule", finding.rule());
        form.addProperty("kind", finding.kind().text());
        form.addProperty("scope", finding.scope().text());
        word(form, "wall", finding.wall());
        word(form, "meeting", finding.meeting());
        word(form, "component", finding.component());
        if (!finding.alternates().isEmpty()) {
            form.add("alternates", numbers(finding.alternates()));
        }
        if (!finding.options().isEmpty()) {
            form.add("options", words(finding.options()));
        }
        form.add("at", place(finding.at()));
        form.addProperty("says", finding.says());
        word(form, "fix", finding.fix());
        form.add("facts", values(finding.facts()));
        form.add("missing", strings(finding.missing()));
        form.add("basis", bases(finding.basis()));
        form.add("remedies", new JsonArray());
        return form;
    }

    /** How a rule came out, once for each wall and meeting that it looks at. */
    public static JsonArray explanations(Rule rule, List<Explanation> explanations) {
        JsonArray all = new JsonArray();
        for (Explanation explanation : explanations) {
            JsonObject form = new JsonObject();
            form.addProperty("rule", explanation.rule());
            word(form, "wall", explanation.wall());
            word(form, "meeting", explanation.meeting());
            if (!explanation.options().isEmpty()) {
                form.add("options", words(explanation.options()));
            }
            explanation.when().ifPresent(when -> form.addProperty("when", when));
            form.add("facts", values(explanation.facts()));
            JsonObject let = new JsonObject();
            explanation.let().forEach((name, value) -> let.addProperty(name, value.text()));
            form.add("let", let);
            form.addProperty("result", explanation.result().text());
            form.add("missing", strings(explanation.missing()));
            word(form, "error", explanation.error());
            form.add("basis", bases(rule.basis()));
            all.add(form);
        }
        return all;
    }

    /** What a rule for papers found, in the same form: once for each finding, or once where it holds. */
    public static JsonArray explanations(PaperRule rule, List<Finding> paper) {
        JsonArray all = new JsonArray();
        List<String> found = paper.stream().filter(finding -> finding.rule().equals(rule.id())).map(Finding::says).toList();
        for (String says : found.isEmpty() ? List.of("") : found) {
            JsonObject form = new JsonObject();
            form.addProperty("rule", rule.id());
            form.addProperty("when", true);
            form.add("facts", new JsonObject());
            form.add("let", says.isEmpty() ? new JsonObject() : words(Map.of("found", says)));
            form.addProperty("result", (says.isEmpty() ? Rule.Result.HOLDS : Rule.Result.BREAKS).text());
            form.add("missing", new JsonArray());
            form.add("basis", bases(rule.basis()));
            all.add(form);
        }
        return all;
    }

    /** The register of a section. */
    public static JsonObject register(String section, List<RegisterItem> items) {
        JsonObject form = new JsonObject();
        form.addProperty("section", section);
        JsonArray all = new JsonArray();
        for (RegisterItem item : items) {
            JsonObject one = new JsonObject();
            one.addProperty("id", item.id());
            word(one, "paragraph", item.paragraph());
            one.addProperty("item", item.item());
            one.addProperty("kind", item.kind().text());
            word(one, "sort", item.sort().text());
            word(one, "code", item.code());
            one.addProperty("sends", item.sends());
            word(one, "sender", item.sender());
            one.addProperty("status", item.status());
            item.timing().ifPresent(timing -> {
                one.addProperty("submit by", timing.submitBy().toString());
                one.addProperty("on site", timing.onSite().toString());
                one.addProperty("lead", timing.lead());
                one.addProperty("review", timing.review());
                one.addProperty("days", timing.days().text());
            });
            item.under().ifPresent(under -> {
                one.add("alternates", numbers(under.numbers()));
                one.addProperty("alternate state", under.state().text());
            });
            if (!item.from().isEmpty()) {
                one.add("from", strings(item.from()));
            }
            word(one, "note", item.note());
            all.add(one);
        }
        form.add("items", all);
        return form;
    }

    /** A comparison, with the reports of its products where they have any. */
    public static JsonObject comparison(OpenJob job, Comparison comparison, List<ReportCheck> reports) {
        JsonObject form = comparison(job, comparison);
        if (!reports.isEmpty()) {
            JsonArray all = new JsonArray();
            reports.forEach(check -> all.add(SheetForms.report(check)));
            form.add("reports", all);
        }
        return form;
    }

    /** A comparison. */
    public static JsonObject comparison(OpenJob job, Comparison comparison) {
        JsonObject form = new JsonObject();
        form.addProperty("job", job.job().title());
        form.addProperty("submittal", comparison.submittal());
        JsonArray rows = new JsonArray();
        for (Comparison.Row row : comparison.rows()) {
            JsonObject one = new JsonObject();
            one.addProperty("wall", row.requirement().wall());
            word(one, "product", row.product());
            word(one, "paragraph", row.paragraph());
            one.addProperty("property", row.requirement().path());
            one.add("required", required(row.requirement()));
            row.submitted().ifPresent(value -> one.add("submitted", submitted(value, sheet(job.job(), row.product()))));
            one.addProperty("result", row.result().text());
            row.shortBy().ifPresent(by -> {
                JsonObject amount = new JsonObject();
                amount.addProperty("value", by.si());
                amount.addProperty("unit", by.dimension().si());
                amount.addProperty("of required", by.ofRequired());
                one.add("short by", amount);
            });
            word(one, "note", row.note());
            rows.add(one);
        }
        form.add("rows", rows);
        if (!comparison.remarks().isEmpty()) {
            form.add("remarks", strings(comparison.remarks()));
        }
        return form;
    }

    private static String sheet(Job job, String product) {
        return job.products().stream().filter(data -> data.id().equals(product)).findFirst().map(data -> data.sheet()).orElse("");
    }

    static JsonObject required(Requirement requirement) {
        JsonObject form = new JsonObject();
        form.addProperty("compare", requirement.property().compare().text());
        value(form, requirement.value());
        word(form, "method", requirement.property().method().standard());
        return form;
    }

    private static JsonObject submitted(SheetValue value, String file) {
        JsonObject form = new JsonObject();
        value.compare().ifPresent(compare -> form.addProperty("compare", compare.text()));
        value(form, value.value());
        if (!value.text().isEmpty()) {
            form.addProperty("text", value.text());
        }
        word(form, "method", value.method());
        word(form, "edition", value.edition());
        word(form, "file", file);
        if (value.page() > 0) {
            form.addProperty("page", value.page());
        }
        value.box().ifPresent(box -> {
            JsonArray corners = new JsonArray();
            corners.add(box.x());
            corners.add(box.y());
            corners.add(box.width());
            corners.add(box.height());
            form.add("box", corners);
        });
        form.addProperty("confirmed", value.confirmed());
        return form;
    }

    static void value(JsonObject form, Value value) {
        if (value instanceof Quantity quantity) {
            form.addProperty("value", quantity.si());
            form.addProperty("unit", quantity.dimension().si());
        } else if (value instanceof Range range) {
            form.addProperty("value", range.low().si());
            form.addProperty("high", range.high().si());
            form.addProperty("unit", range.low().dimension().si());
        } else if (value instanceof Word || value instanceof Grade || value instanceof Day) {
            form.addProperty("value", value.text());
        } else if (value instanceof WordSet set) {
            form.add("value", strings(set.words()));
        }
        form.addProperty("text", value.text());
    }

    private static JsonObject values(Map<String, Value> values) {
        JsonObject form = new JsonObject();
        values.forEach((name, value) -> {
            JsonObject one = new JsonObject();
            value(one, value);
            form.add(name, one);
        });
        return form;
    }

    private static JsonObject words(Map<String, String> words) {
        JsonObject form = new JsonObject();
        words.forEach(form::addProperty);
        return form;
    }

    static JsonArray strings(List<String> strings) {
        JsonArray all = new JsonArray();
        strings.forEach(all::add);
        return all;
    }

    private static JsonObject place(Place place) {
        JsonObject form = new JsonObject();
        form.addProperty("file", place.file());
        if (place.line() > 0) {
            form.addProperty("line", place.line());
            form.addProperty("column", place.column());
        }
        return form;
    }

    static JsonArray bases(List<Basis> bases) {
        JsonArray all = new JsonArray();
        for (Basis basis : bases) {
            JsonObject one = new JsonObject();
            one.addProperty("document", basis.document());
            word(one, "edition", basis.edition());
            word(one, "at", basis.at());
            one.addProperty("known", basis.known().text());
            all.add(one);
        }
        return all;
    }

    static void word(JsonObject form, String name, String word) {
        if (!word.isEmpty()) {
            form.addProperty(name, word);
        }
    }
}
