package reglet.reading;

import reglet.model.Box;

/**
 * A place on a sheet where some words stand.
 *
 * @param words as they were asked for
 * @param page  counted from 1
 * @param box   on the page as it is shown, origin at its upper left
 */
public record Spotted(String words, int page, Box box) {
}
