package readback.calc.fluid;

import java.util.HashMap;
import java.util.Map;

/** Saturation solvers of the catalogue's refrigerants, and of the pseudo-pure blends by their mixture model as well. */
final class Models {

    private final EquationLibrary library = EquationFacts.load();
    private final Map<String, RefrigerantFacts> facts = new HashMap<>();
    private final Map<String, SaturationModel> models = new HashMap<>();

    Models() {
        for (RefrigerantFacts each : CatalogueFacts.load().supported()) {
            facts.put(each.designation(), each);
        }
    }

    /** @param model "pure_eos", "pseudo_pure" or "mixture", as the reference tables call them */
    SaturationModel of(String designation, String model) {
        return models.computeIfAbsent(designation + model, key -> build(designation, model));
    }

    private SaturationModel build(String designation, String model) {
        RefrigerantFacts found = facts.get(designation);
        if (found == null) {
            throw new IllegalArgumentException(designation);
        }
        return model.equals("mixture")
                ? RefrigerantBuilder.mixture(found, library)
                : RefrigerantBuilder.model(found, library);
    }
}
