package reglet.model;

/**
 * Something that a section asks to be sent besides what the properties' evidence asks for: samples, a mock-up, a warranty.
 *
 * @param id        "units.sample"
 * @param section   section number
 * @param component the component it is for; ""
 * @param kind      action, informational or closeout
 * @param sort      what else it is
 * @param sends     what is to be sent, in one or two words: "sample"
 * @param when      expression; "" for always
 * @param text      the paragraph's text with slots
 */
public record RegisterEntry(String id, String section, String component, RegisterItem.Kind kind, RegisterItem.Sort sort, String sends,
        String when, String text, Place at) {
}
