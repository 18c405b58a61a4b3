package reglet.rules;

import java.util.List;

import reglet.model.Assembly;
import reglet.model.Checked;
import reglet.model.Explanation;
import reglet.model.Job;
import reglet.model.Pack;
import reglet.model.UnusableInput;

/** A pack ready to be applied to jobs. Immutable; safe for use by several threads. */
public final class Engine {
    private final Rulebook book;

    private Engine(Rulebook book) {
        this.book = book;
    }

    /**
     * Parses and type-checks every expression of a pack.
     *
     * @throws UnusableInput with every expression that can't be used
     */
    public static Engine compile(Pack pack) throws UnusableInput {
        return new Engine(new Rulebook(pack, Compiler.compile(pack)));
    }

    /** Takes expressions that were checked before; parses and type-checks nothing. The pack must be the one that they were checked for. */
    public static Engine load(Pack pack, byte[] checkedTrees) {
        return new Engine(new Rulebook(pack, Trees.read(checkedTrees)));
    }

    /** The checked expressions, to be kept for {@link #load}. */
    public byte[] checkedTrees() {
        return Trees.write(book.trees());
    }

    public Pack pack() {
        return book.pack;
    }

    /** Which clauses, requirements, register entries and cautions apply to a job. */
    public Assembly resolve(Job job) {
        return Resolver.resolve(book, job);
    }

    /** What every rule finds in a job. */
    public Checked check(Job job) {
        return Checker.check(book, job);
    }

    /** How a rule came out at each place that it looks at; the rule must be one of the pack. */
    public List<Explanation> explain(Job job, String rule) {
        return Checker.explain(book, job, book.pack.rule(rule).orElseThrow());
    }

    Rulebook book() {
        return book;
    }
}
