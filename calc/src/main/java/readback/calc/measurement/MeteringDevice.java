package readback.calc.measurement;

/** What feeds the evaporator. */
public enum MeteringDevice {
    PISTON(ChargeMethod.TOTAL_SUPERHEAT),
    CAPILLARY_TUBE(ChargeMethod.TOTAL_SUPERHEAT),
    THERMOSTATIC_EXPANSION_VALVE(ChargeMethod.SUBCOOLING),
    ELECTRONIC_EXPANSION_VALVE(ChargeMethod.SUBCOOLING);

    private final ChargeMethod chargeMethod;

    MeteringDevice(ChargeMethod chargeMethod) {
        this.chargeMethod = chargeMethod;
    }

    /**
     * The valid charge check. A fixed orifice passes more refrigerant when more is charged, so superheat answers to
     * charge; an expansion valve holds its superheat, so only subcooling does (California Energy Commission Reference
     * Appendices RA3.2.2).
     */
    public ChargeMethod chargeMethod() {
        return chargeMethod;
    }
}
