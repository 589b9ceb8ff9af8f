package readback.assistant.setup;

/** What is asked or measured, in the order of setting up. */
enum Step {
    /** What to do at all. */
    MENU,
    /** Which microphone. */
    MICROPHONE,
    /** How loud somebody speaks into it, and whether that is understood. */
    LEVEL,
    /** Which loudspeaker. */
    LOUDSPEAKER,
    /** Whether a test sentence is heard from it. */
    SENTENCE,
    /** How loud the place is. */
    NOISE,
    /** How much of the loudspeaker the microphone hears. */
    ECHO,
    /** Whether it listens while it speaks, as the measurement proposes. */
    LISTENING,
    UNITS,
    ALTITUDE,
    /** How far the instruments may be off. */
    INSTRUMENTS,
    /** Whether all of it goes into the file. */
    WRITE
}
