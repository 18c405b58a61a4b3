package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import reglet.drafting.Form.Grid;
import reglet.model.Assembly;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.Explanation;
import reglet.model.Option;
import reglet.model.Register;
import reglet.model.Rule;
import reglet.model.Rule.Result;
import reglet.model.Touching;
import reglet.model.WallType;

/** What touches what in the walls, what the rules know of each pair, and blanks for the makers to confirm. */
final class TouchingForm {
    /** The worst first: of several places in a wall, that one is told. */
    private static final List<Result> WORST = List.of(Result.BREAKS, Result.ERROR, Result.GAP, Result.HOLDS);
    private static final String STATEMENT = "compatibility statement";

    private final Assembly assembly;
    private final Register register;
    private final Function<String, List<Explanation>> rules;

    private TouchingForm(Assembly assembly, Register register, Function<String, List<Explanation>> rules) {
        this.assembly = assembly;
        this.register = register;
        this.rules = rules;
    }

    /** Empty where no pair of the pack is in a wall. */
    static Optional<Form> of(Assembly assembly, Register register, Function<String, List<Explanation>> rules) {
        TouchingForm form = new TouchingForm(assembly, register, rules);
        List<Touching> pairs = assembly.pack().touching().stream().filter(pair -> !form.walls(pair).isEmpty()).toList();
        if (pairs.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Form("touching", "Compatibility of touching materials",
            List.of("The matrix shows which components touch; the number is the pair's line in the list below. What the rules say rests on "
                + "kinds of material only. Whether two products get on with each other their makers confirm, in writing, before they are "
                + "built in."),
            List.of(form.matrix(pairs), form.list(pairs)), List.of("Contractor", "Seen by")));
    }

    private List<WallType> walls(Touching pair) {
        return assembly.job().walls().stream().filter(wall -> wall.choice(pair.first()).isPresent()
            && wall.choice(pair.second()).isPresent() && (pair.between().isEmpty() || wall.choice(pair.between()).isEmpty())).toList();
    }

    private Grid matrix(List<Touching> pairs) {
        List<Component> touching = assembly.pack().components().stream().filter(component -> pairs.stream()
            .anyMatch(pair -> pair.first().equals(component.id()) || pair.second().equals(component.id()))).toList();
        List<String> titles = new ArrayList<>(List.of("", "Component"));
        List<Integer> widths = new ArrayList<>(List.of(24, 150));
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < touching.size(); i++) {
            titles.add(String.valueOf(i + 1));
            widths.add(32);
            List<String> row = new ArrayList<>(List.of(String.valueOf(i + 1), touching.get(i).title()));
            for (int j = 0; j < touching.size(); j++) {
                row.add(i == j ? "–" : number(pairs, touching.get(i).id(), touching.get(j).id()));
            }
            rows.add(row);
        }
        return new Grid(titles, widths, rows);
    }

    private static String number(List<Touching> pairs, String one, String other) {
        for (int i = 0; i < pairs.size(); i++) {
            List<String> both = List.of(pairs.get(i).first(), pairs.get(i).second());
            if (both.contains(one) && both.contains(other)) {
                return String.valueOf(i + 1);
            }
        }
        return "·";
    }

    private Grid list(List<Touching> pairs) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i++) {
            Touching pair = pairs.get(i);
            // walls with the same options and the same results share a line
            Map<List<String>, List<String>> lines = new LinkedHashMap<>();
            walls(pair).forEach(wall -> lines.computeIfAbsent(List.of(material(wall, pair.first()), material(wall, pair.second()),
                known(pair, wall.id())), same -> new ArrayList<>()).add(wall.id()));
            String number = String.valueOf(i + 1);
            lines.forEach((line, walls) -> rows.add(List.of(number, String.join(", ", walls), line.get(0), line.get(1), pair.where(),
                line.get(2), statements(pair), "", "")));
        }
        return new Grid(List.of("No.", "Walls", "One", "The other", "Where", "What rules know", "Statements in the register",
            "Maker of one: confirmed by, date", "Maker of the other: confirmed by, date"), List.of(22, 36, 92, 92, 70, 140, 86,
            79, 79), rows);
    }

    private String material(WallType wall, String id) {
        Component component = assembly.pack().component(id).orElseThrow();
        Choice choice = wall.choice(id).orElseThrow();
        return component.title() + ": " + Phrases.list(choice.accept().stream()
            .map(option -> component.option(option).map(Option::title).orElse(option)).toList(), "or");
    }

    /** "sealant.statement holds"; what does not apply is left out. */
    private String known(Touching pair, String wall) {
        List<String> all = new ArrayList<>();
        for (String rule : pair.rules()) {
            List<Result> results = rules.apply(rule).stream().filter(told -> told.wall().equals(wall)).map(Explanation::result).toList();
            WORST.stream().filter(results::contains).findFirst().ifPresent(worst -> all.add(rule + ": " + word(rule, worst)));
        }
        return all.isEmpty() ? "nothing of these kinds" : String.join("\n", all);
    }

    private String word(String rule, Result result) {
        return result == Result.BREAKS ? "■ " + assembly.pack().rule(rule).map(Rule::kind).orElseThrow().text() : result.text();
    }

    private String statements(Touching pair) {
        return register.items().stream().filter(item -> item.isDue() && item.sends().equals(STATEMENT)
            && (item.component().equals(pair.first()) || item.component().equals(pair.second())))
            .map(item -> item.section() + " " + item.paragraph() + ", " + item.item() + ": " + item.status())
            .collect(Collectors.joining("\n"));
    }
}
