package reglet.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import reglet.model.Box;
import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.Property;
import reglet.model.SheetReading.Condition;
import reglet.model.SheetReading.Report;
import reglet.model.SheetValue;

/** Reads "report:" and "conditions:" of a product file. */
final class ReportFiles {
    private static final Box NOWHERE = new Box(0, 0, 0, 0);

    private final Pack pack;
    private final Problems problems;

    ReportFiles(Pack pack, Problems problems) {
        this.pack = pack;
        this.problems = problems;
    }

    Optional<Report> report(Fields product) {
        List<Condition> conditions = product.items("conditions").stream().map(this::condition).toList();
        Optional<Cursor> written = product.find("report");
        if (written.isEmpty()) {
            product.find("conditions").ifPresent(cursor -> cursor.wrong("conditions of use without a report", "add \"report:\" with its "
                + "number"));
            return Optional.empty();
        }
        Fields fields = written.get().fields("number", "holder", "subject", "codes", "issued", "ends");
        return Optional.of(new Report(fields.text("number"), fields.text("holder", ""), fields.text("subject", ""), fields.texts("codes"),
            fields.text("issued", ""), fields.text("ends", ""), conditions));
    }

    private Condition condition(Cursor cursor) {
        Fields fields = cursor.fields("text", "number", "page", "box", "limits");
        String text = fields.text("text");
        int page = fields.number("page", 0);
        Optional<Box> box = ProductFiles.box(fields);
        List<SheetValue> limits = new ArrayList<>();
        fields.members("limits").forEach((path, limit) -> limit(path, limit, text, page, box).ifPresent(limits::add));
        return new Condition(fields.text("number", ""), text, page, box.orElse(NOWHERE), limits);
    }

    private Optional<SheetValue> limit(String path, Cursor cursor, String text, int page, Optional<Box> box) {
        Optional<Property> property = pack.property(path);
        if (property.isEmpty()) {
            problems.unknown(cursor.at(), "unknown property", path, pack.components().stream().flatMap(this::paths).toList());
            return Optional.empty();
        }
        Fields fields = cursor.fields("value", "compare");
        Optional<Cursor> written = fields.find("value");
        if (written.isEmpty()) {
            cursor.wrong("\"value\" is missing", "write what the condition asks for, such as 2 in");
            return Optional.empty();
        }
        return Values.read(written.get(), property.get().type()).map(value -> new SheetValue(path, value,
            fields.oneOf("compare", Words.COMPARE), "", "", text, page, box, false));
    }

    private Stream<String> paths(Component component) {
        return component.properties().stream().map(property -> component.id() + "." + property.name());
    }
}
