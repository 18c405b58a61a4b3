package reglet.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import reglet.drafting.ComparisonPages;
import reglet.drafting.Docx;
import reglet.drafting.DrawingDxf;
import reglet.drafting.DrawingPdf;
import reglet.drafting.DrawingSvg;
import reglet.drafting.Frame;
import reglet.drafting.Html;
import reglet.drafting.Markdown;
import reglet.drafting.Pdf;
import reglet.drafting.Plot;
import reglet.drafting.Quantities;
import reglet.drafting.Registers;
import reglet.drafting.WorksheetPages;
import reglet.model.Calculated;
import reglet.model.Chart;
import reglet.model.Comparison;
import reglet.model.Drawing;
import reglet.model.RegisterItem;
import reglet.model.SectionDocument;
import reglet.model.Submittal;
import reglet.model.UnusableInput;
import reglet.model.WallType;
import reglet.model.Worksheet;
import reglet.store.SafeFile;

/** The papers of a job. Each is made whole before it is written; work that is cancelled leaves whole files only. */
public final class Outputs {
    private static final String TAKEOFF = "takeoff";
    private static final String DETAIL_CAUTION = "Made from the wall's choices; not a shop drawing. Local codes, the manufacturers' "
        + "instructions and licensed professionals govern.";

    private final OpenJob job;
    private final List<Step> steps = new ArrayList<>();

    /** A step of the work: words for the person, and what makes the files. */
    private record Step(String what, Maker maker) {
    }

    private interface Maker {
        List<Output> make() throws UnusableInput, IOException, Cancelled;
    }

    private Outputs(OpenJob job) {
        this.job = job;
    }

    public static Outputs of(OpenJob job) {
        return new Outputs(job);
    }

    /** Adds the findings, for people and for programs. */
    public Outputs findings() {
        steps.add(new Step("checking the job", () -> List.of(
            text("findings.md", Report.markdown(job)),
            text("findings.json", Forms.text(RemedyForms.check(job))))));
        return this;
    }

    /** Adds a section in its four formats. */
    public Outputs section(String number) {
        String name = fileName(number);
        steps.add(new Step("drafting section " + number, () -> {
            SectionDocument section = job.section(number);
            return List.of(text(name + ".md", Markdown.of(section)), text(name + ".html", Html.of(section)),
                new Output(name + ".docx", Docx.of(section)), new Output(name + ".pdf", Pdf.of(section, appendix(number), frame())));
        }));
        return this;
    }

    /** Adds the register of a section. */
    public Outputs register(String section) {
        steps.add(new Step("listing the register of section " + section,
            () -> List.of(text(fileName(section) + "-register.csv", Registers.csv(job.register(section))))));
        return this;
    }

    /** Adds the register of all sections of the job, one below the other. */
    public Outputs register() {
        steps.add(new Step("listing the register", () -> {
            List<RegisterItem> all = new ArrayList<>();
            for (String section : job.job().sections()) {
                all.addAll(job.register(section));
            }
            return List.of(text("register.csv", Registers.csv(all)));
        }));
        return this;
    }

    /** Adds a submittal's package. */
    public Outputs submittalPackage(Submittal submittal) {
        steps.add(new Step("putting together submittal " + submittal.id(),
            () -> List.of(new Output(submittal.id() + "-package.pdf", Packages.of(job, submittal)))));
        return this;
    }

    /** Adds a submittal's comparison, for people and for programs. */
    public Outputs comparison(Submittal submittal) {
        steps.add(new Step("comparing submittal " + submittal.id(), () -> {
            Comparison comparison = job.compare(submittal);
            return List.of(text(submittal.id() + "-comparison.json", Forms.text(Forms.comparison(job, comparison))),
                new Output(submittal.id() + "-comparison.pdf", ComparisonPages.of(job.assembly(), submittal, comparison)));
        }));
        return this;
    }

