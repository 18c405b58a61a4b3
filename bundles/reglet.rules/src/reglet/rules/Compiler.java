package reglet.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.CelIssue;
import dev.cel.common.CelValidationException;
import dev.cel.common.types.CelType;
import dev.cel.compiler.CelCompiler;

import reglet.model.Nearest;
import reglet.model.Pack;
import reglet.model.Problem;
import reglet.model.Rule;
import reglet.model.UnusableInput;
import reglet.rules.Expression.Sight;

/** Parses and type-checks every expression of a pack. */
final class Compiler {
    private static final Pattern NAME = Pattern.compile("[A-Za-z_][A-Za-z_0-9.]*");
    private static final Pattern IN_BRACES = Pattern.compile("\\{([^}]*)}");

    private final Pack pack;
    private Language language;
    private final Map<Sight, Names> names = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Node> trees = new LinkedHashMap<>();

    private Compiler(Pack pack) {
        this.pack = pack;
    }

    /**
     * The checked trees by key.
     *
     * @throws UnusableInput with every expression that can't be used
     */
    static Map<String, Node> compile(Pack pack) throws UnusableInput {
        Compiler compiler = new Compiler(pack);
        Expression.besidesRules(pack).forEach(expression -> compiler.compile(expression, compiler.names(expression.scope()), Map.of()));
        pack.rules().forEach(compiler::compile);
        return compiler.compiled();
    }

    /**
     * The checked trees of a pack that differs from another in the expressions of some rules only; all others are taken over, so that
     * the language is not even loaded where no expression changed.
     *
     * @throws UnusableInput with every changed expression that can't be used
     */
    static Map<String, Node> compile(Pack pack, Pack before, Map<String, Node> trees) throws UnusableInput {
        Compiler compiler = new Compiler(pack);
        Expression.besidesRules(pack).forEach(expression -> compiler.trees.put(expression.key(), trees.get(expression.key())));
        for (Rule rule : pack.rules()) {
            if (before.rule(rule.id()).filter(old -> saysTheSame(old, rule)).isPresent()) {
                Expression.of(rule).forEach(expression -> compiler.trees.put(expression.key(), trees.get(expression.key())));
            } else {
                compiler.compile(rule);
            }
        }
        return compiler.compiled();
    }

    private static boolean saysTheSame(Rule one, Rule other) {
        return one.when().equals(other.when()) && one.let().equals(other.let()) && one.holds().equals(other.holds())
            && one.says().equals(other.says()) && one.fix().equals(other.fix());
    }

    private Map<String, Node> compiled() throws UnusableInput {
        if (!problems.isEmpty()) {
            throw new UnusableInput(problems);
        }
        return trees;
    }

    /** Loaded for the first expression: it takes most of the time of a start. */
    private Language language() {
        if (language == null) {
            language = new Language(pack.tables());
        }
        return language;
    }

    private Names names(Sight sight) {
        return names.computeIfAbsent(sight, seen -> Names.of(pack, seen));
    }

    private void compile(Rule rule) {
        Map<String, CelType> lets = new LinkedHashMap<>();
        Names seen = names(Sight.of(rule.each(), rule.subject()));
        for (Expression expression : Expression.of(rule)) {
            Optional<CelType> type = compile(expression, seen, lets);
            String let = expression.truth() ? "" : expression.key().substring(expression.key().lastIndexOf(' ') + 1);
            if (!let.isEmpty()) {
                if (seen.owners().contains(let)) {
                    problems.add(new Problem(rule.at(), "the intermediate value \"" + let + "\" has the name of a component or subject",
                        "give it another name"));
                }
                type.ifPresent(found -> lets.put(let, found));
            }
        }
        Matcher braces = IN_BRACES.matcher(rule.says() + rule.fix());
        while (braces.find()) {
            String name = braces.group(1);
            if (!lets.containsKey(name) && seen.type(name).isEmpty()) {
                List<String> known = new ArrayList<>(lets.keySet());
                known.addAll(seen.all());
                problems.add(new Problem(rule.at(), "the finding's text names {" + name + "}, which the rule doesn't know",
                    Nearest.hint(name, known)));
            }
        }
    }

    private Optional<CelType> compile(Expression expression, Names seen, Map<String, CelType> lets) {
        try {
            CelCompiler compiler = language().compiler(seen, lets);
            CelAbstractSyntaxTree tree = compiler.compile(expression.text()).getAst();
            CelType type = tree.getResultType();
            if (expression.truth() && !type.equals(dev.cel.common.types.SimpleType.BOOL)) {
                problem(expression, "is of the type " + type.name() + " and not yes or no", "compare it with something");
                return Optional.empty();
            }
            TreeBuilder builder = new TreeBuilder(tree, seen, lets.keySet(), pack);
            trees.put(expression.key(), builder.node());
            builder.wrong().forEach(wrong -> problem(expression, wrong.what(), wrong.expected()));
            return Optional.of(type);
        } catch (CelValidationException invalid) {
            for (CelIssue issue : invalid.getErrors()) {
                problem(expression, "at character " + (issue.getSourceLocation().getColumn() + 1) + ": " + firstLine(issue.getMessage()),
                    hint(issue, expression.text(), seen, lets));
            }
            return Optional.empty();
        }
    }

    private void problem(Expression expression, String what, String expected) {
        problems.add(new Problem(expression.at(), "in " + expression.key() + ", \"" + firstLine(expression.text()) + "\": " + what,
            expected));
    }

    private static String firstLine(String text) {
        int end = text.indexOf('\n');
        return end < 0 ? text : text.substring(0, end);
    }

    /** The fact that an unknown name was probably meant for. The language complains of its first part only, so the whole is read again. */
    private static String hint(CelIssue issue, String text, Names seen, Map<String, CelType> lets) {
        if (!issue.getMessage().startsWith("undeclared reference") || issue.getSourceLocation().getLine() != 1) {
            return "";
        }
        Matcher name = NAME.matcher(text);
        if (!name.find(Math.max(0, issue.getSourceLocation().getColumn()))) {
            return "";
        }
        List<String> known = new ArrayList<>(lets.keySet());
        known.addAll(seen.all());
        return known.contains(name.group()) ? "" : Nearest.hint(name.group(), known);
    }
}
