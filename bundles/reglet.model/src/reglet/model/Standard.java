package reglet.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A published document that clauses and properties cite.
 *
 * @param id          "ASTM C847"
 * @param title       its title
 * @param editions    edition by code basis: "IBC 2021" to "2018"; the edition that this code lists
 * @param basis       how the editions are known
 */
public record Standard(String id, String title, Map<String, String> editions, List<Basis> basis, Place at) {

    public Standard {
        editions = Ordered.copy(editions);
        basis = List.copyOf(basis);
    }

    /** Key of the standard in clause slots: "ASTM C847" is {@code std.ASTM_C847}. */
    public String key() {
        return key(id);
    }

    /** An id as slots write it: each run of what is neither a letter from A to Z nor a digit is one underscore. Asked for very often. */
    public static String key(String id) {
        StringBuilder key = new StringBuilder(id.length());
        boolean run = false;
        for (int i = 0; i < id.length(); i++) {
            char character = id.charAt(i);
            boolean plain = character >= 'A' && character <= 'Z' || character >= 'a' && character <= 'z'
                || character >= '0' && character <= '9';
            if (plain) {
                key.append(character);
            } else if (!run) {
                key.append('_');
            }
            run = !plain;
        }
        return key.toString();
    }

    public Optional<String> edition(String codeName, String codeEdition) {
        return Optional.ofNullable(editions.get(codeName + " " + codeEdition));
    }
}
