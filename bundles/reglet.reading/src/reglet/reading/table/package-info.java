/**
 * Finds values beside labels: in tables by row or by column, in lists, in stacks of a label and its value, in lists of rolls.
 */
package reglet.reading.table;
