package reglet.drafting;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import reglet.drafting.PdfSheets.Edges;
import reglet.model.Assembly;
import reglet.model.Basis;
import reglet.model.Calculated;
import reglet.model.Chart;
import reglet.model.Drawing;
import reglet.model.Meeting;
import reglet.model.Pack;
import reglet.model.ShownUnits;
import reglet.model.WallType;
import reglet.model.Worksheet;

/** Worksheets on paper, as an engineer would hand them in: inputs with their origin, every step with its basis, results, assumptions. */
public final class WorksheetPages {
    private static final float DRAWING_HEIGHT = 300;
    /** A worksheet starts where its inputs have room. */
    private static final float LEAST_ROOM = 260;

    private final PdfSheets sheets;
    private final Assembly assembly;

    private WorksheetPages(PdfSheets sheets, Assembly assembly) {
        this.sheets = sheets;
        this.assembly = assembly;
    }

    /** The worksheets as a PDF of their own. */
    public static byte[] of(Assembly assembly, List<Calculated> worksheets) {
        int pages = write(assembly, worksheets, 0).sheet();
        return write(assembly, worksheets, pages).bytes();
    }

    private static PdfSheets write(Assembly assembly, List<Calculated> worksheets, int of) {
        PdfSheets sheets = new PdfSheets("Worksheets", PdfSheets.UPRIGHT, new Edges(assembly.job().title(), "Worksheets",
            assembly.job().note(), sheet -> "page " + sheet + " of " + of));
        write(sheets, assembly, worksheets, true);
        PdfText.cautions(sheets, assembly.cautions().stream().map(Pack.Caution::text).toList());
        return sheets;
    }

    /** Writes worksheets on sheets that hold other things too. */
    static void write(PdfSheets sheets, Assembly assembly, List<Calculated> worksheets, boolean bookmarks) {
        WorksheetPages pages = new WorksheetPages(sheets, assembly);
        for (int i = 0; i < worksheets.size(); i++) {
            if (i > 0) {
                sheets.space(24);
                sheets.room(LEAST_ROOM);
            }
            pages.one(worksheets.get(i), bookmarks);
        }
    }

    private void one(Calculated calculated, boolean bookmark) {
        Worksheet worksheet = calculated.worksheet();
        PdfText.title(sheets, worksheet.title(), bookmark ? (worksheet.wall() + " " + worksheet.meeting()).strip() + ": "
            + worksheet.title() : "");
        PdfText.text(sheets, where(worksheet));
        PdfText.heading(sheets, "Inputs");
        inputs(worksheet);
        List<Basis> sources = worksheet.steps().stream().flatMap(step -> step.basis().stream()).distinct().toList();
        PdfText.heading(sheets, "Steps");
        PdfTable steps = new PdfTable(sheets, true, 38, 140, 194, 66, 30).head("Symbol", "What", "Formula and numbers", "Result", "Basis");
        worksheet.steps().forEach(step -> steps.row(step.symbol(), step.label(), step.formula() + "\n" + step.substitution(),
            step.value().quantity().text(), step.basis().stream().map(basis -> String.valueOf(sources.indexOf(basis) + 1))
                .collect(Collectors.joining(", "))));
        steps.write();
        PdfText.heading(sheets, "Results");
        PdfTable results = new PdfTable(sheets, true, 268, 100, 100).head("Result", "Amount", "In the other system");
        worksheet.results().values().forEach(amount -> results.row(amount.label()).strong(amount.quantity().text())
            .add(ShownUnits.BOTH.beside(amount.quantity(), ShownUnits.Sense.PLAIN)));
        results.write();
        worksheet.margin().ifPresent(margin -> PdfText.strong(sheets, String.format(Locale.ROOT, "Margin %.2f: %s", margin, margin < 1
            ? "less is there than is needed." : "what is there over what is needed.")));
        bullets("To look at", worksheet.warnings());
        bullets("Assumed", worksheet.assumed());
        PdfText.heading(sheets, "Basis");
        PdfText.numbered(sheets, sources.stream().map(Basis::text).toList());
        calculated.charts().forEach(this::chart);
        calculated.drawings().forEach(this::drawing);
    }

    /** In two columns: most are short. */
    private void inputs(Worksheet worksheet) {
        PdfTable inputs = new PdfTable(sheets, true, 102, 56, 76, 102, 56, 76).head("Input", "Value", "From", "Input", "Value", "From");
        worksheet.inputs().values().forEach(input -> inputs.row(input.label(), input.value().text(), input.from()));
        if (worksheet.inputs().size() % 2 == 1) {
            inputs.row("", "", "");
        }
        inputs.write();
    }

    private void chart(Chart chart) {
        sheets.space(12);
        sheets.picture(Plot.width(), Plot.height(), graphics -> Plot.paint(chart, graphics));
    }

    private void drawing(Drawing drawing) {
        sheets.space(12);
        sheets.drawing(drawing, DRAWING_HEIGHT);
    }

    private void bullets(String title, List<String> sentences) {
        if (!sentences.isEmpty()) {
            PdfText.heading(sheets, title);
            PdfText.bullets(sheets, sentences);
        }
    }

    private String where(Worksheet worksheet) {
        WallType wall = assembly.job().wall(worksheet.wall()).orElseThrow();
        String meeting = wall.meetings().stream().filter(found -> found.id().equals(worksheet.meeting())).findFirst()
            .map(Meeting::subject).flatMap(subject -> assembly.pack().subject(subject)).map(subject -> ", "
                + subject.title().toLowerCase(Locale.ROOT) + " " + worksheet.meeting()).orElse("");
        return "Wall type " + wall.id() + ", " + wall.title() + meeting + ".";
    }
}
