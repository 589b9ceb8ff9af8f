package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** XDG Base Directory Specification 0.8; the platforms' own conventions elsewhere. */
class CacheFolderTest {
    @Test
    void theUsersOwnChoiceComesFirst() {
        assertThat(CacheFolder.of(Map.of("XDG_CACHE_HOME", "/var/tmp/caches"), "Linux", "/home/lena"))
                .isEqualTo(Path.of("/var/tmp/caches/readback"));
    }

    @Test
    void aRelativeChoiceIsIgnoredAsTheSpecificationSays() {
        assertThat(CacheFolder.of(Map.of("XDG_CACHE_HOME", "caches"), "Linux", "/home/lena"))
                .isEqualTo(Path.of("/home/lena/.cache/readback"));
    }

    @Test
    void eachPlatformHasItsPlace() {
        assertThat(CacheFolder.of(Map.of(), "Linux", "/home/lena")).isEqualTo(Path.of("/home/lena/.cache/readback"));
        assertThat(CacheFolder.of(Map.of(), "Mac OS X", "/Users/lena"))
                .isEqualTo(Path.of("/Users/lena/Library/Caches/readback"));
        assertThat(CacheFolder.of(Map.of("LOCALAPPDATA", "/local"), "Windows 11", "/users/lena"))
                .isEqualTo(Path.of("/local/readback/cache"));
    }
}
