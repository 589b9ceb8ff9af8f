package readback.calc.fluid;

/** The reports of the Intergovernmental Panel on Climate Change whose warming potentials the trade prints. */
public enum AssessmentReport {
    /** Fourth, 2007: the values of most labels and of the F-gas rules. */
    AR4,
    /** Fifth, 2013. */
    AR5
}
