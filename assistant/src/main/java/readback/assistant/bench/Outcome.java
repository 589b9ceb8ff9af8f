package readback.assistant.bench;

import java.util.Set;
import readback.assistant.simulated.Case;
import readback.assistant.simulated.Truth;
import readback.calc.caution.CautionRule;
import readback.calc.charge.Verdict;
import readback.calc.diagnosis.Fault;

/**
 * What came of a call.
 *
 * @param said the first verdict; incomplete where there never was one
 * @param recharge whether the first verdict was no valid test, with too little charge told as the likely reason
 * @param suspect the likeliest cause when it was said
 * @param suspectAfterLooking the likeliest cause after every look that was advised, before anything was moved
 * @param amongFirstTwo whether what is wrong was one of the two likeliest causes then
 * @param asked readings and looks asked for beyond the checklist before the first verdict
 * @param moves how often refrigerant was moved
 * @param wrongOunces moved away from the nameplate charge, or at all where the charge is not what is wrong
 * @param recharged whether the unit was emptied and charged by weight, as it was told
 * @param charge at the end, as a share of the nameplate's
 * @param threatened by what the compressor or the coil was truly threatened at a verdict
 * @param unwarned the part of it that no caution told of by then
 */
record Outcome(
        Case drawn,
        Verdict.Kind said,
        boolean recharge,
        Fault suspect,
        Fault suspectAfterLooking,
        boolean amongFirstTwo,
        int asked,
        int moves,
        double wrongOunces,
        boolean recharged,
        double charge,
        Set<CautionRule> threatened,
        Set<CautionRule> unwarned,
        Ending ending) {

    /** A charge this near to the nameplate's is right. */
    private static final double RIGHT = 0.03;

    /** Charge faults beyond this have to be seen. */
    private static final double CLEAR = 0.1;

    /** How a call ended. */
    enum Ending {
        FINISHED,
        /** What was moved stopped the unit. */
        STOPPED,
        /** The dialogue did not come to an end. */
        ENDLESS
    }

    Outcome {
        threatened = Set.copyOf(threatened);
        unwarned = Set.copyOf(unwarned);
    }

    Truth truth() {
        return drawn.truth();
    }

    boolean moved() {
        return moves > 0;
    }

    boolean chargeRight() {
        return Math.abs(charge - 1) <= RIGHT;
    }

    boolean suspectRight() {
        return suspect == truth().suspect();
    }

    boolean suspectAfterLookingRight() {
        return suspectAfterLooking == truth().suspect();
    }

    /** A charge fault that has to be seen. */
    boolean clearlyCharge() {
        return truth().isCharge() && truth().size() > CLEAR;
    }

    /** Added or recovered in the right direction, or sent to the leak and the scale where refrigerant is missing. */
    boolean rightDirection() {
        return said == (truth().charge() < 1 ? Verdict.Kind.ADD : Verdict.Kind.RECOVER)
                || (recharge && truth().charge() < 1);
    }

    boolean wrongDirection() {
        return said == (truth().charge() < 1 ? Verdict.Kind.RECOVER : Verdict.Kind.ADD)
                || (recharge && truth().charge() >= 1);
    }
}
