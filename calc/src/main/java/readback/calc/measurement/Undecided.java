package readback.calc.measurement;

import java.util.Optional;
import readback.calc.numeric.Roots;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.TemperatureDifference;

/**
 * Why a comparison cannot be decided with these instruments: the one that matters most, and how good it would have to
 * be.
 *
 * @param instrument the one that contributes most to the doubt
 * @param sufficient the largest limit of error with which the same readings would decide, in pascals or kelvins,
 *     whichever the instrument measures; absent where not even a perfect one would
 */
public record Undecided(Instrument instrument, Optional<Double> sufficient) {

    /** Of the search for the largest uncertainty, as a share of it: far below what is said. */
    private static final double TOLERANCE = 1e-9;

    /**
     * The doubt about a deviation; absent where it is decided, or where no instrument is to blame.
     *
     * @param comparison of the deviation with its limits
     */
    public static Optional<Undecided> of(Estimate deviation, Comparison comparison) {
        if (!comparison.borderline()) {
            return Optional.empty();
        }
        return deviation
                .dominating()
                .map(instrument -> new Undecided(instrument, sufficient(deviation, comparison, instrument)));
    }

    /** The accuracy that would decide, where the instrument shows a pressure. */
    public Optional<GaugePressure> sufficientPressure() {
        return sufficient.filter(any -> instrument.measuresPressure()).map(GaugePressure::pascals);
    }

    /** The accuracy that would decide, where the instrument shows a temperature. */
    public Optional<TemperatureDifference> sufficientTemperature() {
        return sufficient.filter(any -> !instrument.measuresPressure()).map(TemperatureDifference::kelvins);
    }

    private static Optional<Double> sufficient(Estimate deviation, Comparison comparison, Instrument instrument) {
        double limit = 0;
        double accuracy = 0;
        double rest = 0;
        for (Estimate.Contribution each : deviation.contributions()) {
            if (each.instrument() == instrument && each.cause() == Estimate.Cause.ACCURACY) {
                limit = limit == 0 ? each.limit() : limit;
                accuracy += each.variance();
            } else {
                rest += each.variance();
            }
        }
        double others = Math.sqrt(rest);
        if (accuracy == 0 || comparison.firmness(others) < 0) {
            return Optional.empty();
        }
        double most = Roots.find(comparison::firmness, others, Math.sqrt(rest + accuracy), TOLERANCE);
        double sufficient = limit * Math.sqrt(Math.max(0, most * most - rest) / accuracy);
        return sufficient > 0 ? Optional.of(sufficient) : Optional.empty();
    }
}
