package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

import reglet.drafting.Frame.Paper;
import reglet.model.Drawing;
import reglet.model.Drawing.Anchor;
import reglet.model.Drawing.Arc;
import reglet.model.Drawing.Pen;
import reglet.model.Drawing.Point;
import reglet.model.Drawing.Shape;
import reglet.model.Drawing.Stroke;
import reglet.model.Drawing.Text;

class DrawingSvgTest {
    @Test
    void isWellFormedAndAsLargeAsItsPaper() throws Exception {
        Element root = read(DrawingSvg.of(DrawingSample.base(), DrawingSample.FRAME)).getDocumentElement();
        assertEquals(List.of("svg", "1.1", "215.9mm", "279.4mm", "0 0 215.9 279.4"), List.of(root.getTagName(),
            root.getAttribute("version"), root.getAttribute("width"), root.getAttribute("height"), root.getAttribute("viewBox")));
        assertEquals("Base of wall at grade", root.getElementsByTagName("title").item(0).getTextContent());
        Frame a4 = Frame.of("Job", "", "", Paper.A4, "");
        assertEquals("210mm", read(DrawingSvg.of(DrawingSample.base(), a4)).getDocumentElement().getAttribute("width"));
    }

    @Test
    void everyComponentHasOneGroup() throws Exception {
        Set<String> wanted = new TreeSet<>();
        DrawingSample.base().shapes().stream().map(Shape::component).filter(name -> !name.isEmpty()).forEach(wanted::add);
        List<String> groups = new ArrayList<>();
        for (Element group : elements(read(DrawingSvg.of(DrawingSample.base(), DrawingSample.FRAME)), "g")) {
            if (group.hasAttribute("data-component")) {
                groups.add(group.getAttribute("data-component"));
                assertTrue(group.getElementsByTagName("path").getLength() > 0, group.getAttribute("data-component"));
            }
        }
        assertEquals(wanted.size(), groups.size());
        assertEquals(wanted, new TreeSet<>(groups));
    }

    @Test
    void everyTextIsTextInAGenericFace() throws Exception {
        List<Element> texts = elements(read(DrawingSvg.of(DrawingSample.base(), DrawingSample.FRAME)), "text");
        String all = texts.stream().map(Element::getTextContent).reduce("", (a, b) -> a + " " + b);
        for (String said : List.of("FOUNDATION", "GRADE", "4 in min.", "5-1/2 in", "Treated sill plate", "Millbrook Library <annex>",
            "lb/yd²", DrawingSample.CAUTION)) {
            assertTrue(all.contains(said), said);
        }
        assertTrue(texts.stream().allMatch(text -> text.getAttribute("font-family").endsWith("sans-serif")));
    }

    @Test
    void waterIsDashedBlueAndAirIsDotted() throws Exception {
        List<Element> paths = elements(read(DrawingSvg.of(DrawingSample.base(), DrawingSample.FRAME)), "path");
        assertTrue(paths.stream().anyMatch(path -> path.getAttribute("stroke-dasharray").equals("3 1.2")
            && path.getAttribute("stroke").equals("#1b4f9c")));
        assertTrue(paths.stream().anyMatch(path -> path.getAttribute("stroke-dasharray").equals("0 1.1")
            && path.getAttribute("stroke-linecap").equals("round")));
    }

    @Test
    void charactersThatXmlForbidsDoNotBreakIt() throws Exception {
        Drawing drawing = new Drawing("d", "\"A\" & <B>\u0007", "W1", 5,
            List.of(new Text("a\"&<b>", new Point(0, 0), "x < y & z", 2, Anchor.LEFT)), List.of());
        Document read = read(DrawingSvg.of(drawing, DrawingSample.FRAME));
        assertTrue(elements(read, "text").stream().anyMatch(text -> text.getTextContent().equals("x < y & z")));
        assertTrue(elements(read, "g").stream().anyMatch(group -> group.getAttribute("data-component").equals("a\"&<b>")));
    }

    @Test
    void arcsRunCounterClockwise() throws Exception {
        Drawing drawing = new Drawing("d", "D", "W1", 1, List.of(new Arc("a", new Point(0, 0), 10, 0, 90, Pen.THIN, Stroke.SOLID),
            new Arc("c", new Point(0, 0), 10, 0, 360, Pen.THIN, Stroke.SOLID)), List.of());
        String svg = DrawingSvg.of(drawing, DrawingSample.FRAME);
        String[] steps = elements(read(svg), "path").stream().map(path -> path.getAttribute("d")).filter(d -> d.contains("A")).findFirst()
            .orElseThrow().split("[MA ]");
        // From (10, 0) to (0, 10) about the origin, in coordinates that run down: left by 10 and up by 10, sweep flag 0.
        assertEquals("0", steps[7]);
        assertEquals(-10, Double.parseDouble(steps[8]) - Double.parseDouble(steps[1]), 1e-9);
        assertEquals(-10, Double.parseDouble(steps[9]) - Double.parseDouble(steps[2]), 1e-9);
        assertEquals("10", elements(read(svg), "circle").get(0).getAttribute("r"));
    }

    @Test
    void sameDrawingGivesTheSameTextWithoutOutsideParts() {
        String svg = DrawingSvg.of(DrawingSample.base(), DrawingSample.FRAME);
        assertEquals(svg, DrawingSvg.of(DrawingSample.base(), DrawingSample.FRAME));
        assertFalse(svg.contains("href") || svg.contains("<script") || svg.contains("url("));
        assertFalse(svg.contains("NaN") || svg.contains("Infinity"));
    }

    private static Document read(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Element> elements(Document document, String name) {
        NodeList nodes = document.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }
}
