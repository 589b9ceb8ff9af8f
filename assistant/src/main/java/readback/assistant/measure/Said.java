package readback.assistant.measure;

import java.util.function.Predicate;
import readback.assistant.sound.Samples;
import readback.grammar.Expectation;
import readback.grammar.Meaning;
import readback.grammar.Prior;

/**
 * A value that is said at a step. Times are in seconds from where its sound is listened to.
 *
 * @param name of the clip, or the value
 * @param words what is said
 * @param lead seconds at the beginning of the sound that are not listened to; whatever follows the noise gets used to
 *     it
 * @param lastHalfSaid when the last word is half said; zero where it is not known
 * @param ends when the last word is over; of a clip whose words are not known in time, when the clip is
 * @param known what is known of the system
 * @param right whether this is what was said
 */
public record Said(
        String name,
        String words,
        Samples sound,
        double lead,
        double lastHalfSaid,
        double ends,
        Expectation expectation,
        Prior known,
        Predicate<Meaning> right) {}
