/**
 * Reads a sheet as a whole: for each component by all the readers, then which component it is about, which of several values is shown,
 * and what a report says of itself.
 */
package reglet.reading.sheet;
