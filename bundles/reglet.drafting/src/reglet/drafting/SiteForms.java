package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import reglet.drafting.Form.Grid;
import reglet.model.Assembly;
import reglet.model.Basis;
import reglet.model.Explanation;
import reglet.model.HoldPoint;
import reglet.model.HoldPoint.Look;
import reglet.model.Register;
import reglet.model.RegisterItem;
import reglet.model.Requirement;
import reglet.model.WallType;
import reglet.model.Worksheet;

/** The forms of a job: hold points, closeout, extra stock, and what touches what. All of it comes from the choices and the pack. */
public final class SiteForms {
    private static final List<String> SIGNS = List.of("Contractor", "Seen by");

    private final Assembly assembly;

    private SiteForms(Assembly assembly) {
        this.assembly = assembly;
    }

    /**
     * @param quantities worksheets of what has to be bought, one for each wall type that has one
     * @param rules      how a rule came out at each place, by rule id
     */
    public static List<Form> of(Assembly assembly, Register register, List<Worksheet> quantities,
        Function<String, List<Explanation>> rules) {
        SiteForms forms = new SiteForms(assembly);
        List<Form> all = new ArrayList<>();
        assembly.pack().holdPoints().stream().filter(point -> point.component().isEmpty() || forms.isThere(point.component()))
            .forEach(point -> all.add(forms.holdPoint(point)));
        List<RegisterItem> closeout = register.items().stream()
            .filter(item -> item.isDue() && item.kind() == RegisterItem.Kind.CLOSEOUT).toList();
        if (!closeout.isEmpty()) {
            all.add(closeout(closeout));
        }
        StockForm.of(assembly, quantities).ifPresent(all::add);
        TouchingForm.of(assembly, register, rules).ifPresent(all::add);
        return all;
    }

    private boolean isThere(String component) {
        return assembly.job().walls().stream().anyMatch(wall -> wall.choice(component).isPresent());
    }

    private Form holdPoint(HoldPoint point) {
        List<List<String>> rows = new ArrayList<>();
        for (Look look : point.looks()) {
            // what is asked of a component that no wall has is not looked at
            if (look.shows().isEmpty() || look.shows().stream().anyMatch(name -> isThere(name.substring(0, name.indexOf('.'))))) {
                rows.add(List.of(String.valueOf(rows.size() + 1), look.test() ? "Test" : "Look", look.text(), required(look.shows()),
                    look.often(), look.basis().stream().map(Basis::text).collect(Collectors.joining("\n")), "", ""));
            }
        }
        String walls = assembly.job().walls().stream().filter(wall -> point.component().isEmpty()
            || wall.choice(point.component()).isPresent()).map(wall -> wall.id() + ", " + wall.title()).collect(Collectors.joining("; "));
        return new Form("hold-" + point.id().replace('_', '-'), "Hold point: " + point.title(),
            List.of("Work stops here " + point.stop() + ", until this form is signed. Give notice early enough for somebody to come.",
                "Wall types: " + walls + "." + (Taken.names(assembly).isEmpty() ? "" : " Alternates accepted: "
                    + Taken.names(assembly) + "."),
                "Elevation, storey, gridlines: ____________________________________________"),
            List.of(new Grid(List.of("No.", "", "What", "Required", "Where and how often", "Basis", "Found, and where", "Date, initials"),
                List.of(22, 32, 150, 150, 96, 96, 96, 54), rows)), SIGNS);
    }

    /** The values that the choices require, once where they are the same everywhere. */
    private String required(List<String> names) {
        List<String> lines = new ArrayList<>();
        for (String name : names) {
            Map<String, Set<String>> byWall = new LinkedHashMap<>();
            for (Requirement requirement : assembly.requirements()) {
                if (requirement.path().equals(name) && !requirement.asksNothing()) {
                    byWall.computeIfAbsent(requirement.wall(), wall -> new LinkedHashSet<>()).add(Phrases.required(requirement)
                        + Taken.mark(assembly, requirement));
                }
            }
            String label = Results.label(assembly, name);
            List<String> phrases = byWall.values().stream().map(each -> Phrases.list(List.copyOf(each), "or")).distinct().toList();
            boolean everywhere = byWall.size() == assembly.job().walls().size() || phrases.size() == 1 && assembly.job().walls().stream()
                .filter(wall -> wall.choice(name.substring(0, name.indexOf('.'))).isPresent()).map(WallType::id).toList()
                .equals(List.copyOf(byWall.keySet()));
            if (phrases.size() == 1 && everywhere) {
                lines.add(label + ": " + phrases.get(0));
            } else {
                byWall.forEach((wall, each) -> lines.add(wall + ", " + label + ": " + Phrases.list(List.copyOf(each), "or")));
            }
        }
        return String.join("\n", lines);
    }

    private static Form closeout(List<RegisterItem> items) {
        List<List<String>> rows = items.stream().map(item -> List.of(item.section(), Papers.paragraph(item.paragraph()), item.item(),
            item.sends(), item.sort().text(), item.sender(), item.status(), "", "")).toList();
        return new Form("closeout", "Warranties and closeout",
            List.of("What the sections ask for at the end of the work, from the register. Warranty times stand in the sections."),
            List.of(new Grid(List.of("Section", "Paragraph", "Item", "Sends", "Sort", "Who sends", "Register", "Received, date",
                "Complete, initials"), List.of(52, 52, 110, 84, 84, 100, 70, 74, 70), rows)), List.of("Contractor", "Owner"));
    }
}
