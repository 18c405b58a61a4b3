package reglet.drafting;

import reglet.model.Office;

/** The fixed parts of a word processor's file (WordprocessingML, ECMA-376): styles, and the lists that number a section. */
final class DocxParts {
    static final String NAMESPACE = "xmlns:w=\"http://schemas.openxmlformats.org/wordprocessingml/2006/main\"";

    /** List levels of the section's numbering: the parts, the articles, then the paragraphs from A. on. */
    static final int PART = 0;
    static final int ARTICLE = 1;
    /** Ids of the two lists. */
    static final long SECTION_LIST = 1;
    static final long CAUTION_LIST = 2;

    /** Faces of the widths that the PDF is set in; free, and word processors know what to take where they are missing. */
    private static final String SERIF = "Liberation Serif";
    static final String SANS = "Liberation Sans";

    /** Distances in twentieths of a point. */
    private static final int FIRST_TEXT = 800;
    static final int STEP = 440;

    private DocxParts() {
    }

    static String numbering() {
        StringBuilder levels = new StringBuilder();
        levels.append(level(PART, "decimal", "PART %1 -", "Part", 0, 0, true));
        levels.append(level(ARTICLE, "decimal", "%1.%2", "Article", FIRST_TEXT, FIRST_TEXT, false));
        String[][] marks = {{"upperLetter", "%3."}, {"decimal", "%4."}, {"lowerLetter", "%5."}, {"decimal", "%6)"}, {"lowerLetter", "%7)"}};
        for (int i = 0; i < marks.length; i++) {
            levels.append(level(ARTICLE + 1 + i, marks[i][0], marks[i][1], "Paragraph" + (i + 1), FIRST_TEXT + i * STEP, STEP, false));
        }
        return "<w:numbering " + NAMESPACE + "><w:abstractNum w:abstractNumId=\"1\"><w:multiLevelType w:val=\"multilevel\"/>" + levels
            + "</w:abstractNum><w:abstractNum w:abstractNumId=\"2\"><w:multiLevelType w:val=\"singleLevel\"/>"
            + level(0, "bullet", "•", "Caution", 280, 200, false) + "</w:abstractNum>"
            + "<w:num w:numId=\"1\"><w:abstractNumId w:val=\"1\"/></w:num>"
            + "<w:num w:numId=\"2\"><w:abstractNumId w:val=\"2\"/></w:num></w:numbering>";
    }

    private static String level(int level, String format, String text, String style, int left, int hanging, boolean space) {
        return "<w:lvl w:ilvl=\"" + level + "\"><w:start w:val=\"1\"/><w:numFmt w:val=\"" + format + "\"/><w:pStyle w:val=\"" + style
            + "\"/>"
            + (space ? "<w:suff w:val=\"space\"/>" : "") + "<w:lvlText w:val=\"" + text + "\"/><w:lvlJc w:val=\"left\"/><w:pPr>"
            + (space ? "" : "<w:tabs><w:tab w:val=\"num\" w:pos=\"" + left + "\"/></w:tabs>")
            + "<w:ind w:left=\"" + left + "\" w:hanging=\"" + hanging + "\"/></w:pPr></w:lvl>";
    }

    /**
     * @param width room for text, in twentieths of a point
     */
    static String styles(Office office, int width) {
        Office.Font own = office.fonts().get(Office.Face.REGULAR);
        String styles = styles(width);
        return own == null ? styles : styles.replace("\"" + SERIF + "\"", "\"" + Html.text(own.family()) + "\"")
            .replace("\"" + SANS + "\"", "\"" + Html.text(own.family()) + "\"");
    }

