package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import readback.assistant.sound.Samples;

class VoskEarTest extends EarContract {
    @TempDir
    Path folder;

    @Override
    Ear open() throws EarUnavailableException {
        return BundledEar.open();
    }

    @Tag("slow")
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

        try (Ear ear = BundledEar.open()) {
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
        try (Ear ear = BundledEar.open()) {
            AudioFileFeed feed = new AudioFileFeed(ear, SpokenLines.sound("piston"));

            assertThat(feed.next(List.of("xylophone", "r four ten a"))
                            .orElseThrow()
                            .words())
                    .isEqualTo("r four ten a");
        }
    }

    @Test
    void aDamagedModelIsSaidInOneSentence() throws IOException, EarUnavailableException {
        Path model = BundledEar.model().folder();
        try (Stream<Path> tree = Files.walk(model)) {
            for (Path path : tree.toList()) {
                Path copy = folder.resolve(model.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(path, copy);
                }
            }
        }
        Files.writeString(folder.resolve("am/final.mdl"), "no model at all");
        ModelFolder damaged = ModelFolder.at(folder);

        assertThatThrownBy(() -> VoskEar.open(damaged))
                .isInstanceOf(EarUnavailableException.class)
                .hasMessageContaining("damaged")
                .hasMessageContaining(folder.toString());
    }
}
