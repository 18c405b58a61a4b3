package reglet.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import reglet.drafting.Unprinted;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.TextChange;
import reglet.model.TextChange.Kind;
import reglet.model.UnusableInput;
import reglet.store.SectionEdits;

/**
 * What a section would leave out on purpose with one of its paragraphs.
 *
 * @param strikes whether the paragraph has to be struck for it; else a person's text has taken it out already
 * @param keys    the slots of the requirements that nothing in the section states then: "lath.weight"
 */
record LeavingOut(boolean strikes, List<String> keys) {
    LeavingOut {
        keys = List.copyOf(keys);
    }

    static LeavingOut of(OpenJob job, String section, String paragraph) throws UnusableInput {
        List<String> gone = missing(job, section, paragraph);
        if (!gone.isEmpty()) {
            return new LeavingOut(false, gone);
        }
        Place at = Place.of(SectionEdits.file(section));
        List<TextChange> struck = new ArrayList<>(without(job, section, paragraph, change -> change.kind() == Kind.MOVE));
        struck.add(new TextChange(section, paragraph, Kind.STRIKE, "", "", "", at, at));
        List<String> keys = missing(job.with(job.job().changing(struck)), section, paragraph);
        if (keys.isEmpty()) {
            throw new UnusableInput(new Problem(at, "the paragraph states nothing of the choices that the section doesn't state elsewhere",
                "strike it, which needs no reason"));
        }
        return new LeavingOut(true, keys);
    }

    /** What is left out only as long as a paragraph is changed or struck. */
    static List<String> statedAgain(OpenJob job, String section, String paragraph) throws UnusableInput {
        if (job.job().changes().stream().noneMatch(change -> change.section().equals(section) && change.kind() == Kind.LEAVE_OUT)) {
            return List.of();
        }
        List<String> after = leftOut(job.with(job.job().changing(without(job, section, paragraph, change -> false))), section);
        return leftOut(job, section).stream().filter(key -> !after.contains(key)).toList();
    }

    private static List<String> leftOut(OpenJob job, String section) throws UnusableInput {
        return Unprinted.of(job.assembly(), job.section(section)).stream().flatMap(one -> one.leftOut().stream())
            .map(TextChange::paragraph).distinct().toList();
    }

    /** What a block on the paragraph took out of the section, and nothing says why. */
    private static List<String> missing(OpenJob job, String section, String paragraph) throws UnusableInput {
        return Unprinted.of(job.assembly(), job.section(section)).stream().filter(one -> one.leftOut().isEmpty()
            && one.change().paragraph().equals(paragraph)).map(Unprinted::slot).distinct().toList();
    }

    /** The changes of the job without those of one paragraph. */
    private static List<TextChange> without(OpenJob job, String section, String paragraph, Predicate<TextChange> but) {
        return job.job().changes().stream().filter(change -> !change.section().equals(section) || !change.paragraph().equals(paragraph)
            || change.kind() == Kind.ADD || change.kind() == Kind.LEAVE_OUT || but.test(change)).toList();
    }
}
