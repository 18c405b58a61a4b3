package reglet.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One line of the register.
 *
 * @param id        stable id: "lath.product-data"
 * @param section   section number
 * @param paragraph number of the paragraph that asks for it: "1.5.A"
 * @param item      what it is about: "Lath"
 * @param component component id; ""
 * @param kind      action, informational or closeout
 * @param sort      what else it is
 * @param code      its code in the scheme that the job chose; ""
 * @param sends     what is to be sent
 * @param sender    who sends it; "" where the job doesn't say
 * @param status    "open", or what the submittals say of it
 * @param from      ids of the items that a person made it of; empty for an item as it was derived
 * @param note      what a person changed, with reason and name; ""
 * @param timing    when it is needed, where the job says
 * @param under     the alternates that it has to do with; empty for one of the base
 */
public record RegisterItem(String id, String section, String paragraph, String item, String component, Kind kind, Sort sort, String code,
        String sends, String sender, String status, List<String> from, String note, Optional<Timing> timing, Optional<Under> under) {

    public RegisterItem {
        from = List.copyOf(from);
    }

    /** An item as it is derived: open, without dates. */
    public static RegisterItem of(String id, String section, String paragraph, String item, String component, Kind kind, Sort sort,
        String sends) {
        return new RegisterItem(id, section, paragraph, item, component, kind, sort, "", sends, "", "open", List.of(), "",
            Optional.empty(), Optional.empty());
    }

    /** The same item with another status. */
    public RegisterItem standing(String newStatus) {
        return new RegisterItem(id, section, paragraph, item, component, kind, sort, code, sends, sender, newStatus, from, note, timing,
            under);
    }

    /** The same item with the number of another paragraph. */
    public RegisterItem at(String newParagraph) {
        return new RegisterItem(id, section, newParagraph, item, component, kind, sort, code, sends, sender, status, from, note, timing,
            under);
    }

    /** The same item with code, sender and dates. */
    public RegisterItem planned(String newCode, String newSender, Optional<Timing> newTiming) {
        return new RegisterItem(id, section, paragraph, item, component, kind, sort, newCode, sends, newSender, status, from,
            note, newTiming, under);
    }

    /** The same item as one that alternates bring or replace. */
    public RegisterItem under(Under newUnder) {
        return new RegisterItem(id, section, paragraph, item, component, kind, sort, code, sends, sender, status, from, note, timing,
            Optional.of(newUnder));
    }

    /** Whether it has to be sent: not while its alternate isn't accepted, and no more when one replaces it. */
    public boolean isDue() {
        return under.stream().allMatch(one -> one.state() == Under.State.ACCEPTED);
    }

    /** The id of an item that an alternate asks for while it isn't accepted: "lath.sample~alternate-1". */
    public static String id(String id, int alternate) {
        return id + "~alternate-" + alternate;
    }

    /** Whether a change of the register means it: by its id, or by the one that it had before its alternate was accepted. */
    public boolean isCalled(String name) {
        return id.equals(name) || under.stream().filter(one -> one.state() == Under.State.ACCEPTED).flatMap(one -> one.numbers().stream())
            .anyMatch(number -> id(id, number).equals(name));
    }

    /** Its id and those of the items that it was made of: what a submittal may call it. */
    public List<String> names() {
        List<String> own = Stream.concat(Stream.of(id), from.stream()).toList();
        Stream<String> before = under.stream().filter(one -> one.state() == Under.State.ACCEPTED).flatMap(one -> one.numbers().stream())
            .flatMap(number -> own.stream().map(name -> id(name, number)));
        return Stream.concat(own.stream(), before).toList();
    }

    /** Whether a submittal covers it, by its id or by that of an item that it was made of. */
    public boolean isIn(Submittal submittal) {
        return section.equals(submittal.section()) && names().stream().anyMatch(submittal.items()::contains);
    }

    /**
     * The alternates that an item has to do with.
     *
     * @param numbers in the order in which the job lists them
     */
    public record Under(List<Integer> numbers, State state) {

        public Under {
            numbers = List.copyOf(numbers);
        }

        /** What the alternates, or the owner's word on them, make of the item. */
        public enum State {
            OFFERED("offered"), ACCEPTED("accepted"), DECLINED("declined"), REPLACED("replaced");

            private final String text;

            State(String text) {
                this.text = text;
            }

            public String text() {
                return text;
            }
        }

        /** "Alternate No. 1, accepted", "replaced by Alternate No. 1". */
        public String text() {
            return state == State.REPLACED ? "replaced by " + Alternate.names(numbers) : Alternate.names(numbers) + ", " + state.text();
        }
    }

    public enum Kind {
        ACTION("action"), INFORMATIONAL("informational"), CLOSEOUT("closeout");

        private final String text;

        Kind(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /** What an item is besides its kind. */
    public enum Sort {
        NONE(""), PRECONSTRUCTION("preconstruction"), SELECTION("sample for selection"), VERIFICATION("sample for verification"),
        DELEGATED("delegated design"), CLOSEOUT("closeout"), MAINTENANCE("maintenance material"), SUSTAINABILITY("sustainability");

        private final String text;

        Sort(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /**
     * When an item is needed.
     *
     * @param onSite   day on which it has to be on site
     * @param lead     days from the answer to that day
     * @param review   days that the review takes
     * @param days     how both are counted
     * @param submitBy last day to hand it in: the day on site, less lead, less review
     */
    public record Timing(LocalDate onSite, int lead, int review, DayCount.Kind days, LocalDate submitBy) {

        public static Timing of(LocalDate onSite, int lead, int review, DayCount days) {
            return new Timing(onSite, lead, review, days.kind(), days.back(onSite, lead + review));
        }
    }
}
