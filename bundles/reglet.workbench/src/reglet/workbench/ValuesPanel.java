package reglet.workbench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.widgets.Composite;

import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Option;
import reglet.model.Property;
import reglet.model.Requirement;
import reglet.model.Value;

/** The values of the component in focus, and below them who fixed the choice and why. */
final class ValuesPanel {
    private static final String BY = "by";
    private static final String BECAUSE = "because";
    private final Session session;
    private final Fields fields;
    private String wall = "";
    private String component = "";

    ValuesPanel(Composite parent, Session session) {
        this.session = session;
        this.fields = new Fields(parent, this::take);
        fields.hear((line, text) -> {
            String place = Session.VALUE + " " + session.choosing().address(wall, component, line.key());
            if (text.equals(line.value()) || line.key().equals(BY) || line.key().equals(BECAUSE)) {
                session.typing().done(place);
            } else {
                session.typing().typed(place, text);
            }
        });
    }

    /** Shows the values of the component in focus. */
    void follow() {
        Snapshot now = session.seen().orElseThrow();
        wall = session.focus().wall();
        Optional<Component> shown = now.component(session.focus().component());
        component = shown.map(Component::id).orElse("");
        Optional<Choice> choice = now.wall(wall).flatMap(found -> found.choice(component));
        List<Fields.Line> lines = new ArrayList<>();
        choice.ifPresent(made -> {
            lines.addAll(lines(now, wall, shown.orElseThrow(), made));
            lines.add(Fields.Line.of(BY, "Fixed by", "who or what fixed it", made.by()));
            lines.add(Fields.Line.of(BECAUSE, "Because", "the reason", made.because()));
        });
        fields.show(wall + " " + component + " " + session.bid(), lines, component.isEmpty() || choice.isPresent() ? ""
            : "Its values can be typed here once an option is accepted.");
    }

    /** The properties that apply to the first accepted option; alternatives share the values that a person sets. */
    static List<Fields.Line> lines(Snapshot now, String wall, Component component, Choice choice) {
        String id = choice.accept().get(0);
        Optional<Option> option = component.option(id);
        Map<String, Requirement> required = new LinkedHashMap<>();
        now.job().assembly().requirements(wall, component.id(), id)
            .forEach(requirement -> required.put(requirement.property().name(), requirement));
        List<String> missing = now.findings(wall).stream().flatMap(finding -> finding.missing().stream()).toList();
        List<Fields.Line> lines = new ArrayList<>();
        for (Property property : component.properties()) {
            Requirement requirement = required.get(property.name());
            boolean unknown = missing.contains(component.id() + "." + property.name());
            if (requirement == null && !unknown && !choice.values().containsKey(property.name())) {
                continue;
            }
            String own = option.flatMap(found -> found.value(property.name())).or(property::usual).map(Value::text).orElse("");
            String source = choice.values().containsKey(property.name()) ? "set here"
                : option.flatMap(found -> found.value(property.name())).isPresent() ? "" : property.usual().isPresent() ? "usual"
                    : "○ not known";
            lines.add(Fields.Line.of(property, true, source, Optional.ofNullable(requirement).map(Requirement::value), own, false));
        }
        return lines;
    }

    private void take(Fields.Line line, String value, Consumer<String> refused) {
        String at = wall;
        String of = component;
        if (line.key().equals(BY) || line.key().equals(BECAUSE)) {
            session.choosing().remark(at, of, line, value, refused);
        } else {
            session.choosing().set(at, of, line.key(), value, refused);
        }
    }
}
