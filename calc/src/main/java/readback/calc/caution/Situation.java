package readback.calc.caution;

import java.util.Optional;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * What cautions depend on. Absent means not known, and then a rule about it is silent, except that an unknown
 * refrigerant is never taken for a harmless one.
 */
public sealed interface Situation {

    /** What the case of this kind makes of the situation. */
    <T> T fold(Cases<T> cases);

    /** What is to be made of each kind of situation. */
    interface Cases<T> {

        T before(Before before);

        T running(Running running);

        T pressureTesting(PressureTesting test);

        T recovering(Recovering recovering);
    }

    /** Something is about to be done and nothing was measured yet. */
    record Before(Activity activity, Optional<Refrigerant> refrigerant) implements Situation {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.before(this);
        }
    }

    /**
     * A running system was measured.
     *
     * @param superheat at the suction port, the best estimate
     * @param leastSuperheat what the suction line has to keep for the compressor
     * @param lowSide pressure there; pressures, because a saturation temperature does not exist at every one
     * @param highSide pressure there
     * @param dischargeLine temperature of the discharge line near the compressor
     */
    record Running(
            Optional<Refrigerant> refrigerant,
            Optional<TemperatureDifference> superheat,
            TemperatureDifference leastSuperheat,
            Optional<AbsolutePressure> lowSide,
            Optional<AbsolutePressure> highSide,
            Optional<Temperature> dischargeLine)
            implements Situation {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.running(this);
        }
    }

    /**
     * Nitrogen stands in the circuit. What is said before it is let in is {@link Before}'s.
     *
     * @param pressure of the nitrogen
     * @param plateLowSidePressure design pressure of the low side on the rating plate
     */
    record PressureTesting(GaugePressure pressure, Optional<GaugePressure> plateLowSidePressure) implements Situation {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.pressureTesting(this);
        }
    }

    /**
     * A recovery cylinder is being filled.
     *
     * @param cylinderShare filled share of the cylinder's net limit, 1 = full to 80 % of its volume
     */
    record Recovering(Optional<Refrigerant> refrigerant, double cylinderShare) implements Situation {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.recovering(this);
        }
    }
}
