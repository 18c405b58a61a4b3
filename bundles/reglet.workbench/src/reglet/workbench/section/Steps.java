package reglet.workbench.section;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import reglet.desk.OpenJob;
import reglet.desk.OwnTexts;
import reglet.desk.SectionPage;
import reglet.desk.SectionPage.Line;
import reglet.desk.SectionPage.Standing;
import reglet.model.PaperRule;
import reglet.model.SectionDocument;
import reglet.model.TextChange;
import reglet.model.UnusableInput;
import reglet.workbench.Session;

/** Steps on the paragraph in which the keyboard stands: each is one change of the section's file that can be taken back. */
final class Steps {
    private final Session session;
    private final Writing writing;
    private final Writing.Page page;
    /** A paragraph that is being moved, and the article that it stood in. */
    private String moved = "";
    private String home = "";

    private interface Step {
        OpenJob of(OpenJob job) throws UnusableInput, IOException;
    }

    Steps(Session session, Writing writing, Writing.Page page) {
        this.session = session;
        this.writing = writing;
        this.page = page;
    }

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
            moved = line.id();
            home = article(moved).map(SectionPage.Article::id).orElse("");
            step(line, what, step);
        }
    }

    /** Leaves out on purpose what the paragraph states of the choices; asks why. */
    void leaveOut() {
        if (writing.isWritten()) {
            return;
        }
        page.here().ifPresent(line -> {
            List<String> missing = line.findings().stream().filter(finding -> finding.rule().equals(PaperRule.PRINTED.id()))
                .flatMap(finding -> finding.missing().stream()).distinct().toList();
            List<String> stated = line.paragraph().text().stream().filter(SectionDocument.Slot.class::isInstance)
                .map(SectionDocument.Slot.class::cast).filter(slot -> !slot.requirements().isEmpty()).map(SectionDocument.Slot::ref)
                .distinct().toList();
            List<String> slots = missing.isEmpty() ? stated : missing;
            if (!line.leftOut().isEmpty()) {
                page.refuse("It is left out already: " + line.leftOut().get(0));
            } else if (slots.isEmpty() || line.standing() == Standing.ADDED) {
                page.refuse("This paragraph states nothing of the choices that would be missed; Delete strikes it without a reason.");
            } else {
                boolean gone = !missing.isEmpty() || line.standing() == Standing.STRUCK;
                page.askWhy(line, "To be left out of Section " + page.section() + " on purpose"
                    + (gone ? "" : ", with Paragraph " + line.paragraph().path() + " struck") + ": "
                    + String.join(", ", slots.stream().map(writing::label).toList()) + ".",
                    (because, by, refused) -> leaveOut(line, gone, because + " (" + by + ")", refused));
            }
        });
    }

    private void leaveOut(Line line, boolean gone, String because, Consumer<String> refused) {
        String paragraph = line.block().filter(block -> gone).map(TextChange::paragraph).orElse(line.id());
        session.change((line.standing() == Standing.STRUCK ? "struck paragraph" : line.paragraph().path()) + " left out on purpose",
            List.of(Kept.file(page.section())), job -> {
                OpenJob left = OwnTexts.leaveOut(job, page.section(), paragraph, because);
                session.onWindow(page::answered);
                return left;
            }, refused);
    }

    void settle(Line line) {
        step(line, "settled", job -> OwnTexts.settle(job, page.section(), line.block().orElseThrow().paragraph()).job());
    }

    void keep(Line line) {
        step(line, "settled", job -> OwnTexts.keep(job, page.section(), line.block().orElseThrow().paragraph()));
    }

    private void step(Line line, String what, Step step) {
        if (writing.isWritten()) {
            return;
        }
        String section = page.section();
        Consumer<String> refused = page::refuse;
        session.change((line.standing() == Standing.STRUCK ? "struck paragraph" : line.paragraph().path()) + " " + what,
            List.of(Kept.file(section)), step::of, refused);
    }

    /** The page that is there is drawn: says what moving did that isn't seen at a glance. Whether something was moved. */
    boolean drawn() {
        Optional<SectionPage.Article> now = article(moved);
        if (now.isPresent() && !now.get().id().equals(home)) {
            page.tell("Moved out of " + page.now().flatMap(all -> all.articles().stream().filter(one -> one.id().equals(home)).findFirst())
                .map(Steps::named).orElse("an article that prints no more") + ", into " + named(now.get()) + ".");
            moved = "";
        }
        return now.isPresent();
    }

    private Optional<SectionPage.Article> article(String paragraph) {
        return page.now().flatMap(now -> now.articles().stream().filter(article -> article.lines().stream()
            .anyMatch(line -> line.id().equals(paragraph))).findFirst());
    }

    /** "Article 2.5, MORTAR MATERIALS". */
    private static String named(SectionPage.Article article) {
        return "Article " + article.number() + ", " + article.title();
    }
}
