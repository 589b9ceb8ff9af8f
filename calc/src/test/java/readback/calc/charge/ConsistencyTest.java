package readback.calc.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.within;
import static readback.calc.measurement.Known.PISTON;
import static readback.calc.measurement.Known.VALVE;
import static readback.calc.measurement.Known.pistonWithLineAt;
import static readback.calc.measurement.Known.reading;
import static readback.calc.measurement.Known.valveWithLineAt;
import static readback.calc.measurement.Known.valveWithSubcooling;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.Estimate;
import readback.calc.measurement.Known;
import readback.calc.measurement.Limits;
import readback.calc.measurement.MeteringDevice;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.plausibility.Plausibility;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;

/** What must hold over whole grids of readings, whatever the numbers are. */
class ConsistencyTest {

    private final ChargeJudge judge = new ChargeJudge();

    /** From recover through in tolerance to add, without a step back, while the suction line warms by tenths. */
    @Test
    void a_warmer_suction_line_never_turns_towards_recover() {
        for (int wetBulb = 60; wetBulb <= 74; wetBulb += 2) {
            for (int outdoor = 70; outdoor <= 105; outdoor += 5) {
                int before = -1;
                for (int tenths = 420; tenths <= 900; tenths += 3) {
                    Verdict verdict = judge.judge(
                                    PISTON,
                                    pistonWithLineAt(tenths / 10.0)
                                            .with(reading(Quantity.RETURN_WET_BULB, wetBulb))
                                            .with(reading(Quantity.OUTDOOR_TEMPERATURE, outdoor)))
                            .verdict();
                    if (verdict.kind() == Verdict.Kind.NO_VALID_TEST) {
                        break;
                    }
                    int now = order(verdict.kind());
                    assertThat(now)
                            .as("wet bulb %s, outdoor %s, line %s", wetBulb, outdoor, tenths / 10.0)
                            .isGreaterThanOrEqualTo(before);
                    before = now;
                }
            }
        }
    }

    @Test
    void a_higher_suction_pressure_never_turns_towards_add() {
        int before = 3;
        for (int psig = 102; psig <= 155; psig++) {
            int now = order(judge.judge(PISTON, pistonWithLineAt(58).with(reading(Quantity.SUCTION_PRESSURE, psig)))
                    .verdict()
                    .kind());
            assertThat(now).as("%s psig", psig).isLessThanOrEqualTo(before);
            before = now;
        }
        assertThat(before).isZero();
    }

    @Test
    void a_warmer_liquid_line_never_turns_towards_recover() {
        int before = -1;
        for (int tenths = 900; tenths <= 1100; tenths++) {
            int now = order(
                    judge.judge(VALVE, valveWithLineAt(tenths / 10.0)).verdict().kind());
            assertThat(now).as("%s", tenths / 10.0).isGreaterThanOrEqualTo(before);
            before = now;
        }
        assertThat(before).isEqualTo(3);
    }

    /** Limits ±3 °F about a plate of 10 °F, compared in tenths. */
    @Test
    void verdicts_flip_only_across_the_limits() {
        for (int tenths = 0; tenths <= 200; tenths++) {
            Verdict.Kind expected =
                    tenths < 70 ? Verdict.Kind.ADD : tenths > 130 ? Verdict.Kind.RECOVER : Verdict.Kind.IN_TOLERANCE;
            assertThat(judge.judge(VALVE, valveWithSubcooling(tenths / 10.0))
                            .verdict()
                            .kind())
                    .as("subcooling %s °F", tenths / 10.0)
                    .isEqualTo(expected);
        }
    }

    @Test
    void borderline_verdicts_lie_around_the_limits_and_nowhere_else() {
        List<Integer> borderline = new ArrayList<>();
        for (int tenths = 0; tenths <= 200; tenths++) {
            if (judge.judge(VALVE, valveWithSubcooling(tenths / 10.0)).verdict().borderline()) {
                borderline.add(tenths);
            }
        }
        // 1.28 standard uncertainties of 1.31 °F about 7 and 13
        assertThat(borderline).contains(70, 130, 60, 80, 120, 140).doesNotContain(50, 90, 100, 110, 150);
    }

    @Test
    void the_verifier_never_fails_what_the_installer_passes() {
        for (int tenths = 400; tenths <= 700; tenths += 5) {
            Readings readings = pistonWithLineAt(tenths / 10.0);
            if (judge.judge(PISTON, readings).verdict().kind() == Verdict.Kind.IN_TOLERANCE) {
                assertThat(judge.judge(PISTON.judgedBy(Limits.INDEPENDENT_VERIFIER), readings)
                                .verdict()
                                .kind())
                        .isEqualTo(Verdict.Kind.IN_TOLERANCE);
            }
        }
    }

    /** The same state read in bar and degrees Celsius. */
    @Test
    void the_units_that_readings_are_stated_in_change_nothing() {
        for (int line = 42; line <= 70; line++) {
            Readings us = pistonWithLineAt(line);
            Readings metric = Readings.none();
            for (Reading reading : us.asMap().values()) {
                metric = metric.with(metric(reading));
            }
            Judgement expected = judge.judge(PISTON, us);
            Judgement actual = judge.judge(PISTON, metric);

            assertThat(actual.verdict().kind()).isEqualTo(expected.verdict().kind());
            assertThat(actual.target().orElseThrow().value().kelvins())
                    .isCloseTo(expected.target().orElseThrow().value().kelvins(), within(1e-6));
            assertThat(actual.superheat().orElseThrow().value().kelvins())
                    .isCloseTo(expected.superheat().orElseThrow().value().kelvins(), within(1e-6));
        }
    }

