package readback.assistant.practice;

/** How hard a practice call is. */
public enum Difficulty {
    /** One clear fault in ordinary weather, digital gauges. */
    EASY,
    /** Every fault that the unit can have, of middling size. */
    MIDDLE,
    /** Small faults, sound units among them, dial gauges, hot and mild days. */
    HARD
}
