package readback.assistant.live;

import java.util.Optional;
import readback.assistant.echo.EchoCanceller;

/**
 * Whether Readback's own voice is taken out of what is heard.
 *
 * @param canceller takes it out; empty where nothing is heard while it speaks
 * @param unavailable a sentence that says why there is none although one is wanted
 */
public record OwnVoice(Optional<EchoCanceller> canceller, Optional<String> unavailable) {

    /** It is not taken out, and nobody wants it to be. */
    public static final OwnVoice LEFT_IN = new OwnVoice(Optional.empty(), Optional.empty());

    public static OwnVoice takenOutBy(EchoCanceller canceller) {
        return new OwnVoice(Optional.of(canceller), Optional.empty());
    }

    /** It cannot be taken out; the sentence says why. */
    public static OwnVoice unavailable(String why) {
        return new OwnVoice(Optional.empty(), Optional.of(why));
    }
}
