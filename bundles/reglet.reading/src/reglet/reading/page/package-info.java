/**
 * From a foreign PDF to what stands where on its pages: opened with care, its words and rules taken off, and put together to cells,
 * lines, rows of tables, paragraphs and sentences. Nothing here knows the pack.
 */
package reglet.reading.page;
