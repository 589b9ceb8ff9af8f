package readback.assistant.drill;

import java.util.List;
import readback.calc.charge.ChargeJudge;
import readback.calc.charge.Judgement;
import readback.calc.charge.Verdict;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Limits;
import readback.calc.measurement.MeteringDevice;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** Which check, and what follows from it: by the judge that the charge check has. */
final class VerdictSkills {

    private static final String METHOD = "charge-method";
    private static final String VERDICT = "charge-verdict";
    private static final List<String> METHODS = List.of("superheat", "subcooling", "weight");
    private static final List<String> VERDICTS = List.of("add", "recover", "leave");

    private static final ChargeJudge JUDGE = new ChargeJudge();

    /** °F; the readings of a question lie at least so far on one side of a limit. */
    private static final double CLEAR = 3;

    private VerdictSkills() {}

    static List<Skill> all() {
        return List.of(
                Skill.of("method", VerdictSkills::method),
                Skill.of("method-when-cold", VerdictSkills::methodWhenCold),
                Skill.of("verdict-superheat", draw -> compared(draw, ChargeMethod.TOTAL_SUPERHEAT)),
                Skill.of("verdict-subcooling", draw -> compared(draw, ChargeMethod.SUBCOOLING)),
                Skill.of("verdict-piston-r-410a", draw -> piston(draw, "R-410A")),
                Skill.of("verdict-piston-r-22", draw -> piston(draw, "R-22")),
                Skill.of("verdict-valve-r-410a", draw -> valve(draw, "R-410A")),
                Skill.of("verdict-valve-r-454b", draw -> valve(draw, "R-454B")));
    }

    private static Question method(Draw draw) {
        MeteringDevice device = draw.any(List.of(MeteringDevice.values()));
        String right = device.chargeMethod() == ChargeMethod.TOTAL_SUPERHEAT ? "superheat" : "subcooling";
        return new Question(
                Message.of("drill.ask.method").with("device", term("metering-device", ConstantName.of(device))),
                new Wanted.Option(METHOD, right, METHODS),
                Message.of("drill.because.method." + right));
    }

    /** Below 55 °F outdoors the running checks do not hold: California Energy Commission RA3.2.2 (from memory). */
    private static Question methodWhenCold(Draw draw) {
        Reading outdoor = draw.temperature(Quantity.OUTDOOR_TEMPERATURE, 25, 48);
        return new Question(
                Message.of("drill.ask.method-when-cold").with("outdoor", Fact.amount(outdoor)),
                new Wanted.Option(METHOD, "weight", METHODS),
                Message.of("drill.because.method-when-cold"));
    }

    private static Question compared(Draw draw, ChargeMethod method) {
        boolean bySuperheat = method == ChargeMethod.TOTAL_SUPERHEAT;
        double limit = (bySuperheat ? Limits.INSTALLER.superheat() : Limits.INSTALLER.subcooling())
                .high()
                .fahrenheit();
        int target = draw.whole(bySuperheat ? 9 : 7, bySuperheat ? 22 : 13);
        double off = switch (draw.whole(0, 2)) {
            case 0 -> limit + draw.whole(2, 9);
            case 1 -> -Math.min(limit + draw.whole(2, 6), target);
            default -> draw.whole(-1, 1);
        };
        String right = Math.abs(off) <= limit ? "leave" : (off > 0) == bySuperheat ? "add" : "recover";
        Fact.Amount actual = Fact.difference(TemperatureDifference.fahrenheit(target + off), draw.units());
        Fact.Amount wanted = Fact.difference(TemperatureDifference.fahrenheit(target), draw.units());
        String kind = bySuperheat ? "superheat" : "subcooling";
        return new Question(
                Message.of("drill.ask.verdict." + kind).with("actual", actual).with("target", wanted),
                new Wanted.Option(VERDICT, right, VERDICTS),
                Message.of("drill.because.verdict." + kind + "." + right)
                        .with("limit", Fact.difference(TemperatureDifference.fahrenheit(limit), draw.units())));
    }

