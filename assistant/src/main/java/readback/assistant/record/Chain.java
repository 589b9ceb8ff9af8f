package readback.assistant.record;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * The seal on each line. A line is a JSON object whose last field is {@code "hash"}: the SHA-256 of the line's bytes before
 * that field. The field {@code "prev"} inside those bytes is the hash of the line before, so that no line can be changed,
 * removed, added or moved without breaking the chain there.
 */
final class Chain {

    /** What the header has for {@code "prev"}. */
    static final String START = "0".repeat(64);

    private static final String SEAL = ",\"hash\":\"";
    private static final int SEALED_TAIL = SEAL.length() + 64 + 2;

    private Chain() {}

    /** The sealed line for a JSON object; its hash is the last 64 characters before the closing quote and brace. */
    static String seal(String object) {
        String open = object.substring(0, object.length() - 1);
        return open + SEAL + sha256(open) + "\"}";
    }

    /** The hash of a sealed line if the seal is whole. */
    static Optional<String> hashOf(String line) {
        int cut = line.length() - SEALED_TAIL;
        if (cut < 1 || !line.startsWith(SEAL, cut) || !line.endsWith("\"}")) {
            return Optional.empty();
        }
        String hash = line.substring(cut + SEAL.length(), line.length() - 2);
        return hash.equals(sha256(line.substring(0, cut))) ? Optional.of(hash) : Optional.empty();
    }

    static String sha256(String text) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        }
    }
}
