package readback.assistant.screen;

import java.io.PrintStream;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The conversation in plain lines as it goes, for pipes, logs and screen readers: words of both sides, when Readback
 * begins to listen, and trouble with the sound. One thread.
 */
public final class PlainFace implements Face {

    private final PrintStream out;
    private final ScreenTexts texts;
    private @Nullable View shown;

    public PlainFace(PrintStream out, ScreenTexts texts) {
        this.out = out;
        this.texts = texts;
    }

    @Override
    public void show(View view) {
        View before = shown;
        shown = view;
        if (!view.hint().isEmpty() && (before == null || !view.hint().equals(before.hint()))) {
            line("plain.note", view.hint());
        }
        if (view.status().overruns() > (before == null ? 0 : before.status().overruns())) {
            line("plain.note", texts.of("status.overruns.plain", view.status().overruns()));
        }
        boolean listened = before != null && before.status().listening();
        if (view.status().listening() && !listened) {
            line("plain.listening", view.status().microphone());
        }
    }

    private void line(String who, String text) {
        out.println(texts.margin(who) + text);
        out.flush();
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
        out.flush();
    }
}
