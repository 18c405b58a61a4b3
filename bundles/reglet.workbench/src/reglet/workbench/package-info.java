/**
 * The window. Shows what the desk knows and hands it what a person does; holds no rule, formula or file format.
 *
 * <p>{@link reglet.workbench.Session} is the one thing that the views share: the job as it stands ({@link reglet.workbench.Snapshot})
 * and what the person looks at ({@link reglet.workbench.Focus}). Views listen to it and never to each other, so that whatever is
 * selected in one place is followed everywhere.
 */
package reglet.workbench;
