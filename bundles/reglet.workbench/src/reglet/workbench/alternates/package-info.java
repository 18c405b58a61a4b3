/** What bidders price apart: alternates made, changed, and looked at beside the base bid. */
package reglet.workbench.alternates;
