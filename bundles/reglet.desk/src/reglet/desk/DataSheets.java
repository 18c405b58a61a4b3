package reglet.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import reglet.comparing.Conditions;
import reglet.drafting.ReportWords;
import reglet.model.Component;
import reglet.model.ConditionCheck;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.ProductData;
import reglet.model.ReportCheck;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Found;
import reglet.model.SheetValue;
import reglet.model.Submittal;
import reglet.model.UnusableInput;
import reglet.reading.Child;
import reglet.store.Edits;
import reglet.store.Jobs;
import reglet.store.SafeFile;

/** Data sheets: read by the reading process, and confirmed by a person into the product data of a job. */
public final class DataSheets {
    private static final String SHEETS = "sheets/";

    private DataSheets() {
    }

    /**
     * Reads a sheet. Nothing that it gives is confirmed.
     *
     * @param component what the product is, as a component's id; "" to find it out
     * @throws UnusableInput when the sheet can't be opened or there is no such component
     */
    public static SheetReading read(Path sheet, Pack pack, String component) throws UnusableInput, IOException {
        if (!component.isEmpty() && pack.component(component).isEmpty()) {
            throw new UnusableInput(new Problem(Place.of(sheet.toString()), "the pack has no component \"" + component + "\"",
                "expected one of: " + String.join(", ", pack.components().stream().map(Component::id).toList())));
        }
        return Child.usual().read(sheet, pack, component);
    }

    /**
     * What a person confirmed of a sheet.
     *
     * @param id     id of the product data; "" for one made from the product's name
     * @param model  the model that is meant; "" where the sheet tells none apart
     * @param values the values confirmed
     */
    public record Confirmed(String id, String model, List<Found> values) {
        public Confirmed {
            values = List.copyOf(values);
        }
    }

    /**
     * The values of one model, together with those that hold for all.
     *
     * @throws UnusableInput when the sheet tells models apart and none of them, or none that it has, is named
     */
    public static Confirmed ofModel(Path sheet, SheetReading reading, String model, String id) throws UnusableInput {
        List<String> models = reading.models();
        if (models.isEmpty() && !model.isEmpty() || !models.isEmpty() && !models.contains(model)) {
            throw new UnusableInput(new Problem(Place.of(sheet.toString()), model.isEmpty() ? "it shows several models"
                : "it shows no model \"" + model + "\"", models.isEmpty() ? "leave the model out"
                    : "name one of: " + String.join(", ", models)));
        }
        return new Confirmed(id, model, reading.values().stream()
            .filter(found -> found.model().isEmpty() || found.model().equals(model)).toList());
    }

    /**
     * Writes confirmed values into the product data of a job, and the sheet beside them where the job doesn't hold it yet. A file
     * of that product keeps what else stands in it.
     *
     * @return the job as it is read afterwards
     * @throws UnusableInput when nothing is confirmed, or another product or sheet of that name is in the way
     */
    public static OpenJob confirm(OpenJob job, Path sheet, SheetReading reading, Confirmed confirmed) throws UnusableInput, IOException {
        if (confirmed.values().isEmpty()) {
            throw new UnusableInput(new Problem(Place.of(sheet.toString()), "no value was read that could be confirmed",
                "name the component, or write the product data by hand"));
        }
        String id = confirmed.id().isEmpty() ? id(reading, confirmed.model(), sheet) : confirmed.id();
        String held = held(job, sheet);
        Map<String, SheetValue> values = new LinkedHashMap<>();
        confirmed.values().forEach(found -> values.put(found.value().property(), confirmed(found.value())));
        ProductData product = new ProductData(id, reading.component(), reading.product().isEmpty() ? id : reading.product(),
            reading.maker(),
            confirmed.model(), held, new ArrayList<>(values.values()), reading.report(), Place.of("products/" + id + ".yaml"));
        String file = "products/" + id + ".yaml";
        String before = Saving.text(job, file);
        refuseAnother(job, product, before);
        Path target = job.folder().resolve(file);
        if (!Files.exists(job.folder().resolve(held))) {
            SafeFile.write(job.folder().resolve(held), Files.readAllBytes(sheet));
        }
        SafeFile.write(target, Edits.product(before, product).getBytes(StandardCharsets.UTF_8));
        return job.with(Jobs.read(job.folder(), job.pack()));
    }

    private static SheetValue confirmed(SheetValue value) {
        return new SheetValue(value.property(), value.value(), value.compare(), value.method(), value.edition(), value.text(), value.page(),
            value.box(), true);
    }

    private static void refuseAnother(OpenJob job, ProductData product, String before) throws UnusableInput {
        if (before.isBlank()) {
            return;
        }
        ProductData there = job.job().products().stream().filter(other -> other.id().equals(product.id())).findFirst().orElse(null);
        if (there == null || !there.component().equals(product.component()) || !there.sheet().equals(product.sheet())
            || !product.model().isEmpty() && !there.model().equals(product.model())) {
            throw new UnusableInput(new Problem(Place.of("products/" + product.id() + ".yaml"), "is of another component, model or sheet",
                "give the product another id"));
        }
    }

