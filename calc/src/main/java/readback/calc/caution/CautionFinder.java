package readback.calc.caution;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import readback.calc.fluid.Refrigerant;
import readback.calc.fluid.Side;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;

/** The rule book: which cautions a situation calls for. */
public final class CautionFinder {

    /**
     * 5 °F at the suction service port behind a fixed orifice, and wherever the device is not known: note in equipment
     * installation manuals, and the same floor that the California Energy Commission (RA3.2.2.6.1, step 3) sets for a
     * usable target.
     */
    public static final TemperatureDifference LEAST_SAFE_SUPERHEAT = TemperatureDifference.fahrenheit(5);

    /**
     * 140 °F condensing, about 540 psig for R-410A and 340 psig for R-22, some 10 °F short of usual cut-out settings.
     * Common practice, no source.
     */
    public static final Temperature NEAR_CUT_OUT = Temperature.fahrenheit(140);

    /**
     * 225 °F on the discharge line; inside, the valves are some 50 °F hotter and the oil breaks down. Common practice.
     */
    public static final Temperature HOTTEST_DISCHARGE_LINE = Temperature.fahrenheit(225);

    /** Water on the coil freezes. */
    public static final Temperature FREEZING = Temperature.fahrenheit(32);

    /** Freezing, and 2 °F for the gauge: a coil that shows this much is surely free of ice. Ours. */
    public static final Temperature SURELY_ABOVE_FREEZING = Temperature.fahrenheit(34);

    /**
     * Highest pressure for which a joint test needs no plate value: the 150 psig of the R-22 age. Common practice;
     * decision 0006.
     */
    private static final GaugePressure TEST_WITHOUT_PLATE = GaugePressure.psig(150);

    private static final Situation.Cases<Set<CautionRule>> RULES = new Situation.Cases<>() {
        @Override
        public Set<CautionRule> before(Situation.Before before) {
            Set<CautionRule> fired = CautionFinder.before(before.activity(), before.refrigerant());
            if (before.activity() == Activity.RECOVERING) {
                // a cylinder whose filling is not known may be full
                fired.add(CautionRule.CYLINDER_OVERFILL);
            }
            return fired;
        }

        @Override
        public Set<CautionRule> running(Situation.Running running) {
            return CautionFinder.running(running);
        }

        @Override
        public Set<CautionRule> pressureTesting(Situation.PressureTesting test) {
            GaugePressure allowed = test.plateLowSidePressure().orElse(TEST_WITHOUT_PLATE);
            return test.pressure().compareTo(allowed) > 0
                    ? EnumSet.of(CautionRule.TEST_PRESSURE_ABOVE_PLATE)
                    : Set.of();
        }

        @Override
        public Set<CautionRule> recovering(Situation.Recovering recovering) {
            Set<CautionRule> fired = CautionFinder.before(Activity.RECOVERING, recovering.refrigerant());
            if (recovering.cylinderShare() >= 1) {
                fired.add(CautionRule.CYLINDER_OVERFILL);
            }
            return fired;
        }
    };

    private CautionFinder() {}

    /** The cautions that the situation calls for, the gravest first, each once. */
    public static List<Caution> in(Situation situation) {
        Set<CautionRule> fired = situation.fold(RULES);
        List<Caution> cautions = new ArrayList<>(fired.size());
        fired.forEach(rule -> cautions.add(rule.caution()));
        return Collections.unmodifiableList(cautions);
    }

    private static Set<CautionRule> before(Activity activity, Optional<Refrigerant> refrigerant) {
        Set<CautionRule> fired = ofActivity(activity);
        flammability(activity, refrigerant).ifPresent(fired::add);
        return fired;
    }

