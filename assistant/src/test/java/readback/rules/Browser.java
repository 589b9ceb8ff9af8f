package readback.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Chromium without a window. Where it is not on the path, or where {@code npm ci} was not run in the assistant's
 * {@code src/test/accessibility}, a test is skipped and says why; in continuous integration ({@code CI=true}) it fails
 * instead.
 */
public final class Browser {

    /** From the folder of the assistant, and of the module in it. */
    private static final List<Path> AXE = Stream.of("", "../")
            .map(to -> Path.of(to + "src/test/accessibility/node_modules/axe-core/axe.min.js"))
            .toList();

    private static final String RUN = """
            axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']})
              .then(function (found) {
                parent.postMessage(JSON.stringify({passes: found.passes.length, width: innerWidth,
                  overflow: document.documentElement.scrollWidth - innerWidth,
                  dark: matchMedia('(prefers-color-scheme: dark)').matches, violations: found.violations.map(
                  function (each) { return each.id + ': ' + each.nodes.map(function (n) { return n.html; }).join(' | '); })}), '*');
              });
            """;

    private final Path program;
    private final Path folder;

    private Browser(Path program, Path folder) {
        this.program = program;
        this.folder = folder;
    }

    /** That of this machine, with a folder for its files; without one the test that asks ends here. */
    public static Browser in(Path folder) {
        Optional<Path> program = onPath();
        skipUnless(program.isPresent(), "accessibility in the browser needs Chromium on the path");
        return new Browser(program.orElseThrow(), folder);
    }

    /**
     * That a page breaks no rule of axe-core (WCAG 2.2 A and AA) and has nothing beyond its edge: on a telephone, a
     * tablet on end, a desk; each in daylight and in the dark.
     */
    public void breaksNoRule(String page) throws IOException {
        Optional<Path> rules = AXE.stream().filter(Files::exists).findFirst();
        skipUnless(rules.isPresent(), "accessibility in the browser needs axe-core: npm ci in src/test/accessibility");
        String axe = Files.readString(rules.orElseThrow());
        for (int width : List.of(360, 768, 1280)) {
            for (boolean dark : List.of(false, true)) {
                JsonNode result = checked(page, axe, width, dark);
                assertThat(result.path("width").asInt()).isEqualTo(width);
                assertThat(result.path("dark").asBoolean()).isEqualTo(dark);
                assertThat(result.path("passes").asInt())
                        .as("rules that applied")
                        .isGreaterThan(10);
                assertThat(result.path("violations"))
                        .as(width + (dark ? " dark" : ""))
                        .isEmpty();
                assertThat(result.path("overflow").asInt())
                        .as("nothing stands beyond the edge at " + width)
                        .isNotPositive();
            }
        }
    }

    /** Runs it to its end and gives what it writes. */
    public String run(String... options) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                program.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--user-data-dir=" + folder.resolve("browser")));
        command.addAll(List.of(options));
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.onExit().join();
        return out;
    }

    /** A frame is as narrow as a telephone; a window of this browser is not. */
    private JsonNode checked(String page, String axe, int width, boolean dark) throws IOException {
        String open = page.replaceFirst("<meta http-equiv=\"Content-Security-Policy\"[^>]*>", "");
        Files.writeString(
                folder.resolve("page.html"),
                open.replace("</body>", "<script>" + axe + "</script><script>" + RUN + "</script></body>"));
        Path frame = folder.resolve("frame.html");
        Files.writeString(frame, """
                <script>onmessage = function (message) {
                  var out = document.createElement('pre');
                  out.id = 'axe-result';
                  out.textContent = message.data;
                  document.body.appendChild(out);
                }</script>
                <body><iframe src="page.html" style="border:0;width:%dpx;height:900px"></iframe></body>
                """.formatted(width));
        String dom = run(
                "--virtual-time-budget=30000",
                "--blink-settings=preferredColorScheme=" + (dark ? 0 : 1),
                "--window-size=1400,1000",
                "--dump-dom",
                frame.toUri().toString());
        int from = dom.indexOf("<pre id=\"axe-result\">");
        assertThat(from).as("the browser's answer").isPositive();
        String json = dom.substring(from + "<pre id=\"axe-result\">".length(), dom.indexOf("</pre>", from));
        return new ObjectMapper()
                .readTree(json.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&"));
    }

    /** Where the machine is set up by the project's own script, a missing tool is a fault and no reason to skip. */
    private static void skipUnless(boolean there, String why) {
        if (there) {
            return;
        }
        assertThat(System.getenv("CI")).as(why).isNotEqualTo("true");
        System.out.println("skipped: " + why);
        abort(why);
    }

    private static Optional<Path> onPath() {
        String path = System.getenv().getOrDefault("PATH", "");
        return Stream.of(path.split(File.pathSeparator, -1))
                .filter(folder -> !folder.isEmpty())
                .flatMap(folder -> Stream.of("chromium", "chromium-browser").map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }
}
