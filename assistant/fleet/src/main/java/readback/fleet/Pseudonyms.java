package readback.fleet;

import java.io.IOException;
import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Names of people, places and equipment as they go into tables: as they are, or in place of each the first half of its
 * HMAC-SHA-256 (RFC 2104, FIPS 198-1) under a key that stays in the office. The same name has the same pseudonym under
 * the same key, so that what belongs together is still counted together; whoever has the key can try names.
 */
final class Pseudonyms implements Serializable {

    /** Names stay as they are. */
    static final Pseudonyms NONE = new Pseudonyms(new byte[0]);

    private static final long serialVersionUID = 1L;
    private static final String METHOD = "HmacSHA256";

    /** FIPS 198-1 wants a key of at least half the digest's length. */
    private static final int SHORTEST_KEY = 16;

    /** 64 bits: among a million names two are alike with a chance of one in 37 million. */
    private static final int BYTES = 8;

    private final byte[] key;

    private Pseudonyms(byte[] key) {
        this.key = key.clone();
    }

    /**
     * Pseudonyms under the key that a file holds, all its bytes.
     *
     * @throws FleetFailure when it cannot be read or is too short to keep names from being found
     */
    static Pseudonyms of(Path keyFile) {
        try {
            byte[] key = Files.readAllBytes(keyFile);
            if (key.length < SHORTEST_KEY) {
                throw new FleetFailure("The key in '" + keyFile + "' has " + key.length + " bytes and needs "
                        + SHORTEST_KEY + " at least: make one with 'head -c 32 /dev/urandom > FILE', and keep it.");
            }
            return new Pseudonyms(key);
        } catch (IOException e) {
            throw new FleetFailure(
                    "The key file '" + keyFile + "' cannot be read: name a file with 16 bytes or more that nobody else"
                            + " knows, as 'head -c 32 /dev/urandom > FILE' makes it.",
                    e);
        }
    }

    /** Whether names stay as they are. */
    boolean none() {
        return key.length == 0;
    }

    /**
     * What stands for a name.
     *
     * @param kind whose name it is, so that a person and a place of one name have two pseudonyms
     * @param name empty for none, which stays empty
     */
    String of(String kind, String name) {
        if (none() || name.isEmpty()) {
            return name;
        }
        try {
            Mac mac = Mac.getInstance(METHOD);
            mac.init(new SecretKeySpec(key, METHOD));
            mac.update((kind + "\n").getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(mac.doFinal(name.getBytes(StandardCharsets.UTF_8)), 0, BYTES);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java runtime has " + METHOD, e);
        }
    }

    /** A short mark of the key, so that tables made with another one are told apart; empty without a key. */
    Optional<String> mark() {
        return none() ? Optional.empty() : Optional.of(of("key", "mark"));
    }
}
