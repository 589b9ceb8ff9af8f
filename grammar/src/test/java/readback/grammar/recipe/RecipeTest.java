package readback.grammar.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The recipe's own tests pass; what a machine lacks for them is said in a line that begins with "skipped:". */
@Tag("slow")
class RecipeTest {

    private static final Path RECIPE = Path.of("recipe");

    /** The interpreter on the path first, then the system's: only one of them may have PyTorch. */
    private static final List<String> INTERPRETERS = List.of("python3", "/usr/bin/python3");

    @TempDir
    Path scratch;

    @Test
    void wordsFillersAndGrammarKeepTheirRules() throws Exception {
        String python = interpreterWith("numpy").orElse("");
        skipUnless(!python.isEmpty(), "the recipe's tests need python3 with numpy");
        assertPasses(python, "tests.test_words");
    }

    @Test
    void theCriterionAgreesWithEnumerationAndItsGradientWithDifferences() throws Exception {
        String python = interpreterWith("torch").orElse("");
        skipUnless(!python.isEmpty(), "the criterion's test needs python3 with PyTorch (Debian: python3-torch)");
        assertPasses(python, "tests.test_criterion");
    }

    @Test
    void severalCardsTrainOneNetworkAndSeveralNetworksHaveAnAverage() throws Exception {
        String python = interpreterWith("torch").orElse("");
        skipUnless(
                !python.isEmpty(), "the tests of cards and averages need python3 with PyTorch (Debian: python3-torch)");
        assertPasses(python, "tests.test_cards");
        assertPasses(python, "tests.test_average");
    }

    @Test
    void aTinyRunGoesFromClipsToARecogniser() throws Exception {
        String python = interpreterWith("torch").orElse("");
        skipUnless(!python.isEmpty(), "the tiny run needs python3 with PyTorch (Debian: python3-torch)");
        for (String tool : List.of("fstcompile", "opusenc")) {
            skipUnless(onPath(tool), "the tiny run needs " + tool + " (Debian: libfst-tools, opus-tools)");
        }
        assertPasses(python, "tests.test_tiny_run");
    }

    private static void skipUnless(boolean there, String why) {
        if (!there) {
            System.out.println("skipped: " + why);
        }
        assumeTrue(there, why);
    }

    private void assertPasses(String python, String module) throws Exception {
        Run run = run(List.of(python, "-m", "unittest", module));
        assertThat(run.status()).as(run.output()).isZero();
        run.output()
                .lines()
                .filter(line -> line.contains("skipped"))
                .forEach(line -> System.out.println("skipped: " + line));
    }

    private Optional<String> interpreterWith(String library) throws Exception {
        for (String python : INTERPRETERS) {
            if (onPath(python)
                    && run(List.of(python, "-c", "import numpy, " + library)).status() == 0) {
                return Optional.of(python);
            }
        }
        return Optional.empty();
    }

    private static boolean onPath(String program) {
        if (program.startsWith("/")) {
            return Files.isExecutable(Path.of(program));
        }
        String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
        return List.of(path.split(":", -1)).stream().anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    private record Run(int status, String output) {}

    private Run run(List<String> command) throws IOException, InterruptedException {
        Path output = Files.createTempFile(scratch, "output", ".txt");
        ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(command))
                .directory(RECIPE.toFile())
                .redirectErrorStream(true)
                .redirectOutput(output.toFile());
        builder.environment().put("PYTHONDONTWRITEBYTECODE", "1");
        builder.environment().put("OMP_NUM_THREADS", "1");
        Process process = builder.start();
        if (!process.waitFor(10, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IOException("no end after ten minutes: " + command);
        }
        return new Run(process.exitValue(), Files.readString(output, StandardCharsets.UTF_8));
    }
}
