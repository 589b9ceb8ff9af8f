package readback.assistant.record;

/**
 * The kept sound of one utterance, as its line names it.
 *
 * @param file name inside the session's folder {@link SessionRecord#AUDIO}
 * @param sha256 digest of the file's bytes, so that the sound is bound to the chain
 */
public record AudioClip(String file, String sha256) {}
