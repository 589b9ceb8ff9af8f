package readback.assistant.session;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines between words. */
public final class Wrapped {

    private Wrapped() {}

    /** The lines of a text, none longer than the width; a word that is longer itself is cut. */
    public static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            String rest = word;
            if (!line.isEmpty() && line.length() + 1 + rest.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (rest.length() > width) {
                lines.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    /** The lines of several texts. */
    public static List<String> lines(List<String> texts, int width) {
        return texts.stream().flatMap(text -> lines(text, width).stream()).toList();
    }
}
