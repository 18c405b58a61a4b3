package reglet.desk;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;
import reglet.store.Edits;
import reglet.store.WallEdits;

/** Changes to whole wall types and to what they meet, saved as {@link Saving} does: all of a change, or none of it. */
public final class Walls {
    private static final String LIST = "job.yaml";

    private Walls() {
    }

    /** The files that adding or taking away a wall type changes. */
    public static List<String> files(String wall) {
        return List.of(LIST, Saving.wallFile(wall));
    }

    /** Adds a wall type without choices, behind all others. */
    public static OpenJob add(OpenJob job, String id, String title) throws UnusableInput, IOException {
        return add(job, id, "title: " + Edits.scalar(title) + "\n", "");
    }

    /** Adds a wall type that is as another is, comments too, behind it. */
    public static OpenJob duplicate(OpenJob job, String of, String id, String title) throws UnusableInput, IOException {
        return add(job, id, WallEdits.named(Saving.text(job, Saving.wallFile(of)), "title", title), of);
    }

    private static OpenJob add(OpenJob job, String id, String text, String behind) throws UnusableInput, IOException {
        name(id, "wall type", "W" + (job.job().walls().size() + 1));
        if (job.job().wall(id).isPresent()) {
            throw refused("there is a wall type " + id + " already", "take another name");
        }
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put(Saving.wallFile(id), text);
        texts.put(LIST, WallEdits.list(Saving.text(job, LIST), id, behind));
        return Saving.restore(job, texts);
    }

    /** Takes a wall type away, its file too; a job keeps at least one. */
    public static OpenJob remove(OpenJob job, String id) throws UnusableInput, IOException {
        if (job.job().walls().size() < 2) {
            throw refused("a job has at least one wall type", "add another before taking " + id + " away");
        }
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put(LIST, WallEdits.unlist(Saving.text(job, LIST), id));
        texts.put(Saving.wallFile(id), "");
        return Saving.restore(job, texts);
    }

    /** Gives a wall type another title. */
    public static OpenJob rename(OpenJob job, String id, String title) throws UnusableInput, IOException {
        return Saving.restore(job, Map.of(Saving.wallFile(id), WallEdits.named(Saving.text(job, Saving.wallFile(id)), "title", title)));
    }

    /** Makes the choices of components of some wall types the same as those of another, to the letter; also where it has none. */
    public static OpenJob same(OpenJob job, String as, List<String> walls, List<String> components) throws UnusableInput, IOException {
        String from = Saving.text(job, Saving.wallFile(as));
        Map<String, String> texts = new LinkedHashMap<>();
        for (String wall : walls) {
            String text = Saving.text(job, Saving.wallFile(wall));
            for (String component : components) {
                text = WallEdits.same(text, component, from);
            }
            texts.put(Saving.wallFile(wall), text);
        }
        return Saving.restore(job, texts);
    }

    /** Adds something that a wall type meets, as yet without facts. */
    public static OpenJob meet(OpenJob job, String wall, String id, String subject) throws UnusableInput, IOException {
        name(id, "thing that a wall meets", subject + "-1");
        if (job.job().wall(wall).orElseThrow().meetings().stream().anyMatch(met -> met.id().equals(id))) {
            throw refused("the wall meets a " + id + " already", "take another name");
        }
        String file = Saving.wallFile(wall);
        return Saving.restore(job, Map.of(file, WallEdits.meet(Saving.text(job, file), id, subject)));
    }

    /** Takes away something that a wall type meets. */
    public static OpenJob unmeet(OpenJob job, String wall, String id) throws UnusableInput, IOException {
        String file = Saving.wallFile(wall);
        return Saving.restore(job, Map.of(file, WallEdits.unmeet(Saving.text(job, file), id)));
    }

    /** Says who fixed a choice, or why; "" for no longer. */
    public static OpenJob remark(OpenJob job, String wall, String component, String name, String words) throws UnusableInput, IOException {
        String file = Saving.wallFile(wall);
        String text = Saving.text(job, file);
        return Saving.restore(job, Map.of(file, words.isBlank() ? Edits.unstate(text, List.of(component, name))
            : Edits.set(text, component, name, words.strip())));
    }

    private static void name(String id, String what, String such) throws UnusableInput {
        if (!id.matches("[A-Za-z][A-Za-z0-9-]*")) {
            throw refused("\"" + id + "\" is no name of a " + what, "expected letters, digits and hyphens, such as " + such);
        }
    }

    private static UnusableInput refused(String what, String expected) {
        return new UnusableInput(new Problem(Place.of(LIST), what, expected));
    }
}
