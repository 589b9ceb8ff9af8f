package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;

/**
 * What is distributed is what the notice says, with every licence text. Compared with the jars themselves: those that
 * Maven puts into {@code lib}, listed by its dependency plugin, and those of the voice.
 */
class LicencesTest {

    private static final Path TARGET = classes().resolveSibling("");
    private static final Path NOTICE = Path.of("src/distribution/NOTICE");
    private static final Path TEXTS = Path.of("src/distribution/licenses");

    /** A line of the list: group, artifact, "jar", maybe a classifier, version, scope. */
    private static final Pattern DEPENDENCY =
            Pattern.compile("(?m)^ +([\\w.-]+):([\\w.-]+):jar:(?:[\\w.-]+:)?([\\w.-]+):(?:compile|runtime)\\b");

    private static final Pattern NAMED = Pattern.compile("(?m)^- ([A-Za-z0-9-]+(?:, [A-Za-z0-9-]+)*):(.*(?:\n  .*)*)");
    private static final Pattern TEXT = Pattern.compile("\\b[\\w.-]+\\.txt\\b");
    private static final Pattern LICENCE_IN_JAR =
            Pattern.compile("META-INF/(?:(?:licenses/)?[^/]*licen[sc]e[^/]*|NOTICE[^/]*)", Pattern.CASE_INSENSITIVE);

    /** Shorter ones only say where the licence can be read. */
    private static final int WHOLE_TEXT = 1000;

    private static Path classes() {
        return Path.of(readback.assistant.Readback.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .getPath());
    }

    private static String section(String from, String to) throws IOException {
        String notice = Files.readString(NOTICE);
        return notice.substring(notice.indexOf(from), notice.indexOf(to));
    }

    /** Names of jars and the texts named beside each. */
    private static SortedMap<String, List<String>> named(String section) {
        SortedMap<String, List<String>> named = new TreeMap<>();
        for (MatchResult line : NAMED.matcher(section).results().toList()) {
            List<String> texts = TEXT.matcher(line.group(2))
                    .results()
                    .map(MatchResult::group)
                    .toList();
            for (String jar : line.group(1).split(", ", -1)) {
                named.put(jar, texts);
            }
        }
        return named;
    }

    private static SortedMap<String, List<String>> namedInLib() throws IOException {
        return named(section("Jars in lib/\n", "The embedded voice: jars"));
    }

    private static SortedMap<String, List<String>> namedOfVoice() throws IOException {
        return named(section("The embedded voice: jars", "How to replace"));
    }

    private static List<Path> voiceJars() throws IOException {
        try (Stream<Path> files = Files.list(TARGET.resolve("readback/lib/voice"))) {
            return files.sorted().toList();
        }
    }

    private static List<Path> jarsOfThisRun() {
        return Stream.of(System.getProperty("java.class.path").split(java.io.File.pathSeparator, -1))
                .filter(each -> each.endsWith(".jar"))
                .map(Path::of)
                .toList();
    }

    /** The artifacts that the list names. */
    private static SortedSet<String> distributed() throws IOException {
        SortedSet<String> artifacts = new TreeSet<>(List.of("readback-assistant"));
        DEPENDENCY
                .matcher(Files.readString(TARGET.resolve("distributed.txt")))
                .results()
                .forEach(line -> artifacts.add(line.group(2)));
        return artifacts;
    }

    private static String artifact(Path jar) {
        return jar.getFileName().toString().replaceFirst("-\\d.*", "");
    }

    @Test
    void theNoticeNamesEveryJarInLibAndNoOther() throws IOException {
        assertThat(distributed()).contains("vosk", "readback-calc", "slf4j-nop").hasSizeGreaterThan(10);
        assertThat(namedInLib().keySet()).isEqualTo(distributed());
    }

    @Test
    void theNoticeNamesEveryJarOfTheVoiceAndNoOther() throws IOException {
        assertThat(namedOfVoice().keySet())
                .isEqualTo(new TreeSet<>(
                        voiceJars().stream().map(LicencesTest::artifact).toList()));
    }

    @Test
    void everyJarHasATextAndEveryTextIsNamed() throws IOException {
        SortedMap<String, List<String>> all = namedInLib();
        all.putAll(namedOfVoice());
        assertThat(all).allSatisfy((jar, texts) -> assertThat(texts).as(jar).isNotEmpty());

        SortedSet<String> there = new TreeSet<>();
        try (Stream<Path> files = Files.list(TEXTS)) {
            files.forEach(file -> there.add(file.getFileName().toString()));
        }
        SortedSet<String> told = new TreeSet<>();
        TEXT.matcher(Files.readString(NOTICE)).results().forEach(text -> told.add(text.group()));
        assertThat(told).isEqualTo(there);
    }

    /** A licence that a jar carries stands word for word in a text beside its name. */
    @Test
    void theTextsAreThoseInTheJars() throws IOException {
        SortedMap<String, List<String>> all = namedInLib();
        all.putAll(namedOfVoice());
        SortedSet<String> artifacts = distributed();
        List<Path> jars = new ArrayList<>(voiceJars());
        jarsOfThisRun().stream()
                .filter(jar -> artifacts.contains(artifact(jar)))
                .forEach(jars::add);
        int compared = 0;
        for (Path jar : jars) {
            StringBuilder ours = new StringBuilder();
            for (String text : all.getOrDefault(artifact(jar), List.of())) {
                ours.append(words(Files.readString(TEXTS.resolve(text)))).append(' ');
            }
            try (JarFile open = new JarFile(jar.toFile())) {
                for (ZipEntry entry : open.stream().toList()) {
                    if (!entry.isDirectory()
                            && LICENCE_IN_JAR.matcher(entry.getName()).matches()
                            && entry.getSize() >= WHOLE_TEXT) {
                        String text = new String(open.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
                        assertThat(ours.toString())
                                .as("%s in %s", entry.getName(), jar.getFileName())
                                .contains(words(terms(text)));
                        compared++;
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(10);
    }

    /** Without the appendix of the Apache License, an example for authors, which some fill in. */
    private static String terms(String text) {
        int end = text.indexOf("END OF TERMS AND CONDITIONS");
        return end < 0 ? text : text.substring(0, end);
    }

    private static String words(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    @Test
    void theReplaceableVoiceIsToldHowToBeReplaced() throws IOException {
        assertThat(section("How to replace", "The Java runtime"))
                .contains("lib/voice/")
                .contains("readback demo --voice embedded");
    }
}
