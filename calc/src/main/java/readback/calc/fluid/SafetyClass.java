package readback.calc.fluid;

/** Safety group of a refrigerant: ASHRAE Standard 34, ISO 817. A is of lower toxicity; the figure is flammability. */
public enum SafetyClass {
    /** No flame propagation. */
    A1,
    /** Lower flammability, burns slowly. */
    A2L,
    /** Flammable. */
    A2,
    /** Higher flammability. */
    A3;

    /** Whether a leak can burn. */
    public boolean flammable() {
        return this != A1;
    }
}
