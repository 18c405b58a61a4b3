package reglet.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a job says of its register: how days are counted, when things are needed, who sends them, what a person changes in what the
 * sections ask for, and the office's own words for a review's action.
 *
 * @param scheme  the scheme of codes that the job chose
 * @param days    how lead time and review days are counted
 * @param review  days that a review takes where a plan says nothing else
 * @param plans   of sections and items, in the order written
 * @param changes in the order in which they are made
 * @param actions the office's words, each with what it means for the item
 * @param packages what a package holds, by the name of the material that is left with the owner
 */
public record RegisterFile(Scheme scheme, DayCount days, OptionalInt review, List<Plan> plans, List<Change> changes,
        Map<String, Meaning> actions, Map<String, Quantity> packages, Place at) {
    public static final String NAME = "register.yaml";
    public static final RegisterFile NONE = new RegisterFile(Scheme.OWN, new DayCount(DayCount.Kind.WORKING, List.of()),
        OptionalInt.empty(), List.of(), List.of(), Map.of(), Map.of(), Place.of(NAME));

    public RegisterFile {
        plans = List.copyOf(plans);
        changes = List.copyOf(changes);
        actions = Ordered.copy(actions);
        packages = Ordered.copy(packages);
    }

    /** Codes that items bear: none, or the submittal descriptions of the open federal guide specifications (SD-01 to SD-11). */
    public enum Scheme {
        OWN("own"), FEDERAL("federal");

        private final String text;

        Scheme(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /** What a word for an action means for what was handed in. */
    public enum Meaning {
        /** Nothing more is to be sent. */
        SETTLED("settled"),
        /** It has to be sent again. */
        AGAIN("again");

        private final String text;

        Meaning(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /**
     * When a section's items, or one of them, are needed, and who sends them. What an item's plan leaves out its section's gives.
     *
     * @param section section number; "" for a plan of an item
     * @param item    item id; "" for a plan of a section
     * @param onSite  day on which it has to be on site
     * @param lead    days from the answer to the day on site
     * @param review  days that the review takes
     * @param sender  who sends it; "" for nothing said
     */
    public record Plan(String section, String item, Optional<LocalDate> onSite, OptionalInt lead, OptionalInt review, String sender,
            Place at) {
    }

    /** What a person does to items. */
    public enum Act {
        ADD("add"), SPLIT("split"), MERGE("merge"), STRIKE("strike"), ALTER("alter");

        private final String text;

        Act(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /**
     * A change of the register.
     *
     * @param items   ids of the items that it is made to; empty for one that is added
     * @param into    what comes of it; empty for a strike
     * @param because the reason given
     * @param by      who made it
     */
    public record Change(Act act, List<String> items, List<Entry> into, String because, String by, Place at) {
        public Change {
            items = List.copyOf(items);
            into = List.copyOf(into);
        }
    }

    /**
     * An item as a person writes it; what is left out is as in the item that it is made of.
     *
     * @param id      "" keeps the id of the item that is altered
     * @param section section number; "" as before
     */
    public record Entry(String id, String section, String item, Optional<RegisterItem.Kind> kind, Optional<RegisterItem.Sort> sort,
            String sends, Place at) {
    }

    /** The plan of an item: its own, filled up from its section's. */
    public Plan plan(String section, List<String> ids) {
        Plan plan = new Plan(section, "", Optional.empty(), OptionalInt.empty(), review, "", at);
        for (Plan found : plans) {
            if (found.item().isEmpty() && found.section().equals(section)) {
                plan = over(plan, found);
            }
        }
        for (Plan found : plans) {
            if (ids.contains(found.item())) {
                plan = over(plan, found);
            }
        }
        return plan;
    }

    private static Plan over(Plan under, Plan plan) {
        return new Plan(under.section(), plan.item(), plan.onSite().or(under::onSite), plan.lead().isPresent() ? plan.lead() : under.lead(),
            plan.review().isPresent() ? plan.review() : under.review(),
            plan.sender().isEmpty() ? under.sender() : plan.sender(), plan.at());
    }
}
