/**
 * From an assembly to paper: one document tree for a section, its formats, the register, and the pages of a submittal.
 * Nothing is evaluated here; every value printed comes from a requirement, a choice or a fact.
 */
package reglet.drafting;
