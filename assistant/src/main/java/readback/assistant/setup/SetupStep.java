package readback.assistant.setup;

import java.util.List;
import java.util.Optional;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Reading;
import readback.grammar.Command;
import readback.grammar.Expectation;
import readback.prompts.text.Message;

/**
 * A step of setting up: when it is of use, what it asks and offers, what runs by itself, and what an answer decides,
 * which is written at the end. Pure and without a state of its own; the way on and back is that of every step
 * ({@link Way}), and a step that measures has a method beside these that takes what was measured.
 */
interface SetupStep {

    /** Which one it is. */
    Step step();

    /** Whether it can be of use now. */
    default boolean applies(SetupState state) {
        return !listens() || state.sound().microphone().isPresent();
    }

    /** What follows where it is passed by, because it does not apply. */
    default SetupState passedBy(SetupState state) {
        return state;
    }

    /** What is told where it is passed by. */
    default Optional<Message> missing(SetupState state) {
        return Optional.empty();
    }

    /** What begins by itself when it is entered; its end is waited for. */
    default Optional<SetupEffect> begins() {
        return Optional.empty();
    }

    /** What is asked while nothing runs. */
    default Message question(SetupState state) {
        return Message.of("setup." + ConstantName.of(step()) + ".ask");
    }

    /** What can be chosen while nothing runs: unless told otherwise, to go on or to begin anew. */
    default List<Offer> offers(SetupState state) {
        return Offer.commands(Choice.NEXT, Choice.AGAIN, Choice.BACK);
    }

    /** What can be chosen while something runs. */
    default List<Offer> offersMeanwhile() {
        return Offer.commands(Choice.SKIP, Choice.BACK);
    }

    /** What is listened for while something runs, beside what can be chosen. */
    default List<String> phrasesMeanwhile() {
        return List.of();
    }

    /** Whether it can do nothing without the microphone. */
    default boolean listens() {
        return false;
    }

    /** Whether numbers with their names are listened for, and so everything that the grammar knows. */
    default boolean takesValues(SetupState state) {
        return false;
    }

    /** The situation in which words are understood. */
    default Expectation expectation(SetupState state) {
        return Expectation.open(state.decisions().units()).answeredBy(Command.YES, Command.NO);
    }

    /** What comes of something that was chosen, but the way on and back: unless told otherwise, it begins anew. */
    default Turn chosen(SetupState state, Offer offer, Way way) {
        return way.to(step(), state, List.of());
    }

    /** What comes of values that were said; empty where they do not fit here. */
    default Optional<Turn> said(SetupState state, List<Reading> readings) {
        return Optional.empty();
    }

    /** The way back. */
    default Turn back(SetupState state, Way way) {
        return way.back(state);
    }
}
