package readback.assistant.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.assistant.screen.Action;
import readback.assistant.screen.Face;
import readback.assistant.screen.Stroke;
import readback.assistant.screen.View;
import readback.assistant.session.PlainLines;
import readback.prompts.text.Language;

/** The questions in plain lines, where there is no screen. One thread. */
public final class SetupLines implements Face {

    private final PlainLines lines;
    private final Language language;
    private List<String> shown = List.of();

    public SetupLines(PlainLines lines, Language language) {
        this.lines = lines;
        this.language = language;
    }

    @Override
    public void show(View view) {
        List<String> said = new ArrayList<>(view.answers());
        said.add(view.question());
        List<String> labels = view.options().stream().map(View.Option::label).toList();
        if (!labels.isEmpty()) {
            said.add(language.label("setup.plain", String.join("; ", labels)));
        }
        if (!said.equals(shown)) {
            shown = said;
            said.forEach(each -> lines.line("screen.plain.readback", each));
            lines.prompt();
        }
    }

    @Override
    public Optional<Action> on(Stroke stroke) {
        return Optional.empty();
    }

    /** A line was typed: what comes of it is told even if it is what stands there already. */
    @Override
    public void renew() {
        shown = List.of();
    }

    @Override
    public void close() {
        lines.end();
    }
}
