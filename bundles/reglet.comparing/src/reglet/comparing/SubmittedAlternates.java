package reglet.comparing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Alternate;
import reglet.model.Alternate.State;
import reglet.model.Assembly;
import reglet.model.ProductData;
import reglet.model.Submittal;
import reglet.model.WallType;

/** What has to be said of a submittal in a job with alternates: what it was handed in for that isn't, or is no more, part of the work. */
final class SubmittedAlternates {
    private static final Pattern ITEM = Pattern.compile("(.+)~alternate-(\\d{1,9})");

    private SubmittedAlternates() {
    }

    /** The item that a submittal means: an accepted alternate's item is an item like any other. */
    static String item(Assembly assembly, String written) {
        Matcher found = ITEM.matcher(written);
        return found.matches() && assembly.job().alternates(State.ACCEPTED).contains(Integer.valueOf(found.group(2)))
            ? found.group(1) : written;
    }

    /** Sentences; none where everything was submitted for the work as it will be built. */
    static List<String> remarks(Assembly assembly, Submittal submittal, List<ProductData> products) {
        List<String> remarks = new ArrayList<>();
        for (String item : submittal.items()) {
            Matcher found = ITEM.matcher(item);
            Optional<Alternate> alternate = found.matches() ? assembly.job().alternate(Integer.parseInt(found.group(2))) : Optional.empty();
            alternate.filter(one -> !one.is(State.ACCEPTED)).ifPresent(one -> remarks.add("Covers " + found.group(1) + " of " + one.titled()
                + ", which is " + one.state().text() + " and not accepted: nothing is asked for it."));
        }
        for (ProductData product : products) {
            assembly.alternates().forEach((number, other) -> {
                if (isNearer(assembly, other, product)) {
                    Alternate one = assembly.job().alternate(number).orElseThrow();
                    remarks.add(product.name() + " comes nearer to what " + one.titled() + " asks for than to what is required; it is "
                        + one.state().text() + " and not accepted.");
                }
            });
            assembly.without().forEach((numbers, other) -> {
                if (numbers.size() == 1 && isNearer(assembly, other, product)) {
                    remarks.add(product.name() + " comes nearer to what was required before " + assembly.job().alternate(numbers.get(0))
                        .orElseThrow().titled() + ", was accepted.");
                }
            });
        }
        return remarks;
    }

    /** Whether a product would serve another version of some wall better; one that serves the wall as it will be built is no question. */
    private static boolean isNearer(Assembly built, Assembly other, ProductData product) {
        return built.job().walls().stream().map(WallType::id).anyMatch(wall -> Comparing.NEAREST.compare(Comparing.on(other, wall, product),
            Comparing.on(built, wall, product)) < 0);
    }
}