    /** The gauge shows less where the air is thinner only by what the air lacks; the refrigerant does not notice. */
    @Test
    void the_same_absolute_pressure_gives_the_same_judgement_at_every_altitude() {
        Judgement sea = judge.judge(PISTON, pistonWithLineAt(52));
        for (int metres = 0; metres <= 4000; metres += 250) {
            AbsolutePressure air = Atmosphere.atAltitude(metres);
            double psig = GaugePressure.psig(118)
                    .absoluteIn(Atmosphere.SEA_LEVEL)
                    .gaugeIn(air)
                    .psig();
            Judgement here =
                    judge.judge(PISTON.in(air), pistonWithLineAt(52).with(reading(Quantity.SUCTION_PRESSURE, psig)));

            assertThat(here.superheat().orElseThrow().value().kelvins())
                    .isCloseTo(sea.superheat().orElseThrow().value().kelvins(), within(1e-9));
            assertThat(here.verdict().kind()).isEqualTo(sea.verdict().kind());
            // the digits that the gauge would show differ, and with them the resolution
            assertThat(((Verdict.Compared) here.verdict()).deviation().probability())
                    .isCloseTo(((Verdict.Compared) sea.verdict()).deviation().probability(), within(1e-4));
        }
    }

    /** U.S. Standard Atmosphere, 12.228 psia at 5,000 ft, and the printed R-410A table: 1.1 and 0.5 °F. */
    @Test
    void ignoring_five_thousand_feet_makes_superheat_read_low_and_subcooling_high() {
        AbsolutePressure high = AbsolutePressure.psia(12.228);
        double superheat =
                fahrenheit(judge.judge(PISTON.in(high), pistonWithLineAt(52)).superheat());
        double ignoring = fahrenheit(judge.judge(PISTON, pistonWithLineAt(52)).superheat());
        double subcooling =
                fahrenheit(judge.judge(VALVE.in(high), valveWithLineAt(100)).subcooling());
        double ignoringToo = fahrenheit(judge.judge(VALVE, valveWithLineAt(100)).subcooling());

        assertThat(superheat - ignoring).isCloseTo(1.1, within(0.05));
        assertThat(ignoringToo - subcooling).isCloseTo(0.5, within(0.05));
    }

    /** Any number for any quantity, in any unit: seeded. */
    @Tag("slow")
    @Test
    void every_reading_that_can_be_stated_gets_a_judgement() {
        long seed = 410;
        SplittableRandom random = new SplittableRandom(seed);
        String[] wild = {
            "0", "-1", "1e9", "-1e9", "0.0000001", "118", "52", "67", "95", "365", "100", "-459.67", "-14.696"
        };
        List<Refrigerant> refrigerants =
                List.of(Known.R410A, Known.R22, Known.refrigerant("R-32"), Known.refrigerant("R-454B"));
        for (int i = 0; i < 5_000; i++) {
            Readings readings = Readings.none();
            for (Quantity quantity : Quantity.values()) {
                if (random.nextInt(3) > 0) {
                    BigDecimal value = random.nextBoolean()
                            ? new BigDecimal(wild[random.nextInt(wild.length)])
                            : BigDecimal.valueOf(random.nextDouble(-50, 500));
                    readings = readings.with(new Reading(quantity, value, unit(quantity, random)));
                } else if (random.nextInt(4) == 0) {
                    readings = readings.withUnknown(quantity);
                }
            }
            MeteringDevice device =
                    random.nextBoolean() ? MeteringDevice.CAPILLARY_TUBE : MeteringDevice.ELECTRONIC_EXPANSION_VALVE;
            Refrigerant refrigerant = refrigerants.get(random.nextInt(refrigerants.size()));
            SystemUnderTest system =
                    SystemUnderTest.of(refrigerant, device).in(Atmosphere.atAltitude(random.nextDouble(-500, 6000)));
            Readings taken = readings;

            assertThatCode(() -> {
                        judge.judge(system, taken);
                        for (Reading reading : taken.asMap().values()) {
                            Plausibility.grade(reading, Optional.of(refrigerant), taken);
                            Plausibility.grade(reading, Optional.empty(), taken);
                        }
                    })
                    .as("seed %s, case %s: %s", seed, i, taken)
                    .doesNotThrowAnyException();
        }
    }

    private static Unit unit(Quantity quantity, SplittableRandom random) {
        List<Unit> units = Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension() == quantity.dimension())
                .toList();
        return units.get(random.nextInt(units.size()));
    }

    private static Reading metric(Reading reading) {
        Unit unit = switch (reading.quantity().dimension()) {
            case GAUGE_PRESSURE -> Unit.BAR_GAUGE;
            case TEMPERATURE -> Unit.CELSIUS;
            default -> reading.unit();
        };
        return new Reading(reading.quantity(), BigDecimal.valueOf(reading.in(unit)), unit);
    }

    private static int order(Verdict.Kind kind) {
        return switch (kind) {
            case RECOVER -> 0;
            // near the target, and too little for the compressor
            case DO_NOT_CHARGE -> 1;
            case IN_TOLERANCE -> 2;
            case ADD -> 3;
            case WEIGH_IN, NO_VALID_TEST, INCOMPLETE -> throw new AssertionError("no comparison: " + kind);
        };
    }

    private static double fahrenheit(Optional<Estimate> estimate) {
        return estimate.orElseThrow().value().fahrenheit();
    }
}
