package reglet.workbench.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import reglet.desk.OpenJob;
import reglet.desk.Report;
import reglet.desk.Reviews;
import reglet.model.Candidates;
import reglet.model.Comparison;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.Component;
import reglet.model.ProductData;
import reglet.model.SectionDocument;
import reglet.model.ShownUnits;
import reglet.model.UnusableInput;
import reglet.workbench.Marks;
import reglet.workbench.settings.Units;

/**
 * A comparison as it is shown: a line for each requirement, with one result or, of candidates side by side, one for each product.
 *
 * @param products   ids of the candidates, in the order of their columns; empty where a line has one result
 * @param summary    how many meet, fall short and so on
 * @param paragraphs the texts of paragraphs by section and address, "04 73 00 2.4.A"
 */
record Compared(List<Line> lines, List<String> products, String summary, Map<String, String> paragraphs) {

    /** What may be compared. */
    enum Kind { ALL, SUBMITTAL, CANDIDATES }

    /**
     * What is compared.
     *
     * @param id of the submittal, or of the component whose products stand side by side; ""
     */
    record What(Kind kind, String id, String words) {
    }

    /**
     * A requirement of a wall type.
     *
     * @param label "Lath: weight"
     * @param asked "at least 3.4 lb/yd²"
     * @param rows  by product; one with the key "" where there is one result
     */
    record Line(String wall, String component, String path, String label, String asked, Map<String, Row> rows) {
        /** Any of its rows: they agree about what is asked but for accepted alternatives. */
        Row first() {
            return rows.values().iterator().next();
        }

        String key() {
            return wall + " " + path + " " + first().product();
        }

        boolean has(Result result) {
            return rows.values().stream().anyMatch(row -> row.result() == result);
        }

        boolean isMet() {
            return rows.values().stream().allMatch(row -> row.result() == Result.MEETS);
        }
    }

    /** What may be compared of a job: all of it, each submittal, and the products of each component that has several. */
    static List<What> choices(OpenJob job) {
        List<What> all = new ArrayList<>();
        all.add(new What(Kind.ALL, "", "All products of the job"));
        job.job().submittals().forEach(submittal -> all.add(new What(Kind.SUBMITTAL, submittal.id(), "Submittal " + submittal.id())));
        for (Component component : job.pack().components()) {
            long products = job.job().products().stream().filter(product -> product.component().equals(component.id())).count();
            if (products > 1) {
                all.add(new What(Kind.CANDIDATES, component.id(), component.title() + ": " + products + " products side by side"));
            }
        }
        return List.copyOf(all);
    }

    /** Compares; takes time. */
    static Compared of(OpenJob job, What what) throws UnusableInput {
        Map<String, String> paragraphs = new LinkedHashMap<>();
        for (SectionDocument section : job.sections()) {
            section.paragraphs().forEach(paragraph -> paragraphs.put(section.number() + " " + paragraph.path(), paragraph.plain()));
        }
        if (what.kind() == Kind.CANDIDATES) {
            List<String> ids = job.job().products().stream().filter(product -> product.component().equals(what.id())).map(ProductData::id)
                .toList();
            Candidates beside = Reviews.candidates(job, ids);
            List<Line> lines = beside.lines().stream().map(line -> line(job, line.rows())).toList();
            return new Compared(lines, ids, ids.stream().map(id -> product(job, id) + (beside.complies(id) ? " meets everything" : " meets "
                + beside.count(id, Result.MEETS) + " of " + lines.stream().filter(line -> line.rows().containsKey(id)).count()))
                .collect(Collectors.joining("; ")) + ".", paragraphs);
        }
        Comparison comparison = what.kind() == Kind.ALL ? Reviews.all(job)
            : job.compare(job.submittal(what.id()).orElseThrow());
        return new Compared(comparison.rows().stream().map(row -> line(job, Map.of("", row))).toList(), List.of(),
            Report.summary(comparison) + ".", paragraphs);
    }

    private static Line line(OpenJob job, Map<String, Row> rows) {
        Row row = rows.values().iterator().next();
        String component = row.requirement().component();
        return new Line(row.requirement().wall(), component, row.requirement().path(), job.pack().component(component).map(Component::title)
            .orElse(component) + ": " + row.requirement().property().label(), Reviews.asked(row, Units.shown()),
            new LinkedHashMap<>(rows));
    }

    static String product(OpenJob job, String id) {
        return job.job().products().stream().filter(product -> product.id().equals(id)).findFirst().map(ProductData::name).orElse(id);
    }

    static Optional<ProductData> data(OpenJob job, String id) {
        return job.job().products().stream().filter(product -> product.id().equals(id)).findFirst();
    }

    /** The result in words and shape, with the amount that is missing; another edition of the same method is told as that. */
    static String result(Row row) {
        String words = Reviews.result(row);
        if (row.result() == Result.DIFFERENT_METHOD && isSameMethod(row)) {
            words = words.replace(Result.DIFFERENT_METHOD.text(), "different edition");
        }
        String by = Reviews.shortBy(row, Units.shown());
        return words + (by.isEmpty() ? "" : " by " + by);
    }

    private static boolean isSameMethod(Row row) {
        String asked = row.requirement().property().method().standard().replaceAll("[^A-Za-z0-9]+", " ");
        return row.submitted().map(value -> value.method().replaceAll("[^A-Za-z0-9]+", " ").startsWith(asked)).orElse(false);
    }

    /** What the product shows, with its sense and method; in both units, so that it can be held against what is asked for in either. */
    static String shown(Row row) {
        return row.submitted().isPresent() ? Reviews.submitted(row, new ShownUnits(Units.shown().first(), true)) : "–";
    }

    /** The words for a result that a filter names. */
    static String filter(Result result) {
        return Marks.sentence(result.text());
    }
}
