package reglet.details;

import java.util.List;

import reglet.model.Drawing;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Stroke;

/** The layers enlarged, each with its thickness. */
final class BuildUp {
    private static final double SHOWN = 45;

    private BuildUp() {
    }

    static Drawing of(Facts facts, Stack stack) {
        Sheet sheet = new Sheet(facts, "build-up", "Build-up of the wall, enlarged", facts.scale(2, 2));
        double high = sheet.notes(stack, 0);
        for (Layer layer : stack.layers()) {
            boolean framing = layer.component().equals("framing");
            if (layer.component().endsWith("_ply")) {
                sheet.thin(layer.component());
            }
            sheet.rect(layer.component(), layer.hatch(), framing ? layer.outside() - Math.min(SHOWN, layer.thickness()) : layer.inside(), 0,
                layer.outside(), high);
        }
        Column column = Column.section(sheet, stack);
        stack.layer("scratch_coat").filter(coat -> facts.has("lath")).ifPresent(coat -> sheet.line("lath", Pen.MEDIUM, Stroke.HIDDEN,
            Column.lath(facts, coat), 2, Column.lath(facts, coat), high - 2));
        column.fastener(high * 0.9);
        column.tips(high * 0.08, high * 0.95);

        // dimensions in turn above and below, each layer's row clear of the words of the next
        across(sheet, stack, "setting_bed", high, 2);
        across(sheet, stack, "mat", high, 3);
        sheet.across("", high, stack.drain(), stack.face(), 1, Lengths.text(stack.face() - stack.drain(), facts.units()));
        int row = -1;
        for (String component : List.of("veneer", "scratch_coat", "insulation", "sheathing")) {
            if (stack.layer(component).isPresent()) {
                across(sheet, stack, component, 0, row--);
            }
        }
        double left = stack.framing() - Math.min(SHOWN, stack.framing());
        sheet.cut(left, 0, left, high);
        sheet.note("Framing: " + facts.text("framing", "depth") + " deep, " + facts.text("framing", "spacing") + " on centre.");
        return sheet.done(stack);
    }

    private static void across(Sheet sheet, Stack stack, String component, double y, int row) {
        stack.layer(component).ifPresent(layer -> sheet.across(component, y, layer.inside(), layer.outside(), row,
            sheet.facts.text(component, "thickness")));
    }
}
