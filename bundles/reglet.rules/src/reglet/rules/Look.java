package reglet.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Rule;
import reglet.model.Rule.Result;
import reglet.model.ShownUnits.Sense;
import reglet.model.Value;
import reglet.model.Wording;
import reglet.rules.Outcome.Failed;
import reglet.rules.Outcome.Inapplicable;
import reglet.rules.Outcome.Known;
import reglet.rules.Outcome.Missing;

/**
 * A rule looked at in one setting.
 *
 * @param when    whether it applies; empty when that can't be told
 * @param missing names of the facts that are missing, sorted
 * @param error   what went wrong; "" unless the result is an error
 */
record Look(Rule rule, Result result, Optional<Boolean> when, List<String> missing, String error, Evaluator evaluator, Facts facts,
        Rulebook book) {
    private static final Pattern IN_BRACES = Pattern.compile("\\{([^}]*)}");

    static Look at(Rule rule, Facts facts, Rulebook book) {
        Rulebook.RuleTrees trees = book.trees(rule);
        Evaluator evaluator = new Evaluator(facts, book.tables, trees.lets());
        Function<Outcome, Look> gap = outcome -> of(rule, Result.GAP, Optional.empty(), outcome, evaluator, facts, book);
        Outcome when = trees.when().map(evaluator::of).orElse(Outcome.TRUE);
        if (when.is(false) || when instanceof Inapplicable) {
            return of(rule, Result.DOES_NOT_APPLY, Optional.of(false), when, evaluator, facts, book);
        }
        if (when instanceof Missing) {
            return gap.apply(when);
        }
        if (when instanceof Failed) {
            return of(rule, Result.ERROR, Optional.empty(), when, evaluator, facts, book);
        }
        Outcome holds = evaluator.of(trees.holds());
        Result result = holds.is(true) ? Result.HOLDS : holds.is(false) ? Result.BREAKS : holds instanceof Missing ? Result.GAP
            : Result.ERROR;
        return of(rule, result, Optional.of(true), holds, evaluator, facts, book);
    }

    private static Look of(Rule rule, Result result, Optional<Boolean> when, Outcome why, Evaluator evaluator, Facts facts, Rulebook book) {
        List<String> missing = result == Result.GAP && why instanceof Missing names ? List.copyOf(new TreeSet<>(names.names())) : List.of();
        String error = result != Result.ERROR ? "" : why instanceof Failed failed ? failed.why()
            : why instanceof Inapplicable inapplicable ? inapplicable.name()
            + " has no meaning here, but the rule reads it outside \"when\""
            : "the rule comes to no result";
        return new Look(rule, result, when, missing, error, evaluator, facts, book);
    }

    /** The facts that the rule's expressions read and that are known. */
    Map<String, Value> read() {
        Map<String, Value> read = new LinkedHashMap<>();
        for (String name : book.facts(rule)) {
            if (facts.fact(name) instanceof Known known) {
                read.put(name, FactValues.model(known.value()));
            }
        }
        return read;
    }

    /** The intermediate values that are known. */
    Map<String, Value> lets() {
        Map<String, Value> lets = new LinkedHashMap<>();
        if (when.orElse(false)) {
            rule.let().keySet().forEach(name -> {
                if (evaluator.let(name) instanceof Known known) {
                    lets.put(name, FactValues.model(known.value()));
                }
            });
        }
        return lets;
    }

    /** A text of the rule with the values in its braces. */
    Wording filled(String text) {
        Matcher matcher = IN_BRACES.matcher(text);
        Wording.Builder filled = new Wording.Builder();
        int at = 0;
        while (matcher.find()) {
            filled.amounts(text.substring(at, matcher.start()));
            at = matcher.end();
            String name = matcher.group(1);
            boolean between = rule.let().containsKey(name);
            Outcome outcome = between ? evaluator.let(name) : facts.fact(name);
            if (outcome instanceof Known known) {
                filled.value(FactValues.model(known.value()),
                    between ? Sense.PLAIN : book.pack.property(name).map(Sense::stated).orElse(Sense.PLAIN));
            } else {
                filled.words("(not known)");
            }
        }
        return filled.amounts(text.substring(at)).build();
    }
}
