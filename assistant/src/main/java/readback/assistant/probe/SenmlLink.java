package readback.assistant.probe;

import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import java.util.function.DoubleSupplier;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/** Lines of SenML, one pack a line. A line that is no pack, or was cut off, says nothing. */
final class SenmlLink implements Link {

    /** Longer lines are passed over. */
    private static final int LONGEST = 65_536;

    private final LineSource source;
    private final Map<String, Channel> channels;
    private final BiConsumer<Channel, ProbeSample> samples;
    private final LongSupplier nanoTime;
    private final DoubleSupplier epochSeconds;
    private final ByteArrayOutputStream line = new ByteArrayOutputStream();
    private boolean tooLong;
    private volatile @Nullable InputStream in;

    /** @param channels by the names of their records */
    SenmlLink(
            LineSource source,
            Map<String, Channel> channels,
            BiConsumer<Channel, ProbeSample> samples,
            LongSupplier nanoTime,
            DoubleSupplier epochSeconds) {
        this.source = source;
        this.channels = Map.copyOf(channels);
        this.samples = samples;
        this.nanoTime = nanoTime;
        this.epochSeconds = epochSeconds;
    }

    @Override
    public void open() throws IOException {
        line.reset();
        tooLong = false;
        in = source.open();
    }

    @Override
    public void next() throws IOException {
        InputStream open = in;
        int read = open == null ? -1 : open.read();
        if (read < 0) {
            throw new EOFException("what sends the values ended");
        }
        take(read);
    }

    /** Takes a byte; a line feed ends a line. */
    void take(int read) {
        if (read == '\n') {
            if (!tooLong) {
                pack(line.toString(StandardCharsets.UTF_8));
            }
            line.reset();
            tooLong = false;
        } else if (line.size() < LONGEST) {
            line.write(read);
        } else {
            tooLong = true;
        }
    }

    private void pack(String text) {
        List<SenmlPack.Item> items = SenmlPack.read(text).orElse(List.of());
        long now = nanoTime.getAsLong();
        for (SenmlPack.Item item : items) {
            Channel channel = channels.get(item.name());
            double age = item.age(epochSeconds.getAsDouble());
            // older than anything that could be offered; a wrong clock must not make the number wrap either
            if (channel != null && age < TimeUnit.NANOSECONDS.toSeconds(Stillness.STALE_NANOS)) {
                samples.accept(channel, sample(channel, item, now - (long) (age * 1e9)));
            }
        }
    }

    private static ProbeSample sample(Channel channel, SenmlPack.Item item, long at) {
        String number = item.value().toString();
        Optional<RawUnit> unit = item.unit().isPresent() ? item.unit().flatMap(RawUnit::registered) : channel.unit();
        Optional<RawUnit> fitting =
                unit.filter(each -> each.dimension() == channel.probe().dimension());
        return fitting.map(
                        each -> new ProbeSample(each.base(item.value().doubleValue()), channel.raw(number, each), at))
                .orElseGet(() -> new ProbeSample(
                        Double.NaN,
                        number + item.unit().map(named -> " " + named).orElse(""),
                        at));
    }

    @Override
    public void close() {
        source.close();
    }
}
