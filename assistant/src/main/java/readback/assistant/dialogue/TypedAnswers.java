package readback.assistant.dialogue;

import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import readback.calc.applicability.CircuitParts;
import readback.calc.condition.Condition;
import readback.calc.diagnosis.Finding;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.Efficiency;
import readback.calc.measurement.MakersTarget;
import readback.calc.measurement.MeteringDevice;
import readback.calc.measurement.Readings;
import readback.calc.name.ConstantName;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.prompts.checklist.Slot;

/** What the answers on a sheet say, as calc takes it: the one place where they become typed. */
final class TypedAnswers {

    /** Questions about the air and the running whose "no" denies a condition. */
    private static final Map<Slot, Condition> DENIALS =
            Map.of(Slots.AIR_PATH, Condition.AIRFLOW_SUFFICIENT, Slots.STEADY_RUNNING, Condition.RUN_LONG_ENOUGH);

    private TypedAnswers() {}

    /** As it was told, else as it was known beforehand. */
    static Optional<Refrigerant> refrigerant(Sheet sheet, SessionSettings settings) {
        return sheet.option(Slots.REFRIGERANT)
                .or(settings::refrigerant)
                .flatMap(designation -> Catalogue.standard().find(designation).known());
    }

    static Optional<MeteringDevice> meteringDevice(Sheet sheet) {
        return sheet.option(Slots.METERING_DEVICE).flatMap(option -> ConstantName.find(MeteringDevice.class, option));
    }

    /** Pressure of the air around the gauges; of the sea where the altitude was not told. */
    static AbsolutePressure air(Sheet sheet) {
        return sheet.reading(Quantity.ALTITUDE)
                .map(altitude -> Atmosphere.atAltitude(altitude.base()))
                .orElse(Atmosphere.SEA_LEVEL);
    }

    /** Every reading, stated or following from others, and what was left open. */
    static Readings readings(Sheet sheet, AbsolutePressure air) {
        Readings stated = stated(sheet);
        return sheet.answer(Slot.of(Quantity.AIRFLOW)).isPresent()
                ? stated
                : AirSideJudge.heaterAirflow(sheet, air).map(stated::with).orElse(stated);
    }

    private static Readings stated(Sheet sheet) {
        Readings readings = Readings.none();
        for (Quantity quantity : Quantity.values()) {
            Optional<Answer> answer = sheet.answer(Slot.of(quantity));
            Optional<Reading> reading = answer.flatMap(Sheet::readingOf);
            if (reading.isPresent()) {
                readings = readings.with(reading.get());
            } else if (answer.isPresent()) {
                readings = readings.withUnknown(quantity);
            }
        }
        Readings known = lastStated(readings, sheet);
        if (sheet.answer(Slot.of(Quantity.REFRIGERANT_ADDED)).isPresent()) {
            return known;
        }
        return ScaleSlots.wentIn(sheet::reading).map(known::with).orElse(known);
    }

    /** Gauges are good to a pressure or to a share of the reading, whichever was said last. */
    private static Readings lastStated(Readings readings, Sheet sheet) {
        Optional<Answer> fixed = sheet.answer(Slot.of(Quantity.GAUGE_ACCURACY));
        Optional<Answer> share = sheet.answer(Slot.of(Quantity.GAUGE_ACCURACY_OF_READING));
        return fixed.isPresent()
                        && share.isPresent()
                        && share.get().at().isAfter(fixed.get().at())
                ? readings.without(Quantity.GAUGE_ACCURACY)
                : readings;
    }

    static Map<Finding, Boolean> findings(Sheet sheet) {
        Map<Finding, Boolean> findings = new EnumMap<>(Finding.class);
        for (Finding finding : Finding.values()) {
            sheet.option(Slots.look(finding)).ifPresent(option -> findings.put(finding, !option.equals(Intake.NO)));
        }
        return findings;
    }

    /** Questions that the technician left open. */
    static Set<Finding> passedOver(Sheet sheet) {
        Set<Finding> passedOver = EnumSet.noneOf(Finding.class);
        for (Finding finding : Finding.values()) {
            Slot slot = Slots.look(finding);
            if (sheet.answer(slot).isPresent() && sheet.option(slot).isEmpty()) {
                passedOver.add(finding);
            }
        }
        return passedOver;
    }

    static Set<Condition> denied(Sheet sheet) {
        Set<Condition> denied = EnumSet.noneOf(Condition.class);
        DENIALS.forEach((slot, condition) ->
                sheet.option(slot).filter(Intake.NO::equals).ifPresent(no -> denied.add(condition)));
        return denied;
    }

    static Optional<MakersTarget.Point> secondChartPoint(Sheet sheet) {
        return sheet.reading(Slots.SECOND_CHART_OUTDOOR)
                .flatMap(outdoor -> sheet.reading(Slots.SECOND_CHART_TARGET)
                        .map(target -> new MakersTarget.Point(outdoor.temperature(), target.temperatureDifference())));
    }

    /** What the plate rates, or else what the year of manufacture tells; empty where neither was told. */
    static Optional<Efficiency> efficiency(Sheet sheet) {
        return sheet.option(Slots.SEER_RATING)
                .map(Integer::valueOf)
                .map(Efficiency::rated)
                .or(() -> sheet.option(Slots.YEARS_OLD)
                        .flatMap(years -> sheet.answer(Slots.YEARS_OLD)
                                .map(answer ->
                                        answer.at().atZone(ZoneOffset.UTC).getYear() - Integer.parseInt(years)))
                        .map(Efficiency::builtIn));
    }

    /** What was told of parts of the circuit that change the work on its charge. */
    static CircuitParts parts(Sheet sheet) {
        return new CircuitParts(told(sheet, Slots.MICRO_CHANNEL), told(sheet, Slots.ACCUMULATOR));
    }

    private static boolean told(Sheet sheet, Slot slot) {
        return sheet.option(slot).filter(Intake.YES::equals).isPresent();
    }
}
