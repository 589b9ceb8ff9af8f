package readback.assistant.dialogue.outcome;

import java.util.List;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;

/** How much is to be weighed in. */
public record ToWeighIn(Amount amount) implements JobOutcome {

    /** The charge for the line set, or why there is none. */
    public sealed interface Amount {
        /** In a word, for a reader. */
        String line();

        /** So many grams. */
        record Grams(long grams) implements Amount {
            @Override
            public String line() {
                return grams + "g";
            }
        }

        /** The size of the liquid tube is in no table. */
        record UnknownTube() implements Amount {
            @Override
            public String line() {
                return "unknown-tube";
            }
        }

        /** More than the rooms allow: it must not go in. */
        record TooMuchForRooms(long grams) implements Amount {
            @Override
            public String line() {
                return "too-much-for-rooms";
            }
        }

        /** The line set is so short that nothing would be left to weigh in. */
        record NothingLeft() implements Amount {
            @Override
            public String line() {
                return "impossible";
            }
        }
    }

    @Override
    public Judged judged() {
        return Judged.WEIGH_IN;
    }

    @Override
    public String name() {
        return "weigh-in " + amount.line();
    }

    @Override
    public List<Figure> figures(UnitSetting units) {
        return amount instanceof Amount.Grams some
                ? List.of(Figure.mass("to-weigh-in", some.grams(), units))
                : List.of();
    }

    @Override
    public String line() {
        return name();
    }
}
