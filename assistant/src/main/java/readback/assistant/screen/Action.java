package readback.assistant.screen;

/** What a stroke asks for. */
public sealed interface Action {

    /** Has the performer do what is asked for. */
    void performedBy(Performer performer);

    /** Does what is asked for, in its own way for each kind of action. */
    interface Performer {

        void utter(Utter utter);

        void quiet(Quiet quiet);

        void talk(Talk talk);

        void redraw(Redraw redraw);

        void leave(Leave leave);
    }

    /** Take these words as if they had been said. */
    record Utter(String words) implements Action {
        @Override
        public void performedBy(Performer performer) {
            performer.utter(this);
        }
    }

    /** Be silent at once. */
    record Quiet() implements Action {
        @Override
        public void performedBy(Performer performer) {
            performer.quiet(this);
        }
    }

    /** The key to talk. */
    record Talk() implements Action {
        @Override
        public void performedBy(Performer performer) {
            performer.talk(this);
        }
    }

    /** The typed line or the page of options changed: draw again. */
    record Redraw() implements Action {
        @Override
        public void performedBy(Performer performer) {
            performer.redraw(this);
        }
    }

    /** End the program. */
    record Leave() implements Action {
        @Override
        public void performedBy(Performer performer) {
            performer.leave(this);
        }
    }
}
