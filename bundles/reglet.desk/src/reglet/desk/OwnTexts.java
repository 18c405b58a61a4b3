package reglet.desk;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

import reglet.drafting.BlockPart;
import reglet.drafting.LibraryText;
import reglet.model.Job;
import reglet.model.Nearest;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.TextChange;
import reglet.model.TextChange.Kind;
import reglet.model.UnusableInput;
import reglet.store.Jobs;
import reglet.store.SectionEdits;

/**
 * What a person does to the paragraphs of a section. Each change is spliced into the section's file, which {@link SectionEdits#file} names,
 * with the library's text that it was made on, and gives the job as it is read afterwards.
 */
public final class OwnTexts {

    private OwnTexts() {
    }

    /**
     * A paragraph as somebody edits it.
     *
     * @param paragraph id
     * @param library   the library's text with slots; "" for what a person added and for what the program makes
     * @param text      what prints now, Markdown with slots; of one that can't be told apart in its block, all of the block
     * @param block     the block that it was written in; empty when the text is the library's
     * @param part      where its words stand in the block; empty where they can't be told apart
     */
    public record OwnText(String paragraph, String library, String text, Optional<TextChange> block, Optional<BlockPart> part) {
    }

    /**
     * A paragraph of a drafted section.
     *
     * @throws UnusableInput when there is none of this id, or the section can't be drafted
     */
    public static OwnText of(OpenJob job, String section, String paragraph) throws UnusableInput {
        SectionDocument document = job.section(section);
        List<String> ids = document.paragraphs().stream().map(Paragraph::id).toList();
        Paragraph found = document.paragraphs().stream().filter(one -> one.id().equals(paragraph)).findFirst()
            .orElseThrow(() -> missing(section, paragraph, ids));
        Optional<TextChange> block = block(job, section, found);
        Optional<BlockPart> part = block.flatMap(one -> BlockPart.of(one, document, found));
        return new OwnText(paragraph, LibraryText.of(job.pack(), section, paragraph).filter(text -> !isAdded(paragraph)).orElse(""),
            part.map(BlockPart::text).or(() -> block.map(TextChange::text)).orElseGet(() -> LibraryText.written(found)), block, part);
    }

    /** The file in which a job keeps its changes of a section: "sections/04-73-00.md". */
    public static String file(String section) {
        return SectionEdits.file(section);
    }

    /**
     * Gives a paragraph another text; of one that stands in a block with others, its own words there. A text that says what the library
     * says makes it the library's again.
     */
    public static OpenJob change(OpenJob job, String section, String paragraph, String own) throws UnusableInput, IOException {
        OwnText text = of(job, section, paragraph);
        String whole = text.part().filter(part -> !own.isBlank()).map(part -> part.with(own)).orElse(own);
        if (text.block().isPresent() && text.block().get().kind() == Kind.CHANGE && isLibrary(job, section, text, whole)) {
            return splice(job, section, file -> SectionEdits.remove(file, text.block().get().at().line()));
        }
        return printable(job, section, file -> text.block().isPresent() ? SectionEdits.rewrite(file, text.block().get().at().line(), whole)
            : SectionEdits.change(file, paragraph, own, text.library()));
    }

    /** Strikes a paragraph; takes away the block of one that a person added, when nothing else comes from it. */
    public static OpenJob strike(OpenJob job, String section, String paragraph) throws UnusableInput, IOException {
        OwnText text = of(job, section, paragraph);
        if (text.block().isPresent() && text.block().get().kind() == Kind.ADD && isAlone(job, section, text.block().get())) {
            return splice(job, section, file -> SectionEdits.remove(file, text.block().get().at().line()));
        }
        return splice(job, section, file -> SectionEdits.strike(file, paragraph, text.library()));
    }

    /** Adds a paragraph behind another. */
    public static OpenJob add(OpenJob job, String section, String after, String own) throws UnusableInput, IOException {
        of(job, section, after);
        return printable(job, section, file -> SectionEdits.add(file, after, own));
    }

    /** Moves a paragraph, with what stands below it, behind another. */
    public static OpenJob move(OpenJob job, String section, String paragraph, String after) throws UnusableInput, IOException {
        of(job, section, paragraph);
        of(job, section, after);
        return splice(job, section, file -> SectionEdits.move(file, paragraph, after));
    }

