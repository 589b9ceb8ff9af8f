package readback.assistant.simulated;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import readback.calc.caution.CautionFinder;
import readback.calc.caution.CautionRule;
import readback.calc.diagnosis.Finding;
import readback.calc.plant.FaultSet;
import readback.calc.plant.Inspection;
import readback.calc.plant.Measurands;
import readback.calc.plant.PlantFault;
import readback.calc.plant.Transient;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/** The unit of a case while the technician is there, with everything that he does to it. Owned by one thread. */
public final class Site {

    /** The compressor has run this long when the technician puts his gauges on. */
    private static final Duration RAN_BEFORE = Duration.ofMinutes(15);

    /** What a charging scale may be off by; common practice, no source. */
    private static final Mass SCALE = Mass.ounces(0.5);

    private final Case drawn;
    private final RandomGenerator scatter;
    private FaultSet faults;
    private Transient unit;
    private double charge;
    private int moves;
    private double wrong;
    private boolean recharged;
    private Duration mendedAt = Duration.ZERO;

    public Site(Case drawn) {
        this.drawn = drawn;
        this.scatter = new SplittableRandom(drawn.scatter());
        this.charge = drawn.truth().charge();
        this.faults = drawn.truth().faults();
        this.unit = Transient.started(drawn.unit(), drawn.weather(), faults).after(RAN_BEFORE);
    }

    public void passes(Duration time) {
        unit = unit.after(time);
    }

    /** How long it has run since the compressor started, or since something was mended. */
    public Duration ran() {
        return unit.elapsed().minus(mendedAt);
    }

    /** Whether it can still run with what is in it. */
    public boolean runs() {
        return unit.steady().running().isPresent();
    }

    /** What stands on the plate, or what the instruments show now. */
    public Optional<Reading> reads(Quantity quantity) {
        return reads(quantity, scatter);
    }

    /** Whether there is something to read; nobody reads it, so that what is read next stays what it would have been. */
    public boolean canBeRead(Quantity quantity) {
        return reads(quantity, new SplittableRandom(0)).isPresent();
    }

    private Optional<Reading> reads(Quantity quantity, RandomGenerator errors) {
        return drawn.unit()
                .plate()
                .readings()
                .find(quantity)
                .or(() -> drawn.instruments()
                        .read(unit.now(), drawn.weather(), errors)
                        .find(quantity));
    }

    /** What someone who looks or tries would find. */
    public boolean finds(Finding finding) {
        return unit.steady()
                .running()
                .filter(running -> Inspection.finds(finding, faults, running))
                .isPresent();
    }

    /** Adds refrigerant, or recovers it with a negative mass. */
    public void moves(Mass refrigerant) {
        boolean needed = drawn.truth().isCharge() && Math.signum(1 - charge) == Math.signum(refrigerant.kilograms());
        wrong += needed ? 0 : Math.abs(refrigerant.ounces());
        charge += refrigerant.kilograms() / drawn.unit().plate().charge().kilograms();
        moves++;
        unit = unit.moved(refrigerant);
    }

    /** Empties the unit and weighs a charge in, as well as the scale can. */
    public void recharges(Mass refrigerant) {
        double weighedIn = refrigerant.ounces() + SCALE.ounces() * scatter.nextDouble(-1, 1);
        Mass in = Mass.ounces(weighedIn - charge * drawn.unit().plate().charge().ounces());
        charge += in.kilograms() / drawn.unit().plate().charge().kilograms();
        unit = unit.moved(in);
        recharged = true;
    }

    public boolean recharged() {
        return recharged;
    }

    /** Puts a fault right. */
    public void mends(PlantFault fault) {
        faults = faults.with(fault, 0);
        mendedAt = unit.elapsed();
        unit = unit.without(fault);
    }

    /** How often refrigerant was moved. */
    public int moves() {
        return moves;
    }

    /** Ounces moved away from the nameplate charge, or moved at all where the charge is not what is wrong. */
    public double wrongOunces() {
        return wrong;
    }

    /** The charge as a share of the nameplate's. */
    public double charge() {
        return charge;
    }

    /** Cautions that the true state of the unit calls for now, whatever the instruments show. */
    public List<CautionRule> threatens() {
        Measurands now = unit.now();
        Temperature coil = drawn.unit().plate().refrigerant().dewTemperature(now.suctionPressure());
        TemperatureDifference superheat = now.suctionLine().minus(coil);
        List<CautionRule> rules = new ArrayList<>();
        if (superheat.compareTo(CautionFinder.LEAST_SAFE_SUPERHEAT) < 0) {
            rules.add(CautionRule.LIQUID_AT_COMPRESSOR);
        }
        if (coil.compareTo(CautionFinder.FREEZING) < 0) {
            rules.add(CautionRule.COIL_BELOW_FREEZING);
        }
        return rules;
    }
}
