package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.Change;
import reglet.model.Component;
import reglet.model.Finding;
import reglet.model.Meeting;
import reglet.model.Option;
import reglet.model.Property;
import reglet.model.Remedy;
import reglet.model.WallType;
import reglet.workbench.settings.Units;

/** What a remedy changes, in the words of the window. */
final class RemedyWords {
    private final Snapshot now;
    private final Finding finding;

    RemedyWords(Snapshot now, Finding finding) {
        this.now = now;
        this.finding = finding;
    }

    /** "Lath: 3.4 lb lath; Wall: cavity to drained, a fact of the wall". */
    String of(Remedy remedy) {
        return String.join("; ", remedy.changes().stream().map(this::of).toList());
    }

    /** What else is to be known of it: "clears 3 findings; cost class 1 higher"; "" for nothing. */
    static String beyond(Remedy remedy) {
        List<String> parts = new ArrayList<>();
        if (remedy.clears().size() > 1) {
            parts.add("clears " + remedy.clears().size() + " findings");
        }
        if (remedy.cost() != 0) {
            parts.add("cost class " + Math.abs(remedy.cost()) + (remedy.cost() > 0 ? " higher" : " lower"));
        }
        return String.join("; ", parts);
    }

    private String of(Change change) {
        String[] parts = change.set().split("\\.", 3);
        WallType wall = now.wall(parts[0]).orElse(null);
        if (wall == null) {
            return now.label(change.set()) + to(change.set(), change) + ", a fact of the job";
        }
        String where = wall.id().equals(finding.wall()) ? "" : wall.id() + " ";
        Component component = now.component(parts[1]).orElse(null);
        if (component != null && parts.length == 2) {
            return where + component.title() + ": " + (change.to().isEmpty() ? "none" : options(component, change.to()));
        }
        String subject = wall.meetings().stream().filter(met -> met.id().equals(parts[1])).map(Meeting::subject).findFirst().orElse("");
        if (!subject.isEmpty()) {
            return where + parts[1] + ", " + now.label(subject + "." + parts[2]) + to(subject + "." + parts[2], change)
                + ", a fact of the wall";
        }
        String path = parts[1] + "." + parts[2];
        return where + now.label(path) + to(path, change) + (component == null ? ", a fact of the wall" : "");
    }

    private String to(String path, Change change) {
        Optional<Property> property = now.job().pack().property(path);
        return change.to().isEmpty() ? ": no value of its own" : " " + property.flatMap(one -> one.type().read(change.to()))
            .map(value -> Units.text(property, value)).orElse(change.to());
    }

    private static String options(Component component, String ids) {
        return String.join(" or ", List.of(ids.split("\\s*,\\s*")).stream()
            .map(id -> component.option(id).map(Option::title).orElse(id)).toList());
    }
}
