package readback.assistant.screen;

import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/**
 * What the hands have done so far: the line being typed and the page of options looked at. Turns strokes into actions.
 * A typed line is an utterance; one key says what is said most. Owned by one thread.
 */
final class Typing {

    /** Longer than anything that makes sense to say. */
    private static final int LONGEST = 120;

    private static final String HARD_SPACE = "\u00a0";

    private static final List<Stroke.Key> SAYING = List.of(
            Stroke.Key.F1,
            Stroke.Key.F2,
            Stroke.Key.F3,
            Stroke.Key.F4,
            Stroke.Key.F5,
            Stroke.Key.F6,
            Stroke.Key.F7,
            Stroke.Key.F8,
            Stroke.Key.F9,
            Stroke.Key.F10);

    private final ScreenTexts texts;
    private final StringBuilder line = new StringBuilder();
    private int page;

    Typing(ScreenTexts texts) {
        this.texts = texts;
    }

    /** What was typed since the last utterance. */
    String text() {
        return line.toString();
    }

    /** What the stroke asks for, for a touch beside everything to be heard now; empty when it means nothing. */
    Optional<Action> on(Stroke stroke, Frame frame, boolean held) {
        return stroke.fold(new Stroke.Cases<>() {
            @Override
            public Optional<Action> typed(Stroke.Typed typed) {
                return Typing.this.typed(typed.codePoint());
            }

            @Override
            public Optional<Action> pressed(Stroke.Pressed pressed) {
                return Typing.this.pressed(pressed.key(), held);
            }

            @Override
            public Optional<Action> touched(Stroke.Touched touched) {
                Optional<Action> action = frame.at(touched.column(), touched.row());
                page = action.orElse(null) instanceof Action.Redraw ? page + 1 : 0;
                return action.or(() -> Optional.of(new Action.Talk()));
            }
        });
    }

    private Optional<Action> pressed(Stroke.Key key, boolean held) {
        if (SAYING.contains(key)) {
            return Optional.of(name(key, held))
                    .filter(name -> !texts.of(name).isEmpty())
                    .map(name -> new Action.Utter(texts.of(name + ".words")));
        }
        return switch (key) {
            case ENTER -> entered();
            case BACKSPACE -> shortened();
            case ESCAPE -> escaped();
            case INTERRUPT -> Optional.of(new Action.Leave());
            default -> key.free() ? Optional.of(new Action.Talk()) : Optional.empty();
        };
    }

    private Optional<Action> typed(int codePoint) {
        if (codePoint == ' ' && line.isEmpty()) {
            return Optional.of(new Action.Talk());
        }
        if (Character.isISOControl(codePoint) || line.length() >= LONGEST) {
            return Optional.empty();
        }
        line.appendCodePoint(codePoint);
        return Optional.of(new Action.Redraw());
    }

    private Optional<Action> entered() {
        String words = line.toString().strip();
        line.setLength(0);
        return Optional.of(words.isEmpty() ? new Action.Talk() : new Action.Utter(words));
    }

    private Optional<Action> shortened() {
        if (line.isEmpty()) {
            return Optional.empty();
        }
        line.setLength(line.offsetByCodePoints(line.length(), -1));
        return Optional.of(new Action.Redraw());
    }

    private Optional<Action> escaped() {
        if (line.isEmpty()) {
            return Optional.of(new Action.Quiet());
        }
        line.setLength(0);
        return Optional.of(new Action.Redraw());
    }

    /** The keys and what they say; key and word are held together by a hard space. */
    String keys(boolean held) {
        StringJoiner keys = new StringJoiner(" ");
        keys.add(texts.of("key.type"));
        for (Stroke.Key key : SAYING) {
            add(keys, key.name(), texts.of(name(key, held)));
        }
        add(keys, texts.of("key.ESCAPE.name"), texts.of("key.ESCAPE"));
        add(keys, texts.of("key.SPACE.name"), texts.of("key.SPACE"));
        return keys.toString();
    }

    private static void add(StringJoiner keys, String key, String does) {
        if (!does.isEmpty()) {
            keys.add(key + HARD_SPACE + does);
        }
    }

    private String name(Stroke.Key key, boolean held) {
        String name = "key." + key.name();
        return held && texts.find(name + ".held").isPresent() ? name + ".held" : name;
    }

    /** How often the next page of options was asked for since something else was touched. */
    int page() {
        return page;
    }
}
