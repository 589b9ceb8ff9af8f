package readback.assistant.dialogue;

import java.util.Optional;
import readback.calc.fluid.Refrigerant;
import readback.calc.measurement.Readings;
import readback.calc.plausibility.Grade;
import readback.calc.plausibility.Plausibility;
import readback.calc.quantity.Reading;
import readback.grammar.Prior;

/** How a value stands to what is known of the system, for the grammar to weigh what was heard by. */
public final class AssessedPrior {

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

    /** Where nothing was read yet and only the refrigerant is known. */
    public static Prior of(Refrigerant known) {
        return reading ->
                Plausibility.grade(reading, Optional.of(known), Readings.none()).fold(GRADES);
    }

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
