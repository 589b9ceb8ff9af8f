package readback.assistant.echo;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Listening;
import readback.assistant.microphone.LevelMeter;
import readback.grammar.Vocabulary;

/**
 * Listens for a few orders while Readback itself speaks, in what is left when its own voice is taken out. Belongs to
 * the thread of the ear.
 */
public final class BargeIn implements AutoCloseable {

    /** Where orders are seen for so long, they are not taken back by the recogniser any more; decision 0019. */
    private static final double SEEN_SECONDS = 0.1;

    /** Sound of less than this is a click. */
    private static final double SPEECH_SECONDS = 0.06;

    private final Ear ear;
    private final EchoFilter filter;
    private final Vocabulary phrases;
    /** Words with which an order begins or that are one, with a space before them, to the order; the longest first. */
    private final Map<String, String> beginnings;

    private final Predicate<String> ownWords;
    private final LevelMeter level;
    private final EchoReturn echoReturn = new EchoReturn();
    private @Nullable Listening listening;
    private boolean silent = true;
    private double seenSeconds;
    private double openSeconds;

    /**
     * @param phrases what is listened for: orders, as often as they count, with unknown speech among them
     * @param ownWords whether Readback is saying these words itself at the moment
     * @param gate level in decibels of full scale below which nothing is speech
     */
    public BargeIn(Ear ear, EchoCanceller canceller, List<String> phrases, Predicate<String> ownWords, double gate) {
        this.ear = ear.keenest();
        this.filter = new EchoFilter(canceller);
        this.phrases = Vocabulary.ofPhrases(phrases);
        this.beginnings = beginnings(phrases);
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

    /**
     * The order that is being said in this cleaned sound, once it is certain enough that one is. Which one it is, the
     * recogniser may still change its mind about.
     */
    public Optional<String> order(short[] clean) {
        Listening now = listening;
        if (now == null) {
            now = ear.listen(phrases);
            listening = now;
        }
        openSeconds = Math.max(openSeconds, level.openSeconds());
        String words = now.hear(clean)
                .map(utterance -> utterance.words())
                .orElse(now.partial())
                .replace(Ear.UNKNOWN, "")
                .strip();
        silent = words.isEmpty();
        Optional<String> begun = beginning(words);
        seenSeconds = begun.isPresent() ? seenSeconds + (double) clean.length / Ear.RATE : 0;
        boolean certain = seenSeconds > SEEN_SECONDS && openSeconds >= SPEECH_SECONDS;
        return begun.filter(said -> certain && !ownWords.test(said.strip())).map(beginnings::get);
    }

    /** That with which these words end. */
    private Optional<String> beginning(String words) {
        String said = " " + words;
        return beginnings.keySet().stream().filter(said::endsWith).findFirst();
    }

    private static Map<String, String> beginnings(List<String> phrases) {
        Map<String, String> orders = new TreeMap<>(
                Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()));
        for (String phrase : phrases) {
            String begun = phrase.contains(Ear.UNKNOWN) ? "" : " " + phrase;
            while (!begun.isEmpty()) {
                orders.putIfAbsent(begun, phrase);
                begun = begun.substring(0, begun.lastIndexOf(' '));
            }
        }
        return orders;
    }

    /** Whether someone speaks, by the level of the cleaned sound. */
    public boolean open() {
        return level.openSeconds() >= SPEECH_SECONDS;
    }

    /** Whether nothing was made out so far. */
    public boolean silent() {
        return silent;
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
        silent = true;
        seenSeconds = 0;
        openSeconds = 0;
    }

    @Override
    public void close() {
        forget();
        filter.close();
    }
}
