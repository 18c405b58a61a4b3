package reglet.drafting;

import java.util.List;
import java.util.Optional;

import reglet.drafting.SubmittalPages.Contents;
import reglet.drafting.SubmittalPages.Sheet;
import reglet.model.Assembly;
import reglet.model.Compare;
import reglet.model.Comparison;
import reglet.model.Comparison.Result;
import reglet.model.Comparison.Row;
import reglet.model.Comparison.ShortBy;
import reglet.model.Dimension;
import reglet.model.Enclosures;
import reglet.model.ProductData;
import reglet.model.Quantity;
import reglet.model.Requirement;
import reglet.model.SectionDocument;
import reglet.model.SheetValue;
import reglet.model.Submittal;
import reglet.model.UnusableInput;
import reglet.model.Value;
import reglet.model.Word;

/** An invented submittal for the sample job: a lath that is too light, on a sheet of three pages, and one without a sheet. */
final class PackageSample {
    static final String SHEET = "sheets/lath-a.pdf";
    static final String BROKEN = "sheets/lath-b.pdf";

    private PackageSample() {
    }

    static Contents contents(String statement) throws UnusableInput {
        Sample sample = Sample.small();
        Submittal submittal = new Submittal("04-73-00-01", Sample.SECTION, List.of("lath.product-data"), List.of("lath-a", "lath-b"),
            "Example Builders", "2026-03-02", statement, List.of(), "", List.of(), "", Enclosures.NONE, Optional.empty(), Sample.AT);
        sample.submittals.add(submittal);
        sample.products.add(new ProductData("lath-a", "lath", "Lath A", "Example Metals", "", SHEET, List.of(), Sample.AT));
        sample.products.add(new ProductData("lath-b", "lath", "Lath B", "Example Metals", "", BROKEN, List.of(), Sample.AT));
        Assembly assembly = sample.assembly();
        SectionDocument section = Drafter.draft(assembly, Sample.SECTION, "");
        Requirement kind = assembly.requirement("W1", "lath", "metal-2.5", "kind").orElseThrow();
        Requirement weight = assembly.requirement("W1", "lath", "metal-2.5", "weight").orElseThrow();
        Quantity light = Sample.q("1.9 lb/yd2");
        double required = Sample.q("2.5 lb/yd2").si();
        Comparison comparison = new Comparison(submittal.id(), List.of(
            row("lath-a", section, kind, value("lath.kind", new Word("expanded metal"), 1, false), Result.MEETS, Optional.empty(),
            "read from the sheet"),
            row("lath-a", section, weight, value("lath.weight", light, 3, true), Result.FALLS_SHORT,
                Optional.of(new ShortBy(required - light.si(), Dimension.AREAL_MASS, 1 - light.si() / required)), ""),
            row("lath-b", section, weight, Optional.empty(), Result.NOT_SHOWN, Optional.empty(), "the sheet has no such value")));
        return new Contents(assembly, submittal, List.of(Registers.of(assembly, List.of(section)).items().get(0)), comparison,
            List.of(new Sheet(SHEET, "Lath A", 3, ""), new Sheet(BROKEN, "Lath B", 0, "the file is damaged at its end")),
            List.of(), List.of());
    }

    private static Row row(String product, SectionDocument section, Requirement requirement, Optional<SheetValue> value, Result result,
            Optional<ShortBy> shortBy, String note) {
        return new Row(product, section.pathOf(requirement).orElse(""), requirement, value, result, shortBy, note);
    }

    private static Optional<SheetValue> value(String property, Value value, int page, boolean confirmed) {
        return Optional.of(new SheetValue(property, value, value instanceof Quantity ? Optional.of(Compare.AT_LEAST) : Optional.empty(),
            value instanceof Quantity ? "ASTM C847" : "", "", "", page, Optional.empty(), confirmed));
    }
}
