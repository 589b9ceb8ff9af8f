package readback.calc.plant;

import java.util.Locale;
import java.util.Random;
import readback.calc.condition.TemperatureSplit;
import readback.calc.measurement.MeteringDevice;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * Fits the design of the three-ton R-410A unit with an orifice to half of the nodes of the charging chart and to the
 * table of temperature split, by random search. Prints each improvement with what the other half of the nodes says;
 * those take no part in the choice. Arguments: start number of the random numbers, number of trials.
 */
final class ChartCalibration {

    private static final int VOLUMES = 2;
    private static final double[] LEAST = {0.7, 0.8, 0.7, 0.3, 0.2, 41, 110, 9, 0.0005};
    private static final double[] MOST = {1.5, 1.8, 1.05, 0.9, 0.8, 46, 116, 12, 0.0021};
    private static final double LARGEST_EFFECTIVENESS = 0.92;
    private static final double LEAST_ELSEWHERE = 0.1;

    private ChartCalibration() {}

    public static void main(String[] arguments) {
        long start = Long.parseLong(arguments[0]);
        int trials = Integer.parseInt(arguments[1]);
        Random random = new Random(start);
        FluidTable fluid =
                new FluidTable(TrainingUnit.THREE_TON_R410A_PISTON.plate().refrigerant());
        double[] best = new double[LEAST.length];
        for (int i = 0; i < best.length; i++) {
            best[i] = 0.5 * (LEAST[i] + MOST[i]);
        }
        double least = Double.POSITIVE_INFINITY;
        for (int trial = 0; trial < trials; trial++) {
            double stride = trial < trials / 4 ? 0.5 : trial < trials / 2 ? 0.15 : 0.05;
            double[] next = best.clone();
            for (int i = 0; i < next.length; i++) {
                next[i] += stride * random.nextGaussian() * (MOST[i] - LEAST[i]) / 2;
                next[i] = Math.max(LEAST[i], Math.min(MOST[i], next[i]));
            }
            AirConditioner unit;
            try {
                unit = unit(next, fluid);
            } catch (IllegalArgumentException impossible) {
                continue;
            }
            if (unit.circuit().condenser().effectiveness() > LARGEST_EFFECTIVENESS
                    || unit.circuit().elsewhere()
                            < LEAST_ELSEWHERE * unit.circuit().ratedCharge()) {
                continue;
            }
            ChartDeviation fitted = ChartDeviation.of(unit, ChartDeviation.Nodes.FITTED);
            double split = split(unit);
            double value = fitted.rootMeanSquare() + 0.5 * split + fitted.unsolved();
            if (value < least) {
                least = value;
                best = next;
                System.out.printf(
                        Locale.ROOT,
                        "%d: %.2f, fitted %s, held out %s, split %.2f | volumes %.3f %.3f wet %.3f vapour %.3f gain %.2f "
                                + "at %.2f %.2f subcooling %.2f growth %.5f | %.2f %.2f, elsewhere %.2f%n",
                        trial,
                        value,
                        fitted,
                        ChartDeviation.of(unit, ChartDeviation.Nodes.HELD_OUT),
                        split,
                        next[0],
                        next[1],
                        next[VOLUMES],
                        next[3],
                        next[4],
                        next[5],
                        next[6],
                        next[7],
                        next[8],
                        unit.circuit().condenser().effectiveness(),
                        unit.circuit().evaporator().effectiveness(),
                        unit.circuit().elsewhere());
            }
        }
    }

    private static AirConditioner unit(double[] value, FluidTable fluid) {
        RatingPlate plate = new RatingPlate(
                fluid.refrigerant(),
                MeteringDevice.PISTON,
                3,
                Mass.kilograms(3),
                TemperatureDifference.fahrenheit(value[7]),
                TrainingUnit.THREE_TON_R410A_PISTON.plate().lineSet());
        Design design = new Design(
                Temperature.fahrenheit(value[5]),
                Temperature.fahrenheit(value[6]),
                ChartDeviation.target(Weather.RATING),
                Design.CompressorKind.MAPPED,
                value[8],
                new Design.Coils(value[0], value[1], value[2], value[3], value[4]));
        return AirConditioner.balanced("calibration", plate, design, fluid);
    }

    /** Root mean square deviation of the temperature split from its table over the wet bulbs of the chart, °F. */
    private static double split(AirConditioner unit) {
        double squares = 0;
        int count = 0;
        for (int wetBulb = 58; wetBulb <= 70; wetBulb += 2) {
            Weather weather = ChartDeviation.weather(90, wetBulb);
            var target = TemperatureSplit.target(
                    weather.returnAir().dryBulb(), weather.returnAir().wetBulb());
            var point = OperatingPoint.solve(unit, weather, FaultSet.none()).running();
            if (target.isPresent() && point.isPresent()) {
                double miss = weather.returnAir()
                        .dryBulb()
                        .minus(point.get().at().supplyAir())
                        .minus(target.get())
                        .fahrenheit();
                squares += miss * miss;
                count++;
            }
        }
        return Math.sqrt(squares / count);
    }
}
