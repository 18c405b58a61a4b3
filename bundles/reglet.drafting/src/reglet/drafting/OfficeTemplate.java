package reglet.drafting;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.Writer;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;

import reglet.model.Office;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;

/**
 * An office's template, filled. Templates come from outside, so they can do little: choose and repeat texts of the model. They reach no
 * class, no file and no other template; what they print is escaped as Markdown; length and time have limits.
 */
final class OfficeTemplate {
    /** Characters of a template, and of what it prints. */
    static final int LONGEST = 20_000;
    private static final long MILLISECONDS = 2_000;
    private static final Set<String> DIRECTIVES = Set.of("#if", "#elseif", "#else", "#list", "#items", "#sep", "#t", "#lt", "#rt",
        "#nt", "#--");
    private static final Set<String> FUNCTIONS = Set.of("has_content", "upper_case", "lower_case", "cap_first", "trim", "size",
        "first", "last", "index", "counter", "has_next", "is_first", "is_last");
    private static final String DIRECTIVE_NAMES = "if, elseif, else, list, items, sep";
    private static final Pattern HEADER = Pattern.compile("([<\\[]#ftl)");
    private static final Pattern DIRECTIVE = Pattern.compile("</?([#@](?:--|[A-Za-z_.]*))");
    /** In the engine's own spelling a function follows its mark at once. */
    private static final Pattern FUNCTION = Pattern.compile("\\?([A-Za-z_]\\w*)");

    private final Office office;
    private final String file;
    private final String text;

    private OfficeTemplate(Office office, String file) {
        this.office = office;
        this.file = file;
        this.text = office.templates().get(file);
    }

    /**
     * What a template of the office prints, as Markdown.
     *
     * @param model texts, lists and maps of them
     */
    static String fill(Office office, String file, Map<String, Object> model) throws UnusableInput {
        return new OfficeTemplate(office, file).fill(model);
    }

    private String fill(Map<String, Object> model) throws UnusableInput {
        if (text.length() > LONGEST) {
            throw wrong(0, 0, "has " + text.length() + " characters", "expected at most " + LONGEST);
        }
        // It would choose another syntax or way to escape, and leaves no trace in the engine's spelling.
        allowed(HEADER, text, Set.of(), "", DIRECTIVE_NAMES);
        Template template;
        String spelled;
        try {
            template = new Template(file, new StringReader(text), Engine.CONFIGURATION);
            // The engine's own spelling has no spaces or comments within an expression that could hide a function.
            StringWriter out = new StringWriter();
            template.dump(out);
            spelled = out.toString();
        } catch (ParseException e) {
            throw wrong(e.getLineNumber(), e.getColumnNumber(), firstLine(e.getEditorMessage()), "expected ${…}, <#if …> or <#list …>");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        allowed(DIRECTIVE, spelled, DIRECTIVES, "<", DIRECTIVE_NAMES);
        allowed(FUNCTION, spelled, FUNCTIONS, "?", String.join(", ", FUNCTIONS.stream().sorted().toList()));
        _CoreAPI.addThreadInterruptedChecks(template);
        return run(template, model);
    }

    private void allowed(Pattern pattern, String spelled, Set<String> words, String before, String list) throws UnusableInput {
        Matcher found = pattern.matcher(spelled);
        while (found.find()) {
            if (!words.contains(found.group(1))) {
                Place at = at(found.group(1));
                throw new UnusableInput(new Problem(at, "\"" + before + found.group(1) + "\" can't be used here",
                    "expected one of: " + list));
            }
        }
    }

    /** Where a word first stands; the whole file when the engine spells it otherwise. */
    private Place at(String word) {
        int at = text.indexOf(word);
        if (at < 0) {
            return office.place(file);
        }
        String before = text.substring(0, at);
        return office.place(file, (int) before.chars().filter(character -> character == '\n').count() + 1, at - before.lastIndexOf('\n'));
    }

    private String run(Template template, Map<String, Object> model) throws UnusableInput {
        Limited out = new Limited();
        FutureTask<Void> task = new FutureTask<>(() -> {
            template.process(model, out);
            return null;
        });
        Thread thread = new Thread(task, "office template");
        thread.setDaemon(true);
        thread.start();
        try {
            task.get(MILLISECONDS, TimeUnit.MILLISECONDS);
            return out.toString();
        } catch (TimeoutException e) {
            task.cancel(true);
            throw wrong(0, 0, "did not end within " + MILLISECONDS / 1000 + " seconds", "expected a template without endless lists");
        } catch (InterruptedException e) {
            task.cancel(true);
            Thread.currentThread().interrupt();
            throw wrong(0, 0, "was interrupted", "");
        } catch (ExecutionException e) {
            throw failed(e.getCause(), model);
        }
    }

    private UnusableInput failed(Throwable cause, Map<String, Object> model) {
        if (cause instanceof TooLong) {
            return wrong(0, 0, "prints more than " + LONGEST + " characters", "expected a few lines");
        }
        if (cause instanceof TemplateException e) {
            int line = e.getLineNumber() == null ? 0 : e.getLineNumber();
            int column = e.getColumnNumber() == null ? 0 : e.getColumnNumber();
            return e instanceof InvalidReferenceException
                ? wrong(line, column, "\"" + e.getBlamedExpressionString() + "\" is not known or empty",
                    "expected one of: " + String.join(", ", model.keySet().stream().sorted().toList()))
                : wrong(line, column, firstLine(e.getMessageWithoutStackTop()), "");
        }
        return wrong(0, 0, "can't be filled: " + firstLine(String.valueOf(cause.getMessage())), "");
    }

    private UnusableInput wrong(int line, int column, String what, String expected) {
        return new UnusableInput(new Problem(office.place(file, Math.max(0, line), Math.max(0, column)), what, expected));
    }

    private static String firstLine(String message) {
        return List.of(message.strip().split("\\R")).get(0);
    }

    /** Made on first use. */
    private static final class Engine {
        static final Configuration CONFIGURATION = configuration();

        private static Configuration configuration() {
            Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
            configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
            configuration.setAPIBuiltinEnabled(false);
            configuration.setTemplateLoader(null);
            configuration.setObjectWrapper(new SimpleObjectWrapper(Configuration.VERSION_2_3_34));
            configuration.setTagSyntax(Configuration.ANGLE_BRACKET_TAG_SYNTAX);
            configuration.setInterpolationSyntax(Configuration.DOLLAR_INTERPOLATION_SYNTAX);
            configuration.setOutputFormat(MarkdownFormat.INSTANCE);
            configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
            configuration.setLogTemplateExceptions(false);
            return configuration;
        }
    }

    private static final class TooLong extends IOException {
        private static final long serialVersionUID = 1L;
    }

    private static final class Limited extends Writer {
        private final StringBuilder out = new StringBuilder();

        @Override
        public void write(char[] characters, int from, int length) throws IOException {
            if (out.length() + length > LONGEST) {
                throw new TooLong();
            }
            out.append(characters, from, length);
        }

        @Override
        public void flush() {
            // nothing is held back
        }

        @Override
        public void close() {
            // nothing is open
        }

        @Override
        public String toString() {
            return out.toString();
        }
    }
}
