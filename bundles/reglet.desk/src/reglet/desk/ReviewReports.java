package reglet.desk;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import reglet.desk.Packages.Named;
import reglet.drafting.ReviewPages;
import reglet.drafting.ReviewPages.Contents;
import reglet.drafting.ReviewPages.Pages;
import reglet.drafting.SubmittalPages.Sheet;
import reglet.model.Comparison;
import reglet.model.Office;
import reglet.model.RegisterItem;
import reglet.model.Resubmittal;
import reglet.model.Review;
import reglet.model.Submittal;
import reglet.model.UnusableInput;
import reglet.reading.Child;
import reglet.reading.OpenedSheets;
import reglet.reading.PackagePlan;

/** The report of a review, for people and for programs. What it says of the action stands in the submittal's file, word for word. */
public final class ReviewReports {

    private ReviewReports() {
    }

    /** @param office whose letterhead the report bears */
    static byte[] pdf(OpenJob job, Submittal submittal, Office office) throws UnusableInput, IOException {
        List<Named> named = Packages.named(job, submittal);
        try (OpenedSheets opened = Child.usual().open(Packages.files(job, named), Collections.nCopies(named.size(), List.of()))) {
            return pdf(job, submittal, office, Packages.sheets(named, opened.measures()), opened);
        }
    }

    private static byte[] pdf(OpenJob job, Submittal submittal, Office office, List<Sheet> sheets, OpenedSheets opened)
        throws UnusableInput, IOException {
        Pages pages = ReviewPages.of(new Contents(job.assembly(), submittal, items(job, submittal), job.compare(submittal),
            since(job, submittal), sheets), office);
        List<PackagePlan.Part> parts = new ArrayList<>();
        parts.add(PackagePlan.Part.own("Review", 1, 1, pages.pages()));
        int total = pages.pages() + sheets.stream().mapToInt(Sheet::pages).sum();
        for (Sheet sheet : sheets) {
            if (sheet.pages() > 0) {
                parts.add(PackagePlan.Part.of(sheet.title(), 1, new PackagePlan.Sheet(job.folder().resolve(sheet.id()), sheet.pages()),
                    "Review of submittal " + submittal.id() + " · page {package page} of " + total));
            }
        }
        ByteArrayOutputStream report = new ByteArrayOutputStream();
        opened.assemble(new PackagePlan(job.job().title() + ", review of submittal " + submittal.id(), pages.pdf(), parts,
            pages.links().stream().map(link -> new PackagePlan.Link(link.page(), link.box(), link.target())).toList(),
            pages.flags().stream().map(flag -> new PackagePlan.Flag(flag.page(), flag.box(), flag.text())).toList()), report);
        return report.toByteArray();
    }

    private static List<RegisterItem> items(OpenJob job, Submittal submittal) throws UnusableInput {
        return job.register(submittal.section()).stream().filter(item -> item.isIn(submittal)).toList();
    }

    private static Optional<Resubmittal> since(OpenJob job, Submittal submittal) throws UnusableInput {
        Optional<Submittal> last = job.submittal(submittal.replaces());
        return last.isEmpty() ? Optional.empty() : Optional.of(Reviews.since(job, last.get(), submittal));
    }

    /** For programs: the comparison with a number, an id and the reviewer's note in each row, the review, and what changed. */
    public static JsonObject form(OpenJob job, Submittal submittal) throws UnusableInput {
        Comparison comparison = job.compare(submittal);
        JsonObject form = Forms.comparison(job, comparison);
        JsonArray rows = form.remove("rows").getAsJsonArray();
        form.addProperty("section", submittal.section());
        form.add("items", Forms.register(submittal.section(), items(job, submittal)).get("items"));
        submittal.review().ifPresent(review -> form.add("review", review(review)));
        form.addProperty("action needed", !ReviewPages.forInformation(items(job, submittal)));
        form.addProperty("unconfirmed", ReviewPages.unconfirmed(comparison));
        for (int i = 0; i < rows.size(); i++) {
            JsonObject row = rows.get(i).getAsJsonObject();
            row.addProperty("number", i + 1);
            row.addProperty("id", comparison.rows().get(i).id());
            Forms.word(row, "reviewer's note", ReviewPages.note(comparison.rows().get(i), submittal.review()));
        }
        form.add("rows", rows);
        JsonObject unplaced = new JsonObject();
        ReviewPages.unplaced(comparison, submittal.review())
            .forEach(id -> unplaced.addProperty(id, submittal.review().orElseThrow().notes().get(id).text()));
        form.add("notes without row", unplaced);
        since(job, submittal).ifPresent(since -> form.add("since", Reviews.form(since)));
        return form;
    }

    private static JsonObject review(Review review) {
        JsonObject form = new JsonObject();
        Forms.word(form, "action", review.action());
        Forms.word(form, "by", review.by());
        review.received().ifPresent(date -> form.addProperty("received", date.toString()));
        review.due().ifPresent(date -> form.addProperty("due", date.toString()));
        review.returned().ifPresent(date -> form.addProperty("returned", date.toString()));
        review.recommends().ifPresent(recommends -> {
            JsonObject one = new JsonObject();
            one.addProperty("action", recommends.action());
            one.addProperty("by", recommends.by());
            form.add("recommends", one);
        });
        Forms.word(form, "remark", review.remark());
        return form;
    }

    /** Notes whose row is no longer there, as lines for a terminal. */
    public static List<String> unplaced(OpenJob job, Submittal submittal) throws UnusableInput {
        return ReviewPages.unplaced(job.compare(submittal), submittal.review()).stream()
            .map(id -> submittal.review().orElseThrow().notes().get(id).at() + ": the comparison has no row \"" + id
                + "\" that this note is for; use a row's id or place, as review --json prints them").toList();
    }
}
