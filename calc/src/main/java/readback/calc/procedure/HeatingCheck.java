package readback.calc.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * Whether a heat pump heats as it should. Its verdict is soft: up to a tenth of the charge missing costs 4 % of the
 * heating capacity at 47 °F and under 1 % at 17 °F (NIST fit of fault impacts, W. V. Payne and others), which no
 * technician can read. It never says that refrigerant is to be moved.
 */
public final class HeatingCheck {

    /** Outdoor and indoor temperatures at which anything is said, °F. Ours; makers' tables reach further. */
    private static final Limits OUTDOOR = new Limits(20, 60);

    private static final Limits INDOOR = new Limits(65, 75);

    /** Rise of the air over the indoor coil by the outdoor temperature, °F: one maker's table of a three-ton unit. */
    private static final double[][] USUAL_RISE = {{-10, 7.5}, {17, 16}, {47, 25.6}, {65, 32}};

    /** So much less or more than that is suspicious: another airflow makes as much. Ours. */
    private static final Limits RISE_SHARE = new Limits(0.7, 1.4);

    /** Discharge line over outdoor air, °F. Common practice, no source. */
    private static final Limits DISCHARGE_OVER_OUTDOOR = new Limits(80, 130);

    /** Superheat at the true suction port of an expansion valve, °F. Common practice, no source. */
    private static final Limits SUPERHEAT = new Limits(5, 20);

    /** Outdoor air over the boiling refrigerant, °F. Common practice, no source. */
    private static final Limits BOILING_BELOW_OUTDOOR = new Limits(5, 30);

    /** Fewer looks than this tell nothing. Ours. */
    private static final int LEAST_LOOKS = 2;

    private HeatingCheck() {}

    /** What the readings together mean. */
    public enum Outcome {
        /** Nothing stands out; a charge that is a tenth too small would not either. */
        PLAUSIBLE,
        /** Something stands out. */
        SUSPICIOUS,
        /** Too little was read, or the day does not suit. */
        CANNOT_TELL
    }

    /** What stands out. */
    public enum Sign {
        /** The air is warmed too little: too little capacity, or much air. */
        RISE_SMALL,
        /** The air is warmed too much: too little air over the indoor coil. */
        RISE_LARGE,
        /** Liquid reaches the compressor, or too much refrigerant. */
        DISCHARGE_COOL,
        /** Too little refrigerant, or a restriction. */
        DISCHARGE_HOT,
        /** Liquid may reach the compressor. */
        SUPERHEAT_LOW,
        /** The outdoor coil is starved. */
        SUPERHEAT_HIGH,
        /** The outdoor coil is hardly cooler than the air: the reversing valve or the compressor leaks. */
        BOILING_WARM,
        /** The outdoor coil is starved or frosted. */
        BOILING_COLD
    }

    /** Why nothing can be told. */
    public enum Obstacle {
        OUTDOOR_TOO_COLD,
        /** Above this the cooling check tells more. */
        OUTDOOR_TOO_WARM,
        INDOOR_UNUSUAL,
        TOO_LITTLE_READ
    }

    /**
     * What was read; absent is not read.
     *
     * @param boiling saturation temperature at the true suction port, the dew point
     * @param suctionLine temperature at that port
     */
    public record Readings(
            Temperature outdoor,
            Temperature indoor,
            Optional<Temperature> supply,
            Optional<Temperature> dischargeLine,
            Optional<Temperature> boiling,
            Optional<Temperature> suctionLine) {}

    /**
     * What came of it.
     *
     * @param signs what stands out, the likeliest to matter first; none where nothing can be told
     * @param obstacle present where nothing can be told
     * @param rise of the air over the indoor coil
     * @param usualRise at this outdoor temperature
     */
    public record Result(
            Outcome outcome,
            List<Sign> signs,
            Optional<Obstacle> obstacle,
            Optional<TemperatureDifference> rise,
            TemperatureDifference usualRise,
            Optional<TemperatureDifference> dischargeOverOutdoor,
            Optional<TemperatureDifference> superheat,
            Optional<TemperatureDifference> boilingBelowOutdoor) {}

