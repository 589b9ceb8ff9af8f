package readback.assistant.simulated;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import readback.calc.measurement.ChargeMethod;
import readback.calc.plant.AirConditioner;
import readback.calc.plant.InstrumentSet;
import readback.calc.plant.OperatingPoint;
import readback.calc.plant.PlantFault;
import readback.calc.plant.TrainingUnit;
import readback.calc.plant.Weather;
import readback.calc.quantity.Temperature;
import readback.calc.targets.SuperheatTable;

/**
 * One service call before it begins. The same numbers always draw the same case, whatever was drawn before.
 *
 * @param number from 1
 * @param training for its name
 * @param unit sized at rating
 * @param weather in which the charge of the unit can be judged by its method
 * @param truth what is wrong with it
 * @param instruments in order; two in five are dial gauges
 * @param scatter where the generator of what the readings scatter by begins
 * @param drawnAgain units before this one that do not run at all
 */
public record Case(
        int number,
        TrainingUnit training,
        AirConditioner unit,
        Weather weather,
        Truth truth,
        InstrumentSet instruments,
        long scatter,
        int drawnAgain) {

    /** Keeps the cases of neighbouring start numbers apart. */
    private static final long APART = 1_000_003;

    private static final double DIALS = 0.4;
    private static final double CHARGE_FAULTS = 0.5;
    private static final double SOUND = 0.25;

    public static Case draw(long start, int number, BuiltUnits units) {
        RandomGenerator chance = new SplittableRandom(start * APART + number);
        InstrumentSet instruments = chance.nextDouble() < DIALS ? InstrumentSet.dial() : InstrumentSet.digital();
        double kind = chance.nextDouble();
        for (int again = 0; ; again++) {
            TrainingUnit training = any(List.of(TrainingUnit.values()), chance);
            AirConditioner unit = units.get(training);
            ChargeMethod method = unit.plate().meteringDevice().chargeMethod();
            Weather weather = weather(method, chance);
            Truth truth = truth(kind, method, chance);
            if (OperatingPoint.solve(unit, weather, truth.faults()).running().isPresent()) {
                return new Case(number, training, unit, weather, truth, instruments, chance.nextLong(), again);
            }
        }
    }

    /** Outdoor 60 to 112 °F, return 70 to 84 °F, wet bulb 6 to 16 °F below; the charging table has a target there. */
    private static Weather weather(ChargeMethod method, RandomGenerator chance) {
        while (true) {
            double outdoor = chance.nextDouble(60, 112);
            double dryBulb = chance.nextDouble(70, 84);
            double wetBulb = dryBulb - chance.nextDouble(6, 16);
            boolean inRange = method == ChargeMethod.SUBCOOLING
                    || SuperheatTable.standard()
                            .target(Temperature.fahrenheit(wetBulb), Temperature.fahrenheit(outdoor))
                            .usable()
                            .isPresent();
            if (inRange) {
                return Weather.fahrenheit(outdoor, dryBulb, wetBulb);
            }
        }
    }

    private static Truth truth(double kind, ChargeMethod method, RandomGenerator chance) {
        if (kind >= CHARGE_FAULTS && kind < CHARGE_FAULTS + SOUND) {
            return Truth.SOUND;
        }
        boolean charge = kind < CHARGE_FAULTS;
        List<PlantFault> possible = Arrays.stream(PlantFault.values())
                .filter(fault -> Truth.isCharge(fault) == charge && fault.possibleWith(method))
                .toList();
        return Truth.of(any(possible, chance), chance.nextDouble());
    }

    private static <T> T any(List<T> of, RandomGenerator chance) {
        return of.get(chance.nextInt(of.size()));
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "call %d: %s, %s; outdoor %.1f, return %.1f, wet bulb %.1f °F",
                number,
                training,
                truth,
                weather.outdoor().fahrenheit(),
                weather.returnAir().dryBulb().fahrenheit(),
                weather.returnAir().wetBulb().fahrenheit());
    }
}
