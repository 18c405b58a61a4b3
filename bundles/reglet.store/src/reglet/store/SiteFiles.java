package reglet.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import reglet.model.ExtraStock;
import reglet.model.HoldPoint;
import reglet.model.HoldPoint.Look;
import reglet.model.Quantity;
import reglet.model.Touching;

/** Reads what a pack knows of the work on site: hold points, components that touch each other, and what is left with the owner. */
final class SiteFiles {

    private SiteFiles() {
    }

    static List<HoldPoint> holdPoints(Cursor file) {
        List<HoldPoint> points = new ArrayList<>();
        file.members().forEach((id, cursor) -> {
            Fields fields = cursor.fields("title", "component", "stop", "points");
            List<Look> looks = new ArrayList<>();
            fields.items("points").forEach(item -> looks.add(look(item)));
            if (looks.isEmpty()) {
                cursor.wrong("nothing is looked at", "list \"points:\", each with \"look\" or \"test\"");
            }
            points.add(new HoldPoint(id, fields.text("title"), fields.text("component", ""), fields.text("stop"), looks, cursor.at()));
        });
        return points;
    }

    private static Look look(Cursor item) {
        Fields fields = item.fields("look", "test", "shows", "often", "basis");
        boolean test = fields.find("test").isPresent();
        if (test == fields.find("look").isPresent()) {
            item.wrong("a point is either looked at or tested", "write \"look: …\" or \"test: …\"");
        }
        if (fields.find("basis").isEmpty()) {
            item.wrong("\"basis\" is missing", "say where the point and how often it is looked at come from");
        }
        return new Look(test, fields.text(test ? "test" : "look", ""), fields.texts("shows"), fields.text("often"), Knowledge.basis(fields),
            item.at());
    }

    static List<ExtraStock> stock(Cursor file) {
        List<ExtraStock> all = new ArrayList<>();
        for (Cursor item : file.items()) {
            Fields fields = item.fields("result", "component", "share", "package", "basis");
            String text = fields.text("package");
            Optional<Quantity> pack = Quantity.parse(text);
            if (pack.isEmpty() || fields.text("result").indexOf('.') < 1) {
                item.wrong("there is no amount in a package, or no result of a worksheet",
                    "expected \"package: 10 ft2\" and a result such as "
                    + "\"takeoff.units.flat\"");
            } else {
                all.add(new ExtraStock(fields.text("result"), fields.text("component"), fields.text("share"), pack.get(),
                    Knowledge.basis(fields), item.at()));
            }
        }
        return all;
    }

    static List<Touching> touching(Cursor file) {
        List<Touching> pairs = new ArrayList<>();
        for (Cursor item : file.items()) {
            Fields fields = item.fields("first", "second", "where", "between", "rules", "basis");
            pairs.add(new Touching(fields.text("first"), fields.text("second"), fields.text("where"), fields.text("between",
                ""), fields.texts("rules"),
                Knowledge.basis(fields), item.at()));
        }
        return pairs;
    }
}
