package reglet.desk;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.model.Alternate;
import reglet.model.Alternate.State;
import reglet.model.Change;
import reglet.model.Choice;
import reglet.model.Job;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;
import reglet.model.WallType;
import reglet.store.AlternateEdits;
import reglet.store.Edits;

/** Changes to alternates and to their versions of choices, saved as {@link Saving} does: all of a change, or none of it. */
public final class AlternateChanges {
    private static final String LIST = "job.yaml";

    private AlternateChanges() {
    }

    /**
     * Another option for a component, to be priced apart.
     *
     * @param accept      options in place of the base bid's
     * @param number      of an alternate that the job has, which then changes this too, or of a new one
     * @param title       of a new one
     * @param description what a new one changes, in a sentence; may be ""
     * @param because     why it is offered; may be ""
     */
    public record Offer(String wall, String component, List<String> accept, int number, String title, String description, String because) {
        public Offer {
            accept = List.copyOf(accept);
        }
    }

    /** The first number that no alternate of the job bears. */
    public static int next(Job job) {
        int number = 1;
        while (job.alternate(number).isPresent()) {
            number++;
        }
        return number;
    }

    /** The files that a change of alternates may write. */
    public static List<String> files(Job job) {
        return Stream.concat(Stream.of(LIST), job.walls().stream().map(wall -> Saving.wallFile(wall.id()))).toList();
    }

    /**
     * Offers other options of a component as an alternate.
     *
     * @throws UnusableInput when it lacks something, is what the base bid has already, or the job couldn't be read afterwards
     */
    public static OpenJob offer(OpenJob job, Offer offer) throws UnusableInput, IOException {
        Choice base = base(job, offer.wall(), offer.component());
        Optional<Alternate> known = job.job().alternate(offer.number());
        if (offer.number() < 1) {
            throw refused("number " + offer.number() + " counts nothing", "count alternates from 1");
        }
        if (known.isEmpty() && offer.title().isBlank()) {
            throw refused("an alternate needs a title", "name it as bidders will, such as \"stainless lath\"");
        }
        if (base.accept().equals(offer.accept())) {
            throw refused("the base bid accepts that already", "select another option");
        }
        if (base.alternates().containsKey(offer.number())) {
            throw refused(known.orElseThrow().titled() + ", has a choice of its own here already",
                "show the wall with it, and choose another option there");
        }
        Map<String, String> texts = new LinkedHashMap<>();
        if (known.isEmpty()) {
            texts.put(LIST, AlternateEdits.declare(Saving.text(job, LIST), offer.number(), line(offer.title()), line(offer.description())));
        }
        String wall = Saving.wallFile(offer.wall());
        texts.put(wall, AlternateEdits.offer(Saving.text(job, wall), offer.component(), offer.number(), offer.accept(),
            line(offer.because())));
        return Saving.restore(job, texts);
    }

    /** Accepts these options for a component in the version that a bid changes; an alternate that has none yet gets one. */
    public static OpenJob choose(OpenJob job, Bid bid, String wall, String component, List<String> accept)
            throws UnusableInput, IOException {
        int number = bid.version(job.job(), wall, component);
        if (number == 0) {
            return Saving.choose(job, wall, component, accept);
        }
        Choice base = base(job, wall, component);
        String file = Saving.wallFile(wall);
        String text = Saving.text(job, file);
        if (base.alternates().containsKey(number)) {
            return Saving.restore(job, Map.of(file, Edits.choose(text, component, String.valueOf(number), accept)));
        }
        return Saving.restore(job, Map.of(file, AlternateEdits.offer(text, component, number, accept, "")));
    }

    /** Takes back what a bid has for a component: the base bid's choice, or the alternate's own, so that the base bid's holds again. */
    public static OpenJob takeBack(OpenJob job, Bid bid, String wall, String component) throws UnusableInput, IOException {
        int number = bid.version(job.job(), wall, component);
        if (number == 0) {
            return Saving.undecide(job, wall, component);
        }
        String file = Saving.wallFile(wall);
        return Saving.restore(job, Map.of(file, AlternateEdits.withdraw(Saving.text(job, file), component, number)));
    }

