package reglet.store;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Box;
import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.ProductData;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.PropertyType.Kind;
import reglet.model.SheetValue;

/** Reads the product data of a job. */
final class ProductFiles {
    private static final Map<String, Boolean> CONFIRMED = Map.of("yes", true, "no", false);

    private final Pack pack;
    private final Folder folder;
    private final Problems problems;

    ProductFiles(Pack pack, Folder folder, Problems problems) {
        this.pack = pack;
        this.folder = folder;
        this.problems = problems;
    }

    List<ProductData> products() throws IOException {
        List<ProductData> all = new ArrayList<>();
        for (String file : folder.files("products", ".yaml")) {
            String id = file.substring("products/".length(), file.length() - ".yaml".length());
            folder.text(file).flatMap(text -> Cursor.parse(file, text, 0, problems)).ifPresent(cursor -> all.add(product(id, cursor)));
        }
        return all;
    }

    private ProductData product(String id, Cursor file) {
        Fields fields = file.fields("component", "name", "maker", "model", "sheet", "values", "report", "conditions");
        String component = fields.text("component");
        Optional<Component> known = pack.component(component);
        if (known.isEmpty() && !component.isEmpty()) {
            problems.unknown(fields.find("component").orElseThrow().at(), "unknown component", component,
                pack.components().stream().map(Component::id).toList());
        }
        String sheet = fields.text("sheet", "");
        if (!sheet.isEmpty() && (!folder.holds(sheet) || !folder.exists(sheet))) {
            fields.find("sheet").orElseThrow().wrong("there is no file " + sheet + " in the job folder", "expected a file such as sheets/"
                + id + ".pdf");
        }
        List<SheetValue> values = new ArrayList<>();
        known.ifPresent(found -> fields.members("values").forEach((name, cursor) -> {
            Optional<Property> property = found.property(name);
            if (property.isEmpty()) {
                problems.unknown(cursor.at(), "unknown property of " + component, name,
                    found.properties().stream().map(Property::name).toList());
            } else {
                value(component, property.get(), cursor).ifPresent(values::add);
            }
        }));
        return new ProductData(id, component, fields.text("name"), fields.text("maker", ""), fields.text("model", ""), sheet, values,
            new ReportFiles(pack, problems).report(fields), fields.at());
    }

    private Optional<SheetValue> value(String component, Property property, Cursor cursor) {
        Fields fields = cursor.fields("value", "compare", "method", "edition", "text", "page", "box", "confirmed");
        Optional<Cursor> written = fields.find("value");
        if (written.isEmpty()) {
            cursor.wrong("\"value\" is missing", "write the value that the sheet shows, or leave the property out");
            return Optional.empty();
        }
        String path = component + "." + property.name();
        boolean confirmed = fields.oneOf("confirmed", CONFIRMED).orElse(false);
        // a sheet may state a range of what is asked for as one amount
        boolean range = property.type().kind() == Kind.QUANTITY && !written.get().isList() && written.get().text().contains(" to ");
        PropertyType type = range ? new PropertyType(Kind.RANGE, property.type().unit(), List.of()) : property.type();
        return Values.read(written.get(), type).map(value -> new SheetValue(path, value,
            fields.oneOf("compare", Words.COMPARE), fields.text("method", ""), fields.text("edition", ""),
            fields.text("text", value.text()), fields.number("page", 0), box(fields), confirmed));
    }

    static Optional<Box> box(Fields fields) {
        List<Cursor> numbers = fields.items("box");
        if (numbers.isEmpty()) {
            return Optional.empty();
        }
        try {
            List<Double> sides = numbers.stream().map(number -> Double.valueOf(number.text())).toList();
            if (sides.size() == 4 && sides.stream().allMatch(side -> Double.isFinite(side) && side >= 0)) {
                return Optional.of(new Box(sides.get(0), sides.get(1), sides.get(2), sides.get(3)));
            }
        } catch (NumberFormatException notNumbers) {
            // said below
        }
        fields.find("box").orElseThrow().wrong("is no box", "expected left, top, width and height in points: [72, 310.5, 210, 12]");
        return Optional.empty();
    }
}
