package readback.assistant.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.Stream;
import readback.assistant.dialogue.AssessedPrior;
import readback.assistant.ear.Ear;
import readback.assistant.measure.Attempt.Outcome;
import readback.assistant.sound.Samples;
import readback.calc.fluid.Catalogue;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Prior;
import readback.grammar.number.NumberStyle;

/**
 * Measures readings that are joined from recorded single digits, with pauses between the digits: how many are cut by
 * the pauses, taken at once, asked about and taken wrong, and how long after the last digit they are decided. Values
 * and clips are drawn, the same each time; a reading is made of the digits of several people, made equally loud. Pauses
 * hold the noise of the recording before them. One thread, that of the ear.
 */
public final class JoinedDigits {

    /** The pauses between two digits that are measured, in seconds. */
    public static final List<Double> PAUSES = List.of(0.0, 0.1, 0.2, 0.3, 0.4, 0.5);

    private static final int FRAME = Ear.RATE / 100;
    private static final double BEFORE_SECONDS = 0.6;
    private static final double AFTER_SECONDS = 2.5;
    /** Kept of a clip on both sides of what is loud, for the soft sounds there. */
    private static final int MARGIN = 5 * FRAME;
    /** Loud is what reaches this part of the way from the floor to the loudest, in decibels. */
    private static final double LOUD = 0.3;
    /** Root mean square of the loud parts of each digit, on the scale of 16-bit samples. */
    private static final double LOUDNESS = 2000;

    private static final double DECIBELS = 10;
    private static final long START = 20_261_128;

    /** What a reading is drawn from: lowest and highest as they stand on gauges, digits called out one by one. */
    private record Span(Quantity quantity, int low, int high) {

        /** A value that is usual by what is known. */
        int drawn(Prior known, Random random) {
            int value;
            do {
                value = low + random.nextInt(high - low + 1);
            } while (known.of(reading(value)) != Prior.Grade.TYPICAL);
            return value;
        }

        private Reading reading(int value) {
            return new Reading(quantity, BigDecimal.valueOf(value), UnitSetting.US.unitOf(quantity));
        }
    }

    private static final List<Span> SPANS = List.of(
            new Span(Quantity.SUCTION_PRESSURE, 50, 180),
            new Span(Quantity.LIQUID_PRESSURE, 150, 550),
            new Span(Quantity.SUCTION_LINE_TEMPERATURE, 35, 85));

    /** A digit that was cut out of its recording, and the softest stretch of it. */
    private record Digit(Samples sound, Samples floor) {}

    /** Sound with the times at which its last digit is half said and ends. */
    private record Joined(Samples sound, double lastHalfSaid, double ends) {}

    private static final class Row {
        private final Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);
        private final List<Double> seconds = new ArrayList<>();
        private int cut;
        private int possible;
        private int all;

        private void count(Attempt attempt, boolean couldBe) {
            all++;
            cut += attempt.cut() ? 1 : 0;
            possible += couldBe ? 1 : 0;
            outcomes.merge(attempt.outcome(), 1, Integer::sum);
            if (attempt.outcome() == Outcome.AT_ONCE) {
                seconds.add(attempt.seconds());
            }
        }

        private double after(double share) {
            Collections.sort(seconds);
            return seconds.get((int) (share * (seconds.size() - 1)));
        }

        private String line() {
            String counts = String.format(
                    Locale.ROOT,
                    "%4d readings: cut %5.1f %%, at once %5.1f %% of at most %.1f %%,"
                            + " asked %5.1f %%, wrong %4.1f %% (%d), nothing %5.1f %%",
                    all,
                    share(cut),
                    share(Outcome.AT_ONCE),
                    share(possible),
                    share(Outcome.ASKED),
                    share(Outcome.WRONG),
                    outcomes.getOrDefault(Outcome.WRONG, 0),
                    share(Outcome.NOTHING));
            return seconds.isEmpty()
                    ? counts
                    : counts
                            + String.format(
                                    Locale.ROOT,
                                    "; at once after %.2f s median, %.2f s 90th percentile",
                                    after(0.5),
                                    after(0.9));
        }

