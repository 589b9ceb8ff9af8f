package readback.calc.diagnosis;

import java.util.Optional;
import readback.calc.charge.Judgement;

/**
 * What to tell the technician: the judgement, with its verdict withheld where moving refrigerant would not mend what is
 * likely wrong, and the diagnosis behind it.
 *
 * @param due what to read or look at before the verdict is acted on; absent when nothing that is worth the walk is left
 * @param reservation what is likely wrong although the charge is within its limits, or was not ruled out although the
 *     charge is to be moved, or is why a coil is iced on which nothing can be judged
 */
public record Advice(
        Judgement judgement, Diagnosis diagnosis, Optional<NextObservation> due, Optional<Suspect> reservation) {}
