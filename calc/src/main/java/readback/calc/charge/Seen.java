package readback.calc.charge;

/**
 * What the technician saw of a running unit that changes how its readings are taken.
 *
 * @param coilClear he looked for ice and found none: a coil below freezing then forbids no test, for too little charge
 *     makes one too
 * @param suctionSwings the suction pressure swings regularly, so that one reading of it may be its highest
 */
public record Seen(boolean coilClear, boolean suctionSwings) {

    /** Nobody looked. */
    public static final Seen NOTHING = new Seen(false, false);
}
