/** What a person sets for the window: units shown first, theme, size of the text. */
package reglet.workbench.settings;
