package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.calc.caution.CautionRule;
import readback.calc.charge.Judgement;
import readback.calc.condition.Condition;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.OutOfRangeException;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.Job;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Step;
import readback.prompts.checklist.Task;
import readback.prompts.text.Message;

/**
 * A call whose answers are drawn: mostly what was asked for, from the whole range that the job can meet, at times what
 * was not. After every turn everything that was said is worded in every form and held against the judgement.
 */
final class GeneratedCall {

    private static final int MOST_TURNS = 120;
    private static final List<String> UNFORESEEN = List.of(
            "understood",
            "yes",
            "no",
            "skip",
            "unknown",
            "scratch that",
            "go back",
            "where are we",
            "say again",
            "why",
            "read me the readings",
            "help",
            "note the fan is loud",
            "what is saturation at 120",
            "metric",
            "imperial",
            "brief",
            "guide",
            "I did not ask");

    private final long seed;
    private final Random random;
    private final Rehearsal rehearsal;
    private final Set<String> outcomes = new TreeSet<>();
    /** Whether what is read and seen is that of a unit with too little refrigerant, and nothing else wrong. */
    private final boolean shortOfCharge;

    private double outdoor = 95;
    private double condensing = 110;

    /** Nitrogen, gas and vacuum readings lean on what they began with. */
    private double begun;

    private int turns;

    GeneratedCall(String job, long seed) {
        this.seed = seed;
        this.random = new Random(seed);
        this.shortOfCharge = random.nextInt(4) == 0;
        SessionSettings standard = SessionSettings.STANDARD;
        this.rehearsal = new Rehearsal(new SessionSettings(
                new JobId(job),
                standard.units(),
                random.nextInt(4) == 0,
                standard.known(),
                standard.limits(),
                standard.refrigerant(),
                standard.technician(),
                standard.site()));
        check();
    }

    /** What was announced, in its recorded form. */
    Set<String> outcomes() {
        return outcomes;
    }

    void run() {
        while (!rehearsal.state().closed() && turns < MOST_TURNS) {
            if (random.nextInt(8) == 0) {
                unforeseen();
            } else {
                answer();
            }
        }
        for (int i = 0; i < 4 && !rehearsal.state().closed(); i++) {
            say(rehearsal.state().held() ? "carry on" : "finish");
        }
        assertThat(rehearsal.state().closed())
                .as("it cannot be finished, seed " + seed)
                .isTrue();
    }

    private void say(String words) {
        turns++;
        rehearsal.says(words);
        check();
    }

    private void happens(Event event) {
        turns++;
        rehearsal.happens(event);
        check();
    }

    private void check() {
        rehearsal.messages().forEach(this::worded);
        Optional<Judgement> judgement = rehearsal.assessment().judgement();
        boolean saysToMove = rehearsal.keys().stream()
                .anyMatch(key ->
                        key.startsWith("correction.") || key.matches("verdict\\..*\\.(add|recover|in-tolerance)"));
        if (saysToMove) {
            assertThat(judgement.stream()
                            .flatMap(each -> each.conditions().stream())
                            .filter(failed -> failed.condition().blocking() && !excused(failed.condition())))
                    .as("a verdict beside what spoils it, seed " + seed + ": " + rehearsal.shown())
                    .isEmpty();
        }
        if (rehearsal.keys().stream().anyMatch(key -> key.matches("verdict\\..*\\.(add|in-tolerance)"))) {
            assertThat(rehearsal.assessment().cautions())
                    .as("liquid at the compressor, and no word against it, seed " + seed)
                    .noneMatch(caution -> caution.rule() == CautionRule.LIQUID_AT_COMPRESSOR);
        }
        rehearsal.state().standing().stream().map(JobOutcome::line).forEach(outcomes::add);
    }

    /** A coil below freezing forbids no test once somebody looked for ice and saw none, and was told of the coil. */
    private boolean excused(Condition condition) {
        return condition == Condition.COIL_ABOVE_FREEZING
                && rehearsal
                        .state()
                        .sheet()
                        .option(Slots.ICE_ON_COIL)
                        .filter(Intake.NO::equals)
                        .isPresent()
                && rehearsal.assessment().cautions().stream()
                        .anyMatch(caution -> caution.rule() == CautionRule.COIL_BELOW_FREEZING);
    }

