package reglet.model;

import java.util.List;

/**
 * What the sections of a job ask to be sent, with what a person changed in it.
 *
 * @param items in the order of sections and paragraphs
 * @param lost  what refers to items that the sections no longer ask for
 */
public record Register(List<RegisterItem> items, List<Lost> lost) {

    public Register {
        items = List.copyOf(items);
        lost = List.copyOf(lost);
    }

    /**
     * Something that refers to an item that isn't there, or adds one that is.
     *
     * @param at   where it stands
     * @param says what is wrong, in a sentence
     * @param fix  what to do
     */
    public record Lost(Place at, String says, String fix) {
    }

    /** The items of a section. */
    public List<RegisterItem> of(String section) {
        return items.stream().filter(item -> item.section().equals(section)).toList();
    }
}
