package readback.assistant.ear;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where native libraries are unpacked before they are loaded. Java loads a library by a name in the code page of
 * Windows, so that nothing loads from the temporary files of a user whose name has other letters; those of the machine
 * take their place then.
 */
final class NativeCode {

    /** Where the bridge to native code unpacks; a property of it. */
    private static final String FOLDER = "jna.tmpdir";

    private NativeCode() {}

    /** Chooses the place, before the first library is loaded. */
    static void choosePlace(LibraryPath.Naming naming) {
        if (System.getProperty(FOLDER) != null) {
            return;
        }
        place(System.getProperty("java.io.tmpdir", ""), naming, System.getenv("ProgramData"))
                .ifPresent(place -> {
                    try {
                        System.setProperty(
                                FOLDER, Files.createDirectories(place).toString());
                    } catch (IOException unwritable) {
                        // loading says what is wrong then
                    }
                });
    }

    /**
     * The place, where it is not among the temporary files.
     *
     * @param temporary folder of this user's temporary files
     * @param shared folder of all users' data, where there is one
     */
    static Optional<Path> place(String temporary, LibraryPath.Naming naming, @Nullable String shared) {
        return !naming.windows()
                        || shared == null
                        || naming.codePage().newEncoder().canEncode(temporary)
                ? Optional.empty()
                : Optional.of(Path.of(shared, "readback", "native"));
    }
}
