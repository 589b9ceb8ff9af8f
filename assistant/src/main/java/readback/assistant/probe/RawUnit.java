package readback.assistant.probe;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Unit;

/**
 * Units in which instruments give values. Those with a name of RFC 8428, section 12.1, are understood in SenML; the
 * others can be named in a mapping. A pressure is gauge or absolute as the mapping says: no unit of the RFC tells.
 */
enum RawUnit {
    PASCAL("Pa", Dimension.GAUGE_PRESSURE, true),
    KILOPASCAL("kPa", Dimension.GAUGE_PRESSURE, false),
    BAR("bar", Dimension.GAUGE_PRESSURE, false),
    PSI("psi", Dimension.GAUGE_PRESSURE, false),
    CELSIUS("Cel", Dimension.TEMPERATURE, true),
    KELVIN("K", Dimension.TEMPERATURE, true),
    FAHRENHEIT("degF", Dimension.TEMPERATURE, false);

    /** All symbols, for the user. */
    static final String SYMBOLS = Stream.of(values()).map(RawUnit::symbol).collect(Collectors.joining(", "));

    private final String symbol;
    private final Dimension dimension;
    private final boolean registered;

    RawUnit(String symbol, Dimension dimension, boolean registered) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.registered = registered;
    }

    /** The value in kelvins or pascals. */
    double base(double value) {
        return switch (this) {
            case KELVIN, PASCAL -> value;
            case CELSIUS -> Unit.CELSIUS.toBase(value);
            case FAHRENHEIT -> Unit.FAHRENHEIT.toBase(value);
            case KILOPASCAL -> Unit.KILOPASCAL_GAUGE.toBase(value);
            case BAR -> Unit.BAR_GAUGE.toBase(value);
            case PSI -> Unit.PSIG.toBase(value);
        };
    }

    String symbol() {
        return symbol;
    }

    /** A temperature, or a pressure, whether gauge or absolute. */
    Dimension dimension() {
        return dimension;
    }

    /** The unit that a mapping names. */
    static Optional<RawUnit> named(String symbol) {
        return Stream.of(values()).filter(unit -> unit.symbol.equals(symbol)).findFirst();
    }

    /** The unit that a SenML record names. */
    static Optional<RawUnit> registered(String symbol) {
        return named(symbol).filter(unit -> unit.registered);
    }
}
