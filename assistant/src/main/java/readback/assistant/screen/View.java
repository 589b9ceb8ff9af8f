package readback.assistant.screen;

import java.util.List;
import java.util.Optional;

/**
 * Everything that is on the screen at one moment, in words; where it stands and how large it is, the {@link Layout}
 * decides. Immutable; equal views look the same.
 *
 * @param cautions in force, until they are acknowledged or their moment is over
 * @param question what is asked now
 * @param answers what was said before the question in the same breath
 * @param heard the last words heard
 * @param readings in the order in which they were first given
 * @param figures saturation, superheat, subcooling and target as far as they are known, the deciding ones first
 * @param verdict in force
 * @param options what can be answered by touch
 * @param timers as in "steady running 12:05"
 * @param held whether "hold on" was said
 * @param status of microphone and voice
 * @param hint what to do about trouble with the sound
 * @param atUnit what is to be seen at the unit of a practice call
 * @param probes what instruments show that give values by themselves; the mark tells whether it is offered
 */
public record View(
        List<String> cautions,
        String question,
        List<String> answers,
        Heard heard,
        List<Row> readings,
        List<Figure> figures,
        Optional<Verdict> verdict,
        List<Option> options,
        List<String> timers,
        boolean held,
        Status status,
        String hint,
        Optional<AtUnit> atUnit,
        List<Row> probes) {

    /**
     * Words heard or typed.
     *
     * @param partial whether someone is still speaking
     * @param meaning how they were understood; empty while partial
     */
    public record Heard(String words, boolean partial, String meaning) {
        public static final Heard NOTHING = new Heard("", false, "");
    }

    /**
     * A reading or another answer.
     *
     * @param mark why it is doubtful, or that it was; empty when it is not
     */
    public record Row(String name, String value, String mark) {}

    /**
     * A number to be read from afar.
     *
     * @param deciding whether the verdict hangs on it: what is compared, and its target
     */
    public record Figure(String label, String number, String unit, boolean deciding) {}

    /**
     * The verdict in a word or two.
     *
     * @param remark how sure it is; may be empty
     */
    public record Verdict(String word, String remark) {}

    /**
     * A simulated unit.
     *
     * @param instruments what they show now; the deciding ones are those that are asked for
     * @param sights what stands on the plate and what is found by looking
     */
    public record AtUnit(List<Figure> instruments, List<String> sights) {
        public AtUnit {
            instruments = List.copyOf(instruments);
            sights = List.copyOf(sights);
        }
    }

    /** Something that can be answered by touch: what stands on it and what it says. */
    public record Option(String label, String words) {}

    /**
     * Microphone and voice.
     *
     * @param microphone its name, or why there is none
     * @param works whether the microphone gives sound
     * @param listening whether it is listened to now
     * @param level 0 to {@value #LEVELS}
     * @param overruns how often sound was lost
     * @param voice name and state in words
     */
    public record Status(String microphone, boolean works, boolean listening, int level, long overruns, String voice) {
        /** Steps of the level meter. */
        public static final int LEVELS = 10;

        /** The quietest level on the meter, in decibels of full scale. */
        private static final double FLOOR = -60;

        /** The steps that a level shows, in decibels of full scale. */
        public static int steps(double level) {
            int steps = (int) Math.round((level - FLOOR) / -FLOOR * LEVELS);
            return Math.max(0, Math.min(LEVELS, steps));
        }
    }

    public View {
        cautions = List.copyOf(cautions);
        answers = List.copyOf(answers);
        readings = List.copyOf(readings);
        figures = List.copyOf(figures);
        options = List.copyOf(options);
        timers = List.copyOf(timers);
        probes = List.copyOf(probes);
    }
}
