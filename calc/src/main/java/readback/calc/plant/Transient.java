package readback.calc.plant;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Temperature;

/**
 * A unit on its way to where it settles: each value approaches its steady value as a first-order lag, so that after
 * fifteen minutes of running the readings are good. Immutable; time is what {@link #after} is told.
 *
 * <p>The lags are from memory: pressures 90 s, pipes 180 s, air 240 s, all of them 300 s after refrigerant was moved.
 * Real units start with more drama (liquid in the compressor, a starved coil); none of it is here, and a unit that its
 * switch would stop never comes out of rest.
 */
public final class Transient {

    private static final double PRESSURE_LAG = 90;
    private static final double PIPE_LAG = 180;
    private static final double AIR_LAG = 240;
    private static final double CHARGE_LAG = 300;

    /** The motor follows the pressures within this. s */
    private static final double MOTOR_LAG = 5;

    /** How long refrigerant takes from the cylinder into circulation. */
    private static final Duration CHARGE_DELAY = Duration.ofSeconds(60);

    /** Period of a hunting valve; common practice, no source. s */
    private static final double HUNTING_PERIOD = 120;

    /** By how much of the superheat's swing the evaporating temperature swings the other way: 8 psi with 6 °F. Ours. */
    private static final double HUNTING_SATURATION = 0.6;

    private final Installation installation;
    private final Filling filling;
    private final Duration elapsed;
    private final OperatingPoint steady;
    private final Measurands lagging;

    /** What stays the same while time goes on. */
    private record Installation(AirConditioner unit, Weather weather, FaultSet faults, Measurands rest) {

        Installation with(FaultSet others) {
            return new Installation(unit, weather, others, rest);
        }

        OperatingPoint steady(Mass added) {
            double share = (1 - faults.size(PlantFault.UNDERCHARGE)) * (1 + faults.size(PlantFault.OVERCHARGE))
                    + added.kilograms() / unit.plate().charge().kilograms();
            FaultSet charged = faults.with(PlantFault.UNDERCHARGE, size(PlantFault.UNDERCHARGE, 1 - share))
                    .with(PlantFault.OVERCHARGE, size(PlantFault.OVERCHARGE, share - 1));
            return OperatingPoint.solve(unit, weather, charged);
        }

        private static double size(PlantFault fault, double size) {
            return Math.max(0, Math.min(fault.largest(), size));
        }
    }

    /** Refrigerant that was moved: what has arrived in circulation, and what is on its way. */
    private record Filling(Mass arrived, List<Arrival> underWay, boolean changed) {

        static final Filling UNCHANGED = new Filling(Mass.NONE, List.of(), false);

        Filling with(Arrival next) {
            List<Arrival> more = new ArrayList<>(underWay);
            more.add(next);
            return new Filling(arrived, List.copyOf(more), changed);
        }

        Filling afterFirst() {
            return new Filling(arrived.plus(underWay.get(0).mass()), underWay.subList(1, underWay.size()), true);
        }
    }

    private record Arrival(Duration at, Mass mass) {}

    private Transient(
            Installation installation, Filling filling, Duration elapsed, OperatingPoint steady, Measurands lagging) {
        this.installation = installation;
        this.filling = filling;
        this.elapsed = elapsed;
        this.steady = steady;
        this.lagging = lagging;
    }

    /**
     * The moment at which the compressor starts, after a rest that has let both pressures come to saturation at the
     * temperature of the colder side.
     *
     * @throws IllegalArgumentException for a fault that the unit cannot have
     */
    public static Transient started(AirConditioner unit, Weather weather, FaultSet faults) {
        Temperature outdoor = weather.outdoor();
        Temperature indoor = weather.returnAir().dryBulb();
        AbsolutePressure pressure =
                unit.plate().refrigerant().dewPressure(outdoor.compareTo(indoor) < 0 ? outdoor : indoor);
        Measurands rest = new Measurands(pressure, pressure, outdoor, outdoor, outdoor, indoor, 0);
        Installation installation = new Installation(unit, weather, faults, rest);
        return new Transient(installation, Filling.UNCHANGED, Duration.ZERO, installation.steady(Mass.NONE), rest);
    }

