package reglet.workbench.section;

import java.io.IOException;
import java.util.List;

import reglet.desk.OpenJob;
import reglet.desk.OwnTexts;
import reglet.model.UnusableInput;
import reglet.workbench.Session;

/** How texts of paragraphs are kept while they are written, and taken back after the program ended before its time. */
public final class Kept {
    private static final String CHANGED = "paragraph";
    private static final String ADDED = "new-paragraph";

    private Kept() {
    }

    /** Begins the places of all texts of a section's paragraphs that may be open. */
    public static List<String> places(String section) {
        return List.of(CHANGED + " " + section + " ", ADDED + " " + section + " ");
    }

    /** The file in which a job keeps its changes of a section. */
    public static String file(String section) {
        return OwnTexts.file(section);
    }

    static String place(ParagraphEditor.Place place) {
        return (place.isNew() ? ADDED : CHANGED) + " " + place.section() + " " + place.paragraph();
    }

    /** Says how such texts are taken back: as changes that undo takes back in turn. */
    public static void takeBack(Session session) {
        session.typing().taking(CHANGED, (where, text) -> put(session, where, text, false));
        session.typing().taking(ADDED, (where, text) -> put(session, where, text, true));
    }

    private static void put(Session session, String where, String text, boolean isNew) {
        int blank = where.lastIndexOf(' ');
        ParagraphEditor.Place place = new ParagraphEditor.Place(where.substring(0, blank), where.substring(blank + 1), isNew);
        session.change((isNew ? "paragraph added behind " : "text of ") + where, List.of(file(place.section())),
            job -> write(job, place, text), refused -> session.say(refused, true));
    }

    /** Writes a text; one that says what the library says is the library's again. */
    static OpenJob write(OpenJob job, ParagraphEditor.Place place, String own) throws UnusableInput, IOException {
        return place.isNew() ? OwnTexts.add(job, place.section(), place.paragraph(), own)
            : OwnTexts.change(job, place.section(), place.paragraph(), own);
    }
}
