package readback.assistant.probe;

import java.util.Optional;
import java.util.stream.Stream;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Unit;

/**
 * Units in which instruments give values. Those with a name of RFC 8428, section 12.1, are understood in SenML; the
 * others can be named in a mapping. A pressure is gauge or absolute as the mapping says: no unit of the RFC tells.
 */
enum RawUnit {
    CELSIUS("Cel", Dimension.TEMPERATURE, true) {
        @Override
        double base(double value) {
            return Unit.CELSIUS.toBase(value);
        }
    },
    KELVIN("K", Dimension.TEMPERATURE, true) {
        @Override
        double base(double value) {
            return value;
        }
    },
    FAHRENHEIT("degF", Dimension.TEMPERATURE, false) {
        @Override
        double base(double value) {
            return Unit.FAHRENHEIT.toBase(value);
        }
    },
    PASCAL("Pa", Dimension.GAUGE_PRESSURE, true) {
        @Override
        double base(double value) {
            return value;
        }
    },
    KILOPASCAL("kPa", Dimension.GAUGE_PRESSURE, false) {
        @Override
        double base(double value) {
            return Unit.KILOPASCAL_GAUGE.toBase(value);
        }
    },
    BAR("bar", Dimension.GAUGE_PRESSURE, false) {
        @Override
        double base(double value) {
            return Unit.BAR_GAUGE.toBase(value);
        }
    },
    PSI("psi", Dimension.GAUGE_PRESSURE, false) {
        @Override
        double base(double value) {
            return Unit.PSIG.toBase(value);
        }
    };

    private final String symbol;
    private final Dimension dimension;
    private final boolean registered;

    RawUnit(String symbol, Dimension dimension, boolean registered) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.registered = registered;
    }

    /** The value in kelvins or pascals. */
    abstract double base(double value);

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
