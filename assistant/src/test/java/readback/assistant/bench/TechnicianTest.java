package readback.assistant.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.dialogue.State;
import readback.assistant.simulated.BuiltUnits;
import readback.assistant.simulated.Case;
import readback.assistant.simulated.Site;
import readback.assistant.simulated.Truth;
import readback.calc.plant.FaultSet;
import readback.calc.plant.InstrumentSet;
import readback.calc.plant.OperatingPoint;
import readback.calc.plant.PlantFault;
import readback.calc.plant.TrainingUnit;
import readback.calc.plant.Weather;
import readback.calc.quantity.Mass;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.prompts.checklist.Checklists;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Step;
import readback.prompts.checklist.Task;

class TechnicianTest {

    private static final State BEGINNING = new Dialogue(Grammar.standard(), Checklists.standard())
            .begin(new Event.Started(Instant.EPOCH, SessionSettings.STANDARD))
            .state();
    private static final BuiltUnits UNITS = new BuiltUnits();

    private static Case of(Truth truth) {
        TrainingUnit unit = TrainingUnit.THREE_TON_R410A_VALVE;
        return new Case(1, unit, UNITS.get(unit), Weather.RATING, truth, InstrumentSet.exact(), 1, 0);
    }

    private static String answer(Truth truth, Level level, String step, Optional<Quantity> quantity) {
        Case drawn = of(truth);
        return new Technician(drawn, level, new Site(drawn), false)
                .answer(BEGINNING, new Expectation(step, quantity, Optional.empty(), Optional.empty(), UnitSetting.US));
    }

