package readback.calc.plant;

import java.util.Locale;
import readback.calc.air.MoistAir;
import readback.calc.numeric.Roots;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.targets.SuperheatTable;

/**
 * How far the superheat of a rightly charged unit lies from the charging chart, over its nodes from 65 to 110 °F
 * outdoor air and 58 to 74 °F wet bulb. The house is at 50 % relative humidity, as makers state for such charts.
 *
 * @param rootMeanSquare °F
 * @param mean °F, positive where the unit's superheat is higher
 * @param largest °F
 */
record ChartDeviation(int nodes, double rootMeanSquare, double mean, double largest, int unsolved) {

    /** Which nodes. Those fitted to and those held out alternate like the squares of a chess board. */
    enum Nodes {
        ALL,
        FITTED,
        HELD_OUT;

        private boolean contains(int outdoor, int wetBulb) {
            boolean white = (outdoor / 5 + wetBulb / 2) % 2 == 0;
            return this == ALL || white == (this == FITTED);
        }
    }

    static ChartDeviation of(AirConditioner unit, Nodes nodes) {
        int count = 0;
        int unsolved = 0;
        double sum = 0;
        double squares = 0;
        double largest = 0;
        for (int outdoor = 65; outdoor <= 110; outdoor += 5) {
            for (int wetBulb = 58; wetBulb <= 74; wetBulb += 2) {
                if (nodes.contains(outdoor, wetBulb)
                        && SuperheatTable.standard()
                                        .target(Temperature.fahrenheit(wetBulb), Temperature.fahrenheit(outdoor))
                                instanceof SuperheatTable.Answer.Usable usable) {
                    var point = OperatingPoint.solve(unit, weather(outdoor, wetBulb), FaultSet.none())
                            .running();
                    if (point.isPresent()) {
                        double miss =
                                point.get().superheat().minus(usable.target()).fahrenheit();
                        count++;
                        sum += miss;
                        squares += miss * miss;
                        largest = Math.max(largest, Math.abs(miss));
                    } else {
                        unsolved++;
                    }
                }
            }
        }
        return new ChartDeviation(count, Math.sqrt(squares / count), sum / count, largest, unsolved);
    }

    /** Weather of a node, °F. */
    static Weather weather(double outdoor, double wetBulb) {
        double dryBulb = Roots.find(
                fahrenheit -> MoistAir.fromWetBulb(
                                        Temperature.fahrenheit(fahrenheit),
                                        Temperature.fahrenheit(wetBulb),
                                        Atmosphere.SEA_LEVEL)
                                .relativeHumidity()
                        - 0.5,
                wetBulb + 1,
                wetBulb + 25,
                1e-9);
        return Weather.fahrenheit(outdoor, dryBulb, wetBulb);
    }

    /** What the chart demands at the rating point. */
    static TemperatureDifference target(Weather weather) {
        return ((SuperheatTable.Answer.Usable)
                        SuperheatTable.standard().target(weather.returnAir().wetBulb(), weather.outdoor()))
                .target();
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "rms %.2f mean %.2f max %.1f °F over %d nodes, %d unsolved",
                rootMeanSquare,
                mean,
                largest,
                nodes,
                unsolved);
    }
}
