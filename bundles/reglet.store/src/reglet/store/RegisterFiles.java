package reglet.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import reglet.model.DayCount;
import reglet.model.ExtraStock;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Quantity;
import reglet.model.RegisterFile;
import reglet.model.RegisterFile.Act;
import reglet.model.RegisterFile.Change;
import reglet.model.RegisterFile.Entry;
import reglet.model.RegisterFile.Plan;
import reglet.model.SectionPlan;

/** Reads a job's register.yaml. */
final class RegisterFiles {
    private static final Pattern TIME = Pattern.compile("(\\d{1,4})(?: (days?|weeks?))?");
    private static final int WORKING_WEEK = 5;
    private static final int WEEK = 7;

    private final Pack pack;
    private final DayCount.Kind days;

    private RegisterFiles(Pack pack, DayCount.Kind days) {
        this.pack = pack;
        this.days = days;
    }

    static RegisterFile read(Cursor file, Pack pack) {
        Fields fields = file.fields("format", "scheme", "days", "days_off", "review", "plan", "changes", "actions", "packages");
        Formats.check(fields, Jobs.FORMAT, "register");
        RegisterFiles reader = new RegisterFiles(pack, fields.oneOf("days", Words.DAYS).orElse(DayCount.Kind.WORKING));
        List<LocalDate> off = new ArrayList<>();
        fields.items("days_off").forEach(day -> day.date().ifPresent(off::add));
        List<Plan> plans = new ArrayList<>();
        fields.items("plan").forEach(item -> plans.add(reader.plan(item)));
        List<Change> changes = new ArrayList<>();
        fields.items("changes").forEach(item -> reader.change(item).ifPresent(changes::add));
        Map<String, RegisterFile.Meaning> actions = new LinkedHashMap<>();
        Fields words = new Fields(file, fields.members("actions"));
        fields.members("actions").keySet()
            .forEach(word -> words.oneOf(word, Words.MEANINGS).ifPresent(meaning -> actions.put(word, meaning)));
        return new RegisterFile(fields.oneOf("scheme", Words.SCHEMES).orElse(RegisterFile.Scheme.OWN), new DayCount(reader.days, off),
            reader.time(fields, "review"), plans, changes, actions, reader.packages(fields), fields.at());
    }

    /** What a package holds, in the unit of the material's own amount. */
    private Map<String, Quantity> packages(Fields fields) {
        Map<String, Quantity> packages = new LinkedHashMap<>();
        fields.members("packages").forEach((name, cursor) -> {
            Optional<ExtraStock> stock = pack.stock().stream().filter(found -> found.name().equals(name)).findFirst();
            Optional<Quantity> amount = Quantity.parse(cursor.text());
            if (stock.isEmpty()) {
                fields.problems().unknown(cursor.at(), "the pack leaves nothing with the owner that is called", name,
                    pack.stock().stream().map(ExtraStock::name).toList());
            } else if (amount.isEmpty() || amount.get().dimension() != stock.get().pack().dimension() || amount.get().si() <= 0) {
                cursor.wrong("\"" + cursor.text() + "\" is no amount in a package", "expected one such as \"" + stock.get().pack().text()
                    + "\"");
            } else {
                packages.put(name, amount.get());
            }
        });
        return packages;
    }

    /** A number of days; weeks are of five working or seven calendar days. */
    private OptionalInt time(Fields fields, String name) {
        Optional<Cursor> value = fields.find(name);
        if (value.isEmpty()) {
            return OptionalInt.empty();
        }
        Matcher time = TIME.matcher(value.get().text());
        if (!time.matches()) {
            value.get().wrong("\"" + value.get().text() + "\" is no time",
                "expected whole days or weeks, such as \"10 days\" or \"6 weeks\"");
            return OptionalInt.empty();
        }
        boolean weeks = time.group(2) != null && time.group(2).startsWith("week");
        return OptionalInt.of(Integer.parseInt(time.group(1)) * (!weeks ? 1 : days == DayCount.Kind.WORKING ? WORKING_WEEK : WEEK));
    }

    private Plan plan(Cursor cursor) {
        Fields fields = cursor.fields("section", "item", "on_site", "lead", "review", "sender");
        if (fields.find("section").isPresent() == fields.find("item").isPresent()) {
            cursor.wrong("a plan is for a section or for an item", "write \"section: …\" or \"item: …\"");
        }
        return new Plan(section(fields), fields.text("item", ""), fields.date("on_site"), time(fields, "lead"), time(fields, "review"),
            fields.text("sender", ""), cursor.at());
    }

    private String section(Fields fields) {
        fields.find("section").filter(found -> pack.plan(found.text()).isEmpty()).ifPresent(found -> fields.problems().unknown(found.at(),
            "the pack has no section", found.text(), pack.plans().stream().map(SectionPlan::number).toList()));
        return fields.text("section", "");
    }

    private Optional<Change> change(Cursor cursor) {
        Fields fields = cursor.fields("add", "split", "merge", "strike", "alter", "into", "because", "by");
        List<Act> acts = Stream.of(Act.values()).filter(act -> fields.find(act.text()).isPresent()).toList();
        if (acts.size() != 1) {
            cursor.wrong(acts.isEmpty() ? "the change changes nothing" : "the change is two at once",
                "expected one of: " + String.join(", ", Stream.of(Act.values()).map(Act::text).toList()));
            return Optional.empty();
        }
        Act act = acts.get(0);
        Cursor changed = fields.find(act.text()).orElseThrow();
        List<Cursor> made = act == Act.ADD ? List.of(changed) : fields.find("into").map(into -> into.isMap() ? List.of(into)
            : into.items()).orElse(List.of());
        List<Entry> into = made.stream().map(entry -> entry(entry, act)).toList();
        List<String> items = act == Act.ADD ? List.of() : changed.texts();
        int least = act == Act.MERGE ? 2 : 1;
        if (act != Act.ADD && (items.size() < least || act != Act.MERGE && items.size() > 1)) {
            changed.wrong(act.text() + " names " + items.size() + " items",
                "expected " + (act == Act.MERGE ? "two or more ids" : "one id"));
        }
        boolean fits = switch (act) {
            case STRIKE -> into.isEmpty();
            case SPLIT -> into.size() >= 2;
            default -> into.size() == 1;
        };
        if (!fits) {
            cursor.wrong(act.text() + " makes " + into.size() + " items", "expected " + (act == Act.STRIKE ? "no \"into\""
                : "\"into\" with " + (act == Act.SPLIT ? "two or more items" : "one item")));
        }
        return Optional.of(new Change(act, items, into, fields.text("because"), fields.text("by"), cursor.at()));
    }

    private Entry entry(Cursor cursor, Act act) {
        Fields fields = cursor.fields("id", "section", "item", "kind", "sort", "sends");
        Place at = cursor.at();
        if (act == Act.ADD) {
            List.of("section", "item", "kind", "sends").stream().filter(name -> fields.find(name).isEmpty())
                .forEach(name -> cursor.wrong("\"" + name + "\" is missing", "an added item needs id, section, item, kind and sends"));
        }
        return new Entry(act == Act.ALTER ? fields.text("id", "") : fields.text("id"), section(fields), fields.text("item", ""),
            fields.oneOf("kind", Words.REGISTER), fields.oneOf("sort", Words.SORT), fields.text("sends", ""), at);
    }
}
