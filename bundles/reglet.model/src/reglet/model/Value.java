package reglet.model;

/** What a property can be: a quantity, a range, a word, a grade of an ordered scale, or a set of words. */
public sealed interface Value permits Quantity, Range, Word, Grade, WordSet {

    /** As written by a person, with the unit's printed symbol. */
    String text();
}
