package readback.assistant.echo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import readback.assistant.dialogue.SpeechTimes;
import readback.assistant.ear.BundledEar;
import readback.assistant.ear.Ear;
import readback.assistant.sound.Recording;
import readback.assistant.sound.Samples;
import readback.assistant.voice.Voice;
import readback.assistant.voice.VoiceChoice;
import readback.grammar.Grammar;

/**
 * Measures orders spoken over Readback's own voice, which says what the reviewed conversations say, in a simulated
 * room. First nobody else speaks: every order that is taken then is one of Readback's own words. Then orders are said
 * over the voice, again and again: how many are taken, how quickly, and how many are taken for another.
 *
 * <p>Arguments: minutes of voice; a folder with one folder of WAV files an order ("stop", "yes", …), or {@code -} for
 * orders by other voices of flite; then any number of rooms as DELAY_MS:ECHO_DB, the echo's loudness beside that of who
 * speaks the orders. Orders are said over the first quarter of an hour. Runs in the folder of this module.
 */
final class BargeInFigures {

    private static final int CHUNK = Ear.RATE / 50;
    /** Loudness of the speaker at the microphone, root mean square on the scale of 16-bit samples; -27 dB. */
    private static final double SPEAKER = 1500;

    private static final double NOISE = 25;
    private static final double EVERY_SECONDS = 6;
    private static final double IN_TIME_SECONDS = 1.5;
    private static final int ORDERS_SECONDS = 15 * 60;

    private record Clip(String order, Samples sound) {}

    private record Taken(String order, double at) {}

    private final Grammar grammar = Grammar.standard();
    private final Random random = new Random(20_261_128);

    public static void main(String[] arguments) throws Exception {
        BargeInFigures figures = new BargeInFigures();
        Voice voice = VoiceChoice.FLITE.open(Path.of("target", "readback"));
        short[] played = figures.speech(voice, Double.parseDouble(arguments[0]));
        List<Clip> clips = arguments[1].equals("-") ? figures.voices() : clips(Path.of(arguments[1]));
        System.out.printf(
                Locale.ROOT, "%.1f min of voice, %d clips of orders%n", played.length / 60.0 / Ear.RATE, clips.size());
        for (String room : List.of(arguments).subList(2, arguments.length)) {
            String[] parts = room.split(":", -1);
            figures.measure(played, clips, Integer.parseInt(parts[0]), Double.parseDouble(parts[1]));
        }
    }

    private short[] speech(Voice voice, double minutes) throws Exception {
        List<String> lines = new ArrayList<>(SpeechTimes.texts());
        Collections.shuffle(lines, random);
        List<Samples> parts = new ArrayList<>();
        double seconds = 0;
        for (int i = 0; seconds < minutes * 60; i++) {
            Samples said = voice.speak(lines.get(i % lines.size())).at(Ear.RATE);
            parts.add(said);
            parts.add(Samples.silence(0.2, Ear.RATE));
            seconds += said.seconds() + 0.2;
        }
        return Samples.joined(parts, Ear.RATE).pcm();
    }

    private List<Clip> voices() throws Exception {
        List<Clip> clips = new ArrayList<>();
        for (String order : new TreeSet<>(grammar.ordersOverVoice())) {
            for (String speaker : order.contains(Ear.UNKNOWN) ? List.<String>of() : List.of("slt", "awb", "kal16")) {
                Path file = Files.createTempFile("order", ".wav");
                int code = new ProcessBuilder("flite", "-voice", speaker, "-t", order, "-o", file.toString())
                        .start()
                        .waitFor();
                if (code != 0) {
                    throw new IllegalStateException("flite does not speak as " + speaker);
                }
                clips.add(clip(order, file));
            }
        }
        return clips;
    }

