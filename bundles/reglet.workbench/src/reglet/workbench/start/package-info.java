/** How a job is begun or found: the start pane, the new job's questions, the sample jobs. */
package reglet.workbench.start;
