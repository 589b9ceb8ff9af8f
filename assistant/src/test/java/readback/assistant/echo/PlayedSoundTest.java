package readback.assistant.echo;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What went to the loudspeaker, at the pace of the microphone. */
class PlayedSoundTest {

    private final PlayedSound played = new PlayedSound();

    @Test
    void a_sound_comes_piece_by_piece_and_silence_after_it() {
        played.begins(new short[] {1, 2, 3});

        assertThat(played.next(2)).containsExactly(1, 2);
        assertThat(played.next(3)).containsExactly(3, 0, 0);
        assertThat(played.next(1)).containsExactly(0);
    }

    @Test
    void a_sound_that_was_stopped_is_over_at_once() {
        played.begins(new short[] {1, 2, 3});
        played.next(1);
        played.ends();

        assertThat(played.next(2)).containsExactly(0, 0);
    }

    @Test
    void the_next_sound_takes_the_place_of_what_is_left() {
        played.begins(new short[] {1, 2, 3});
        played.next(1);
        played.begins(new short[] {7, 8});

        assertThat(played.next(3)).containsExactly(7, 8, 0);
    }
}
