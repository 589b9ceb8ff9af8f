package readback.calc.caution;

/** Signal words by the meaning that ANSI Z535.4 and Z535.6 give them (from memory), gravest first. */
public enum Signal {
    /** Will kill or maim if not avoided. */
    DANGER,
    /** Could kill or maim. */
    WARNING,
    /** Could injure lightly or moderately. */
    CAUTION,
    /** Not about injury: could ruin the machine, or breaks a rule. */
    NOTICE
}