    /**
     * The same unit so much later.
     *
     * @throws IllegalArgumentException for a time that goes backwards
     */
    public Transient after(Duration time) {
        if (time.isNegative()) {
            throw new IllegalArgumentException("time goes forward only: " + time);
        }
        Duration end = elapsed.plus(time);
        Transient now = this;
        while (!now.filling.underWay().isEmpty()
                && now.filling.underWay().get(0).at().compareTo(end) <= 0) {
            now = now.relaxed(now.filling.underWay().get(0).at()).arrived();
        }
        return now.relaxed(end);
    }

    /**
     * The unit when refrigerant is added, or taken out with a negative mass. It works after a minute. What leads beyond
     * the charges that {@link PlantFault} admits, half to one and a half of the nameplate, works only so far.
     */
    public Transient moved(Mass refrigerant) {
        return new Transient(
                installation,
                filling.with(new Arrival(elapsed.plus(CHARGE_DELAY), refrigerant)),
                elapsed,
                steady,
                lagging);
    }

    /** The unit when a fault has been put right; it settles as it does after refrigerant was moved. */
    public Transient without(PlantFault fault) {
        Installation mended = installation.with(installation.faults().with(fault, 0));
        Filling then = new Filling(filling.arrived(), filling.underWay(), true);
        return new Transient(mended, then, elapsed, mended.steady(filling.arrived()), lagging);
    }

    /** Since the start of the compressor. */
    public Duration elapsed() {
        return elapsed;
    }

    /** Where the unit would settle with what has arrived so far. */
    public OperatingPoint steady() {
        return steady;
    }

    /** The true values at this moment. */
    public Measurands now() {
        double swing = installation.faults().disturbance().hunting;
        if (swing == 0 || steady.running().isEmpty()) {
            return lagging;
        }
        double wave = swing * Math.sin(2 * Math.PI * seconds(elapsed) / HUNTING_PERIOD);
        Refrigerant refrigerant = installation.unit().plate().refrigerant();
        double saturation =
                refrigerant.dewTemperature(lagging.suctionPressure()).kelvin();
        double superheat = Math.max(0, lagging.suctionLine().kelvin() - saturation + wave);
        Temperature swung = Temperature.kelvin(saturation - HUNTING_SATURATION * wave);
        return new Measurands(
                refrigerant.dewPressure(swung),
                lagging.liquidPressure(),
                Temperature.kelvin(swung.kelvin() + superheat),
                lagging.liquidLine(),
                lagging.dischargeLine(),
                lagging.supplyAir(),
                lagging.amperes());
    }

    private Transient arrived() {
        Filling then = filling.afterFirst();
        return new Transient(installation, then, elapsed, installation.steady(then.arrived()), lagging);
    }

    private Transient relaxed(Duration end) {
        Measurands aim = steady.running().map(OperatingPoint.Running::at).orElse(installation.rest());
        double time = seconds(end.minus(elapsed));
        Measurands then = new Measurands(
                AbsolutePressure.pascals(lag(
                        lagging.suctionPressure().pascals(),
                        aim.suctionPressure().pascals(),
                        time,
                        PRESSURE_LAG)),
                AbsolutePressure.pascals(lag(
                        lagging.liquidPressure().pascals(), aim.liquidPressure().pascals(), time, PRESSURE_LAG)),
                lag(lagging.suctionLine(), aim.suctionLine(), time, PIPE_LAG),
                lag(lagging.liquidLine(), aim.liquidLine(), time, PIPE_LAG),
                lag(lagging.dischargeLine(), aim.dischargeLine(), time, PIPE_LAG),
                lag(lagging.supplyAir(), aim.supplyAir(), time, AIR_LAG),
                lag(lagging.amperes(), aim.amperes(), time, MOTOR_LAG));
        return new Transient(installation, filling, end, steady, then);
    }

    private Temperature lag(Temperature from, Temperature to, double time, double usual) {
        return Temperature.kelvin(lag(from.kelvin(), to.kelvin(), time, usual));
    }

    private double lag(double from, double to, double time, double usual) {
        double lag = filling.changed() ? Math.max(usual, CHARGE_LAG) : usual;
        return to + (from - to) * Math.exp(-time / lag);
    }

    private static double seconds(Duration time) {
        return time.toNanos() / 1e9;
    }
}
