/**
 * Binds our own pages and foreign sheets into one package: plain pages, marks, flags, links, bookmarks, and how the package comes out of
 * the process.
 */
package reglet.reading.binding;
