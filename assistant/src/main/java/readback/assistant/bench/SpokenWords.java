package readback.assistant.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import readback.assistant.dialogue.Event;
import readback.assistant.ear.AudioFileFeed;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Utterance;
import readback.assistant.measure.Noise;
import readback.assistant.sound.Samples;
import readback.assistant.voice.Voice;
import readback.assistant.voice.VoiceFailedException;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.grammar.Meaning;
import readback.grammar.Vocabulary;
import readback.grammar.number.NumberStyle;

/** Speaks the technician's words, puts noise beside them and lets the ear hear them. Owned by one thread. */
public final class SpokenWords implements Speech {

    /** Quiet before and after the words, seconds; the later one lets the end be found. */
    private static final double BEFORE = 0.4;

    private static final double AFTER = 1.2;

    /** What is written otherwise than it is called out. */
    private static final Set<String> NAMED = Set.of("refrigerant", "metering-device");

    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

    private final Grammar grammar;
    private final Voice voice;
    private final Ear ear;
    private final OptionalDouble signalToNoise;
    private RandomGenerator chance = new SplittableRandom(0);

    /** @param signalToNoise of a fan beside the words, decibels; empty for quiet */
    public SpokenWords(Grammar grammar, Voice voice, Ear ear, OptionalDouble signalToNoise) {
        this.grammar = grammar;
        this.voice = voice;
        this.ear = ear;
        this.signalToNoise = signalToNoise;
    }

    /** Begins a call: the same start gives the same ways of speaking and the same noise. */
    void begin(long start) {
        chance = new SplittableRandom(start);
    }

    @Override
    public Event.Source source() {
        return Event.Source.VOICE;
    }

    @Override
    public List<List<Hypothesis>> heard(String words, Expectation expectation) {
        Vocabulary vocabulary = grammar.vocabulary(expectation);
        Samples sound = Samples.joined(
                List.of(
                        Samples.silence(BEFORE, Ear.RATE),
                        said(aloud(words, expectation, vocabulary)),
                        Samples.silence(AFTER, Ear.RATE)),
                Ear.RATE);
        Samples noisy = signalToNoise.isPresent()
                ? Noise.FAN.mixed(sound, signalToNoise.getAsDouble(), chance.nextLong())
                : sound;
        AudioFileFeed feed = new AudioFileFeed(ear, noisy);
        List<List<Hypothesis>> heard = new ArrayList<>();
        Optional<Utterance> next = feed.next(vocabulary);
        while (next.isPresent()) {
            heard.add(next.get().alternatives());
            next = feed.ended() ? Optional.empty() : feed.next(vocabulary);
        }
        return heard;
    }

    private Samples said(String aloud) {
        try {
            return voice.speak(aloud).at(Ear.RATE);
        } catch (VoiceFailedException e) {
            throw new VoiceSilentException(e);
        }
    }

    /** The words as they are called out: options by one of their names, numbers digit by digit or as they are read. */
    private String aloud(String words, Expectation expectation, Vocabulary vocabulary) {
        Meaning meaning = grammar.understand(words, expectation).get(0).meaning();
        if (meaning instanceof Meaning.Choice choice && NAMED.contains(choice.choice())) {
            String before = words.startsWith(Technician.CHANGE) ? Technician.CHANGE : "";
            return before + name(choice, vocabulary);
        }
        boolean digits = chance.nextBoolean();
        Matcher number = NUMBER.matcher(words);
        return number.replaceAll(found -> inWords(new BigDecimal(found.group()), digits));
    }

    /** One of the two usual names that are listened for. */
    private String name(Meaning.Choice choice, Vocabulary vocabulary) {
        Set<String> listened = vocabulary.phrases().stream()
                .flatMap(phrase -> Stream.of(phrase.split(" ", -1)))
                .collect(Collectors.toSet());
        List<String> names = grammar.choices().phrases(choice.choice(), choice.option()).stream()
                .filter(name -> listened.containsAll(List.of(name.split(" ", -1))))
                .limit(2)
                .toList();
        return names.isEmpty()
                ? grammar.choices().phrases(choice.choice(), choice.option()).get(0)
                : names.get(chance.nextInt(names.size()));
    }

    /** Digit by digit, or "sixty six", "one eighteen", "three oh five", "three hundred". */
    private static String inWords(BigDecimal number, boolean digits) {
        NumberStyle style = digits ? NumberStyle.DIGITS : NumberStyle.GROUPED;
        return style.say(number)
                .or(() -> NumberStyle.CARDINAL.say(number))
                .orElseThrow(() -> new IllegalArgumentException("No technician reads " + number + " aloud."));
    }

    /** The voice failed; a measurement without it is none. */
    public static final class VoiceSilentException extends RuntimeException {
        private static final long serialVersionUID = 1;

        VoiceSilentException(VoiceFailedException cause) {
            super(cause.getMessage(), cause);
        }
    }
}
