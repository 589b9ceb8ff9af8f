package readback.assistant.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import readback.assistant.ear.Ear;
import readback.assistant.measure.Clip;
import readback.assistant.measure.Detail;
import readback.assistant.measure.Idle;
import readback.assistant.measure.JoinedDigits;
import readback.assistant.measure.Measurement;
import readback.assistant.measure.Noise;
import readback.assistant.measure.PhraseList;
import readback.assistant.measure.Said;
import readback.assistant.measure.SuppressionTrial;
import readback.assistant.sound.Recording;
import readback.assistant.sound.Samples;
import readback.assistant.suppression.NoiseSuppressor;
import readback.assistant.suppression.Strength;
import readback.assistant.suppression.WebRtcNoiseSuppressor;
import readback.assistant.webrtc.ProcessingUnavailableException;
import readback.calc.name.ConstantName;
import readback.grammar.Grammar;

/** How well recordings are heard and understood, or how well simulated units are judged. */
@Command(
        name = "measure",
        mixinStandardHelpOptions = true,
        description = {
            "Measures how well recordings are heard, or how calls at simulated units end.",
            "Of recordings it tells word and utterance errors, values taken, asked about and taken wrong, words accepted"
                    + " from unrelated speech and the trade-off of the acceptance rule, confusions, latency, speed; at"
                    + " several noise levels, with the phrases of a dialogue step and with short lists of words.",
            "",
            "FOLDER holds WAV files and expected.tsv, tab separated with a header line: file, kind, words, and if wished"
                    + " step (a quantity), value and unit (what is meant), speaker. Kinds: reading, number and digit are values,"
                    + " unrelated is speech not meant for us, others are commands.",
            "",
            "With --idle, instead: so many minutes each of silence, a fan and the unrelated speech of FOLDER go through a"
                    + " session to which nobody speaks; what it answers and takes is counted.",
            "",
            "With --joined, instead: so many readings at each pause of 0 to 0.5 s are joined from the single digits of"
                    + " FOLDER; how many are cut, taken at once, asked about and taken wrong.",
            "",
            "With --suppress, instead: the same values are heard without and with noise suppression, clean and each in"
                    + " one of four noises at one of the levels of --noise; how many came out otherwise, and whether by chance.",
            "",
            "With --plant, instead: so many service calls at simulated air-conditioners whose trouble is"
                    + " known: half have 5 to 30 percent too little or too much charge, a quarter are sound, a quarter"
                    + " have another fault. A technician who answers every step types through the real dialogue, moves"
                    + " the refrigerant that is advised and measures again, up to six times. A table tells what was"
                    + " said and done for each trouble; then come the shares that matter, such as refrigerant moved for"
                    + " a fault that is not the charge, with the numbers of calls to look at. No FOLDER is needed.",
            "",
            "  readback measure --plant 2000 --seed 1                  the same seed gives the same calls",
            "  readback measure --plant 2000 --seed 1 --level full     look and read more than is asked",
            "  readback measure --plant 2000 --seed 1 --call 17        what was typed and shown in call 17",
            ""
        })
public final class MeasureCommand implements Callable<Integer> {

    private final Console console;

    @Parameters(
            paramLabel = "FOLDER",
            arity = "0..1",
            description = "Recordings with expected.tsv. Default: this folder.")
    private Optional<Path> named = Optional.empty();

    @Option(
            names = "--noise",
            split = ",",
            paramLabel = "DB",
            description = "Fan noise at these signal-to-noise ratios besides clean. Default: none.")
    private List<Double> noise = new ArrayList<>();

    @Option(
            names = "--details",
            paramLabel = "FILE",
            description = "Writes each value at each noise level as a line: said, meant, heard, done.")
    private Optional<Path> details = Optional.empty();

    @Option(
            names = "--lists",
            split = ",",
            paramLabel = "LIST",
            description = "Hear with these phrase lists only: ${COMPLETION-CANDIDATES}. Default: all.")
    private List<PhraseList> lists = new ArrayList<>(List.of(PhraseList.values()));

    @Option(
            names = "--every",
            paramLabel = "N",
            description = "Measure one clip of every so many, to choose on some and report on others. Default: each.")
    private int every = 1;

    @Option(names = "--from", paramLabel = "I", description = "The first clip to measure, counted from 0. Default: 0.")
    private int from;

    @Option(
            names = "--idle",
            paramLabel = "MINUTES",
            description = "Nobody speaks to a session for so many minutes each of silence, fan and unrelated speech.")
    private double idle;

    @Option(
            names = "--joined",
            paramLabel = "N",
            description =
                    "Instead: N readings at each pause of 0 to 0.5 s, joined from the single digits of FOLDER, clean and"
                            + " beside a fan.")
    private int joined;

