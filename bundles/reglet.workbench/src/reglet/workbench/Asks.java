package reglet.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/** What the window asks the person, one question after the other, without keeping them from their work. Used on the window's thread. */
final class Asks {
    private final List<Ask> open = new ArrayList<>();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    /**
     * A question.
     *
     * @param about what it is about; another one about the same takes its place
     */
    record Ask(String about, String words, List<Answer> answers) {
        Ask {
            answers = List.copyOf(answers);
        }
    }

    /** An answer: the words on its button, and what it does. */
    record Answer(String words, Runnable action) {
    }

    void listen(Runnable listener) {
        listeners.add(listener);
    }

    void leave(Runnable listener) {
        listeners.remove(listener);
    }

    /** The question that waits longest. */
    Optional<Ask> first() {
        return open.stream().findFirst();
    }

    int count() {
        return open.size();
    }

    boolean asks(String about) {
        return open.stream().anyMatch(ask -> ask.about().equals(about));
    }

    void put(Ask ask) {
        open.removeIf(old -> old.about().equals(ask.about()));
        open.add(ask);
        listeners.forEach(Runnable::run);
    }

    void answer(Ask ask, Answer answer) {
        open.remove(ask);
        listeners.forEach(Runnable::run);
        answer.action().run();
    }

    /** The question about something has become idle. */
    void drop(String about) {
        if (open.removeIf(ask -> ask.about().equals(about))) {
            listeners.forEach(Runnable::run);
        }
    }

    void clear() {
        open.clear();
        listeners.forEach(Runnable::run);
    }
}
