/** Section drawings of a wall type, made from a resolved job: a wall's papers and its pictures come from the same requirements. */
package reglet.details;
