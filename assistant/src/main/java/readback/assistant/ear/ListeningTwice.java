package readback.assistant.ear;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import readback.grammar.Hypothesis;
import readback.grammar.Vocabulary;

/**
 * A listening that keeps the sound of the open utterance, and lets it be heard once more where doubt is left. Where
 * that shows that only a beginning was said, the utterance is not over: what follows is heard in one with it.
 */
final class ListeningTwice implements Listening {

    /** So much before the first word shows: words are told late, and the first of them may have been missed. */
    private static final int LEAD_IN = 2 * Ear.RATE;
    /** Of talk that goes on for longer, the end is heard again. */
    private static final int LONGEST = 20 * Ear.RATE;
    /** Nobody calls out a value for longer; what lasts so long is not held back any more. */
    private static final int LONGEST_HELD = 8 * Ear.RATE;

    /**
     * A beginning, for which more is waited.
     *
     * @param first what the first ear made of it
     * @param weighed what both made of it
     * @param until seconds of sound until which more is waited for behind words like these
     */
    private record Held(Utterance first, Utterance weighed, double until) {}

    private final Listening first;
    private final Supplier<Listening> again;
    private final Vocabulary vocabulary;
    private Optional<Held> held = Optional.empty();
    private short[] sound = new short[2 * LEAD_IN];
    private int kept;

    /** @param again makes what hears the sound once more, with the same phrases */
    ListeningTwice(Listening first, Supplier<Listening> again, Vocabulary vocabulary) {
        this.first = first;
        this.again = again;
        this.vocabulary = vocabulary;
    }

    @Override
    public Optional<Utterance> hear(short[] chunk, short[] recorded) {
        keep(chunk);
        Optional<Utterance> piece = first.hear(chunk, recorded);
        if (piece.isPresent() && isSure(piece.get())) {
            return Optional.of(over(piece.get()));
        }
        if (piece.isPresent()) {
            held = Optional.of(heardTwice(piece.get()));
        } else if (!first.partial().isEmpty()) {
            return Optional.empty();
        } else if (held.isEmpty()) {
            keepLast(LEAD_IN);
        }
        return held.filter(before -> !mayGoOn(before)).map(Held::weighed).map(this::over);
    }

    @Override
    public Optional<Utterance> finish() {
        return first.finish()
                .map(piece -> isSure(piece) ? piece : heardTwice(piece).weighed())
                .or(() -> held.map(Held::weighed))
                .map(this::over);
    }

    private Utterance over(Utterance heard) {
        held = Optional.empty();
        kept = 0;
        return heard;
    }

    /** Whether the first ear is sure of what it heard, which follows nothing that is held. */
    private boolean isSure(Utterance piece) {
        return held.isEmpty() && !vocabulary.doubt().left(piece.alternatives());
    }

    private boolean mayGoOn(Held beginning) {
        return kept < LONGEST_HELD && seconds() < beginning.until();
    }

    /** What both make of a piece, with what is held before it. */
    private Held heardTwice(Utterance piece) {
        Utterance heard = held.map(before -> before.first().then(piece)).orElse(piece);
        double began = first.seconds() - (double) kept / Ear.RATE;
        try (Listening listening = again.get()) {
            short[] all = Arrays.copyOf(sound, kept);
            List<Hypothesis> heardAgain = listening
                    .hear(all)
                    .or(listening::finish)
                    .map(utterance -> utterance.later(began).alternatives())
                    .orElse(List.of());
            Utterance weighed = SecondOpinion.weighed(heard, heardAgain);
            double pause = Endpointer.pause(vocabulary.completion().of(weighed.words()));
            return new Held(heard, weighed, weighed.endSeconds() + pause);
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
        String more = first.partial();
        return held.map(before -> (before.weighed().words() + ' ' + more).strip())
                .orElse(more);
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
