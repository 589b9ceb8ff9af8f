package readback.prompts.checklist;

/** What a checklist can ask to judge, and so what a job can come to. In the order in which outcomes are told. */
public enum Judged {
    /** The charge of a running system. */
    CHARGE,
    /** The temperature split of the indoor air. */
    AIRFLOW,
    /** The decay of a vacuum. */
    EVACUATION,
    /** A coil that was iced. */
    FROZEN_COIL,
    /** The standing pressure test with nitrogen. */
    PRESSURE_TEST,
    /** The pressure of a system at rest against saturation. */
    RESTING_PRESSURE,
    /** How much refrigerant is to be weighed in. */
    WEIGH_IN,
    /** How much was weighed in. */
    WEIGHED_IN,
    /** What a system that was charged by weight shows when it runs. */
    FUNCTIONAL_CHECK,
    /** Which check of the charge applies today. */
    APPLICABLE_TEST,
    /** A heat pump while it heats. */
    HEATING,
    /** The airflow, from electric heat and the rise of the air. */
    HEATER_AIRFLOW,
    /** How much the system cools. */
    CAPACITY
}
