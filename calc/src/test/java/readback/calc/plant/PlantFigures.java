package readback.calc.plant;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import readback.calc.measurement.ChargeMethod;

/**
 * Prints the figures of the simulation: how many random plants are solved and how fast, how far the orifice units lie
 * from the charging chart, how far capacity and power lie from the published fit. Arguments: number of plants, start
 * number of the random numbers.
 */
final class PlantFigures {

    private static final double[] SEVERITIES = {0.5, 0.7, 1};

    private PlantFigures() {}

    public static void main(String[] arguments) {
        int count = Integer.parseInt(arguments[0]);
        long start = Long.parseLong(arguments[1]);
        // once to warm up
        random(count / 5, start, 1);
        for (double severity : SEVERITIES) {
            System.out.println(random(count, start, severity));
        }
        for (AirConditioner unit : Built.all()) {
            if (unit.plate().meteringDevice().chargeMethod() == ChargeMethod.TOTAL_SUPERHEAT) {
                for (ChartDeviation.Nodes nodes : ChartDeviation.Nodes.values()) {
                    System.out.println(unit + ", chart, " + nodes + ": " + ChartDeviation.of(unit, nodes));
                }
            }
        }
        OperatingPoint.Heat right = Built.running(Built.VALVE, FaultSet.none()).heat();
        for (double charge : new double[] {0.7, 0.75, 0.8, 0.85, 0.9, 0.95, 1.05, 1.1, 1.15, 1.2}) {
            OperatingPoint.Heat wrong =
                    Built.running(Built.VALVE, Wrong.charge(charge)).heat();
            System.out.printf(
                    Locale.ROOT,
                    "charge %.2f: capacity %.3f, published %.3f; power %.3f, published %.3f%n",
                    charge,
                    wrong.capacity() / right.capacity(),
                    ChargeFaultTest.publishedCapacity(charge),
                    wrong.power() / right.power(),
                    ChargeFaultTest.publishedPower(charge));
        }
    }

    private static String random(int count, long start, double severity) {
        Random random = new Random(start);
        double[] milliseconds = new double[count];
        Map<String, Integer> outcomes = new TreeMap<>();
        for (int i = 0; i < count; i++) {
            RandomPlant plant = RandomPlant.next(random, severity);
            long before = System.nanoTime();
            OperatingPoint point = plant.solved();
            milliseconds[i] = (System.nanoTime() - before) / 1e6;
            String outcome = point instanceof OperatingPoint.NoSteadyState none
                    ? none.reason().name()
                    : "RUNNING";
            outcomes.merge(outcome, 1, Integer::sum);
        }
        Arrays.sort(milliseconds);
        return String.format(
                Locale.ROOT,
                "%d plants, faults up to %.0f %% of the largest: %s; ms: mean %.2f, median %.2f, 99 %% %.2f, largest %.1f",
                count,
                100 * severity,
                outcomes,
                Arrays.stream(milliseconds).average().orElseThrow(),
                milliseconds[count / 2],
                milliseconds[count * 99 / 100],
                milliseconds[count - 1]);
    }
}
