package reglet.drafting;

import java.io.IOException;
import java.io.Writer;
import java.util.regex.Pattern;

import freemarker.core.CommonMarkupOutputFormat;
import freemarker.core.CommonTemplateMarkupOutputModel;

/** Markdown as templates print it: texts of the model are escaped whole, so that none of them can become mark-up (CommonMark 0.31, 2.4). */
final class MarkdownFormat extends CommonMarkupOutputFormat<MarkdownFormat.Piece> {
    static final MarkdownFormat INSTANCE = new MarkdownFormat();
    private static final Pattern SPECIAL = Pattern.compile("[\\p{Punct}&&[^,;:'\"/?]]");

    private MarkdownFormat() {
    }

    /** A text or mark-up; the engine asks for a type of its own. */
    static final class Piece extends CommonTemplateMarkupOutputModel<Piece> {
        private Piece(String plain, String markup) {
            super(plain, markup);
        }

        @Override
        public MarkdownFormat getOutputFormat() {
            return INSTANCE;
        }
    }

    @Override
    public String getName() {
        return "Markdown";
    }

    @Override
    public String getMimeType() {
        return "text/markdown";
    }

    @Override
    public void output(String text, Writer out) throws IOException {
        out.write(escapePlainText(text));
    }

    @Override
    public String escapePlainText(String text) {
        return SPECIAL.matcher(text.replaceAll("\\s+", " ")).replaceAll("\\\\$0");
    }

    @Override
    public boolean isLegacyBuiltInBypassed(String function) {
        return false;
    }

    @Override
    protected Piece newTemplateMarkupOutputModel(String plain, String markup) {
        return new Piece(plain, markup);
    }
}
