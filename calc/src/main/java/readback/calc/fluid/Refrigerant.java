package readback.calc.fluid;

import java.util.List;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/**
 * A refrigerant of nominal composition, with its saturation temperatures and properties. Immutable and shared freely
 * between threads.
 *
 * <p>Saturation values follow the equation of state within 0.001 K from 200 K to 0.985 of the critical temperature,
 * take nanoseconds and allocate only their result. Properties of single phases solve the equation of state and take
 * microseconds.
 *
 * <p>Every method that takes a temperature or a pressure throws {@link OutOfRangeException} where the refrigerant has
 * no such state, naming the value, its unit and the limit.
 */
public final class Refrigerant {

    /** Lets a value that was computed at a limit be used there, in spite of rounding. */
    private static final double ROUNDING = 1e-9;

    /** Within the validity of every equation here. Pa. */
    private static final double HIGHEST_LIQUID_PRESSURE = 10e6;

    private static final double IIR_ENTHALPY = 200_000;
    private static final double IIR_ENTROPY = 1_000;

    private final RefrigerantFacts facts;
    private final List<Paper> papers;
    private final SaturationModel model;
    private final SaturationCurves bubble;
    private final SaturationCurves dew;
    private final MolarProperties reference;

    /** @param reference saturated liquid at 0 °C by the equation of state */
    Refrigerant(
            RefrigerantFacts facts,
            List<Paper> papers,
            SaturationModel model,
            SaturationCurves bubble,
            SaturationCurves dew,
            MolarProperties reference) {
        this.facts = facts;
        this.papers = List.copyOf(papers);
        this.model = model;
        this.bubble = bubble;
        this.dew = dew;
        this.reference = reference;
    }

    /** The designation of ASHRAE 34 and ISO 817, as in "R-410A". */
    public String designation() {
        return facts.designation();
    }

    public SafetyClass safetyClass() {
        return facts.safetyClass();
    }

    /**
     * What people call it, in lower-case words, best known first, as in "four ten a". The letter r may be said before
     * each.
     */
    public List<String> spokenNames() {
        return facts.spokenNames();
    }

    /** The components by mass; a single one for a pure refrigerant. */
    public List<Ingredient> composition() {
        return facts.composition();
    }

    /**
     * Whether it is mixed of several refrigerants, so that it must be charged as liquid and may fractionate in a leak.
     */
    public boolean blend() {
        return facts.composition().size() > 1;
    }

    /**
     * The highest temperature at which liquid and vapour differ. Published for pure refrigerants and the blends of
     * Lemmon 2003, computed from the mixture model for the others.
     */
    public Temperature criticalTemperature() {
        return Temperature.kelvin(facts.criticalTemperature());
    }

    /** The pressure at the critical point; source as for {@link #criticalTemperature()}. */
    public AbsolutePressure criticalPressure() {
        return AbsolutePressure.pascals(facts.criticalPressure());
    }

    /** 100-year global warming potential after the assessment report; mass-weighted for blends. */
    public double globalWarmingPotential(AssessmentReport edition) {
        return edition == AssessmentReport.AR4 ? facts.gwpAr4() : facts.gwpAr5();
    }

    /** Ozone depletion potential, R-11 being 1; Montreal Protocol values. */
    public double ozoneDepletionPotential() {
        return facts.ozoneDepletion();
    }

    /** The papers that published the equation of state and, for a blend, its mixture parameters. */
    public List<Paper> papers() {
        return papers;
    }

    /** The lowest temperature at which saturation values are given. */
    public Temperature lowestTemperature() {
        return Temperature.kelvin(SaturationCurves.LOWEST_TEMPERATURE);
    }

    /** The highest temperature at which saturation values are given: 0.985 of the critical temperature. */
    public Temperature highestTemperature() {
        return Temperature.kelvin(SaturationCurves.HIGHEST_SHARE * facts.criticalTemperature());
    }

    /** The saturation pressure at {@link #lowestTemperature()}. */
    public AbsolutePressure lowestPressure(Side side) {
        return curves(side).lowestPressure();
    }

    /** The saturation pressure at {@link #highestTemperature()}. */
    public AbsolutePressure highestPressure(Side side) {
        return curves(side).highestPressure();
    }

    /** Where the last drop evaporates at this pressure: the saturation temperature for superheat. */
    public Temperature dewTemperature(AbsolutePressure pressure) {
        return Temperature.kelvin(temperature(Side.DEW, dew, pressure.pascals()));
    }

    /** Where the first bubble forms at this pressure: the saturation temperature for subcooling. */
    public Temperature bubbleTemperature(AbsolutePressure pressure) {
        return Temperature.kelvin(temperature(Side.BUBBLE, bubble, pressure.pascals()));
    }

    /** The pressure at which vapour of this temperature begins to condense. */
    public AbsolutePressure dewPressure(Temperature temperature) {
        return AbsolutePressure.pascals(pressure(Side.DEW, dew, temperature.kelvin()));
    }

    /** The pressure at which liquid of this temperature begins to boil. */
    public AbsolutePressure bubblePressure(Temperature temperature) {
        return AbsolutePressure.pascals(pressure(Side.BUBBLE, bubble, temperature.kelvin()));
    }

    /** {@link #bubbleTemperature} or {@link #dewTemperature}. */
    public Temperature saturationTemperature(Side side, AbsolutePressure pressure) {
        return side == Side.DEW ? dewTemperature(pressure) : bubbleTemperature(pressure);
    }

    /** {@link #bubblePressure} or {@link #dewPressure}. */
    public AbsolutePressure saturationPressure(Side side, Temperature temperature) {
        return side == Side.DEW ? dewPressure(temperature) : bubblePressure(temperature);
    }

