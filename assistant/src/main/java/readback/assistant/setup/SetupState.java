package readback.assistant.setup;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import readback.calc.quantity.Reading;
import readback.prompts.text.Message;

/** Where setting up stands. Immutable. */
record SetupState(Situation situation, Decisions decisions, SoundFound sound, Moment now) {

    /**
     * What is asked now.
     *
     * @param busy whether something is measured, played or written whose end is waited for
     * @param altitude the height that was said and is read back
     * @param told what is told before the question
     */
    record Moment(Step step, boolean busy, Optional<Reading> altitude, List<Message> told) {
        Moment {
            told = List.copyOf(told);
        }

        static Moment at(Step step, List<Message> told) {
            return new Moment(step, false, Optional.empty(), told);
        }
    }

    /** Nothing was asked yet. */
    static SetupState before(Situation situation) {
        return new SetupState(
                situation, Decisions.of(situation.stated()), SoundFound.NOTHING, Moment.at(Step.MENU, List.of()));
    }

    Step step() {
        return now.step();
    }

    SetupState at(Moment moment) {
        return new SetupState(situation, decisions, sound, moment);
    }

    /** The same question once more, after this was told. */
    SetupState telling(Message... messages) {
        return at(new Moment(now.step(), false, now.altitude(), List.of(messages)));
    }

    /** The same question while something that belongs to it runs. */
    SetupState begun() {
        return at(new Moment(now.step(), true, Optional.empty(), now.told()));
    }

    SetupState deciding(Decisions more) {
        return new SetupState(situation, more, sound, now);
    }

    SetupState hearing(SoundFound found) {
        return new SetupState(situation, decisions, found, now);
    }

    /** After the file was written: what it says is what counts from now on. */
    SetupState written() {
        Map<Name, String> all = new TreeMap<>(decisions.stated());
        all.putAll(decisions.all());
        Situation after = new Situation(
                situation.microphones(), situation.loudspeakers(), situation.file(), true, Optional.empty(), all);
        return new SetupState(after, Decisions.of(all), sound, now);
    }
}
