package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import readback.calc.charge.Verdict;
import readback.calc.name.ConstantName;
import readback.calc.procedure.RestingPressure;
import readback.calc.procedure.SplitCheck;
import readback.calc.procedure.StandingPressure;
import readback.calc.procedure.VacuumDecay;
import readback.calc.procedure.WeighIn;

/**
 * Drives every job to every outcome that it can come to, with generated readings and now and then a move that a
 * checklist does not foresee. Nothing may fail, no text may keep an empty place, and no verdict may stand beside what
 * spoils it. Run with {@code -Dcalls.per.job=5000} for the long run.
 */
@Tag("slow")
class EveryOutcomeTest {

    private static final int CALLS = Integer.getInteger("calls.per.job", 120);
    private static final long SEED = Long.getLong("random.seed", 20_261_128L);

    /** A job with the outcomes that must be reached, each by the words that its recorded form begins with. */
    record Expected(String job, List<String> outcomes) {
        @Override
        public String toString() {
            return job;
        }
    }

    static Stream<Expected> jobs() {
        return Stream.of(
                new Expected(
                        "charge-check",
                        EnumSet.complementOf(EnumSet.of(Verdict.Kind.INCOMPLETE)).stream()
                                .map(ConstantName::of)
                                .toList()),
                new Expected(
                        "airflow",
                        Stream.concat(
                                        outcomes("airflow", SplitCheck.Outcome.values()).stream(),
                                        Stream.of("airflow outside-table"))
                                .toList()),
                new Expected("frozen-coil", List.of()),
                new Expected("pressure-test", outcomes("pressure-test", StandingPressure.Outcome.values())),
                new Expected(
                        "evacuation",
                        outcomes(
                                "evacuation",
                                // a hold asks for what the others lack before it judges
                                EnumSet.complementOf(EnumSet.of(
                                                VacuumDecay.Outcome.FAILED,
                                                VacuumDecay.Outcome.NOT_DEEP_ENOUGH,
                                                VacuumDecay.Outcome.WAIT))
                                        .toArray(VacuumDecay.Outcome[]::new))),
                new Expected(
                        "weigh-in",
                        Stream.concat(
                                        outcomes("weighed-in", WeighIn.Outcome.values()).stream(),
                                        Stream.of("weigh-in unknown-tube", "weigh-in impossible"))
                                .toList()),
                new Expected(
                        "resting-pressure",
                        Stream.concat(
                                        outcomes("resting-pressure", RestingPressure.Outcome.values()).stream(),
                                        Stream.of("resting-pressure no-saturation"))
                                .toList()));
    }

    private static List<String> outcomes(String job, Enum<?>[] outcomes) {
        return Arrays.stream(outcomes)
                .map(outcome -> job + " " + ConstantName.of(outcome))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void every_outcome_is_reached_and_none_misleads(Expected expected) {
        Set<String> reached = new TreeSet<>();
        for (int i = 0; i < CALLS; i++) {
            GeneratedCall call = new GeneratedCall(expected.job(), SEED + i);
            call.run();
            reached.addAll(call.outcomes());
        }
        List<String> missing = new ArrayList<>(expected.outcomes());
        missing.removeIf(
                outcome -> reached.stream().anyMatch(each -> each.equals(outcome) || each.startsWith(outcome + " ")));
        assertThat(missing)
                .as("outcomes of " + expected.job() + " in " + CALLS + " calls from seed " + SEED + ", reached "
                        + reached)
                .isEmpty();
    }
}
