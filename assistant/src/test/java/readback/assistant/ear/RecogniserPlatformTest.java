package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Names as Java gives them in os.name and os.arch; libraries as they lie in the jar of the recogniser. */
class RecogniserPlatformTest {

    @Test
    void whereALibraryLiesInTheJarThereIsNoFault() {
        assertThat(RecogniserPlatform.fault("Linux", "amd64", false)).isEmpty();
        assertThat(RecogniserPlatform.fault("Windows 11", "amd64", false)).isEmpty();
        assertThat(RecogniserPlatform.fault("Mac OS X", "aarch64", false)).isEmpty();
    }

    @Test
    void aJavaForArmOnWindowsIsSentToTheOtherZip() {
        assertThat(RecogniserPlatform.fault("Windows 11", "aarch64", false))
                .hasValueSatisfying(
                        fault -> assertThat(fault).contains("aarch64").contains("Windows x86-64"));
        assertThat(RecogniserPlatform.fault("Windows 11", "aarch64", true)).isPresent();
    }

    @Test
    void linuxOnArmNeedsALibraryOfItsOwn() {
        assertThat(RecogniserPlatform.fault("Linux", "aarch64", false))
                .hasValueSatisfying(
                        fault -> assertThat(fault).contains("libvosk.so").contains("type"));
        assertThat(RecogniserPlatform.fault("Linux", "aarch64", true)).isEmpty();
    }
}
