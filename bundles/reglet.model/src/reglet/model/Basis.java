package reglet.model;

/**
 * Where a value, rule, limit or formula comes from.
 *
 * @param document such as "ASTM C1063"
 * @param edition  such as "2021"; "" when the fact is not tied to one
 * @param at       clause or table, in words
 * @param known    how the fact is known
 */
public record Basis(String document, String edition, String at, Known known) {

    /** One line for people: "ASTM C1063-2021, lath support spacing table (from memory)". */
    public String text() {
        StringBuilder line = new StringBuilder(document);
        if (!edition.isEmpty()) {
            line.append(' ').append(edition);
        }
        if (!at.isEmpty()) {
            line.append(", ").append(at);
        }
        return line.append(" (").append(known.text()).append(')').toString();
    }
}
