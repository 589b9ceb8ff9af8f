package readback.calc.fluid;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Puts a refrigerant together from what the catalogue, the equations and the fitted curves say about it. */
final class RefrigerantBuilder {

    private RefrigerantBuilder() {}

    static Refrigerant build(RefrigerantFacts facts, EquationLibrary library, CurveFacts curves) {
        String designation = facts.designation();
        SaturationCurves bubble = curves.curves(designation, Side.BUBBLE);
        boolean pure = facts.kind() == RefrigerantFacts.Kind.PURE;
        return new Refrigerant(
                facts,
                papers(facts, library),
                model(facts, library),
                bubble,
                pure ? bubble : curves.curves(designation, Side.DEW),
                curves.reference(designation));
    }

    /** The saturation solver that serves the refrigerant. */
    static SaturationModel model(RefrigerantFacts facts, EquationLibrary library) {
        return switch (facts.kind()) {
            case PURE -> new PureSaturation(library.pureFluid(facts.designation()));
            case PSEUDO_PURE -> new PseudoPureSaturation(library.pseudoPureFluid(facts.designation()));
            case MIXTURE -> mixture(facts, library);
        };
    }

    static SaturationModel mixture(RefrigerantFacts facts, EquationLibrary library) {
        List<PureFluid> fluids = new ArrayList<>();
        double amount = 0;
        for (Ingredient ingredient : facts.composition()) {
            PureFluid fluid = library.pureFluid(ingredient.designation());
            fluids.add(fluid);
            amount += ingredient.massFraction() / fluid.molarMass();
        }
        double[] moleFractions = new double[fluids.size()];
        for (int i = 0; i < moleFractions.length; i++) {
            moleFractions[i] =
                    facts.composition().get(i).massFraction() / fluids.get(i).molarMass() / amount;
        }
        return new MixtureSaturation(new MixtureModel(fluids, library), moleFractions);
    }

    private static List<Paper> papers(RefrigerantFacts facts, EquationLibrary library) {
        Set<String> keys = new LinkedHashSet<>();
        if (facts.kind() == RefrigerantFacts.Kind.PSEUDO_PURE) {
            keys.addAll(library.pseudoPureFluid(facts.designation()).papers());
        } else {
            for (Ingredient ingredient : facts.composition()) {
                keys.addAll(library.pureFluid(ingredient.designation()).papers());
                for (Ingredient other : facts.composition()) {
                    library.pair(ingredient.designation(), other.designation())
                            .ifPresent(pair -> keys.add(pair.paper()));
                }
            }
        }
        return keys.stream().map(library::paper).toList();
    }
}