    private static Set<CautionRule> ofActivity(Activity activity) {
        return switch (activity) {
            case CONNECTING_HOSES ->
                EnumSet.of(
                        CautionRule.HIGH_PRESSURE,
                        CautionRule.FROSTBITE,
                        CautionRule.VENTING_PROHIBITED,
                        CautionRule.CERTIFIED_WORK);
            case OPENING_ELECTRICAL -> EnumSet.of(CautionRule.CHARGED_CAPACITOR);
            case CHARGING ->
                EnumSet.of(
                        CautionRule.HIGH_PRESSURE,
                        CautionRule.FROSTBITE,
                        CautionRule.ASPHYXIATION,
                        CautionRule.CERTIFIED_WORK);
            case RECOVERING ->
                EnumSet.of(
                        CautionRule.ASPHYXIATION,
                        CautionRule.HIGH_PRESSURE,
                        CautionRule.FROSTBITE,
                        CautionRule.VENTING_PROHIBITED,
                        CautionRule.CERTIFIED_WORK);
            case PRESSURE_TESTING ->
                EnumSet.of(CautionRule.NEVER_OXYGEN, CautionRule.NITROGEN_REGULATOR, CautionRule.ASPHYXIATION);
            case BRAZING ->
                EnumSet.of(
                        CautionRule.NEVER_OXYGEN,
                        CautionRule.NITROGEN_REGULATOR,
                        CautionRule.DECOMPOSITION_NEAR_FLAME,
                        CautionRule.ASPHYXIATION,
                        CautionRule.VENTING_PROHIBITED);
            case RESTRICTING_CONDENSER -> EnumSet.of(CautionRule.RESTRICTED_CONDENSER);
            case EVACUATING -> EnumSet.of(CautionRule.VENTING_PROHIBITED, CautionRule.CERTIFIED_WORK);
        };
    }

    /** Nitrogen alone does not burn; any other unknown content may. */
    private static Optional<CautionRule> flammability(Activity activity, Optional<Refrigerant> refrigerant) {
        if (refrigerant.isEmpty()) {
            return activity == Activity.PRESSURE_TESTING ? Optional.empty() : Optional.of(CautionRule.FLAMMABLE_A2L);
        }
        return switch (refrigerant.get().safetyClass()) {
            case A1 -> Optional.empty();
            case A2L -> Optional.of(CautionRule.FLAMMABLE_A2L);
            case A2, A3 -> Optional.of(CautionRule.FLAMMABLE_A3);
        };
    }

    private static Set<CautionRule> running(Situation.Running running) {
        Set<CautionRule> fired = EnumSet.noneOf(CautionRule.class);
        if (running.superheat()
                .filter(measured -> measured.compareTo(running.leastSuperheat()) < 0)
                .isPresent()) {
            fired.add(CautionRule.LIQUID_AT_COMPRESSOR);
        }
        running.refrigerant().ifPresent(refrigerant -> pressures(running, refrigerant, fired));
        if (running.dischargeLine()
                .filter(t -> t.compareTo(HOTTEST_DISCHARGE_LINE) >= 0)
                .isPresent()) {
            fired.add(CautionRule.DISCHARGE_TOO_HOT);
        }
        return fired;
    }

    /** Held against the pressure at the limit: a pressure that boils nothing any more is the more dangerous one. */
    private static void pressures(Situation.Running running, Refrigerant refrigerant, Set<CautionRule> fired) {
        if (running.lowSide()
                .filter(p -> p.compareTo(refrigerant.saturationPressure(Side.DEW, SURELY_ABOVE_FREEZING)) < 0)
                .isPresent()) {
            fired.add(CautionRule.COIL_BELOW_FREEZING);
        }
        if (running.highSide()
                .filter(p -> p.compareTo(nearCutOut(refrigerant)) >= 0)
                .isPresent()) {
            fired.add(CautionRule.NEAR_HIGH_PRESSURE_CUT_OUT);
        }
    }

    private static AbsolutePressure nearCutOut(Refrigerant refrigerant) {
        return NEAR_CUT_OUT.compareTo(refrigerant.highestTemperature()) < 0
                ? refrigerant.saturationPressure(Side.BUBBLE, NEAR_CUT_OUT)
                : refrigerant.highestPressure(Side.BUBBLE);
    }
}
