/** Requirements against what was submitted. */
package reglet.comparing;
