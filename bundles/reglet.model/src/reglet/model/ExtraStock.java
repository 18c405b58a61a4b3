package reglet.model;

import java.util.List;

/**
 * Material that is left with the owner, as a share of what is ordered.
 *
 * @param result    the worksheet result that it is a share of: "takeoff.units.flat"
 * @param component the component whose options it is kept apart by
 * @param share     the property that says how much: "terms.extra_stock"
 * @param pack      what a package usually holds; a job may say otherwise
 */
public record ExtraStock(String result, String component, String share, Quantity pack, List<Basis> basis, Place at) {

    public ExtraStock {
        basis = List.copyOf(basis);
    }

    /** "units.flat", as the worksheet calls it. */
    public String name() {
        return result.substring(result.indexOf('.') + 1);
    }

    /** "takeoff". */
    public String worksheet() {
        return result.substring(0, result.indexOf('.'));
    }
}
