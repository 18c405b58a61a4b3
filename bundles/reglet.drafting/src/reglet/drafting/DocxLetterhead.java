package reglet.drafting;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigInteger;

import javax.imageio.ImageIO;

import org.apache.poi.common.usermodel.PictureType;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.util.Units;
import org.apache.poi.wp.usermodel.HeaderFooterType;
import org.apache.poi.xwpf.usermodel.BreakType;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageMar;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageSz;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSectPr;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSimpleField;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STPageOrientation;

import reglet.model.Office;

/** What stands around a paper in a word processor's file: paper, head and foot with fields for pages, sender and cover. */
final class DocxLetterhead {
    private static final int TWIPS_PER_INCH = 1440;
    private static final int LYING_SIDE = 960;
    private static final int A4_WIDTH = 11906;
    private static final int A4_HEIGHT = 16838;
    /** Height of a letterhead's picture at most, in points. */
    private static final double PICTURE_HEIGHT = 54;
    /** Space behind the sender, in twentieths of a point; as in the PDF. */
    private static final int AFTER_SENDER = 400;
    private static final String FIELDS = "[" + Letterhead.PAGE + Letterhead.PAGES + "]";

    private final XWPFDocument document;
    private final Letterhead letterhead;
    private final boolean a4;
    private final boolean lying;

    DocxLetterhead(XWPFDocument document, Letterhead letterhead) {
        this(document, letterhead, false);
    }

    /** @param lying whether the paper lies on its long side; its margins are narrower then, to have more room for tables */
    DocxLetterhead(XWPFDocument document, Letterhead letterhead, boolean lying) {
        this.document = document;
        this.letterhead = letterhead;
        this.a4 = letterhead.office().paper() == Office.Paper.A4;
        this.lying = lying;
    }

    /** Between the margins at the sides, in twentieths of a point. */
    int textWidth() {
        return (lying ? height() : width()) - 2 * side();
    }

    private int side() {
        return lying ? LYING_SIDE : TWIPS_PER_INCH;
    }

    /** Of the paper as it stands. */
    private int width() {
        return a4 ? A4_WIDTH : TWIPS_PER_INCH * 17 / 2;
    }

    private int height() {
        return a4 ? A4_HEIGHT : TWIPS_PER_INCH * 11;
    }

    void edges() {
        CTSectPr page = document.getDocument().getBody().addNewSectPr();
        CTPageSz size = page.addNewPgSz();
        size.setW(BigInteger.valueOf(lying ? height() : width()));
        size.setH(BigInteger.valueOf(lying ? width() : height()));
        if (lying) {
            size.setOrient(STPageOrientation.LANDSCAPE);
        }
        CTPageMar margins = page.addNewPgMar();
        BigInteger edge = BigInteger.valueOf(side());
        BigInteger half = BigInteger.valueOf(side() / 2);
        margins.setLeft(edge);
        margins.setRight(edge);
        margins.setTop(edge);
        margins.setBottom(edge);
        margins.setHeader(half);
        margins.setFooter(half);
        margins.setGutter(BigInteger.ZERO);
        XWPFParagraph head = document.createHeader(HeaderFooterType.DEFAULT).createParagraph();
        head.setStyle("Header");
        edge(head, letterhead.head());
        XWPFParagraph foot = document.createFooter(HeaderFooterType.DEFAULT).createParagraph();
        foot.setStyle("Footer");
        edge(foot, letterhead.foot());
    }

    private static void edge(XWPFParagraph paragraph, Letterhead.Edge edge) {
        paged(paragraph, edge.left());
        paragraph.createRun().addTab();
        paged(paragraph, edge.right());
    }

    /** A text whose numbers of pages are fields. */
    private static void paged(XWPFParagraph paragraph, String text) {
        for (String piece : text.split("(?<=" + FIELDS + ")|(?=" + FIELDS + ")")) {
            if (piece.equals(Letterhead.PAGE)) {
                field(paragraph, "PAGE");
            } else if (piece.equals(Letterhead.PAGES)) {
                field(paragraph, "NUMPAGES");
            } else {
                paragraph.createRun().setText(piece);
            }
        }
    }

    private static void field(XWPFParagraph paragraph, String name) {
        CTSimpleField field = paragraph.getCTP().addNewFldSimple();
        field.setInstr(name);
        field.addNewR().addNewT().setStringValue("1");
    }

    /** The sender, and the cover with its end of page. */
    void write() throws InvalidFormatException, IOException {
        sender();
        for (Letterhead.Line line : letterhead.cover()) {
            switch (line.kind()) {
                case TITLE -> paragraph("CoverTitle", line.text());
                case HEADING -> paragraph("CoverHeading", line.text());
                case TEXT -> paragraph("CoverText", line.text());
                default -> {
                    XWPFParagraph item = paragraph("CoverItem", line.text());
                    item.setNumID(BigInteger.valueOf(DocxParts.CAUTION_LIST));
                    item.setNumILvl(BigInteger.ZERO);
                }
            }
        }
        if (!letterhead.cover().isEmpty()) {
            paragraph("Normal", "").createRun().addBreak(BreakType.PAGE);
        }
    }

    /** Whose paper it is: picture, name and address. */
    private void sender() throws InvalidFormatException, IOException {
        Office office = letterhead.office();
        if (office.name().isEmpty()) {
            return;
        }
        if (letterhead.picture().length > 0) {
            picture(paragraph("Normal", ""), letterhead.picture(), textWidth());
        }
        XWPFParagraph last = paragraph("Sender", office.name());
        for (String line : office.address()) {
            last = paragraph("SenderLine", line);
        }
        last.setSpacingAfter(AFTER_SENDER);
    }

    /**
     * Puts a letterhead's picture into a paragraph.
     *
     * @param width room for text, in twentieths of a point
     */
    private static void picture(XWPFParagraph paragraph, byte[] png, long width) throws InvalidFormatException, IOException {
        BufferedImage picture = ImageIO.read(new ByteArrayInputStream(png));
        // 150 dots an inch at most, as in the PDF
        double scale = Math.min(72 / 150.0, Math.min(PICTURE_HEIGHT / picture.getHeight(), width / 20.0 / picture.getWidth()));
        paragraph.createRun().addPicture(new ByteArrayInputStream(png), PictureType.PNG, "letterhead.png",
            Units.toEMU(picture.getWidth() * scale), Units.toEMU(picture.getHeight() * scale));
    }

    private XWPFParagraph paragraph(String style, String text) {
        XWPFParagraph paragraph = document.createParagraph();
        paragraph.setStyle(style);
        if (!text.isEmpty()) {
            paragraph.createRun().setText(text);
        }
        return paragraph;
    }
}
