package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.calc.diagnosis.Advice;
import readback.calc.diagnosis.Advisor;
import readback.calc.diagnosis.Finding;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.Lookup;
import readback.calc.measurement.MeteringDevice;
import readback.calc.measurement.Readings;
import readback.calc.measurement.SystemUnderTest;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.prompts.checklist.Judged;

/**
 * A technician who mishears nothing but speaks in random order, corrects, interrupts, asks why, goes away and comes
 * back. Whatever he does, the session must end with the verdict that his readings deserve, and no caution may be
 * missed. Run with {@code -Drandom.conversations=20000} for the long run.
 */
@Tag("slow")
class RandomTechnicianTest {

    private static final int CONVERSATIONS = Integer.getInteger("random.conversations", 150);
    private static final long SEED = Long.getLong("random.seed", 20_261_125L);
    private static final int MOST_TURNS = 400;
    private static final List<MeteringDevice> DEVICES = List.of(MeteringDevice.values());

    private static final List<String> ASIDES = List.of(
            "why",
            "how",
            "help",
            "say again",
            "where are we",
            "read me the readings",
            "brief",
            "guide",
            "stop talking",
            "what is saturation at 120",
            "humpty dumpty",
            "",
            "carry on",
            "note the coil was replaced",
            "go back");

    @Test
    void every_conversation_ends_with_the_verdict_of_its_readings() {
        Map<Integer, Integer> turns = new LinkedHashMap<>();
        int all = 0;
        for (int i = 0; i < CONVERSATIONS; i++) {
            long seed = SEED + i;
            Technician technician = new Technician(seed);
            technician.work();
            turns.merge(technician.turns / 10 * 10, 1, Integer::sum);
            all += technician.turns;
        }
        System.out.println(CONVERSATIONS + " conversations from seed " + SEED + ", mean turns " + all / CONVERSATIONS
                + " with all asides, spread by tens " + turns);
    }

    @Test
    void an_expert_hears_the_verdict_within_twelve_turns() {
        Rehearsal rehearsal = new Rehearsal();
        List<String> said = List.of(
                "four ten a",
                "txv",
                "understood",
                "yes",
                "yes",
                "outdoor 95",
                "plate subcooling 10",
                "liquid pressure 365, liquid line 100",
                "suction 118, suction line 52");
        said.forEach(rehearsal::says);

        assertThat(rehearsal.state().announced(Judged.CHARGE).map(JobOutcome::name))
                .contains("in-tolerance");
        assertThat(said).hasSizeLessThanOrEqualTo(12);
    }

    /** One of many. */
    private static final class Technician {

        private final long seed;
        private final Random random;
        private final Rehearsal rehearsal = new Rehearsal();
        private final String refrigerant;
        private final MeteringDevice device;
        private final Map<Quantity, String> truth = new EnumMap<>(Quantity.class);
        private final Map<Finding, Boolean> seen = new EnumMap<>(Finding.class);
        private final Set<String> warned = new TreeSet<>();
        private boolean moved;
        private int turns;

        Technician(long seed) {
            this.seed = seed;
            this.random = new Random(seed);
            boolean old = random.nextInt(3) == 0;
            refrigerant = old ? "R-22" : "R-410A";
            device = DEVICES.get(random.nextInt(DEVICES.size()));
            truth.put(Quantity.OUTDOOR_TEMPERATURE, between(70, 105));
            truth.put(Quantity.RETURN_WET_BULB, between(60, 74));
            truth.put(Quantity.SUCTION_PRESSURE, old ? between(55, 85) : between(102, 145));
            truth.put(Quantity.SUCTION_LINE_TEMPERATURE, between(46, 70));
            truth.put(Quantity.PLATE_SUBCOOLING, between(7, 14));
            truth.put(Quantity.LIQUID_PRESSURE, old ? between(190, 280) : between(310, 430));
            truth.put(Quantity.LIQUID_LINE_TEMPERATURE, between(84, 112));
        }

        private String between(int low, int high) {
            String whole = String.valueOf(low + random.nextInt(high - low + 1));
            return random.nextInt(4) == 0 ? whole + ".5" : whole;
        }

        void work() {
            while (!rehearsal.state().closed()) {
                assertThat(turns).as("no end in sight, seed " + seed).isLessThan(MOST_TURNS);
                act();
            }
            expectTheRightEnd();
        }

        private void say(String words) {
            turns++;
            rehearsal.says(words);
            rehearsal.turn().outcome().cautions().stream().map(ConstantName::of).forEach(warned::add);
        }

