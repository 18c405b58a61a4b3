package reglet.model;

/**
 * What a person did to a drafted paragraph. The person's wording wins and stays.
 *
 * @param section   section number
 * @param paragraph id of the paragraph that is changed or struck, or after which one is added
 * @param kind      change, strike or add
 * @param text      Markdown of the person's text; "" when struck
 * @param madeOn    the library's text that the change was made on; "" for an added paragraph
 */
public record TextChange(String section, String paragraph, Kind kind, String text, String madeOn, Place at) {
    public enum Kind { CHANGE, STRIKE, ADD }
}
