package readback.assistant.echo;

import java.util.Arrays;

/** Cuts sound into the pieces that an {@link EchoCanceller} takes. One thread. */
final class EchoFilter implements AutoCloseable {

    private final EchoCanceller canceller;
    private short[] heard = {};
    private short[] played = {};

    EchoFilter(EchoCanceller canceller) {
        this.canceller = canceller;
    }

    /** As much as could be cleaned of what was given so far, up to 10 ms less than that. */
    short[] clean(short[] nextHeard, short[] nextPlayed) {
        heard = joined(heard, nextHeard);
        played = joined(played, nextPlayed);
        int frames = heard.length / EchoCanceller.FRAME;
        short[] clean = new short[frames * EchoCanceller.FRAME];
        for (int at = 0; at < clean.length; at += EchoCanceller.FRAME) {
            short[] left = canceller.cancel(
                    Arrays.copyOfRange(heard, at, at + EchoCanceller.FRAME),
                    Arrays.copyOfRange(played, at, at + EchoCanceller.FRAME));
            System.arraycopy(left, 0, clean, at, EchoCanceller.FRAME);
        }
        heard = Arrays.copyOfRange(heard, clean.length, heard.length);
        played = Arrays.copyOfRange(played, clean.length, played.length);
        return clean;
    }

    private static short[] joined(short[] first, short[] second) {
        short[] both = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
    }

    @Override
    public void close() {
        canceller.close();
    }
}
