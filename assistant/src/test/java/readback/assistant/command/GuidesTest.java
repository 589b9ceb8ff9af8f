package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The guides name files, commands, tests and decisions; whatever they name has to be there. */
class GuidesTest {

    private static final Path ROOT = Path.of("..");
    private static final Path DOCS = Path.of("docs");
    private static final Path DECISIONS = DOCS.resolve("decisions");

    private static final List<String> MODULES = List.of("calc", "grammar", "prompts", "assistant", "assistant/fleet");

    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)");
    /** A line of a guide that shows a command; what it does stands behind two blanks. */
    private static final Pattern COMMAND = Pattern.compile("(?m)^ {4}readback ([a-z]+)((?: \\S+)*)");

    private static final Pattern OPTION = Pattern.compile("--[a-z-]+");
    private static final Pattern TEST = Pattern.compile("`?\\b([A-Z]\\w*Test)\\b(?:\\.([a-zA-Z]\\w+))?");
    private static final Pattern DECISION = Pattern.compile("[Dd]ecision (\\d{4})");

    static List<Path> guides() throws IOException {
        List<Path> guides = new ArrayList<>(List.of(
                ROOT.resolve("README.md"),
                ROOT.resolve("DEVELOPERS.md"),
                ROOT.resolve("grammar/recipe/README.md"),
                Path.of("src/distribution/INSTALL.md")));
        guides.addAll(files(DOCS, ".md"));
        return guides;
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    private static List<MatchResult> all(Pattern pattern, String text) {
        return pattern.matcher(text).results().toList();
    }

    private static String between(String text, String start, String end) {
        return text.substring(text.indexOf(start), text.indexOf(end));
    }

    @ParameterizedTest
    @MethodSource("guides")
    void everyLinkLeadsToAFile(Path guide) throws IOException {
        for (MatchResult link : all(LINK, Files.readString(guide))) {
            if (!link.group(1).contains("://")) {
                assertThat(guide.resolveSibling(link.group(1))).as("%s", guide).exists();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("guides")
    void everyCommandAndItsOptionsAreKnownToTheProgram(Path guide) throws IOException {
        for (MatchResult line : all(COMMAND, Files.readString(guide))) {
            Ran help = Ran.of("", "help", line.group(1).equals("help") ? "check" : line.group(1));

            assertThat(help.code()).as("%s: %s", guide, line.group()).isZero();
            for (MatchResult option : all(OPTION, line.group(2))) {
                assertThat(help.out()).as("%s: %s", guide, line.group()).contains(option.group());
            }
        }
    }

    @Test
    void theListOfCommandsIsWhole() throws IOException {
        String listed = Files.readString(DOCS.resolve("commands.md"));
        String commands = between(Ran.of("").out(), "Commands:", "Try first:");

        assertThat(all(Pattern.compile("(?m)^  ([a-z]+) "), commands))
                .hasSizeGreaterThan(10)
                .allSatisfy(command -> assertThat(listed).contains("readback " + command.group(1)));
    }

    @ParameterizedTest
    @MethodSource("guides")
    void everyTestThatIsNamedIsThere(Path guide) throws IOException {
        Map<String, Path> sources = new LinkedHashMap<>();
        for (String module : MODULES) {
            for (Path source : files(ROOT.resolve(module).resolve("src/test/java"), ".java")) {
                sources.put(source.getFileName().toString().replace(".java", ""), source);
            }
        }
        for (MatchResult test : all(TEST, Files.readString(guide))) {
            assertThat(sources).as("%s", guide).containsKey(test.group(1));
            Optional<String> method = Optional.ofNullable(test.group(2));
            if (method.isPresent()) {
                assertThat(sources.get(test.group(1))).content().contains(" " + method.get() + "(");
            }
        }
    }

    @Test
    void everyDecisionThatTheCodeNamesIsThere() throws IOException {
        List<String> numbers = new ArrayList<>();
        for (String module : MODULES) {
            for (String ending : List.of(".java", ".txt", ".csv", "readback")) {
                for (Path source : files(ROOT.resolve(module).resolve("src"), ending)) {
                    if (Files.isRegularFile(source)) {
                        all(DECISION, Files.readString(source)).forEach(found -> numbers.add(found.group(1)));
                    }
                }
            }
        }
        List<String> kept = files(DECISIONS, ".md").stream()
                .map(file -> file.getFileName().toString().substring(0, 4))
                .toList();

        assertThat(numbers).isNotEmpty();
        assertThat(kept).containsAll(numbers).doesNotHaveDuplicates();
    }

    /** Context, choice, measurement and status with its date, under each heading. */
    @Test
    void everyDecisionIsWhole() throws IOException {
        String index = Files.readString(DECISIONS.resolve("README.md"));
        for (Path file : files(DECISIONS, ".md")) {
            if (Character.isDigit(file.getFileName().toString().charAt(0))) {
                assertThat(index).contains("(" + file.getFileName() + ")");
                List<String> decisions = List.of(Files.readString(file).split("(?m)^## ", -1));
                assertThat(decisions).as("%s", file).hasSizeGreaterThan(1);
                for (String decision : decisions.subList(1, decisions.size())) {
                    Matcher parts = Pattern.compile("(?s)\n\n- \\*\\*Context:\\*\\* .+\n- \\*\\*Choice:\\*\\* .+"
                                    + "\n- \\*\\*Measurement:\\*\\* .+\n- \\*\\*Status:\\*\\* .*\\d{4}-\\d\\d-\\d\\d")
                            .matcher(decision);
                    assertThat(parts.find()).as("%s: %s", file, decision).isTrue();
                }
            }
        }
    }

    @Test
    void thePicturesAreSmallEnoughForASlowLine() throws IOException {
        assertThat(files(DOCS, ".png")).hasSize(2);
        for (Path picture : files(DOCS, ".png")) {
            assertThat(picture).satisfies(file -> assertThat(Files.size(file)).isLessThan(200_000));
        }
    }
}
