package readback.assistant.replay;

/** Text of unknown origin made safe to look at. */
public final class Visible {

    private static final int FIRST_PRINTABLE = 0x20;
    private static final int DELETE = 0x7f;
    private static final int CONTROL_PICTURES = 0x2400;

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

    private static void append(StringBuilder visible, int point) {
        int type = Character.getType(point);
        if (point < FIRST_PRINTABLE) {
            visible.appendCodePoint(CONTROL_PICTURES + point);
        } else if (point == DELETE
                || type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.SURROGATE
                || type == Character.PRIVATE_USE
                || type == Character.UNASSIGNED
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR) {
            visible.append("[U+").append(Integer.toHexString(point)).append(']');
        } else {
            visible.appendCodePoint(point);
        }
    }
}
