package reglet.desk;

import java.util.List;
import java.util.Optional;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import reglet.model.Box;
import reglet.model.ConditionCheck;
import reglet.model.Dates;
import reglet.model.ReportCheck;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Condition;
import reglet.model.SheetReading.Found;
import reglet.model.SheetReading.Report;
import reglet.model.SheetReading.Unread;
import reglet.model.SheetValue;

/** A data sheet that was read, as the commands print it for programs; as {@link Forms} has it. */
public final class SheetForms {

    private SheetForms() {
    }

    public static JsonObject sheet(SheetReading reading) {
        JsonObject form = new JsonObject();
        Forms.word(form, "product", reading.product());
        Forms.word(form, "maker", reading.maker());
        Forms.word(form, "component", reading.component());
        if (reading.components().size() > 1) {
            form.add("may also be", Forms.strings(reading.components().subList(1, reading.components().size())));
        }
        JsonArray values = new JsonArray();
        reading.values().forEach(found -> values.add(found(found)));
        form.add("values", values);
        JsonArray unread = new JsonArray();
        reading.unread().forEach(one -> unread.add(unread(one)));
        form.add("unread", unread);
        reading.report().ifPresent(report -> form.add("report", report(report)));
        return form;
    }

    /** A sheet with what the conditions of its report ask of a job. */
    public static JsonObject sheet(SheetReading reading, List<ConditionCheck> checks) {
        JsonObject form = sheet(reading);
        JsonArray all = new JsonArray();
        for (ConditionCheck check : checks) {
            JsonObject one = new JsonObject();
            one.addProperty("wall", check.wall());
            Forms.word(one, "number", check.condition().number());
            one.addProperty("property", check.limit().property());
            one.addProperty("result", check.result().text());
            Forms.word(one, "note", check.note());
            all.add(one);
        }
        form.add("conditions in the job", all);
        return form;
    }

    /** A report against the day of a submittal and against what the job requires. */
    static JsonObject report(ReportCheck check) {
        JsonObject form = new JsonObject();
        form.addProperty("product", check.product());
        Forms.word(form, "number", check.report().number());
        Forms.word(form, "ends", check.report().ends());
        Dates.last(check.report().ends()).ifPresent(day -> form.addProperty("last day", day.text()));
        check.daysLeft().ifPresent(days -> form.addProperty("days left", days));
        JsonArray conditions = new JsonArray();
        for (Condition condition : check.report().conditions()) {
            JsonObject one = new JsonObject();
            Forms.word(one, "number", condition.number());
            one.addProperty("text", condition.text());
            one.addProperty("page", condition.page());
            JsonArray checks = new JsonArray();
            check.of(condition).forEach(asked -> checks.add(asked(asked)));
            one.add("checks", checks);
            one.addProperty("needs a person", check.byAPerson().contains(condition));
            conditions.add(one);
        }
        form.add("conditions", conditions);
        return form;
    }

    private static JsonObject asked(ConditionCheck check) {
        JsonObject form = new JsonObject();
        form.addProperty("wall", check.wall());
        form.addProperty("property", check.limit().property());
        JsonObject asks = new JsonObject();
        check.limit().compare().ifPresent(compare -> asks.addProperty("compare", compare.text()));
        Forms.value(asks, check.limit().value());
        form.add("asks", asks);
        check.requirement().ifPresent(requirement -> form.add("required", Forms.required(requirement)));
        form.addProperty("result", check.result().text());
        Forms.word(form, "note", check.note());
        return form;
    }

    private static JsonObject found(Found found) {
        JsonObject form = new JsonObject();
        form.addProperty("property", found.value().property());
        form.addProperty("label", found.label());
        stated(form, found.value());
        Forms.word(form, "method", found.value().method());
        Forms.word(form, "edition", found.value().edition());
        Forms.word(form, "model", found.model());
        form.addProperty("page", found.value().page());
        box(form, found.value().box());
        form.addProperty("confidence", found.confidence());
        Forms.word(form, "doubt", found.doubt());
        form.addProperty("confirmed", found.value().confirmed());
        if (!found.also().isEmpty()) {
            JsonArray also = new JsonArray();
            found.also().forEach(one -> also.add(found(one)));
            form.add("also shown", also);
        }
        return form;
    }

    /** The value and its sense; the text is that of the sheet. */
    private static void stated(JsonObject form, SheetValue value) {
        value.compare().ifPresent(compare -> form.addProperty("compare", compare.text()));
        Forms.value(form, value.value());
        form.addProperty("text", value.text());
    }

    private static void box(JsonObject form, Optional<Box> place) {
        place.ifPresent(box -> {
            JsonArray sides = new JsonArray();
            sides.add(box.x());
            sides.add(box.y());
            sides.add(box.width());
            sides.add(box.height());
            form.add("box", sides);
        });
    }

    private static JsonObject unread(Unread unread) {
        JsonObject form = new JsonObject();
        form.addProperty("page", unread.page());
        box(form, unread.box());
        Forms.word(form, "text", unread.text());
        form.addProperty("why", unread.why());
        return form;
    }

    private static JsonObject report(Report report) {
        JsonObject form = new JsonObject();
        Forms.word(form, "number", report.number());
        Forms.word(form, "holder", report.holder());
        Forms.word(form, "subject", report.subject());
        form.add("codes", Forms.strings(report.codes()));
        Forms.word(form, "issued", report.issued());
        Forms.word(form, "ends", report.ends());
        JsonArray conditions = new JsonArray();
        report.conditions().forEach(condition -> conditions.add(condition(condition)));
        form.add("conditions", conditions);
        return form;
    }

    private static JsonObject condition(Condition condition) {
        JsonObject form = new JsonObject();
        Forms.word(form, "number", condition.number());
        form.addProperty("text", condition.text());
        form.addProperty("page", condition.page());
        box(form, Optional.of(condition.box()));
        JsonArray limits = new JsonArray();
        for (SheetValue limit : condition.limits()) {
            JsonObject one = new JsonObject();
            one.addProperty("property", limit.property());
            stated(one, limit);
            limits.add(one);
        }
        form.add("requirements", limits);
        return form;
    }
}
