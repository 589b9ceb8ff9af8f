package readback.assistant.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import readback.grammar.AcousticModel;
import readback.prompts.checklist.Checklists;

class FingerprintsTest {

    private static final String MODEL = "/readback/grammar/model/";
    private static final String SECOND = "/readback/grammar/second-model/";

    /** What is told about a model decides nothing. */
    private static final Set<String> DECIDES_NOTHING = Set.of(MODEL + "MODEL-CARD.md", SECOND + "MODEL-CARD.md");

    private final Map<String, List<String>> counted = Fingerprints.resources(Checklists.standard());

    /** The resources of the modules that know, understand and say, as the build finds them. */
    private static Set<String> resources() throws IOException {
        Set<String> found = new TreeSet<>();
        for (String module : List.of("calc", "grammar", "prompts")) {
            Path root = Path.of("..", module, "src", "main", "resources");
            try (Stream<Path> files = Files.walk(root)) {
                files.filter(Files::isRegularFile)
                        .map(file -> "/" + root.relativize(file).toString().replace('\\', '/'))
                        .forEach(found::add);
            }
        }
        return found;
    }

    @Test
    void every_resource_that_decides_is_in_one_fingerprint_and_no_other_file_is() throws IOException {
        List<String> covered = new ArrayList<>(DECIDES_NOTHING);
        counted.values().forEach(covered::addAll);
        AcousticModel.bundled().files().forEach(file -> covered.add(MODEL + file.name()));
        AcousticModel.second().files().forEach(file -> covered.add(SECOND + file.name()));

        assertThat(covered).containsExactlyInAnyOrderElementsOf(resources());
    }

    /** The files of the models count by their hashes, which the manifests have. */
    @Test
    void the_manifests_of_the_models_count() {
        assertThat(counted).containsEntry("model", List.of(MODEL + "MANIFEST", SECOND + "MANIFEST"));
    }

    /** A part with the wrong bytes in it, none or another part's, would show as an equal or as the empty hash. */
    @Test
    void each_part_has_a_hash_of_its_own() {
        Map<String, String> parts = Fingerprints.of(Checklists.standard());

        assertThat(parts).containsOnlyKeys("checklists", "code", "facts", "grammar", "model", "texts");
        assertThat(parts.values()).doesNotHaveDuplicates().allMatch(hash -> hash.matches("[0-9a-f]{16}"));
        // the SHA-256 of nothing (FIPS 180-4)
        assertThat(parts.values()).doesNotContain("e3b0c44298fc1c14");
    }
}
