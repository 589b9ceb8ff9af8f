package readback.assistant.simulated;

import java.util.Locale;
import java.util.Optional;
import readback.calc.diagnosis.Fault;
import readback.calc.name.ConstantName;
import readback.calc.plant.FaultSet;
import readback.calc.plant.PlantFault;

/**
 * What is wrong with a unit.
 *
 * @param fault empty for a sound unit
 * @param size as in {@link FaultSet}; zero for a sound unit
 */
public record Truth(Optional<PlantFault> fault, double size) {

    public static final Truth SOUND = new Truth(Optional.empty(), 0);

    /** Shares of the nameplate charge that are missing or too much. */
    private static final double LEAST_CHARGE = 0.05;

    private static final double MOST_CHARGE = 0.3;

    /** Other faults are at least this share of their largest size. */
    private static final double LEAST_SHARE = 0.1;

    private static final int THIRDS = 3;

    /** @param share where between its least and its largest size the fault lies, 0 to 1 */
    public static Truth of(PlantFault fault, double share) {
        return new Truth(Optional.of(fault), between(fault, share));
    }

    private static double between(PlantFault fault, double share) {
        double least = isCharge(fault) ? LEAST_CHARGE : LEAST_SHARE * fault.largest();
        double most = isCharge(fault) ? MOST_CHARGE : fault.largest();
        return least + share * (most - least);
    }

    public static boolean isCharge(PlantFault fault) {
        return fault.fault().isCharge();
    }

    public FaultSet faults() {
        return fault.map(known -> FaultSet.of(known, size)).orElse(FaultSet.none());
    }

    public boolean sound() {
        return fault.isEmpty();
    }

    /** Whether moving refrigerant is the remedy. */
    public boolean isCharge() {
        return fault.filter(Truth::isCharge).isPresent();
    }

    /** Something is wrong that refrigerant does not put right. */
    public boolean isOther() {
        return !sound() && !isCharge();
    }

    /** What the diagnosis should suspect. */
    public Fault suspect() {
        return fault.map(PlantFault::fault).orElse(Fault.NONE);
    }

    /** The charge as a share of the nameplate's. */
    public double charge() {
        return fault.map(known -> switch (known) {
                    case UNDERCHARGE -> 1 - size;
                    case OVERCHARGE -> 1 + size;
                    default -> 1.0;
                })
                .orElse(1.0);
    }

    /** The fault with the third of its sizes that this one lies in, as in "undercharge 5-13 %". */
    public String row() {
        return fault.map(known -> {
                    double share = (size - between(known, 0)) / (between(known, 1) - between(known, 0));
                    int third = Math.max(0, Math.min(THIRDS - 1, (int) (share * THIRDS)));
                    return String.format(
                            Locale.ROOT,
                            "%s %.0f-%.0f %%",
                            ConstantName.of(known),
                            100 * between(known, third / (double) THIRDS),
                            100 * between(known, (third + 1) / (double) THIRDS));
                })
                .orElse("sound");
    }

    @Override
    public String toString() {
        return fault.map(known -> String.format(Locale.ROOT, "%s %.1f %%", ConstantName.of(known), 100 * size))
                .orElse("sound");
    }
}