    /**
     * How much warmer the dew point is than the bubble point at a pressure. Zero for pure refrigerants; a hair below
     * zero is possible beside an azeotrope.
     */
    public TemperatureDifference glide(AbsolutePressure pressure) {
        return dewTemperature(pressure).minus(bubbleTemperature(pressure));
    }

    /** Liquid at its bubble point. */
    public FluidState saturatedLiquid(Temperature temperature) {
        double kelvin = checkedTemperature(Side.BUBBLE, temperature.kelvin());
        return state(kelvin, model.density(Side.BUBBLE, kelvin));
    }

    /** Vapour at its dew point. */
    public FluidState saturatedVapour(Temperature temperature) {
        double kelvin = checkedTemperature(Side.DEW, temperature.kelvin());
        return state(kelvin, model.density(Side.DEW, kelvin));
    }

    /**
     * Vapour warmer than its dew point, or on it.
     *
     * @param temperature 200 K to {@link #highestVapourTemperature()}
     * @param pressure up to the dew pressure at that temperature, and up to {@link #highestPressure} above the critical
     *     temperature
     */
    public FluidState superheatedVapour(Temperature temperature, AbsolutePressure pressure) {
        double kelvin = temperature.kelvin();
        double hottest = model.fluid().highestTemperature();
        if (!(kelvin >= SaturationCurves.LOWEST_TEMPERATURE * (1 - ROUNDING) && kelvin <= hottest)) {
            throw new OutOfRangeException(
                    "vapour temperature of " + designation(),
                    kelvin,
                    "K",
                    SaturationCurves.LOWEST_TEMPERATURE + " to " + hottest + " K");
        }
        double limit = kelvin < highestTemperature().kelvin()
                ? dewPressure(temperature).pascals()
                : highestPressure(Side.DEW).pascals();
        if (pressure.pascals() > limit * (1 + ROUNDING)) {
            throw new OutOfRangeException(
                    "vapour pressure of " + designation() + " at " + kelvin + " K",
                    pressure.pascals(),
                    "Pa",
                    "at most " + Math.round(limit) + " Pa absolute, above which it condenses");
        }
        return state(kelvin, Phases.vapourDensity(model.fluid(), kelvin, pressure.pascals()));
    }

    /**
     * Liquid colder than its bubble point, or on it.
     *
     * @param temperature as for {@link #bubblePressure}
     * @param pressure from the bubble pressure at that temperature to 10 MPa
     */
    public FluidState subcooledLiquid(Temperature temperature, AbsolutePressure pressure) {
        double kelvin = temperature.kelvin();
        double limit = bubblePressure(temperature).pascals();
        if (!(pressure.pascals() >= limit * (1 - ROUNDING) && pressure.pascals() <= HIGHEST_LIQUID_PRESSURE)) {
            throw new OutOfRangeException(
                    "liquid pressure of " + designation() + " at " + kelvin + " K",
                    pressure.pascals(),
                    "Pa",
                    Math.round(limit) + " Pa absolute, below which it boils, to " + Math.round(HIGHEST_LIQUID_PRESSURE)
                            + " Pa");
        }
        return state(kelvin, Phases.liquidDensity(model.fluid(), kelvin, pressure.pascals()));
    }

    /** The highest temperature of superheated vapour: where the validity of the equation of state ends. */
    public Temperature highestVapourTemperature() {
        return Temperature.kelvin(model.fluid().highestTemperature());
    }

    SaturationModel model() {
        return model;
    }

    SaturationCurves curves(Side side) {
        return side == Side.DEW ? dew : bubble;
    }

    private double temperature(Side side, SaturationCurves curves, double pascals) {
        double ln = Math.log(pascals);
        SaturationCurve curve = curves.temperature();
        if (!(ln >= curve.low() - ROUNDING && ln <= curve.high() + ROUNDING)) {
            throw new OutOfRangeException(
                    name(side) + " pressure of " + designation(),
                    pascals,
                    "Pa",
                    Math.round(Math.exp(curve.low())) + " to " + Math.round(Math.exp(curve.high())) + " Pa absolute ("
                            + highestLimit());
        }
        return curve.at(ln);
    }

    private double pressure(Side side, SaturationCurves curves, double kelvin) {
        return curves.pressure(checkedTemperature(side, kelvin));
    }

    private double checkedTemperature(Side side, double kelvin) {
        double highest = SaturationCurves.HIGHEST_SHARE * facts.criticalTemperature();
        if (!(kelvin >= SaturationCurves.LOWEST_TEMPERATURE * (1 - ROUNDING) && kelvin <= highest * (1 + ROUNDING))) {
            throw new OutOfRangeException(
                    name(side) + " temperature of " + designation(),
                    kelvin,
                    "K",
                    SaturationCurves.LOWEST_TEMPERATURE + " to " + highest + " K (" + highestLimit());
        }
        return kelvin;
    }

    private String highestLimit() {
        return "up to 0.985 of the critical temperature, " + facts.criticalTemperature() + " K)";
    }

    private static String name(Side side) {
        return side == Side.DEW ? "dew" : "bubble";
    }

    private FluidState state(double kelvin, double density) {
        HelmholtzFluid fluid = model.fluid();
        double molarMass = fluid.molarMass();
        MolarProperties at = MolarProperties.at(fluid, kelvin, density);
        return new FluidState(
                Temperature.kelvin(kelvin),
                AbsolutePressure.pascals(at.pressure()),
                density * molarMass,
                (at.enthalpy() - reference.enthalpy()) / molarMass + IIR_ENTHALPY,
                (at.entropy() - reference.entropy()) / molarMass + IIR_ENTROPY,
                at.heatCapacity() / molarMass,
                at.speedOfSound());
    }

    @Override
    public String toString() {
        return designation();
    }
}
