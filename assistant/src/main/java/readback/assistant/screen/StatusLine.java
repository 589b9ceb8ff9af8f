package readback.assistant.screen;

/** The last line of the screen in words: microphone, what is waited for, voice. */
final class StatusLine {

    private final ScreenTexts texts;
    private final boolean unicode;

    StatusLine(ScreenTexts texts, boolean unicode) {
        this.texts = texts;
        this.unicode = unicode;
    }

    String of(View view) {
        View.Status status = view.status();
        StringBuilder line = new StringBuilder();
        line.append(texts.of(
                status.works() ? (status.listening() ? "status.listening" : "status.waiting") : "status.lost"));
        if (status.works()) {
            line.append(' ').append(meter(status.level()));
        }
        view.timers().forEach(timer -> line.append("  ").append(timer));
        line.append("  ").append(status.voice());
        line.append("  ").append(status.microphone());
        if (status.overruns() > 0) {
            line.append("  ").append(texts.of("status.overruns", status.overruns()));
        }
        return line.toString();
    }

    private String meter(int level) {
        String full = unicode ? "■" : "#";
        String empty = unicode ? "□" : ".";
        return full.repeat(level) + empty.repeat(View.Status.LEVELS - level);
    }
}