    @Option(
            names = "--pauses",
            split = ",",
            paramLabel = "SECONDS",
            description = "With --joined: the pauses between two digits. Default: 0 to 0.5 in steps of 0.1.")
    private List<Double> pauses = new ArrayList<>(JoinedDigits.PAUSES);

    @Option(
            names = "--suppress",
            split = ",",
            paramLabel = "STRENGTH",
            description =
                    "Instead: the readings of --joined, or each value of FOLDER at its step, without and with noise"
                            + " suppression before the ear: ${COMPLETION-CANDIDATES}. Clean, and in turn in the noises of"
                            + " --noises at the levels of --noise; with a paired test.")
    private List<Strength> suppress = new ArrayList<>();

    @Option(
            names = "--levels",
            description = "With --suppress: look for the end of an utterance in the level of the suppressed sound too,"
                    + " with the words heard in it (both) and in the sound as it was recorded (level).")
    private boolean levels;

    @Option(
            names = "--noises",
            split = ",",
            paramLabel = "NOISE",
            description = "With --suppress: ${COMPLETION-CANDIDATES}. Default: all.")
    private List<Noise> noises = new ArrayList<>(List.of(Noise.values()));

    @Option(
            names = "--plant",
            paramLabel = "N",
            description =
                    "Make this many service calls at simulated units, 1 to 100000, and count what is said and done.")
    private Optional<Integer> plant = Optional.empty();

    @Option(
            names = "--calls",
            paramLabel = "N",
            description =
                    "Make this many service calls at simulated units by voice: a voice reads the instruments aloud beside"
                            + " a fan (--noise DB, one level; else in quiet), the ear hears it. As many are made at the same"
                            + " time as there are processors, 8 at most. The seed is that of --plant.")
    private Optional<Integer> calls = Optional.empty();

    @Option(
            names = "--voices",
            split = ",",
            paramLabel = "VOICE",
            description =
                    "With --calls: who may call, one drawn for each call: rms (of flite), f4, mike, jacky, marcelo (of"
                            + " espeak-ng), system, embedded (the model was trained on its speaker, so it is counted apart)."
                            + " Default: all that can be had.")
    private List<String> voices = new ArrayList<>();

    @Option(
            names = "--keep",
            paramLabel = "FOLDER",
            description = "With --calls: keep the record of each call that did not end, came to another first verdict"
                    + " than typed, or gave a verdict or was acted on while a reading stood otherwise than said, with"
                    + " what was said.")
    private Optional<Path> keep = Optional.empty();

    @Option(
            names = "--seed",
            paramLabel = "S",
            description = "With --plant or --calls: a whole number; another one gives other calls. Default: 1.")
    private Optional<Long> seed = Optional.empty();

    @Option(
            names = "--level",
            paramLabel = "LEVEL",
            description =
                    "With --plant: checklist reads what is asked and never looks; full looks before it says that the"
                            + " air path is in order and tells every reading. Default: checklist.")
    private Optional<String> level = Optional.empty();

    @Option(
            names = "--call",
            paramLabel = "K",
            description =
                    "With --plant: make only the call of this number, 1 to N, and show it. With --calls: make it alone.")
    private Optional<Integer> one = Optional.empty();

    @Mixin
    private OverwriteOption overwrite = new OverwriteOption();

    @Mixin
    private EarOptions ear = new EarOptions();