    private static List<Clip> clips(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder, 2)) {
            return files.filter(file -> file.toString().endsWith(".wav"))
                    .sorted()
                    .map(file -> clip(
                            Objects.requireNonNull(file.getParent())
                                    .getFileName()
                                    .toString(),
                            file))
                    .toList();
        }
    }

    private static Clip clip(String order, Path file) {
        return new Clip(order, Recording.read(file).samples().orElseThrow().at(Ear.RATE));
    }

    private void measure(short[] played, List<Clip> clips, int delay, double decibels) throws Exception {
        double[] echo = new Room(delay, 1).heard(played);
        double gain = SPEAKER * Math.pow(10, decibels / 20) / loudness(echo);
        List<Taken> own = run(played, sum(echo, gain, new double[echo.length]));
        double[] begun = Arrays.copyOf(echo, Math.min(echo.length, ORDERS_SECONDS * Ear.RATE));
        double[] people = new double[begun.length];
        List<Taken> said = new ArrayList<>();
        int clip = 0;
        for (double at = 4; at * Ear.RATE + 2 * Ear.RATE < people.length; at += EVERY_SECONDS) {
            Clip next = clips.get(clip++ % clips.size());
            short[] pcm = next.sound().pcm();
            double louder = SPEAKER / loudness(doubles(pcm));
            int begin = (int) (at * Ear.RATE);
            for (int i = 0; i < pcm.length && begin + i < people.length; i++) {
                people[begin + i] += louder * pcm[i];
            }
            said.add(new Taken(next.order(), at + (double) pcm.length / Ear.RATE));
        }
        List<Taken> taken = run(played, sum(begun, gain, people));
        int right = 0;
        int other = 0;
        List<Double> late = new ArrayList<>();
        Map<String, List<String>> heardAs = new TreeMap<>();
        for (Taken each : said) {
            Optional<Taken> first = taken.stream()
                    .filter(t -> t.at() > each.at() - 2 && t.at() < each.at() + IN_TIME_SECONDS)
                    .findFirst();
            heardAs.computeIfAbsent(each.order(), order -> new ArrayList<>())
                    .add(first.map(Taken::order).orElse("-"));
            if (first.isPresent() && first.get().order().equals(each.order())) {
                right++;
                late.add(first.get().at() - each.at());
            } else if (first.isPresent()) {
                other++;
            }
        }
        Collections.sort(late);
        System.out.printf(
                Locale.ROOT,
                "delay %d ms, echo %+.0f dB: own words taken %d in %.0f min %s; of %d orders %d right, %d as another;"
                        + " median %.2f s after their end%n",
                delay,
                decibels,
                own.size(),
                played.length / 60.0 / Ear.RATE,
                own.stream().map(Taken::order).distinct().sorted().toList(),
                said.size(),
                right,
                other,
                late.isEmpty() ? Double.NaN : late.get(late.size() / 2));
        heardAs.forEach((order, heard) -> System.out.printf(Locale.ROOT, "  %-16s %s%n", order, heard));
    }

    /** All orders that are taken; the voice goes on after each, which makes it harder than it is. */
    private List<Taken> run(short[] played, short[] heard) throws Exception {
        List<Taken> taken = new ArrayList<>();
        Ear ear = BundledEar.open();
        try (BargeIn bargeIn =
                new BargeIn(ear, WebRtcEchoCanceller.open(), grammar.ordersOverVoice(), words -> false, -55)) {
            for (int at = 0; at + CHUNK <= heard.length; at += CHUNK) {
                short[] clean = bargeIn.clean(part(heard, at), part(played, at));
                double now = (double) (at + CHUNK) / Ear.RATE;
                bargeIn.order(clean).ifPresent(order -> {
                    taken.add(new Taken(order, now));
                    bargeIn.forget();
                });
                if (bargeIn.hopeless()) {
                    System.out.printf(Locale.ROOT, "given up at %.0f s%n", now);
                    return taken;
                }
            }
        } finally {
            ear.close();
        }
        return taken;
    }

    private static short[] part(short[] all, int at) {
        return Arrays.copyOfRange(all, at, at + CHUNK);
    }

    private short[] sum(double[] echo, double gain, double[] people) {
        Random noise = new Random(3);
        short[] all = new short[echo.length];
        for (int i = 0; i < all.length; i++) {
            double value = gain * echo[i] + people[i] + noise.nextGaussian() * NOISE;
            all[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(value)));
        }
        return all;
    }

    private static double[] doubles(short[] pcm) {
        double[] all = new double[pcm.length];
        for (int i = 0; i < pcm.length; i++) {
            all[i] = pcm[i];
        }
        return all;
    }

    /** Root mean square over what is not silence. */
    private static double loudness(double[] sound) {
        double sum = 0;
        int count = 0;
        for (double sample : sound) {
            if (Math.abs(sample) > 200) {
                sum += sample * sample;
                count++;
            }
        }
        return Math.sqrt(sum / Math.max(1, count));
    }
}