    /** In every form and unit: a text that lacks a place, or keeps one empty, fails here. */
    private void worded(Message message) {
        for (UnitSetting units : List.of(UnitSetting.US, UnitSetting.METRIC)) {
            assertThat(Rehearsal.WORDING.shown(message, units))
                    .doesNotContain("{")
                    .isNotBlank();
            for (boolean brief : new boolean[] {true, false}) {
                if (!Rehearsal.WORDING.silent(message, brief)) {
                    assertThat(Rehearsal.WORDING.spoken(message, brief, units))
                            .doesNotContain("{")
                            .isNotBlank();
                }
            }
        }
    }

    private void unforeseen() {
        int dice = random.nextInt(11);
        if (dice == 0) {
            say("hold on");
            say("suction 118");
            say("carry on");
        } else if (dice == 1) {
            happens(new Event.Resumed(rehearsal.now()));
        } else if (dice == 2) {
            say("suction " + value(Quantity.SUCTION_PRESSURE, ""));
        } else if (dice == 3) {
            say("correction " + value(Quantity.SUCTION_LINE_TEMPERATURE, ""));
        } else if (dice == 4) {
            say("finish");
            say("no");
        } else if (dice == 5) {
            happens(new Event.ClockChanged(rehearsal.now(), Duration.ofMinutes(random.nextInt(400) - 200)));
        } else {
            say(UNFORESEEN.get(random.nextInt(UNFORESEEN.size())));
        }
    }

    private void answer() {
        State state = rehearsal.state();
        if (state.held()) {
            say("carry on");
        } else if (state.conversation().pending().isPresent()) {
            settle(state.conversation().pending().get());
        } else if (!state.unheeded().isEmpty()) {
            say("understood");
        } else {
            step(state).ifPresentOrElse(this::answer, () -> say("finish"));
        }
    }

    private void settle(Pending pending) {
        if (pending.choice().isPresent()) {
            say(random.nextBoolean() ? "more" : "in total");
        } else if (pending instanceof Pending.Between between) {
            say(between.reading().value().toPlainString());
        } else {
            say(random.nextInt(3) == 0 ? "no" : "yes");
        }
    }

    private static Optional<Step> step(State state) {
        Expectation expectation = Rehearsal.DIALOGUE.expectation(state);
        return Checklists.standard()
                .job(state.job())
                .flatMap(job -> job.step(expectation.step()))
                .map(Job.Placed::step);
    }

    private void answer(Step step) {
        Task task = step.task();
        switch (task.reply()) {
            case VALUE ->
                say(
                        step.optional() && random.nextInt(3) == 0
                                ? "skip"
                                : value(
                                        task.measured().orElseThrow(),
                                        step.slot().id()));
            case OPTION -> {
                String set = task.choices().orElseThrow();
                List<String> options = List.copyOf(Rehearsal.GRAMMAR.choices().options(set));
                String option = options.get(random.nextInt(options.size()));
                List<String> phrases = Rehearsal.GRAMMAR.choices().phrases(set, option);
                say(phrases.get(random.nextInt(phrases.size())));
            }
            case YES_OR_NO -> {
                boolean often = !(shortOfCharge && step.slot().id().startsWith("look-"));
                say((random.nextInt(4) == 0) == often ? "no" : "yes");
            }
            case TIME -> {
                rehearsal.passes(
                        random.nextInt(5) == 0
                                ? Duration.ofMinutes(2)
                                : task.awaited().orElseThrow());
                happens(new Event.TimerElapsed(rehearsal.now(), step.id()));
            }
            case FINISH -> say("finish");
            case DONE, NOTHING -> say("understood");
        }
    }

