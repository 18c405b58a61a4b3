package reglet.model;

import java.util.List;

/**
 * A pack as a job's jurisdiction amends it.
 *
 * @param pack         the pack with the amendments worked in; differs from the pack amended in rules, tables and usual values only
 * @param jurisdiction who amends it
 * @param amendments   in the order written
 */
public record AmendedPack(Pack pack, String jurisdiction, List<Amendment> amendments) {

    public AmendedPack {
        amendments = List.copyOf(amendments);
    }
}
