package readback.assistant.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import readback.assistant.digest.Sha256;
import readback.prompts.checklist.Checklists;
import readback.prompts.text.Language;

/**
 * Hashes of the code and the data that decide what is heard, understood, judged, asked and said: two sessions with
 * equal ones can be compared.
 */
public final class Fingerprints {

    private static final int BYTES = 8;

    private static final List<String> FACTS = in(
            "/readback/calc/",
            "applicability/tests-that-apply.txt",
            "applicability/what-parts-change.txt",
            "measurement/usual-condensing.txt",
            "plausibility/plausible-bands.txt",
            "targets/target-superheat.txt",
            "diagnosis/fault-weights.txt",
            "diagnosis/findings.txt",
            "diagnosis/simulated-units.txt",
            "fluid/equations.txt",
            "fluid/refrigerants.txt",
            "fluid/saturation.txt",
            "procedure/leak-rules.txt",
            "procedure/line-charge.txt",
            "procedure/lower-flammable-limits.txt");

    private static final List<String> GRAMMAR = in(
            "/readback/grammar/",
            "choices.txt",
            "commands.txt",
            "confusions.csv",
            "quantities.txt",
            "speech.txt",
            "units.txt");

    /** The manifests have the hash of every other file of the models. */
    private static final List<String> MODEL = in("/readback/grammar/", "model/MANIFEST", "second-model/MANIFEST");

    private static final List<String> TEXTS =
            Language.resources(Language.english().tag());

    private Fingerprints() {}

    /** Read once: it is the same as long as the program runs. */
    private static final class Code {
        static final Optional<String> HASH = ProgramCode.digest().map(digest -> digest.hex(BYTES));
    }

    /** Whether the code can be told by its hash; worked out now, for whoever will ask for all of them soon. */
    public static boolean codeKnown() {
        return Code.HASH.isPresent();
    }

    /** Short SHA-256 of each part, by part: "checklists", "code", "facts", "grammar", "model", "texts". */
    public static Map<String, String> of(Checklists checklists) {
        Map<String, String> parts = new TreeMap<>();
        Code.HASH.ifPresent(hash -> parts.put("code", hash));
        resources(checklists).forEach((part, resources) -> parts.put(part, hash(resources)));
        return parts;
    }

    /** The resources that count in each part, by part, as absolute names on the class path. */
    static Map<String, List<String>> resources(Checklists checklists) {
        return Map.of(
                "checklists", checklists.files(), "facts", FACTS, "grammar", GRAMMAR, "model", MODEL, "texts", TEXTS);
    }

    private static List<String> in(String folder, String... files) {
        return Stream.of(files).map(file -> folder + file).toList();
    }

    private static String hash(List<String> resources) {
        Sha256 digest = new Sha256();
        for (String resource : resources) {
            try (InputStream in = Fingerprints.class.getResourceAsStream(resource)) {
                if (in == null) {
                    throw new IllegalStateException("the installation lacks " + resource);
                }
                digest.add(in);
            } catch (IOException e) {
                throw new UncheckedIOException("the installation cannot be read", e);
            }
        }
        return digest.hex(BYTES);
    }
}
