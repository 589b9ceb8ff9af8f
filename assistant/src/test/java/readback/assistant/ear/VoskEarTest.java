package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import readback.assistant.sound.Samples;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;

@Tag("slow")
class VoskEarTest extends EarContract {
    @TempDir
    Path folder;

    @Override
    Ear open() throws EarUnavailableException {
        return BundledEar.first();
    }

    @ParameterizedTest
    @ValueSource(ints = {200, 1500, 6000})
    void noiseAloneIsNothingOrUnknown(int amplitude) throws EarUnavailableException {
        long seed = 7;
        Random random = new Random(seed);
        short[] noise = new short[8 * Ear.RATE];
        double low = 0;
        for (int i = 0; i < noise.length; i++) {
            low = 0.9 * low + random.nextGaussian();
            noise[i] = (short) Math.max(-32768, Math.min(32767, low * amplitude / 2.3));
        }

        try (Ear ear = BundledEar.first()) {
            AudioFileFeed feed = new AudioFileFeed(ear, Samples.of(noise, Ear.RATE));
            List<Utterance> heard = new ArrayList<>();
            while (!feed.ended()) {
                feed.next(StepPhrasesForTests.ALL).ifPresent(heard::add);
            }
            assertThat(heard).as("seed %d", seed).allMatch(Utterance::onlyUnknown);
        }
    }

    @Test
    void phrasesWithWordsThatTheModelLacksAreLeftOut() throws EarUnavailableException {
        try (Ear ear = BundledEar.first()) {
            AudioFileFeed feed = new AudioFileFeed(ear, SpokenLines.sound("piston"));

            assertThat(feed.next(List.of("xylophone", "r four ten a"))
                            .orElseThrow()
                            .words())
                    .isEqualTo("r four ten a");
        }
    }

    /** The pause is as long as somebody takes who looks at the next digit; the noise of the call goes on in it. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.9})
    void aPauseInsideAValueDoesNotCutIt(double seconds) throws EarUnavailableException {
        Samples pressure = line("liquid pressure three three zero");
        Expectation asked = Expectation.of(Quantity.LIQUID_PRESSURE, UnitSetting.US);
        try (Ear ear = BundledEar.first()) {
            Hypothesis whole = said(ear, pressure, asked).alternatives().get(0);
            double between = whole.details().get(2).start();
            int at = (int) (between * Ear.RATE);
            short[] quiet = pressure.slice(0, Ear.RATE / 4);
            List<Samples> parts = new ArrayList<>(List.of(Samples.of(pressure.slice(0, at), Ear.RATE)));
            for (int filled = 0; filled < seconds * Ear.RATE; filled += quiet.length) {
                parts.add(Samples.of(quiet, Ear.RATE));
            }
            parts.add(Samples.of(pressure.slice(at, pressure.length()), Ear.RATE));

            assertThat(said(ear, Samples.joined(parts, Ear.RATE), asked).words())
                    .isEqualTo("liquid pressure three three zero");
        }
    }

    private static Utterance said(Ear ear, Samples sound, Expectation asked) {
        return new AudioFileFeed(ear, sound)
                .next(Grammar.standard().vocabulary(asked))
                .orElseThrow();
    }

    /** One line of the recorded call with the quiet around it. */
    private static Samples line(String words) throws EarUnavailableException {
        Samples call = SpokenLines.sound("piston").at(Ear.RATE);
        List<String> lines = SpokenLines.of("piston");
        try (Ear ear = BundledEar.first()) {
            AudioFileFeed feed = new AudioFileFeed(ear, call);
            while (!feed.ended()) {
                Utterance heard = feed.next(lines).orElseThrow();
                if (heard.words().equals(words)) {
                    double from = heard.startSeconds() - 0.8;
                    return Samples.of(
                            call.slice((int) (from * Ear.RATE), (int) ((heard.endSeconds() + 1.6) * Ear.RATE)),
                            Ear.RATE);
                }
            }
        }
        throw new IllegalStateException("the call does not say " + words);
    }

    @Test
    void aDamagedModelIsSaidInOneSentence() throws IOException, EarUnavailableException {
        BundledEar.copyTo(folder);
        Files.writeString(folder.resolve("am/final.mdl"), "no model at all");
        ModelFolder damaged = ModelFolder.at(folder);

        assertThatThrownBy(() -> VoskEar.open(damaged))
                .isInstanceOf(EarUnavailableException.class)
                .hasMessageContaining("damaged")
                .hasMessageContaining(folder.toString());
    }
}
