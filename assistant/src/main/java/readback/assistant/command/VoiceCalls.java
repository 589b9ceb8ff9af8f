package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import readback.assistant.bench.Caller;
import readback.assistant.bench.ClosedLoop;
import readback.assistant.bench.KeptCalls;
import readback.assistant.bench.SpokenWords;
import readback.assistant.bench.UnknownStepException;
import readback.assistant.ear.Ear;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.session.Fingerprints;
import readback.assistant.voice.Reader;
import readback.assistant.voice.VoiceFailedException;
import readback.calc.name.ConstantName;

/**
 * Service calls at simulated units by voice, as {@link MeasureCommand} is told to make them.
 *
 * @param one only the call of this number
 * @param voices names of who may call; empty for everyone that can be had
 * @param keep folder for the records of calls to look at
 */
record VoiceCalls(
        Console console,
        int calls,
        long start,
        Optional<Integer> one,
        Optional<Double> noise,
        List<String> voices,
        Optional<Path> keep,
        EarOptions ear) {

    private static final int MOST_CALLS = 10_000;

    /** So many calls are made at the same time at most: each loads the models for itself. */
    private static final int MOST_AT_ONCE = 8;

    void make() {
        if (calls < 1 || calls > MOST_CALLS) {
            throw new CommandFailure("--calls is a number of calls from 1 to " + MOST_CALLS + ", not " + calls + ".");
        }
        one.filter(number -> number < 1 || number > calls).ifPresent(number -> {
            throw new CommandFailure("--call is one of the calls of --calls, 1 to " + calls + ", not " + number + ".");
        });
        keep.ifPresent(VoiceCalls::refuseFull);
        Desk desk = Desk.standard();
        List<Ear> ears = new ArrayList<>();
        List<List<Caller>> callersOfEach = new ArrayList<>();
        try {
            int atOnce = one.isPresent()
                    ? 1
                    : Math.min(
                            calls, Math.min(MOST_AT_ONCE, Runtime.getRuntime().availableProcessors()));
            for (int i = 0; i < atOnce; i++) {
                callersOfEach.add(callers());
                ears.add(ear.open());
            }
            ear.warn(ears.get(0), desk.grammar(), console);
            List<Caller> callers = callersOfEach.get(0);
            console.out()
                    .println(calls + " calls by voice, start number " + start + ", "
                            + noise.map(level -> "a fan at " + level + " dB").orElse("in quiet") + "; voices: "
                            + callers.stream().map(Caller::toString).collect(Collectors.joining("; ")));
            new ClosedLoop(
                            desk.dialogue(),
                            IntStream.range(0, atOnce)
                                    .mapToObj(i -> new SpokenWords(
                                            desk.grammar(),
                                            callersOfEach.get(i),
                                            ears.get(i),
                                            noise.map(OptionalDouble::of).orElseGet(OptionalDouble::empty)))
                                    .toList(),
                            start)
                    .measure(
                            one.orElse(1),
                            one.orElse(calls),
                            keep.map(folder -> new KeptCalls(
                                    folder, desk.dialogue(), desk.wording(), Fingerprints.of(desk.checklists()))),
                            console.err()::println)
                    .forEach(console.out()::println);
        } catch (UnknownStepException | SpokenWords.VoiceSilentException | RecordUnavailableException e) {
            throw new CommandFailure(e);
        } finally {
            ears.forEach(Ear::close);
            callersOfEach.stream()
                    .flatMap(List::stream)
                    .forEach(caller -> caller.voice().close());
        }
    }

    private static void refuseFull(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> inside = Files.list(folder)) {
            if (inside.findAny().isPresent()) {
                throw new CommandFailure("--keep is an empty folder or one to be made, and '" + folder
                        + "' holds something: name another one.");
            }
        } catch (IOException e) {
            throw new CommandFailure("--keep is an empty folder or one to be made, and '" + folder
                    + "' is none that can be read: name another one.");
        }
    }

    private List<Caller> callers() {
        List<Caller> callers = new ArrayList<>();
        for (String name : voices) {
            Reader reader = ConstantName.find(Reader.class, name)
                    .orElseThrow(() -> new CommandFailure("--voices are of " + names() + ", not '" + name + "'."));
            callers.add(opened(reader)
                    .orElseThrow(() -> new CommandFailure("The voice '" + name
                            + "' of --voices cannot be had on this machine: install its program, or leave it out.")));
        }
        if (voices.isEmpty()) {
            for (Reader reader : Reader.values()) {
                opened(reader).ifPresent(callers::add);
            }
        }
        if (callers.isEmpty()) {
            throw new CommandFailure("None of the voices " + names()
                    + " can be had on this machine: install flite or espeak-ng, or install Readback again.");
        }
        return callers;
    }

    private static Optional<Caller> opened(Reader reader) {
        try {
            return Optional.of(
                    new Caller(ConstantName.of(reader), reader.acquaintance(), reader.open(VoiceOptions.home())));
        } catch (VoiceFailedException e) {
            return Optional.empty();
        }
    }

    private static String names() {
        return Stream.of(Reader.values()).map(ConstantName::of).collect(Collectors.joining(", "));
    }
}
