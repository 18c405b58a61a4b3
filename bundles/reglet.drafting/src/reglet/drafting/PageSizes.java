package reglet.drafting;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * What a file of ours takes, so that it can be divided at its pages.
 *
 * @param pages  bytes that each page takes alone
 * @param shared bytes of what stands in every file that some of the pages go into, such as fonts
 */
record PageSizes(List<Long> pages, long shared) {
    /** Bytes of a page's dictionary and its places in lists. */
    private static final long PAGE = 400;

    static PageSizes of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<Set<COSStream>> all = new ArrayList<>();
            Map<COSStream, Integer> uses = new IdentityHashMap<>();
            for (PDPage page : document.getPages()) {
                Set<COSStream> streams = streams(page.getCOSObject());
                streams.forEach(stream -> uses.merge(stream, 1, Integer::sum));
                all.add(streams);
            }
            List<Long> pages = all.stream().map(streams -> PAGE + streams.stream().filter(stream -> uses.get(stream) == 1)
                .mapToLong(COSStream::getLength).sum()).toList();
            return new PageSizes(pages, Math.max(0, pdf.length - pages.stream().mapToLong(Long::longValue).sum()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Everything that a page draws, without its fonts. */
    private static Set<COSStream> streams(COSDictionary page) {
        Set<COSBase> done = Collections.newSetFromMap(new IdentityHashMap<>());
        Set<COSStream> streams = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<COSBase> open = new ArrayDeque<>(List.of(page));
        while (!open.isEmpty()) {
            COSBase next = open.pop();
            COSBase object = next instanceof COSObject reference ? reference.getObject() : next;
            if (object == null || !done.add(object)) {
                continue;
            }
            if (object instanceof COSStream stream) {
                streams.add(stream);
            }
            if (object instanceof COSDictionary dictionary) {
                dictionary.keySet().stream().filter(key -> !key.equals(COSName.PARENT) && !key.equals(COSName.FONT)
                    && !key.equals(COSName.ANNOTS)).map(dictionary::getItem).forEach(open::push);
            } else if (object instanceof COSArray array) {
                array.forEach(open::push);
            }
        }
        return streams;
    }
}
