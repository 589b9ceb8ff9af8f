package readback.assistant.ear;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import readback.grammar.Hypothesis;
import readback.grammar.Vocabulary;

/**
 * An ear that hears loud and quiet only: each stretch of loud sound is taken for the next line of its script, and its
 * end is found a third of a second after it, as with the real one.
 */
public final class ScriptedEar implements Ear {
    private static final double LOUD = 1200;
    private static final int FRAME = RATE / 100;
    private static final int QUIET_FRAMES = 33;

    private final Deque<String> script;
    private final SortedSet<String> words;

    public ScriptedEar(List<String> script, Collection<String> words) {
        this.script = new ArrayDeque<>(script);
        this.words = new TreeSet<>(words);
    }

    @Override
    public String name() {
        return "script";
    }

    @Override
    public String place() {
        return "memory";
    }

    @Override
    public SortedSet<String> missing(Collection<String> asked) {
        SortedSet<String> missing = new TreeSet<>(asked);
        missing.removeAll(words);
        return missing;
    }

    @Override
    public Listening listen(Vocabulary vocabulary) {
        return new Scripted(vocabulary.phrases().isEmpty());
    }

    @Override
    public void close() {
        script.clear();
    }

    private final class Scripted implements Listening {
        private final boolean deaf;
        private final short[] frame = new short[FRAME];
        private int filled;
        private long frames;
        private long firstLoud = -1;
        private long lastLoud = -1;
        private Optional<Utterance> ready = Optional.empty();

        private Scripted(boolean deaf) {
            this.deaf = deaf;
        }

        @Override
        public Optional<Utterance> hear(short[] chunk, short[] recorded) {
            ready = Optional.empty();
            for (short sample : chunk) {
                frame[filled++] = sample;
                if (filled == FRAME) {
                    filled = 0;
                    frame();
                }
            }
            return ready;
        }

        private void frame() {
            double sum = 0;
            for (short sample : frame) {
                sum += (double) sample * sample;
            }
            frames++;
            if (Math.sqrt(sum / FRAME) > LOUD) {
                firstLoud = firstLoud < 0 ? frames - 1 : firstLoud;
                lastLoud = frames;
            } else if (firstLoud >= 0 && frames - lastLoud >= QUIET_FRAMES) {
                ready = finish();
            }
        }

        @Override
        public Optional<Utterance> finish() {
            if (firstLoud < 0) {
                return Optional.empty();
            }
            String next = script.poll();
            String said = deaf || next == null ? UNKNOWN : next;
            Utterance utterance = new Utterance(List.of(Hypothesis.typed(said)), firstLoud / 100.0, lastLoud / 100.0);
            firstLoud = -1;
            return Optional.of(utterance);
        }

        @Override
        public String partial() {
            String next = script.peek();
            return firstLoud < 0 || next == null ? "" : next;
        }

        @Override
        public double seconds() {
            return (frames * FRAME + filled) / (double) RATE;
        }

        @Override
        public void close() {
            firstLoud = -1;
        }
    }
}
