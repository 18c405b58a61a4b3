package reglet.drafting;

import java.util.List;

import reglet.drafting.PdfSheets.Edges;
import reglet.model.Assembly;
import reglet.model.Pack;

/** The register of exceptions as a PDF. */
public final class ExceptionPages {
    private final PdfSheets sheets;
    private final Assembly assembly;
    private final List<Exceptions.Line> lines;

    private ExceptionPages(Assembly assembly, List<Exceptions.Line> lines, int of) {
        this.assembly = assembly;
        this.lines = lines;
        this.sheets = new PdfSheets(Exceptions.TITLE, PdfSheets.WIDE, new Edges(assembly.job().title(), Exceptions.TITLE, Exceptions.TITLE,
            sheet -> "page " + sheet + " of " + of));
    }

    /** The pages; one that says so when nothing is accepted. */
    public static byte[] of(Assembly assembly, List<Exceptions.Entry> entries) {
        List<Exceptions.Line> lines = Exceptions.lines(entries);
        ExceptionPages trial = new ExceptionPages(assembly, lines, 0);
        trial.write();
        ExceptionPages pages = new ExceptionPages(assembly, lines, trial.sheets.sheet());
        pages.write();
        return pages.sheets.bytes();
    }

    private void write() {
        PdfText.title(sheets, Exceptions.TITLE, "");
        PdfText.text(sheets, assembly.job().title() + "." + (assembly.job().note().isEmpty() ? "" : " " + assembly.job().note()));
        PdfText.text(sheets, lines.isEmpty() ? Exceptions.NONE : Exceptions.ABOUT);
        if (!lines.isEmpty()) {
            sheets.space(8);
            PdfTable table = new PdfTable(sheets, true, 24, 96, 42, 62, 190, 124, 72, 96)
                .head("No.", "Rule", "Wall", "Kind", "Finding", "Reason", "Accepted by", "Basis");
            lines.forEach(line -> table.row(Integer.toString(line.number()), line.rule(),
                line.at().isEmpty() ? line.wall() : line.wall() + "\n" + line.at(), line.kind(), line.says()).strong(line.because())
                .row(line.by(), line.basis()));
            table.write();
        }
        PdfText.cautions(sheets, assembly.cautions().stream().map(Pack.Caution::text).toList());
    }
}
