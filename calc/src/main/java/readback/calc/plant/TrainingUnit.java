package readback.calc.plant;

import static readback.calc.measurement.MeteringDevice.CAPILLARY_TUBE;
import static readback.calc.measurement.MeteringDevice.ELECTRONIC_EXPANSION_VALVE;
import static readback.calc.measurement.MeteringDevice.PISTON;
import static readback.calc.measurement.MeteringDevice.THERMOSTATIC_EXPANSION_VALVE;
import static readback.calc.plant.Design.CompressorKind.DISPLACEMENT;
import static readback.calc.plant.Design.CompressorKind.MAPPED;
import static readback.calc.plant.Design.CompressorKind.MAPPED_RECIPROCATING;

import readback.calc.circuit.LineSet;
import readback.calc.circuit.TubeSize;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.MeteringDevice;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * Invented units to practise on and to measure with. Their sizes, charges and states are usual ones; none is a product.
 * Superheat of those with an orifice follows the charging chart, to half of whose nodes their designs are fitted.
 */
public enum TrainingUnit {
    /** All parameters of its design are fitted, of the others' only one or two. */
    THREE_TON_R410A_PISTON("R-410A", PISTON, 3, 106, 10.5, 25, 44, 111, 12, MAPPED, 0.0021),
    THREE_TON_R410A_VALVE("R-410A", THERMOSTATIC_EXPANSION_VALVE, 3, 106, 10.5, 25, 44, 111, 10, MAPPED, 0),
    TWO_TON_R410A_VALVE("R-410A", THERMOSTATIC_EXPANSION_VALVE, 2, 74, 8, 30, 46, 114, 9, MAPPED_RECIPROCATING, 0),
    FIVE_TON_R410A_ELECTRONIC_VALVE("R-410A", ELECTRONIC_EXPANSION_VALVE, 5, 185, 9, 50, 44, 111, 8, MAPPED, 0),
    TWO_AND_A_HALF_TON_R22_PISTON("R-22", PISTON, 2.5, 98, 10, 25, 42, 117, 12, DISPLACEMENT, 0.001),
    ONE_AND_A_HALF_TON_R22_CAPILLARY("R-22", CAPILLARY_TUBE, 1.5, 60, 9, 20, 43, 118, 12, DISPLACEMENT, 0.0006),
    FOUR_TON_R22_VALVE("R-22", THERMOSTATIC_EXPANSION_VALVE, 4, 160, 12, 40, 43, 115, 11, DISPLACEMENT, 0),
    THREE_TON_R407C_VALVE("R-407C", THERMOSTATIC_EXPANSION_VALVE, 3, 116, 9, 30, 45, 118, 9, DISPLACEMENT, 0),
    TWO_TON_R134A_PISTON("R-134a", PISTON, 2, 84, 9, 25, 43, 116, 12, DISPLACEMENT, 0.0005),
    TWO_AND_A_HALF_TON_R32_VALVE("R-32", THERMOSTATIC_EXPANSION_VALVE, 2.5, 78, 9, 25, 45, 111, 8, DISPLACEMENT, 0),
    THREE_AND_A_HALF_TON_R454B_VALVE(
            "R-454B", THERMOSTATIC_EXPANSION_VALVE, 3.5, 114, 10, 35, 45, 112, 9, DISPLACEMENT, 0),
    TWO_TON_R454B_PISTON("R-454B", PISTON, 2, 66, 8, 20, 44, 112, 12, DISPLACEMENT, 0.0015);

    private final String designation;
    private final MeteringDevice device;
    private final double tons;
    private final double ounces;
    private final double subcooling;
    private final double feet;
    private final double evaporating;
    private final double condensing;
    private final double superheat;
    private final Design.CompressorKind compressor;
    private final double orificeGrowth;

    /** Temperatures and differences in °F at rating. */
    TrainingUnit(
            String designation,
            MeteringDevice device,
            double tons,
            double ounces,
            double subcooling,
            double feet,
            double evaporating,
            double condensing,
            double superheat,
            Design.CompressorKind compressor,
            double orificeGrowth) {
        this.designation = designation;
        this.device = device;
        this.tons = tons;
        this.ounces = ounces;
        this.subcooling = subcooling;
        this.feet = feet;
        this.evaporating = evaporating;
        this.condensing = condensing;
        this.superheat = superheat;
        this.compressor = compressor;
        this.orificeGrowth = orificeGrowth;
    }

    public RatingPlate plate() {
        return new RatingPlate(
                refrigerant(designation),
                device,
                tons,
                Mass.ounces(ounces),
                TemperatureDifference.fahrenheit(subcooling),
                new LineSet(
                        TubeSize.THREE_EIGHTHS,
                        tons < 2.5
                                ? TubeSize.FIVE_EIGHTHS
                                : tons < 4 ? TubeSize.THREE_QUARTERS : TubeSize.SEVEN_EIGHTHS,
                        feet * 0.3048));
    }

    public Design design() {
        return new Design(
                Temperature.fahrenheit(evaporating),
                Temperature.fahrenheit(condensing),
                TemperatureDifference.fahrenheit(superheat),
                compressor,
                orificeGrowth,
                compressor == DISPLACEMENT ? Design.Coils.FITTED_WITHOUT_MAP : Design.Coils.FITTED);
    }

    /** The unit, sized anew; takes some tenths of a second. */
    public AirConditioner built() {
        return AirConditioner.balanced(name(), plate(), design());
    }

    private static Refrigerant refrigerant(String designation) {
        return Catalogue.standard()
                .find(designation)
                .known()
                .orElseThrow(() -> new IllegalStateException("not in the catalogue: " + designation));
    }
}