    private static Question piston(Draw draw, String name) {
        Refrigerant refrigerant = Draw.refrigerant(name);
        while (true) {
            Reading outdoor = draw.temperature(Quantity.OUTDOOR_TEMPERATURE, 75, 100);
            Reading wetBulb = draw.temperature(Quantity.RETURN_WET_BULB, 60, 70);
            Temperature coil = Temperature.fahrenheit(draw.whole(34, 48));
            Reading pressure = draw.gauge(Quantity.SUCTION_PRESSURE, refrigerant, Side.DEW, coil);
            Reading line = draw.shown(
                    Quantity.SUCTION_LINE_TEMPERATURE,
                    coil.plus(TemperatureDifference.fahrenheit(draw.whole(6, 34)))
                            .kelvin());
            Judgement judgement = JUDGE.judge(
                    SystemUnderTest.of(refrigerant, MeteringDevice.PISTON),
                    Readings.of(outdoor, wetBulb, pressure, line));
            if (clear(judgement)) {
                return judged(
                        draw,
                        "piston",
                        judgement,
                        Message.of("drill.ask.verdict.piston")
                                .with("refrigerant", new Fact.Refrigerant(name))
                                .with("outdoor", Fact.amount(outdoor))
                                .with("wetbulb", Fact.amount(wetBulb))
                                .with("pressure", Fact.amount(pressure))
                                .with("line", Fact.amount(line)));
            }
        }
    }

    private static Question valve(Draw draw, String name) {
        Refrigerant refrigerant = Draw.refrigerant(name);
        while (true) {
            Reading outdoor = draw.temperature(Quantity.OUTDOOR_TEMPERATURE, 75, 100);
            Reading plate = draw.difference(Quantity.PLATE_SUBCOOLING, 7, 13);
            Temperature condensing = outdoor.temperature().plus(TemperatureDifference.fahrenheit(draw.whole(15, 25)));
            Reading pressure = draw.gauge(Quantity.LIQUID_PRESSURE, refrigerant, Side.BUBBLE, condensing);
            Reading line = draw.shown(
                    Quantity.LIQUID_LINE_TEMPERATURE,
                    condensing
                            .plus(TemperatureDifference.fahrenheit(draw.whole(2, 20))
                                    .negated())
                            .kelvin());
            Judgement judgement = JUDGE.judge(
                    SystemUnderTest.of(refrigerant, MeteringDevice.THERMOSTATIC_EXPANSION_VALVE),
                    Readings.of(outdoor, plate, pressure, line));
            if (clear(judgement)) {
                return judged(
                        draw,
                        "valve",
                        judgement,
                        Message.of("drill.ask.verdict.valve")
                                .with("refrigerant", new Fact.Refrigerant(name))
                                .with("plate", Fact.amount(plate))
                                .with("pressure", Fact.amount(pressure))
                                .with("line", Fact.amount(line)));
            }
        }
    }

    private static boolean clear(Judgement judgement) {
        return judgement
                .verdict()
                .comparison()
                .filter(compared -> compared.kind() == Verdict.Kind.IN_TOLERANCE || distance(compared) > CLEAR)
                .filter(compared -> compared.kind() != Verdict.Kind.IN_TOLERANCE || offTarget(compared) < 2)
                .isPresent();
    }

    private static double offTarget(Verdict.Compared compared) {
        return Math.abs(compared.deviation().value().fahrenheit());
    }

    /** °F beyond the limit that is passed. */
    private static double distance(Verdict.Compared compared) {
        double value = compared.deviation().value().fahrenheit();
        return value > 0
                ? value - compared.deviation().limits().high().fahrenheit()
                : compared.deviation().limits().low().fahrenheit() - value;
    }

    private static Question judged(Draw draw, String what, Judgement judgement, Message asked) {
        String right = switch (judgement.verdict().kind()) {
            case ADD -> "add";
            case RECOVER -> "recover";
            default -> "leave";
        };
        return new Question(
                asked,
                new Wanted.Option(VERDICT, right, VERDICTS),
                Message.of("drill.because.verdict." + what)
                        .with(
                                "actual",
                                Fact.difference(judgement.judged().orElseThrow().value(), draw.units()))
                        .with(
                                "target",
                                Fact.difference(judgement.target().orElseThrow().value(), draw.units()))
                        .with("verdict", term(VERDICT, right)));
    }

    static Fact term(String set, String option) {
        return new Fact.Term(set + "." + option);
    }
}