    /**
     * Moves a paragraph, with what goes along with it, before the one in front of it that stands below the same text; past the edge of its
     * article to the end of the one before.
     */
    public static OpenJob up(OpenJob job, String section, String paragraph) throws UnusableInput, IOException {
        return moved(job, section, Moving.up(job, section, paragraph));
    }

    /**
     * Moves a paragraph, with what goes along with it, behind the next one that stands below the same text; past the edge of its article to
     * the head of the next one.
     */
    public static OpenJob down(OpenJob job, String section, String paragraph) throws UnusableInput, IOException {
        return moved(job, section, Moving.down(job, section, paragraph));
    }

    private static OpenJob moved(OpenJob job, String section, Moving.Step step) throws UnusableInput, IOException {
        return splice(job, section, file -> step.block().isPresent() ? SectionEdits.remove(file, step.block().get().at().line())
            : SectionEdits.move(file, step.paragraph(), step.after()));
    }

    /**
     * Gives a paragraph back to the library: it is no longer changed, struck or moved, and what was left out with it is no longer left
     * out. Struck ones aren't drafted, so any id is taken.
     */
    public static OpenJob giveBack(OpenJob job, String section, String paragraph) throws UnusableInput, IOException {
        List<String> stated = LeavingOut.statedAgain(job, section, paragraph);
        return splice(job, section, file -> {
            String without = SectionEdits.giveBack(file, paragraph);
            for (String key : stated) {
                without = SectionEdits.stateAgain(without, key);
            }
            return without;
        });
    }

    /**
     * Leaves out on purpose what a paragraph states of the choices and nothing else does: strikes it, unless a person's text has taken that
     * out of it already, and writes the reason down for each requirement.
     *
     * @param because the reason, and whose it is
     * @throws UnusableInput when the section would state everything all the same
     */
    public static OpenJob leaveOut(OpenJob job, String section, String paragraph, String because) throws UnusableInput, IOException {
        LeavingOut leaving = LeavingOut.of(job, section, paragraph);
        String why = because.strip().replaceAll("\\s*\\R\\s*", " ");
        String library = leaving.strikes() ? of(job, section, paragraph).library() : "";
        return splice(job, section, file -> {
            String left = leaving.strikes() ? SectionEdits.strike(file, paragraph, library) : file;
            for (String key : leaving.keys()) {
                left = SectionEdits.leaveOut(left, key, why);
            }
            return left;
        });
    }

    /**
     * Says that a person has looked at what the library made of a paragraph since: the block quotes the library's text of today, and a
     * text that the library's new words were merged into is written down as it prints.
     *
     * @return the job, and what was done in a sentence
     * @throws UnusableInput when no block changes or strikes the paragraph, or the library has no text for it
     */
    public static Settled settle(OpenJob job, String section, String paragraph) throws UnusableInput, IOException {
        TextChange block = quoting(job, section, paragraph);
        String today = today(job, section, block);
        Optional<String> merged = LibraryText.merged(job.pack(), block);
        if (merged.isEmpty() && block.madeOn().equals(today)) {
            return new Settled(job, "\"" + paragraph + "\" was made on the library's text of today; nothing to settle");
        }
        String own = merged.orElse(block.text());
        OpenJob settled = splice(job, section, file -> {
            String quoted = SectionEdits.requote(file, block.at().line(), today);
            return own.equals(block.text()) ? quoted : SectionEdits.rewrite(quoted, block.at().line(), own);
        });
        return new Settled(settled, "\"" + paragraph + "\" now quotes the library's text of today, \"" + today.replaceAll("\\s+", " ")
            + "\"; "
            + (block.kind() == Kind.STRIKE ? "it stays struck" : own.equals(block.text()) ? "your text is as it was"
                : "your text took in the new words: \"" + own + "\""));
    }

    /**
     * Says that a person has looked at what the library made of a paragraph since and leaves their own text as they wrote it: the block
     * quotes the library's text of today.
     *
     * @throws UnusableInput when no block changes or strikes the paragraph, or the library has no text for it
     */
    public static OpenJob keep(OpenJob job, String section, String paragraph) throws UnusableInput, IOException {
        TextChange block = quoting(job, section, paragraph);
        String today = today(job, section, block);
        return splice(job, section, file -> SectionEdits.requote(file, block.at().line(), today));
    }