    /** Adds the worksheets: on paper, for programs, quantities as tables, charts as pictures. */
    public Outputs worksheets() {
        steps.add(new Step("calculating the worksheets", () -> {
            List<Output> all = new ArrayList<>();
            all.add(new Output("worksheets.pdf", WorksheetPages.of(job.assembly(), job.calculated())));
            all.add(text("worksheets.json", Forms.text(WorksheetForms.worksheets(job.worksheets()))));
            List<Worksheet> quantities = job.worksheets().made().stream().filter(made -> made.name().equals(TAKEOFF)).toList();
            if (!quantities.isEmpty()) {
                all.add(text("quantities.csv", Quantities.csv(quantities)));
                all.add(new Output("quantities.xlsx", Quantities.xlsx(quantities)));
            }
            all.addAll(charts());
            return all;
        }));
        return this;
    }

    /** Adds the details of all wall types: each wall's on sheets to scale, and each drawing as SVG and DXF. */
    public Outputs details() {
        for (WallType wall : job.job().walls()) {
            steps.add(new Step("drawing the details of " + wall.id(), () -> {
                List<Drawing> drawings = job.details(wall.id());
                Frame frame = frame();
                List<Output> all = new ArrayList<>();
                all.add(new Output("details/" + wall.id() + ".pdf", DrawingPdf.of(drawings, frame)));
                for (int i = 0; i < drawings.size(); i++) {
                    String name = "details/" + wall.id() + "-" + drawings.get(i).id();
                    Frame one = new Frame(frame.job(), frame.note(), frame.issue(), frame.paper(), frame.notes(), frame.caution(), i + 1,
                        drawings.size());
                    all.add(text(name + ".svg", DrawingSvg.of(drawings.get(i), one)));
                    all.add(text(name + ".dxf", DrawingDxf.of(drawings.get(i), one)));
                }
                return all;
            }));
        }
        return this;
    }

    private Frame frame() {
        return Frame.of(job.job().title(), job.job().note(), "", Frame.Paper.LETTER, DETAIL_CAUTION);
    }

    /** The details of all wall types, behind the first section that the job writes. */
    private List<Drawing> appendix(String section) throws UnusableInput {
        List<Drawing> drawings = new ArrayList<>();
        if (job.job().sections().indexOf(section) == 0) {
            for (WallType wall : job.job().walls()) {
                drawings.addAll(job.details(wall.id()));
            }
        }
        return drawings;
    }

    /** Each different chart of a wall type once. */
    private List<Output> charts() {
        Map<String, Set<Chart>> charts = new LinkedHashMap<>();
        for (Calculated calculated : job.calculated()) {
            charts.computeIfAbsent(calculated.worksheet().wall() + "-" + calculated.worksheet().name(), name -> new LinkedHashSet<>())
                .addAll(calculated.charts());
        }
        List<Output> pictures = new ArrayList<>();
        charts.forEach((name, different) -> {
            int number = 0;
            for (Chart chart : different) {
                pictures.add(text(name + (++number == 1 ? "" : "-" + number) + ".svg", Plot.svg(chart)));
            }
        });
        return pictures;
    }

    /** Adds everything. */
    public Outputs all() {
        findings();
        job.job().sections().forEach(this::section);
        job.job().sections().forEach(this::register);
        register();
        worksheets();
        details();
        for (Submittal submittal : job.job().submittals()) {
            submittalPackage(submittal);
            comparison(submittal);
        }
        return this;
    }

    /**
     * Makes and writes everything added, in the job's {@code out} folder.
     *
     * @return the files written, in order
     */
    public List<Path> write(Progress progress) throws UnusableInput, IOException, Cancelled {
        List<Path> written = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            if (progress.cancelled()) {
                throw new Cancelled();
            }
            progress.step(i, steps.size(), steps.get(i).what());
            for (Output output : steps.get(i).maker().make()) {
                Path file = job.folder().resolve("out").resolve(output.name());
                SafeFile.write(file, output.bytes());
                written.add(file);
            }
        }
        progress.step(steps.size(), steps.size(), "");
        return List.copyOf(written);
    }

    /** Makes everything added without writing it. */
    public List<Output> make() throws UnusableInput, IOException, Cancelled {
        List<Output> all = new ArrayList<>();
        for (Step step : steps) {
            all.addAll(step.maker().make());
        }
        return List.copyOf(all);
    }

    /** "04-73-00". */
    static String fileName(String section) {
        return section.replace(' ', '-').replace('.', '-');
    }

    private static Output text(String name, String text) {
        return new Output(name, text.getBytes(StandardCharsets.UTF_8));
    }
}
