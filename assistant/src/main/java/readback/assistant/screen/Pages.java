package readback.assistant.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Things side by side on as many lines as they need, and page by page where there are too few lines. */
final class Pages {

    private Pages() {}

    /** How many lines things of these widths fill. */
    static int lines(List<Integer> widths, int columns) {
        int lines = 1;
        int used = 0;
        for (int width : widths) {
            if (used > 0 && used + width > columns) {
                lines++;
                used = 0;
            }
            used += width;
        }
        return lines;
    }

    /**
     * The things of a page: all of them where they fit, else as many as fit before one more that leads on. After the
     * last page comes the first.
     */
    static <T> List<T> of(List<T> all, int page, T more, Predicate<List<T>> fits) {
        if (fits.test(all)) {
            return all;
        }
        List<List<T>> pages = new ArrayList<>();
        for (int from = 0; from < all.size(); ) {
            int to = all.size();
            List<T> shown = with(all.subList(from, to), more);
            while (to > from + 1 && !fits.test(shown)) {
                to--;
                shown = with(all.subList(from, to), more);
            }
            pages.add(shown);
            from = to;
        }
        return pages.get(page % pages.size());
    }

    private static <T> List<T> with(List<T> some, T more) {
        List<T> shown = new ArrayList<>(some);
        shown.add(more);
        return shown;
    }
}
