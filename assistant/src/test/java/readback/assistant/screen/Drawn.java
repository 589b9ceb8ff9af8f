package readback.assistant.screen;

import java.util.List;
import org.jline.utils.AttributedString;
import readback.prompts.text.Language;

/** Views as the lines of a screen, for tests elsewhere. */
public final class Drawn {

    private Drawn() {}

    /** The lines of a view at a size. */
    public static List<String> lines(Language language, View view, int columns, int rows) {
        ScreenTexts texts = new ScreenTexts(language);
        Frame frame = new Layout(Palette.DAY, texts, true).frame(view, new Typing(texts), columns, rows);
        return frame.lines().stream().map(AttributedString::toString).toList();
    }
}