        private void act() {
            int dice = random.nextInt(100);
            if (dice < 12) {
                say(ASIDES.get(random.nextInt(ASIDES.size())));
            } else if (dice < 15) {
                say("hold on");
                say("suction 130");
                say("carry on");
            } else if (dice < 22) {
                anyReading();
            } else if (dice < 25) {
                Quantity quantity = anyQuantity();
                if (rehearsal.state().sheet().reading(quantity).isPresent()) {
                    say("scratch " + name(quantity));
                }
            } else if (dice < 27) {
                rehearsal.happens(new Event.Resumed(rehearsal.now()));
            } else if (dice < 30) {
                goAway();
            } else if (dice < 32) {
                takeBack();
            } else if (dice < 35) {
                replaceInSilence();
            } else {
                answer();
            }
        }

        /** Away for a while; the silence is told of, a device may be lost and found. */
        private void goAway() {
            if (random.nextBoolean()) {
                String device = random.nextBoolean() ? "microphone" : Event.RECORD;
                rehearsal.happens(new Event.DeviceLost(rehearsal.now(), device));
                rehearsal.passes(Duration.ofMinutes(random.nextInt(5)));
                rehearsal.happens(new Event.DeviceFound(rehearsal.now(), device));
            }
            for (int i = random.nextInt(4); i > 0; i--) {
                rehearsal.passes(Duration.ofMinutes(1 + random.nextInt(15)));
                rehearsal.happens(new Event.TimerElapsed(rehearsal.now(), Event.SILENCE));
            }
        }

        /** Takes back what was said last, whatever it was, but for what was seen: that is remembered here too. */
        private void takeBack() {
            boolean look = rehearsal
                    .state()
                    .sheet()
                    .last()
                    .filter(change -> change.slot().id().startsWith("look-"))
                    .isPresent();
            if (!look) {
                say("scratch that");
                settleDoubts();
            }
        }

        /**
         * A value takes the place of another without "correction": it must be told of, and the right one comes back.
         */
        private void replaceInSilence() {
            Quantity quantity = anyQuantity();
            Optional<Reading> there = rehearsal.state().sheet().reading(quantity);
            if (there.isEmpty() || !rehearsal.state().conversation().questions().isEmpty()) {
                return;
            }
            String other = there.get().value().add(BigDecimal.ONE).toPlainString();
            say(name(quantity) + " " + other);
            if (rehearsal
                    .state()
                    .sheet()
                    .reading(quantity)
                    .filter(now -> !now.equals(there.get()))
                    .isPresent()) {
                assertThat(rehearsal.shown()).as("seed " + seed).contains("instead of");
            }
            say("correction " + name(quantity) + " " + truth.get(quantity));
            settleDoubts();
        }

        private Quantity anyQuantity() {
            List<Quantity> quantities = new ArrayList<>(truth.keySet());
            return quantities.get(random.nextInt(quantities.size()));
        }

        /** A value out of order, at times wrong at first and corrected at once. */
        private void anyReading() {
            Quantity quantity = anyQuantity();
            if (random.nextInt(3) == 0) {
                say(name(quantity) + " " + truth.get(quantity) + "5");
                say("correction " + name(quantity) + " " + truth.get(quantity));
            } else {
                say(name(quantity) + " " + truth.get(quantity));
            }
            settleDoubts();
        }

        private void settleDoubts() {
            for (int i = 0; i < 10; i++) {
                Optional<Pending> pending = rehearsal.state().conversation().pending();
                if (pending.isEmpty()) {
                    return;
                }
                Optional<Quantity> quantity = pending.get().inDoubt();
                if (quantity.isEmpty()) {
                    say("no");
                } else if (pending.get() instanceof Pending.Confirm confirm) {
                    understoodIsNoYes(confirm);
                    if (rehearsal.state().conversation().pending().isPresent()) {
                        say(isTrue(confirm.reading()) ? "yes" : "no");
                    }
                } else {
                    say(name(quantity.get()) + " " + truth.get(quantity.get()));
                }
            }
        }

        /** It fills nothing; a doubt about a value that nobody asked for may lapse. */
        private void understoodIsNoYes(Pending.Confirm confirm) {
            if (random.nextInt(3) == 0
                    && rehearsal.state().warnings().unheeded().isEmpty()) {
                Quantity quantity = confirm.reading().quantity();
                Optional<Reading> before = rehearsal.state().sheet().reading(quantity);
                say("understood");
                assertThat(rehearsal.state().sheet().reading(quantity))
                        .as("\"understood\" confirmed a value, seed " + seed)
                        .isEqualTo(before);
            }
        }

