package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.junit.jupiter.api.Test;

import reglet.drafting.DrawingSheet.Dots;
import reglet.drafting.DrawingSheet.Kind;
import reglet.drafting.DrawingSheet.Solid;
import reglet.drafting.DrawingSheet.Strokes;
import reglet.drafting.DrawingSheet.Writing;
import reglet.drafting.Frame.Notes;
import reglet.drafting.Frame.Paper;
import reglet.model.Drawing;
import reglet.model.Drawing.Anchor;
import reglet.model.Drawing.Area;
import reglet.model.Drawing.Dimensioned;
import reglet.model.Drawing.Hatch;
import reglet.model.Drawing.Leader;
import reglet.model.Drawing.Line;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Shape;
import reglet.model.Drawing.Stroke;
import reglet.model.Drawing.Text;

class DrawingFrameTest {
    private static final Frame FRAME = DrawingSample.FRAME;
    private static final Frame KEYS = new Frame(FRAME.job(), FRAME.note(), FRAME.issue(), FRAME.paper(), Notes.KEYS, FRAME.caution(), 1, 0);

    @Test
    void sheetSaysTitleWallJobNoteIssueScalePageNotesAndCaution() {
        List<String> texts = texts(DrawingFrame.sheet(DrawingSample.base(), FRAME.sheet(1, 3)));
        for (String said : List.of("Base of wall at grade", "Detail base, wall type W1", "Millbrook Library <annex>", "Invented sample",
            "Issue: For bid", "Scale 1:5", "page 2 of 3", "Slope finish grade away from the wall.", DrawingSample.CAUTION)) {
            assertTrue(texts.contains(said), said + " in " + texts);
        }
        assertTrue(texts.containsAll(List.of("200 mm", "8 in")), "two scale bars");
        assertTrue(texts.containsAll(List.of("path of water", "path of air")), "both signs are explained");
    }

    @Test
    void textsAtTheLeadersDoNotOverlap() {
        List<Writing> notes = writings(DrawingFrame.sheet(DrawingSample.base(), FRAME)).stream().filter(w -> w.kind() == Kind.NOTE)
            .toList();
        assertTrue(notes.size() >= 9);
        for (Writing a : notes) {
            for (Writing b : notes) {
                assertTrue(a == b || a.anchor() != b.anchor() || Math.abs(a.at().y() - b.at().y()) > a.height() * 1.3, a + " and " + b);
            }
        }
    }

    @Test
    void keysAtTheLeadersAreExplainedByALegend() {
        List<Writing> keyed = writings(DrawingFrame.sheet(DrawingSample.base(), KEYS));
        assertTrue(keyed.stream().anyMatch(w -> w.kind() == Kind.NOTE && w.text().equals("04 73 00.B")));
        assertTrue(keyed.stream().anyMatch(w -> w.kind() == Kind.LEGEND && w.text().equals("04 73 00.B")));
        assertTrue(keyed.stream().anyMatch(w -> w.kind() == Kind.LEGEND && w.text().equals("Setting bed, 1/2 in")));
        assertTrue(keyed.stream().noneMatch(w -> w.kind() == Kind.NOTE && w.text().contains("Setting bed")));
    }

