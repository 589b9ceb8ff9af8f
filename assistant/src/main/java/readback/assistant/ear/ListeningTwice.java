package readback.assistant.ear;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import readback.grammar.Doubt;
import readback.grammar.Hypothesis;

/** A listening that keeps the sound of the open utterance, and lets it be heard once more where doubt is left. */
final class ListeningTwice implements Listening {

    /** So much before the first word shows: words are told late, and a recogniser needs to hear how quiet it was. */
    private static final int LEAD_IN = Ear.RATE;
    /** Nobody calls out a value for longer; of talk that goes on, the end is heard again. */
    private static final int LONGEST = 20 * Ear.RATE;

    private final Listening first;
    private final Supplier<Listening> again;
    private final Doubt doubt;
    private short[] sound = new short[2 * LEAD_IN];
    private int kept;

    /** @param again makes what hears the sound once more, with the same phrases */
    ListeningTwice(Listening first, Supplier<Listening> again, Doubt doubt) {
        this.first = first;
        this.again = again;
        this.doubt = doubt;
    }

    @Override
    public Optional<Utterance> hear(short[] chunk, short[] recorded) {
        keep(chunk);
        Optional<Utterance> heard = first.hear(chunk, recorded).map(this::considered);
        if (heard.isPresent()) {
            kept = 0;
        } else if (first.partial().isEmpty()) {
            keepLast(LEAD_IN);
        }
        return heard;
    }

    @Override
    public Optional<Utterance> finish() {
        Optional<Utterance> heard = first.finish().map(this::considered);
        kept = 0;
        return heard;
    }

    private Utterance considered(Utterance heard) {
        if (!doubt.left(heard.alternatives())) {
            return heard;
        }
        double began = first.seconds() - (double) kept / Ear.RATE;
        try (Listening listening = again.get()) {
            short[] all = Arrays.copyOf(sound, kept);
            List<Hypothesis> heardAgain = listening
                    .hear(all)
                    .or(listening::finish)
                    .map(utterance -> utterance.later(began).alternatives())
                    .orElse(List.of());
            return SecondOpinion.weighed(heard, heardAgain);
        }
    }

    private void keep(short[] chunk) {
        keepLast(Math.max(0, LONGEST - chunk.length));
        if (kept + chunk.length > sound.length) {
            sound = Arrays.copyOf(sound, 2 * (kept + chunk.length));
        }
        System.arraycopy(chunk, 0, sound, kept, chunk.length);
        kept += chunk.length;
    }

    private void keepLast(int samples) {
        if (kept > samples) {
            System.arraycopy(sound, kept - samples, sound, 0, samples);
            kept = samples;
        }
    }

    @Override
    public String partial() {
        return first.partial();
    }

    @Override
    public double seconds() {
        return first.seconds();
    }

    @Override
    public void close() {
        first.close();
    }
}
