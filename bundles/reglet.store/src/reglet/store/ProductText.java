package reglet.store;

import java.util.Locale;

import reglet.model.Box;
import reglet.model.Numbers;
import reglet.model.ProductData;
import reglet.model.SheetValue;
import reglet.model.Value;
import reglet.model.WordSet;

/** Product data as the text of its file. */
final class ProductText {

    private ProductText() {
    }

    static String of(ProductData product) {
        StringBuilder text = new StringBuilder();
        line(text, "component", product.component());
        line(text, "name", product.name());
        line(text, "maker", product.maker());
        line(text, "model", product.model());
        line(text, "sheet", product.sheet());
        if (!product.values().isEmpty()) {
            text.append("values:\n");
            product.values().forEach(value -> text.append(value(value, "  ")));
        }
        product.report().ifPresent(report -> text.append(ReportText.of(report)));
        return text.toString();
    }

    /** A value below its property's name. */
    static String value(SheetValue value, String indent) {
        StringBuilder text = new StringBuilder();
        text.append(indent).append(value.property().substring(value.property().indexOf('.') + 1)).append(":\n");
        String below = indent + "  ";
        text.append(below).append("value: ").append(written(value.value())).append('\n');
        value.compare().ifPresent(sense -> line(text.append(below), "compare", sense.text()));
        if (!value.method().isEmpty()) {
            line(text.append(below), "method", value.method());
        }
        if (!value.edition().isEmpty()) {
            line(text.append(below), "edition", value.edition());
        }
        line(text.append(below), "text", value.text());
        if (value.page() > 0) {
            text.append(below).append("page: ").append(value.page()).append('\n');
        }
        value.box().ifPresent(box -> text.append(below).append("box: ").append(box(box)).append('\n'));
        return text.append(below).append("confirmed: ").append(value.confirmed() ? "yes" : "no").append('\n').toString();
    }

    private static String written(Value value) {
        return value instanceof WordSet set ? "[" + String.join(", ", set.words().stream().map(Edits::scalar).toList()) + "]"
            : Edits.scalar(value.text());
    }

    static String box(Box box) {
        return String.format(Locale.ROOT, "[%s, %s, %s, %s]", Numbers.plain(box.x()), Numbers.plain(box.y()), Numbers.plain(box.width()),
            Numbers.plain(box.height()));
    }

    static void line(StringBuilder text, String name, String value) {
        if (!value.isEmpty()) {
            text.append(name).append(": ").append(Edits.scalar(value)).append('\n');
        }
    }
}
