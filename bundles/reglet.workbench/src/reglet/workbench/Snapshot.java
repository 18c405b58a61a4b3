package reglet.workbench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.desk.AlternateBeside;
import reglet.desk.OpenJob;
import reglet.model.Checked;
import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Property;
import reglet.model.Scope;
import reglet.model.WallType;

/** A job as it stands, checked. Immutable: every change gives another one. */
public record Snapshot(OpenJob job, Checked checked) {

    /** Resolves and checks a job; takes as long as that does, so that nothing asked of it later keeps the window waiting. */
    public static Snapshot of(OpenJob job) {
        job.assembly();
        return new Snapshot(job, job.checked());
    }

    /** The findings that stand. */
    public List<Finding> findings() {
        return checked.findings();
    }

    /** The findings that stand on a wall type; those of the whole job for "". */
    public List<Finding> findings(String wall) {
        return findings().stream().filter(finding -> finding.wall().equals(wall)).toList();
    }

    /** The findings of a wall type that point at a component. */
    public List<Finding> findings(String wall, String component) {
        return findings(wall).stream().filter(finding -> finding.component().equals(component)).toList();
    }

    /** What stands on a wall type as it will be built: without what alternates that are only offered would bring. */
    public List<Finding> standing(String wall) {
        return AlternateBeside.standing(job.job(), findings(wall));
    }

    /** What stands as it will be built, of a wall type and a component. */
    public List<Finding> standing(String wall, String component) {
        return standing(wall).stream().filter(finding -> finding.component().equals(component)).toList();
    }

    /** A wall type as it will be built: with what accepted alternates choose. */
    public Optional<WallType> wall(String id) {
        return job.assembly().job().wall(id);
    }

    public Optional<Component> component(String id) {
        return job.pack().component(id);
    }

    /** The section to show: the one asked for, else the one that owns the component, else the first of the job. */
    public String section(Focus focus) {
        if (!focus.section().isEmpty()) {
            return focus.section();
        }
        return component(focus.component()).map(Component::section)
            .or(() -> job.job().sections().stream().findFirst()).orElse("");
    }

    /** The component to begin with: the first that something stands against, else the first of the wall. */
    public String firstToLookAt(String wall) {
        List<Component> components = job.pack().components();
        return components.stream().map(Component::id).filter(id -> !findings(wall, id).isEmpty()).findFirst()
            .or(() -> components.stream().map(Component::id).findFirst()).orElse("");
    }

    /** What declares a fact of wall types: "height". */
    public Optional<Property> factOfWall(String name) {
        return job.pack().subjects().stream().filter(subject -> subject.scope() == Scope.WALL)
            .flatMap(subject -> subject.property(name).stream()).findFirst();
    }

    /** Words for the owner of an expression name and its property: "Lath: weight". */
    public String label(String path) {
        int dot = path.indexOf('.');
        String owner = dot < 0 ? path : path.substring(0, dot);
        String title = Stream.concat(component(owner).map(Component::title).stream(),
            job.pack().subject(owner).map(subject -> subject.title()).stream()).findFirst().orElse(owner);
        return job.pack().property(path).map(property -> title + ": " + property.label()).orElse(path);
    }
}
