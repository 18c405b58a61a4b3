package reglet.model;

/** What a property can be: a quantity, a range, a word, a grade of an ordered scale, a set of words, or a day. */
public sealed interface Value permits Quantity, Range, Word, Grade, WordSet, Day {

    /** As written by a person, with the unit's printed symbol. */
    String text();
}
