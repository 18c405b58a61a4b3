package reglet.model;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** An input that can't be used; carries every problem found, not only the first. */
public final class UnusableInput extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient List<Problem> problems;

    public UnusableInput(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public UnusableInput(Problem problem) {
        this(List.of(problem));
    }

    /** The same problems with their files below a folder, for a person who stands outside it; a whole path stays what it is. */
    public UnusableInput below(String folder) {
        return new UnusableInput(problems.stream().map(problem -> Path.of(problem.at().file()).isAbsolute() ? problem
            : new Problem(new Place(folder + "/" + problem.at().file(), problem.at().line(), problem.at().column()), problem.what(),
                problem.expected())).toList());
    }

    public List<Problem> problems() {
        return problems;
    }
}
