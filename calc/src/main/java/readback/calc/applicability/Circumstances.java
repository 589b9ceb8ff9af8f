package readback.calc.applicability;

import java.util.Optional;
import readback.calc.measurement.ChargeMethod;
import readback.calc.quantity.Temperature;

/**
 * What decides which check applies; absent means not known yet.
 *
 * @param makersProcedure whether the maker's own procedure for such a day is at hand
 * @param opened whether the circuit was opened, or its charge is not known at all
 * @param variableSpeed whether the compressor changes its speed
 * @param method that the metering device allows
 * @param restrictorAllowed whether the maker charges by subcooling and allows a restrictor on the condenser
 */
public record Circumstances(
        Optional<Boolean> makersProcedure,
        Optional<Boolean> opened,
        Optional<SystemKind> kind,
        Optional<Boolean> variableSpeed,
        Optional<ChargeMethod> method,
        Optional<Temperature> outdoor,
        Optional<Boolean> restrictorAllowed) {}
