package readback.assistant.command;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import readback.assistant.ear.DeafEar;
import readback.assistant.ear.Ear;
import readback.assistant.ear.VoskEar;
import readback.assistant.session.Fingerprints;
import readback.assistant.voice.Voice;
import readback.grammar.Grammar;

/**
 * What takes longest before a live session can begin, begun on threads of its own while grammar, texts and terminal are
 * still being read: the ear, the voice, and the hash of the code. Decision 0015.
 */
final class Opening {

    private final EarOptions options;
    private final Optional<String> deaf = VoskEar.noneForThisMachine();
    private final CompletableFuture<Ear> ear;
    private final CompletableFuture<Voice> voice;

    private Opening(EarOptions ear, VoiceOptions voice) {
        this.options = ear;
        this.ear = begun("opening-ear", deaf.isPresent() ? DeafEar::new : ear::open);
        this.voice = begun("opening-voice", voice::live);
        beside("code-hash", () -> Fingerprints.codeKnown());
    }

    static Opening of(EarOptions ear, VoiceOptions voice) {
        return new Opening(ear, voice);
    }

    private static <T> CompletableFuture<T> begun(String name, Supplier<T> work) {
        return CompletableFuture.supplyAsync(work, task -> beside(name, task));
    }

    private static void beside(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }

    /** Why nothing can be heard here; empty where it can. */
    Optional<String> deaf() {
        return deaf;
    }

    /** The ear; a foreign model that lacks words of ours is used, after a warning that lists them. */
    Ear ear(Grammar grammar, Console console) {
        Ear open = waited(ear);
        if (deaf.isEmpty()) {
            options.warn(open, grammar, console);
        }
        return open;
    }

    Voice voice() {
        return waited(voice);
    }

    private static <T> T waited(CompletableFuture<T> opened) {
        try {
            return opened.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof CommandFailure failure) {
                throw failure;
            }
            throw e;
        }
    }
}
