package readback.assistant.dialogue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import readback.assistant.dialogue.outcome.Announcement;
import readback.assistant.dialogue.outcome.Capacity;
import readback.assistant.dialogue.outcome.HeaterAirflow;
import readback.assistant.dialogue.outcome.Telling;
import readback.calc.air.MoistAir;
import readback.calc.condition.AirflowPerTon;
import readback.calc.measurement.Readings;
import readback.calc.procedure.AirSide;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;
import readback.prompts.text.Fact;
import readback.prompts.text.Message;

/** The air side: the airflow from electric heat, and what the system takes out of the air. */
final class AirSideJudge {

    private final Assessment assessment;

    AirSideJudge(Assessment assessment) {
        this.assessment = assessment;
    }

    /** What electric heaters draw, and how much they warm the air. */
    private record Heated(double watts, TemperatureDifference rise) {

        /** Empty while a reading is missing. */
        static Optional<Heated> of(Sheet sheet) {
            return sheet.reading(Quantity.HEATER_POWER)
                    .flatMap(power -> sheet.reading(Slots.HEATER_RETURN)
                            .flatMap(before -> sheet.reading(Slots.HEATER_SUPPLY)
                                    .map(after -> new Heated(
                                            power.base(), after.temperature().minus(before.temperature())))));
        }

        /** Empty where nothing is warmed. */
        Optional<Reading> airflow(AbsolutePressure air) {
            if (rise.kelvins() <= 0 || watts <= 0) {
                return Optional.empty();
            }
            double flow = Unit.CUBIC_FOOT_PER_MINUTE.fromBase(AirSide.airflow(watts, rise, air));
            return Optional.of(
                    new Reading(Quantity.AIRFLOW, BigDecimal.valueOf(Math.round(flow)), Unit.CUBIC_FOOT_PER_MINUTE));
        }
    }

    /** The airflow that the rise over electric heaters shows; empty while a reading is missing or nothing is warmed. */
    static Optional<Reading> heaterAirflow(Sheet sheet, AbsolutePressure air) {
        return Heated.of(sheet).flatMap(heated -> heated.airflow(air));
    }

    Optional<Announcement> airflow() {
        return Heated.of(assessment.sheet()).map(heated -> told(heated.airflow(assessment.air())));
    }

    private Announcement told(Optional<Reading> flow) {
        Telling telling = new Telling();
        if (flow.isEmpty()) {
            telling.headline(Message.of("heater-airflow.no-rise"));
            return telling.of(new HeaterAirflow(0));
        }
        telling.headline(Message.of("heater-airflow.measured").with("value", Fact.amount(flow.get())));
        OptionalDouble perTon = AirflowPerTon.of(assessment.readings());
        if (perTon.isPresent()) {
            boolean enough = AirflowPerTon.enough(perTon.getAsDouble());
            telling.headline(Message.of(enough ? "airflow.enough" : "airflow.too-little-air"));
        }
        return telling.of(new HeaterAirflow(flow.get().value().longValue()));
    }

    Optional<Announcement> capacity() {
        Readings readings = assessment.readings();
        Optional<Reading> flow = readings.find(Quantity.AIRFLOW);
        Optional<MoistAir> before = air(Quantity.RETURN_DRY_BULB, Quantity.RETURN_WET_BULB);
        Optional<MoistAir> after = air(Quantity.SUPPLY_DRY_BULB, Quantity.SUPPLY_WET_BULB);
        if (flow.isEmpty() || before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        double total = AirSide.totalCooling(flow.get().base(), before.get(), after.get());
        double sensible = AirSide.sensibleCooling(flow.get().base(), before.get(), after.get());
        Capacity found = new Capacity(
                Math.round(total),
                Math.round(sensible),
                share(total, readings.base(Quantity.CAPACITY).orElse(0)),
                share(total, apparentPower(readings)));
        Telling telling = new Telling();
        if (found.cools()) {
            telling.headline(Message.of("capacity.total").with("value", power(total)));
            telling.number(Message.of("capacity.sensible").with("value", power(sensible)));
            found.percentOfPlate()
                    .ifPresent(percent -> telling.headline(
                            Message.of("capacity.of-plate").with("share", new Fact.Count(percent.intValue()))));
            found.wattsPerHundredVoltAmperes()
                    .ifPresent(watts -> telling.number(
                            Message.of("capacity.performance").with("watts", new Fact.Count(watts.intValue()))));
        } else {
            telling.headline(Message.of("capacity.no-cooling"));
        }
        telling.reason(Message.of("capacity.information"));
        return Optional.of(telling.of(found));
    }

    /** In whole percent; empty where nothing is known to compare with. */
    private static Optional<Long> share(double part, double whole) {
        return part > 0 && whole > 0 ? Optional.of(Math.round(100 * part / whole)) : Optional.empty();
    }

    /** Volts times amperes of the compressor; zero where one of them was not read. */
    private static double apparentPower(Readings readings) {
        return readings.base(Quantity.LINE_VOLTAGE).orElse(0)
                * readings.base(Quantity.COMPRESSOR_CURRENT).orElse(0);
    }

    private Fact power(double watts) {
        Unit unit =
                assessment.settings().units().temperature() == Unit.CELSIUS ? Unit.KILOWATT : Unit.TON_OF_REFRIGERATION;
        return new Fact.Amount(BigDecimal.valueOf(unit.fromBase(watts)).setScale(1, RoundingMode.HALF_UP), unit);
    }

    /** Empty too where a wet bulb lies above its dry bulb. */
    private Optional<MoistAir> air(Quantity dryBulb, Quantity wetBulb) {
        Readings readings = assessment.readings();
        return readings.temperature(dryBulb)
                .flatMap(dry -> readings.temperature(wetBulb).flatMap(wet -> {
                    try {
                        return Optional.of(MoistAir.fromWetBulb(dry, wet, assessment.air()));
                    } catch (OutOfRangeException e) {
                        return Optional.empty();
                    }
                }));
    }
}
