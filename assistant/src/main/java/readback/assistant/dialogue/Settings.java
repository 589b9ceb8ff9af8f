package readback.assistant.dialogue;

import java.util.List;
import java.util.Optional;
import readback.calc.charge.Limits;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;

/**
 * What is fixed for a session before it starts.
 *
 * @param job name of the job to do, as in "charge-check"
 * @param units units meant when none is said
 * @param brief start in the brief voice
 * @param known what is known beforehand of the site and the instruments: altitude and accuracies, each once
 * @param limits whose tolerance limits apply
 * @param refrigerant designation known beforehand; empty to ask
 * @param technician who works, for the record; empty when not told
 * @param site where, for the record; empty when not told
 */
public record Settings(
        String job,
        UnitSetting units,
        boolean brief,
        List<Reading> known,
        Limits limits,
        Optional<String> refrigerant,
        Optional<String> technician,
        Optional<String> site) {

    /** The charge check at sea level, in US units, in the guiding voice, against an installer's limits. */
    public static final Settings STANDARD = new Settings(
            "charge-check",
            UnitSetting.US,
            false,
            List.of(),
            Limits.INSTALLER,
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    public Settings {
        known = List.copyOf(known);
    }

    /** The same settings with other units. */
    Settings in(UnitSetting other) {
        return new Settings(job, other, brief, known, limits, refrigerant, technician, site);
    }
}
