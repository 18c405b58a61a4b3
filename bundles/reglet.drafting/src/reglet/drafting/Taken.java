package reglet.drafting;

import java.util.List;
import java.util.stream.Collectors;

import reglet.model.Alternate;
import reglet.model.Alternate.State;
import reglet.model.Assembly;
import reglet.model.Requirement;

/** How papers name the alternates that the owner accepted. */
final class Taken {
    private Taken() {
    }

    /** "Alternate No. 1, stainless lath"; "" where none is accepted. */
    static String names(Assembly assembly) {
        return assembly.job().alternates().stream().filter(one -> one.is(State.ACCEPTED)).map(Alternate::titled)
            .collect(Collectors.joining("; "));
    }

    /** " (Alternate No. 1)" for a requirement that it brought; "" for one of the base. */
    static String mark(Assembly assembly, Requirement requirement) {
        List<Integer> numbers = assembly.broughtBy(requirement);
        return numbers.isEmpty() ? "" : " (" + Alternate.names(numbers) + ")";
    }
}
