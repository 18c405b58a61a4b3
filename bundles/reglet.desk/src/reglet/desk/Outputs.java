package reglet.desk;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.Set;

import reglet.comparing.Changing;
import reglet.drafting.ComparisonPages;
import reglet.drafting.Docx;
import reglet.drafting.DrawingDxf;
import reglet.drafting.DrawingPdf;
import reglet.drafting.DrawingSvg;
import reglet.drafting.ExceptionPages;
import reglet.drafting.Exceptions;
import reglet.drafting.Form;
import reglet.drafting.FormDocx;
import reglet.drafting.FormsPdf;
import reglet.drafting.Frame;
import reglet.drafting.Html;
import reglet.drafting.Letterhead;
import reglet.drafting.Markdown;
import reglet.drafting.Pdf;
import reglet.drafting.Plot;
import reglet.drafting.Quantities;
import reglet.drafting.RegisterTable;
import reglet.drafting.Registers;
import reglet.drafting.SiteForms;
import reglet.drafting.SpecifierNotes;
import reglet.drafting.WorksheetPages;
import reglet.model.Alternate;
import reglet.model.Calculated;
import reglet.model.Chart;
import reglet.model.Comparison;
import reglet.model.Drawing;
import reglet.model.Issue;
import reglet.model.Office;
import reglet.model.RegisterItem;
import reglet.model.ReportCheck;
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
    private Optional<Path> officeFolder = Optional.empty();

    /** A step of the work: words for the person, and what makes the files. */
    private record Step(String what, Work work) {

        Step(String what, Maker maker) {
            this(what, sink -> {
                for (Output output : maker.make()) {
                    sink.take(output.name(), out -> out.write(output.bytes()));
                }
            });
        }
    }

    /** What writes its files as it makes them, for they may be larger than memory. */
    private interface Work {
        void into(Packages.Sink sink) throws UnusableInput, IOException, Cancelled;
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

    /** The folder of the office whose letterhead the papers bear, instead of the job's or the person's own. */
    public Outputs office(Path folder) {
        officeFolder = Optional.ofNullable(folder);
        return this;
    }

    /** Adds the findings, for people and for programs. */
    public Outputs findings() {
        steps.add(new Step("checking the job", () -> List.of(
            text("findings.md", Report.markdown(job)),
            text("findings.json", Forms.text(RemedyForms.check(job))))));
        return this;
    }

    /** Adds the findings that are accepted, each with its reason: on paper, as text and as a table. */
    public Outputs exceptions() {
        steps.add(new Step("listing the exceptions", () -> {
            List<Exceptions.Entry> entries = exceptions(job);
            return List.of(text("exceptions.md", Exceptions.markdown(job.assembly(), entries)), text("exceptions.csv",
                Exceptions.csv(entries)), new Output("exceptions.pdf", ExceptionPages.of(job.assembly(), entries)));
        }));
        return this;
    }

    /** What the job accepts, in the order written, with the findings that each entry covers now. */
    static List<Exceptions.Entry> exceptions(OpenJob job) {
        return job.job().accepted().stream().map(accepted -> new Exceptions.Entry(accepted,
            job.checked().accepted().stream().filter(accepted::covers).toList())).toList();
    }

    /** Adds a section in its four formats. */
    public Outputs section(String number) {
        String name = fileName(number);
        steps.add(new Step("drafting section " + number, () -> {
            SectionDocument section = job.section(number);
            Office office = Offices.find(job.folder(), officeFolder);
            Letterhead letterhead = Letterhead.of(office, section, true);
            List<Drawing> appendix = appendix(number);
            Frame frame = frame().on(office.paper());
            return List.of(text(name + ".md", Markdown.of(section)),
                text(name + ".html", Html.of(section, Letterhead.of(office, section, false), appendix, frame)),
                new Output(name + ".docx", Docx.of(section, letterhead)),
                new Output(name + ".pdf", Pdf.of(section, letterhead, appendix, frame)));
        }));
        return this;
    }

    /** Adds the notes to the specifier of a section; no part of what is given out. */
    public Outputs notes(String number) {
        steps.add(new Step("gathering the notes on section " + number,
            () -> List.of(text(fileName(number) + "-notes.md", SpecifierNotes.markdown(job.assembly(), job.section(number))))));
        return this;
    }

    /** Adds the register of a section. */
    public Outputs register(String section) {
        steps.add(new Step("listing the register of section " + section,
            () -> List.of(text(fileName(section) + "-register.csv", Registers.csv(job.register(section))))));
        return this;
    }

    /** Adds the register of all sections of the job, one below the other, as CSV and for a spreadsheet. */
    public Outputs register() {
        steps.add(new Step("listing the register", () -> {
            List<RegisterItem> all = job.register().items();
            return List.of(text("register.csv", Registers.csv(all)), new Output("register.xlsx", RegisterTable.xlsx(all)));
        }));
        return this;
    }

    /** Adds a submittal's package. */
    public Outputs submittalPackage(Submittal submittal) {
        return submittalPackage(submittal, PackageDivision.NONE, larger -> { });
    }

    /**
     * Adds a submittal's package, divided into several files.
     *
     * @param tells hears why a file is larger than the division asks for, as a line for a person
     */
    public Outputs submittalPackage(Submittal submittal, PackageDivision division, Consumer<String> tells) {
        steps.add(new Step("putting together submittal " + submittal.id(), sink -> Packages.bind(job, submittal, division.volumes(),
            Offices.find(job.folder(), officeFolder), sink, larger -> tells.accept(division.says(larger)))));
        return this;
    }

    /** Adds a submittal's comparison, for people and for programs. */
    public Outputs comparison(Submittal submittal) {
        steps.add(new Step("comparing submittal " + submittal.id(), () -> {
            Comparison comparison = job.compare(submittal);
            List<ReportCheck> reports = DataSheets.reports(job, submittal);
            return List.of(text(submittal.id() + "-comparison.json", Forms.text(Forms.comparison(job, comparison, reports))),
                new Output(submittal.id() + "-comparison.pdf", ComparisonPages.of(job.assembly(), submittal, comparison, reports)));
        }));
        return this;
    }

    /** Adds the report of a submittal's review, for people and for programs. */
    public Outputs review(Submittal submittal) {
        steps.add(new Step("reporting the review of submittal " + submittal.id(), () -> List.of(
            text(submittal.id() + "-review.json", Forms.text(ReviewReports.form(job, submittal))),
            new Output(submittal.id() + "-review.pdf", ReviewReports.pdf(job, submittal, Offices.find(job.folder(),
            officeFolder))))));
        return this;
    }

    /** Adds the forms for the site: all as one PDF, and each for a word processor. */
    public Outputs forms() {
        steps.add(new Step("writing the forms for the site", () -> {
            List<Worksheet> quantities = takeoff(job);
            List<Form> forms = SiteForms.of(job.assembly(), job.register(), quantities, job::explain);
            List<Output> all = new ArrayList<>();
            Office office = Offices.find(job.folder(), officeFolder);
            all.add(new Output("forms.pdf", FormsPdf.of(job.assembly(), forms, office)));
            for (Form form : forms) {
                all.add(new Output("forms/" + form.id() + ".docx", FormDocx.of(job.assembly(), form, office)));
            }
            return all;
        }));
        return this;
    }

    /** Adds the worksheets: on paper, for programs, quantities as tables, charts as pictures. */
    public Outputs worksheets() {
        steps.add(new Step("calculating the worksheets", () -> {
            List<Output> all = new ArrayList<>();
            all.add(new Output("worksheets.pdf", WorksheetPages.of(job.assembly(), job.calculated())));
            all.add(text("worksheets.json", Forms.text(WorksheetForms.worksheets(job.worksheets()))));
            List<Worksheet> quantities = takeoff(job);
            if (!quantities.isEmpty()) {
                all.add(text("quantities.csv", Quantities.csv(quantities)));
                all.add(new Output("quantities.xlsx", Quantities.xlsx(quantities)));
                List<Quantities.Beside> beside = beside();
                if (!beside.isEmpty()) {
                    all.add(text("quantities-alternates.csv", Quantities.csv(quantities, beside)));
                }
            }
            all.addAll(charts());
            return all;
        }));
        return this;
    }

    /** The quantities with each offered alternate, as if it alone were accepted besides those that are. */
    private List<Quantities.Beside> beside() throws UnusableInput {
        List<Quantities.Beside> all = new ArrayList<>();
        for (int number : job.job().versions(Alternate.State.OFFERED)) {
            boolean possible = job.job().alternates(Alternate.State.ACCEPTED).stream().noneMatch(one -> job.job().exclude(one, number));
            if (possible) {
                all.add(new Quantities.Beside(job.job().alternate(number).orElseThrow().titled(), takeoff(job.supposing(List.of(number)))));
            }
        }
        return all;
    }

    private static List<Worksheet> takeoff(OpenJob job) {
        return job.worksheets().made().stream().filter(made -> made.name().equals(TAKEOFF)).toList();
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
        return Frame.of(job.job().title(), job.job().note(), job.issue(), Frame.Paper.LETTER, DETAIL_CAUTION);
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

    /** Adds what changed since the last issue; nothing when there is none yet. */
    public Outputs changes() {
        steps.add(new Step("telling what changed since the last issue", () -> {
            Optional<Issue> last = Issues.last(job);
            return last.isEmpty() ? List.of() : ChangePapers.of(Changing.between(last.get(), Issues.present(job)), "changes/",
                Offices.find(job.folder(), officeFolder));
        }));
        return this;
    }

    /** Adds everything. */
    public Outputs all() {
        findings();
        exceptions();
        job.job().sections().forEach(this::section);
        job.job().sections().forEach(this::register);
        register();
        worksheets();
        forms();
        details();
        for (Submittal submittal : job.job().submittals()) {
            submittalPackage(submittal);
            comparison(submittal);
            if (submittal.review().isPresent()) {
                review(submittal);
            }
        }
        changes();
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
            steps.get(i).work().into(new OutFolder(job.out(), written));
        }
        progress.step(steps.size(), steps.size(), "");
        return List.copyOf(written);
    }

    /** Makes everything added without writing it. */
    public List<Output> make() throws UnusableInput, IOException, Cancelled {
        List<Output> all = new ArrayList<>();
        for (Step step : steps) {
            step.work().into(new Packages.Sink() {
                @Override
                public long take(String name, SafeFile.Content content) throws IOException {
                    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                    content.to(bytes);
                    all.add(new Output(name, bytes.toByteArray()));
                    return bytes.size();
                }

                @Override
                public void drop(String name) {
                    all.removeIf(output -> output.name().equals(name));
                }
            });
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
