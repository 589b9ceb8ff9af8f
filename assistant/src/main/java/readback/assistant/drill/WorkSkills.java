package readback.assistant.drill;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import readback.calc.caution.CautionFinder;
import readback.calc.caution.CautionRule;
import readback.calc.caution.Situation;
import readback.calc.charge.ChargeLevel;
import readback.calc.charge.Correction;
import readback.calc.condition.AirflowPerTon;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.measurement.Band;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Readings;
import readback.calc.procedure.LineCharge;
import readback.calc.procedure.RecoveryCylinder;
import readback.calc.procedure.StandingPressure;
import readback.calc.procedure.VacuumCriterion;
import readback.calc.procedure.VacuumDecay;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** What the work around the charge asks for, and what keeps people and compressor whole. */
final class WorkSkills {

    private static final List<String> BLENDS_AND_PURE = List.of("R-407C", "R-410A", "R-454B", "R-22", "R-32", "R-134a");
    private static final double FOOT = 0.3048;
    private static final double THREE_EIGHTHS = 0.375 * 0.0254;
    private static final double PSI = 2;
    private static final double OUNCE = 1;

    private WorkSkills() {}

    static List<Skill> all() {
        return List.of(
                Skill.of("altitude", WorkSkills::altitude),
                Skill.of("airflow-per-ton", WorkSkills::airflowPerTon),
                Skill.of("airflow-enough", WorkSkills::airflowEnough),
                Skill.of("largest-step", WorkSkills::largestStep),
                Skill.of("line-charge", WorkSkills::lineCharge),
                Skill.of("charging-phase", WorkSkills::phase),
                Skill.of("saturation-side", WorkSkills::side),
                Skill.of("nitrogen", WorkSkills::nitrogen),
                Skill.of("leak-test", WorkSkills::leakTest),
                Skill.of("vacuum", WorkSkills::vacuum),
                Skill.grave("cylinder-limit", WorkSkills::cylinderLimit),
                Skill.grave("cylinder-full", WorkSkills::cylinderFull),
                Skill.grave("liquid-at-compressor", WorkSkills::liquid),
                Skill.grave("hot-discharge", WorkSkills::discharge),
                Skill.grave("freezing-coil", WorkSkills::freezing),
                Skill.grave("flammable", WorkSkills::flammable),
                Skill.grave("test-pressure", WorkSkills::testPressure));
    }

    private static Fact.Refrigerant name(Refrigerant refrigerant) {
        return new Fact.Refrigerant(refrigerant.designation());
    }

    private static Question altitude(Draw draw) {
        Refrigerant refrigerant = Draw.refrigerant("R-410A");
        int feet = 500 * draw.whole(8, 16);
        AbsolutePressure air = Atmosphere.atAltitude(feet * FOOT);
        Reading shown = draw.shown(
                Quantity.SUCTION_PRESSURE,
                refrigerant
                        .dewPressure(Temperature.fahrenheit(draw.whole(32, 50)))
                        .gaugeIn(air));
        Temperature right = refrigerant.dewTemperature(shown.gaugePressure().absoluteIn(air));
        Temperature wrong = refrigerant.dewTemperature(shown.gaugePressure().absoluteIn(Atmosphere.SEA_LEVEL));
        return new Question(
                Message.of("drill.ask.altitude")
                        .with("feet", new Fact.Count(feet))
                        .with("pressure", Fact.amount(shown)),
                draw.temperature(Quantity.SUCTION_LINE_TEMPERATURE, right, 1),
                Message.of("drill.because.altitude")
                        .with("value", Fact.temperature(right, draw.units()))
                        .with("sea", Fact.temperature(wrong, draw.units())));
    }

    private static Question airflowPerTon(Draw draw) {
        int tons = draw.whole(2, 5);
        int perTon = 10 * draw.whole(28, 45);
        int flow = tons * perTon;
        double right = perTon(flow, tons);
        return new Question(
                Message.of("drill.ask.airflow-per-ton")
                        .with("flow", cubicFeet(flow))
                        .with("tons", new Fact.Count(tons)),
                new Wanted.Amount(
                        new Reading(
                                Quantity.AIRFLOW, BigDecimal.valueOf(Math.round(right)), Unit.CUBIC_FOOT_PER_MINUTE),
                        5),
                Message.of("drill.because.airflow-per-ton")
                        .with("flow", cubicFeet(flow))
                        .with("tons", new Fact.Count(tons))
                        .with("value", cubicFeet((int) Math.round(right))));
    }

