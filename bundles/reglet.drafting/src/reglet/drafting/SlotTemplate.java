package reglet.drafting;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateScalarModel;

/**
 * Texts with slots: <code>Lath: ${lath.kind}.</code> The template engine sees plain interpolations of dotted names and nothing
 * else: directives, comments, operators, built-ins and literals are refused before it is called, it may load no class and no
 * other template, its data are names that this class hands on, and what it writes has a limit.
 */
final class SlotTemplate {
    /** Far above any real paragraph. */
    static final int LONGEST = 100_000;

    private static final Pattern SLOT = Pattern.compile("\\$\\{([^}]*)\\}");
    private static final Pattern NAME = Pattern.compile("[A-Za-z_][A-Za-z0-9_]*(?:\\.[A-Za-z_][A-Za-z0-9_-]*)*");
    private static final Pattern DIRECTIVE = Pattern.compile("</?[#@][^\\s>]*");

    private SlotTemplate() {
    }

    /** Names of the slots of a text, in the order written. */
    static List<String> slots(String text) {
        List<String> names = new ArrayList<>();
        Matcher matcher = SLOT.matcher(text);
        while (matcher.find()) {
            names.add(matcher.group(1).strip());
        }
        return names;
    }

    /** The text with every slot replaced. */
    static String without(String text, String replacement) {
        return SLOT.matcher(text).replaceAll(Matcher.quoteReplacement(replacement));
    }

    /** What in a text is no plain slot, as written; empty when the text may be used. */
    static Optional<String> refused(String text) {
        Matcher directive = DIRECTIVE.matcher(text);
        if (directive.find()) {
            return Optional.of(directive.group());
        }
        Optional<String> slot = slots(text).stream().filter(name -> !NAME.matcher(name).matches()).findFirst();
        if (slot.isPresent()) {
            return Optional.of("${" + slot.get() + "}");
        }
        return without(text, "").contains("${") ? Optional.of("${ without }") : Optional.empty();
    }

    /**
     * Fills the slots of a text that {@link #refused} lets pass.
     *
     * @param text what stands for a slot, by its name
     * @throws IllegalArgumentException when the text isn't usable or comes out longer than {@link #LONGEST}
     */
    static String fill(String template, Function<String, String> text) {
        refused(template).ifPresent(part -> {
            throw new IllegalArgumentException("'" + part + "' is no plain slot");
        });
        // The engine would read a hyphen in a name as a minus.
        String escaped = SLOT.matcher(template)
            .replaceAll(found -> Matcher.quoteReplacement("${" + found.group(1).strip().replace("-", "\\-") + "}"));
        Limited out = new Limited();
        try {
            new Template("text", new StringReader(escaped), Engine.CONFIGURATION).process(new Root(text), out);
        } catch (IOException | TemplateException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
        return out.toString();
    }

    /** Made on first use. */
    private static final class Engine {
        static final Configuration CONFIGURATION = configuration();

        private static Configuration configuration() {
            Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
            configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
            configuration.setAPIBuiltinEnabled(false);
            configuration.setTemplateLoader(null);
            configuration.setTagSyntax(Configuration.ANGLE_BRACKET_TAG_SYNTAX);
            configuration.setInterpolationSyntax(Configuration.DOLLAR_INTERPOLATION_SYNTAX);
            configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
            configuration.setLogTemplateExceptions(false);
            return configuration;
        }
    }

    private record Root(Function<String, String> text) implements TemplateHashModel {
        @Override
        public TemplateModel get(String name) {
            return new Name(name, text);
        }

        @Override
        public boolean isEmpty() {
            return false;
        }
    }

    /** A name that may go on with a dot, or print. */
    private record Name(String name, Function<String, String> text) implements TemplateHashModel, TemplateScalarModel {
        @Override
        public TemplateModel get(String next) {
            return new Name(name + "." + next, text);
        }

        @Override
        public boolean isEmpty() {
            return false;
        }

        @Override
        public String getAsString() {
            return text.apply(name);
        }
    }

    private static final class Limited extends StringWriter {
        @Override
        public void write(String text) {
            check(text.length());
            super.write(text);
        }

        @Override
        public void write(String text, int from, int length) {
            check(length);
            super.write(text, from, length);
        }

        @Override
        public void write(char[] text, int from, int length) {
            check(length);
            super.write(text, from, length);
        }

        @Override
        public void write(int character) {
            check(1);
            super.write(character);
        }

        private void check(int more) {
            if (getBuffer().length() + more > LONGEST) {
                throw new IllegalArgumentException("the text is longer than " + LONGEST + " characters");
            }
        }
    }
}
