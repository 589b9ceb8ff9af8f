package readback.assistant.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import readback.assistant.dialogue.Slots;
import readback.assistant.dialogue.outcome.Figure;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;

/** What was measured for an outcome, and the numbers that followed from it. */
public final class JobFigures {

    /** The readings that each outcome is judged from; those of the charge are a report of their own. */
    private static final Map<Judged, List<Slot>> READINGS = Map.ofEntries(
            Map.entry(Judged.CHARGE, List.of()),
            Map.entry(Judged.FROZEN_COIL, List.of()),
            Map.entry(Judged.APPLICABLE_TEST, List.of(Slot.of(Quantity.OUTDOOR_TEMPERATURE))),
            Map.entry(
                    Judged.HEATING,
                    List.of(
                            Slot.of(Quantity.OUTDOOR_TEMPERATURE),
                            Slots.HEATING_RETURN,
                            Slots.HEATING_SUPPLY,
                            Slots.HEATING_DISCHARGE,
                            Slots.HEATING_SUCTION,
                            Slots.HEATING_SUCTION_LINE)),
            Map.entry(
                    Judged.HEATER_AIRFLOW,
                    List.of(Slot.of(Quantity.HEATER_POWER), Slots.HEATER_RETURN, Slots.HEATER_SUPPLY)),
            Map.entry(
                    Judged.CAPACITY,
                    List.of(
                            Slot.of(Quantity.AIRFLOW),
                            Slot.of(Quantity.RETURN_DRY_BULB),
                            Slot.of(Quantity.RETURN_WET_BULB),
                            Slot.of(Quantity.SUPPLY_DRY_BULB),
                            Slot.of(Quantity.SUPPLY_WET_BULB),
                            Slot.of(Quantity.CAPACITY),
                            Slot.of(Quantity.LINE_VOLTAGE),
                            Slot.of(Quantity.COMPRESSOR_CURRENT))),
            Map.entry(
                    Judged.AIRFLOW,
                    List.of(
                            Slot.of(Quantity.RETURN_DRY_BULB),
                            Slot.of(Quantity.RETURN_WET_BULB),
                            Slot.of(Quantity.SUPPLY_DRY_BULB))),
            Map.entry(
                    Judged.EVACUATION,
                    List.of(Slots.VACUUM_LIMIT, Slots.VACUUM_ISOLATED, Slots.VACUUM_HALF, Slots.VACUUM_HELD)),
            Map.entry(
                    Judged.PRESSURE_TEST,
                    List.of(Slots.PRESSURE_START, Slots.GAS_START, Slots.PRESSURE_END, Slots.GAS_END)),
            Map.entry(Judged.RESTING_PRESSURE, List.of(Slot.of(Quantity.RESTING_PRESSURE), Slots.REST_TEMPERATURE)),
            Map.entry(
                    Judged.WEIGH_IN,
                    List.of(
                            Slot.of(Quantity.NAMEPLATE_CHARGE),
                            Slot.of(Quantity.LIQUID_TUBE_SIZE),
                            Slot.of(Quantity.LINE_LENGTH),
                            Slot.of(Quantity.INCLUDED_LINE_LENGTH),
                            Slots.INCLUDED_TUBE_SIZE,
                            Slot.of(Quantity.LINE_CHARGE),
                            Slot.of(Quantity.SUCTION_TUBE_SIZE),
                            Slots.INCLUDED_SUCTION_SIZE,
                            Slot.of(Quantity.FILTER_DRIER_CHARGE),
                            Slot.of(Quantity.LIQUID_LIFT),
                            Slot.of(Quantity.ROOM_AREA))),
            Map.entry(Judged.WEIGHED_IN, List.of(Slots.SCALE_BEFORE, Slots.SCALE_AFTER)),
            Map.entry(
                    Judged.FUNCTIONAL_CHECK,
                    List.of(
                            Slots.FUNCTIONAL_SUCTION_PRESSURE,
                            Slots.FUNCTIONAL_SUCTION_LINE,
                            Slots.FUNCTIONAL_LIQUID_PRESSURE,
                            Slots.FUNCTIONAL_LIQUID_LINE,
                            Slots.FUNCTIONAL_RETURN,
                            Slots.FUNCTIONAL_SUPPLY)));

    private JobFigures() {}

    /**
     * The readings first, in the order in which they were asked, then the numbers of the outcome.
     *
     * @param filled what a slot held when the outcome was announced
     */
    public static List<Figure> of(JobOutcome outcome, UnitSetting units, Function<Slot, Optional<Reading>> filled) {
        List<Figure> figures = new ArrayList<>();
        READINGS.getOrDefault(outcome.judged(), List.of())
                .forEach(slot -> filled.apply(slot).ifPresent(reading -> figures.add(Figure.of(slot.id(), reading))));
        figures.addAll(outcome.figures(units));
        return List.copyOf(figures);
    }
}
