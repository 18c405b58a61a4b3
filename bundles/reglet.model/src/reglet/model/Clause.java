package reglet.model;

import java.util.List;

/**
 * A paragraph of the library, made from slots; no logic, number, standard or comparing word in its text.
 *
 * @param id      "lath.metal"; also the file name
 * @param section section number
 * @param article id of the article it stands in
 * @param each    once a job, or for each wall type or meeting (equal texts print once)
 * @param subject for meetings, the subject id; else ""
 * @param order   place within the article
 * @param when    expression; "" for always
 * @param body    Markdown with slots; a list makes subparagraphs
 * @param note    note to the specifier; printed on request only; ""
 * @param basis   where it comes from; may be empty
 */
public record Clause(String id, String section, String article, Scope each, String subject, int order, String when, String body,
        String note, List<Basis> basis, Place at) {

    public Clause {
        basis = List.copyOf(basis);
    }
}
