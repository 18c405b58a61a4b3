package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import reglet.model.Alternate;
import reglet.model.Alternate.Kind;
import reglet.model.Alternate.State;
import reglet.model.Assembly;
import reglet.model.Problem;
import reglet.model.SectionDocument.CrossReference;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Slot;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;
import reglet.model.SectionPlan.Made;
import reglet.model.TextChange;
import reglet.model.Unit;

/**
 * What alternates change in a section. Accepted ones are in it as the work will be built; the section is drafted without each to find
 * the paragraphs that it put there. For an offered one the section is drafted as a whole, and what it says otherwise stands behind the
 * paragraph that it would replace. Equal texts print once.
 */
final class Alternates {
    private static final String MARK = "~alternate-";

    private final Assembly assembly;
    private final String section;
    private final List<Other> others = new ArrayList<>();
    /** By offered alternate: paragraphs that it would do without. */
    private final Map<Integer, List<String>> without = new LinkedHashMap<>();
    /** By accepted alternate: paragraphs that it put in place; by articles, in the order in which they stand. */
    private final Map<Integer, List<String>> brought = new LinkedHashMap<>();

    /**
     * A paragraph of an alternate, several where a person added some behind it, none where a person struck it; and the one of the base
     * behind which it stands, "" for the start of the article.
     */
    private record Other(int number, String article, String behind, List<Draft> drafts) {
    }

    Alternates(Assembly assembly, String section) {
        this.assembly = assembly;
        this.section = section;
    }

    /**
     * Notes what an offered alternate says otherwise, before a person's changes are made.
     *
     * @param base the articles of the base; a paragraph that the alternate says too takes on its requirements
     */
    void compare(int number, Map<String, List<Draft>> base, Map<String, List<Draft>> taken) {
        base.replaceAll((article, drafts) -> compare(number, article, drafts, taken.getOrDefault(article, List.of())));
    }

    /** Notes what an accepted alternate put into the section, before a person's changes are made. */
    void accepted(int number, Map<String, List<Draft>> built, Map<String, List<Draft>> base) {
        built.forEach((article, drafts) -> {
            List<String> texts = base.getOrDefault(article, List.of()).stream().map(Alternates::text).toList();
            drafts.stream().filter(draft -> !texts.contains(text(draft)))
                .forEach(draft -> brought.computeIfAbsent(number, key -> new ArrayList<>()).add(draft.id()));
        });
    }

    private List<Draft> compare(int number, String article, List<Draft> base, List<Draft> taken) {
        List<Draft> merged = new ArrayList<>(base);
        List<String> texts = base.stream().map(Alternates::text).toList();
        List<String> takenTexts = taken.stream().map(Alternates::text).toList();
        String behind = "";
        for (Draft draft : taken) {
            int same = texts.indexOf(text(draft));
            if (same >= 0) {
                merged.set(same, Merge.merge(List.of(merged.get(same), draft)));
                behind = base.get(same).id();
            } else {
                Optional<Draft> replaced = base.stream().filter(old -> clause(old).equals(clause(draft)) && !takenTexts.contains(text(old)))
                    .reduce((one, other) -> other);
                behind = replaced.map(Draft::id).orElse(behind);
                others.add(new Other(number, article, behind,
                    List.of(draft.named(draft.id() + MARK + number, false, draft.settings()))));
            }
        }
        base.stream().filter(draft -> !takenTexts.contains(text(draft)))
            .forEach(draft -> without.computeIfAbsent(number, key -> new ArrayList<>()).add(draft.id()));
        return merged;
    }

    private static Draft led(int number, Draft draft) {
        List<Span> text = new ArrayList<>(List.of(new Strong(Alternate.names(List.of(number)) + ":"), new Plain(" ")));
        text.addAll(draft.text());
        return draft.with(text);
    }

    private static String clause(Draft draft) {
        return draft.id().replaceFirst("[@~/+].*", "");
    }

    /** The job for which a paragraph prints: with the alternate that it is of, or as it will be built. */
    static Assembly of(Assembly assembly, String paragraph) {
        return assembly.alternates().getOrDefault(TextChange.alternate(paragraph), assembly);
    }

    /**
     * Puts a person's texts into the paragraphs of offered alternates; their slots print what the alternate chooses.
     *
     * @return what has no place
     */
    List<TextChange> change(List<TextChange> asked, List<Problem> problems) {
        List<TextChange> left = asked;
        for (int i = 0; i < others.size(); i++) {
            Other other = others.get(i);
            TextChanges changes = new TextChanges(assembly.pack(), new Slots(assembly.alternates().get(other.number()), section), problems);
            Map<String, List<Draft>> drafts = new LinkedHashMap<>(Map.of(other.article(), other.drafts()));
            left = changes.apply(drafts, left);
            others.set(i, new Other(other.number(), other.article(), other.behind(), drafts.get(other.article())));
        }
        return left;
    }

    /** Words and slots, without which requirements stand behind them. */
    private static String text(Draft draft) {
        StringBuilder text = new StringBuilder();
        for (Draft paragraph : draft.all()) {
            text.append('\n').append(paragraph.children().size());
            paragraph.text().forEach(span -> text.append('\t').append(span instanceof Slot slot ? slot.ref() + "="
                : "").append(span.text()));
        }
        return text.toString();
    }

