package reglet.workbench;

import java.util.Optional;
import java.util.stream.Stream;

import reglet.model.Finding;

/**
 * What the person looks at: one thing for the whole window. Row, finding, paragraph and reason all follow it.
 *
 * @param wall      wall type id; "" for none
 * @param component component id; "" for none
 * @param section   number of the section shown; "" for the one that owns the component
 * @param finding   the finding asked about; empty when the component itself is
 */
public record Focus(String wall, String component, String section, Optional<Finding> finding) {
    static final Focus NOTHING = new Focus("", "", "", Optional.empty());

    public Focus onWall(String id) {
        return new Focus(id, component, section, Optional.empty());
    }

    public Focus onComponent(String id) {
        return new Focus(wall, id, "", Optional.empty());
    }

    public Focus onSection(String number) {
        return new Focus(wall, component, number, Optional.empty());
    }

    public Focus onFinding(Finding found) {
        return new Focus(found.wall().isEmpty() ? wall : found.wall(), found.component().isEmpty() ? component : found.component(), "",
            Optional.of(found));
    }

    /** The same look at a job that has changed: what is no longer there falls away. */
    public Focus in(Snapshot snapshot) {
        boolean known = snapshot.job().job().wall(wall).isPresent();
        String first = snapshot.job().job().walls().isEmpty() ? "" : snapshot.job().job().walls().get(0).id();
        String shown = component.isEmpty() ? snapshot.firstToLookAt(known ? wall : first) : component;
        return new Focus(known ? wall : first, shown, section,
            finding.flatMap(old -> Stream.concat(snapshot.findings().stream(), snapshot.checked().accepted().stream())
                .filter(now -> now.key().equals(old.key())).findFirst()));
    }
}
