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

    /**
     * Something that is bound: pages of ours, and the sheet behind them.
     *
     * @param ownPages bytes of each of our pages
     */
    record Block(PackageGroup group, List<Long> ownPages, int sheetPages, long sheetBytes) {
        Block {
            ownPages = List.copyOf(ownPages);
        }
    }

    /**
     * A block, or some of its pages, in a file.
     *
     * @param block     index of the block
     * @param volume    file that it is in, counted from 1
     * @param ownFirst  first of the block's own pages that is here, counted from 1
     * @param ownPages  own pages that are here; 0 for none
     * @param firstPage first page of the sheet that is here, counted from 1
     * @param pages     pages of the sheet that are here; 0 for none
     */
    record Run(int block, int volume, int ownFirst, int ownPages, int firstPage, int pages) {
    }

    /**
     * Divides blocks in their order. Pages of ours, and those of a sheet, are parted only when they alone are larger than a file may be.
     *
     * @param start bytes that every file has: its first pages and fonts
     */
    List<Run> divide(List<Block> blocks, long start) {
        List<Run> runs = new ArrayList<>();
        int volume = 1;
        long filled = start;
        boolean empty = true;
        for (int i = 0; i < blocks.size(); i++) {
            Block block = blocks.get(i);
            long own = block.ownPages().stream().mapToLong(Long::longValue).sum();
            boolean otherKind = byKind && i > 0 && block.group() != blocks.get(i - 1).group();
            if (!empty && (otherKind || limit > 0 && filled + own + block.sheetBytes() > limit)) {
                volume++;
                filled = start;
            }
            int from = 0;
            for (int page = 0; page < block.ownPages().size(); page++) {
                if (limit > 0 && page > from && filled + block.ownPages().get(page) > limit) {
                    runs.add(new Run(i, volume++, from + 1, page - from, 1, 0));
                    filled = start;
                    from = page;
                }
                filled += block.ownPages().get(page);
            }
            long room = limit - filled;
            int pieces = limit == 0 || block.sheetBytes() <= Math.max(room, 1) ? 1
                : (int) Math.min(block.sheetPages(), room <= 0 ? block.sheetPages() : (block.sheetBytes() + room - 1) / room);
            for (int piece = 0; piece < Math.max(1, pieces); piece++) {
                int first = piece * block.sheetPages() / Math.max(1, pieces);
                int end = (piece + 1) * block.sheetPages() / Math.max(1, pieces);
                runs.add(new Run(i, volume + piece, from + 1, piece == 0 ? block.ownPages().size() - from : 0, first + 1, end - first));
            }
            volume += Math.max(0, pieces - 1);
            filled = pieces > 1 ? limit : filled + block.sheetBytes();
            empty = false;
        }
        return runs;
    }
}
