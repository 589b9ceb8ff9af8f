package readback.calc.diagnosis;

import readback.calc.charge.Verdict;

/**
 * What may be in a unit of which nothing but the charge is in question, as shares of the nameplate charge.
 *
 * @param least a twentieth of the probability lies below
 * @param low a quarter lies below
 * @param high a quarter lies above
 * @param most a twentieth lies above
 */
public record ChargeRange(double least, double low, double high, double most) {

    /** By how much the charge is off by all likelihood, on the side that the verdict names; zero if it names none. */
    public double surelyOff(Verdict.Kind kind) {
        return switch (kind) {
            case ADD -> Math.max(0, 1 - high);
            case RECOVER -> Math.max(0, low - 1);
            default -> 0;
        };
    }
}