        private boolean isTrue(Reading reading) {
            return reading.value().toPlainString().equals(truth.getOrDefault(reading.quantity(), ""));
        }

        private void answer() {
            settleDoubts();
            if (!rehearsal.state().warnings().unheeded().isEmpty()) {
                say("understood");
                return;
            }
            String step = Rehearsal.DIALOGUE.expectation(rehearsal.state()).step();
            Optional<Quantity> asked =
                    Rehearsal.DIALOGUE.expectation(rehearsal.state()).quantity();
            if (step.equals("refrigerant")) {
                say(refrigerant.equals("R-22") ? "r twenty two" : "four ten a");
            } else if (step.equals("metering-device")) {
                say(spoken(device));
            } else if (step.startsWith("look-")) {
                boolean yes = random.nextBoolean();
                seen.put(Finding.valueOf(step.substring(5).replace('-', '_').toUpperCase(java.util.Locale.ROOT)), yes);
                say(yes ? "yes" : "no");
            } else if (asked.filter(truth::containsKey).isPresent()) {
                String value = truth.getOrDefault(asked.get(), "");
                say(random.nextBoolean() ? value : name(asked.get()) + " " + value);
                settleDoubts();
            } else if (step.endsWith("-running") || step.equals("air-path") || step.equals("caps-and-leaks")) {
                say("yes");
            } else if (asked.isPresent()) {
                say(step.startsWith("amount-") && !moved ? "2 ounces" : "skip");
                moved = true;
            } else if (step.equals("settle")) {
                settle();
            } else if (step.equals("sign-off")) {
                finish();
            } else {
                say("understood");
            }
        }

        /** Too early is too early; then the time passes. */
        private void settle() {
            if (random.nextBoolean()) {
                say("suction line " + truth.get(Quantity.SUCTION_LINE_TEMPERATURE));
                assertThat(rehearsal.keys()).as("seed " + seed).contains("wait.too-early");
            }
            rehearsal.passes(Duration.ofMinutes(15));
            rehearsal.happens(new Event.TimerElapsed(rehearsal.now(), "settle"));
        }

        /** The last word: everything as it was measured. */
        private void finish() {
            truth.forEach((quantity, value) -> {
                Optional<Reading> there = rehearsal.state().sheet().reading(quantity);
                if (there.isPresent() && !isTrue(there.get())) {
                    say("correction " + name(quantity) + " " + value);
                    settleDoubts();
                }
            });
            if (Rehearsal.DIALOGUE.expectation(rehearsal.state()).step().equals("sign-off")) {
                say("finish");
            }
        }

        private void expectTheRightEnd() {
            Readings readings = Readings.none();
            for (Reading reading : rehearsal.assessment().readings().asMap().values()) {
                assertThat(isTrue(reading) || !truth.containsKey(reading.quantity()))
                        .as("a wrong value stayed: " + reading + ", seed " + seed)
                        .isTrue();
                readings = readings.with(reading);
            }
            for (Quantity unknown : rehearsal.assessment().readings().unknown()) {
                readings = readings.withUnknown(unknown);
            }
            Lookup.Found found = (Lookup.Found) Catalogue.standard().find(refrigerant);
            Advice advice = new Advisor().advise(SystemUnderTest.of(found.refrigerant(), device), readings, seen);

            assertThat(rehearsal.state().announced(Judged.CHARGE).map(JobOutcome::name))
                    .as("seed " + seed)
                    .contains(ConstantName.of(advice.judgement().verdict().kind()));
            assertThat(warned)
                    .as("a caution was missed, seed " + seed)
                    .containsAll(advice.judgement().cautions().stream()
                            .map(caution -> ConstantName.of(caution.rule()))
                            .toList());
        }

        private static String spoken(MeteringDevice device) {
            return switch (device) {
                case PISTON -> "piston";
                case CAPILLARY_TUBE -> "capillary tube";
                case THERMOSTATIC_EXPANSION_VALVE -> "txv";
                case ELECTRONIC_EXPANSION_VALVE -> "electronic expansion valve";
            };
        }

        private static String name(Quantity quantity) {
            return switch (quantity) {
                case OUTDOOR_TEMPERATURE -> "outdoor";
                case RETURN_WET_BULB -> "wet bulb";
                case SUCTION_PRESSURE -> "suction pressure";
                case SUCTION_LINE_TEMPERATURE -> "suction line";
                case PLATE_SUBCOOLING -> "plate subcooling";
                case LIQUID_PRESSURE -> "liquid pressure";
                case LIQUID_LINE_TEMPERATURE -> "liquid line";
                default -> throw new IllegalArgumentException("not measured here: " + quantity);
            };
        }
    }
}
