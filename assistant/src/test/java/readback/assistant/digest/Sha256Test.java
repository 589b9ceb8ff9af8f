package readback.assistant.digest;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Against the examples of NIST for FIPS 180-4. */
class Sha256Test {

    @Test
    void three_letters() {
        assertThat(new Sha256().add("abc").hex())
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(new Sha256().add("abc").hex(4)).isEqualTo("ba7816bf");
    }

    @Test
    void a_million_letters_from_a_stream_and_piece_by_piece() throws IOException {
        byte[] letters = "a".repeat(999_999).getBytes(StandardCharsets.US_ASCII);

        assertThat(new Sha256().add(new ByteArrayInputStream(letters)).add("a").hex())
                .isEqualTo("cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    }
}
