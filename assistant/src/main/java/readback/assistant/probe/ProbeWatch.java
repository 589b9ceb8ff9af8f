package readback.assistant.probe;

import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.ProbeReport;
import readback.assistant.dialogue.ProbeValue;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;

/**
 * Watches the probes of a mapping: keeps their connections, converts what they give, once, and tells what changed in a
 * way that matters: a value stands still, moves again, is missing. Owned by the session's thread; the connections have
 * threads of their own.
 */
public final class ProbeWatch implements ProbeFeed {

    /** A steady value that moved by less than this since it was told is not told again: half a °F, in kelvins. */
    private static final double RETOLD_KELVINS = Unit.FAHRENHEIT_DEGREES.toBase(0.5);

    /** The same for a pressure: half a psi, in pascals. */
    private static final double RETOLD_PASCALS = Unit.PSIG.toBase(0.5);

    /** More values than this wait only where nobody asks for them: the oldest go. */
    private static final int MOST_WAITING = 10_000;

    /** A wire with the channels on it. */
    private record Connection(LinkThread thread, List<Channel> channels) {}

    private record Arrived(Channel channel, ProbeSample sample) {}

    private final LongSupplier nanoTime;
    private final List<Connection> connections = new ArrayList<>();
    private final BlockingQueue<Arrived> arrived = new ArrayBlockingQueue<>(MOST_WAITING);
    private final Map<Channel, Stillness> stillness = new LinkedHashMap<>();
    private final Map<Channel, ProbeReport> told = new LinkedHashMap<>();
    private final long begun;
    private List<ProbeReport> live = List.of();

    /**
     * Begins to watch.
     *
     * @param standardInput what the wire of that name reads
     */
    public static ProbeWatch of(ProbeMapping mapping, InputStream standardInput) {
        ProbeWatch watch = new ProbeWatch(mapping, System::nanoTime);
        watch.connect(mapping, standardInput);
        return watch;
    }

    ProbeWatch(ProbeMapping mapping, LongSupplier nanoTime) {
        this.nanoTime = nanoTime;
        this.begun = nanoTime.getAsLong();
        mapping.channels()
                .forEach(channel ->
                        stillness.put(channel, new Stillness(channel.probe().dimension())));
    }

    private void connect(ProbeMapping mapping, InputStream standardInput) {
        Map<Wire, List<Channel>> wires = mapping.channels().stream()
                .collect(Collectors.groupingBy(Channel::wire, LinkedHashMap::new, Collectors.toList()));
        wires.forEach((wire, channels) -> {
            LinkThread thread = thread(wire, channels, standardInput);
            connections.add(new Connection(thread, channels));
            thread.start();
        });
    }

    private LinkThread thread(Wire wire, List<Channel> channels, InputStream standardInput) {
        if (channels.get(0).place() instanceof Place.Registers) {
            return LinkThread.lasting(new ModbusLink(wire, channels, this::arrived, nanoTime), wire.name());
        }
        Map<String, Channel> named = new LinkedHashMap<>();
        channels.forEach(channel -> named.put(((Place.Named) channel.place()).name(), channel));
        SenmlLink link = new SenmlLink(
                LineSources.of(wire, standardInput),
                named,
                this::arrived,
                nanoTime,
                () -> System.currentTimeMillis() * 1e-3);
        return wire.lent() ? LinkThread.once(link, wire.name()) : LinkThread.lasting(link, wire.name());
    }

    /** Takes a value; any thread. */
    void arrived(Channel channel, ProbeSample sample) {
        Arrived value = new Arrived(channel, sample);
        while (!arrived.offer(value)) {
            arrived.poll();
        }
    }

