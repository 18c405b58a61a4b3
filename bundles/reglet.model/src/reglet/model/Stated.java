package reglet.model;

/** A value that a person wrote, with its place. */
public record Stated(Value value, Place at) {
}