    private static TextChange quoting(OpenJob job, String section, String paragraph) throws UnusableInput {
        List<TextChange> blocks = job.job().changes().stream().filter(change -> change.section().equals(section)
            && (change.kind() == Kind.CHANGE || change.kind() == Kind.STRIKE)).toList();
        return blocks.stream().filter(change -> change.paragraph().equals(paragraph)).findFirst()
            .orElseThrow(() -> missing(section, paragraph, blocks.stream().map(TextChange::paragraph).toList()));
    }

    private static String today(OpenJob job, String section, TextChange block) throws UnusableInput {
        return LibraryText.of(job.pack(), section, block.paragraph()).orElseThrow(() -> new UnusableInput(new Problem(block.at(),
            "the library has no text of \"" + block.paragraph() + "\"", "take the block away, or name a paragraph that the library has")));
    }

    /** A job after settling, and what was done. */
    public record Settled(OpenJob job, String says) {
    }

    private static boolean isAdded(String paragraph) {
        return paragraph.contains("+");
    }

    /** The block that a person's paragraph comes from; paragraphs below one come from the block that holds it. */
    private static Optional<TextChange> block(OpenJob job, String section, Paragraph paragraph) {
        return paragraph.own() ? LibraryText.block(job.assembly(), section, paragraph) : Optional.empty();
    }

    /** The library's text, or the one that it drafts for the walls here. */
    private static boolean isLibrary(OpenJob job, String section, OwnText text, String own) throws UnusableInput {
        TextChange block = text.block().get();
        SectionDocument without = job.with(job.job().changing(job.job().changes().stream().filter(change -> !change.equals(block))
            .toList())).section(section);
        return without.paragraphs().stream().filter(one -> one.id().equals(block.paragraph())).map(LibraryText::written)
            .anyMatch(library -> words(own).equals(words(library)));
    }

    private static String words(String markdown) {
        return markdown.replaceAll("\\\\(?=\\p{Punct})", "").strip();
    }

    private static boolean isAlone(OpenJob job, String section, TextChange block) throws UnusableInput {
        return job.section(section).paragraphs().stream()
            .filter(paragraph -> block(job, section, paragraph).filter(block::equals).isPresent()).count() == 1;
    }

    /** A text that couldn't be printed is refused and writes nothing, as one that couldn't be read. */
    private static OpenJob printable(OpenJob job, String section, UnaryOperator<String> splice) throws UnusableInput, IOException {
        String before = Saving.text(job, SectionEdits.file(section));
        OpenJob changed = splice(job, section, splice);
        try {
            changed.section(section);
            return changed;
        } catch (UnusableInput unprintable) {
            Saving.restore(job, Map.of(SectionEdits.file(section), before));
            throw unprintable;
        }
    }

    private static List<TextChange> changes(Job job, String section) {
        return job.changes().stream().filter(change -> change.section().equals(section)).toList();
    }

    private static OpenJob splice(OpenJob job, String section, UnaryOperator<String> splice) throws UnusableInput, IOException {
        String file = SectionEdits.file(section);
        if (!changes(Jobs.read(job.folder(), job.pack()), section).equals(changes(job.job(), section))) {
            // blocks are found by their lines, and another program's words are never written over
            throw new UnusableInput(new Problem(Place.of(file), "the file was changed by another program since it was read",
                "read the job again, then make the change"));
        }
        try {
            return Saving.restore(job, Map.of(file, splice.apply(Saving.text(job, file))));
        } catch (IllegalArgumentException wrong) {
            throw new UnusableInput(new Problem(Place.of(file), wrong.getMessage(), ""));
        }
    }

    private static UnusableInput missing(String section, String paragraph, List<String> ids) {
        String hint = Nearest.hint(paragraph, ids);
        return new UnusableInput(new Problem(Place.of(SectionEdits.file(section)), "section " + section + " has no paragraph \"" + paragraph
            + "\" for this", hint.isEmpty() ? "expected an id as the drafted Markdown prints them" : hint));
    }
}
