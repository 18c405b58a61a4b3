/** The section as it will print, and writing in it. */
package reglet.workbench.section;
