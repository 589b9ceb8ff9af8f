package readback.assistant.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import readback.assistant.ear.AudioFileFeed;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Utterance;
import readback.assistant.sound.Samples;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Acceptance;
import readback.grammar.Decision;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Meaning;
import readback.grammar.Prior;
import readback.grammar.Vocabulary;

/**
 * Hears clips with the phrase lists that suit them, at several noise levels, and compares with what was said: values as
 * the dialogue hears them where a suction pressure is asked for and with short lists, commands likewise, unrelated
 * speech with every list. Words count as heard when the {@linkplain Acceptance acceptance rule} grants the utterance.
 * One thread, that of the ear.
 */
public final class Measurement {

    /** Clean. */
    public static final double NO_NOISE = Double.POSITIVE_INFINITY;

    /** Eight pounds are 128 ounces: more than the rounding of a conversion, less than the last digit of any reading. */
    private static final double SAME = 1e-6;

    private static final long SEED = 20_261_125;

    private final Ear ear;
    private final Grammar grammar;
    private final Consumer<String> details;
    private final Map<String, Tally> tallies = new TreeMap<>();
    private final Map<String, Integer> confusions = new TreeMap<>();
    private final TradeOff tradeOff = new TradeOff();
    private final Latency latency = new Latency();
    private double audioSeconds;
    private double processorSeconds;

    /** @param details told of each value at each level as a line of {@link Detail#HEADER} */
    public Measurement(Ear ear, Grammar grammar, Consumer<String> details) {
        this.ear = ear;
        this.grammar = grammar;
        this.details = details;
    }

    /** A clip and how to get its sound. */
    public interface Source {
        Optional<Samples> sound(Clip clip);
    }

    /**
     * Measures all clips at all levels.
     *
     * @param levels signal-to-noise ratios in decibels, {@link #NO_NOISE} for the clips as they are
     * @param wanted the phrase lists to hear them with; a clip is heard with those of them that suit it
     * @param progress told after each level
     */
    public void measure(
            List<Clip> clips, List<Double> levels, Set<PhraseList> wanted, Source source, Consumer<String> progress) {
        SortedSet<String> commands = clips.stream()
                .filter(clip -> !clip.unrelated() && !clip.value())
                .map(Clip::words)
                .collect(Collectors.toCollection(TreeSet::new));
        for (double level : levels) {
            for (Clip clip : clips) {
                Optional<Samples> sound = source.sound(clip);
                for (PhraseList list : PhraseList.of(clip)) {
                    if (sound.isPresent() && wanted.contains(list)) {
                        hear(clip, list, sound.get(), level, commands);
                    }
                }
            }
            progress.accept(name(level) + " done");
        }
    }

    /** The values among the clips at their steps, after so many seconds of silence. */
    public List<Said> said(List<Clip> clips, Source source, double lead) {
        List<Said> said = new ArrayList<>();
        for (Clip clip : clips) {
            Expectation expectation = expectation(clip);
            if (clip.value() && PhraseList.of(clip).contains(PhraseList.STEP)) {
                source.sound(clip)
                        .ifPresent(sound -> said.add(new Said(
                                clip.file().getFileName().toString(),
                                clip.words(),
                                Samples.joined(
                                        List.of(Samples.silence(lead, Ear.RATE), sound, Samples.silence(1.5, Ear.RATE)),
                                        Ear.RATE),
                                lead,
                                0,
                                sound.seconds(),
                                expectation,
                                Prior.indifferent(),
                                meaning -> right(meaning, clip, expectation))));
            }
        }
        return said;
    }

    private static Expectation expectation(Clip clip) {
        return clip.step().isEmpty()
                ? Expectation.of(Quantity.SUCTION_PRESSURE, UnitSetting.US)
                : Expectation.of(Quantity.valueOf(clip.step()), UnitSetting.US);
    }

    /** As the tables call a level. */
    static String name(double level) {
        return level == NO_NOISE ? "clean" : String.format(Locale.ROOT, "%.0f dB", level);
    }