        private double share(Outcome outcome) {
            return share(outcomes.getOrDefault(outcome, 0));
        }

        private double share(int count) {
            return 100.0 * count / Math.max(1, all);
        }
    }

    private final Attempts attempts;
    /** One of these refrigerants is in the system, and known. */
    private final List<Prior> known = Stream.of("R-22", "R-410A")
            .map(name ->
                    AssessedPrior.of(Catalogue.standard().find(name).known().orElseThrow()))
            .toList();

    private final List<List<Digit>> digits = PhraseList.TEN_DIGITS.stream()
            .<List<Digit>>map(any -> new ArrayList<>())
            .toList();

    public JoinedDigits(Ear ear, Grammar grammar) {
        this.attempts = new Attempts(ear, grammar);
    }

    /** Takes the single digits among the clips; the others do not count. */
    public void read(List<Clip> clips, Measurement.Source source) {
        for (Clip clip : clips) {
            int digit = PhraseList.TEN_DIGITS.indexOf(clip.words());
            if (digit >= 0) {
                source.sound(clip)
                        .ifPresent(sound ->
                                digits.get(digit).add(digit(sound.at(Ear.RATE).pcm())));
            }
        }
    }

    /** Whether each digit was read at least once, so that any reading can be joined. */
    public boolean complete() {
        return digits.stream().noneMatch(List::isEmpty);
    }

    /**
     * A line for each pause, clean and beside a fan, and one for all pauses.
     *
     * @param readings so many at each pause
     * @param pauses in seconds
     * @param details takes a line of the table of {@link Detail} for each reading
     */
    public List<String> lines(int readings, List<Double> pauses, Consumer<String> details) {
        List<String> lines = new ArrayList<>();
        for (double level : new double[] {Measurement.NO_NOISE, DECIBELS}) {
            String name = Measurement.name(level);
            Row all = new Row();
            Random random = new Random(START);
            for (double pause : pauses) {
                Row row = new Row();
                for (int n = 0; n < readings; n++) {
                    measure(said(n, pause, 0, random), level, List.of(row, all), details);
                }
                lines.add(
                        String.format(Locale.ROOT, "joined digits, %s, pauses of %.1f s, %s", name, pause, row.line()));
            }
            lines.add(String.format(Locale.ROOT, "joined digits, %s, all pauses,      %s", name, all.line()));
        }
        return lines;
    }

    private static Digit digit(short[] pcm) {
        int frames = pcm.length / FRAME;
        double[] levels = new double[frames];
        for (int i = 0; i < frames; i++) {
            double sum = 0;
            for (int k = 0; k < FRAME; k++) {
                sum += (double) pcm[i * FRAME + k] * pcm[i * FRAME + k];
            }
            levels[i] = 10 * Math.log10(sum / FRAME + 1);
        }
        double[] sorted = levels.clone();
        Arrays.sort(sorted);
        double floor = sorted[frames / 10];
        double loud = floor + LOUD * (sorted[frames - 1] - floor);
        int first = 0;
        while (levels[first] < loud) {
            first++;
        }
        int last = frames - 1;
        while (levels[last] < loud) {
            last--;
        }
        double power = 0;
        for (int i = first; i <= last; i++) {
            power += Math.pow(10, levels[i] / 10) / (last - first + 1);
        }
        double gain = LOUDNESS / Math.sqrt(power);
        int from = Math.max(0, first * FRAME - MARGIN);
        int to = Math.min(pcm.length, (last + 1) * FRAME + MARGIN);
        int softest = 0;
        int length = 10;
        for (int i = 0; i + length <= frames; i++) {
            if (sum(levels, i, length) < sum(levels, softest, length)) {
                softest = i;
            }
        }
        return new Digit(
                part(pcm, from, to).times(gain),
                part(pcm, softest * FRAME, (softest + length) * FRAME).times(gain));
    }

    private static Samples part(short[] pcm, int from, int to) {
        return Samples.of(Arrays.copyOfRange(pcm, from, to), Ear.RATE);
    }

    private static double sum(double[] levels, int from, int length) {
        return Arrays.stream(levels, from, from + length).sum();
    }

    /** Noise like the floor: pieces of it from anywhere, faded into each other. */
    private static Samples noise(Samples like, double seconds, Random random) {
        short[] floor = like.pcm();
        int length = (int) (seconds * Ear.RATE);
        int grain = floor.length / 2;
        double[] sum = new double[length + grain];
        for (int at = -grain / 2; at < length; at += grain / 2) {
            int from = random.nextInt(floor.length - grain);
            for (int i = Math.max(0, -at); i < grain; i++) {
                // the square root of a raised cosine: what overlaps is not alike, so that powers add up
                sum[at + i] += floor[from + i] * Math.sin(Math.PI * (i + 0.5) / grain);
            }
        }
        short[] noise = new short[length];
        for (int i = 0; i < length; i++) {
            noise[i] = Samples.clipped(sum[i]);
        }
        return Samples.of(noise, Ear.RATE);
    }

    /**
     * Readings with these pauses in turn, as they are heard where the sound began a while before.
     *
     * @param readings how many
     * @param lead so many seconds of the floor come before everything else
     */
    public List<Said> said(int readings, List<Double> pauses, double lead) {
        Random random = new Random(START);
        List<Said> all = new ArrayList<>();
        for (int n = 0; n < readings; n++) {
            all.add(said(n, pauses.get(n / SPANS.size() % pauses.size()), lead, random));
        }
        return all;
    }

    private Said said(int number, double pause, double lead, Random random) {
        Span span = SPANS.get(number % SPANS.size());
        Prior prior = known.get(random.nextInt(known.size()));
        int value = span.drawn(prior, random);
        Joined joined = joined(drawn(value, random), pause, lead + BEFORE_SECONDS, random);
        Expectation expectation = Expectation.of(span.quantity(), UnitSetting.US);
        return new Said(
                String.valueOf(value),
                NumberStyle.DIGITS.say(BigDecimal.valueOf(value)).orElseThrow(),
                joined.sound(),
                lead,
                joined.lastHalfSaid() - lead,
                joined.ends() - lead,
                expectation,
                prior,
                meaning -> right(meaning.readings(), expectation, value));
    }

    private List<Digit> drawn(int value, Random random) {
        List<Digit> said = new ArrayList<>();
        for (char each : String.valueOf(value).toCharArray()) {
            List<Digit> choice = digits.get(each - '0');
            said.add(choice.get(random.nextInt(choice.size())));
        }
        return said;
    }

    private static Joined joined(List<Digit> said, double pause, double before, Random random) {
        List<Samples> parts = new ArrayList<>();
        double at = before;
        parts.add(noise(said.get(0).floor(), before, random));
        for (int i = 0; i < said.size(); i++) {
            Samples digit = said.get(i).sound();
            parts.add(digit);
            at += digit.seconds();
            double quiet = i == said.size() - 1 ? AFTER_SECONDS : pause;
            parts.add(noise(said.get(i).floor(), quiet, random));
            at += quiet;
        }
        double margin = (double) MARGIN / Ear.RATE;
        double last = said.get(said.size() - 1).sound().seconds();
        return new Joined(Samples.joined(parts, Ear.RATE), at - AFTER_SECONDS - last / 2, at - AFTER_SECONDS - margin);
    }

    private void measure(Said said, double level, List<Row> rows, Consumer<String> details) {
        Samples sound = level == Measurement.NO_NOISE
                ? said.sound()
                : Noise.FAN.mixed(said.sound(), level, said.sound().length());
        Attempt attempt = attempts.at(said, sound, sound);
        boolean possible = attempts.possible(said);
        rows.forEach(row -> row.count(attempt, possible));
        details.accept(Detail.of(said, Measurement.name(level), attempt));
    }

    private static boolean right(List<Reading> taken, Expectation expectation, int value) {
        return taken.size() == 1
                && taken.get(0).quantity() == expectation.quantity().orElseThrow()
                && taken.get(0).value().compareTo(BigDecimal.valueOf(value)) == 0;
    }
}
