package reglet.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.details.Details;
import reglet.model.Component;
import reglet.model.Drawing;
import reglet.model.Drawing.Leader;
import reglet.model.OnWall;
import reglet.model.Requirement;
import reglet.model.ShownUnits;
import reglet.model.UnusableInput;

/**
 * The details of a wall type with what each note leads to: the section that owns the component, and the paragraph of this issue where it
 * is specified. Drawings know components only, so that renumbering a section never breaks one.
 */
final class Keynotes {
    private final OpenJob job;
    private final Map<String, String> places = new LinkedHashMap<>();
    /** By section, where it prints what it requires on the wall type. */
    private final Map<String, Map<Requirement, String>> printed = new LinkedHashMap<>();

    private Keynotes(OpenJob job) {
        this.job = job;
    }

    static List<Drawing> details(OpenJob job, String wall, ShownUnits units) throws UnusableInput {
        Keynotes keynotes = new Keynotes(job);
        List<Drawing> noted = new ArrayList<>();
        for (Drawing drawing : Details.of(job.assembly(), wall, units)) {
            List<Drawing.Shape> shapes = new ArrayList<>();
            for (Drawing.Shape shape : drawing.shapes()) {
                shapes.add(shape instanceof Leader leader ? keynotes.noted(wall, leader) : shape);
            }
            noted.add(new Drawing(drawing.id(), drawing.title(), wall, drawing.scale(), shapes, drawing.notes()));
        }
        return noted;
    }

    private Leader noted(String wall, Leader leader) throws UnusableInput {
        String place = places.get(leader.key());
        if (place == null) {
            place = place(wall, leader.key());
            places.put(leader.key(), place);
        }
        return place.isEmpty() ? leader : new Leader(leader.component(), leader.tip(), leader.note(), leader.key(), leader.text() + ", "
            + place);
    }

    /** "04 73 00, 2.3.A"; only the section when the job doesn't write it, or prints nothing of the component there. */
    private String place(String wall, String key) throws UnusableInput {
        Optional<Component> component = job.pack().component(key);
        if (component.isEmpty()) {
            return "";
        }
        String section = component.get().section();
        if (!job.job().sections().contains(section)) {
            return section;
        }
        Map<Requirement, String> paths = printed.get(section);
        if (paths == null) {
            List<Requirement> asked = job.assembly().on(wall).map(OnWall::requirements).orElse(List.of());
            paths = job.section(section).pathsOf(wall, asked.stream().filter(requirement -> job.pack().component(requirement.component())
                .filter(owner -> owner.section().equals(section)).isPresent()).toList());
            printed.put(section, paths);
        }
        for (Map.Entry<Requirement, String> path : paths.entrySet()) {
            if (path.getKey().component().equals(key)) {
                return section + ", " + path.getValue();
            }
        }
        return section;
    }
}
