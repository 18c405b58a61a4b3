package reglet.drafting;

import java.util.ArrayList;
import java.util.List;

/**
 * How a package is divided into files.
 *
 * @param byKind whether each kind of paper has a file of its own
 * @param limit  bytes that a file may have; 0 for any size
 */
public record Volumes(boolean byKind, long limit) {
    public static final Volumes ONE = new Volumes(false, 0);

    /** Something that is bound: pages of ours, and the sheet behind them. */
    record Block(PackageGroup group, int ownPages, int sheetPages, long sheetBytes) {
    }

    /**
     * A block, or some of its sheet's pages, in a file.
     *
     * @param block     index of the block
     * @param volume    file that it is in, counted from 1
     * @param divider   whether the block's own pages are here
     * @param firstPage first page of the sheet that is here, counted from 1
     * @param pages     pages of the sheet that are here; 0 for none
     */
    record Run(int block, int volume, boolean divider, int firstPage, int pages) {
    }

    /**
     * Divides blocks in their order. A sheet is cut only when it is larger than a file may be.
     *
     * @param perPage bytes of a page of ours
     * @param start   bytes that every file has: its first pages and fonts
     */
    List<Run> divide(List<Block> blocks, long perPage, long start) {
        List<Run> runs = new ArrayList<>();
        int volume = 1;
        long filled = start;
        boolean empty = true;
        for (int i = 0; i < blocks.size(); i++) {
            Block block = blocks.get(i);
            long own = block.ownPages() * perPage;
            boolean otherKind = byKind && i > 0 && block.group() != blocks.get(i - 1).group();
            if (!empty && (otherKind || limit > 0 && filled + own + block.sheetBytes() > limit)) {
                volume++;
                filled = start;
                empty = true;
            }
            long room = limit - start - own;
            int pieces = limit == 0 || block.sheetBytes() <= Math.max(room, 1) ? 1
                : (int) Math.min(block.sheetPages(), room <= 0 ? block.sheetPages() : (block.sheetBytes() + room - 1) / room);
            for (int piece = 0; piece < Math.max(1, pieces); piece++) {
                int from = piece * block.sheetPages() / Math.max(1, pieces);
                int to = (piece + 1) * block.sheetPages() / Math.max(1, pieces);
                runs.add(new Run(i, volume + piece, piece == 0, from + 1, to - from));
            }
            volume += Math.max(0, pieces - 1);
            filled = pieces > 1 ? limit : filled + own + block.sheetBytes();
            empty = false;
        }
        return runs;
    }
}