    private static Question airflowEnough(Draw draw) {
        int tons = draw.whole(2, 5);
        int perTon = draw.heads() ? draw.whole(310, 420) : draw.whole(200, 290);
        int flow = tons * perTon;
        return new Question(
                Message.of("drill.ask.airflow-enough")
                        .with("flow", cubicFeet(flow))
                        .with("tons", new Fact.Count(tons)),
                new Wanted.Agreement(AirflowPerTon.enough(perTon(flow, tons))),
                Message.of("drill.because.airflow-enough").with("value", cubicFeet(perTon)));
    }

    private static double perTon(int flow, int tons) {
        return AirflowPerTon.of(Readings.of(
                        Reading.of(Quantity.AIRFLOW, String.valueOf(flow)),
                        Reading.of(Quantity.CAPACITY, String.valueOf(tons))))
                .orElseThrow();
    }

    private static Fact.Amount cubicFeet(int value) {
        return new Fact.Amount(BigDecimal.valueOf(value), Unit.CUBIC_FOOT_PER_MINUTE);
    }

    /** What the charge check itself would not exceed, however far off the charge is. */
    private static Question largestStep(Draw draw) {
        int pounds = draw.whole(3, 15);
        Mass right = Correction.after(
                        ChargeMethod.SUBCOOLING,
                        List.of(new Correction.Step(Mass.NONE, TemperatureDifference.fahrenheit(-15))),
                        TemperatureDifference.fahrenheit(1),
                        Band.fahrenheit(-3, 3),
                        Optional.of(Mass.pounds(pounds)),
                        Optional.of(new ChargeLevel(0, 0)),
                        1)
                .next();
        return new Question(
                Message.of("drill.ask.largest-step").with("charge", pounds(pounds)),
                Draw.ounces(Quantity.REFRIGERANT_ADDED, right.ounces(), OUNCE / 2),
                Message.of("drill.because.largest-step").with("value", ounces(right.ounces())));
    }

    private static Question lineCharge(Draw draw) {
        Refrigerant refrigerant = Draw.refrigerant("R-410A");
        double rate = LineCharge.kilogramsPerMetre(refrigerant, THREE_EIGHTHS).orElseThrow();
        int included = 15;
        int length = draw.whole(20, 60);
        double right = LineCharge.adjustment(rate, length * FOOT, rate, included * FOOT)
                .ounces();
        return new Question(
                Message.of("drill.ask.line-charge")
                        .with("included", new Fact.Count(included))
                        .with("length", new Fact.Count(length))
                        .with("rate", ounces(Mass.kilograms(rate * FOOT).ounces())),
                Draw.ounces(Quantity.REFRIGERANT_ADDED, right, Math.max(OUNCE, 0.02 * right)),
                Message.of("drill.because.line-charge")
                        .with("more", new Fact.Count(length - included))
                        .with("value", ounces(right)));
    }

    private static Fact.Amount ounces(double value) {
        return new Fact.Amount(Fact.rounded(value), Unit.OUNCE);
    }

    private static Fact.Amount pounds(int value) {
        return new Fact.Amount(BigDecimal.valueOf(value), Unit.POUND);
    }

    /** A blend that leaves the cylinder as vapour leaves its parts unevenly. */
    private static Question phase(Draw draw) {
        Refrigerant refrigerant = Draw.refrigerant(draw.any(BLENDS_AND_PURE));
        return new Question(
                Message.of("drill.ask.charging-phase").with("refrigerant", name(refrigerant)),
                new Wanted.Agreement(!refrigerant.blend()),
                Message.of("drill.because.charging-phase." + (refrigerant.blend() ? "blend" : "pure")));
    }

    private static Question side(Draw draw) {
        boolean superheat = draw.heads();
        Refrigerant refrigerant = Draw.refrigerant(draw.any(List.of("R-407C", "R-454B")));
        String right = superheat ? "dew" : "bubble";
        return new Question(
                Message.of("drill.ask.saturation-side." + (superheat ? "superheat" : "subcooling"))
                        .with("refrigerant", name(refrigerant)),
                new Wanted.Option("saturation-side", right, List.of("dew", "bubble")),
                Message.of("drill.because.saturation-side." + right));
    }

