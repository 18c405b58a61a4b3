package reglet.reading.text;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Component;
import reglet.reading.page.Sentence;
import reglet.reading.words.Plain;
import reglet.reading.words.Vocabulary;

/** Tells of a report's conditions which are said of the product itself: "The wrap shall be covered within 120 days." */
final class Conditions {
    private static final Pattern SUBJECT = Pattern.compile("(?:\\d+(?:\\.\\d+)*\\.?\\s+)?(?:The|This|These|\\p{L}+(?: and \\p{L}+)? of (?:the"
        + "|this))\\s+([\\p{L} -]{2,40}?)\\s+(?:is|are|shall|must|may|can|will)\\b");
    private static final int LONGEST = 3;

    private final Set<String> things = new HashSet<>();

    Conditions(Vocabulary vocabulary, Component component) {
        vocabulary.names(component.id()).forEach(name -> things.add(last(name)));
        // "the sheet" of a certificate of a polymer sheet
        component.properties().stream().filter(property -> property.name().equals("kind")).flatMap(property -> property.type().words()
            .stream()).forEach(word -> things.add(last(word)));
        things.add("product");
    }

    private static String last(String name) {
        String plain = Plain.of(name);
        return plain.substring(plain.lastIndexOf(' ') + 1);
    }

    /** Whether a sentence stands among conditions that others have to keep. */
    boolean areOfOthers(Sentence sentence) {
        Matcher subject = SUBJECT.matcher(sentence.cell().text().strip());
        return sentence.conditions() && !(subject.lookingAt() && Plain.of(subject.group(1)).split(" ").length <= LONGEST
            && things.contains(last(subject.group(1))));
    }
}
