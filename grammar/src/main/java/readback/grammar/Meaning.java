package readback.grammar;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;

/** What an utterance asks the dialogue to do. */
public sealed interface Meaning {

    /** What the case of this kind makes of the meaning. */
    <T> T fold(Cases<T> cases);

    /** The values that are stated, in the order they were said; none where the meaning is something else. */
    default List<Reading> readings() {
        return List.of();
    }

    /** The same with every stated value changed. */
    default Meaning mapped(UnaryOperator<Reading> change) {
        return this;
    }

    /** The command, if it is one. */
    default Optional<Command> order() {
        return Optional.empty();
    }

    /** Whether it is this command. */
    default boolean orders(Command command) {
        return order().filter(command::equals).isPresent();
    }

    /** Whether the words mean something here. */
    default boolean understood() {
        return true;
    }

    /** What is to be made of each kind of meaning. */
    interface Cases<T> {

        T values(Values values);

        T correction(Correction correction);

        T choice(Choice choice);

        T choices(Choices choices);

        T ordered(Ordered ordered);

        T note(Note note);

        T saturationQuestion(SaturationQuestion question);

        T probeNamed(ProbeNamed named);

        T mentioned(Mentioned mentioned);

        T notUnderstood(NotUnderstood reason);
    }

    /** One or more values, in the order they were said. */
    record Values(List<Reading> readings) implements Meaning {
        public Values {
            readings = List.copyOf(readings);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.values(this);
        }

        @Override
        public Meaning mapped(UnaryOperator<Reading> change) {
            return new Values(readings.stream().map(change).toList());
        }
    }

    /** Values that replace earlier ones: "correction, one one zero". */
    record Correction(List<Reading> readings) implements Meaning {
        public Correction {
            readings = List.copyOf(readings);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.correction(this);
        }

        @Override
        public Meaning mapped(UnaryOperator<Reading> change) {
            return new Correction(readings.stream().map(change).toList());
        }
    }

    /**
     * An option of a set of choices: the refrigerant, the metering device, a checklist to switch to.
     *
     * @param choice the name of the set, as in "metering-device"
     * @param option the name of the option, as in "piston"
     */
    record Choice(String choice, String option) implements Meaning {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.choice(this);
        }
    }

    /** Options of several sets in one breath, in the order they were said: "four ten a, piston". */
    record Choices(List<Choice> choices) implements Meaning {
        public Choices {
            choices = List.copyOf(choices);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.choices(this);
        }
    }

    /**
     * A command, perhaps about one quantity: "why", "scratch the suction pressure".
     *
     * @param about empty when the command names nothing
     */
    record Ordered(Command command, Optional<Quantity> about) implements Meaning {
        public Ordered(Command command) {
            this(command, Optional.empty());
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.ordered(this);
        }

        @Override
        public Optional<Command> order() {
            return Optional.of(command);
        }
    }

    /** A remark to keep in the record, in the words heard. */
    record Note(String words) implements Meaning {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.note(this);
        }
    }

    /** "What is saturation at one eighteen": answered, nothing is filled. */
    record SaturationQuestion(Reading pressure) implements Meaning {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.saturationQuestion(this);
        }
    }

    /**
     * What a probe measures: "probe two is the suction line".
     *
     * @param number by which the probe is spoken of, from 1 on
     */
    record ProbeNamed(int number, Quantity quantity) implements Meaning {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.probeNamed(this);
        }
    }

    /**
     * An option that is spoken of, without being chosen or cried out: "what do i do if my hose leaks", "pressure test".
     */
    record Mentioned(Choice of) implements Meaning {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.mentioned(this);
        }
    }

    /**
     * Words that mean nothing here.
     *
     * @param where the words that could not be placed
     * @param why what was wrong
     */
    record NotUnderstood(String where, Reason why) implements Meaning {

        /** A reason that is about no words in particular. */
        public static NotUnderstood of(Reason.Kind why) {
            return new NotUnderstood("", Reason.of(why));
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.notUnderstood(this);
        }

        @Override
        public boolean understood() {
            return false;
        }
    }
}
