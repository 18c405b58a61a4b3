package reglet.model;

/**
 * A finding that a person accepted.
 *
 * @param rule    rule id
 * @param wall    wall type id; "" for a finding of the job or a section
 * @param because the written reason
 * @param by      who accepted it
 */
public record Accepted(String rule, String wall, String because, String by, Place at) {
    /** The job's file of accepted findings. */
    public static final String FILE = "accepted.yaml";

    /** Whether it covers a finding. */
    public boolean covers(Finding finding) {
        return rule.equals(finding.rule()) && (wall.isEmpty() || wall.equals(finding.wall()));
    }
}
