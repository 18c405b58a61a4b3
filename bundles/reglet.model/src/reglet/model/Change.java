package reglet.model;

/**
 * A change of a job: what stands at an address after it.
 *
 * @param set address: "W1.lath" for the options accepted, "W1.sealant.width" for a value set, "W1.lath.alternates.1" and
 *            "W1.lath.alternates.1.weight" for those of an alternate's version, "W1.wall.cavity" for a fact of the wall
 *            type, "W1.base-1.clearance" for one of what it meets, "site.climate" for one of the job
 * @param to  the value as a person writes it; options apart by commas; "" takes it away
 */
public record Change(String set, String to) {

    /** Whether it is made to an alternate's version as a whole: to the options accepted there. */
    public boolean isOfVersion() {
        String[] parts = set.split("\\.");
        return parts.length == 4 && parts[2].equals(Choice.VERSIONS);
    }

    /** "W1.lath = metal-3.4", "without W1.water_repellent". */
    public String text() {
        return to.isEmpty() ? "without " + set : set + " = " + to;
    }
}
