package readback.assistant.drill;

import java.util.List;
import readback.calc.quantity.Reading;

/** What answers a question rightly. */
public sealed interface Wanted {

    /** What the case of this kind makes of the answer. */
    <T> T fold(Cases<T> cases);

    /** What is to be made of each kind of answer. */
    interface Cases<T> {

        T number(Amount number);

        T option(Option option);

        T agreement(Agreement agreement);
    }

    /**
     * A value.
     *
     * @param value as calc has it, in the unit in which it is asked for
     * @param tolerance how far an answer may be off and still be right, in the same unit; over zero
     */
    record Amount(Reading value, double tolerance) implements Wanted {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.number(this);
        }
    }

    /**
     * One of several.
     *
     * @param set name of the set of choices in the grammar
     * @param right the option, as in "superheat"
     * @param offered the options that are named in the question, in their order
     */
    record Option(String set, String right, List<String> offered) implements Wanted {
        public Option {
            offered = List.copyOf(offered);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.option(this);
        }
    }

    /** Yes or no. */
    record Agreement(boolean yes) implements Wanted {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.agreement(this);
        }
    }
}
