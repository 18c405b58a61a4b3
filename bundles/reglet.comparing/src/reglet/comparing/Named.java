package reglet.comparing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import reglet.model.Comparison.Result;
import reglet.model.ProductData;
import reglet.model.Requirement;
import reglet.model.SheetValue;
import reglet.model.Specifying;
import reglet.model.WordSet;

/** What the way of specifying asks of a product: to be the one named, or to conform to the standard. */
final class Named {
    private Named() {
    }

    /** Whether a requirement comes from the way of specifying and no sheet states a value for it. */
    static boolean concerns(Requirement requirement) {
        return List.of(Specifying.PRODUCT, Specifying.MAKER, Specifying.STANDARDS).contains(requirement.property());
    }

    /** Empty where nothing has to be said: of the maker alone, and of a comparable product where such are accepted. */
    static Optional<Verdict> of(Requirement requirement, Specifying specified, ProductData product) {
        if (requirement.property().equals(Specifying.PRODUCT)) {
            return product(specified, product);
        }
        return requirement.property().equals(Specifying.STANDARDS) ? Optional.of(standards(requirement, product)) : Optional.empty();
    }

    private static Optional<Verdict> product(Specifying specified, ProductData product) {
        String offered = product.name() + (product.maker().isEmpty() ? "" : ", " + product.maker());
        if (same(specified.product(), product.name()) && (specified.maker().isEmpty() || same(specified.maker(), product.maker()))) {
            return Optional.of(new Verdict(Result.MEETS, "Offered: " + offered + ", the product named."));
        }
        return specified.comparable() ? Optional.empty() : Optional.of(new Verdict(Result.FALLS_SHORT,
            "Offered: " + offered + ", which is not the product named. It needs a substitution, whatever its values are."));
    }

    /** Letters in another case, and spaces, make no other product. */
    private static boolean same(String one, String other) {
        return plain(one).equals(plain(other));
    }

    private static String plain(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /** Conformity is shown where the sheet names each standard for a value that it shows. */
    private static Verdict standards(Requirement requirement, ProductData product) {
        List<String> named = product.values().stream().map(SheetValue::method).distinct().toList();
        List<String> missing = new ArrayList<>(((WordSet) requirement.value()).words());
        missing.removeAll(named);
        return missing.isEmpty() ? new Verdict(Result.MEETS, "The sheet names it for the values that it shows.")
            : new Verdict(Result.NOT_SHOWN, "The sheet does not name " + String.join(" and ", missing) + " for any value.");
    }
}
