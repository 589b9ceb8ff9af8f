package readback.assistant.command;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Listening;
import readback.assistant.ear.Utterance;
import readback.assistant.microphone.MicrophoneReader;
import readback.assistant.session.PlainLines;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;

/** Where the answers of a drill come from. */
interface DrillAnswers {

    /**
     * An answer.
     *
     * @param seconds from the end of the question
     */
    record Heard(List<Hypothesis> hypotheses, double seconds) {}

    /** Waits for the next answer; empty where there will be none any more. */
    Optional<Heard> next(Expectation expectation);

    /** One answer a line. */
    record Typed(Console console, PlainLines lines) implements DrillAnswers {
        @Override
        public Optional<Heard> next(Expectation expectation) {
            long asked = System.nanoTime();
            try {
                String line = typed();
                while (line != null && line.isBlank()) {
                    line = typed();
                }
                return Optional.ofNullable(line)
                        .map(words ->
                                new Heard(List.of(Hypothesis.typed(words.strip())), (System.nanoTime() - asked) / 1e9));
            } catch (IOException e) {
                throw new CommandFailure("Standard input could not be read: " + e.getMessage() + ".");
            }
        }

        private @Nullable String typed() throws IOException {
            lines.prompt();
            String line = console.in().readLine();
            if (line != null) {
                lines.entered();
            }
            return line;
        }
    }

    /** Speech, and lines typed beside it. What is said while a question is spoken is not heard. */
    final class Spoken implements DrillAnswers, MicrophoneReader.Listener {

        /** About ten seconds of sound; where the ear is slower than that something else is wrong. */
        private static final int MOST_CHUNKS = 1000;

        /** One piece of input. */
        private static final class Input {
            private final short[] sound;
            private final Optional<String> line;
            private final boolean over;

            private Input(short[] sound, Optional<String> line, boolean over) {
                this.sound = sound;
                this.line = line;
                this.over = over;
            }

            static Input heard(short[] sound) {
                return new Input(sound, Optional.empty(), false);
            }

            static Input typed(String line) {
                return new Input(new short[0], Optional.of(line), false);
            }

            /** Nothing will come any more. */
            static Input end() {
                return new Input(new short[0], Optional.of(""), true);
            }
        }

        private final Ear ear;
        private final Grammar grammar;
        private final Console console;
        private final PlainLines lines;
        private final BlockingQueue<Input> inputs = new LinkedBlockingQueue<>(MOST_CHUNKS);

        Spoken(Ear ear, Grammar grammar, Console console, PlainLines lines) {
            this.ear = ear;
            this.grammar = grammar;
            this.console = console;
            this.lines = lines;
        }

        /**
         * Begins to take typed lines, on a thread of their own.
         *
         * @param speech whether answers come without them too
         */
        void readLines(BooleanSupplier speech) {
            Thread typing = new Thread(
                    () -> {
                        try {
                            for (String line = console.in().readLine();
                                    line != null;
                                    line = console.in().readLine()) {
                                lines.entered();
                                inputs.put(Input.typed(line.strip()));
                            }
                            if (!speech.getAsBoolean()) {
                                inputs.put(Input.end());
                            }
                        } catch (IOException e) {
                            console.complain(
                                    "typed lines cannot be read any more (" + e.getMessage() + "); speech goes on.");
                        } catch (InterruptedException e) {
                            Thread.currentThread().interrupt();
                        }
                    },
                    "typed-lines");
            typing.setDaemon(true);
            typing.start();
        }

        @Override
        public Optional<Heard> next(Expectation expectation) {
            long asked = System.nanoTime();
            lines.prompt();
            inputs.removeIf(input -> input.line.isEmpty());
            try (Listening listening = ear.listen(grammar.vocabulary(expectation))) {
                while (true) {
                    Input input = inputs.take();
                    if (input.over) {
                        return Optional.empty();
                    }
                    if (input.line.filter(line -> !line.isBlank()).isPresent()) {
                        return input.line.map(
                                line -> new Heard(List.of(Hypothesis.typed(line)), (System.nanoTime() - asked) / 1e9));
                    }
                    Optional<Utterance> utterance = listening.hear(input.sound).filter(heard -> !heard.onlyUnknown());
                    if (utterance.isPresent()) {
                        lines.line("screen.plain.technician", utterance.get().words());
                        return utterance.map(heard -> new Heard(heard.alternatives(), heard.startSeconds()));
                    }
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return Optional.empty();
            }
        }

        @Override
        public void sound(short[] chunk) {
            // a full queue means that a question is being spoken: what comes then is not wanted
            if (!inputs.offer(Input.heard(chunk))) {
                inputs.removeIf(input -> input.line.isEmpty());
            }
        }

        @Override
        public void found(String device) {
            console.out().println("Microphone: " + device);
        }

        @Override
        public void lost(String why) {
            console.complain(why + " Answers can be typed.");
        }

        @Override
        public void overrun(long count) {
            console.complain("some sound was lost: this machine is too busy.");
        }
    }
}
