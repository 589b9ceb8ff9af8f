package readback.assistant.screen;

import org.jline.utils.AttributedStyle;

/**
 * The colours, from the fixed part of the xterm palette (16 to 255). Every pair has a contrast of 7:1 or more (WCAG
 * 2.2, 1.4.6), and nothing is told by colour alone.
 */
public enum Palette {
    /** Black on white: for sunlight. */
    DAY(231, 16, 240),
    /** White on black. */
    NIGHT(16, 231, 248);

    private static final int WHITE = 231;
    private static final int DARK_RED = 88;
    private static final int DARK_BLUE = 17;

    private final int paper;
    private final int ink;
    private final int grey;

    Palette(int paper, int ink, int grey) {
        this.paper = paper;
        this.ink = ink;
        this.grey = grey;
    }

    AttributedStyle plain() {
        return pair(ink, paper);
    }

    AttributedStyle strong() {
        return pair(ink, paper).bold();
    }

    /** Not settled yet; always in italics too. */
    AttributedStyle faint() {
        return pair(grey, paper).italic();
    }

    AttributedStyle caution() {
        return pair(WHITE, DARK_RED).bold();
    }

    /** Something to touch. */
    AttributedStyle target() {
        return pair(WHITE, DARK_BLUE).bold();
    }

    /** The other way round. */
    AttributedStyle inverse() {
        return pair(paper, ink).bold();
    }

    private static AttributedStyle pair(int foreground, int background) {
        return AttributedStyle.DEFAULT.foreground(foreground).background(background);
    }
}
