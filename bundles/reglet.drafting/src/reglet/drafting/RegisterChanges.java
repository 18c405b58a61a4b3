package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import reglet.model.Nearest;
import reglet.model.Register.Lost;
import reglet.model.RegisterFile;
import reglet.model.RegisterFile.Act;
import reglet.model.RegisterFile.Change;
import reglet.model.RegisterFile.Entry;
import reglet.model.RegisterItem;

/** Makes a person's changes to the items that sections ask for. */
final class RegisterChanges {
    private final List<RegisterItem> items;
    private final List<Lost> lost = new ArrayList<>();
    private final List<String> sections;

    private RegisterChanges(List<RegisterItem> derived, List<String> sections) {
        this.items = new ArrayList<>(derived);
        this.sections = sections;
    }

    static RegisterChanges of(List<RegisterItem> derived, RegisterFile file, List<String> sections) {
        RegisterChanges changes = new RegisterChanges(derived, sections);
        file.changes().forEach(changes::make);
        file.plans().stream().filter(plan -> !plan.item().isEmpty()).forEach(plan -> {
            if (changes.items.stream().noneMatch(item -> item.names().contains(plan.item()))) {
                changes.lost.add(new Lost(plan.at(), "The register has no item \"" + plan.item() + "\" that this plan is for.",
                    changes.near(plan.item())));
            }
        });
        return changes;
    }

    List<RegisterItem> items() {
        return items;
    }

    List<Lost> lost() {
        return lost;
    }

    private void make(Change change) {
        List<RegisterItem> found = new ArrayList<>();
        for (String id : change.items()) {
            Optional<RegisterItem> item = items.stream().filter(one -> one.isCalled(id)).findFirst();
            if (item.isEmpty()) {
                lost.add(new Lost(change.at(), "The register has no item \"" + id + "\" to " + change.act().text() + "; the reason was: "
                    + change.because() + ".", near(id)));
            }
            item.ifPresent(found::add);
        }
        if (change.act() == Act.ADD) {
            change.into().forEach(entry -> put(items.size(), entry, List.of(), change));
        } else if (!found.isEmpty()) {
            int at = items.indexOf(found.get(0));
            items.removeAll(found);
            for (Entry entry : change.into()) {
                at += put(at, entry, found, change);
            }
        }
    }

    /** Puts an item in; how many came of it. */
    private int put(int at, Entry entry, List<RegisterItem> made, Change change) {
        String id = entry.id().isEmpty() ? made.get(0).id() : entry.id();
        if (items.stream().anyMatch(item -> item.id().equals(id))) {
            lost.add(new Lost(entry.at(), "The register has an item \"" + id + "\" already.", "Give it another id."));
            return 0;
        }
        if (!entry.section().isEmpty() && !sections.contains(entry.section())) {
            lost.add(new Lost(entry.at(), "The job writes no section " + entry.section() + " for the item \"" + id + "\".",
                "Use one of: " + String.join(", ", sections)));
            return 0;
        }
        items.add(at, item(id, entry, made, change));
        return 1;
    }

    private static RegisterItem item(String id, Entry entry, List<RegisterItem> made, Change change) {
        String note = change.act().text() + ": " + change.because() + " (" + change.by() + ")";
        if (made.isEmpty()) {
            RegisterItem item = RegisterItem.of(id, entry.section(), "", entry.item(), "", entry.kind().orElse(RegisterItem.Kind.ACTION),
                entry.sort().orElse(RegisterItem.Sort.NONE), entry.sends());
            return with(item, List.of(), note);
        }
        RegisterItem first = made.get(0);
        Set<String> from = new LinkedHashSet<>();
        made.forEach(item -> from.addAll(item.names()));
        from.remove(id);
        RegisterItem item = RegisterItem.of(id, entry.section().isEmpty() ? first.section() : entry.section(), paragraphs(made),
            entry.item().isEmpty() ? first.item() : entry.item(), first.component(), entry.kind().orElse(first.kind()),
            entry.sort().orElse(first.sort()), entry.sends().isEmpty() ? first.sends() : entry.sends());
        RegisterItem noted = with(item, List.copyOf(from), first.note().isEmpty() ? note : first.note() + "; " + note);
        // of items of the base and of an alternate, what is made is due when one of them is
        Optional<RegisterItem.Under> under = made.stream().filter(RegisterItem::isDue).findFirst().orElse(first).under();
        return under.map(noted::under).orElse(noted);
    }

    private static RegisterItem with(RegisterItem item, List<String> from, String note) {
        return new RegisterItem(item.id(), item.section(), item.paragraph(), item.item(), item.component(), item.kind(), item.sort(), "",
            item.sends(), "", item.status(), from, note, Optional.empty(), Optional.empty());
    }

    private static String paragraphs(List<RegisterItem> made) {
        return String.join(", ", made.stream().map(RegisterItem::paragraph).filter(path -> !path.isEmpty()).distinct().toList());
    }

    private String near(String id) {
        String hint = Nearest.hint(id, items.stream().map(RegisterItem::id).toList());
        return (hint.isEmpty() ? "" : hint.substring(0, 1).toUpperCase(Locale.ROOT) + hint.substring(1) + " ")
            + "Name another item, or take the entry out.";
    }
}
