package readback.assistant.record;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import readback.assistant.digest.Sha256;

/**
 * The seal on each line. A line is a JSON object whose last field is {@code "hash"}: the SHA-256 of the line's bytes
 * before that field. The field {@code "prev"} inside those bytes is the hash of the line before, so that no line can be
 * changed, removed, added or moved without breaking the chain there. Lines are checked as the bytes that lie on disk:
 * two texts that a decoder would take for the same are not the same here. What this proves and what not: decision 0002.
 */
final class Chain {

    /** What the header has for {@code "prev"}. */
    static final String START = "0".repeat(64);

    private static final byte[] SEAL = ",\"hash\":\"".getBytes(StandardCharsets.US_ASCII);
    private static final int HASH_LENGTH = 64;
    private static final int SEALED_TAIL = SEAL.length + HASH_LENGTH + 2;

    private Chain() {}

    /** The sealed line for a JSON object; its hash is the last 64 characters before the closing quote and brace. */
    static String seal(String object) {
        String open = object.substring(0, object.length() - 1);
        byte[] bytes = open.getBytes(StandardCharsets.UTF_8);
        return open + new String(SEAL, StandardCharsets.US_ASCII) + sha256(bytes, 0, bytes.length) + "\"}";
    }

    /** The hash of a line that {@link #seal} made a moment ago. */
    static String hashOfFresh(String sealed) {
        return sealed.substring(sealed.length() - HASH_LENGTH - 2, sealed.length() - 2);
    }

    /** The hash of the sealed line that lies between two places of a file, if the seal is whole. */
    static Optional<String> hashOf(byte[] file, int from, int to) {
        int cut = to - SEALED_TAIL;
        if (cut <= from || file[to - 2] != '"' || file[to - 1] != '}') {
            return Optional.empty();
        }
        for (int i = 0; i < SEAL.length; i++) {
            if (file[cut + i] != SEAL[i]) {
                return Optional.empty();
            }
        }
        String stated = new String(file, cut + SEAL.length, HASH_LENGTH, StandardCharsets.ISO_8859_1);
        return stated.equals(sha256(file, from, cut)) ? Optional.of(stated) : Optional.empty();
    }

    /** Where the line that begins at a place of a file ends: at its line feed, or at the end of the file. */
    static int lineEnd(byte[] file, int from) {
        int end = from;
        while (end < file.length && file[end] != '\n') {
            end++;
        }
        return end;
    }

    /**
     * Whether a sealed line that ends at a place names this hash as the one before, in its last field before the seal.
     */
    static boolean follows(byte[] file, int to, String previous) {
        byte[] named = ("\"prev\":\"" + previous + "\"").getBytes(StandardCharsets.US_ASCII);
        int from = to - SEALED_TAIL - named.length;
        return from >= 0 && Arrays.equals(named, 0, named.length, file, from, from + named.length);
    }

    /** The digest in lower-case hexadecimal digits. */
    static String sha256(byte[] bytes, int from, int to) {
        return new Sha256().add(bytes, from, to).hex();
    }
}
