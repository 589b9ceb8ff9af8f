package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The library of the recogniser opens files by the narrow functions of the C runtime, which on Windows take the code
 * page: seen under Wine with the library itself. Code page 1252 as the Unicode consortium's table CP1252.TXT has it.
 */
class LibraryPathTest {

    private static final Path FOLDER = Path.of("/users/José/model");
    private static final Path BEYOND = Path.of("/users/Łukasz/model");

    private static LibraryPath.Naming windows(String shortName) {
        return new LibraryPath.Naming(true, path -> Optional.of(shortName), Charset.forName("windows-1252"));
    }

    private static final LibraryPath.Naming WITHOUT_SHORT_NAMES =
            new LibraryPath.Naming(true, path -> Optional.empty(), Charset.forName("windows-1252"));

    @Test
    void aPlainNameStays() throws EarUnavailableException {
        assertThat(LibraryPath.of(Path.of("/users/lena"), windows("/USERS/LENA~1")))
                .isEqualTo(new LibraryPath("/users/lena", LibraryPath.Way.AS_IT_IS));
    }

    @Test
    void elsewhereThanOnWindowsEveryNameStays() throws EarUnavailableException {
        LibraryPath.Naming linux = new LibraryPath.Naming(
                false,
                path -> {
                    throw new AssertionError("there are no short names");
                },
                StandardCharsets.UTF_8);

        assertThat(LibraryPath.of(BEYOND, linux).name()).isEqualTo(BEYOND.toString());
    }

    @Test
    void onWindowsANameWithAccentsIsGivenByItsShortName() throws EarUnavailableException {
        LibraryPath path = LibraryPath.of(FOLDER, windows("/USERS/JOS~1/MODEL"));

        assertThat(path).isEqualTo(new LibraryPath("/USERS/JOS~1/MODEL", LibraryPath.Way.SHORT));
        assertThat(path.described()).isEqualTo("'/USERS/JOS~1/MODEL', by its short name");
    }

    @Test
    void aShortNameThatKeepsTheAccentsIsNone() throws EarUnavailableException {
        assertThat(LibraryPath.of(FOLDER, windows("/USERS/JOSÉ~1")).way()).isEqualTo(LibraryPath.Way.CODE_PAGE);
    }

    @Test
    void withoutShortNamesTheLettersOfTheCodePageWillDo() throws EarUnavailableException {
        assertThat(LibraryPath.of(FOLDER, WITHOUT_SHORT_NAMES))
                .isEqualTo(new LibraryPath(FOLDER.toString(), LibraryPath.Way.CODE_PAGE));
    }

    @Test
    void aNameThatCannotBeOpenedIsToldWithWhatToDo() {
        assertThatThrownBy(() -> LibraryPath.of(BEYOND, WITHOUT_SHORT_NAMES))
                .isInstanceOf(EarUnavailableException.class)
                .hasMessageContaining(BEYOND.toString())
                .hasMessageContaining("windows-1252")
                .hasMessageContaining("XDG_CACHE_HOME");
    }

    @Test
    void librariesAreUnpackedWhereTheirNamesCanBeWritten() {
        assertThat(NativeCode.place("/users/José/temp", WITHOUT_SHORT_NAMES, "/shared"))
                .isEmpty();
        assertThat(NativeCode.place("/users/Łukasz/temp", WITHOUT_SHORT_NAMES, "/shared"))
                .contains(Path.of("/shared/readback/native"));
        assertThat(NativeCode.place("/users/Łukasz/temp", WITHOUT_SHORT_NAMES, null))
                .isEmpty();
    }
}