    private void hear(Clip clip, PhraseList list, Samples clean, double level, SortedSet<String> commands) {
        Expectation expectation = expectation(clip);
        Vocabulary vocabulary = list.vocabulary(grammar, expectation, commands);
        if (list == PhraseList.STEP
                && !clip.unrelated()
                && !clip.value()
                && !vocabulary.phrases().contains(clip.words())) {
            return;
        }
        Samples sound = level == NO_NOISE ? clean : Noise.FAN.mixed(clean, level, SEED);
        long start = System.nanoTime();
        List<Utterance> utterances = new ArrayList<>();
        AudioFileFeed feed = new AudioFileFeed(ear, sound);
        while (!feed.ended()) {
            feed.next(vocabulary).ifPresent(utterances::add);
        }
        processorSeconds += (System.nanoTime() - start) * 1e-9;
        audioSeconds += sound.seconds();
        Tally tally =
                tallies.computeIfAbsent(clip.kind() + ", " + list.label() + ", " + name(level), key -> new Tally());
        tally.clips++;
        tally.seconds += sound.seconds();
        if (clip.unrelated()) {
            unrelated(tally, list, sound.seconds(), utterances, expectation);
        } else {
            said(tally, clip, list, utterances, expectation, level);
            if (level == NO_NOISE && list == PhraseList.of(clip).get(0)) {
                latency.measure(ear, sound.at(Ear.RATE), vocabulary);
            }
        }
    }

    private void unrelated(
            Tally tally, PhraseList list, double seconds, List<Utterance> utterances, Expectation expectation) {
        tradeOff.listened(list, seconds);
        tradeOff.heardInTalk(list, utterances);
        tally.falseWordsWithoutRule += words(utterances).size();
        tally.falseWords += words(Talk.asInDialogue().lookedAt(utterances)).size();
        Talk talk = Talk.asInDialogue();
        for (Utterance utterance : utterances) {
            Decision decision = decided(talk, utterance, expectation);
            decision.accepted().filter(accept -> !accept.doubtful()).ifPresent(accept -> {
                boolean value = value(accept.meaning());
                tally.falseValues += value ? 1 : 0;
                tally.falseCommands += value ? 0 : 1;
            });
        }
    }

    private Decision decided(Talk talk, Utterance utterance, Expectation expectation) {
        Decision decision =
                grammar.decide(utterance.alternatives(), expectation, Prior.indifferent(), talk.sinceTalk(utterance));
        talk.heard(utterance, !decision.ignored());
        return decision;
    }

    private void said(
            Tally tally,
            Clip clip,
            PhraseList list,
            List<Utterance> utterances,
            Expectation expectation,
            double level) {
        List<String> said = List.of(clip.words().split(" ", -1));
        List<String> heard = words(utterances);
        List<String> accepted = words(Talk.asInDialogue().lookedAt(utterances));
        tradeOff.heardInSpeech(list, utterances);
        tally.words += said.size();
        tally.wordErrors += Tally.distance(said, accepted);
        tally.right += said.equals(accepted) ? 1 : 0;
        tally.rightWithoutRule += said.equals(heard) ? 1 : 0;
        if (said.size() == accepted.size()) {
            for (int i = 0; i < said.size(); i++) {
                if (!said.get(i).equals(accepted.get(i))) {
                    confusions.merge(said.get(i) + " heard as " + accepted.get(i), 1, Integer::sum);
                }
            }
        }
        if (list == PhraseList.STEP) {
            judge(tally, clip, utterances, expectation, level);
        }
    }

    /** How the value or order would have been taken with nobody listening to the read-back. */
    private void judge(Tally tally, Clip clip, List<Utterance> utterances, Expectation expectation, double level) {
        Decision decision = first(utterances, expectation);
        String outcome = decision.fold(outcome(tally, clip, expectation));
        details.accept(Detail.of(clip, name(level), expectation.step(), utterances, outcome, decision));
    }

    /** Counts what was decided and gives it its name. */
    private Decision.Cases<String> outcome(Tally tally, Clip clip, Expectation expectation) {
        return new Decision.Cases<>() {
            @Override
            public String accept(Decision.Accept accept) {
                if (clip.value() && !value(accept.meaning())) {
                    // an order in place of a value: nothing goes into the sheet
                    return again();
                }
                if (accept.doubtful()) {
                    return doubted();
                }
                boolean right = right(accept.meaning(), clip, expectation);
                tally.understood += right ? 1 : 0;
                tally.wrong += right ? 0 : 1;
                return right ? "understood" : "wrong";
            }

            @Override
            public String askBetween(Decision.AskBetween between) {
                return doubted();
            }

            @Override
            public String askAgain(Decision.AskAgain again) {
                return again();
            }

            @Override
            public String ignore(Decision.Ignore ignore) {
                return again();
            }

            private String doubted() {
                tally.doubted++;
                return "doubted";
            }

            private String again() {
                tally.again++;
                return "again";
            }
        };
    }

