/**
 * Takes values down as they are come across, with what stands round them that tells how they are meant or that they are not the
 * product's: footnotes, titles of tables, headings, sections, what products of the trade are known to have.
 */
package reglet.reading.value;
