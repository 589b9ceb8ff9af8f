package readback.assistant.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.recorded.Scripted;

/** The report for other programs. */
class ExportsTest {

    @Test
    void the_table_has_every_answer_with_its_number_and_si_value(@TempDir Path sessions) throws Exception {
        String csv = ReportTable.csv(ReportPages.report(Scripted.pistonReadings("call"), sessions));
        List<String> lines = csv.lines().toList();
        assertThat(lines.get(0)).isEqualTo(String.join(",", ReportTable.COLUMNS.keySet()));
        // 118 psig = 118 × 6894.757293168 Pa (NIST SP 811, appendix B); 72 °F = 295.372222 K.
        assertThat(lines)
                .anySatisfy(line ->
                        assertThat(line).endsWith("answer,SUCTION_PRESSURE,118 psig,118,psig,813581.361,Pa,false"))
                .anySatisfy(line ->
                        assertThat(line).endsWith("answer,SUCTION_LINE_TEMPERATURE,70 °F,70,°F,294.261111,K,true"))
                .anySatisfy(line ->
                        assertThat(line).endsWith("answer,SUCTION_LINE_TEMPERATURE,72 °F,72,°F,295.372222,K,false"))
                .anySatisfy(line -> assertThat(line).contains(",caution,frostbite,given,"))
                .anySatisfy(line -> assertThat(line).contains(",verdict,verdict,add method=total-superheat"));
        assertThat(csv).endsWith("\r\n");
    }

    @Test
    void cells_are_quoted_and_formulas_disarmed() {
        Csv csv = new Csv(List.of("a", "b"));
        csv.row().text("=1+1").text("say \"hi\", twice\nplease").end();
        csv.row().text("-").number("-3.5").end();
        assertThat(csv.toString()).isEqualTo("a,b\r\n'=1+1,\"say \"\"hi\"\", twice\nplease\"\r\n'-,-3.5\r\n");
    }

    @Test
    void the_object_holds_rounds_moves_and_trust(@TempDir Path sessions) throws Exception {
        JobReport report = ReportPages.report(Scripted.charging("call"), sessions);
        JsonNode json = new ObjectMapper().readTree(ReportJson.of(report));
        assertThat(json.path("hash").asText()).isEqualTo(report.session().hash());
        assertThat(json.path("verified").asBoolean()).isTrue();
        assertThat(json.path("refrigerant").asText()).isEqualTo("R-410A");
        // 12 oz of 28.349523125 g (NIST SP 811, appendix B).
        assertThat(json.path("addedKg").asDouble()).isEqualTo(0.3402);
        JsonNode last = json.path("rounds").get(json.path("rounds").size() - 1);
        assertThat(last.path("verdict").asText()).isEqualTo("in-tolerance");
        assertThat(last.path("targetK").asDouble()).isEqualTo(6.6667);
        assertThat(json.path("doubts").get(0).path("heard").get(0).asText()).startsWith("mumble mumble");
    }
}