    /** What is done at the first utterance that is not ignored: the dialogue then goes on to another step. */
    private Decision first(List<Utterance> utterances, Expectation expectation) {
        Decision decision = new Decision.Ignore(Decision.Ignorance.NOTHING_SAID);
        Talk talk = Talk.asInDialogue();
        for (Utterance utterance : utterances) {
            decision = decided(talk, utterance, expectation);
            if (!decision.ignored()) {
                return decision;
            }
        }
        return decision;
    }

    private static boolean value(Meaning meaning) {
        return !meaning.readings().isEmpty();
    }

    private boolean right(Meaning taken, Clip clip, Expectation expectation) {
        if (clip.meant().isEmpty()) {
            return grammar.understand(clip.words(), expectation)
                    .get(0)
                    .meaning()
                    .equals(taken);
        }
        Reading meant = clip.meant().get();
        return taken instanceof Meaning.Values values
                && values.readings().size() == 1
                && values.readings().get(0).quantity() == meant.quantity()
                && Math.abs(values.readings().get(0).in(meant.unit())
                                - meant.value().doubleValue())
                        < SAME;
    }

    /** The words of ours in these utterances. */
    static List<String> words(List<Utterance> utterances) {
        return utterances.stream()
                .flatMap(utterance -> Stream.of(utterance.words().split(" ", -1)))
                .filter(word -> !word.isEmpty() && !word.equals(Ear.UNKNOWN))
                .toList();
    }

    /** The result as lines of text: tables, the trade-off, the commonest confusions, latency and speed. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("Shares of values with the interval that holds the true share about 95 times in 100.");
        lines.add(String.format(
                Locale.ROOT,
                "%-28s %6s %8s %9s %11s %19s %7s %7s %19s",
                "kind, list, noise",
                "clips",
                "whole %",
                "no rule %",
                "word err %",
                "taken %",
                "asked %",
                "again %",
                "wrong %"));
        tallies.forEach((key, tally) -> {
            if (!key.startsWith(Clip.UNRELATED)) {
                lines.add(line(key, tally));
            }
        });
        tallies.forEach((key, tally) -> {
            if (key.startsWith(Clip.UNRELATED)) {
                lines.add(String.format(
                        Locale.ROOT,
                        "%-28s %6d clips, %.1f min: %d words accepted, %d without the rule; taken without a question:"
                                + " %d commands, %d values",
                        key,
                        tally.clips,
                        tally.seconds / 60,
                        tally.falseWords,
                        tally.falseWordsWithoutRule,
                        tally.falseCommands,
                        tally.falseValues));
            }
        });
        lines.addAll(tradeOff.lines());
        confusions.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder()))
                .limit(12)
                .forEach(entry -> lines.add(entry.getValue() + " x " + entry.getKey()));
        lines.add(latency.line());
        lines.add(String.format(
                Locale.ROOT,
                "real-time factor %.3f (%.0f s of sound, wall time of this process)",
                processorSeconds / Math.max(1e-9, audioSeconds),
                audioSeconds));
        return lines;
    }

    private static String line(String key, Tally tally) {
        String heard = String.format(
                Locale.ROOT,
                "%-28s %6d %8.1f %9.1f %11.1f",
                key,
                tally.clips,
                new Share(tally.right, tally.clips).percent(),
                new Share(tally.rightWithoutRule, tally.clips).percent(),
                new Share(tally.wordErrors, tally.words).percent());
        if (tally.values() == 0) {
            return heard;
        }
        return heard
                + String.format(
                        Locale.ROOT,
                        " %19s %7.1f %7.1f %19s",
                        new Share(tally.understood, tally.clips),
                        new Share(tally.doubted, tally.clips).percent(),
                        new Share(tally.again, tally.clips).percent(),
                        new Share(tally.wrong, tally.clips));
    }
}
