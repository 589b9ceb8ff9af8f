package readback.assistant.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import readback.assistant.dialogue.Event;
import readback.assistant.ear.AudioFileFeed;
import readback.assistant.ear.Ear;
import readback.assistant.measure.Noise;
import readback.assistant.sound.Samples;
import readback.assistant.voice.VoiceFailedException;
import readback.grammar.Expectation;
import readback.grammar.Grammar;

/** Speaks the technician's words, puts noise beside them and lets the ear hear them. Owned by one thread. */
public final class SpokenWords implements Speech {

    /** Quiet before and after the words, seconds; the later one lets the end be found. */
    private static final double BEFORE = 0.4;

    private static final double AFTER = 1.2;

    /** What stays below this share of the loudest sample is quiet. */
    private static final double QUIET = 0.02;

    /** Kept of the quiet on both sides, for the soft sounds there: 50 ms. */
    private static final int SOFT_EDGE = Ear.RATE / 20;

    private final Grammar grammar;
    private final List<Caller> callers;
    private final Ear ear;
    private final OptionalDouble signalToNoise;
    private RandomGenerator chance = new SplittableRandom(0);
    private Caller caller;

    /**
     * @param callers at least one; each call is made by one of them
     * @param signalToNoise of a fan beside the words, decibels; empty for quiet
     */
    public SpokenWords(Grammar grammar, List<Caller> callers, Ear ear, OptionalDouble signalToNoise) {
        this.grammar = grammar;
        this.callers = List.copyOf(callers);
        this.caller = this.callers.get(0);
        this.ear = ear;
        this.signalToNoise = signalToNoise;
    }

    /** Begins a call: the same start gives the same caller of these, ways of speaking and noise. */
    Caller begin(long start) {
        chance = new SplittableRandom(start);
        caller = callers.get(chance.nextInt(callers.size()));
        return caller;
    }

    @Override
    public Event.Source source() {
        return Event.Source.VOICE;
    }

    @Override
    public boolean calledOut() {
        return true;
    }

    @Override
    public Spoken say(String words, Expectation expectation, Listener listener) {
        Callout.Line line = new Callout(grammar, chance).of(words, expectation, grammar.vocabulary(expectation));
        return say(line, expectation, listener);
    }

    @Override
    public Optional<Spoken> aside(Expectation expectation, Runnable begins, Listener listener) {
        Optional<Callout.Line> talk = new Callout(grammar, chance).smallTalk();
        talk.ifPresent(line -> begins.run());
        return talk.map(line -> say(line, expectation, listener));
    }

    private Spoken say(Callout.Line line, Expectation expectation, Listener listener) {
        Samples sound = sound(line);
        Samples noisy = signalToNoise.isPresent()
                ? Noise.FAN.mixed(sound, signalToNoise.getAsDouble(), chance.nextLong())
                : sound;
        AudioFileFeed feed = new AudioFileFeed(ear, noisy);
        Optional<Expectation> expected = Optional.of(expectation);
        while (expected.isPresent() && !feed.ended()) {
            expected = feed.next(grammar.vocabulary(expected.get()))
                    .flatMap(utterance -> listener.hears(utterance.alternatives()));
        }
        return new Spoken(line.words(), line.slips());
    }

    private Samples sound(Callout.Line line) {
        List<Samples> parts = new ArrayList<>(List.of(Samples.silence(BEFORE, Ear.RATE)));
        for (Breath breath : line.breaths()) {
            parts.add(said(breath.words()));
            parts.add(Samples.silence(breath.pause(), Ear.RATE));
        }
        parts.add(Samples.silence(AFTER, Ear.RATE));
        return Samples.joined(parts, Ear.RATE);
    }

    /** Without the quiet that a voice puts around its words, so that a pause is as long as it was drawn. */
    private Samples said(String aloud) {
        try {
            return withoutQuiet(caller.voice().speak(aloud).at(Ear.RATE).pcm());
        } catch (VoiceFailedException e) {
            throw new VoiceSilentException(e);
        }
    }

    private static Samples withoutQuiet(short[] pcm) {
        double loudest = 0;
        for (short sample : pcm) {
            loudest = Math.max(loudest, Math.abs((double) sample));
        }
        int first = 0;
        while (first < pcm.length && Math.abs((double) pcm[first]) <= QUIET * loudest) {
            first++;
        }
        int last = pcm.length - 1;
        while (last > first && Math.abs((double) pcm[last]) <= QUIET * loudest) {
            last--;
        }
        int from = Math.max(0, first - SOFT_EDGE);
        return Samples.of(Samples.of(pcm, Ear.RATE).slice(from, Math.min(pcm.length, last + SOFT_EDGE)), Ear.RATE);
    }

    /** The voice failed; a measurement without it is none. */
    public static final class VoiceSilentException extends RuntimeException {
        private static final long serialVersionUID = 1;

        VoiceSilentException(VoiceFailedException cause) {
            super(cause.getMessage(), cause);
        }
    }
}
