package readback.assistant.dialogue.outcome;

import java.util.List;
import java.util.stream.Collectors;
import readback.calc.quantity.Mass;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/**
 * What a job came to, with the numbers that led to it: made once, in the dialogue, and read by record, screen, report
 * and replay. Numbers are rounded when it is made, so that a record holds all that two outcomes are compared by.
 */
public sealed interface JobOutcome
        permits ChargeVerdict,
                AirflowBySplit,
                StatedAirflow,
                PressureHold,
                Evacuation,
                ToWeighIn,
                WeighedIn,
                FunctionalFigures,
                PressureAtRest,
                FrozenCoil,
                ApplicableTest,
                HeaterAirflow,
                Capacity,
                Heating {

    /** What was judged. */
    Judged judged();

    /** What it came to in a word or two, without its numbers: "add", "airflow sufficient". */
    String name();

    /** In one line for a reader, the same for equal outcomes. */
    String line();

    /** The numbers that led to it, in these units; none where it rests on none. */
    List<Figure> figures(UnitSetting units);

    /** Whether the instruments cannot decide it. */
    default boolean borderline() {
        return false;
    }

    /** Whether it shows that the circuit leaks. */
    default boolean showsLeak() {
        return false;
    }

    /** Whether another outcome rests on the same numbers, whatever else was measured between them. */
    default boolean alike(JobOutcome other) {
        return equals(other);
    }

    /** All of them in one line for a reader; empty for none. */
    static String line(List<JobOutcome> outcomes) {
        return outcomes.stream().map(JobOutcome::line).collect(Collectors.joining("; "));
    }

    /** Grams, whole. */
    static long grams(Mass mass) {
        return Math.round(mass.kilograms() * 1000);
    }
}
