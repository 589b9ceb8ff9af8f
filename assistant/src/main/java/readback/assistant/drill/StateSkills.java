package readback.assistant.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import readback.calc.air.MoistAir;
import readback.calc.condition.TemperatureSplit;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.targets.SuperheatTable;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Superheat, subcooling, target and split from what is read. Tolerances: what the trade needs, ours. */
final class StateSkills {

    private static final List<String> SUPERHEAT = List.of("R-410A", "R-22", "R-32", "R-407C");
    private static final List<String> SUBCOOLING = List.of("R-410A", "R-22", "R-454B", "R-407C");

    private static final double DEGREES = 2;
    private static final double TARGET_DEGREES = 1;

    private StateSkills() {}

    static List<Skill> all() {
        List<Skill> skills = new ArrayList<>();
        SUPERHEAT.forEach(
                name -> skills.add(Skill.of("superheat-" + name.toLowerCase(Locale.ROOT), d -> superheat(d, name))));
        SUBCOOLING.forEach(
                name -> skills.add(Skill.of("subcooling-" + name.toLowerCase(Locale.ROOT), d -> subcooling(d, name))));
        skills.add(Skill.of("target-superheat", StateSkills::targetSuperheat));
        skills.add(Skill.of("split", StateSkills::split));
        skills.add(Skill.of("target-split", StateSkills::targetSplit));
        skills.add(Skill.of("wet-bulb", StateSkills::wetBulb));
        return skills;
    }

    private static Question superheat(Draw draw, String name) {
        Refrigerant refrigerant = Draw.refrigerant(name);
        Temperature coil = Temperature.fahrenheit(draw.whole(30, 50));
        Reading pressure = draw.gauge(Quantity.SUCTION_PRESSURE, refrigerant, Side.DEW, coil);
        Temperature saturation = Draw.saturation(refrigerant, Side.DEW, pressure);
        Reading line = draw.shown(
                Quantity.SUCTION_LINE_TEMPERATURE,
                saturation
                        .plus(TemperatureDifference.fahrenheit(draw.whole(3, 35)))
                        .kelvin());
        return state(
                draw,
                "superheat",
                name,
                pressure,
                line,
                saturation,
                line.temperature().minus(saturation),
                Quantity.PLATE_SUPERHEAT);
    }

    private static Question subcooling(Draw draw, String name) {
        Refrigerant refrigerant = Draw.refrigerant(name);
        Temperature condensing = Temperature.fahrenheit(draw.whole(85, 125));
        Reading pressure = draw.gauge(Quantity.LIQUID_PRESSURE, refrigerant, Side.BUBBLE, condensing);
        Temperature saturation = Draw.saturation(refrigerant, Side.BUBBLE, pressure);
        Reading line = draw.shown(
                Quantity.LIQUID_LINE_TEMPERATURE,
                saturation
                        .plus(TemperatureDifference.fahrenheit(draw.whole(2, 20))
                                .negated())
                        .kelvin());
        return state(
                draw,
                "subcooling",
                name,
                pressure,
                line,
                saturation,
                saturation.minus(line.temperature()),
                Quantity.PLATE_SUBCOOLING);
    }

    private static Question state(
            Draw draw,
            String what,
            String name,
            Reading pressure,
            Reading line,
            Temperature saturation,
            TemperatureDifference right,
            Quantity quantity) {
        Wanted.Amount wanted = draw.difference(quantity, right, DEGREES);
        return new Question(
                Message.of("drill.ask." + what)
                        .with("refrigerant", new Fact.Refrigerant(name))
                        .with("pressure", Fact.amount(pressure))
                        .with("line", Fact.amount(line)),
                wanted,
                Message.of("drill.because." + what)
                        .with("line", Fact.amount(line))
                        .with("saturation", Fact.temperature(saturation, draw.units()))
                        .with("value", Fact.amount(wanted.value())));
    }

    private static Question targetSuperheat(Draw draw) {
        while (true) {
            Reading wetBulb = draw.temperature(Quantity.RETURN_WET_BULB, 56, 74);
            Reading outdoor = draw.temperature(Quantity.OUTDOOR_TEMPERATURE, 70, 105);
            Optional<SuperheatTable.Answer.Usable> target = SuperheatTable.standard()
                    .target(wetBulb.temperature(), outdoor.temperature())
                    .usable();
            if (target.isPresent()) {
                Wanted.Amount wanted =
                        draw.difference(Quantity.PLATE_SUPERHEAT, target.get().target(), TARGET_DEGREES);
                return new Question(
                        Message.of("drill.ask.target-superheat")
                                .with("wetbulb", Fact.amount(wetBulb))
                                .with("outdoor", Fact.amount(outdoor)),
                        wanted,
                        Message.of("drill.because.target-superheat").with("value", Fact.amount(wanted.value())));
            }
        }
    }

    private static Question split(Draw draw) {
        Reading back = draw.temperature(Quantity.RETURN_DRY_BULB, 70, 82);
        Reading supply = draw.temperature(Quantity.SUPPLY_DRY_BULB, 50, 62);
        Wanted.Amount wanted = draw.difference(
                Quantity.TEMPERATURE_SPLIT, back.temperature().minus(supply.temperature()), TARGET_DEGREES);
        return new Question(
                Message.of("drill.ask.split").with("back", Fact.amount(back)).with("supply", Fact.amount(supply)),
                wanted,
                Message.of("drill.because.split")
                        .with("back", Fact.amount(back))
                        .with("supply", Fact.amount(supply))
                        .with("value", Fact.amount(wanted.value())));
    }

    private static Question targetSplit(Draw draw) {
        Reading dryBulb = draw.temperature(Quantity.RETURN_DRY_BULB, 72, 82);
        Reading wetBulb = draw.temperature(Quantity.RETURN_WET_BULB, 58, 68);
        TemperatureDifference target = TemperatureSplit.target(dryBulb.temperature(), wetBulb.temperature())
                .orElseThrow();
        Wanted.Amount wanted = draw.difference(Quantity.TEMPERATURE_SPLIT, target, DEGREES);
        return new Question(
                Message.of("drill.ask.target-split")
                        .with("back", Fact.amount(dryBulb))
                        .with("wetbulb", Fact.amount(wetBulb)),
                wanted,
                Message.of("drill.because.target-split").with("value", Fact.amount(wanted.value())));
    }

    private static Question wetBulb(Draw draw) {
        Reading dryBulb = draw.temperature(Quantity.RETURN_DRY_BULB, 70, 82);
        int humidity = 5 * draw.whole(7, 13);
        Temperature right = MoistAir.fromRelativeHumidity(dryBulb.temperature(), humidity / 100.0, Atmosphere.SEA_LEVEL)
                .wetBulb();
        Wanted.Amount wanted = draw.temperature(Quantity.RETURN_WET_BULB, right, DEGREES);
        return new Question(
                Message.of("drill.ask.wet-bulb")
                        .with("back", Fact.amount(dryBulb))
                        .with("humidity", new Fact.Count(humidity)),
                wanted,
                Message.of("drill.because.wet-bulb").with("value", Fact.amount(wanted.value())));
    }
}
