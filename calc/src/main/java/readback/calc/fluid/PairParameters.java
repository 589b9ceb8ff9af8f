package readback.calc.fluid;

import org.jspecify.annotations.Nullable;

/**
 * How two fluids mix: the reducing parameters and the departure function of the pair, in the order first, second.
 *
 * @param weight the factor F of the departure function
 * @param departure absent where the pair has none
 * @param paper key of the paper
 */
record PairParameters(
        String first,
        String second,
        double betaT,
        double gammaT,
        double betaV,
        double gammaV,
        double weight,
        @Nullable ResidualTerms departure,
        String paper) {

    /** The same pair in the other order: exchanging the fluids inverts the betas. */
    PairParameters exchanged() {
        return new PairParameters(
                /* first= */ second,
                /* second= */ first,
                1 / betaT,
                gammaT,
                1 / betaV,
                gammaV,
                weight,
                departure,
                paper);
    }
}
