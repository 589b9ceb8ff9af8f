package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.recorded.Scripted;

/** What the office gets of jobs beside the charge check: a verdict, and the numbers it rests on, everywhere. */
class JobFiguresTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    private Path evacuation() throws Exception {
        return Scripted.evacuation("vacuum").in(folder);
    }

    private Path pressureTest() throws Exception {
        return Scripted.pressureTest("nitrogen").in(folder);
    }

    private static String page(Path session) throws IOException {
        Path file = session.resolveSibling("page.html");
        assertThat(Ran.of("", "report", session.toString(), "-o", file.toString())
                        .code())
                .isZero();
        return Files.readString(file);
    }

    private static JsonNode json(Path session) throws IOException {
        Path file = session.resolveSibling("report.json");
        Ran.of("", "report", session.toString(), "--json", file.toString());
        return JSON.readTree(Files.readString(file));
    }

    private static List<String> csv(Path session) throws IOException {
        Path file = session.resolveSibling("report.csv");
        Ran.of("", "report", session.toString(), "--csv", file.toString());
        return Files.readString(file).lines().toList();
    }

    private static JsonNode figure(JsonNode report, String name) {
        for (JsonNode result : report.path("results")) {
            for (JsonNode figure : result.path("figures")) {
                if (figure.path("name").asText().equals(name)) {
                    return figure;
                }
            }
        }
        throw new AssertionError("no figure " + name + " in " + report.path("results"));
    }

    /** 300 micron = 0.3 mm of mercury of 133.3224 Pa: NIST SP 811 (2008), appendix B. */
    @Test
    void an_evacuation_has_its_microns_and_its_slope_in_page_list_json_and_csv() throws Exception {
        Path session = evacuation();

        JsonNode report = json(session);
        assertThat(report.path("results").path(0).path("judged").asText()).isEqualTo("evacuation");
        JsonNode isolated = figure(report, "vacuum-isolated");
        assertThat(isolated.path("value").asInt()).isEqualTo(300);
        assertThat(isolated.path("unit").asText()).isEqualTo("micron");
        assertThat(isolated.path("si").asDouble()).isCloseTo(0.3 * 133.3224, within(1e-4));
        assertThat(isolated.path("siUnit").asText()).isEqualTo("Pa");
        assertThat(figure(report, "vacuum-held").path("value").asInt()).isEqualTo(440);
        JsonNode slope = figure(report, "slope");
        assertThat(slope.path("unit").asText()).isEqualTo("micron/min");
        assertThat(slope.path("si").asDouble())
                .isCloseTo(slope.path("value").asDouble() * 0.1333224 / 60, within(1e-9));
        assertThat(csv(session))
                .anySatisfy(line -> assertThat(line).contains(",outcome,evacuation,"))
                .anySatisfy(line -> assertThat(line)
                        .contains(",figure,evacuation.vacuum-isolated,300 micron,300,micron,39.99672,Pa,"));
        assertThat(page(session)).contains("300 micron (40 Pa)").doesNotContain("No verdict was reached");
        Ran list = Ran.of("", "sessions", folder.toString());
        assertThat(list.out()).contains("rise ", "micron/min").doesNotContain("no verdict");
        assertThat(Ran.of("", "sessions", folder.toString(), "--figures").out()).contains("300 micron (40 Pa)");
    }

    /** 1 psi = 6894.757 Pa; 300 psig = 2.068427 MPa; 70 °F = 294.2611 K: NIST SP 811 (2008), appendix B. */
    @Test
    void a_pressure_test_has_its_pressures_temperatures_and_loss() throws Exception {
        Path session = pressureTest();

        JsonNode report = json(session);
        assertThat(figure(report, "pressure-start").path("si").asDouble()).isCloseTo(2_068_427.19, within(0.01));
        assertThat(figure(report, "gas-end").path("si").asDouble()).isCloseTo(294.261111, within(1e-5));
        JsonNode loss = figure(report, "loss");
        assertThat(loss.path("unit").asText()).isEqualTo("psi");
        assertThat(loss.path("value").asDouble()).isCloseTo(1.0, within(0.05));
        assertThat(loss.path("si").asDouble()).isCloseTo(6894.757, within(0.6));
        assertThat(page(session)).contains("1.0 psi (6895 Pa)");
        assertThat(Ran.of("", "sessions", folder.toString()).out()).contains("loss 1.0 psi");
    }

    /** What a procedure asks for under a name of its own was taken, not doubted. */
    @Test
    void readings_in_slots_of_another_name_are_no_doubts() throws Exception {
        Path session = pressureTest();

        assertThat(json(session).path("doubts")).isEmpty();
        assertThat(Ran.of("", "sessions", folder.toString()).out()).contains(" 0 doubts");
    }

    /** 6 lb 4 oz are 100 oz = 2.8350 kg: NIST SP 811 (2008), appendix B. */
    @Test
    void a_weigh_in_has_its_ounces() throws Exception {
        Path session = Scripted.weighIn("weighed").in(folder);

        JsonNode report = json(session);
        JsonNode amount = figure(report, "to-weigh-in");
        assertThat(amount.path("unit").asText()).isEqualTo("oz");
        assertThat(amount.path("si").asDouble())
                .isCloseTo(amount.path("value").asDouble() * 0.028349523125, within(0.002));
        assertThat(page(session)).contains(amount.path("value").asText() + " oz (");
        assertThat(report.path("addedKg").asDouble()).isCloseTo(2.835, within(0.001));
    }

    @Test
    void nothing_said_of_refrigerant_is_not_said_to_be_none() throws Exception {
        Path session = evacuation();

        JsonNode report = json(session);
        assertThat(report.path("addedKg").isNull()).isTrue();
        assertThat(report.path("recoveredKg").isNull()).isTrue();
        assertThat(page(session))
                .contains("Not said: nobody told an amount of refrigerant that was moved.")
                .containsPattern("Amount added</th><td[^>]*>not said")
                .doesNotContain("0.0 oz");
    }

    @Test
    void a_session_that_reached_nothing_has_no_verdict() throws Exception {
        Path session = Scripted.session("nothing")
                .job("evacuation")
                .say(5, "understood")
                .in(folder);

        assertThat(page(session)).contains("No verdict was reached");
        assertThat(Ran.of("", "sessions", folder.toString()).out()).contains("no verdict");
    }
}
