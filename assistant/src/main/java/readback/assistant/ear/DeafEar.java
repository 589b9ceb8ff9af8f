package readback.assistant.ear;

import java.util.Collection;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import readback.grammar.Vocabulary;

/**
 * In place of an ear where there is no recogniser for the machine: hears nothing, so that keys and touch do the work.
 */
public final class DeafEar implements Ear {

    @Override
    public String name() {
        return "none";
    }

    @Override
    public String place() {
        return "nowhere";
    }

    @Override
    public Listening listen(Vocabulary vocabulary) {
        return new Silence();
    }

    @Override
    public SortedSet<String> missing(Collection<String> words) {
        return new TreeSet<>(words);
    }

    @Override
    public void close() {}

    private static final class Silence implements Listening {
        private long samples;

        @Override
        public Optional<Utterance> hear(short[] chunk, short[] recorded) {
            samples += chunk.length;
            return Optional.empty();
        }

        @Override
        public Optional<Utterance> finish() {
            return Optional.empty();
        }

        @Override
        public String partial() {
            return "";
        }

        @Override
        public double seconds() {
            return (double) samples / RATE;
        }

        @Override
        public void close() {}
    }
}
