package readback.assistant.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Listening;
import readback.assistant.ear.Utterance;
import readback.assistant.sound.Samples;
import readback.grammar.Vocabulary;

/**
 * How long after the last word the utterance is given: the sound that the ear waits for, which is the same on every
 * machine, and the work on the piece of sound that ended it. After the clip comes a second of faint hiss, as silence is
 * in a microphone. Owned by one thread.
 */
final class Latency {

    private static final int PIECE = Ear.RATE / 20;
    private static final double AFTERWARDS_SECONDS = 1.5;
    private static final int HISS = 12;

    private final List<Double> milliseconds = new ArrayList<>();
    private int never;

    void measure(Ear ear, Samples sound, Vocabulary vocabulary) {
        Samples heard = Samples.joined(List.of(sound, hiss()), Ear.RATE);
        Optional<Double> last = Optional.empty();
        try (Listening listening = ear.listen(vocabulary)) {
            for (int at = 0; at < heard.length(); at += PIECE) {
                long start = System.nanoTime();
                Optional<Utterance> utterance = listening.hear(heard.slice(at, at + PIECE));
                double work = (System.nanoTime() - start) * 1e-9;
                if (utterance.isPresent() && !utterance.get().onlyUnknown()) {
                    last = Optional.of(
                            1000 * (listening.seconds() - utterance.get().endSeconds() + work));
                }
            }
        }
        last.ifPresentOrElse(milliseconds::add, () -> never++);
    }

    private static Samples hiss() {
        SplittableRandom random = new SplittableRandom(1);
        short[] pcm = new short[(int) (AFTERWARDS_SECONDS * Ear.RATE)];
        for (int i = 0; i < pcm.length; i++) {
            pcm[i] = (short) random.nextInt(-HISS, HISS + 1);
        }
        return Samples.of(pcm, Ear.RATE);
    }

    String line() {
        if (milliseconds.isEmpty()) {
            return "latency: no utterance was heard";
        }
        Collections.sort(milliseconds);
        return String.format(
                Locale.ROOT,
                "latency from the end of the last word, clean: median %.0f ms, 90th percentile %.0f ms, most %.0f ms"
                        + " (%d utterances, %d more not heard)",
                quantile(0.5),
                quantile(0.9),
                quantile(1),
                milliseconds.size(),
                never);
    }

    private double quantile(double share) {
        return milliseconds.get((int) Math.min(milliseconds.size() - 1, Math.floor(share * milliseconds.size())));
    }
}
