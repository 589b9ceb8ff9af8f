package readback.assistant.dialogue;

import readback.calc.condition.Condition;
import readback.calc.diagnosis.Finding;
import readback.calc.diagnosis.NextObservation;
import readback.calc.fluid.Refrigerant;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;

/** Findings as the conditions of steps name them, and whether they hold. */
final class StepFindings {

    /** Finding that holds while another job was interrupted and goes on when this one is done. */
    private static final String OTHER_JOB_WAITS = "other-job-waits";

    /** Finding that holds for a refrigerant that is mixed of several. */
    private static final String BLEND = "blend";

    private static final String READ = "read-";

    private StepFindings() {}

    /** Whether a finding of this name can ever hold. */
    static boolean tells(String finding) {
        return finding.equals(OTHER_JOB_WAITS)
                || finding.equals(BLEND)
                || Holds.tells(finding)
                || Seasons.tells(finding)
                || ConstantName.find(Condition.class, finding).isPresent()
                || (finding.startsWith(Slots.LOOK)
                        && ConstantName.find(Finding.class, finding.substring(Slots.LOOK.length()))
                                .isPresent())
                || (finding.startsWith(READ)
                        && ConstantName.find(Quantity.class, finding.substring(READ.length()))
                                .isPresent());
    }

    /**
     * "blend", conditions that fail by their name, and the observation that is due: "look-" with the name of a finding,
     * "read-" with that of a quantity.
     */
    static boolean found(Assessment assessment, String finding) {
        if (finding.equals(OTHER_JOB_WAITS)) {
            return assessment.jobs().size() > 1;
        }
        if (finding.equals(BLEND)) {
            return assessment.refrigerant().filter(Refrigerant::blend).isPresent();
        }
        boolean failed = assessment.judgement().stream()
                .flatMap(each -> each.conditions().stream())
                .anyMatch(condition -> ConstantName.of(condition.condition()).equals(finding));
        return failed
                || Holds.found(assessment, finding)
                || Seasons.found(assessment, finding)
                || assessment.due().filter(next -> dueAs(next).equals(finding)).isPresent();
    }

    private static String dueAs(NextObservation next) {
        return next.lookedFor()
                .map(finding -> Slots.look(finding).id())
                .orElseGet(() -> READ + ConstantName.of(next.missing().get(0)));
    }
}
