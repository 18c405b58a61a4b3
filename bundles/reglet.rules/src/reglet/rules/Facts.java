package reglet.rules;

/** Where an expression finds its facts. */
interface Facts {

    /** The fact of a full name such as "lath.weight". */
    Outcome fact(String name);
}