    private static Question nitrogen(Draw draw) {
        Reading start = draw.shown(Quantity.LIQUID_PRESSURE, GaugePressure.psig(10 * draw.whole(20, 45)));
        Reading before = draw.temperature(Quantity.OUTDOOR_TEMPERATURE, 75, 95);
        Reading after = draw.temperature(Quantity.OUTDOOR_TEMPERATURE, 50, 70);
        Wanted.Amount wanted = draw.pressure(
                Quantity.LIQUID_PRESSURE,
                StandingPressure.expected(
                        start.gaugePressure(), before.temperature(), after.temperature(), Atmosphere.SEA_LEVEL),
                PSI);
        return new Question(
                Message.of("drill.ask.nitrogen")
                        .with("start", Fact.amount(start))
                        .with("before", Fact.amount(before))
                        .with("after", Fact.amount(after)),
                wanted,
                Message.of("drill.because.nitrogen").with("value", Fact.amount(wanted.value())));
    }

    private static Question leakTest(Draw draw) {
        while (true) {
            Reading start = draw.shown(Quantity.LIQUID_PRESSURE, GaugePressure.psig(10 * draw.whole(20, 45)));
            Reading before = draw.temperature(Quantity.OUTDOOR_TEMPERATURE, 75, 95);
            Reading after = draw.temperature(Quantity.OUTDOOR_TEMPERATURE, 60, 90);
            GaugePressure expected = StandingPressure.expected(
                    start.gaugePressure(), before.temperature(), after.temperature(), Atmosphere.SEA_LEVEL);
            Reading end = draw.shown(
                    Quantity.LIQUID_PRESSURE,
                    GaugePressure.psig(expected.psig() - (draw.heads() ? 0 : draw.whole(12, 30))));
            StandingPressure.Result result = StandingPressure.judge(
                    start.gaugePressure(),
                    before.temperature(),
                    end.gaugePressure(),
                    after.temperature(),
                    Atmosphere.SEA_LEVEL);
            if (result.outcome() != StandingPressure.Outcome.NOT_SETTLED) {
                Wanted.Amount right = draw.pressure(Quantity.LIQUID_PRESSURE, result.expected(), PSI);
                return new Question(
                        Message.of("drill.ask.leak-test")
                                .with("start", Fact.amount(start))
                                .with("before", Fact.amount(before))
                                .with("end", Fact.amount(end))
                                .with("after", Fact.amount(after)),
                        new Wanted.Agreement(result.outcome() == StandingPressure.Outcome.TIGHT),
                        Message.of("drill.because.leak-test").with("value", Fact.amount(right.value())));
            }
        }
    }

    private static Question vacuum(Draw draw) {
        int start = 10 * draw.whole(25, 45);
        int end = draw.heads() ? start + 10 * draw.whole(0, 4) : 100 * draw.whole(7, 20);
        int minutes = 10;
        VacuumDecay.Outcome outcome = VacuumDecay.judge(
                List.of(
                        new VacuumDecay.Sample(Duration.ZERO, AbsolutePressure.microns(start)),
                        new VacuumDecay.Sample(Duration.ofMinutes(minutes), AbsolutePressure.microns(end))),
                VacuumCriterion.FIELD);
        return new Question(
                Message.of("drill.ask.vacuum")
                        .with("start", new Fact.Count(start))
                        .with("end", new Fact.Count(end))
                        .with("minutes", new Fact.Count(minutes)),
                new Wanted.Agreement(outcome == VacuumDecay.Outcome.TIGHT),
                Message.of("drill.because.vacuum"));
    }

    private static RecoveryCylinder cylinder(Refrigerant refrigerant, int water, int tare) {
        return RecoveryCylinder.of(refrigerant, Mass.pounds(water), Mass.pounds(tare))
                .orElseThrow();
    }

    private static Question cylinderLimit(Draw draw) {
        Refrigerant refrigerant = Draw.refrigerant(draw.any(List.of("R-410A", "R-22", "R-32")));
        int water = draw.any(List.of(26, 48, 62));
        int tare = water / 2 + draw.whole(2, 5);
        double right = cylinder(refrigerant, water, tare).grossLimit().pounds();
        Reading value = new Reading(Quantity.CYLINDER_WEIGHT, Fact.rounded(right), Unit.POUND);
        return new Question(
                Message.of("drill.ask.cylinder-limit")
                        .with("refrigerant", name(refrigerant))
                        .with("water", pounds(water))
                        .with("tare", pounds(tare)),
                new Wanted.Amount(value, 1),
                Message.of("drill.because.cylinder-limit").with("value", Fact.amount(value)));
    }

