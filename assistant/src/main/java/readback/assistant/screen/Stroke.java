package readback.assistant.screen;

/** What a hand did to the tablet. */
public sealed interface Stroke {

    /** What the case of this kind makes of the stroke. */
    <T> T fold(Cases<T> cases);

    /** What is to be made of each kind of stroke. */
    interface Cases<T> {

        T typed(Typed typed);

        T pressed(Pressed pressed);

        T touched(Touched touched);
    }

    /** A key that stands for itself. */
    record Typed(int codePoint) implements Stroke {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.typed(this);
        }
    }

    /** A key with a name. */
    record Pressed(Key key) implements Stroke {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.pressed(this);
        }
    }

    /** The screen was touched, or clicked with a mouse; counted from 0 at the top left. */
    record Touched(int column, int row) implements Stroke {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.touched(this);
        }
    }

    /** Keys with names. */
    enum Key {
        ENTER,
        BACKSPACE,
        ESCAPE,
        TAB,
        UP,
        DOWN,
        LEFT,
        RIGHT,
        HOME,
        END,
        PAGE_UP,
        PAGE_DOWN,
        F1,
        F2,
        F3,
        F4,
        F5,
        F6,
        F7,
        F8,
        F9,
        F10,
        F11,
        F12,
        /** Control and C: leave. */
        INTERRUPT;

        /**
         * Whether the key writes or edits nothing, so that it can serve as the key to talk; clickers send such keys.
         */
        boolean free() {
            return switch (this) {
                case TAB, UP, DOWN, LEFT, RIGHT, HOME, END, PAGE_UP, PAGE_DOWN, F11, F12 -> true;
                default -> false;
            };
        }
    }
}
