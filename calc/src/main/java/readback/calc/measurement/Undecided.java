package readback.calc.measurement;

import java.util.List;
import java.util.Optional;
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

    /** Halvings of the search for the largest uncertainty: a millionth of the widest is far below what is said. */
    private static final int HALVINGS = 40;

    /** The doubt about a deviation; absent where it is decided, or where no instrument is to blame. */
    public static Optional<Undecided> of(Estimate deviation, Band limits) {
        if (!Comparison.of(deviation, limits).borderline()) {
            return Optional.empty();
        }
        return deviation
                .dominating()
                .map(instrument -> new Undecided(instrument, sufficient(deviation, limits, instrument)));
    }

    /** The accuracy that would decide, where the instrument shows a pressure. */
    public Optional<GaugePressure> sufficientPressure() {
        return sufficient.filter(any -> instrument.measuresPressure()).map(GaugePressure::pascals);
    }

    /** The accuracy that would decide, where the instrument shows a temperature. */
    public Optional<TemperatureDifference> sufficientTemperature() {
        return sufficient.filter(any -> !instrument.measuresPressure()).map(TemperatureDifference::kelvins);
    }

    private static Optional<Double> sufficient(Estimate deviation, Band limits, Instrument instrument) {
        List<Estimate.Contribution> accuracy = deviation.contributions().stream()
                .filter(each -> each.instrument() == instrument && each.cause() == Estimate.Cause.ACCURACY)
                .toList();
        List<Estimate.Contribution> rest = deviation.contributions().stream()
                .filter(each -> !accuracy.contains(each))
                .toList();
        double others = Estimate.combined(rest).kelvins();
        if (accuracy.isEmpty() || !firm(deviation, limits, others)) {
            return Optional.empty();
        }
        double low = others;
        double high = deviation.standardUncertainty().kelvins();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (firm(deviation, limits, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double allowed = Math.sqrt(low * low - others * others);
        double now = Estimate.combined(accuracy).kelvins();
        return Optional.of(accuracy.get(0).limit() * allowed / now).filter(limit -> limit > 0);
    }

    private static boolean firm(Estimate deviation, Band limits, double standardUncertainty) {
        return !Comparison.of(deviation.value(), TemperatureDifference.kelvins(standardUncertainty), limits)
                .borderline();
    }
}
