package reglet.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import reglet.comparing.Comparing;
import reglet.comparing.Reviewing;
import reglet.drafting.Phrases;
import reglet.drafting.Results;
import reglet.drafting.Unprinted;
import reglet.model.Candidates;
import reglet.model.Comparison;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.Enclosures;
import reglet.model.Evidence;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.ProductData;
import reglet.model.Requirement;
import reglet.model.Resubmittal;
import reglet.model.Resubmittal.Change;
import reglet.model.SectionDocument;
import reglet.model.ShownUnits;
import reglet.model.Submittal;
import reglet.model.UnusableInput;

/** What a reviewer asks beyond one submittal: several candidates side by side, and a resubmittal beside the last. */
public final class Reviews {

    private Reviews() {
    }

    /**
     * Products of a job side by side.
     *
     * @throws UnusableInput when one isn't there, or they are not for the same component
     */
    public static Candidates candidates(OpenJob job, List<String> ids) throws UnusableInput {
        List<ProductData> products = new ArrayList<>();
        for (String id : ids) {
            products.add(job.job().products().stream().filter(product -> product.id().equals(id)).findFirst()
                .orElseThrow(() -> new UnusableInput(new Problem(Place.of("products"), "there is no product \"" + id + "\"",
                    "expected one of: " + String.join(", ", job.job().products().stream().map(ProductData::id).toList())))));
        }
        List<String> components = products.stream().map(ProductData::component).distinct().toList();
        if (components.size() > 1) {
            throw new UnusableInput(new Problem(Place.of("products"), "the products are for " + String.join(" and ", components),
                "name products for one component"));
        }
        List<SectionDocument> sections = job.sections();
        return Reviewing.candidates(job.assembly(), products, requirement -> sections.stream().map(section -> section.pathOf(requirement))
            .flatMap(Optional::stream).findFirst().orElse(""));
    }

    /**
     * All products of a job compared with everything that it requires and that a paper can show, as if they were one submittal; the
     * paragraphs are those of the sections that own the components.
     */
    public static Comparison all(OpenJob job) throws UnusableInput {
        Map<String, SectionDocument> owners = new LinkedHashMap<>();
        for (SectionDocument section : job.sections()) {
            owners.put(section.number(), section);
        }
        List<String> items = job.pack().components().stream().flatMap(component -> Stream.of(Evidence.values())
            .map(evidence -> component.id() + "." + evidence.text().replace(' ', '-'))).toList();
        Submittal all = new Submittal("all products", "", items, job.job().products().stream().map(ProductData::id).toList(), "", "", "",
            List.of(), "", List.of(), "", Enclosures.NONE, Optional.empty(), Place.of("products"));
        Map<Requirement, String> printed = new LinkedHashMap<>();
        Comparison comparison = Comparing.compare(job.assembly(), all, requirement -> printed.computeIfAbsent(requirement, asked -> job
            .pack().component(asked.component()).map(component -> owners.get(component.section())).flatMap(section -> section.pathOf(asked))
            .orElse("")));
        for (SectionDocument section : owners.values()) {
            comparison = comparison.without(Unprinted.reasons(job.assembly(), section));
        }
        return comparison;
    }

    /** The result of a row as a shape and a word; a value that nobody confirmed says so. */
    public static String result(Row row) {
        return Results.result(row);
    }

    /** What a row asks for, with its sense: "at least 2.5 lb/yd²". */
    public static String asked(Row row, ShownUnits units) {
        return Phrases.required(row.requirement(), units);
    }

    /** What the sheet of a row states, with its method; "no value". */
    public static String submitted(Row row, ShownUnits units) {
        return Results.submitted(row, units);
    }

    /** By how much a row falls short, in the requirement's unit or the other, and as a share; "" where it doesn't by a number. */
    public static String shortBy(Row row, ShownUnits units) {
        return Results.shortBy(row, units);
    }

    /** A resubmittal beside the last, both compared with what the job requires today. */
    public static Resubmittal since(OpenJob job, Submittal last, Submittal now) throws UnusableInput {
        return Reviewing.since(job.compare(last), job.compare(now));
    }

