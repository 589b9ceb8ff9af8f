package readback.calc.measurement;

import java.util.List;
import java.util.Optional;
import readback.calc.quantity.TemperatureDifference;

/**
 * A temperature difference with what is known about its error: first-order combined uncertainty of independent inputs
 * (JCGM 100:2008, 5.1.2).
 *
 * @param contributions what each instrument brings
 */
public record Estimate(TemperatureDifference value, List<Contribution> contributions) {

    /** JCGM 100:2008, 6.2 and G.6.6: a coverage factor of 2 states an interval of about 95 % for inputs like these. */
    public static final double COVERAGE_FACTOR = 2;

    private static final List<Instrument> INSTRUMENTS = List.of(Instrument.values());

    /** Why an instrument may be off. */
    public enum Cause {
        /** As its maker or whoever owns it states. */
        ACCURACY,
        /** A probe on a pipe is not quite as warm as what flows inside. */
        CONTACT,
        /** A value said with so many digits may be half a step off (JCGM 100:2008, F.2.2.1). */
        RESOLUTION
    }

    /**
     * One share of the uncertainty: an error that may be anything up to a limit, either way.
     *
     * @param limit in pascals or kelvins, whichever the instrument measures
     * @param sensitivity kelvins of the value for each of these
     */
    public record Contribution(Instrument instrument, Cause cause, double limit, double sensitivity) {

        /** As a standard uncertainty of the value: JCGM 100:2008, 4.3.7. */
        public TemperatureDifference standardUncertainty() {
            return TemperatureDifference.kelvins(Math.sqrt(variance()));
        }

        /** The square of the standard uncertainty, K². */
        double variance() {
            double most = limit * sensitivity;
            return most * most / 3;
        }
    }

    public Estimate {
        contributions = List.copyOf(contributions);
    }

    /** One standard deviation of the value. */
    public TemperatureDifference standardUncertainty() {
        return combined(contributions);
    }

    /** Half-width of the interval that holds the true value with about 95 % confidence. */
    public TemperatureDifference expandedUncertainty() {
        return TemperatureDifference.kelvins(
                COVERAGE_FACTOR * standardUncertainty().kelvins());
    }

    /** The instrument that contributes most, all its causes together; absent when every one is taken for perfect. */
    public Optional<Instrument> dominating() {
        double most = 0;
        Instrument dominating = null;
        for (Instrument instrument : INSTRUMENTS) {
            double sum = variance(instrument);
            if (sum > most) {
                most = sum;
                dominating = instrument;
            }
        }
        return Optional.ofNullable(dominating);
    }

    /** What an instrument brings by all its causes, K². */
    private double variance(Instrument instrument) {
        double sum = 0;
        for (Contribution contribution : contributions) {
            sum += contribution.instrument() == instrument ? contribution.variance() : 0;
        }
        return sum;
    }

    /** One standard deviation of a value with these shares. */
    public static TemperatureDifference combined(List<Contribution> contributions) {
        double squares = 0;
        for (Contribution contribution : contributions) {
            squares += contribution.variance();
        }
        return TemperatureDifference.kelvins(Math.sqrt(squares));
    }
}
