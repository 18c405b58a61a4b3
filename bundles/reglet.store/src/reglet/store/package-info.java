/**
 * Job folders and packs on disk: read with limits and places, validated, and written by one class only. A file that can't be used
 * is answered with every problem in it and never overwritten.
 */
package reglet.store;
