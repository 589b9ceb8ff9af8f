package readback.calc.measurement;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * The readings taken so far, at most one for each quantity, and the quantities that the technician said cannot be
 * known. Immutable.
 */
public final class Readings {

    private static final Readings NONE = new Readings(new EnumMap<>(Quantity.class), EnumSet.noneOf(Quantity.class));

    private final EnumMap<Quantity, Reading> byQuantity;
    private final EnumSet<Quantity> unknown;
    /** The same, ready to be handed out: a judgement asks for each reading many times. */
    private final EnumMap<Quantity, Optional<Reading>> found = new EnumMap<>(Quantity.class);

    private Readings(EnumMap<Quantity, Reading> byQuantity, EnumSet<Quantity> unknown) {
        this.byQuantity = byQuantity;
        this.unknown = unknown;
        byQuantity.forEach((quantity, reading) -> found.put(quantity, Optional.of(reading)));
    }

    public static Readings none() {
        return NONE;
    }

    /** A later reading of the same quantity replaces an earlier one. */
    public static Readings of(Reading... readings) {
        EnumMap<Quantity, Reading> map = new EnumMap<>(Quantity.class);
        for (Reading reading : readings) {
            map.put(reading.quantity(), reading);
        }
        return new Readings(map, EnumSet.noneOf(Quantity.class));
    }

    /** These readings with one more, or with one replaced; the quantity is then known. */
    public Readings with(Reading reading) {
        EnumMap<Quantity, Reading> map = new EnumMap<>(byQuantity);
        map.put(reading.quantity(), reading);
        EnumSet<Quantity> still = EnumSet.copyOf(unknown);
        still.remove(reading.quantity());
        return new Readings(map, still);
    }

    /** These readings as if the quantity had never been mentioned. */
    public Readings without(Quantity quantity) {
        EnumMap<Quantity, Reading> map = new EnumMap<>(byQuantity);
        map.remove(quantity);
        EnumSet<Quantity> still = EnumSet.copyOf(unknown);
        still.remove(quantity);
        return new Readings(map, still);
    }

    /** These readings less several quantities. */
    public Readings without(Collection<Quantity> quantities) {
        if (quantities.isEmpty()) {
            return this;
        }
        EnumMap<Quantity, Reading> map = new EnumMap<>(byQuantity);
        map.keySet().removeAll(quantities);
        EnumSet<Quantity> still = EnumSet.copyOf(unknown);
        still.removeAll(quantities);
        return new Readings(map, still);
    }

    /** These readings, with the technician's word that the quantity cannot be known: no plate, no instrument. */
    public Readings withUnknown(Quantity quantity) {
        Readings left = without(quantity);
        EnumSet<Quantity> more = EnumSet.copyOf(left.unknown);
        more.add(quantity);
        return new Readings(left.byQuantity, more);
    }

    public boolean has(Quantity quantity) {
        return byQuantity.containsKey(quantity);
    }

    /** Whether the technician said that the quantity cannot be known. */
    public boolean cannotBeKnown(Quantity quantity) {
        return unknown.contains(quantity);
    }

    public Optional<Reading> find(Quantity quantity) {
        return found.getOrDefault(quantity, Optional.empty());
    }

    /** The temperature read for the quantity. */
    public Optional<Temperature> temperature(Quantity quantity) {
        return find(quantity).map(Reading::temperature);
    }

    /** The temperature difference read for the quantity. */
    public Optional<TemperatureDifference> difference(Quantity quantity) {
        return find(quantity).map(Reading::temperatureDifference);
    }

    /** The gauge pressure read for the quantity. */
    public Optional<GaugePressure> gaugePressure(Quantity quantity) {
        return find(quantity).map(Reading::gaugePressure);
    }

    /**
     * The pressure above a perfect vacuum read for the quantity, from a gauge in the given air or from a vacuum gauge.
     */
    public Optional<AbsolutePressure> absolutePressure(Quantity quantity, AbsolutePressure atmosphere) {
        return find(quantity).map(reading -> switch (quantity.dimension()) {
            case GAUGE_PRESSURE -> reading.gaugePressure().absoluteIn(atmosphere);
            default -> reading.absolutePressure();
        });
    }

    /** The value in the SI base unit of the quantity's dimension: masses, lengths, durations, flows. */
    public OptionalDouble base(Quantity quantity) {
        Reading reading = byQuantity.get(quantity);
        return reading == null ? OptionalDouble.empty() : OptionalDouble.of(reading.base());
    }

    /** Every reading, in the order of the quantities. */
    public Map<Quantity, Reading> asMap() {
        return Collections.unmodifiableMap(byQuantity);
    }

    /** What cannot be known, in the order of the quantities. */
    public Set<Quantity> unknown() {
        return Collections.unmodifiableSet(unknown);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Readings that && byQuantity.equals(that.byQuantity) && unknown.equals(that.unknown);
    }

    @Override
    public int hashCode() {
        return 31 * byQuantity.hashCode() + unknown.hashCode();
    }

    @Override
    public String toString() {
        return byQuantity.values() + (unknown.isEmpty() ? "" : ", unknown " + unknown);
    }
}
