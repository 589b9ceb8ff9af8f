package readback.assistant.dialogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.caution.CautionRule;
import readback.calc.measurement.Limits;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.JobId;

/**
 * What is fixed for a session before it starts.
 *
 * @param job the job to do
 * @param units units meant when none is said
 * @param brief start in the brief voice
 * @param known what is known beforehand of the site and the instruments: altitude and accuracies, each once
 * @param limits whose tolerance limits apply
 * @param refrigerant designation known beforehand; empty to ask
 * @param technician who works, for the record; empty when not told
 * @param site where, for the record; empty when not told
 * @param understood cautions that were read out and understood earlier the same day, by this technician at this site:
 *     they are named, not read out again
 * @param delivery how loud and how fast the voice speaks
 * @param tutor how much the technician is told about the work
 */
public record SessionSettings(
        JobId job,
        UnitSetting units,
        boolean brief,
        List<Reading> known,
        Limits limits,
        Optional<String> refrigerant,
        Optional<String> technician,
        Optional<String> site,
        Set<CautionRule> understood,
        Delivery delivery,
        Tutor tutor) {

    /** Where the altitude does not matter. */
    public static final Reading SEA_LEVEL = Reading.of(Quantity.ALTITUDE, "0");

    /** The charge check at sea level, in US units, in the guiding voice, against an installer's limits. */
    public static final SessionSettings STANDARD = new SessionSettings(
            JobId.CHARGE_CHECK,
            UnitSetting.US,
            false,
            List.of(SEA_LEVEL),
            Limits.INSTALLER,
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    public SessionSettings {
        known = List.copyOf(known);
        understood = Set.copyOf(understood);
    }

    /** Settings of a first session of the day: every caution is read out, by the voice as it speaks by itself. */
    public SessionSettings(
            JobId job,
            UnitSetting units,
            boolean brief,
            List<Reading> known,
            Limits limits,
            Optional<String> refrigerant,
            Optional<String> technician,
            Optional<String> site) {
        this(job, units, brief, known, limits, refrigerant, technician, site, Set.of(), Delivery.PLAIN, Tutor.GUIDE);
    }

    /** The same settings where these cautions were understood earlier the same day. */
    public SessionSettings having(Set<CautionRule> alreadyUnderstood) {
        return new SessionSettings(
                job, units, brief, known, limits, refrigerant, technician, site, alreadyUnderstood, delivery, tutor);
    }

    /** The same settings with one thing more known, unless it is known already. */
    public SessionSettings knowing(Reading reading) {
        if (known.stream().anyMatch(each -> each.quantity() == reading.quantity())) {
            return this;
        }
        List<Reading> more = new ArrayList<>(known);
        more.add(reading);
        return new SessionSettings(
                job, units, brief, more, limits, refrigerant, technician, site, understood, delivery, tutor);
    }

    /** The same settings where the voice speaks like this. */
    public SessionSettings delivered(Delivery other) {
        return new SessionSettings(
                job, units, brief, known, limits, refrigerant, technician, site, understood, other, tutor);
    }

    /** The same settings with this tutor. */
    public SessionSettings taughtBy(Tutor other) {
        return new SessionSettings(
                job, units, brief, known, limits, refrigerant, technician, site, understood, delivery, other);
    }

    /** The same settings with other units. */
    SessionSettings in(UnitSetting other) {
        return new SessionSettings(
                job, other, brief, known, limits, refrigerant, technician, site, understood, delivery, tutor);
    }
}
