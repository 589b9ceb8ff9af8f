package readback.calc.charge;

import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.Unit;

/** What a verdict is worth where sea level was assumed because nobody said the altitude. */
public final class UnknownAltitude {

    /** Few houses with central cooling lie higher. Ours, no source. */
    private static final int HIGHEST_FEET = 10_000;

    private static final int STEP_FEET = 1_000;

    private static final ChargeJudge JUDGE = new ChargeJudge();

    private UnknownAltitude() {}

    /** Whether the same readings would lead to another verdict somewhere up to 10,000 ft. */
    public static boolean matters(SystemUnderTest system, Readings readings, Verdict verdict) {
        if (!(verdict instanceof Verdict.Compared)) {
            return false;
        }
        for (int feet = STEP_FEET; feet <= HIGHEST_FEET; feet += STEP_FEET) {
            AbsolutePressure air = Atmosphere.atAltitude(Unit.FOOT.toBase(feet));
            if (JUDGE.judge(system.in(air), readings).verdict().kind() != verdict.kind()) {
                return true;
            }
        }
        return false;
    }
}