    /** But for identifying the metering device, which he knows, and for what fills itself. */
    static List<Step> asked() {
        return Stream.of(JobId.CHARGE_CHECK, JobId.WEIGH_IN)
                .flatMap(job -> Checklists.standard().job(job).orElseThrow().parts().stream())
                .filter(part -> !part.checklist().id().equals("identify"))
                .flatMap(part -> part.checklist().steps().stream())
                .filter(step -> !(step.task() instanceof Task.MeasureAgain) && !(step.task() instanceof Task.Await))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("asked")
    void every_step_of_the_charge_check_and_the_weigh_in_has_an_answer(Step step) {
        Optional<Quantity> quantity = step.task().measured();

        assertThat(answer(Truth.SOUND, Level.CHECKLIST, step.id(), quantity)).isNotBlank();
    }

    @Test
    void a_step_that_he_was_not_taught_is_named() {
        assertThatThrownBy(() -> answer(Truth.SOUND, Level.CHECKLIST, "shoe-size", Optional.empty()))
                .isInstanceOf(UnknownStepException.class)
                .hasMessageContaining("'shoe-size' of call 1");
        assertThatThrownBy(() -> answer(Truth.SOUND, Level.CHECKLIST, "look-at-the-sky", Optional.empty()))
                .isInstanceOf(UnknownStepException.class)
                .hasMessageContaining("look-at-the-sky");
    }

    @Test
    void only_who_looks_sees_that_the_filter_is_dirty() {
        Truth dirty = Truth.of(PlantFault.LOW_INDOOR_AIR, 0.5);

        assertThat(answer(dirty, Level.CHECKLIST, "air-path", Optional.empty())).isEqualTo("yes");
        assertThat(answer(dirty, Level.FULL, "air-path", Optional.empty())).isEqualTo("no");
        assertThat(answer(Truth.SOUND, Level.FULL, "air-path", Optional.empty()))
                .isEqualTo("yes");
    }

    /** Asking whether something can be read takes nothing from the errors of what is read next. */
    @Test
    void what_is_not_read_changes_no_reading() {
        Case drawn = new Case(
                1,
                TrainingUnit.THREE_TON_R410A_VALVE,
                UNITS.get(TrainingUnit.THREE_TON_R410A_VALVE),
                Weather.RATING,
                Truth.SOUND,
                InstrumentSet.dial(),
                1,
                5);
        Site asked = new Site(drawn);

        assertThat(asked.canBeRead(Quantity.SUCTION_PRESSURE)).isTrue();
        assertThat(asked.canBeRead(Quantity.VACUUM_LEVEL)).isFalse();

        assertThat(asked.reads(Quantity.SUCTION_PRESSURE)).isEqualTo(new Site(drawn).reads(Quantity.SUCTION_PRESSURE));
    }

    @Test
    void looks_tell_the_truth_at_either_level() {
        Truth air = Truth.of(PlantFault.NON_CONDENSABLES, 0.5);

        assertThat(answer(air, Level.CHECKLIST, "look-resting-pressure-above-saturation", Optional.empty()))
                .isEqualTo("yes");
        assertThat(answer(air, Level.CHECKLIST, "look-suction-swings", Optional.empty()))
                .isEqualTo("no");
    }

    @Test
    void exact_instruments_show_what_the_unit_has_settled_at_and_the_plate_says_its_charge() {
        Case drawn = of(Truth.SOUND);
        double settled = OperatingPoint.solve(drawn.unit(), drawn.weather(), FaultSet.none())
                .running()
                .orElseThrow()
                .at()
                .suctionPressure()
                .gaugeIn(drawn.weather().atmosphere())
                .pascals();

        String pressure =
                answer(Truth.SOUND, Level.CHECKLIST, "valve-suction-pressure", Optional.of(Quantity.SUCTION_PRESSURE));

        assertThat(Double.parseDouble(pressure)).isCloseTo(Unit.PSIG.fromBase(settled), within(0.01));
        assertThat(answer(Truth.SOUND, Level.CHECKLIST, "plate-charge", Optional.of(Quantity.NAMEPLATE_CHARGE)))
                .isEqualTo("106");
    }

    @Test
    void refrigerant_moved_away_from_the_nameplate_charge_is_moved_wrongly() {
        assertThat(wrong(Truth.of(PlantFault.UNDERCHARGE, 0.5), 4)).isZero();
        assertThat(wrong(Truth.of(PlantFault.UNDERCHARGE, 0.5), -4)).isCloseTo(4, within(1e-9));
        assertThat(wrong(Truth.of(PlantFault.OVERCHARGE, 0.5), 4)).isCloseTo(4, within(1e-9));
        assertThat(wrong(Truth.of(PlantFault.OVERCHARGE, 0.5), -4)).isZero();
        assertThat(wrong(Truth.of(PlantFault.NON_CONDENSABLES, 0.5), -4)).isCloseTo(4, within(1e-9));
        assertThat(wrong(Truth.SOUND, 4)).isCloseTo(4, within(1e-9));
    }

    private static double wrong(Truth truth, double ounces) {
        Site site = new Site(of(truth));
        site.moves(Mass.ounces(ounces));
        return site.wrongOunces();
    }

    @Test
    void the_charge_at_the_end_is_a_share_of_the_nameplate() {
        Site site = new Site(of(Truth.of(PlantFault.UNDERCHARGE, 0)));

        site.moves(Mass.ounces(5.3));

        // 5 % of 106 oz were missing
        assertThat(site.charge()).isCloseTo(1, within(1e-9));
    }

    @Test
    void sizes_are_told_in_thirds() {
        assertThat(Truth.of(PlantFault.UNDERCHARGE, 0).row()).isEqualTo("undercharge 5-13 %");
        assertThat(Truth.of(PlantFault.UNDERCHARGE, 0.5).row()).isEqualTo("undercharge 13-22 %");
        assertThat(Truth.of(PlantFault.OVERCHARGE, 1).row()).isEqualTo("overcharge 22-30 %");
        assertThat(Truth.of(PlantFault.LOW_INDOOR_AIR, 1).row()).isEqualTo("low-indoor-air 49-70 %");
        assertThat(Truth.SOUND.row()).isEqualTo("sound");
    }

    @Test
    void a_reading_that_stands_though_he_never_called_it_out_is_scratched() {
        Dialogue dialogue = new Dialogue(Grammar.standard(), Checklists.standard());
        Case drawn = of(Truth.SOUND);
        State told = typed(
                dialogue,
                typed(dialogue, BEGINNING, drawn.unit().plate().refrigerant().designation()),
                "liquid pressure 318");
        Technician technician = new Technician(drawn, Level.CHECKLIST, new Site(drawn), true);

        String said = technician.answer(told, dialogue.expectation(told));

        assertThat(technician.misheard(told)).containsExactly(Quantity.LIQUID_PRESSURE);
        assertThat(said).isEqualTo("scratch liquid pressure");
        assertThat(typed(dialogue, told, said).assessment().readings().has(Quantity.LIQUID_PRESSURE))
                .isFalse();
    }

    private static State typed(Dialogue dialogue, State state, String words) {
        return dialogue.on(
                        state,
                        new Event.Heard(state.at().plusSeconds(1), Event.Source.KEYS, List.of(Hypothesis.typed(words))))
                .state();
    }
}
