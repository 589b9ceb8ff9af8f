package readback.assistant.dialogue;

import java.util.Optional;
import readback.calc.applicability.SystemKind;
import readback.calc.name.ConstantName;
import readback.grammar.Meaning;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Slot;
import readback.prompts.checklist.Step;
import readback.prompts.text.Message;

/** What is told about the unit or the coil: whether this check fits it, what to do if not, what it changes. */
final class Situations {

    /** The choice set of what is told. */
    static final String CHOICE = "situation";

    /** What is told. */
    enum Told {
        COOLING_MODE,
        HEAT_PUMP,
        HEATING_MODE,
        INVERTER,
        MINI_SPLIT,
        ACCUMULATOR,
        MICRO_CHANNEL,
        FROZEN,
        THAWED,
        /** Ice is to be taken off by force or heat: that opens the coil. */
        FORCED_THAW,
        /** Oxygen or air in place of nitrogen is thought of: it explodes with oil. */
        OXYGEN;

        /** What is told; empty where the choice is of another set. */
        static Optional<Told> in(Meaning.Choice choice) {
            return choice.choice().equals(CHOICE) ? ConstantName.find(Told.class, choice.option()) : Optional.empty();
        }

        /** What to do about it. */
        Message answer() {
            return Message.of("situation." + ConstantName.of(this));
        }
    }

    private final Intake intake;
    private final Waiting waiting;

    Situations(Intake intake, Waiting waiting) {
        this.intake = intake;
        this.waiting = waiting;
    }

    /** The job that the situation calls for; empty where it is answered in the one under way. */
    Optional<JobId> taken(Draft draft, Told told, Optional<Step> asked) {
        boolean iceAsked =
                asked.filter(step -> step.slot().equals(Slots.ICE_ON_COIL)).isPresent();
        if (told == Told.FROZEN && !iceAsked) {
            return Optional.of(JobId.FROZEN_COIL);
        }
        if (iceAsked && (told == Told.FROZEN || told == Told.THAWED)) {
            intake.word(draft, asked.orElseThrow(), told == Told.FROZEN ? Intake.YES : Intake.NO);
        } else if (told == Told.THAWED) {
            thawed(draft);
        } else {
            kept(draft, told);
            draft.say(told.answer());
        }
        return Optional.empty();
    }

    /** What it tells about the system need not be asked. */
    private static void kept(Draft draft, Told told) {
        switch (told) {
            case HEAT_PUMP, HEATING_MODE ->
                option(draft, Slots.SYSTEM_KIND, ConstantName.of(SystemKind.SPLIT_HEAT_PUMP));
            case MINI_SPLIT -> option(draft, Slots.SYSTEM_KIND, ConstantName.of(SystemKind.DUCTLESS));
            case INVERTER -> option(draft, Slots.VARIABLE_SPEED, Intake.YES);
            case ACCUMULATOR -> option(draft, Slots.ACCUMULATOR, Intake.YES);
            case MICRO_CHANNEL -> option(draft, Slots.MICRO_CHANNEL, Intake.YES);
            case COOLING_MODE, FROZEN, THAWED, FORCED_THAW, OXYGEN -> {}
        }
    }

    private static void option(Draft draft, Slot slot, String option) {
        draft.become(draft.sheet().with(slot, new Answer.Option(draft.state().at(), option)));
    }

    /** In the job of the frozen coil nothing is waited for any more; elsewhere it is only noted. */
    private void thawed(Draft draft) {
        if (!draft.state().job().equals(JobId.FROZEN_COIL)) {
            draft.say(Message.of("again.nothing-asked"));
            return;
        }
        waiting.endThaw(draft);
        draft.become(draft.sheet()
                .with(Slots.COIL_FREE_OF_ICE, new Answer.Option(draft.state().at(), Intake.YES)));
        draft.say(Told.THAWED.answer());
    }
}