    /** Sets a value in the version that a bid changes; an alternate that has none yet gets one that is as the base bid's otherwise. */
    public static OpenJob set(OpenJob job, Bid bid, String wall, String component, String property, String value)
            throws UnusableInput, IOException {
        String file = Saving.wallFile(wall);
        return Saving.restore(job, Map.of(file, Saving.spliced(job, new Change(bid.address(job.job(), wall, component) + "." + property,
            value), own(job, bid, wall, component))));
    }

    /** Says who fixed the version that a bid changes, or why; "" for no longer. */
    public static OpenJob remark(OpenJob job, Bid bid, String wall, String component, String name, String words)
            throws UnusableInput, IOException {
        int number = bid.version(job.job(), wall, component);
        if (number == 0) {
            return Walls.remark(job, wall, component, name, words);
        }
        List<String> path = List.of(component, Choice.VERSIONS, String.valueOf(number), name);
        String text = own(job, bid, wall, component);
        return Saving.restore(job, Map.of(Saving.wallFile(wall), words.isBlank() ? Edits.unstate(text, path)
            : Edits.state(text, path, words.strip())));
    }

    /** The text of a wall's file in which the version that a bid changes has a place of its own. */
    private static String own(OpenJob job, Bid bid, String wall, String component) throws UnusableInput, IOException {
        int number = bid.version(job.job(), wall, component);
        String text = Saving.text(job, Saving.wallFile(wall));
        return number == 0 || base(job, wall, component).alternates().containsKey(number) ? text
            : AlternateEdits.offer(text, component, number, List.of(), "");
    }

    /** Writes the owner's word on an alternate. */
    public static OpenJob decide(OpenJob job, int number, State state) throws UnusableInput, IOException {
        return Saving.restore(job, Map.of(LIST, AlternateEdits.tell(Saving.text(job, LIST), number, "taken", switch (state) {
            case OFFERED -> "";
            case ACCEPTED -> "yes";
            case DECLINED -> "no";
        })));
    }

    /** Gives an alternate another "title" or "description". */
    public static OpenJob name(OpenJob job, int number, String name, String words) throws UnusableInput, IOException {
        if (name.equals("title") && words.isBlank()) {
            throw refused("an alternate needs a title", "name it as bidders will, such as \"stainless lath\"");
        }
        return Saving.restore(job, Map.of(LIST, AlternateEdits.tell(Saving.text(job, LIST), number, name, line(words))));
    }

    /** Removes an alternate with all that it chooses. */
    public static OpenJob remove(OpenJob job, int number) throws UnusableInput, IOException {
        Map<String, String> texts = new LinkedHashMap<>();
        for (WallType wall : job.job().walls()) {
            String file = Saving.wallFile(wall.id());
            String text = Saving.text(job, file);
            List<String> components = new ArrayList<>(wall.choices().keySet());
            for (String component : components) {
                text = AlternateEdits.withdraw(text, component, number);
            }
            texts.put(file, text);
        }
        texts.put(LIST, AlternateEdits.remove(Saving.text(job, LIST), number));
        return Saving.restore(job, texts);
    }

    private static Choice base(OpenJob job, String wall, String component) throws UnusableInput {
        return job.job().wall(wall).flatMap(found -> found.choice(component)).orElseThrow(() -> new UnusableInput(new Problem(
            Place.of(Saving.wallFile(wall)), "the base bid accepts nothing here, and an alternate can only choose otherwise than it",
            "show the base bid, and choose an option there first")));
    }

    private static String line(String words) {
        return words.strip().replaceAll("\\s*\\R\\s*", " ");
    }

    private static UnusableInput refused(String what, String expected) {
        return new UnusableInput(new Problem(Place.of(LIST), what, expected));
    }
}
