package readback.calc.measurement;

/**
 * Who judges, and therefore how far a measured value may lie from its target. The verifier's limits are wider because
 * he repeats the installer's measurement with other instruments.
 *
 * <p>Both ends count as inside. (The 2008 wording for subcooling already says "add" at exactly −3 °F; a value on a
 * limit is reported as borderline either way.)
 *
 * <p>Source: California Energy Commission Reference Appendices RA3.2.2.6.1 (superheat), RA3.2.2.6.2 (subcooling and
 * metering device), RA3.2.2.7 (temperature split), 2008 edition; the verifier's subcooling limit from memory. The
 * installer's superheat and subcooling limits equal those of ANSI/ACCA 5 QI-2015 (from memory).
 */
@SuppressWarnings("ImmutableEnumChecker") // a band is a record of two records of a double
public enum Limits {
    INSTALLER(Band.fahrenheit(-5, 5), Band.fahrenheit(-3, 3), Band.fahrenheit(4, 25), Band.fahrenheit(-3, 3)),
    INDEPENDENT_VERIFIER(
            Band.fahrenheit(-6, 6), Band.fahrenheit(-4, 4), Band.fahrenheit(3, 26), Band.fahrenheit(-4, 4));

    private final Band superheat;
    private final Band subcooling;
    private final Band valveSuperheat;
    private final Band temperatureSplit;

    Limits(Band superheat, Band subcooling, Band valveSuperheat, Band temperatureSplit) {
        this.superheat = superheat;
        this.subcooling = subcooling;
        this.valveSuperheat = valveSuperheat;
        this.temperatureSplit = temperatureSplit;
    }

    /** Actual minus target superheat, fixed orifice. */
    public Band superheat() {
        return superheat;
    }

    /** Actual minus target subcooling, expansion valve. */
    public Band subcooling() {
        return subcooling;
    }

    /** Superheat that an expansion valve holds, where its maker states no range. */
    public Band valveSuperheat() {
        return valveSuperheat;
    }

    /** Actual minus target temperature split; above means too little air. */
    public Band temperatureSplit() {
        return temperatureSplit;
    }
}
