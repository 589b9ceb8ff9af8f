package readback.assistant.report;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import readback.assistant.replay.Visible;

/**
 * HTML or SVG while it is being written: elements are balanced, and every text and attribute value is made inert. The
 * one place where text becomes markup. One thread.
 */
final class Markup {

    /** Longer texts are cut in the page; the record has them whole. */
    static final int LONGEST_TEXT = 2000;

    private static final Set<String> VOID = Set.of("meta", "br", "hr", "link");

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; attributes come as name, value, name, value. */
    Markup open(String tag, String... attributes) {
        if (VOID.contains(tag)) {
            tag(tag, "/>", attributes);
        } else {
            tag(tag, ">", attributes);
            open.push(tag);
        }
        return this;
    }

    /** Closes the element opened last. */
    Markup close() {
        out.append("</").append(open.pop()).append(">");
        return this;
    }

    /** Closes the element opened last and ends the line. */
    Markup closeLine() {
        close();
        out.append('\n');
        return this;
    }

    /** An element with text. */
    Markup element(String tag, String text, String... attributes) {
        tag(tag, ">", attributes);
        text(text);
        out.append("</").append(tag).append(">");
        return this;
    }

    /** An element without content, as SVG has them. */
    Markup shape(String tag, String... attributes) {
        tag(tag, "/>\n", attributes);
        return this;
    }

    /** Text, inert. */
    Markup text(String text) {
        out.append(inert(text));
        return this;
    }

    /** A style sheet of our own: no text of a session ever comes here. */
    Markup style(String css) {
        out.append("<style>\n").append(css).append("</style>\n");
        return this;
    }

    /** Markup made elsewhere by this class. */
    Markup add(Markup other) {
        out.append(other.finished());
        return this;
    }

    /** Everything written; all elements must be closed. */
    String finished() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("left open: " + open);
        }
        return out.toString();
    }

    private void tag(String tag, String end, String... attributes) {
        if (attributes.length % 2 != 0) {
            throw new IllegalArgumentException("an attribute of " + tag + " has no value");
        }
        out.append('<').append(tag);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(inert(attributes[i + 1]))
                    .append('"');
        }
        out.append(end);
    }

    /** The text with nothing in it that a browser would act on. */
    static String inert(String text) {
        String visible = Visible.text(shortened(text));
        StringBuilder inert = new StringBuilder(visible.length() + 16);
        for (int i = 0; i < visible.length(); i++) {
            char c = visible.charAt(i);
            switch (c) {
                case '&' -> inert.append("&amp;");
                case '<' -> inert.append("&lt;");
                case '>' -> inert.append("&gt;");
                case '"' -> inert.append("&quot;");
                case '\'' -> inert.append("&#39;");
                default -> inert.append(c);
            }
        }
        return inert.toString();
    }

    private static String shortened(String text) {
        if (text.length() <= LONGEST_TEXT) {
            return text;
        }
        int end = Character.isHighSurrogate(text.charAt(LONGEST_TEXT - 1)) ? LONGEST_TEXT - 1 : LONGEST_TEXT;
        return text.substring(0, end) + " ... (cut; the record holds all " + text.length() + " characters)";
    }
}
