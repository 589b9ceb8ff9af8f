package readback.assistant.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** From pressure to saturation temperature and back, on either side. Tolerances: what the trade needs, ours. */
final class SaturationSkills {

    private static final List<String> FORTH = List.of("R-410A", "R-22", "R-32", "R-454B", "R-407C", "R-134a");
    private static final List<String> BACK = List.of("R-410A", "R-22", "R-454B");

    private static final double DEGREES = 1;
    private static final double PSI = 2;

    private SaturationSkills() {}

    static List<Skill> all() {
        List<Skill> skills = new ArrayList<>();
        FORTH.forEach(name -> skills.add(Skill.of("saturation-" + id(name), draw -> evaporating(draw, name))));
        FORTH.forEach(name -> skills.add(Skill.of("condensing-" + id(name), draw -> condensing(draw, name))));
        BACK.forEach(name -> skills.add(Skill.of("pressure-" + id(name), draw -> pressure(draw, name))));
        return skills;
    }

    private static String id(String designation) {
        return designation.toLowerCase(Locale.ROOT);
    }

    private static Question evaporating(Draw draw, String name) {
        return saturation(draw, name, Side.DEW, Quantity.SUCTION_PRESSURE, draw.whole(28, 55), "low");
    }

    private static Question condensing(Draw draw, String name) {
        return saturation(draw, name, Side.BUBBLE, Quantity.LIQUID_PRESSURE, draw.whole(85, 125), "high");
    }

    private static Question saturation(
            Draw draw, String name, Side side, Quantity gauge, double fahrenheit, String where) {
        Refrigerant refrigerant = Draw.refrigerant(name);
        Reading shown = draw.gauge(gauge, refrigerant, side, Temperature.fahrenheit(fahrenheit));
        Temperature right = Draw.saturation(refrigerant, side, shown);
        return new Question(
                Message.of("drill.ask.saturation." + where)
                        .with("refrigerant", new Fact.Refrigerant(name))
                        .with("pressure", Fact.amount(shown)),
                draw.temperature(Quantity.SUCTION_LINE_TEMPERATURE, right, DEGREES),
                Message.of("drill.because.saturation." + where)
                        .with("refrigerant", new Fact.Refrigerant(name))
                        .with("pressure", Fact.amount(shown))
                        .with("value", Fact.temperature(right, draw.units())));
    }

    private static Question pressure(Draw draw, String name) {
        Refrigerant refrigerant = Draw.refrigerant(name);
        Reading coil = draw.temperature(Quantity.SUCTION_LINE_TEMPERATURE, 32, 52);
        GaugePressure right = refrigerant.dewPressure(coil.temperature()).gaugeIn(Atmosphere.SEA_LEVEL);
        Wanted.Amount wanted = draw.pressure(Quantity.SUCTION_PRESSURE, right, PSI);
        return new Question(
                Message.of("drill.ask.pressure")
                        .with("refrigerant", new Fact.Refrigerant(name))
                        .with("coil", Fact.amount(coil)),
                wanted,
                Message.of("drill.because.pressure")
                        .with("refrigerant", new Fact.Refrigerant(name))
                        .with("coil", Fact.amount(coil))
                        .with("value", Fact.amount(wanted.value())));
    }
}
