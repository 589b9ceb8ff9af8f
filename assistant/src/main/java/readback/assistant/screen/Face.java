package readback.assistant.screen;

import java.util.Optional;

/** What faces the technician: a screen, or plain lines. Owned by the session's thread. */
public interface Face extends AutoCloseable {

    /** Shows the view; does nothing when it is shown already. */
    void show(View view);

    /** What a stroke asks for. */
    Optional<Action> on(Stroke stroke);

    /** The size changed, or something else wrote on the terminal: draw anew. */
    void renew();

    @Override
    void close();
}
