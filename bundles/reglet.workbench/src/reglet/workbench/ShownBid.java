package reglet.workbench;

import java.util.Optional;

import reglet.desk.Bid;

/**
 * As which bid the wall, its drawing, worksheets and section are shown. The job itself stays as its files have it; how it looks is worked
 * out beside the window's thread, before anybody asks.
 */
final class ShownBid {
    private volatile Shown shown = new Shown(Bid.AGREED, Optional.empty(), Optional.empty());

    /** A job, and how it looks as a bid. */
    private record Shown(Bid bid, Optional<Snapshot> job, Optional<Snapshot> as) {
    }

    Bid bid() {
        return shown.bid;
    }

    /** Shows a job as a bid, or as it will be built where it has no such bid; takes as long as a check does. */
    void show(Bid bid, Snapshot now) {
        Bid there = bid.in(now.job().job());
        shown = new Shown(there, Optional.of(now), Optional.of(there.equals(Bid.AGREED) ? now : Snapshot.of(now.job().as(there))));
    }

    /** How a job looks; as it is when nothing else was worked out for it. */
    Snapshot of(Snapshot now) {
        Shown known = shown;
        if (known.job.isEmpty() || known.job.get().job() != now.job() || known.bid.equals(Bid.AGREED)) {
            return now;
        }
        if (known.job.get() != now) {
            // the same job, to be shown anew
            Snapshot as = known.as.orElseThrow();
            known = new Shown(known.bid, Optional.of(now), Optional.of(new Snapshot(as.job(), as.checked())));
            shown = known;
        }
        return known.as.orElseThrow();
    }
}
