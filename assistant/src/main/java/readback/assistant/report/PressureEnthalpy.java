package readback.assistant.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import readback.assistant.dialogue.Assessment;
import readback.calc.fluid.FluidState;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;

/**
 * The measured states on the refrigerant's pressure-enthalpy plane, all from calc's equation of state.
 *
 * @param bubbleLine saturated liquid, from low to high pressure
 * @param dewLine saturated vapour, from low to high pressure
 * @param points what was measured, each a single-phase or saturated state
 * @param missing why a measured point has no place in the diagram: names of the readings
 */
record PressureEnthalpy(
        Refrigerant refrigerant,
        List<FluidState> bubbleLine,
        List<FluidState> dewLine,
        List<Point> points,
        List<String> missing) {

    private static final int STEPS = 60;

    /** Share of the lowest measured pressure at which the diagram begins. */
    private static final double BELOW = 0.55;

    /** Where a point lies in the circuit. */
    enum Place {
        DEW_AT_SUCTION,
        SUCTION_LINE,
        DISCHARGE_LINE,
        BUBBLE_AT_LIQUID,
        LIQUID_LINE
    }

    /** A state with its place. */
    record Point(Place place, FluidState state) {}

    /** The diagram of what was measured; empty when no pressure was read or none lies on the saturation curves. */
    static Optional<PressureEnthalpy> of(Assessment assessment) {
        Optional<Refrigerant> refrigerant = assessment.refrigerant();
        if (refrigerant.isEmpty()) {
            return Optional.empty();
        }
        Gathering gathering = new Gathering(refrigerant.get());
        Optional<AbsolutePressure> suction = pressure(assessment, Quantity.SUCTION_PRESSURE);
        Optional<AbsolutePressure> liquid = pressure(assessment, Quantity.LIQUID_PRESSURE);
        suction.ifPresent(at -> {
            gathering.saturated(Place.DEW_AT_SUCTION, at);
            assessment
                    .readings()
                    .temperature(Quantity.SUCTION_LINE_TEMPERATURE)
                    .ifPresent(line -> gathering.vapour(Place.SUCTION_LINE, line, at));
        });
        liquid.ifPresent(at -> {
            gathering.saturated(Place.BUBBLE_AT_LIQUID, at);
            assessment
                    .readings()
                    .temperature(Quantity.LIQUID_LINE_TEMPERATURE)
                    .ifPresent(line -> gathering.liquid(Place.LIQUID_LINE, line, at));
            assessment
                    .readings()
                    .temperature(Quantity.DISCHARGE_LINE_TEMPERATURE)
                    .ifPresent(line -> gathering.vapour(Place.DISCHARGE_LINE, line, at));
        });
        return gathering.diagram();
    }

    private static Optional<AbsolutePressure> pressure(Assessment assessment, Quantity quantity) {
        try {
            return assessment.readings().absolutePressure(quantity, assessment.air());
        } catch (OutOfRangeException e) {
            return Optional.empty();
        }
    }

    Optional<FluidState> at(Place place) {
        return points.stream()
                .filter(point -> point.place() == place)
                .map(Point::state)
                .findFirst();
    }

    /** Points while they are looked up. */
    private static final class Gathering {
        private final Refrigerant refrigerant;
        private final List<Point> points = new ArrayList<>();
        private final List<String> missing = new ArrayList<>();

        Gathering(Refrigerant refrigerant) {
            this.refrigerant = refrigerant;
        }

        void saturated(Place place, AbsolutePressure pressure) {
            attempt(
                    place,
                    () -> place == Place.DEW_AT_SUCTION
                            ? refrigerant.saturatedVapour(refrigerant.dewTemperature(pressure))
                            : refrigerant.saturatedLiquid(refrigerant.bubbleTemperature(pressure)));
        }

        void vapour(Place place, Temperature line, AbsolutePressure pressure) {
            attempt(place, () -> refrigerant.superheatedVapour(line, pressure));
        }

        void liquid(Place place, Temperature line, AbsolutePressure pressure) {
            attempt(place, () -> refrigerant.subcooledLiquid(line, pressure));
        }

        private void attempt(Place place, Supplier<FluidState> state) {
            try {
                points.add(new Point(place, state.get()));
            } catch (OutOfRangeException | ArithmeticException e) {
                missing.add(place.name());
            }
        }

        Optional<PressureEnthalpy> diagram() {
            if (points.isEmpty()) {
                return Optional.empty();
            }
            double lowest = points.stream()
                    .mapToDouble(point -> point.state().pressure().pascals())
                    .min()
                    .orElseThrow();
            AbsolutePressure floor = AbsolutePressure.pascals(Math.max(
                    BELOW * lowest, refrigerant.lowestPressure(Side.DEW).pascals()));
            return Optional.of(new PressureEnthalpy(
                    refrigerant, line(Side.BUBBLE, floor), line(Side.DEW, floor), points, missing));
        }

        private List<FluidState> line(Side side, AbsolutePressure floor) {
            double low = Math.max(
                    refrigerant.lowestTemperature().kelvin(),
                    refrigerant.saturationTemperature(side, floor).kelvin());
            double high = refrigerant.highestTemperature().kelvin();
            List<FluidState> states = new ArrayList<>();
            for (int i = 0; i <= STEPS; i++) {
                // Closer together near the top, where the line bends.
                double share = 1 - Math.pow(1 - (double) i / STEPS, 2);
                Temperature at = Temperature.kelvin(low + share * (high - low));
                states.add(side == Side.DEW ? refrigerant.saturatedVapour(at) : refrigerant.saturatedLiquid(at));
            }
            return states;
        }
    }
}
