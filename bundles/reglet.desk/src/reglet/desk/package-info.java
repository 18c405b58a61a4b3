/**
 * The use cases: what a person asks for, made by joining the other bundles. Values come in and go out immutable; files are read
 * and written only here and in the bundles that this one calls. The command line and the window are two faces on this package.
 */
package reglet.desk;