    @Override
    public Optional<Event.Measured> poll(Instant now, AbsolutePressure air, UnitSetting units) {
        List<Arrived> values = new ArrayList<>();
        arrived.drainTo(values);
        values.forEach(value -> stillness(value.channel()).take(value.sample()));
        long nanos = nanoTime.getAsLong();
        List<ProbeReport> all = new ArrayList<>();
        List<ProbeReport> news = new ArrayList<>();
        stillness.forEach((channel, still) -> quality(channel, still, nanos).ifPresent(quality -> {
            ProbeReport report = new ProbeReport(
                    channel.probe(),
                    quality,
                    still.latest().flatMap(sample -> value(channel, sample, now, air, units)));
            all.add(report);
            if (isNews(channel, report)) {
                told.put(channel, report);
                news.add(report);
            }
        }));
        live = List.copyOf(all);
        return news.isEmpty() ? Optional.empty() : Optional.of(new Event.Measured(now, news));
    }

    private Stillness stillness(Channel channel) {
        Stillness still = stillness.get(channel);
        if (still == null) {
            throw new IllegalArgumentException("no channel of this mapping: " + channel);
        }
        return still;
    }

    private Optional<ProbeReport.Quality> quality(Channel channel, Stillness still, long nanos) {
        LinkThread.Standing standing = connections.stream()
                .filter(connection -> connection.channels().contains(channel))
                .map(connection -> connection.thread().standing())
                .findFirst()
                .orElse(LinkThread.Standing.OPEN);
        if (standing == LinkThread.Standing.LOST) {
            still.broken();
            return Optional.of(ProbeReport.Quality.LOST);
        }
        return still.quality(nanos)
                .or(() -> Optional.of(ProbeReport.Quality.STALE)
                        .filter(any -> standing == LinkThread.Standing.OPEN && nanos - begun > Stillness.STALE_NANOS));
    }

    /** The value in units of the session: what an instrument counts from a vacuum is counted from the air around. */
    private Optional<ProbeValue> value(
            Channel channel, ProbeSample sample, Instant now, AbsolutePressure air, UnitSetting units) {
        boolean temperature = channel.probe().dimension() == Dimension.TEMPERATURE;
        Unit unit = temperature ? units.temperature() : units.pressure();
        double base = channel.absolute() ? sample.base() - air.pascals() : sample.base();
        double value = unit.fromBase(base);
        if (!Double.isFinite(value)) {
            return Optional.empty();
        }
        return Optional.of(new ProbeValue(
                BigDecimal.valueOf(value).setScale(decimals(unit), RoundingMode.HALF_UP),
                unit,
                sample.raw(),
                now.minusNanos(nanoTime.getAsLong() - sample.nanoTime())));
    }

    /** So that the last decimal is no coarser than instruments are. */
    private static int decimals(Unit unit) {
        return switch (unit) {
            case BAR_GAUGE, KILOGRAM_FORCE_PER_SQUARE_CENTIMETRE_GAUGE -> 2;
            case MEGAPASCAL_GAUGE -> 3;
            case KILOPASCAL_GAUGE -> 0;
            default -> 1;
        };
    }

    private boolean isNews(Channel channel, ProbeReport report) {
        ProbeReport before = told.get(channel);
        if (before == null || before.quality() != report.quality()) {
            return true;
        }
        return report.quality() == ProbeReport.Quality.STEADY && apart(before, report);
    }

    private static boolean apart(ProbeReport before, ProbeReport now) {
        double limit = now.probe().dimension() == Dimension.TEMPERATURE ? RETOLD_KELVINS : RETOLD_PASCALS;
        return Math.abs(base(before) - base(now)) >= limit;
    }

    private static double base(ProbeReport report) {
        return report.value()
                .map(value -> value.unit().toBase(value.value().doubleValue()))
                .orElse(Double.NaN);
    }

    @Override
    public List<ProbeReport> live() {
        return live;
    }

    /** Why connections were lost, in sentences; none where none was. */
    public List<String> troubles() {
        return connections.stream()
                .map(connection -> connection.thread().trouble())
                .filter(trouble -> !trouble.isEmpty())
                .toList();
    }

    @Override
    public void close() {
        connections.forEach(connection -> connection.thread().close());
    }
}
