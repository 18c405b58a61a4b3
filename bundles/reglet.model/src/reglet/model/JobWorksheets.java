package reglet.model;

import java.util.List;

/**
 * The worksheets of a job.
 *
 * @param made   in the order of walls, then of the pack's list, then of meetings; one for each different set of inputs
 * @param undone those that are asked for and can't be made
 */
public record JobWorksheets(List<Worksheet> made, List<Undone> undone) {

    public JobWorksheets {
        made = List.copyOf(made);
        undone = List.copyOf(undone);
    }

    /**
     * A worksheet that can't be made.
     *
     * @param name    of the worksheet: "wind"
     * @param title   words for people
     * @param meeting id of the meeting that it would be for; ""
     * @param missing names of the facts that it lacks
     * @param why     in words, when its inputs are refused; else ""
     */
    public record Undone(String name, String title, String wall, String meeting, List<String> missing, String why) {
        public Undone {
            missing = List.copyOf(missing);
        }
    }
}
