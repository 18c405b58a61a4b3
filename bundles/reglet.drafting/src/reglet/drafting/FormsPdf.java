package reglet.drafting;

import java.util.List;
import java.util.stream.Collectors;

import reglet.drafting.Form.Grid;
import reglet.drafting.Letterhead.Edge;
import reglet.drafting.Letterhead.Subject;
import reglet.model.Assembly;
import reglet.model.Office;
import reglet.model.Pack;
import reglet.model.UnusableInput;

/** Forms as one PDF: a first page with their list and the cautions, then each on sheets of its own. */
public final class FormsPdf {
    private static final String TITLE = "Forms for the site";
    private static final float SIGN_ROOM = 60;

    private final Assembly assembly;
    private final List<Form> forms;
    private final Letterhead letterhead;
    private final PdfSheets sheets;

    private FormsPdf(Assembly assembly, List<Form> forms, Letterhead letterhead, int of) {
        this.letterhead = letterhead;
        this.assembly = assembly;
        this.forms = forms;
        this.sheets = PdfLetterhead.cited(TITLE + ": " + assembly.job().title(), assembly.job().title(), letterhead, true, String::valueOf,
            sheet -> String.valueOf(of), sheet -> "page " + sheet + " of " + of);
    }

    /** Forms without an office's letterhead. The same forms give the same bytes. */
    public static byte[] of(Assembly assembly, List<Form> forms) {
        return of(assembly, forms, subject(assembly).plain());
    }

    /** @throws UnusableInput if a template, picture or font of the office can't be used */
    public static byte[] of(Assembly assembly, List<Form> forms, Office office) throws UnusableInput {
        return of(assembly, forms, subject(assembly).of(office));
    }

    static Subject subject(Assembly assembly) {
        return new Subject(assembly.job().title(), assembly.job().note(), "", TITLE, TITLE, new Edge(assembly.job().title(), TITLE),
            new Edge(assembly.job().note(), ""));
    }

    private static byte[] of(Assembly assembly, List<Form> forms, Letterhead letterhead) {
        FormsPdf trial = new FormsPdf(assembly, forms, letterhead, 0);
        trial.write();
        FormsPdf pages = new FormsPdf(assembly, forms, letterhead, trial.sheets.sheet());
        pages.write();
        return pages.sheets.bytes();
    }

    private void write() {
        PdfLetterhead.sender(sheets, letterhead);
        PdfText.title(sheets, TITLE, "");
        PdfText.text(sheets, assembly.job().title() + ". " + assembly.job().note());
        PdfText.text(sheets, "Required values come from the job's choices and change with them; print the forms anew after a change. "
            + "Frequencies are the least that the named sources or practice ask for; the sections may ask for more.");
        PdfText.text(sheets, "In this set: " + forms.stream().map(Form::title).collect(Collectors.joining("; ")) + ".");
        PdfText.cautions(sheets, assembly.cautions().stream().map(Pack.Caution::text).toList());
        forms.forEach(this::one);
    }

    private void one(Form form) {
        sheets.next();
        PdfText.title(sheets, form.title(), form.title());
        form.texts().forEach(text -> PdfText.text(sheets, text));
        // a long list would leave the lines to sign on a sheet of their own
        boolean early = form.grids().size() > 1;
        if (early) {
            sheets.space(8);
            signs(form);
        }
        for (Grid grid : form.grids()) {
            sheets.space(10);
            float[] widths = new float[grid.widths().size()];
            for (int i = 0; i < widths.length; i++) {
                widths[i] = grid.widths().get(i);
            }
            PdfTable table = new PdfTable(sheets, true, widths).head(grid.titles().toArray(String[]::new));
            grid.rows().forEach(row -> table.row(row.toArray(String[]::new)));
            table.write();
        }
        if (!early) {
            sheets.room(SIGN_ROOM);
            sheets.space(20);
            signs(form);
        }
    }

    private void signs(Form form) {
        form.signs().forEach(who -> {
            PdfText.text(sheets, Form.line(who));
            sheets.space(8);
        });
    }
}
