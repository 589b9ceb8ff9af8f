package readback.assistant.screen;

import java.util.ArrayList;
import java.util.List;
import org.jline.utils.AttributedStyle;

/** Places to touch, side by side, each as tall as a gloved finger needs. */
final class Buttons {

    /** A gloved finger hits three rows. */
    static final int LEAST_ROWS = 3;

    private static final int LEAST_COLUMNS = 12;

    private final Canvas canvas;
    private final AttributedStyle style;
    private final int tall;
    private final List<Frame.Target> targets = new ArrayList<>();

    /** @param rows of the screen: where there are many, buttons are taller */
    Buttons(Canvas canvas, AttributedStyle style, int rows) {
        this.canvas = canvas;
        this.style = style;
        this.tall = rows >= 40 ? LEAST_ROWS + 2 : LEAST_ROWS;
    }

    /** Rows of one of them. */
    int tall() {
        return tall;
    }

    /** Those that were placed. */
    List<Frame.Target> targets() {
        return targets;
    }

    /** How many lines of them these options fill. */
    static int lines(List<View.Option> options, int width) {
        return Pages.lines(widths(options), width - 3);
    }

    private static List<Integer> widths(List<View.Option> list) {
        return list.stream()
                .map(option -> Math.max(LEAST_COLUMNS, option.label().length() + 6) + 1)
                .toList();
    }

    /** @param pitch rows from one line of them to the next */
    void place(List<View.Option> shown, Area area, int pitch) {
        int left = area.left() + 2;
        int top = area.top();
        List<Integer> widths = widths(shown);
        for (int i = 0; i < shown.size(); i++) {
            if (left + widths.get(i) > area.right() && left > area.left() + 2) {
                left = area.left() + 2;
                top += pitch;
            }
            target(shown.get(i), new Area(left, top, left + widths.get(i) - 1, top + tall));
            left += widths.get(i);
        }
    }

    private void target(View.Option option, Area area) {
        canvas.fill(area, style);
        String label = "[ " + option.label() + " ]";
        int left = area.left() + Math.max(0, (area.width() - label.length()) / 2);
        canvas.put(area.top() + area.height() / 2, left, area.right(), label, style);
        targets.add(new Frame.Target(
                area, option.words().isEmpty() ? new Action.Redraw() : new Action.Utter(option.words())));
    }
}
