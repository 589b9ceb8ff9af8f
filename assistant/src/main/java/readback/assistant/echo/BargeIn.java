package readback.assistant.echo;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Listening;
import readback.assistant.microphone.LevelMeter;

/**
 * Listens for a few orders while Readback itself speaks, in what is left when its own voice is taken out. Belongs to
 * the thread of the ear.
 */
public final class BargeIn implements AutoCloseable {

    /** An order that is seen for so long is not taken back by the recogniser any more; decision 0019. */
    private static final double SEEN_SECONDS = 0.1;

    /** Sound of less than this is a click. */
    private static final double SPEECH_SECONDS = 0.06;

    private final Ear ear;
    private final EchoFilter filter;
    private final List<String> orders;
    private final Predicate<String> ownWords;
    private final LevelMeter level;
    private final EchoReturn echoReturn = new EchoReturn();
    private @Nullable Listening listening;
    private String order = "";
    private double seenSeconds;
    private double openSeconds;

    /**
     * @param orders what is listened for, with unknown speech among it
     * @param ownWords whether Readback is saying these words itself at the moment
     * @param gate level in decibels of full scale below which nothing is speech
     */
    public BargeIn(Ear ear, EchoCanceller canceller, List<String> orders, Predicate<String> ownWords, double gate) {
        this.ear = ear;
        this.filter = new EchoFilter(canceller);
        this.orders = List.copyOf(orders);
        this.ownWords = ownWords;
        this.level = new LevelMeter(Ear.RATE, gate);
    }

    /**
     * What was heard without Readback's own voice; up to 10 ms of it come with the next call.
     *
     * @param heard from the microphone
     * @param played at the same time to the loudspeaker, as much
     */
    public short[] clean(short[] heard, short[] played) {
        short[] clean = filter.clean(heard, played);
        level.hear(clean);
        echoReturn.hear(played, heard, clean, level.open());
        return clean;
    }

    /** The order that is being said in this cleaned sound, once it is certain enough. */
    public Optional<String> order(short[] clean) {
        Listening now = listening;
        if (now == null) {
            now = ear.listen(orders);
            listening = now;
        }
        openSeconds = Math.max(openSeconds, level.openSeconds());
        String words = now.hear(clean)
                .map(utterance -> utterance.words())
                .orElse(now.partial())
                .replace(Ear.UNKNOWN, "")
                .strip();
        seenSeconds = words.equals(order) ? seenSeconds + (double) clean.length / Ear.RATE : 0;
        order = words;
        boolean certain = !words.isEmpty() && seenSeconds >= SEEN_SECONDS && openSeconds >= SPEECH_SECONDS;
        return certain && orders.contains(words) && !ownWords.test(words) ? Optional.of(words) : Optional.empty();
    }

    /** Whether someone speaks, by the level of the cleaned sound. */
    public boolean open() {
        return level.openSeconds() >= SPEECH_SECONDS;
    }

    /** Whether nothing was made out so far. */
    public boolean silent() {
        return order.isEmpty();
    }

    /** Whether so much of the own voice is left that it would be taken for someone's. */
    public boolean hopeless() {
        return echoReturn.hopeless();
    }

    /** Forgets what was said so far. */
    public void forget() {
        if (listening != null) {
            listening.close();
            listening = null;
        }
        order = "";
        seenSeconds = 0;
        openSeconds = 0;
    }

    @Override
    public void close() {
        forget();
        filter.close();
    }
}
