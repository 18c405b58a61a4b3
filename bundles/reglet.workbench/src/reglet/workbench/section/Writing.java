package reglet.workbench.section;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;

import reglet.desk.OpenJob;
import reglet.desk.SectionPage;
import reglet.desk.SectionPage.Line;
import reglet.desk.SectionPage.Standing;
import reglet.model.SectionDocument;
import reglet.workbench.Prose;
import reglet.workbench.ReasonForm;
import reglet.workbench.Session;

/** Writing in the section: opens and closes the editor, and makes what was written a change that can be taken back. */
final class Writing {
    private final Session session;
    private final Prose prose;
    private final Page page;
    private Optional<ParagraphEditor> editor = Optional.empty();
    /** Whether the text was taken over and the page that shows it is still drafted. */
    private boolean taken;
    private boolean answering;

    /** The page that is written in. */
    interface Page {
        String section();

        Optional<SectionPage> now();

        /** The paragraph in which the keyboard stands. */
        Optional<Line> here();

        /** Draws the same page with or without an editor. */
        void redraw();

        /** Puts the keyboard at a paragraph; at one added behind it with the next page when {@code added}. */
        void stand(String paragraph, boolean added);

        void refuse(String why);

        /** Says in words what was done, until another paragraph is looked at. */
        void tell(String what);

        /** Asks why the requirements of a paragraph are left out, and who says so. */
        void askWhy(Line line, String what, ReasonForm.Given told);

        /** What was asked is answered. */
        void answered();

        /** Leads to where the value of a slot is chosen. */
        void choose(String slot);

        /** Whether keys go into the editor or the text. */
        void writing(boolean on);
    }

    Writing(Session session, Prose prose, Page page) {
        this.session = session;
        this.prose = prose;
        this.page = page;
    }

    Optional<PageText.Gap> gap() {
        return editor.map(PageText.Gap.class::cast);
    }

    Optional<ParagraphEditor> editor() {
        return editor;
    }

    // ---- the editor

    /** Opens the paragraph in which the keyboard stands, with what was typed to open it; nothing of that is lost. */
    void write(String typed) {
        if (isWritten()) {
            editor.ifPresent(open -> open.field().insert(typed));
            return;
        }
        page.here().ifPresent(line -> {
            if (line.standing() == Standing.STRUCK) {
                page.refuse("The paragraph is struck: Delete gives it back, then it can be written in.");
            } else if (!line.fixed().isEmpty()) {
                page.refuse(line.fixed());
            } else {
                open(line, false, typed);
            }
        });
    }

    /** Opens a new paragraph behind the one in which the keyboard stands. */
    void add() {
        if (isWritten()) {
            return;
        }
        page.here().ifPresent(line -> {
            if (line.standing() == Standing.STRUCK) {
                page.refuse("The paragraph is struck: add behind one that prints.");
            } else {
                open(line, true, "");
            }
        });
    }

    /** Whether a paragraph is open already; it gets the keyboard then. */
    boolean isWritten() {
        editor.ifPresent(open -> {
            open.setFocus();
            if (!open.isFocus()) {
                page.refuse("A paragraph of Section " + open.place().section() + " is still being written; finish that first.");
            }
        });
        return editor.isPresent();
    }

