package readback.assistant.replay;

/** Text of unknown origin made safe to look at. */
public final class Visible {

    private static final int FIRST_PRINTABLE = 0x20;
    private static final int DELETE = 0x7f;
    private static final int CONTROL_PICTURES = 0x2400;

    /** Stands for a character that cannot be shown. */
    private static final char MARK = '\ufffd';

    private Visible() {}

    /**
     * The text with every character visible that could move a cursor, change a direction of writing or break an
     * encoding: control characters become their pictures, others their code point in brackets.
     */
    public static String text(String text) {
        StringBuilder visible = new StringBuilder(text.length());
        text.codePoints().forEach(point -> append(visible, point));
        return visible.toString();
    }

    /** The text of several lines, its line ends and tabs kept. */
    public static String lines(String text) {
        StringBuilder visible = new StringBuilder(text.length());
        text.codePoints().forEach(point -> {
            if (point == '\n' || point == '\t') {
                visible.appendCodePoint(point);
            } else {
                append(visible, point);
            }
        });
        return visible.toString();
    }

    /** The character, or a mark in its place where it would not stay in its cell of a screen. */
    public static char cell(char c) {
        return moves(c) && !Character.isSurrogate(c) ? MARK : c;
    }

    private static boolean moves(int point) {
        int type = Character.getType(point);
        return point < FIRST_PRINTABLE
                || point == DELETE
                || type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.PRIVATE_USE
                || type == Character.UNASSIGNED
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
    }

    private static void append(StringBuilder visible, int point) {
        if (point < FIRST_PRINTABLE) {
            visible.appendCodePoint(CONTROL_PICTURES + point);
        } else if (moves(point)) {
            visible.append("[U+").append(Integer.toHexString(point)).append(']');
        } else {
            visible.appendCodePoint(point);
        }
    }
}
