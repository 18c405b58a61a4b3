/**
 * Requirements against what was submitted. Pure: the same assembly and submittal give the same comparison. What isn't known never
 * counts as met: a value that nobody confirmed says so, and a difference of method or edition, a bound on the wrong side or a word
 * that only a person can judge is no "meets".
 */
package reglet.comparing;
