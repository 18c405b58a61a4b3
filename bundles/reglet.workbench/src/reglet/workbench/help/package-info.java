/** The help pages, and the view that shows them. */
package reglet.workbench.help;