    /** For programs. */
    public static JsonObject form(OpenJob job, Candidates candidates) {
        JsonObject form = new JsonObject();
        form.addProperty("job", job.job().title());
        form.add("candidates", Forms.strings(candidates.products()));
        JsonArray rows = new JsonArray();
        for (Candidates.Line line : candidates.lines()) {
            JsonObject one = new JsonObject();
            one.addProperty("wall", line.wall());
            one.addProperty("property", line.property());
            JsonObject by = new JsonObject();
            candidates.products().stream().filter(line.rows()::containsKey).forEach(id -> by.add(id, row(line.rows().get(id))));
            one.add("by", by);
            rows.add(one);
        }
        form.add("rows", rows);
        form.add("complying", Forms.strings(candidates.products().stream().filter(candidates::complies).toList()));
        return form;
    }

    /** For programs. */
    public static JsonObject form(Resubmittal resubmittal) {
        JsonObject form = new JsonObject();
        form.addProperty("last", resubmittal.last());
        form.addProperty("submittal", resubmittal.now());
        JsonArray changes = new JsonArray();
        for (Change change : resubmittal.changes()) {
            JsonObject one = new JsonObject();
            one.addProperty("wall", change.wall());
            one.addProperty("property", change.property());
            one.addProperty("kind", change.kind().text());
            change.before().ifPresent(row -> one.add("before", row(row)));
            change.after().ifPresent(row -> one.add("after", row(row)));
            changes.add(one);
        }
        form.add("changes", changes);
        return form;
    }

    private static JsonObject row(Row row) {
        JsonObject form = new JsonObject();
        Forms.word(form, "product", row.product());
        Forms.word(form, "paragraph", row.paragraph());
        JsonObject required = new JsonObject();
        required.addProperty("compare", row.requirement().property().compare().text());
        Forms.value(required, row.requirement().value());
        form.add("required", required);
        row.submitted().ifPresent(value -> {
            JsonObject submitted = new JsonObject();
            value.compare().ifPresent(compare -> submitted.addProperty("compare", compare.text()));
            Forms.value(submitted, value.value());
            submitted.addProperty("confirmed", value.confirmed());
            form.add("submitted", submitted);
        });
        form.addProperty("result", row.result().text());
        Forms.word(form, "note", row.note());
        return form;
    }

    /** Lines for a terminal. */
    public static String report(Candidates candidates) {
        StringBuilder page = new StringBuilder();
        for (Candidates.Line line : candidates.lines()) {
            page.append(line.wall()).append(' ').append(line.property());
            String mark = ": ";
            for (String id : candidates.products()) {
                page.append(mark).append(id).append(' ').append(line.rows().containsKey(id) ? told(line.rows()
                    .get(id)) : "asks for nothing here");
                mark = " | ";
            }
            page.append('\n');
        }
        for (String id : candidates.products()) {
            page.append(id).append(": ");
            String mark = "";
            for (Result result : Result.values()) {
                if (candidates.count(id, result) > 0) {
                    page.append(mark).append(candidates.count(id, result)).append(' ').append(result.text());
                    mark = ", ";
                }
            }
            page.append(mark.isEmpty() ? "no wall asks for it" : "").append('\n');
        }
        return page.toString();
    }

    private static String told(Row row) {
        return row.submitted().map(value -> value.value().text() + ", ").orElse("") + row.result().text();
    }

    /** Lines for a terminal; what is the same is only counted. */
    public static String report(Resubmittal resubmittal) {
        StringBuilder page = new StringBuilder();
        int same = 0;
        for (Change change : resubmittal.changes()) {
            if (change.kind() == Resubmittal.Kind.SAME) {
                same++;
                continue;
            }
            page.append(change.kind().text()).append(": ").append(change.wall()).append(' ').append(change.property()).append(": ")
                .append(change.before().map(Reviews::told).orElse("nothing")).append(" -> ")
                .append(change.after().map(Reviews::told).orElse("nothing")).append('\n');
        }
        return page.append(same).append(" the same as in ").append(resubmittal.last()).append('\n').toString();
    }
}
