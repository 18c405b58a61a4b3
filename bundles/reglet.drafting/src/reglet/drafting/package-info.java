/**
 * From an assembly to paper: one document tree for a section, its formats, the register, the pages of a submittal, and drawings
 * on their sheets.
 * Nothing is evaluated here; every value printed comes from a requirement, a choice or a fact.
 */
package reglet.drafting;
