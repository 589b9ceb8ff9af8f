package readback.calc.charge;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.caution.Caution;
import readback.calc.condition.FailedCondition;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Estimate;
import readback.calc.plausibility.Contradiction;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.targets.Target;

/**
 * Everything that follows from one set of readings. Whatever could not be worked out is absent.
 *
 * @param evaporatingSaturation dew point at the suction pressure
 * @param condensingSaturation bubble point at the liquid pressure
 * @param superheat suction line above the evaporating saturation
 * @param subcooling liquid line below the condensing saturation
 * @param target of superheat or subcooling, as the method has it
 * @param valveCheck for expansion valves
 * @param conditions that fail, blocking or not
 * @param cautions to say before any number, the gravest first
 * @param missing what the verdict still needs, in the order of the quantities
 */
public record Judgement(
        ChargeMethod method,
        Optional<Temperature> evaporatingSaturation,
        Optional<Temperature> condensingSaturation,
        Optional<Estimate> superheat,
        Optional<Estimate> subcooling,
        Optional<Target> target,
        Verdict verdict,
        Optional<ValveCheck> valveCheck,
        List<FailedCondition> conditions,
        List<Contradiction> contradictions,
        List<Caution> cautions,
        Set<Quantity> missing) {

    public Judgement {
        conditions = List.copyOf(conditions);
        contradictions = List.copyOf(contradictions);
        cautions = List.copyOf(cautions);
        missing = missing.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(missing));
    }

    /** The value that the method compares with the target: superheat or subcooling. */
    public Optional<Estimate> judged() {
        return method == ChargeMethod.TOTAL_SUPERHEAT ? superheat : subcooling;
    }

    /** This judgement with another verdict: a fault was found that comes first. */
    public Judgement withVerdict(Verdict other) {
        return new Judgement(
                method,
                evaporatingSaturation,
                condensingSaturation,
                superheat,
                subcooling,
                target,
                other,
                valveCheck,
                conditions,
                contradictions,
                cautions,
                missing);
    }
}
