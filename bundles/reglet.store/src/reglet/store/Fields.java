package reglet.store;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Place;

/** The named members of a YAML map, asked for one by one. */
final class Fields {
    private final Cursor map;
    private final Map<String, Cursor> members;

    Fields(Cursor map, Map<String, Cursor> members) {
        this.map = map;
        this.members = members;
    }

    Place at() {
        return map.at();
    }

    Problems problems() {
        return map.problems();
    }

    Optional<Cursor> find(String name) {
        return Optional.ofNullable(members.get(name));
    }

    /** A text that must be there. */
    String text(String name) {
        Cursor value = members.get(name);
        if (value == null) {
            problems().add(at(), "\"" + name + "\" is missing", "add a line \"" + name + ": …\"");
            return "";
        }
        String text = value.text();
        if (text.isBlank() && !value.isMap() && !value.isList()) {
            value.wrong("\"" + name + "\" is empty", "expected a text");
        }
        return text;
    }

    /** A text that may be left out. */
    String text(String name, String without) {
        return find(name).map(Cursor::text).orElse(without);
    }

    List<String> texts(String name) {
        return find(name).map(Cursor::texts).orElse(List.of());
    }

    List<Cursor> items(String name) {
        return find(name).map(Cursor::items).orElse(List.of());
    }

    Map<String, Cursor> members(String name) {
        return find(name).map(Cursor::members).orElse(Map.of());
    }

    /** Texts by name, in the order written. */
    Map<String, String> textsByName(String name) {
        Map<String, String> texts = new LinkedHashMap<>();
        members(name).forEach((key, value) -> texts.put(key, value.text()));
        return texts;
    }

    /** A whole number. */
    int number(String name, int without) {
        Optional<Cursor> value = find(name);
        if (value.isEmpty()) {
            return without;
        }
        try {
            return Integer.parseInt(value.get().text());
        } catch (NumberFormatException notWhole) {
            value.get().wrong("\"" + value.get().text() + "\" is no whole number", "expected a number such as 10");
            return without;
        }
    }

    /** A date as ISO 8601 writes it. */
    Optional<LocalDate> date(String name) {
        return find(name).flatMap(Cursor::date);
    }

    /** One of some words. */
    <T> Optional<T> oneOf(String name, Map<String, T> words) {
        Optional<Cursor> value = find(name);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        T meant = words.get(value.get().text());
        if (meant == null) {
            problems().unknown(value.get().at(), "unknown word", value.get().text(), words.keySet());
        }
        return Optional.ofNullable(meant);
    }

    /** One of some words that must be there. */
    <T> T oneOf(String name, Map<String, T> words, T otherwise) {
        if (!members.containsKey(name)) {
            problems().add(at(), "\"" + name + "\" is missing", "expected one of: " + String.join(", ", words.keySet()));
        }
        return oneOf(name, words).orElse(otherwise);
    }
}
