package readback.assistant.voice;

import java.util.ArrayList;
import java.util.List;
import readback.assistant.sound.Samples;

/** A voice whose sounds are as long as its texts, and that remembers what it was asked. */
final class CountingVoice implements Voice {
    final List<String> asked = new ArrayList<>();
    boolean closed;

    @Override
    public String name() {
        return "counting";
    }

    @Override
    public Samples speak(String text) {
        asked.add(text);
        return Samples.silence(text.length() / 10.0, 16000);
    }

    @Override
    public void close() {
        closed = true;
    }
}
