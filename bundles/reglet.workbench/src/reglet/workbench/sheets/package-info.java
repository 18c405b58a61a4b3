/** Data sheets gone through value by value beside the picture of their page, and products compared with what is required. */
package reglet.workbench.sheets;
