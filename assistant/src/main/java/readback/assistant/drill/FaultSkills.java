package readback.assistant.drill;

import java.math.RoundingMode;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.ChargeMethod;
import readback.calc.name.ConstantName;
import readback.calc.plant.AirConditioner;
import readback.calc.plant.FaultSet;
import readback.calc.plant.Measurands;
import readback.calc.plant.OperatingPoint;
import readback.calc.plant.PlantFault;
import readback.calc.plant.TrainingUnit;
import readback.calc.plant.Weather;
import readback.calc.quantity.TemperatureDifference;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Which fault made the readings of a simulated unit: the truth is known, since it was put there. */
final class FaultSkills {

    private static final String SET = "likely-fault";

    /** Large enough to stand out from a sound unit of the same kind; shares as at {@link PlantFault}. */
    private static final Map<PlantFault, Double> CLEAR = new EnumMap<>(Map.of(
            PlantFault.UNDERCHARGE, 0.2,
            PlantFault.OVERCHARGE, 0.25,
            PlantFault.LOW_INDOOR_AIR, 0.45,
            PlantFault.DIRTY_OUTDOOR_COIL, 0.5,
            PlantFault.LIQUID_LINE_RESTRICTION, 0.5));

    private static final List<PlantFault> FAULTS = List.copyOf(CLEAR.keySet());
    private static final List<String> OFFERED =
            FAULTS.stream().map(PlantFault::fault).map(ConstantName::of).toList();

    private static final Map<TrainingUnit, AirConditioner> BUILT = new ConcurrentHashMap<>();

    private FaultSkills() {}

    static List<Skill> all() {
        return List.of(
                Skill.of("fault-orifice", draw -> fault(draw, ChargeMethod.TOTAL_SUPERHEAT)),
                Skill.of("fault-valve", draw -> fault(draw, ChargeMethod.SUBCOOLING)));
    }

    private static Question fault(Draw draw, ChargeMethod method) {
        List<TrainingUnit> units = Arrays.stream(TrainingUnit.values())
                .filter(unit -> unit.plate().meteringDevice().chargeMethod() == method)
                .toList();
        while (true) {
            AirConditioner unit = BUILT.computeIfAbsent(draw.any(units), TrainingUnit::built);
            PlantFault fault = draw.any(FAULTS);
            double size = CLEAR.getOrDefault(fault, fault.largest());
            int dryBulb = draw.whole(73, 80);
            Weather weather = Weather.fahrenheit(draw.whole(80, 100), dryBulb, dryBulb - draw.whole(10, 14));
            Optional<OperatingPoint.Running> sound =
                    OperatingPoint.solve(unit, weather, FaultSet.none()).running();
            Optional<OperatingPoint.Running> running = OperatingPoint.solve(unit, weather, FaultSet.of(fault, size))
                    .running();
            if (sound.isPresent() && running.isPresent()) {
                return question(
                        draw,
                        unit,
                        weather,
                        fault,
                        sound.get().at(),
                        running.get().at());
            }
        }
    }

    private static Question question(
            Draw draw, AirConditioner unit, Weather weather, PlantFault fault, Measurands sound, Measurands found) {
        String right = ConstantName.of(fault.fault());
        return new Question(
                Message.of("drill.ask.fault")
                        .with(
                                "device",
                                VerdictSkills.term(
                                        "metering-device",
                                        ConstantName.of(unit.plate().meteringDevice())))
                        .with("superheat", pair(draw, superheat(unit, found), superheat(unit, sound)))
                        .with("subcooling", pair(draw, subcooling(unit, found), subcooling(unit, sound)))
                        .with(
                                "condensing",
                                pair(draw, overOutdoor(unit, weather, found), overOutdoor(unit, weather, sound)))
                        .with("split", pair(draw, split(weather, found), split(weather, sound))),
                new Wanted.Option(SET, right, OFFERED),
                Message.of("drill.because.fault." + right));
    }

    /** What is read, and what a sound unit would have. */
    private static Fact pair(Draw draw, TemperatureDifference found, TemperatureDifference sound) {
        return new Fact.Text(Message.of("drill.found-for-usual")
                .with("found", whole(draw, found))
                .with("usual", whole(draw, sound)));
    }

    private static Fact whole(Draw draw, TemperatureDifference value) {
        Fact.Amount tenths = Fact.difference(value, draw.units());
        return new Fact.Amount(tenths.value().setScale(0, RoundingMode.HALF_UP), tenths.unit());
    }

    private static Refrigerant refrigerant(AirConditioner unit) {
        return unit.plate().refrigerant();
    }

    private static TemperatureDifference superheat(AirConditioner unit, Measurands at) {
        return at.suctionLine().minus(refrigerant(unit).dewTemperature(at.suctionPressure()));
    }

    private static TemperatureDifference subcooling(AirConditioner unit, Measurands at) {
        return refrigerant(unit).bubbleTemperature(at.liquidPressure()).minus(at.liquidLine());
    }

    private static TemperatureDifference overOutdoor(AirConditioner unit, Weather weather, Measurands at) {
        return refrigerant(unit).bubbleTemperature(at.liquidPressure()).minus(weather.outdoor());
    }

    private static TemperatureDifference split(Weather weather, Measurands at) {
        return weather.returnAir().dryBulb().minus(at.supplyAir());
    }
}
