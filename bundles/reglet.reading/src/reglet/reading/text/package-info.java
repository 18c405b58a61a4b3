/**
 * Finds values in running text: names beside amounts, turns of phrase, designations by a standard, and what only the words round an
 * amount tell; and whose they are.
 */
package reglet.reading.text;
