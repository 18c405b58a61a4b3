package reglet.workbench.section;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;

import reglet.desk.OpenJob;
import reglet.desk.OwnTexts;
import reglet.desk.SectionPage;
import reglet.desk.SectionPage.Line;
import reglet.desk.SectionPage.Standing;
import reglet.model.SectionDocument;
import reglet.model.UnusableInput;
import reglet.workbench.Prose;
import reglet.workbench.Session;

/** Writing in the section: opens and closes the editor, and makes each step a change that can be taken back. */
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

        /** Leads to where the value of a slot is chosen. */
        void choose(String slot);

        /** Whether keys go into the editor or the text. */
        void writing(boolean on);
    }

    private interface Step {
        OpenJob of(OpenJob job) throws UnusableInput, IOException;
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

    /** Opens the paragraph in which the keyboard stands. */
    void write() {
        if (isWritten()) {
            return;
        }
        page.here().ifPresent(line -> {
            if (line.standing() == Standing.STRUCK) {
                page.refuse("The paragraph is struck: Delete gives it back, then it can be written in.");
            } else if (!line.fixed().isEmpty()) {
                page.refuse(line.fixed());
            } else {
                open(line, false);
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
                open(line, true);
            }
        });
    }

    /** Whether a paragraph is open already; it gets the keyboard then. */
    private boolean isWritten() {
        editor.ifPresent(open -> {
            open.setFocus();
            if (!open.isFocus()) {
                page.refuse("A paragraph of Section " + open.place().section() + " is still being written; finish that first.");
            }
        });
        return editor.isPresent();
    }

    private void open(Line line, boolean isNew) {
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
        made.show(isNew ? ValueText.words("") : ValueText.of(text(line), this::prints));
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

    /** The text of a paragraph as it is written: of one that comes from a person's block, all of the block. */
    private String text(Line line) {
        return line.block().map(block -> block.text()).orElseGet(line::written);
    }

    private String prints(String slot) {
        Optional<Line> here = page.here();
        String known = here.map(line -> line.printed().get(slot)).orElse(null);
        return known != null ? known : page.now().map(SectionPage::printed).map(all -> all.get(slot)).filter(text -> !text.isEmpty())
            .orElse("‹" + label(slot) + "›");
    }

    private String label(String slot) {
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

    // ---- steps on the paragraph in which the keyboard stands

    /** Strikes it, or gives back one that is struck. */
    void strike() {
        page.here().ifPresent(line -> {
            if (line.standing() == Standing.STRUCK) {
                step(line, "given back", job -> OwnTexts.giveBack(job, page.section(), line.block().map(block -> block.paragraph()).orElse(
                    line.id())));
            } else {
                step(line, line.standing() == Standing.ADDED ? "taken away" : "struck", job -> OwnTexts.strike(job, page.section(), line
                    .id()));
            }
        });
    }

    /** Gives it back to the library. */
    void giveBack() {
        page.here().ifPresent(this::giveBack);
    }

    void giveBack(Line line) {
        if (line.standing() == Standing.ADDED) {
            page.refuse("You added this paragraph, the library has none in its place. Delete takes it away.");
        } else if (!line.isOwn()) {
            page.refuse("This is the library's text already.");
        } else {
            step(line, "given back", job -> OwnTexts.giveBack(job, page.section(), line.block().map(block -> block.paragraph()).orElse(line
                .id())));
        }
    }

    void up() {
        page.here().ifPresent(line -> move(line, "moved up", job -> OwnTexts.up(job, page.section(), line.id())));
    }

    void down() {
        page.here().ifPresent(line -> move(line, "moved down", job -> OwnTexts.down(job, page.section(), line.id())));
    }

    private void move(Line line, String what, Step step) {
        if (line.standing() == Standing.STRUCK) {
            page.refuse("The paragraph is struck; one that prints can be moved.");
        } else {
            step(line, what, step);
        }
    }

    void settle(Line line) {
        step(line, "settled", job -> OwnTexts.settle(job, page.section(), line.block().orElseThrow().paragraph()).job());
    }

    void keep(Line line) {
        step(line, "settled", job -> OwnTexts.keep(job, page.section(), line.block().orElseThrow().paragraph()));
    }

    private void step(Line line, String what, Step step) {
        if (isWritten()) {
            return;
        }
        String section = page.section();
        Consumer<String> refused = page::refuse;
        session.change((line.standing() == Standing.STRUCK ? "struck paragraph" : line.paragraph().path()) + " " + what,
            List.of(Kept.file(section)), step::of, refused);
    }

    private String number(String paragraph) {
        return page.now().flatMap(now -> now.line(paragraph)).map(Line::paragraph).map(SectionDocument.Paragraph::path).orElse(paragraph);
    }
}
