/** The command line: one small class a verb, over the use cases of the desk. */
package reglet.cli;
