package readback.assistant.screen;

/** What a stroke asks for. */
public sealed interface Action {

    /** Take these words as if they had been said. */
    record Utter(String words) implements Action {}

    /** Be silent at once. */
    record Quiet() implements Action {}

    /** The key to talk. */
    record Talk() implements Action {}

    /** The typed line or the page of options changed: draw again. */
    record Redraw() implements Action {}

    /** End the program. */
    record Leave() implements Action {}
}
