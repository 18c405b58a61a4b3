package reglet.model;

import java.util.List;

/**
 * What an amount can be in products of the trade. A data sheet's figure outside it is more likely another property, another unit or a slip
 * than the product; what is required may well lie outside.
 *
 * @param property "lath.weight"
 * @param range    generous: every common product lies within
 */
public record Plausible(String property, Range range, List<Basis> basis, Place at) {

    public Plausible {
        basis = List.copyOf(basis);
    }

    /** Whether an amount of the same dimension lies within, ends included. */
    public boolean holds(Quantity amount) {
        return amount.compareWith(range.low()) >= 0 && amount.compareWith(range.high()) <= 0;
    }
}
