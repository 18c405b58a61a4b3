package reglet.reading;

/**
 * What a first look at a sheet tells.
 *
 * @param pages   number of its pages; 0 when it can't be bound in
 * @param problem why it can't, in words; "" when it can
 */
public record Measure(int pages, String problem) {
}
