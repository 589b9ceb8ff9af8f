package readback.assistant.screen;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import readback.assistant.session.PlainLines;

/**
 * The conversation in plain lines as it goes, for pipes, logs and screen readers: words of both sides, when Readback
 * begins to listen, and trouble with the sound. One thread.
 */
public final class PlainFace implements Face {

    private final PlainLines lines;
    private final ScreenTexts texts;
    private @Nullable View shown;

    public PlainFace(PlainLines lines, ScreenTexts texts) {
        this.lines = lines;
        this.texts = texts;
    }

    @Override
    public void show(View view) {
        View before = shown;
        shown = view;
        if (!view.hint().isEmpty() && (before == null || !view.hint().equals(before.hint()))) {
            lines.aside("screen.plain.note", view.hint());
        }
        if (view.status().overruns() > (before == null ? 0 : before.status().overruns())) {
            lines.aside(
                    "screen.plain.note",
                    texts.of("status.overruns.plain", view.status().overruns()));
        }
        boolean listened = before != null && before.status().listening();
        if (view.status().listening() && !listened) {
            lines.aside("screen.plain.listening", view.status().microphone());
        }
    }

    @Override
    public Optional<Action> on(Stroke stroke) {
        return stroke instanceof Stroke.Pressed pressed && pressed.key() == Stroke.Key.INTERRUPT
                ? Optional.of(new Action.Leave())
                : Optional.empty();
    }

    @Override
    public void renew() {
        shown = null;
    }

    @Override
    public void close() {
        lines.end();
    }
}