    /** Puts the alternates' paragraphs into the articles; one whose place a person struck stands at the article's end. */
    void insert(Map<String, List<Draft>> articles) {
        for (Other other : others) {
            List<Draft> drafts = new ArrayList<>(articles.get(other.article()));
            int place = other.behind().isEmpty() ? 0 : drafts.size();
            for (int i = 0; i < drafts.size(); i++) {
                // behind its paragraph, what a person added there, and earlier alternates of it
                if (drafts.get(i).id().equals(other.behind()) || i == place && behindToo(drafts.get(i).id(), other.behind())) {
                    place = i + 1;
                }
            }
            for (Draft draft : other.drafts()) {
                drafts.add(place++, led(other.number(), draft));
            }
            articles.put(other.article(), drafts);
        }
    }

    private static boolean behindToo(String id, String behind) {
        return id.contains(MARK) || !behind.isEmpty() && id.startsWith(behind + "+");
    }

    /**
     * The paragraphs of an article that lists what is priced apart.
     *
     * @param drafted ids of the paragraphs of the section
     */
    List<Draft> listed(Made made, List<String> drafted) {
        Kind kind = switch (made) {
            case ALTERNATES -> Kind.ALTERNATE;
            case ALLOWANCES -> Kind.ALLOWANCE;
            case UNIT_PRICES -> Kind.UNIT_PRICE;
            default -> throw new IllegalArgumentException(made.name());
        };
        return assembly.job().alternates().stream().filter(one -> one.kind() == kind && standsHere(one))
            .map(one -> Draft.of(made.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-" + one.number(), line(one, drafted))).toList();
    }

    private boolean standsHere(Alternate one) {
        return one.section().equals(section) || one.kind() == Kind.ALTERNATE && (without.containsKey(one.number())
            || brought.containsKey(one.number())
            || others.stream().anyMatch(other -> other.number() == one.number()) || isDeclinedHere(one));
    }

    /** Whether a component of this section has a choice for a declined alternate. */
    private boolean isDeclinedHere(Alternate one) {
        return one.is(State.DECLINED) && assembly.job().walls().stream().flatMap(wall -> wall.choices().values().stream())
            .anyMatch(choice -> choice.alternates().containsKey(one.number()) && assembly.pack().component(choice.component())
                .filter(component -> component.section().equals(section)).isPresent());
    }

    private List<Span> line(Alternate one, List<String> drafted) {
        List<Span> line = new ArrayList<>(List.of(new Plain(one.name() + ", " + one.title() + (one.description().isEmpty() ? "."
            : ": " + one.description().strip().replaceFirst("\\.$", "") + "."))));
        if (!one.unit().isEmpty()) {
            line.add(new Plain(" Unit of measure: " + Unit.of(one.unit()).map(Unit::symbol).orElse(one.unit()) + "."));
        }
        if (one.is(State.OFFERED)) {
            offered(line, one.number(), drafted);
            List<Integer> excluded = excluded(one.number());
            if (!excluded.isEmpty()) {
                line.add(new Plain(" It can't be accepted together with " + Alternate.names(excluded) + "."));
            }
        } else if (one.is(State.ACCEPTED)) {
            line.add(new Plain(" Accepted, and part of the Work."));
            references(line, " Specified in ", brought.getOrDefault(one.number(), List.of()).stream()
                .filter(drafted::contains).toList(), ".");
        } else if (one.is(State.DECLINED)) {
            line.add(new Plain(" Declined, and no part of the Work."));
        }
        return line;
    }

    /** The offered and accepted alternates that choose otherwise than one for the same component of a wall type. */
    private List<Integer> excluded(int number) {
        return assembly.job().alternates().stream().filter(other -> other.number() != number && (other.is(State.OFFERED)
            && assembly.job().exclude(number, other.number()) || other.is(State.ACCEPTED) && standsBack(other.number(), number)))
            .map(Alternate::number).toList();
    }

    /** The accepted one's own versions are the choices in force; another version beside one of them is another choice for it. */
    private boolean standsBack(int accepted, int offered) {
        Assembly without = assembly.without().get(List.of(accepted));
        return without != null && assembly.job().walls().stream().flatMap(wall -> wall.choices().values().stream()
            .filter(choice -> choice.alternates().containsKey(offered) && !choice.asksSame(choice.alternates().get(offered))
                && without.job().wall(wall.id()).flatMap(before -> before.choice(choice.component()))
                    .filter(before -> !before.asksSame(choice)).isPresent())).findAny().isPresent();
    }

    private void offered(List<Span> line, int number, List<String> drafted) {
        List<String> instead = others.stream().filter(other -> other.number() == number)
            .flatMap(other -> other.drafts().stream()).map(Draft::id).toList();
        List<String> gone = without.getOrDefault(number, List.of()).stream().filter(drafted::contains).toList();
        if (!instead.isEmpty()) {
            references(line, " If it is accepted, ", instead, instead.size() == 1 ? " applies" : " apply");
            references(line, " in place of ", gone, "");
            line.add(new Plain("; otherwise " + (instead.size() == 1 ? "it does not." : "they do not.")));
        } else {
            references(line, " If it is accepted, ", gone, gone.size() == 1 ? " does not apply." : " do not apply.");
        }
    }

    private static void references(List<Span> line, String lead, List<String> ids, String end) {
        for (int i = 0; i < ids.size(); i++) {
            line.add(new Plain(i == 0 ? lead : i < ids.size() - 1 ? ", " : ids.size() == 2 ? " and " : ", and "));
            line.add(new CrossReference(ids.get(i), ""));
        }
        if (!ids.isEmpty()) {
            line.add(new Plain(end));
        }
    }
}
