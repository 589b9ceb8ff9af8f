package readback.calc.plant;

import readback.calc.measurement.SystemUnderTest;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Temperature;

/**
 * A split air-conditioner that runs in balance at its rating point. Immutable; building one tabulates its refrigerant.
 */
public final class AirConditioner {

    /**
     * Where the switch of the high side opens: 65 °C dew point, which is 610 psig for R-410A. Common practice, from
     * memory.
     */
    private static final Temperature SWITCH_OPENS = Temperature.celsius(65);

    private final String name;
    private final RatingPlate plate;
    private final Circuit circuit;

    private AirConditioner(String name, RatingPlate plate, Circuit circuit) {
        this.name = name;
        this.plate = plate;
        this.circuit = circuit;
    }

    /**
     * The unit that runs at {@link Weather#RATING} as plate and design say: coils, metering device, compressor and
     * hidden charge are sized for it, one after the other.
     *
     * @throws IllegalArgumentException if no coil of the design can do that
     */
    public static AirConditioner balanced(String name, RatingPlate plate, Design design) {
        return balanced(name, plate, design, new FluidTable(plate.refrigerant()));
    }

    static AirConditioner balanced(String name, RatingPlate plate, Design design, FluidTable fluid) {
        return new AirConditioner(name, plate, new Balancing(plate, design, fluid).circuit());
    }

    public String name() {
        return name;
    }

    public RatingPlate plate() {
        return plate;
    }

    /** The pressure at which the switch of the high side stops the compressor. */
    public AbsolutePressure highPressureSwitch() {
        return plate.refrigerant().dewPressure(SWITCH_OPENS);
    }

    /** The unit as whoever judges its charge knows it, with ordinary instruments and an installer's limits. */
    public SystemUnderTest underTest(Weather weather) {
        return SystemUnderTest.of(plate.refrigerant(), plate.meteringDevice()).in(weather.atmosphere());
    }

    Circuit circuit() {
        return circuit;
    }

    @Override
    public String toString() {
        return name;
    }
}
