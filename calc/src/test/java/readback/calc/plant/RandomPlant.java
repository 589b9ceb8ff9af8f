package readback.calc.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import readback.calc.quantity.Temperature;

/** Any training unit in any weather with up to three faults of any size. */
record RandomPlant(AirConditioner unit, Weather weather, FaultSet faults) {

    /** @param severity share of the largest sizes that the faults may reach */
    static RandomPlant next(Random random, double severity) {
        AirConditioner unit = Built.all().get(random.nextInt(Built.all().size()));
        double outdoor = 60 + 55 * random.nextDouble();
        double dryBulb = 68 + 20 * random.nextDouble();
        double wetBulb = Math.min(dryBulb - 1, 54 + 22 * random.nextDouble());
        List<PlantFault> possible = Arrays.stream(PlantFault.values())
                .filter(fault ->
                        fault.possibleWith(unit.plate().meteringDevice().chargeMethod()))
                .toList();
        FaultSet faults = FaultSet.none();
        for (int left = random.nextInt(4); left > 0; left--) {
            PlantFault fault = possible.get(random.nextInt(possible.size()));
            faults = faults.with(fault, severity * fault.largest() * random.nextDouble());
        }
        return new RandomPlant(unit, Weather.fahrenheit(outdoor, dryBulb, wetBulb), faults);
    }

    OperatingPoint solved() {
        return OperatingPoint.solve(unit, weather, faults);
    }

    /** What no unit can do otherwise. */
    void checkOrder(OperatingPoint.Running at) {
        Temperature indoor = weather.returnAir().dryBulb();
        assertThat(at.evaporating()).as(toString()).isLessThan(indoor);
        assertThat(at.condensing()).as(toString()).isGreaterThan(weather.outdoor());
        assertThat(at.at().liquidPressure())
                .as(toString())
                .isGreaterThan(at.at().suctionPressure());
        assertThat(at.at().suctionPressure()).as(toString()).isGreaterThan(weather.atmosphere());
        assertThat(at.at().liquidPressure()).as(toString()).isLessThan(unit.highPressureSwitch());
        // what boils in the line is cooled by the last of the pressure drop: by 1.05 K where an R-407C unit with half
        // of
        // its charge starves, the most in a hundred thousand random plants
        assertThat(at.at().liquidLine().kelvin())
                .as(toString())
                .isGreaterThan(weather.outdoor().kelvin() - 2);
        assertThat(at.at().supplyAir()).as(toString()).isLessThan(indoor);
        assertThat(at.at().dischargeLine()).as(toString()).isGreaterThanOrEqualTo(at.condensing());
        assertThat(at.at().suctionLine()).as(toString()).isGreaterThanOrEqualTo(at.evaporating());
        double glide =
                unit.plate().refrigerant().glide(at.at().liquidPressure()).kelvins();
        assertThat(at.subcooling().kelvins()).as(toString()).isGreaterThanOrEqualTo(Math.min(0, -glide));
        OperatingPoint.Heat heat = at.heat();
        assertThat(heat.sensible()).as(toString()).isPositive().isLessThanOrEqualTo(heat.capacity() * (1 + 1e-9));
        double in = heat.capacity() + heat.suctionGain() + heat.power();
        assertThat(heat.rejected() + heat.shellLoss()).as(toString()).isCloseTo(in, within(1e-3 * in));
        assertThat(heat.charge())
                .as(toString())
                .isCloseTo(unit.plate().charge().kilograms() * faults.disturbance().charge, within(1e-3));
    }
}
