package reglet.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import reglet.model.Alternate;
import reglet.model.Alternate.State;
import reglet.model.Choice;
import reglet.model.Job;

/**
 * As what a job is looked at, and which version of a choice is changed then: as the work will be built, as the base bid alone, or with one
 * alternate besides.
 *
 * @param alternate number of the alternate that is looked at; 0 for none
 */
public record Bid(Kind kind, int alternate) {
    /** The base bid with the alternates that are accepted: as the work will be built. */
    public static final Bid AGREED = new Bid(Kind.AGREED, 0);
    /** The base bid alone, also where an alternate is accepted. */
    public static final Bid BASE = new Bid(Kind.BASE, 0);

    public enum Kind { AGREED, BASE, ALTERNATE }

    /** With an alternate that isn't accepted. */
    public static Bid with(int alternate) {
        return new Bid(Kind.ALTERNATE, alternate);
    }

    /** All that a job can be looked at as, the work as it will be built first; one alone for a job without alternates. */
    public static List<Bid> all(Job job) {
        List<Bid> all = new ArrayList<>(List.of(AGREED));
        if (!job.alternates(State.ACCEPTED).isEmpty()) {
            all.add(BASE);
        }
        job.alternates().stream().filter(one -> one.kind() == Alternate.Kind.ALTERNATE && one.state() != State.ACCEPTED)
            .forEach(one -> all.add(with(one.number())));
        return List.copyOf(all);
    }

    /** The same for another job, or for the job after a change; the work as it will be built where there is no such bid any more. */
    public Bid in(Job job) {
        return all(job).contains(this) ? this : AGREED;
    }

    /** "Base bid", "Base bid with Alternate No. 1, accepted", "Base bid alone", "With Alternate No. 2, thicker mat (offered)". */
    public String words(Job job) {
        List<Integer> accepted = job.alternates(State.ACCEPTED);
        return switch (kind) {
            case AGREED -> "Base bid" + (accepted.isEmpty() ? "" : " with " + Alternate.names(accepted) + ", accepted");
            case BASE -> "Base bid alone";
            case ALTERNATE -> job.alternate(alternate).map(one -> "With " + one.titled() + " (" + one.state().text() + ")").orElse("");
        };
    }

    /** The job as this bid. An accepted alternate that chooses otherwise than the one looked at stands back. */
    Job of(Job job) {
        List<Integer> back = job.alternates(State.ACCEPTED).stream()
            .filter(number -> kind == Kind.BASE || kind == Kind.ALTERNATE && job.exclude(number, alternate)).toList();
        Job without = back.isEmpty() ? job : job.deciding(back, State.OFFERED);
        return kind == Kind.ALTERNATE ? without.accepting(List.of(alternate)) : without;
    }

    /** Number of the alternate whose version of a choice is changed as this bid; 0 for the base's own. */
    public int version(Job job, String wall, String component) {
        return switch (kind) {
            case AGREED -> Stream.of(job.inForce(wall + "." + component).split("\\.")).skip(3).findFirst().map(Integer::valueOf).orElse(0);
            case BASE -> 0;
            case ALTERNATE -> alternate;
        };
    }

    /** The address at which a choice is changed as this bid: "W1.lath", "W1.lath.alternates.2". */
    public String address(Job job, String wall, String component) {
        int version = version(job, wall, component);
        return wall + "." + component + (version == 0 ? "" : "." + Choice.VERSIONS + "." + version);
    }
}
