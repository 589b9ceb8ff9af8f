package readback.calc.measurement;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import readback.calc.quantity.TemperatureDifference;

/**
 * A measured temperature difference with what is known about its error: first-order combined uncertainty of independent
 * inputs (JCGM 100:2008, 5.1.2).
 *
 * @param contributions standard uncertainty that each instrument brings, in this value's units
 */
public record Estimate(TemperatureDifference value, List<Contribution> contributions) {

    /** JCGM 100:2008, 6.2 and G.6.6: a coverage factor of 2 states an interval of about 95 % for inputs like these. */
    public static final double COVERAGE_FACTOR = 2;

    /** One instrument's share, as a standard uncertainty of the result. */
    public record Contribution(Instrument instrument, TemperatureDifference standardUncertainty) {}

    public Estimate {
        contributions = List.copyOf(contributions);
    }

    /** One standard deviation of the value. */
    public TemperatureDifference standardUncertainty() {
        double squares = 0;
        for (Contribution contribution : contributions) {
            double u = contribution.standardUncertainty().kelvins();
            squares += u * u;
        }
        return TemperatureDifference.kelvins(Math.sqrt(squares));
    }

    /** Half-width of the interval that holds the true value with about 95 % confidence. */
    public TemperatureDifference expandedUncertainty() {
        return TemperatureDifference.kelvins(
                COVERAGE_FACTOR * standardUncertainty().kelvins());
    }

    /** The instrument that contributes most; absent when every instrument is taken for perfect. */
    public Optional<Instrument> dominating() {
        return contributions.stream()
                .filter(c -> c.standardUncertainty().kelvins() > 0)
                .max(Comparator.comparing(Contribution::standardUncertainty))
                .map(Contribution::instrument);
    }
}
