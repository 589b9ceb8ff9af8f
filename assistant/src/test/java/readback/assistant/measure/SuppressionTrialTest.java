package readback.assistant.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import readback.assistant.ear.Ear;
import readback.assistant.ear.ScriptedEar;
import readback.assistant.sound.Samples;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Prior;

class SuppressionTrialTest {

    private static final SuppressionTrial.Way LEVEL_ONLY =
            new SuppressionTrial.Way("level", sound -> Samples.silence(sound.seconds(), Ear.RATE), false, true);

    private static final SuppressionTrial.Way DEAFENING =
            new SuppressionTrial.Way("deafening", sound -> Samples.silence(sound.seconds(), Ear.RATE), true, false);

    private static Said said(String value) {
        short[] tone = new short[Ear.RATE];
        for (int i = 0; i < tone.length; i++) {
            tone[i] = (short) (8000 * Math.sin(2 * Math.PI * 440 * i / Ear.RATE));
        }
        Samples sound = Samples.joined(
                List.of(Samples.silence(0.5, Ear.RATE), Samples.of(tone, Ear.RATE), Samples.silence(1, Ear.RATE)),
                Ear.RATE);
        return new Said(
                value,
                "one one eight",
                sound,
                0.3,
                0.7,
                1.2,
                Expectation.of(Quantity.SUCTION_PRESSURE, UnitSetting.US),
                Prior.indifferent(),
                meaning -> meaning.readings().get(0).value().compareTo(new BigDecimal(value)) == 0);
    }

    private static List<String> measured(List<String> details, String... values) {
        List<String> lines = new ArrayList<>();
        try (Ear ear = new ScriptedEar(Collections.nCopies(30, "one one eight"), List.of("one", "eight"))) {
            SuppressionTrial trial = new SuppressionTrial(
                    ear, Grammar.standard(), List.of(DEAFENING, LEVEL_ONLY), details::add, lines::add);
            trial.measure(
                    List.of(values).stream().map(SuppressionTrialTest::said).toList(),
                    List.of(Noise.FAN, Noise.WIND),
                    List.of(40.0));
        }
        return lines;
    }

    @Test
    void each_pair_that_came_out_otherwise_is_counted_on_its_side() {
        List<String> lines = measured(new ArrayList<>(), "118", "118", "119");

        assertThat(lines)
                .anySatisfy(line -> assertThat(line)
                        .startsWith("clean    none")
                        .contains("  3: at once 66.7", "wrong 1", "whole 100.0")
                        .contains("after 0.35 s median"))
                .anySatisfy(line -> assertThat(line)
                        .startsWith("clean    deafening")
                        .contains("  3: at once 0.0", "nothing 100.0", "wrong 0")
                        .contains("at once: 2 only without, 0 only with, p 0.50")
                        .contains("wrong: 1 only without, 0 only with")
                        .contains("whole: 3 only without, 0 only with"));
    }

    @Test
    void words_are_heard_as_recorded_where_only_the_level_is_told_by_the_suppressed_sound() {
        assertThat(measured(new ArrayList<>(), "118"))
                .anySatisfy(line -> assertThat(line)
                        .startsWith("clean    level")
                        .contains("  1: at once 100.0", "at once: 0 only without, 0 only with"));
    }

    @Test
    void noises_take_turns_and_each_value_is_told_in_each_way() {
        List<String> details = new ArrayList<>();
        List<String> lines = measured(details, "118", "118", "119");

        assertThat(lines)
                .anySatisfy(line -> assertThat(line).startsWith("noise    none").contains("  3: at once 66.7"))
                .anySatisfy(line -> assertThat(line).startsWith("fan      none").contains("  2: at once 50.0"))
                .anySatisfy(line -> assertThat(line).startsWith("wind     none").contains("  1: at once 100.0"));
        assertThat(details)
                .hasSize(18)
                .contains(
                        "118\tfan 40 dB\tnone\tat-once\ttrue",
                        "119\tclean\tnone\twrong\ttrue",
                        "118\tclean\tdeafening\tnothing\tfalse");
    }
}
