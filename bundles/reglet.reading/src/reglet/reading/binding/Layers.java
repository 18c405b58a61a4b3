package reglet.reading.binding;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The layers of the bound sheets (optional content, ISO 32000-1, 8.11). Which of them are off stands with the document and not
 * with its pages, so it has to be taken over, or a package would show what the sheet hides.
 */
final class Layers {
    private static final COSName GROUPS = COSName.OCGS;

    private final COSArray all = new COSArray();
    private final COSArray off = new COSArray();

    void add(PDDocument sheet) {
        COSDictionary properties = sheet.getDocumentCatalog().getCOSObject().getCOSDictionary(COSName.OCPROPERTIES);
        COSArray groups = properties == null ? null : properties.getCOSArray(GROUPS);
        if (groups == null) {
            return;
        }
        groups.forEach(all::add);
        COSDictionary usual = properties.getCOSDictionary(COSName.D);
        if (usual == null) {
            return;
        }
        boolean hidden = COSName.OFF.equals(usual.getCOSName(COSName.BASE_STATE));
        COSArray on = usual.getCOSArray(COSName.ON);
        COSArray named = usual.getCOSArray(COSName.OFF);
        for (COSBase group : groups) {
            if (hidden ? on == null || on.indexOfObject(group) < 0 : named != null && named.indexOfObject(group) >= 0) {
                off.add(group);
            }
        }
    }

    void putInto(PDDocument bound) {
        if (all.size() > 0) {
            COSDictionary usual = new COSDictionary();
            usual.setItem(COSName.OFF, off);
            COSDictionary properties = new COSDictionary();
            properties.setItem(GROUPS, all);
            properties.setItem(COSName.D, usual);
            bound.getDocumentCatalog().getCOSObject().setItem(COSName.OCPROPERTIES, properties);
        }
    }
}
