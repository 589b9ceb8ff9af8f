package readback.assistant.practice;

import java.util.Optional;
import readback.assistant.simulated.BuiltUnits;
import readback.assistant.simulated.Case;
import readback.assistant.simulated.Truth;
import readback.calc.name.ConstantName;
import readback.calc.plant.PlantFault;

/**
 * A call to practise on.
 *
 * @param name of the list, or "drawn-" with difficulty and start number; tells the whole scenario
 * @param difficulty how hard it is
 * @param listed whether it stands in the list and so has a learning goal
 * @param drawn unit, weather, instruments, and what is wrong
 */
public record Scenario(String name, Difficulty difficulty, boolean listed, Case drawn) {

    /** How many calls are drawn before one suits the difficulty; ample. */
    private static final int MOST_DRAWN = 1_000;

    private static final String DRAWN = "drawn-";

    /** A call drawn by difficulty and start number; the same for the same two. */
    public static Scenario drawn(Difficulty difficulty, long start) {
        BuiltUnits units = new BuiltUnits();
        for (int number = 1; number <= MOST_DRAWN; number++) {
            Case next = Case.draw(start, number, units);
            if (suits(next.truth(), difficulty)) {
                return new Scenario(DRAWN + ConstantName.of(difficulty) + "-" + start, difficulty, false, next);
            }
        }
        throw new IllegalStateException("no call of " + difficulty + " among " + MOST_DRAWN + " from " + start);
    }

    /** Key of what the customer says. */
    public String complaint() {
        if (listed) {
            return "practice.complaint." + name;
        }
        return "practice.complaint."
                + drawn.truth().fault().map(Scenario::complaintOf).orElse("routine");
    }

    private static String complaintOf(PlantFault fault) {
        return switch (fault) {
            case LOW_INDOOR_AIR, FROSTED_COIL -> "air";
            case DIRTY_OUTDOOR_COIL, OVERCHARGE, NON_CONDENSABLES -> "bills";
            default -> "warm";
        };
    }

    /** The scenario that a name tells: of the list, or drawn; empty for a name of neither. */
    public static Optional<Scenario> named(String name) {
        if (!name.startsWith(DRAWN)) {
            return ScenarioList.standard().find(name);
        }
        int dash = name.lastIndexOf('-');
        Optional<Difficulty> difficulty = dash < DRAWN.length()
                ? Optional.empty()
                : ConstantName.find(Difficulty.class, name.substring(DRAWN.length(), dash));
        try {
            long start = Long.parseLong(name.substring(dash + 1));
            return difficulty.map(known -> drawn(known, start));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static boolean suits(Truth truth, Difficulty difficulty) {
        return switch (difficulty) {
            case EASY -> truth.fault().isPresent() && truth.size() > clear(truth);
            case MIDDLE -> truth.fault().isPresent();
            case HARD -> truth.sound() || truth.size() < clear(truth);
        };
    }

    /** Half of the largest fault; of a charge that is off, a sixth of the nameplate's. Ours. */
    private static double clear(Truth truth) {
        return truth.isCharge() ? 1 / 6.0 : truth.fault().orElseThrow().largest() / 2;
    }
}