    private void open(Line line, boolean isNew, String typed) {
        ParagraphEditor.Place place = new ParagraphEditor.Place(page.section(), line.id(), isNew);
        ParagraphEditor made = new ParagraphEditor(prose, place, isNew ? "New paragraph behind " + line.paragraph().path() : "Text of "
            + line.paragraph().path(), this::label, page::choose, new ParagraphEditor.Listener() {
                @Override
                public void typed() {
                    session.typing().typed(Kept.place(place), source());
                }

                @Override
                public void grown() {
                    // while the editor is made there is nothing to draw yet
                    editor.ifPresent(open -> page.redraw());
                }

                @Override
                public void left() {
                    // whoever answers whose texts hold doesn't take over what is written by going there
                    if (!answering && !session.isAskedAboutFiles()) {
                        take();
                    }
                }
            });
        editor = Optional.of(made);
        taken = false;
        made.show(isNew ? ValueText.words("") : ValueText.of(line.written(), this::prints), typed);
        if (!typed.isEmpty()) {
            session.typing().typed(Kept.place(place), source());
        }
        page.redraw();
        made.field().addListener(SWT.FocusIn, event -> page.writing(true));
        made.field().addListener(SWT.FocusOut, event -> {
            // told at once: by the time that leaving is looked at, the question may be answered
            answering = session.isAskedAboutFiles();
            page.writing(false);
        });
        made.field().addVerifyKeyListener(event -> {
            if (event.keyCode == SWT.ESC) {
                event.doit = false;
                leave();
            }
        });
        made.field().addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE) {
                event.doit = false;
                leave();
            }
        });
        made.setFocus();
    }

    private String source() {
        return editor.map(ParagraphEditor::source).orElse("");
    }

    private String prints(String slot) {
        Optional<Line> here = page.here();
        String known = here.map(line -> line.printed().get(slot)).orElse(null);
        return known != null ? known : page.now().map(SectionPage::printed).map(all -> all.get(slot)).filter(text -> !text.isEmpty())
            .orElse("‹" + label(slot) + "›");
    }

    String label(String slot) {
        return session.snapshot().map(now -> now.label(slot.replaceFirst("\\.(?:value|method)$", ""))).orElse(slot);
    }

    /** Takes over what stands in the editor. */
    void take() {
        ParagraphEditor open = editor.orElse(null);
        if (open == null || taken) {
            return;
        }
        if (!open.isChanged()) {
            leave();
            return;
        }
        ParagraphEditor.Place place = open.place();
        String own = open.source();
        if (own.isEmpty() && place.isNew()) {
            leave();
        } else if (own.isEmpty()) {
            explain("The text is empty. A paragraph without text is struck: Escape leaves it as it was, then Delete strikes it.");
        } else {
            taken = true;
            session.change((place.isNew() ? "paragraph added behind " : "text of ") + number(place.paragraph()),
                List.of(Kept.file(place.section())), job -> {
                    OpenJob changed = Kept.write(job, place, own);
                    // on disk; the editor goes when the page that shows it is there
                    session.onWindow(() -> session.typing().done(Kept.place(place)));
                    return changed;
                }, refused -> {
                    taken = false;
                    explain(refused);
                });
        }
    }

    private void explain(String words) {
        editor.ifPresent(open -> open.explain(words, new ParagraphEditor.Listener() {
            @Override
            public void typed() {
                // said, not typed
            }

            @Override
            public void grown() {
                page.redraw();
            }

            @Override
            public void left() {
                // the keyboard stays where it is
            }
        }));
    }

    /** Another page is there. */
    void drafted() {
        if (taken) {
            close();
        }
    }

    /** Leaves the paragraph as it was. */
    void leave() {
        if (editor.isEmpty()) {
            return;
        }
        editor.ifPresent(open -> session.typing().done(Kept.place(open.place())));
        close();
        page.redraw();
    }

    private void close() {
        editor.ifPresent(open -> {
            boolean focus = open.isFocus();
            editor = Optional.empty();
            page.writing(false);
            page.stand(open.place().paragraph(), taken && open.place().isNew());
            taken = false;
            if (focus) {
                prose.control().setFocus();
            }
            open.dispose();
        });
    }

    /** Another job is there: what is written stays kept for the one that it belongs to, and is offered when that is opened again. */
    void drop() {
        editor.ifPresent(open -> {
            editor = Optional.empty();
            taken = false;
            page.writing(false);
            open.dispose();
        });
    }

    private String number(String paragraph) {
        return page.now().flatMap(now -> now.line(paragraph)).map(Line::paragraph).map(SectionDocument.Paragraph::path).orElse(paragraph);
    }
}
