package readback.assistant.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import readback.prompts.checklist.Checklists;

/** Hashes of the data that decides what is understood, asked and said: two sessions with equal ones can be compared. */
public final class Fingerprints {

    private static final List<String> GRAMMAR =
            List.of("choices.txt", "commands.txt", "confusions.csv", "quantities.txt", "speech.txt", "units.txt");

    private Fingerprints() {}

    /** Short SHA-256 of grammar, checklists and texts, by part. */
    public static Map<String, String> of(Checklists checklists) {
        Map<String, String> parts = new TreeMap<>();
        parts.put(
                "grammar",
                hash(GRAMMAR.stream().map(file -> "/readback/grammar/" + file).toList()));
        parts.put("checklists", hash(checklists.files()));
        parts.put("texts", hash(List.of("/readback/prompts/texts-en.properties")));
        return parts;
    }

    private static String hash(List<String> resources) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (String resource : resources) {
                try (InputStream in = Fingerprints.class.getResourceAsStream(resource)) {
                    if (in == null) {
                        throw new IllegalStateException("the installation lacks " + resource);
                    }
                    digest.update(in.readAllBytes());
                }
            }
            return HexFormat.of().formatHex(digest.digest(), 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        } catch (IOException e) {
            throw new UncheckedIOException("the installation cannot be read", e);
        }
    }
}
