package readback.assistant.digest;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A SHA-256 (FIPS 180-4) in the making: bytes go in piece by piece, the digest comes out once. */
public final class Sha256 {

    private static final int PIECE = 1 << 16;

    private final MessageDigest digest;

    public Sha256() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        }
    }

    /** This, with the text's UTF-8 bytes added. */
    public Sha256 add(String text) {
        digest.update(text.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    /** This, with the bytes between two places added. */
    public Sha256 add(byte[] bytes, int from, int to) {
        digest.update(bytes, from, to - from);
        return this;
    }

    /** This, with all that is left in the stream added; the caller closes the stream. */
    public Sha256 add(InputStream in) throws IOException {
        byte[] piece = new byte[PIECE];
        for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
            digest.update(piece, 0, read);
        }
        return this;
    }

    /** The whole digest as 64 lower-case hexadecimal digits; the next bytes begin a new one. */
    public String hex() {
        return HexFormat.of().formatHex(digest.digest());
    }

    /** The first so many bytes of the digest as lower-case hexadecimal: enough to tell versions apart. */
    public String hex(int bytes) {
        return HexFormat.of().formatHex(digest.digest(), 0, bytes);
    }
}