    /** A value for a slot, as it is said. */
    private String value(Quantity quantity, String slot) {
        return switch (quantity) {
            case SUCTION_PRESSURE -> pressure(shortOfCharge ? between(33, 37) : between(24, 58));
            case LIQUID_PRESSURE -> {
                condensing = shortOfCharge ? outdoor + between(5, 10) : between(85, 140);
                yield pressure(condensing);
            }
            case RESTING_PRESSURE -> {
                begun = between(55, 100);
                yield pressure(begun + pick(-15, 0, 0, 15));
            }
            case PLATE_LOW_SIDE_PRESSURE -> pick("250", "150");
            case NITROGEN_PRESSURE -> {
                begun = slot.endsWith("start") ? between(100, 160) : begun;
                yield whole(begun + (slot.endsWith("start") ? 0 : pick(0, 0, -15, 20)));
            }
            case LINE_TEMPERATURE -> slot.startsWith("rest") ? whole(random.nextInt(5) == 0 ? 160 : begun) : "75";
            case VACUUM_LEVEL ->
                slot.endsWith("limit")
                        ? pick("300", "500")
                        : slot.endsWith("isolated")
                                ? pick("300", "250", "450", "900")
                                : slot.endsWith("half")
                                        ? pick("310", "420", "450", "700")
                                        : pick("320", "450", "480", "900", "1400");
            case SUCTION_LINE_TEMPERATURE -> whole(shortOfCharge ? between(60, 72) : between(34, 72));
            case LIQUID_LINE_TEMPERATURE -> whole(shortOfCharge ? condensing - between(0, 3) : between(78, 112));
            case OUTDOOR_TEMPERATURE -> {
                outdoor = random.nextInt(8) == 0 ? between(40, 54) : between(65, 108);
                yield whole(outdoor);
            }
            case RETURN_WET_BULB -> whole(random.nextInt(8) == 0 ? between(48, 56) : between(58, 74));
            case RETURN_DRY_BULB -> whole(random.nextInt(6) == 0 ? between(86, 92) : between(72, 82));
            case SUPPLY_DRY_BULB -> whole(between(48, 66));
            case PLATE_SUBCOOLING -> whole(between(7, 14));
            case LIQUID_TUBE_SIZE -> pick("three eighths", "one half", "one quarter", "point four five inches");
            case SUCTION_TUBE_SIZE -> pick("three quarters", "seven eighths", "five eighths");
            case LIQUID_LIFT -> pick("0", "25", "90");
            case LINE_CHARGE -> pick("point six ounces per foot", "point five");
            case FILTER_DRIER_CHARGE -> pick("3 ounces", "6 ounces");
            case ROOM_AREA -> pick("80", "150", "1500");
            case LINE_LENGTH -> pick("30", "75", "10", "0");
            case INCLUDED_LINE_LENGTH -> pick("15", "25", "0", "150");
            case NAMEPLATE_CHARGE -> pick("90 ounces", "6 pounds 4 ounces", "10 ounces", "30 ounces");
            case REFRIGERANT_ADDED ->
                slot.equals(Quantity.REFRIGERANT_ADDED.name())
                                && rehearsal.state().job().equals(JobId.WEIGH_IN)
                        ? weighed() + " grams"
                        : pick("2 ounces", "4 ounces", "1.5 ounces");
            case CYLINDER_WEIGHT -> slot.endsWith("before") ? "50000 grams" : 50_000 - weighed() + " grams";
            case REFRIGERANT_RECOVERED -> pick("2 ounces", "4 ounces", "1.5 ounces");
            default -> whole(between(1, 60));
        };
    }

    /** What the job asks to weigh in, or more, or less, in grams. */
    private int weighed() {
        for (String outcome : outcomes) {
            if (outcome.matches("weigh-in \\d+g.*")) {
                int grams = Integer.parseInt(outcome.replaceAll("weigh-in (\\d+)g.*", "$1"));
                return Math.max(1, grams + (int) pick(0, 0, -200, 200));
            }
        }
        return 2500;
    }

    /** The gauge pressure of saturation at a temperature in degrees Fahrenheit; some number while nothing is known. */
    private String pressure(double fahrenheit) {
        Optional<Refrigerant> refrigerant = rehearsal.assessment().refrigerant();
        try {
            AbsolutePressure dew = refrigerant
                    .map(each -> each.dewPressure(Temperature.fahrenheit(fahrenheit)))
                    .orElse(AbsolutePressure.psia(130));
            return whole(
                    Unit.PSIG.fromBase(dew.gaugeIn(rehearsal.assessment().air()).pascals()));
        } catch (OutOfRangeException e) {
            return "100";
        }
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private String pick(String... values) {
        return values[random.nextInt(values.length)];
    }

    private double pick(double... values) {
        return values[random.nextInt(values.length)];
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