    static String styles(int width) {
        StringBuilder styles = new StringBuilder("<w:styles " + NAMESPACE + "><w:docDefaults><w:rPrDefault><w:rPr>"
            + font(SERIF)
            + "<w:sz w:val=\"21\"/><w:lang w:val=\"en-US\"/></w:rPr></w:rPrDefault><w:pPrDefault><w:pPr>"
            + "<w:spacing w:before=\"0\" w:after=\"0\" w:line=\"264\" w:lineRule=\"auto\"/></w:pPr></w:pPrDefault></w:docDefaults>");
        styles.append(style("Normal", "Normal", "<w:widowControl/>", ""));
        styles.append(style("SectionNumber", "Section Number", "<w:keepNext/>", sans(22, true)));
        styles.append(style("SectionTitle", "Section Title",
            "<w:keepNext/><w:pBdr><w:bottom w:val=\"single\" w:sz=\"6\" w:space=\"6\"/></w:pBdr>"
            + spacing(0, 120), sans(34, true)));
        styles.append(style("JobNote", "Job Note", spacing(40, 120), "<w:i/>"));
        styles.append(style("Part", "Part", "<w:keepNext/>" + list(PART) + spacing(360, 60) + "<w:outlineLvl w:val=\"0\"/>",
            sans(23, true)));
        styles.append(style("Article", "Article", "<w:keepNext/>" + list(ARTICLE) + spacing(240, 60) + "<w:outlineLvl w:val=\"1\"/>",
            sans(19, true)));
        for (int level = 1; level <= 5; level++) {
            styles.append(style("Paragraph" + level, "Paragraph " + level, list(ARTICLE + level) + spacing(level == 1 ? 120 : 60, 0), ""));
        }
        styles.append(style("TableHead", "Table Head", "<w:keepNext/>" + spacing(40, 40), sans(17, true)));
        styles.append(style("TableNumber", "Table Number", spacing(40, 40), "<w:sz w:val=\"19\"/>"));
        styles.append(style("TableText", "Table Text", spacing(40, 40), "<w:sz w:val=\"19\"/>"));
        styles.append(style("EndOfSection", "End of Section", spacing(480, 240) + "<w:jc w:val=\"center\"/>", sans(19, true)));
        styles.append(style("CautionTitle", "Caution Title", "<w:keepNext/>" + spacing(240, 40), sans(17, true)));
        styles.append(style("Caution", "Caution", "<w:numPr><w:numId w:val=\"" + CAUTION_LIST + "\"/></w:numPr>" + spacing(40, 0),
            sans(17, false)));
        styles.append(style("Header", "header", tabs(width), sans(17, false)));
        styles.append(style("Footer", "footer", tabs(width), sans(17, false)));
        styles.append(style("Sender", "Sender", spacing(80, 0), sans(19, true)));
        styles.append(style("SenderLine", "Sender Line", "", sans(17, false)));
        styles.append(style("CoverTitle", "Cover Title", spacing(2400, 120), sans(40, true)));
        styles.append(style("CoverHeading", "Cover Heading", "<w:keepNext/>" + spacing(320, 60), sans(24, true)));
        styles.append(style("CoverText", "Cover Text", spacing(120, 0), ""));
        styles.append(style("CoverItem", "Cover Item", spacing(60, 0), ""));
        return styles.append("</w:styles>").toString();
    }

    private static String style(String id, String name, String paragraph, String run) {
        return "<w:style w:type=\"paragraph\" w:styleId=\"" + id + "\"" + (id.equals("Normal") ? " w:default=\"1\"" : "")
            + "><w:name w:val=\""
            + name + "\"/>" + (id.equals("Normal") ? "" : "<w:basedOn w:val=\"Normal\"/>") + "<w:qFormat/>"
            + "<w:pPr>" + paragraph + "</w:pPr><w:rPr>" + run + "</w:rPr></w:style>";
    }

    private static String list(int level) {
        return "<w:numPr><w:ilvl w:val=\"" + level + "\"/><w:numId w:val=\"" + SECTION_LIST + "\"/></w:numPr>";
    }

    private static String spacing(int before, int after) {
        return "<w:spacing w:before=\"" + before + "\" w:after=\"" + after + "\"/>";
    }

    private static String tabs(int width) {
        return "<w:tabs><w:tab w:val=\"right\" w:pos=\"" + width + "\"/></w:tabs>";
    }

    private static String font(String name) {
        return "<w:rFonts w:ascii=\"" + name + "\" w:hAnsi=\"" + name + "\" w:cs=\"" + name + "\"/>";
    }

    private static String sans(int halfPoints, boolean bold) {
        return font(SANS) + (bold ? "<w:b/>" : "") + "<w:sz w:val=\"" + halfPoints + "\"/>";
    }
}
