package reglet.rules;

import java.util.List;

import reglet.model.Assembly;
import reglet.model.Calculator;
import reglet.model.Checked;
import reglet.model.Explanation;
import reglet.model.Job;
import reglet.model.JobWorksheets;
import reglet.model.Pack;
import reglet.model.UnusableInput;

/** A pack ready to be applied to jobs. Immutable; safe for use by several threads. */
public final class Engine {
    private final Rulebook book;
    private final Calculator calculator;

    private Engine(Rulebook book, Calculator calculator) {
        this.book = book;
        this.calculator = calculator;
    }

    /**
     * Parses and type-checks every expression of a pack.
     *
     * @param calculator runs the worksheets that the pack asks for
     * @throws UnusableInput with every expression that can't be used
     */
    public static Engine compile(Pack pack, Calculator calculator) throws UnusableInput {
        return new Engine(new Rulebook(pack, Compiler.compile(pack)), calculator);
    }

    /** Takes expressions that were checked before; parses and type-checks nothing. The pack must be the one that they were checked for. */
    public static Engine load(Pack pack, byte[] checkedTrees, Calculator calculator) {
        return new Engine(new Rulebook(pack, Trees.read(checkedTrees)), calculator);
    }

    /**
     * The engine for this pack as a jurisdiction amends it: components, properties but for their usual values, clauses and worksheets are
     * the same. Parses and type-checks the expressions of changed and added rules alone.
     *
     * @throws UnusableInput with every expression that can't be used
     */
    public Engine amended(Pack amended) throws UnusableInput {
        return new Engine(new Rulebook(amended, Compiler.compile(amended, book.pack, book.trees())), calculator);
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
        return Resolver.resolve(inquiry(job));
    }

    /** What every rule finds in a job. */
    public Checked check(Job job) {
        return open(job).checked();
    }

    /** The check of a job, kept so that a changed job is checked faster. */
    public Check open(Job job) {
        return Check.of(inquiry(job));
    }

    /** How a rule came out at each place that it looks at; the rule must be one of the pack. */
    public List<Explanation> explain(Job job, String rule) {
        return Checker.explain(inquiry(job), book.pack.rule(rule).orElseThrow());
    }

    /** Every worksheet that the pack asks for in a job, and what keeps those that can't be made. */
    public JobWorksheets worksheets(Job job) {
        return WorksheetRuns.of(inquiry(job));
    }

    private Inquiry inquiry(Job job) {
        return new Inquiry(book, job, calculator);
    }

    Rulebook book() {
        return book;
    }
}