    @Test
    void notesTooManyForTheirColumnGiveWayToKeys() {
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < 26; i++) {
            shapes.add(new Leader("c" + i, new Point(0, 10 * i), new Point(50, 10 * i), "N" + i,
                "A note of several lines, as long as notes on drawings may become when nobody shortens them, number " + i));
        }
        List<Writing> written = writings(DrawingFrame.sheet(new Drawing("d", "Many notes", "", 5, shapes, List.of()),
            Frame.of("Job", "", "", Paper.LETTER, "")));
        assertTrue(written.stream().anyMatch(w -> w.kind() == Kind.NOTE && w.text().equals("N25")));
        assertTrue(written.stream().anyMatch(w -> w.kind() == Kind.LEGEND && w.text().equals("N25")));
    }

    @Test
    void moreNotesThanPaperIsRefusedWithWhatToDo() {
        List<String> notes = Collections.nCopies(200, "A note under the drawing.");
        String said = assertThrows(IllegalArgumentException.class,
            () -> DrawingFrame.sheet(new Drawing("d", "D", "", 5, List.of(), notes), FRAME)).getMessage();
        assertTrue(said.contains("'d'") && said.contains("letter paper") && said.contains("take larger paper"), said);
    }

    @Test
    void drawingTooLargeForItsScaleIsDrawnAtTheNextOneAndSaysSo() {
        Drawing tall = boxed(4, Hatch.NONE, 0, 0, 300, 0, 300, 1500, 0, 1500);
        DrawingSheet sheet = DrawingFrame.sheet(tall, FRAME);
        assertEquals(8, sheet.scale());
        assertTrue(texts(sheet).contains("Scale 1:8 (1 1/2 in = 1 ft)"));
        assertEquals(5, DrawingFrame.sheet(boxed(5, Hatch.NONE, 0, 0, 300, 0, 300, 900, 0, 900), FRAME).scale());
    }

    @Test
    void wideDrawingsLieOnTheirSide() {
        DrawingSheet sheet = DrawingFrame.sheet(boxed(5, Hatch.NONE, 0, 0, 1200, 0, 1200, 200, 0, 200), FRAME);
        assertEquals(List.of(279.4, 215.9, 5.0), List.of(sheet.width(), sheet.height(), sheet.scale()));
    }

    @Test
    void everyMarkLiesOnItsSheet() {
        for (Frame frame : List.of(FRAME, KEYS)) {
            DrawingSheet sheet = DrawingFrame.sheet(DrawingSample.base(), frame);
            for (DrawingSheet.Mark mark : sheet.marks()) {
                List<Point> points = mark instanceof Strokes strokes ? strokes.lines().stream().flatMap(List::stream).toList()
                    : mark instanceof Solid solid ? solid.outline() : mark instanceof Dots dots ? dots.at()
                    : mark instanceof Writing writing ? ends(writing) : List.of();
                points.forEach(point -> assertTrue(point.x() >= 9 && point.x() <= sheet.width() - 9 && point.y() >= 9
                    && point.y() <= sheet.height() - 9, mark.toString()));
            }
        }
    }

    @Test
    void lengthsOnPaperAreRealLengthsByTheScale() {
        DrawingSheet sheet = DrawingFrame.sheet(boxed(4, Hatch.NONE, 100, 200, 200, 200, 200, 280, 100, 280), FRAME);
        List<Point> outline = sheet.marks().stream().filter(mark -> mark.component().equals("box")).map(mark -> (Strokes) mark).findFirst()
            .orElseThrow().lines().get(0);
        assertEquals(25, outline.get(1).x() - outline.get(0).x(), 1e-9);
        assertEquals(20, outline.get(2).y() - outline.get(1).y(), 1e-9);
        assertEquals(sheet.origin().x() + 25, outline.get(0).x(), 1e-9);
    }

    @Test
    void hatchesLeaveTextsAndWhatLiesAboveFree() {
        Drawing drawing = new Drawing("d", "D", "W1", 1, List.of(
            new Area("below", DrawingSample.points(0, 0, 60, 0, 60, 60, 0, 60), Hatch.MORTAR, Pen.THIN),
            new Area("above", DrawingSample.points(40, 40, 60, 40, 60, 60, 40, 60), Hatch.METAL, Pen.THIN),
            new Text("below", new Point(20, 20), "MORTAR", 3, Anchor.MIDDLE)), List.of());
        DrawingSheet sheet = DrawingFrame.sheet(drawing, FRAME);
        List<Point> dots = sheet.marks().stream().filter(Dots.class::isInstance).map(Dots.class::cast)
            .filter(mark -> mark.component().equals("below")).findFirst().orElseThrow().at().stream()
            .map(dot -> new Point(dot.x() - sheet.origin().x(), dot.y() - sheet.origin().y())).toList();
        assertTrue(dots.size() > 1000);
        assertTrue(dots.stream().noneMatch(dot -> dot.x() > 40 && dot.y() > 40), "metal lies above");
        assertTrue(dots.stream().noneMatch(dot -> Math.abs(dot.x() - 20) < 5 && dot.y() > 20 && dot.y() < 23), "the word is free");
    }

    @Test
    void dimensionsPrintWhatTheyAreGivenAndCanBeReadFromBelowOrTheRight() {
        List<Shape> shapes = new ArrayList<>();
        double[][] ends = {{0, 0, 200, 0}, {200, 0, 0, 0}, {0, 0, 0, 200}, {0, 200, 0, 0}, {0, 0, 10, 0}, {0, 0, 0, 0}};
        for (double[] end : ends) {
            shapes.add(new Dimensioned("d", new Point(end[0], end[1]), new Point(end[2], end[3]), 40, "4 in min."));
        }
        List<Writing> written = writings(DrawingFrame.sheet(new Drawing("d", "D", "W1", 5, shapes, List.of()), FRAME)).stream()
            .filter(w -> w.kind() == Kind.DIMENSION).toList();
        assertEquals(Collections.nCopies(6, "4 in min."), written.stream().map(Writing::text).toList());
        assertEquals(List.of(0.0, 0.0, 90.0, 90.0, 0.0, 0.0), written.stream().map(Writing::angle).toList());
    }

    @Test
    void airAndWaterDifferWithoutColour() {
        assertFalse(DrawingSheet.dashes(Stroke.WATER).equals(DrawingSheet.dashes(Stroke.AIR)));
        Drawing drawing = new Drawing("d", "D", "W1", 1, List.of(
            new Line("water", DrawingSample.points(0, 0, 40, 0), Pen.THIN, Stroke.WATER, true),
            new Line("air", DrawingSample.points(0, 10, 40, 10), Pen.THIN, Stroke.AIR, true)), List.of());
        DrawingSheet sheet = DrawingFrame.sheet(drawing, FRAME);
        assertTrue(sheet.marks().stream().anyMatch(mark -> mark.component().equals("water") && mark instanceof Solid), "a filled head");
        assertTrue(sheet.marks().stream().noneMatch(mark -> mark.component().equals("air") && mark instanceof Solid), "an open head");
    }

    private static Drawing boxed(double scale, Hatch hatch, double... xy) {
        return new Drawing("d", "D", "W1", scale, List.of(new Area("box", DrawingSample.points(xy), hatch, Pen.THIN)), List.of());
    }

    private static List<Writing> writings(DrawingSheet sheet) {
        return sheet.marks().stream().filter(Writing.class::isInstance).map(Writing.class::cast).toList();
    }

    private static List<String> texts(DrawingSheet sheet) {
        return writings(sheet).stream().map(Writing::text).toList();
    }

    private static List<Point> ends(Writing writing) {
        double width = new DrawingText().width(writing.text(), writing.height(), writing.strong());
        double left = writing.anchor() == Anchor.LEFT ? 0 : writing.anchor() == Anchor.MIDDLE ? width / 2 : width;
        double turn = Math.toRadians(writing.angle());
        return List.of(-left, width - left).stream().map(along -> new Point(writing.at().x() + along * Math.cos(turn),
            writing.at().y() + along * Math.sin(turn))).toList();
    }
}
