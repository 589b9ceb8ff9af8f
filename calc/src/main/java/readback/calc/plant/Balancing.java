package readback.calc.plant;

import java.util.function.DoubleUnaryOperator;
import readback.calc.circuit.TubeSize;
import readback.calc.numeric.Roots;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.Unit;

/** Sizes the parts of a unit so that it runs at its rating point as its maker chose. Used once for each unit. */
final class Balancing {

    /** Indoor 400 cfm a ton, outdoor 1,270, at 1.18 and 1.13 kg/m³: usual for such units, from memory. kg/s a ton */
    private static final double INDOOR_AIR = 0.2214;

    private static final double OUTDOOR_AIR = 0.6754;

    /** Effectiveness of the condenser's vapour and liquid zones over that of the condensing zone. Ours. */
    private static final double CONDENSER_SINGLE_PHASE = 0.68;

    /** Pressure lost in the coils at rating: usual values, no source. Pa */
    private static final double CONDENSER_DROP = 40_000;

    private static final double EVAPORATOR_DROP = 20_000;

    /** Isentropic efficiency of compressors without a map. From memory. */
    private static final double EFFICIENCY = 0.67;

    private static final double LITRE = 1e-3;
    private static final double PRECISION = 1e-9;

    private final RatingPlate plate;
    private final Design design;
    private final FluidTable fluid;
    private final OperatingConditions rating;
    private final double[] state;
    private final double flow;
    private final double lift;
    private Compressor compressor;
    private CoilDesign condenser;
    private CoilDesign evaporator;
    private Throttle throttle;
    private double elsewhere;

    Balancing(RatingPlate plate, Design design, FluidTable fluid) {
        this.plate = plate;
        this.design = design;
        this.fluid = fluid;
        rating = new OperatingConditions(
                Weather.RATING.outdoor().kelvin(),
                Weather.RATING.returnAir(),
                plate.charge().kilograms(),
                new Disturbance());
        double evaporating = design.evaporating().kelvin();
        double condensing = design.condensing().kelvin();
        double superheat = design.superheat().kelvins();
        double suction = fluid.vapourEnthalpy(evaporating, superheat);
        double leaving = fluid.dewPressure(condensing) - CONDENSER_DROP;
        double liquid = fluid.liquidEnthalpy(
                fluid.bubbleTemperature(leaving) - plate.subcooling().kelvins());
        state = new double[] {evaporating, condensing, suction, liquid};
        lift = leaving - fluid.dewPressure(evaporating);

        double tons = plate.tons();
        double gained = design.coils().suctionLineGain() * tons * (rating.outdoor() - evaporating - superheat);
        flow = (Unit.TON_OF_REFRIGERATION.toBase(tons) + gained) / (suction - liquid);
        compressor = compressor(superheat);
        Design.Coils coils = design.coils();
        condenser = new CoilDesign(
                OUTDOOR_AIR * tons,
                0.7,
                1,
                CONDENSER_SINGLE_PHASE,
                coils.condenserVolume() * LITRE * tons,
                CONDENSER_DROP);
        evaporator = new CoilDesign(
                INDOOR_AIR * tons,
                0.7,
                coils.wetShare(),
                coils.vapourShare(),
                coils.evaporatorVolume() * LITRE * tons,
                EVAPORATOR_DROP);
        throttle = switch (plate.meteringDevice().chargeMethod()) {
            case TOTAL_SUPERHEAT -> new ShortTube(0.0015, design.orificeGrowth());
            case SUBCOOLING -> new ExpansionValve(1e-6);
        };
    }

    /** Each part answers for one balance, and those sized before it no longer move. */
    Circuit circuit() {
        size(0.2, 0.97, Trial.CONDENSER_BALANCE, value -> condenser = condenser.withEffectiveness(value));
        size(0.2, 0.99, Trial.EVAPORATOR_BALANCE, value -> evaporator = evaporator.withEffectiveness(value));
        boolean orifice = throttle instanceof ShortTube;
        size(
                orifice ? 3e-4 : 1e-9,
                orifice ? 6e-3 : 1e-4,
                Trial.FLOW_BALANCE,
                value -> throttle = throttle.sized(value));
        elsewhere = plate.charge().kilograms() - trial().charge;
        if (elsewhere < 0) {
            throw new IllegalArgumentException(
                    "the coils alone hold " + -elsewhere + " kg more than " + plate.charge());
        }
        return assembled();
    }

    private interface Sizing {
        void to(double value);
    }

    private void size(double least, double most, int balance, Sizing sizing) {
        DoubleUnaryOperator miss = value -> {
            sizing.to(value);
            return trial().misses[balance];
        };
        sizing.to(Roots.find(miss, least, most, PRECISION));
    }

    private Trial trial() {
        return new Trial(assembled(), rating, state);
    }

    private Circuit assembled() {
        double metres = plate.lineSet().metres();
        return new Circuit(
                fluid,
                compressor,
                condenser,
                evaporator,
                throttle,
                flow,
                plate.charge().kilograms(),
                lift,
                metres * plate.lineSet().liquid().volumePerMetre(TubeSize.Temper.ANNEALED),
                metres * plate.lineSet().suction().volumePerMetre(TubeSize.Temper.ANNEALED),
                design.coils().suctionLineGain() * plate.tons(),
                elsewhere);
    }

    private Compressor compressor(double superheat) {
        Compressor unsized = switch (design.compressor()) {
            case MAPPED -> new MappedCompressor(MappedCompressor.Map.SCROLL, 1);
            case MAPPED_RECIPROCATING -> new MappedCompressor(MappedCompressor.Map.RECIPROCATING, 1);
            case DISPLACEMENT -> new DisplacementCompressor(fluid, 1e-3, exponent(), EFFICIENCY);
        };
        double denser = fluid.vapourDensity(design.evaporating().kelvin(), superheat)
                / fluid.vapourDensity(design.evaporating().kelvin(), Compressor.RATED_SUPERHEAT);
        double moved =
                unsized.flow(design.evaporating().kelvin(), design.condensing().kelvin())
                        * (1 + Compressor.VOLUME_SHARE * (denser - 1));
        return unsized.times(flow / moved);
    }

    /** The exponent whose polytropic work is the isentropic work between the rated pressures. */
    private double exponent() {
        AbsolutePressure low = AbsolutePressure.pascals(fluid.dewPressure(state[Trial.EVAPORATING]));
        AbsolutePressure high = AbsolutePressure.pascals(fluid.dewPressure(state[Trial.CONDENSING]));
        var start = plate.refrigerant()
                .superheatedVapour(Temperature.kelvin(state[Trial.EVAPORATING] + Compressor.RATED_SUPERHEAT), low);
        double end = Roots.find(
                kelvin -> plate.refrigerant()
                                .superheatedVapour(Temperature.kelvin(kelvin), high)
                                .entropy()
                        - start.entropy(),
                state[Trial.CONDENSING] + 0.01,
                state[Trial.CONDENSING] + 60,
                PRECISION);
        double work = plate.refrigerant()
                        .superheatedVapour(Temperature.kelvin(end), high)
                        .enthalpy()
                - start.enthalpy();
        double flowWork = low.pascals() / start.density();
        double ratio = high.pascals() / low.pascals();
        return Roots.find(
                k -> flowWork * k / (k - 1) * (Math.pow(ratio, (k - 1) / k) - 1) - work, 1.0001, 1.6, PRECISION);
    }
}
