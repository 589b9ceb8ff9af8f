package readback.assistant.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import readback.assistant.ear.Ear;
import readback.assistant.measure.Attempt.Outcome;
import readback.assistant.sound.Samples;
import readback.assistant.suppression.NoiseSuppressor;
import readback.calc.name.ConstantName;
import readback.grammar.Grammar;

/**
 * Whether noise suppression before the ear helps: the same values in the same noise are heard without and with it, so
 * that the difference is told by the pairs that came out otherwise. One thread, that of the ear.
 */
public final class SuppressionTrial {

    /** The suppressor has heard the noise for so many seconds when a value begins, as in a live session. */
    public static final double LEAD = 2;

    private static final String CLEAN = Measurement.name(Measurement.NO_NOISE);
    private static final long START = 20_261_129;

    /**
     * What is done to the sound.
     *
     * @param suppressed the stream with less noise in it, as long as it was
     * @param forWords whether the words are heard in that, and not in the sound as it was recorded
     * @param forLevel whether the end of an utterance is looked for in that
     */
    public record Way(String name, UnaryOperator<Samples> suppressed, boolean forWords, boolean forLevel) {
        /** Nothing is done. */
        static final Way NONE = new Way("none", sound -> sound, false, false);
    }

    /** The columns of what is told of each value, tab separated. */
    public static final String HEADER = "said\tnoise\tsuppression\toutcome\twhole";

    private final Attempts attempts;
    private final List<Way> ways = new ArrayList<>(List.of(Way.NONE));
    private final Consumer<String> details;
    private final Consumer<String> out;

    /**
     * @param ways what is done to the sound; compared with nothing
     * @param details told each value in each way as a line of {@link #HEADER}
     * @param out told each line of the tables
     */
    public SuppressionTrial(Ear ear, Grammar grammar, List<Way> ways, Consumer<String> details, Consumer<String> out) {
        this.attempts = new Attempts(ear, grammar);
        this.ways.addAll(ways);
        this.details = details;
        this.out = out;
    }

    /** A way through a suppressor, which is fed frame by frame. */
    public static Samples through(NoiseSuppressor suppressor, Samples sound) {
        short[] pcm = sound.at(Ear.RATE).pcm();
        short[] suppressed = new short[pcm.length];
        for (int at = 0; at + NoiseSuppressor.FRAME <= pcm.length; at += NoiseSuppressor.FRAME) {
            short[] frame = suppressor.suppress(Arrays.copyOfRange(pcm, at, at + NoiseSuppressor.FRAME));
            System.arraycopy(frame, 0, suppressed, at, NoiseSuppressor.FRAME);
        }
        return Samples.of(suppressed, Ear.RATE);
    }

    /**
     * Hears everything in one of the noises at one of the levels, in decibels, in turn, if there are any; then clean.
     */
    public void measure(List<Said> said, List<Noise> noises, List<Double> levels) {
        if (!levels.isEmpty()) {
            inNoise(said, noises, levels);
        }
        List<List<Attempt>> clean = new ArrayList<>();
        for (Said each : said) {
            clean.add(hear(each, CLEAN, each.sound().at(Ear.RATE)));
        }
        tell(CLEAN, clean, n -> true);
    }

    private void inNoise(List<Said> said, List<Noise> noises, List<Double> levels) {
        List<String> noisy = new ArrayList<>();
        List<String> loudness = new ArrayList<>();
        List<List<Attempt>> heard = new ArrayList<>();
        for (int n = 0; n < said.size(); n++) {
            Noise noise = noises.get(n % noises.size());
            double level = levels.get(n / noises.size() % levels.size());
            noisy.add(ConstantName.of(noise));
            loudness.add(Measurement.name(level));
            Samples sound = said.get(n).sound().at(Ear.RATE);
            heard.add(hear(said.get(n), noisy.get(n) + " " + loudness.get(n), noise.mixed(sound, level, START + n)));
        }
        tell("noise", heard, n -> true);
        for (Noise noise : noises) {
            tell(ConstantName.of(noise), heard, n -> noisy.get(n).equals(ConstantName.of(noise)));
        }
        for (String level : new TreeSet<>(loudness)) {
            tell(level, heard, n -> loudness.get(n).equals(level));
        }
    }

    /** One value in all ways. */
    private List<Attempt> hear(Said said, String noise, Samples sound) {
        List<Attempt> heard = new ArrayList<>();
        for (Way way : ways) {
            Samples suppressed = way.suppressed().apply(sound);
            Attempt each = attempts.at(said, way.forWords() ? suppressed : sound, way.forLevel() ? suppressed : sound);
            details.accept(String.join(
                    "\t",
                    said.name(),
                    noise,
                    way.name(),
                    ConstantName.of(each.outcome()),
                    String.valueOf(each.whole())));
            heard.add(each);
        }
        return heard;
    }

    private void tell(String name, List<List<Attempt>> all, IntPredicate chosen) {
        List<List<Attempt>> heard =
                IntStream.range(0, all.size()).filter(chosen).mapToObj(all::get).toList();
        for (int way = 0; way < ways.size(); way++) {
            int here = way;
            List<Attempt> with = heard.stream().map(each -> each.get(here)).toList();
            List<Attempt> without = heard.stream().map(each -> each.get(0)).toList();
            out.accept(line(name, ways.get(way).name(), with)
                    + (way == 0
                            ? ""
                            : "; at once: "
                                    + pairs(without, with, each -> each.outcome() == Outcome.AT_ONCE)
                                    + "; wrong: "
                                    + pairs(without, with, each -> each.outcome() == Outcome.WRONG)
                                    + "; whole: "
                                    + pairs(without, with, Attempt::whole)));
        }
    }

    private static String line(String name, String way, List<Attempt> heard) {
        Map<Outcome, Integer> counts = new EnumMap<>(Outcome.class);
        heard.forEach(each -> counts.merge(each.outcome(), 1, Integer::sum));
        double[] seconds = heard.stream()
                .filter(each -> each.outcome() == Outcome.AT_ONCE)
                .mapToDouble(Attempt::seconds)
                .sorted()
                .toArray();
        return String.format(
                        Locale.ROOT,
                        "%-8s %-12s %4d: at once %s %%, asked %.1f, nothing %.1f, wrong %d, whole %.1f, cut %d",
                        name,
                        way,
                        heard.size(),
                        new Share(counts.getOrDefault(Outcome.AT_ONCE, 0), heard.size()),
                        new Share(counts.getOrDefault(Outcome.ASKED, 0), heard.size()).percent(),
                        new Share(counts.getOrDefault(Outcome.NOTHING, 0), heard.size()).percent(),
                        counts.getOrDefault(Outcome.WRONG, 0),
                        new Share((int) heard.stream().filter(Attempt::whole).count(), heard.size()).percent(),
                        heard.stream().filter(Attempt::cut).count())
                + (seconds.length == 0
                        ? ""
                        : String.format(
                                Locale.ROOT,
                                ", after %.2f s median, %.2f s 90th percentile",
                                seconds[seconds.length / 2],
                                seconds[(int) (0.9 * (seconds.length - 1))]));
    }

    private static String pairs(List<Attempt> without, List<Attempt> with, Predicate<Attempt> came) {
        return PairedTest.of(had(without, came), had(with, came)).line();
    }

    private static boolean[] had(List<Attempt> heard, Predicate<Attempt> came) {
        boolean[] had = new boolean[heard.size()];
        for (int i = 0; i < had.length; i++) {
            had[i] = came.test(heard.get(i));
        }
        return had;
    }
}
