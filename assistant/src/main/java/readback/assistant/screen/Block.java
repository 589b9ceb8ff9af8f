package readback.assistant.screen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A part of the screen that wants a number of rows.
 *
 * @param importance who gets rows first when there are too few; lower numbers are more important
 * @param least below this many rows it is left out
 * @param wanted more is of no use
 * @param painter paints it into the area it was given
 */
record Block(int importance, int least, int wanted, Painter painter) {

    /** Paints a part. */
    @FunctionalInterface
    interface Painter {
        void paint(Area area);
    }

    /** Paints the blocks one below the other, each with the rows that its importance gets it. */
    static void stack(List<Block> blocks, Area area) {
        int[] rows = new int[blocks.size()];
        int left = area.height();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < rows.length; i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingInt(i -> blocks.get(i).importance()));
        for (int i : order) {
            Block block = blocks.get(i);
            if (block.wanted() > 0 && block.least() <= left) {
                rows[i] = block.least();
                left -= block.least();
            }
        }
        for (int i : order) {
            if (rows[i] > 0) {
                int more = Math.min(left, blocks.get(i).wanted() - rows[i]);
                rows[i] += more;
                left -= more;
            }
        }
        Area rest = area;
        for (int i = 0; i < rows.length; i++) {
            if (rows[i] > 0) {
                blocks.get(i).painter().paint(rest.first(rows[i]));
                rest = rest.after(rows[i]);
            }
        }
    }
}
