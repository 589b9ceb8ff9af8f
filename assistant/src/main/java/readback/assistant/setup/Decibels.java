package readback.assistant.setup;

import readback.prompts.text.Fact;

/** Levels as they are told. */
final class Decibels {
    private Decibels() {}

    /** A level or a difference of levels, in whole decibels. */
    static Fact of(double level) {
        return new Fact.Count((int) Math.round(level));
    }

    /** How far one thing stands above another; nothing where it does not. */
    static Fact above(double difference) {
        return of(Math.max(0, difference));
    }
}
