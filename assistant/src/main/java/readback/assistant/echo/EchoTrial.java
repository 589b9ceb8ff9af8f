package readback.assistant.echo;

import readback.assistant.ear.Ear;
import readback.assistant.microphone.LevelMeter;

/**
 * Tries, before any work, whether orders could be heard while Readback speaks: it listens to the own voice with the
 * same canceller and by the same rule as a session does ({@link EchoReturn}). Where that would not give up yet, because
 * the voice comes back in pieces, orders are not proposed either when little of all of it was taken away. One thread.
 */
public final class EchoTrial implements AutoCloseable {

    /** So many seconds of voice bring the rule to its judgement. */
    private static final double ENOUGH_SECONDS = 12;

    /** A loudspeaker that lifts what is heard by less than this is not heard, in decibels. */
    private static final double LEAST_HEARD = 3;

    /** What came of it. */
    public enum Outcome {
        /** The microphone does not hear the loudspeaker, as with a headset. */
        NOT_HEARD,
        /** It does, and the voice can be taken out. */
        TAKEN_OUT,
        /** Too much of the voice is left. */
        TOO_STRONG
    }

    /**
     * What came of it, with figures.
     *
     * @param above how far the loudspeaker stands out of the noise at the microphone, in decibels
     * @param reduction how much of it was taken away once the canceller had time to adapt, in decibels
     */
    public record Result(Outcome outcome, double above, double reduction) {}

    private final EchoFilter filter;
    private final LevelMeter level;
    private final EchoReturn echoReturn = new EchoReturn();
    private final Mean quiet = new Mean();
    private final Mean heardThen = new Mean();
    private final Mean heardAdapted = new Mean();
    private final Mean leftAdapted = new Mean();

    /** @param gate level in decibels of full scale below which nothing is speech */
    public EchoTrial(EchoCanceller canceller, double gate) {
        this.filter = new EchoFilter(canceller);
        this.level = new LevelMeter(Ear.RATE, gate);
    }

    /**
     * Takes the next sound.
     *
     * @param heard from the microphone
     * @param played at the same time to the loudspeaker, as much; zeros where nothing was played
     */
    public void hear(short[] heard, short[] played) {
        short[] clean = filter.clean(heard, played);
        level.hear(clean);
        echoReturn.hear(played, heard, clean, level.open());
        if (EchoReturn.loud(played)) {
            heardThen.add(heard);
            if (heardThen.samples > EchoReturn.ADAPTING * Ear.RATE) {
                heardAdapted.add(heard);
                leftAdapted.add(clean);
            }
        } else if (heardThen.nothing()) {
            quiet.add(heard);
        }
    }

    /** Whether something is said in what was played. */
    public static boolean speaks(short[] played) {
        return EchoReturn.loud(played);
    }

    /** Whether there was as much voice as the rule needs, the pauses between the words left out. */
    public boolean enough() {
        return heardThen.samples >= ENOUGH_SECONDS * Ear.RATE;
    }

    /** What came of it so far. */
    public Result result() {
        double above = heardThen.decibels() - quiet.decibels();
        double reduction = heardAdapted.decibels() - leftAdapted.decibels();
        boolean much = reduction < EchoReturn.LEAST_REDUCTION && above - reduction > LevelMeter.GATE_ABOVE_NOISE;
        Outcome outcome = above < LEAST_HEARD
                ? Outcome.NOT_HEARD
                : echoReturn.hopeless() || much ? Outcome.TOO_STRONG : Outcome.TAKEN_OUT;
        return new Result(outcome, above, reduction);
    }

    @Override
    public void close() {
        filter.close();
    }

    /** The mean power of sound. */
    private static final class Mean {
        private double sum;
        private long samples;

        void add(short[] sound) {
            sum += EchoReturn.power(sound);
            samples += sound.length;
        }

        boolean nothing() {
            return samples == 0;
        }

        /** In decibels of full scale, {@link LevelMeter#SILENCE} at least. */
        double decibels() {
            return samples == 0 || sum == 0
                    ? LevelMeter.SILENCE
                    : Math.max(LevelMeter.SILENCE, 10 * Math.log10(sum / samples / Math.pow(Short.MAX_VALUE, 2)));
        }
    }
}