    private static Question cylinderFull(Draw draw) {
        Refrigerant refrigerant = Draw.refrigerant(draw.any(List.of("R-410A", "R-22", "R-32")));
        int water = draw.any(List.of(26, 48, 62));
        int tare = water / 2 + draw.whole(2, 5);
        RecoveryCylinder cylinder = cylinder(refrigerant, water, tare);
        int limit = (int) cylinder.grossLimit().pounds();
        int scale = draw.heads() ? limit - draw.whole(3, 12) : limit + draw.whole(3, 8);
        Reading most = new Reading(
                Quantity.CYLINDER_WEIGHT, Fact.rounded(cylinder.grossLimit().pounds()), Unit.POUND);
        return new Question(
                Message.of("drill.ask.cylinder-full")
                        .with("refrigerant", name(refrigerant))
                        .with("water", pounds(water))
                        .with("tare", pounds(tare))
                        .with("scale", pounds(scale)),
                new Wanted.Agreement(cylinder.room(Mass.pounds(scale)).kilograms() > 0),
                Message.of("drill.because.cylinder-limit").with("value", Fact.amount(most)));
    }

    private static Question liquid(Draw draw) {
        int superheat = draw.heads() ? draw.whole(0, 3) : draw.whole(7, 20);
        TemperatureDifference value = TemperatureDifference.fahrenheit(superheat);
        return new Question(
                Message.of("drill.ask.liquid-at-compressor").with("value", Fact.difference(value, draw.units())),
                new Wanted.Agreement(value.compareTo(CautionFinder.LEAST_SAFE_SUPERHEAT) < 0),
                Message.of("drill.because.liquid-at-compressor")
                        .with("limit", Fact.difference(CautionFinder.LEAST_SAFE_SUPERHEAT, draw.units())));
    }

    private static Question discharge(Draw draw) {
        Reading line = draw.heads()
                ? draw.temperature(Quantity.DISCHARGE_LINE_TEMPERATURE, 230, 250)
                : draw.temperature(Quantity.DISCHARGE_LINE_TEMPERATURE, 150, 215);
        return new Question(
                Message.of("drill.ask.hot-discharge").with("line", Fact.amount(line)),
                new Wanted.Agreement(line.temperature().compareTo(CautionFinder.HOTTEST_DISCHARGE_LINE) > 0),
                Message.of("drill.because.hot-discharge")
                        .with("limit", Fact.temperature(CautionFinder.HOTTEST_DISCHARGE_LINE, draw.units())));
    }

    private static Question freezing(Draw draw) {
        Refrigerant refrigerant = Draw.refrigerant(draw.any(List.of("R-410A", "R-22", "R-454B")));
        Temperature coil = Temperature.fahrenheit(draw.heads() ? draw.whole(20, 29) : draw.whole(36, 46));
        Reading pressure = draw.gauge(Quantity.SUCTION_PRESSURE, refrigerant, Side.DEW, coil);
        Temperature right = Draw.saturation(refrigerant, Side.DEW, pressure);
        return new Question(
                Message.of("drill.ask.freezing-coil")
                        .with("refrigerant", name(refrigerant))
                        .with("pressure", Fact.amount(pressure)),
                new Wanted.Agreement(right.compareTo(CautionFinder.FREEZING) < 0),
                Message.of("drill.because.freezing-coil").with("value", Fact.temperature(right, draw.units())));
    }

    private static Question flammable(Draw draw) {
        Refrigerant refrigerant = Draw.refrigerant(draw.any(List.of("R-410A", "R-22", "R-32", "R-454B", "R-290")));
        boolean burns = refrigerant.safetyClass().flammable();
        return new Question(
                Message.of("drill.ask.flammable").with("refrigerant", name(refrigerant)),
                new Wanted.Agreement(burns),
                Message.of("drill.because.flammable." + (burns ? "yes" : "no"))
                        .with("class", new Fact.Quoted(refrigerant.safetyClass().name())));
    }

    private static Question testPressure(Draw draw) {
        Reading plate = draw.shown(Quantity.PLATE_LOW_SIDE_PRESSURE, GaugePressure.psig(draw.whole(230, 260)));
        Reading test = draw.shown(
                Quantity.LIQUID_PRESSURE,
                GaugePressure.psig(draw.heads() ? 10 * draw.whole(15, 22) : 10 * draw.whole(35, 50)));
        boolean allowed =
                CautionFinder.in(
                                new Situation.PressureTesting(test.gaugePressure(), Optional.of(plate.gaugePressure())))
                        .stream()
                        .noneMatch(caution -> caution.rule() == CautionRule.TEST_PRESSURE_ABOVE_PLATE);
        return new Question(
                Message.of("drill.ask.test-pressure")
                        .with("plate", Fact.amount(plate))
                        .with("test", Fact.amount(test)),
                new Wanted.Agreement(allowed),
                Message.of("drill.because.test-pressure").with("plate", Fact.amount(plate)));
    }
}
