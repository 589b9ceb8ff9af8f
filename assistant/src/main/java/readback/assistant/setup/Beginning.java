package readback.assistant.setup;

/** Where it is begun to ask. */
public enum Beginning {
    /** With a welcome and the choice of what to do: nothing was ever set up here. */
    WELCOME,
    /** With the choice of what to do, after something that was chosen there. */
    CHOICE,
    /** With the first question of setting up. */
    STEPS
}
