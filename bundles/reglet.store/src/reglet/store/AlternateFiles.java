package reglet.store;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.model.Alternate;
import reglet.model.Alternate.Kind;
import reglet.model.Alternate.State;
import reglet.model.Choice;
import reglet.model.Pack;
import reglet.model.SectionPlan;

/** Reads what a job prices apart: alternates, allowances, unit prices. */
final class AlternateFiles {
    private static final Map<String, State> TAKEN = Map.of("yes", State.ACCEPTED, "no", State.DECLINED);

    private AlternateFiles() {
    }

    static List<Alternate> read(Fields job, Pack pack) {
        List<Alternate> all = new ArrayList<>();
        for (Cursor item : job.items("alternates")) {
            Alternate read = alternate(item, pack);
            if (all.stream().anyMatch(other -> other.kind() == read.kind() && other.number() == read.number())) {
                item.wrong(read.name() + " stands here twice", "give one of them another number");
            }
            all.add(read);
        }
        // papers list them by their numbers, in whatever order they were thought of
        all.sort(Comparator.comparingInt(Alternate::number));
        return all;
    }

    private static Alternate alternate(Cursor item, Pack pack) {
        Fields fields = item.fields("number", "kind", "title", "description", "section", "unit", "taken");
        Map<String, Kind> kinds = new LinkedHashMap<>();
        Stream.of(Kind.values()).forEach(kind -> kinds.put(kind.text(), kind));
        Kind kind = fields.oneOf("kind", kinds, Kind.ALTERNATE);
        fields.text("number");
        int number = fields.number("number", 1);
        if (number < 1) {
            item.wrong("number " + number + " counts nothing", "count from 1");
        }
        String section = fields.text("section", "");
        if (!section.isEmpty() && pack.plan(section).isEmpty()) {
            item.problems().unknown(fields.find("section").orElseThrow().at(), "the pack has no section", section,
                pack.plans().stream().map(SectionPlan::number).toList());
        }
        if (kind != Kind.ALTERNATE && section.isEmpty()) {
            item.wrong("\"section\" is missing", "name the section that lists the " + kind.text() + ", such as 04 73 00");
        }
        String unit = kind == Kind.UNIT_PRICE ? fields.text("unit") : fields.text("unit", "");
        if (kind != Kind.UNIT_PRICE && !unit.isEmpty()) {
            item.wrong("only a unit price has a unit", "leave \"unit\" out, or write \"kind: unit price\"");
        }
        if (kind != Kind.ALTERNATE) {
            fields.find("taken").ifPresent(cursor -> cursor.wrong("only an alternate is taken up", "leave \"taken\" out"));
        }
        return new Alternate(number, kind, fields.text("title"), fields.text("description", ""), section, unit,
            fields.oneOf("taken", TAKEN).orElse(State.OFFERED), item.at());
    }

    /** Two alternates that are both taken up can't choose differently for one component; said at both places. */
    static void together(Map<Integer, Choice> versions, List<Alternate> alternates, Problems problems) {
        List<Choice> taken = new ArrayList<>();
        List<Alternate> names = new ArrayList<>();
        alternates.stream().filter(alternate -> alternate.is(State.ACCEPTED) && versions.containsKey(alternate.number())).forEach(one -> {
            names.add(one);
            taken.add(versions.get(one.number()));
        });
        for (int i = 0; i < taken.size(); i++) {
            for (int j = 0; j < taken.size(); j++) {
                if (i != j && !taken.get(i).asksSame(taken.get(j))) {
                    problems.add(taken.get(i).at(), names.get(i).name() + " and " + names.get(j).name() + " are both taken up and choose "
                        + "differently for " + taken.get(i).component() + "; " + names.get(j).name() + " at " + taken.get(j).at(),
                        "take one of them up, or give both the same choice");
                }
            }
        }
    }

    /** The number of an alternate that a choice has another version for; empty, with a problem, when the job declares none of it. */
    static Optional<Integer> declared(String number, Cursor version, List<Alternate> alternates) {
        List<String> known = alternates.stream().filter(alternate -> alternate.kind() == Kind.ALTERNATE)
            .map(alternate -> String.valueOf(alternate.number())).toList();
        if (known.contains(number)) {
            return Optional.of(Integer.valueOf(number));
        }
        version.wrong("the job declares no alternate " + number, known.isEmpty()
            ? "declare it under \"alternates\" in job.yaml, with number, kind and title" : "expected one of: " + String.join(", ", known));
        return Optional.empty();
    }
}
