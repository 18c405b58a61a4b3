package reglet.model;

/**
 * One line of the register.
 *
 * @param id        stable id: "lath.product-data"
 * @param section   section number
 * @param paragraph number of the paragraph that asks for it: "1.5.A"
 * @param item      what it is about: "Lath"
 * @param component component id; ""
 * @param kind      action, informational or closeout
 * @param sends     what is to be sent
 * @param status    "open", or what the submittals say of it
 */
public record RegisterItem(String id, String section, String paragraph, String item, String component, Kind kind, String sends,
        String status) {

    public enum Kind {
        ACTION("action"), INFORMATIONAL("informational"), CLOSEOUT("closeout");

        private final String text;

        Kind(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }
}
