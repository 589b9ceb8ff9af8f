package readback.calc.quantity;

/** A value that the physics or an equation does not admit. The message names the value, its unit and the limit. */
public final class OutOfRangeException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final String what;
    private final double value;
    private final String unit;
    private final String limit;

    /**
     * @param what the quantity in plain words, as in "dew pressure of R-410A"
     * @param limit what would have been accepted, as in "1.0 to 46.9 bar"
     */
    public OutOfRangeException(String what, double value, String unit, String limit) {
        super(what + " " + value + " " + unit + " is out of range: must be " + limit);
        this.what = what;
        this.value = value;
        this.unit = unit;
        this.limit = limit;
    }

    public String what() {
        return what;
    }

    public double value() {
        return value;
    }

    public String unit() {
        return unit;
    }

    public String limit() {
        return limit;
    }
}