    public MeasureCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (plant.isPresent()) {
            if (calls.isPresent() || !noise.isEmpty() || !voices.isEmpty() || keep.isPresent() || aboutRecordings()) {
                throw new CommandFailure(
                        "--plant simulates the units and needs no recordings: leave out the folder and"
                                + " --calls, --voices, --keep, --noise, --details, --lists, --every, --from, --idle, --joined and --suppress.");
            }
            new PlantCalls(console, plant.get(), seed, level, one).make();
            return 0;
        }
        if (calls.isPresent()) {
            if (noise.size() > 1 || level.isPresent() || aboutRecordings()) {
                throw new CommandFailure(
                        "--calls needs no recordings and takes --seed, --call and one level of --noise: leave out"
                                + " the folder, further levels and --level, --details, --lists, --every, --from, --idle,"
                                + " --joined and --suppress.");
            }
            new VoiceCalls(
                            console,
                            calls.get(),
                            seed.orElse(1L),
                            one,
                            noise.stream().findFirst(),
                            voices,
                            keep,
                            ear)
                    .make();
            return 0;
        }
        if (seed.isPresent() || level.isPresent() || one.isPresent() || !voices.isEmpty() || keep.isPresent()) {
            throw new CommandFailure(
                    "--seed, --level and --call belong to --plant N, the number of simulated calls; --seed, --call, --voices"
                            + " and --keep to --calls N.");
        }
        Optional<OutputFile> detailsFile = details.map(file -> OutputFile.at(file, overwrite.force()));
        List<Clip> clips = new ClipList(folder()).clips();
        if (every < 1 || from < 0 || idle < 0 || joined < 0 || pauses.stream().anyMatch(pause -> !(pause >= 0))) {
            throw new CommandFailure("--every is 1 or more; --from, --idle, --joined and --pauses are 0 or more.");
        }
        clips = IntStream.range(0, clips.size())
                .filter(i -> i >= from && (i - from) % every == 0)
                .mapToObj(clips::get)
                .toList();
        Desk desk = Desk.standard();
        Grammar grammar = desk.grammar();
        if (idle > 0) {
            idle(desk, clips);
            return 0;
        }
        if (!suppress.isEmpty()) {
            write(suppressed(grammar, clips), detailsFile);
            return 0;
        }
        List<String> table = new ArrayList<>(List.of(Detail.HEADER));
        if (joined > 0) {
            joined(grammar, clips, table::add);
            write(table, detailsFile);
            return 0;
        }
        List<Double> levels = new ArrayList<>(List.of(Measurement.NO_NOISE));
        levels.addAll(noise);
        try (Ear listening = ear.open(grammar, console)) {
            Measurement measurement = new Measurement(listening, grammar, table::add);
            measurement.measure(clips, levels, Set.copyOf(lists), this::sound, console.err()::println);
            measurement.lines().forEach(console.out()::println);
        }
        write(table, detailsFile);
        return 0;
    }

    private static void write(List<String> table, Optional<OutputFile> target) {
        target.ifPresent(file -> file.write(String.join("\n", table) + "\n"));
    }

    private boolean aboutRecordings() {
        return named.isPresent()
                || details.isPresent()
                || lists.size() < PhraseList.values().length
                || every != 1
                || from != 0
                || idle != 0
                || joined != 0
                || !suppress.isEmpty();
    }

    private void idle(Desk desk, List<Clip> clips) {
        List<Samples> talk = clips.stream()
                .filter(Clip::unrelated)
                .flatMap(clip -> sound(clip).stream())
                .toList();
        try (Ear listening = ear.open(desk.grammar(), console)) {
            Idle nobody = new Idle(listening, desk.grammar(), desk.dialogue());
            nobody.silence(idle).lines().forEach(console.out()::println);
            nobody.fan(idle).lines().forEach(console.out()::println);
            nobody.talk(talk, idle)
                    .map(Idle.Counts::lines)
                    .ifPresentOrElse(
                            lines -> lines.forEach(console.out()::println),
                            () -> console.complain("'" + folder() + "' lists no unrelated speech: none was measured."));
        }
    }

    private void joined(Grammar grammar, List<Clip> clips, Consumer<String> table) {
        try (Ear listening = ear.open(grammar, console)) {
            digits(listening, grammar, clips).lines(joined, pauses, table).forEach(console.out()::println);
        }
    }

    private JoinedDigits digits(Ear listening, Grammar grammar, List<Clip> clips) {
        JoinedDigits digits = new JoinedDigits(listening, grammar);
        digits.read(clips, this::sound);
        if (!digits.complete()) {
            throw new CommandFailure("'" + folder() + "' lacks a recording of some digit, zero to nine.");
        }
        return digits;
    }

    private List<String> suppressed(Grammar grammar, List<Clip> clips) {
        List<String> table = new ArrayList<>(List.of(SuppressionTrial.HEADER));
        try (Ear listening = ear.open(grammar, console)) {
            List<Said> said = joined > 0
                    ? digits(listening, grammar, clips).said(joined, pauses, SuppressionTrial.LEAD)
                    : new Measurement(listening, grammar, line -> {}).said(clips, this::sound, SuppressionTrial.LEAD);
            List<SuppressionTrial.Way> ways = new ArrayList<>();
            for (Strength strength : suppress) {
                String name = ConstantName.of(strength);
                UnaryOperator<Samples> suppressed = sound -> suppressed(strength, sound);
                ways.add(new SuppressionTrial.Way(name, suppressed, true, false));
                if (levels) {
                    ways.add(new SuppressionTrial.Way(name + ", both", suppressed, true, true));
                    ways.add(new SuppressionTrial.Way(name + ", level", suppressed, false, true));
                }
            }
            SuppressionTrial trial = new SuppressionTrial(listening, grammar, ways, table::add, line -> {
                console.out().println(line);
                console.out().flush();
            });
            trial.measure(said, noises, noise);
        }
        return table;
    }

    private static Samples suppressed(Strength strength, Samples sound) {
        try (NoiseSuppressor suppressor = WebRtcNoiseSuppressor.open(strength)) {
            return SuppressionTrial.through(suppressor, sound);
        } catch (ProcessingUnavailableException e) {
            throw new CommandFailure(String.valueOf(e.getMessage()));
        }
    }

    private Optional<Samples> sound(Clip clip) {
        Recording recording = Recording.read(clip.file());
        recording.problem().ifPresent(console::complain);
        return recording.samples();
    }

    private Path folder() {
        return named.orElse(Path.of("."));
    }
}
