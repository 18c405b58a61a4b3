package reglet.model;

/** A word or phrase of the trade: "expanded metal". */
public record Word(String text) implements Value {
}
