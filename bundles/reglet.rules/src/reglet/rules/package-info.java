/**
 * What applies to a wall and whether it holds.
 *
 * <p>Expressions are written in the Common Expression Language. They are parsed and type-checked when a pack is built, and turned
 * into small trees ({@link reglet.rules.Node}) that a plain evaluator runs: the language's own runtime knows no facts that have
 * no meaning, does not name the facts that are missing, and costs more than a second in a cold process.
 */
package reglet.rules;
