/**
 * What words mean by the pack: one spelling of them, names and labels of properties, standards cited, units, figures, and a text read
 * as a value of a type. Strings alone; where they stand on a page is no matter here.
 */
package reglet.reading.words;
