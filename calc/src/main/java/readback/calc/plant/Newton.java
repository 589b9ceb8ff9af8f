package readback.calc.plant;

import java.util.List;
import readback.calc.numeric.LinearSystem;

/**
 * Finds the state at which four balances hold: Newton's method with forward differences and halved steps. The last
 * balance is that of the charge, or a limit that stands in its place when the question is what charge leads there.
 */
final class Newton {

    /** Balances hold to a ten-millionth; below a hundred-thousandth is good enough where rounding stops it. */
    private static final double CONVERGED = 1e-7;

    private static final double GOOD_ENOUGH = 1e-5;
    private static final int MOST_STEPS = 40;
    private static final int MOST_HALVINGS = 8;
    private static final double[] PROBES = {1e-3, 1e-3, 2, 2};
    private static final double[] LONGEST = {6, 6, 25_000, 25_000};

    /** A step must gain at least this share of what a linear system would. */
    private static final double LEAST_GAIN = 0.1;

    /** K. Near the limit of the switch. */
    private static final double HOTTEST_CONDENSER = 336;

    /** Some twentieth of the heat of evaporation, J/kg. */
    private static final double WET_ENTHALPY = 9_000;

    private final Circuit circuit;
    private final OperatingConditions setting;
    private final Closing closing;
    private final double[] lowest;
    private final double[] highest;
    private Trial at;

    /** What the last balance demands; zero where it holds, about one for a state that is far off. */
    interface Closing {

        /** That the circuit holds the charge. */
        Closing CHARGE = trial -> trial.misses[Trial.CHARGE_BALANCE];

        double miss(Trial trial);
    }

    private Newton(Circuit circuit, OperatingConditions setting, Closing closing, double[] start) {
        this.circuit = circuit;
        this.setting = setting;
        this.closing = closing;
        FluidTable fluid = circuit.fluid();
        double outdoor = setting.outdoor();
        double warm = setting.returnAir().dryBulb().kelvin();
        lowest = new double[] {
            COLDEST_COIL, outdoor + 0.5, fluid.liquidEnthalpy(COLDEST_COIL + 20), fluid.liquidEnthalpy(outdoor - 40)
        };
        highest = new double[] {
            warm - 0.5, fluid.highest(), fluid.vapourEnthalpy(warm, 60), fluid.vapourEnthalpy(fluid.highest() - 10, 0)
        };
        at = trial(bounded(start, new double[start.length], 0));
    }

    /** K. Any air-conditioner is in a vacuum or frozen solid long before. */
    static final double COLDEST_COIL = 226;

    /** The trial nearest to a steady state that the start leads to. */
    static Trial from(Circuit circuit, OperatingConditions setting, double[] start) {
        return from(circuit, setting, Closing.CHARGE, start);
    }

    static Trial from(Circuit circuit, OperatingConditions setting, Closing closing, double[] start) {
        Newton newton = new Newton(circuit, setting, closing, start);
        for (int step = 0; step < MOST_STEPS && newton.at.miss() > CONVERGED; step++) {
            if (!newton.step()) {
                break;
            }
        }
        return newton.at;
    }

    static boolean solved(Trial trial) {
        return trial.miss() < GOOD_ENOUGH;
    }

    /**
     * Starts that need no earlier solution, most usual first: distances from the air on both sides, and how wet or how
     * warm the suction vapour is.
     */
    static List<double[]> coldStarts(Circuit circuit, OperatingConditions setting) {
        return List.of(
                start(circuit, setting, 20, 12, 10),
                start(circuit, setting, 18, 16, -2),
                start(circuit, setting, 30, 8, 25),
                start(circuit, setting, 17, 24, 3));
    }

    /** A start where the switch of the high side is about to open. */
    static double[] atHighPressure(Circuit circuit, OperatingConditions setting) {
        return start(circuit, setting, 20, HOTTEST_CONDENSER - setting.outdoor(), 5);
    }

    /** A start where the compressor pulls a vacuum. */
    static double[] atLowPressure(Circuit circuit, OperatingConditions setting) {
        return start(circuit, setting, setting.returnAir().dryBulb().kelvin() - COLDEST_COIL - 5, 3, 55);
    }

    /** @param superheat K; below zero for wet vapour */
    private static double[] start(
            Circuit circuit, OperatingConditions setting, double belowReturn, double aboveOutdoor, double superheat) {
        FluidTable fluid = circuit.fluid();
        double evaporating = setting.returnAir().dryBulb().kelvin() - belowReturn;
        double suction = superheat >= 0
                ? fluid.vapourEnthalpy(evaporating, superheat)
                : fluid.vapourEnthalpy(evaporating, 0) + superheat * WET_ENTHALPY;
        return new double[] {
            evaporating, setting.outdoor() + aboveOutdoor, suction, fluid.liquidEnthalpy(setting.outdoor() + 6)
        };
    }

    static double[] state(Trial trial) {
        return new double[] {trial.evaporating, trial.condensing, trial.suctionEnthalpy, trial.liquidEnthalpy};
    }

    /** Whether the step came nearer. */
    private boolean step() {
        double[] state = state(at);
        int size = state.length;
        double[][] slopes = new double[size][size];
        for (int column = 0; column < size; column++) {
            double probe = state[column] + PROBES[column] > highest[column] ? -PROBES[column] : PROBES[column];
            double[] beside = state.clone();
            beside[column] += probe;
            double[] misses = trial(beside).misses;
            for (int row = 0; row < size; row++) {
                slopes[row][column] = (misses[row] - at.misses[row]) / probe;
            }
        }
        double[] change = new double[size];
        for (int row = 0; row < size; row++) {
            change[row] = -at.misses[row];
        }
        try {
            LinearSystem.solve(slopes, change);
        } catch (ArithmeticException singular) {
            return false;
        }
        double share = 1;
        for (int i = 0; i < size; i++) {
            share = Math.min(share, LONGEST[i] / Math.max(1e-12, Math.abs(change[i])));
        }
        Trial best = at;
        for (int halving = 0; halving < MOST_HALVINGS; halving++) {
            Trial trial = trial(bounded(state, change, share));
            if (trial.miss() < best.miss()) {
                best = trial;
            }
            if (trial.miss() < at.miss() * (1 - LEAST_GAIN * share)) {
                break;
            }
            share /= 2;
        }
        boolean nearer = best.miss() < at.miss();
        at = best;
        return nearer;
    }

    private Trial trial(double[] state) {
        Trial trial = new Trial(circuit, setting, state);
        trial.misses[Trial.CHARGE_BALANCE] = closing.miss(trial);
        return trial;
    }

    private double[] bounded(double[] state, double[] change, double share) {
        double[] moved = new double[state.length];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = Math.max(lowest[i], Math.min(highest[i], state[i] + share * change[i]));
        }
        return moved;
    }
}
