/**
 * The process of its own: how it is started, what it is asked and how it answers. A new errand for it, another limit, another frame
 * of its answers belong here.
 */
package reglet.reading.process;
