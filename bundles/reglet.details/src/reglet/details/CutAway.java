package reglet.details;

import java.util.ArrayList;
import java.util.List;

import reglet.model.Drawing;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Stroke;

/** The wall from outside with its layers cut back one after another, the framing at the left, the units at the right. */
final class CutAway {
    private static final double HIGH = 760;
    private static final double BAND = 130;
    private static final double MESH = 26;

    private final Facts facts;
    private final Stack stack;
    private final Sheet sheet;
    private double x;

    private CutAway(Facts facts, Stack stack) {
        this.facts = facts;
        this.stack = stack;
        sheet = new Sheet(facts, "layers", "The layers in their order, from outside", facts.scale(12, 10));
    }

    static Drawing of(Facts facts, Stack stack) {
        return new CutAway(facts, stack).draw();
    }

    private Drawing draw() {
        List<String> bands = new ArrayList<>();
        for (Layer layer : stack.layers()) {
            if (layer.component().equals("scratch_coat") && facts.has("lath")) {
                bands.add("lath");
            }
            bands.add(layer.component());
        }
        double pitch = HIGH / (bands.size() + 1);
        double spacing = facts.mm("framing", "spacing", 400);
        for (String component : bands) {
            double from = x;
            x += component.equals("framing") ? spacing + 2 * Framing.PLATE : BAND;
            band(component, from);
            sheet.tip(component, component.equals("framing") ? from + spacing + Framing.PLATE * 1.5 : from + BAND / 2,
                HIGH - pitch * (bands.indexOf(component) + 1));
        }
        sheet.across("framing", 0, Framing.PLATE, Framing.PLATE + spacing, -1,
            Lengths.named("studs", facts.text("framing", "spacing")));
        return sheet.done(stack);
    }

    private void band(String component, double from) {
        switch (component) {
            case "framing" -> {
                double spacing = x - 2 * Framing.PLATE;
                for (double centre : new double[] {Framing.PLATE, Framing.PLATE + spacing}) {
                    sheet.rect("framing", Hatch.NONE, centre - Framing.PLATE / 2, 0, centre + Framing.PLATE / 2, HIGH);
                }
            }
            case "inner_ply", "outer_ply" -> {
                sheet.rect(component, Hatch.NONE, from, 0, x, HIGH);
                lap(component, from, component.equals("inner_ply") ? HIGH * 0.55 : HIGH * 0.3);
            }
            case "lath" -> lath(from);
            case "veneer" -> units(from);
            default -> sheet.rect(component, stack.layer(component).orElseThrow().hatch(), from, 0, x, HIGH);
        }
    }

    /** The lower edge of the upper course over the hidden upper edge of the lower one. */
    private void lap(String component, double from, double at) {
        facts.length(component, "lap").ifPresent(lap -> {
            double high = at + Lengths.mm(lap);
            sheet.line(component, Pen.MEDIUM, Stroke.SOLID, from, at, x, at);
            sheet.line(component, Pen.THIN, Stroke.HIDDEN, from, high, x, high);
            sheet.upright(component, 0, at, high, component.equals("inner_ply") ? -6 : -12, Lengths.named("lap", lap.text()));
        });
    }

    private void lath(double from) {
        sheet.rect("lath", Hatch.NONE, from, 0, x, HIGH);
        for (double y = 0; y + BAND <= HIGH; y += MESH) {
            sheet.line("lath", Pen.FINE, Stroke.SOLID, from, y, x, y + BAND);
            sheet.line("lath", Pen.FINE, Stroke.SOLID, from, y + BAND, x, y);
        }
        double spacing = facts.mm("lath_fastener", "spacing", 0);
        double middle = from + BAND / 2;
        for (double y = spacing / 2; spacing > 0 && y < HIGH; y += spacing) {
            sheet.line("lath_fastener", Pen.HEAVY, Stroke.SOLID, middle - 8, y, middle + 8, y);
            sheet.line("lath_fastener", Pen.HEAVY, Stroke.SOLID, middle, y - 8, middle, y + 8);
        }
        sheet.tip("lath_fastener", middle, spacing / 2);
        sheet.upright("lath_fastener", 0, spacing / 2, spacing * 1.5, -18,
            Lengths.named("fasteners", facts.text("lath_fastener", "spacing")));
    }

    private void units(double from) {
        double height = Column.unit(facts);
        double joint = Math.max(0, Column.joint(facts));
        for (double high = HIGH; high > 0; high -= height + joint) {
            sheet.rect("veneer", Hatch.STONE, from, Math.max(0, high - height), x, high);
            if (joint > 0) {
                sheet.rect("unit_joint", Hatch.MORTAR, from, Math.max(0, high - height - joint), x, high - height);
            }
        }
        sheet.tip("unit_joint", x - 8, HIGH - height * Math.max(1, Math.floor(HIGH / height) - 1) - joint / 2);
    }
}
