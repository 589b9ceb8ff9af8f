package readback.assistant.dialogue;

import readback.calc.plausibility.Grade;
import readback.calc.quantity.Reading;
import readback.grammar.Prior;

/** How a value stands to what is known of the system, for the grammar to weigh what was heard by. */
final class AssessedPrior {

    private static final Grade.Cases<Prior.Grade> GRADES = new Grade.Cases<>() {
        @Override
        public Prior.Grade typical(Grade.Typical typical) {
            return Prior.Grade.TYPICAL;
        }

        @Override
        public Prior.Grade unusual(Grade.Unusual unusual) {
            return Prior.Grade.UNUSUAL;
        }

        @Override
        public Prior.Grade impossible(Grade.Impossible impossible) {
            return Prior.Grade.IMPOSSIBLE;
        }
    };

    private AssessedPrior() {}

    static Prior of(Assessment known) {
        return new Prior() {
            @Override
            public Prior.Grade of(Reading reading) {
                return known.grade(reading).fold(GRADES);
            }

            @Override
            public boolean stands(Reading reading) {
                return known.readings()
                        .find(reading.quantity())
                        .filter(there -> there.base() == reading.base())
                        .isPresent();
            }
        };
    }
}
