package readback.assistant.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.ear.Ear;
import readback.assistant.ear.EarUnavailableException;
import readback.assistant.ear.HearingForTests;
import readback.assistant.sound.Recording;
import readback.assistant.sound.Samples;
import readback.grammar.Grammar;
import readback.prompts.checklist.Checklists;

/** Short forms of what {@code readback measure --idle} measures at length. */
@Tag("slow")
class IdleTest {

    private static Ear ear;
    private static Idle idle;

    @BeforeAll
    static void open() throws EarUnavailableException {
        Grammar grammar = Grammar.standard();
        ear = HearingForTests.ear();
        idle = new Idle(ear, grammar, new Dialogue(grammar, Checklists.standard()));
    }

    @AfterAll
    static void close() {
        ear.close();
    }

    private static void staysAsItIs(Idle.Counts counts) {
        assertThat(counts.values()).as("%s", counts.lines()).isZero();
        assertThat(counts.commands()).as("%s", counts.lines()).isLessThanOrEqualTo((int) counts.minutes());
    }

    @Test
    void nothing_is_taken_from_silence() {
        staysAsItIs(idle.silence(0.3));
    }

    @Test
    void nothing_is_taken_from_a_fan() {
        staysAsItIs(idle.fan(0.5));
    }

    /** The sentences and how they were made stand beside the recording. */
    @Test
    void nothing_is_taken_from_talk_of_others_with_and_without_a_fan() throws IOException {
        try (InputStream in = Objects.requireNonNull(
                IdleTest.class.getResourceAsStream("/readback/assistant/measure/talk.wav"), "talk.wav")) {
            Samples talk = Recording.read("talk.wav", in).samples().orElseThrow();

            Idle.Counts counts = idle.talk(List.of(talk), 0.9).orElseThrow();

            assertThat(counts.minutes()).isGreaterThan(0.9);
            staysAsItIs(counts);
        }
    }

    @Test
    void what_is_said_to_the_session_is_counted() {
        Samples call = HearingForTests.call("piston");

        Idle.Counts counts = idle.talk(List.of(call), call.seconds() / 60).orElseThrow();

        assertThat(counts.values()).isGreaterThan(3);
        assertThat(counts.utterances()).isGreaterThan(counts.values());
        assertThat(counts.taken())
                .hasSize(counts.values() + counts.commands())
                .anySatisfy(taken -> assertThat(taken).startsWith("\"").contains("64 °F"));
    }

    @Test
    void without_talk_there_is_nothing_to_count() {
        assertThat(idle.talk(List.of(), 10)).isEmpty();
    }
}