    /** Judges a system that has heated for fifteen minutes, without frost and without strip heat. */
    public static Result judge(Readings read) {
        Optional<TemperatureDifference> rise = read.supply().map(supply -> supply.minus(read.indoor()));
        Optional<TemperatureDifference> discharge = read.dischargeLine().map(line -> line.minus(read.outdoor()));
        Optional<TemperatureDifference> superheat =
                read.boiling().flatMap(boiling -> read.suctionLine().map(line -> line.minus(boiling)));
        Optional<TemperatureDifference> below =
                read.boiling().map(boiling -> read.outdoor().minus(boiling));
        double usual = usualRise(read.outdoor().fahrenheit());

        List<Sign> signs = new ArrayList<>();
        superheat.ifPresent(
                value -> SUPERHEAT.sign(value.fahrenheit(), Sign.SUPERHEAT_LOW, Sign.SUPERHEAT_HIGH, signs));
        discharge.ifPresent(value ->
                DISCHARGE_OVER_OUTDOOR.sign(value.fahrenheit(), Sign.DISCHARGE_COOL, Sign.DISCHARGE_HOT, signs));
        below.ifPresent(
                value -> BOILING_BELOW_OUTDOOR.sign(value.fahrenheit(), Sign.BOILING_WARM, Sign.BOILING_COLD, signs));
        rise.ifPresent(value -> RISE_SHARE.sign(value.fahrenheit() / usual, Sign.RISE_SMALL, Sign.RISE_LARGE, signs));

        long looks = List.of(rise, discharge, superheat, below).stream()
                .filter(Optional::isPresent)
                .count();
        Optional<Obstacle> obstacle = obstacle(read, looks);
        return new Result(
                obstacle.isPresent() ? Outcome.CANNOT_TELL : signs.isEmpty() ? Outcome.PLAUSIBLE : Outcome.SUSPICIOUS,
                obstacle.isPresent() ? List.of() : signs,
                obstacle,
                rise,
                TemperatureDifference.fahrenheit(usual),
                discharge,
                superheat,
                below);
    }

    private static Optional<Obstacle> obstacle(Readings read, long looks) {
        if (read.outdoor().fahrenheit() < OUTDOOR.low() - Limits.ROUNDING) {
            return Optional.of(Obstacle.OUTDOOR_TOO_COLD);
        }
        if (read.outdoor().fahrenheit() > OUTDOOR.high() + Limits.ROUNDING) {
            return Optional.of(Obstacle.OUTDOOR_TOO_WARM);
        }
        if (!INDOOR.hold(read.indoor().fahrenheit())) {
            return Optional.of(Obstacle.INDOOR_UNUSUAL);
        }
        return looks < LEAST_LOOKS ? Optional.of(Obstacle.TOO_LITTLE_READ) : Optional.empty();
    }

    /** Between the lines of the table, and on along its ends. */
    private static double usualRise(double outdoor) {
        int above = 1;
        while (above < USUAL_RISE.length - 1 && outdoor > USUAL_RISE[above][0]) {
            above++;
        }
        double[] from = USUAL_RISE[above - 1];
        double[] to = USUAL_RISE[above];
        return from[1] + (to[1] - from[1]) * (outdoor - from[0]) / (to[0] - from[0]);
    }

    /** Both ends are inside. */
    private record Limits(double low, double high) {

        /** What conversion to kelvins and back may leave. */
        private static final double ROUNDING = 1e-9;

        boolean hold(double value) {
            return value >= low - ROUNDING && value <= high + ROUNDING;
        }

        void sign(double value, Sign below, Sign above, List<Sign> signs) {
            if (value < low - ROUNDING) {
                signs.add(below);
            } else if (value > high + ROUNDING) {
                signs.add(above);
            }
        }
    }
}
