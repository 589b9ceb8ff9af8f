package readback.calc.commissioning;

import readback.calc.measurement.Comparison;
import readback.calc.measurement.Limits;
import readback.calc.procedure.WeighIn;

/**
 * The grade of one task of an installation, after ANSI/RESNET/ACCA 310-2020 (its limits from memory). It is no rating:
 * that takes a certified rater and the text of the standard.
 */
public enum InstallationGrade {
    I,
    II,
    III;

    /** Share of the design airflow. ANSI/ACCA 5 QI-2015 and ANSI/RESNET/ACCA 310-2020, from memory. */
    public static final double AIRFLOW_GRADE_I = 0.15;

    /** Share of the design airflow. ANSI/RESNET/ACCA 310-2020, from memory. */
    public static final double AIRFLOW_GRADE_II = 0.25;

    /** What unit conversion may leave between equal values, relative. */
    private static final double ROUNDING = 1e-9;

    /**
     * The airflow over the indoor coil, both ends of a limit inside.
     *
     * @param measured in any unit of airflow
     * @param design in the same unit, as the designer states it
     * @throws IllegalArgumentException for a design airflow that is not above zero
     */
    public static InstallationGrade ofAirflow(double measured, double design) {
        if (!(design > 0)) {
            throw new IllegalArgumentException("a design airflow must be above zero: " + design);
        }
        double off = Math.abs(measured / design - 1);
        if (off <= AIRFLOW_GRADE_I + ROUNDING) {
            return I;
        }
        return off <= AIRFLOW_GRADE_II + ROUNDING ? II : III;
    }

    /**
     * The charge by its readings, whoever judged it: the limits of ANSI/ACCA 5 QI-2015 are those of the installer.
     * There is no second grade (from memory).
     *
     * @param deviation actual minus target superheat or subcooling against {@link Limits#INSTALLER}
     */
    public static InstallationGrade ofCharge(Comparison deviation) {
        return deviation.position() == Comparison.Position.INSIDE ? I : III;
    }

    /** The charge by its weight. There is no second grade (from memory). */
    public static InstallationGrade ofCharge(WeighIn.Outcome weighed) {
        return weighed == WeighIn.Outcome.ON_TARGET ? I : III;
    }
}
