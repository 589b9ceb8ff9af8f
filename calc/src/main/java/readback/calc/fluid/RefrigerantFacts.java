package readback.calc.fluid;

import java.util.List;

/**
 * What the catalogue states about one refrigerant.
 *
 * @param criticalTemperature K
 * @param criticalPressure Pa
 * @param gwpAr4 100-year global warming potential by IPCC AR4
 * @param gwpAr5 the same by IPCC AR5
 */
record RefrigerantFacts(
        String designation,
        Kind kind,
        SafetyClass safetyClass,
        List<Ingredient> composition,
        double criticalTemperature,
        double criticalPressure,
        double gwpAr4,
        double gwpAr5,
        double ozoneDepletion,
        List<String> spokenNames) {

    /** Which form of equation of state serves the refrigerant. */
    enum Kind {
        PURE,
        PSEUDO_PURE,
        MIXTURE
    }
}