    /** Where the job holds the sheet: where it lies, or among its sheets. */
    private static String held(OpenJob job, Path sheet) throws UnusableInput, IOException {
        Path folder = job.folder().toRealPath();
        Path real = sheet.toRealPath();
        if (real.startsWith(folder)) {
            return folder.relativize(real).toString().replace('\\', '/');
        }
        Path there = folder.resolve(SHEETS + real.getFileName());
        if (Files.exists(there) && Files.mismatch(there, real) >= 0) {
            throw new UnusableInput(new Problem(Place.of(SHEETS + real.getFileName()), "is another sheet of that name",
                "rename one of the two"));
        }
        return SHEETS + real.getFileName();
    }

    static String id(SheetReading reading, String model, Path sheet) {
        String name = (reading.product() + " " + model).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        return name.isEmpty() ? sheet.getFileName().toString().toLowerCase(Locale.ROOT).replaceAll("\\.pdf$", "").replaceAll("[^a-z0-9]+",
            "-") : name;
    }

    /** What the conditions of use of a report ask for, against what a job requires; empty for a sheet that is no report. */
    public static List<ConditionCheck> conditions(OpenJob job, SheetReading reading) {
        return reading.report().map(report -> Conditions.check(job.assembly(), report)).orElse(List.of());
    }

    /** The same of the conditions that stand in product data. */
    public static List<ConditionCheck> conditions(OpenJob job, ProductData product) {
        return product.report().map(report -> Conditions.check(job.assembly(), report)).orElse(List.of());
    }

    /** The reports of the products that a submittal carries, against its day and against what the job requires. */
    public static List<ReportCheck> reports(OpenJob job, Submittal submittal) {
        return Conditions.reports(job.assembly(), submittal);
    }

    /** Lines for a terminal: each report, whether it is in force, its conditions, and those that a person has to check. */
    public static String reports(List<ReportCheck> reports) {
        StringBuilder page = new StringBuilder();
        for (ReportCheck check : reports) {
            page.append(check.product()).append(": ").append(ReportWords.state(check)).append('\n').append(report(check.checks()));
            check.byAPerson().forEach(condition -> page.append(ReportWords.byAPerson(condition)).append('\n'));
        }
        return page.toString();
    }

    /** Lines for a terminal. */
    public static String report(List<ConditionCheck> checks) {
        StringBuilder page = new StringBuilder();
        for (ConditionCheck check : checks) {
            page.append(check.wall()).append(": condition ").append(check.condition().number()).append(" asks for ").append(check.limit()
                .property())
                .append(check.limit().compare().map(sense -> " " + sense.text()).orElse("")).append(' ').append(check.limit().value()
                    .text())
                .append(check.requirement().map(requirement -> "; the job requires " + requirement.property().compare().text() + " "
                    + requirement.value().text()).orElse("")).append(": ").append(check.result().text())
                .append(check.note().isEmpty() ? "" : ". " + check.note()).append('\n');
        }
        return page.toString();
    }

    /** Lines for a terminal: each value with its place and how sure it is, then what needs a person. */
    public static String report(Path sheet, SheetReading reading) {
        StringBuilder page = new StringBuilder();
        page.append(reading.product().isEmpty() ? sheet.getFileName().toString() : reading.product());
        page.append(reading.maker().isEmpty() ? "" : ", " + reading.maker());
        page.append(reading.component().isEmpty() ? ": no component of the pack fits; name one" : ": " + reading.component());
        if (reading.components().size() > 1) {
            page.append(" (or ").append(String.join(", ", reading.components().subList(1, reading.components().size()))).append(')');
        }
        page.append('\n');
        for (Found found : reading.values()) {
            SheetValue value = found.value();
            page.append("  page ").append(value.page()).append(": ").append(value.property())
                .append(found.model().isEmpty() ? "" : " of " + found.model()).append(" is ")
                .append(value.compare().map(sense -> sense.text() + " ").orElse("")).append(value.value().text());
            page.append(value.method().isEmpty() ? "" : ", " + value.method() + (value.edition().isEmpty() ? "" : ", edition "
                + value.edition()));
            page.append("; \"").append(found.label()).append(": ").append(value.text()).append("\", sure to ")
                .append(Math.round(found.confidence() * 100)).append("%");
            page.append(found.doubt().isEmpty() ? "" : ". " + found.doubt()).append('\n');
            found.also().forEach(one -> page.append("    also shown on page ").append(one.value().page()).append(": ")
                .append(one.value().compare().map(sense -> sense.text() + " ").orElse("")).append(one.value().value().text())
                .append(one.value().method().isEmpty() ? "" : ", " + one.value().method()).append("; \"").append(one.label())
                .append(": ").append(one.value().text()).append("\"\n"));
        }
        reading.report().ifPresent(report -> {
            page.append("  report ").append(report.number()).append(report.holder().isEmpty() ? "" : " of " + report.holder())
                .append(report.codes().isEmpty() ? "" : ", to " + String.join(", ", report.codes()))
                .append(report.issued().isEmpty() ? "" : ", issued " + report.issued())
                .append(report.ends().isEmpty() ? "" : ", ends " + report.ends()).append('\n');
            report.conditions().forEach(condition -> page.append("  condition ").append(condition.number()).append(": ")
                .append(condition.text()).append('\n'));
        });
        reading.unread().forEach(unread -> page.append("  page ").append(unread.page()).append(": needs a person: ")
            .append(unread.text().isEmpty() ? "" : "\"" + unread.text() + "\", ").append(unread.why()).append('\n'));
        page.append(reading.values().isEmpty() ? "No value was read.\n" : "Nothing is confirmed.\n");
        return page.toString();
    }
}
