package reglet.workbench;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

import reglet.desk.AlternateChanges;
import reglet.desk.Bid;
import reglet.desk.Saving;
import reglet.model.Alternate;
import reglet.model.Change;
import reglet.model.Option;

/** Changes of choices as they are made in the window: of the version that the bid shown has, each one step of undo. */
final class Choosing {
    private final Session session;

    Choosing(Session session) {
        this.session = session;
    }

    /** Accepts these options for a component, in place of those accepted now. */
    void choose(String wall, String component, List<Option> accept) {
        Bid bid = session.bid();
        List<String> ids = accept.stream().map(Option::id).toList();
        change(wall, place(wall, component) + ": " + String.join(" or ", accept.stream().map(Option::title).toList()),
            job -> AlternateChanges.choose(job, bid, wall, component, ids), this::say);
    }

    /** Takes back what is accepted for a component: an alternate's own choice, so that the base bid's holds, or the base bid's. */
    void undecide(String wall, String component) {
        Bid bid = session.bid();
        boolean base = bid.version(session.job().job(), wall, component) == 0;
        change(wall, place(wall, component) + (base ? ": undecided" : ": as the base bid"),
            job -> AlternateChanges.takeBack(job, bid, wall, component), this::say);
    }

    /**
     * Sets a value as typed.
     *
     * @param refused given the reason in words, on the window's thread, when the value can't be used; nothing is changed then
     */
    void set(String wall, String component, String property, String value, Consumer<String> refused) {
        Bid bid = session.bid();
        boolean base = bid.version(session.job().job(), wall, component) == 0;
        change(wall, place(wall, component) + (base ? "." : ", ") + property + ": " + value,
            job -> AlternateChanges.set(job, bid, wall, component, property, value), refused);
    }

    /** Says who fixed a choice, or why, as the line "by" or "because" of the choice; its name is for the words of undo. */
    void remark(String wall, String component, Fields.Line line, String words, Consumer<String> refused) {
        Bid bid = session.bid();
        change(wall, place(wall, component) + ", " + line.name().toLowerCase(Locale.ROOT) + ": " + words,
            job -> AlternateChanges.remark(job, bid, wall, component, line.key(), words), refused);
    }

    /** Makes the changes of a remedy, of facts too, as one that can be taken back. */
    void remedy(String label, List<Change> changes) {
        session.change(label, Saving.files(session.job(), changes), job -> Saving.apply(job, changes), this::say);
    }

    /** Where a typed value belongs: "W1.lath.alternates.2.weight". */
    String address(String wall, String component, String property) {
        return session.bid().address(session.job().job(), wall, component) + "." + property;
    }

    /** What is changed, in the words of undo: "W1 lath", "W1 lath, Alternate No. 2". */
    private String place(String wall, String component) {
        int version = session.bid().version(session.job().job(), wall, component);
        return wall + " " + component + (version == 0 ? "" : ", " + Alternate.names(List.of(version)));
    }

    private void change(String wall, String label, Edit.Change change, Consumer<String> refused) {
        session.change(label, List.of(Saving.wallFile(wall)), change, refused);
    }

    private void say(String refused) {
        session.say(refused, true);
    }
}
