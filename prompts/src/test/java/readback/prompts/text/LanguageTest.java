package readback.prompts.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import readback.calc.fluid.Catalogue;

/** A language is whole or refused. */
class LanguageTest {

    private static Map<String, String> texts() {
        return new TreeMap<>(Language.english().texts());
    }

    @Test
    void everything_that_a_language_lacks_is_one_fault_when_it_is_read() {
        Map<String, String> texts = texts();
        texts.remove("number.7");
        texts.remove("screen.held");
        texts.remove("report.title.airflow");

        assertThatThrownBy(() -> Language.of("xx", texts))
                .isInstanceOf(LanguageFault.class)
                .hasMessage("The language \"xx\" has no text for number.7, report.title.airflow, screen.held.");
    }

    @Test
    void a_text_with_other_places_than_the_english_one_is_a_fault() {
        Map<String, String> texts = texts();
        texts.put("readback", "{value}!");

        assertThatThrownBy(() -> Language.of("xx", texts))
                .isInstanceOf(LanguageFault.class)
                .hasMessageContaining("readback")
                .hasMessageContaining("{values}");
    }

    @Test
    void a_text_that_nothing_says_is_a_fault() {
        Map<String, String> texts = texts();
        texts.put("no-such-text", "");

        assertThatThrownBy(() -> Language.of("xx", texts)).hasMessageContaining("no-such-text");
    }

    @Test
    void short_and_spoken_forms_may_be_left_out_or_added() {
        Map<String, String> texts = texts();
        texts.remove("greeting.brief");
        texts.put("held.spoken", "Holding.");

        assertThatCode(() -> Language.of("xx", texts)).doesNotThrowAnyException();
    }

    @Test
    void a_language_without_files_is_a_fault_that_names_it() {
        assertThatThrownBy(() -> Language.of("xx"))
                .isInstanceOf(LanguageFault.class)
                .hasMessageContaining("\"xx\"");
    }

    @Test
    void english_is_read_once() {
        assertThat(Language.english()).isSameAs(Language.english()).isSameAs(Language.of("en"));
    }

    @Test
    void every_refrigerant_is_spoken_as_technicians_say_it() {
        Catalogue.standard()
                .all()
                .forEach(refrigerant -> assertThat(Language.english().find("refrigerant." + refrigerant.designation()))
                        .hasValue("r " + refrigerant.spokenNames().get(0)));
    }

    @Test
    void moments_are_written_in_universal_time() {
        Instant at = Instant.parse("2026-07-14T13:05:09Z");

        assertThat(Language.english().moment(at, ZoneOffset.UTC)).isEqualTo("2026-07-14 13:05:09 UTC");
        assertThat(Language.english().start(at, ZoneOffset.UTC)).isEqualTo("2026-07-14 13:05 UTC");
    }

    /** Chicago keeps summer time, five hours behind, in July, and is six hours behind in January (IANA time zones). */
    @Test
    void a_moment_is_told_in_local_time_with_its_offset_and_in_universal_time() {
        ZoneId chicago = ZoneId.of("America/Chicago");
        Language english = Language.english();

        assertThat(english.moment(Instant.parse("2026-07-14T13:05:09Z"), chicago))
                .isEqualTo("2026-07-14 08:05:09 -05:00 (13:05:09 UTC)");
        assertThat(english.start(Instant.parse("2026-01-15T03:05:09Z"), chicago))
                .isEqualTo("2026-01-14 21:05 -06:00 (2026-01-15 03:05 UTC)");
        assertThat(english.start(Instant.parse("2026-01-15T03:05:09Z"), ZoneOffset.UTC))
                .isEqualTo("2026-01-15 03:05 UTC");
    }
}
