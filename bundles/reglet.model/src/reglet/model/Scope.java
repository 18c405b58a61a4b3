package reglet.model;

/** How often a rule, clause or subject is looked at: once a job, once a section, for each wall type, or for each meeting of a wall type. */
public enum Scope {
    JOB("job"), SECTION("section"), WALL("wall"), MEETING("meeting");

    private final String text;

    Scope(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
