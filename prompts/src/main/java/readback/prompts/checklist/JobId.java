package readback.prompts.checklist;

/**
 * What a job is called: one of the options of the grammar's "checklist" choice set. A job that is not there is told
 * when the program starts.
 *
 * @param id words joined by hyphens
 */
public record JobId(String id) {

    /** The job that a session does unless another is named. */
    public static final JobId CHARGE_CHECK = new JobId("charge-check");

    public static final JobId WEIGH_IN = new JobId("weigh-in");

    public static final JobId FROZEN_COIL = new JobId("frozen-coil");

    public static final JobId WHICH_CHECK = new JobId("which-check");

    public static final JobId WINTER_SET_UP = new JobId("winter-set-up");

    public static final JobId HEATER_AIRFLOW = new JobId("heater-airflow");

    public static final JobId HEATING_CHECK = new JobId("heating-check");

    @Override
    public String toString() {
        return id;
    }
}
