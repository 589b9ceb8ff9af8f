package readback.assistant.dialogue;

import java.util.Optional;
import readback.calc.measurement.Limits;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.JobId;

/**
 * What is fixed for a session before it starts.
 *
 * @param job the job to do
 * @param units units meant when none is said
 * @param brief start in the brief voice
 * @param altitude height of the site, known beforehand; empty for sea level until one is stated
 * @param limits whose tolerance limits apply
 * @param refrigerant designation known beforehand; empty to ask
 * @param technician who works, for the record; empty when not told
 * @param site where, for the record; empty when not told
 */
public record SessionSettings(
        JobId job,
        UnitSetting units,
        boolean brief,
        Optional<Reading> altitude,
        Limits limits,
        Optional<String> refrigerant,
        Optional<String> technician,
        Optional<String> site) {

    /** The charge check at sea level, in US units, in the guiding voice, against an installer's limits. */
    public static final SessionSettings STANDARD = new SessionSettings(
            JobId.CHARGE_CHECK,
            UnitSetting.US,
            false,
            Optional.empty(),
            Limits.INSTALLER,
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /** The same settings with other units. */
    SessionSettings in(UnitSetting other) {
        return new SessionSettings(job, other, brief, altitude, limits, refrigerant, technician, site);
    }
}
