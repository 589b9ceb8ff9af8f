package readback.assistant.ear;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * A folder by the name under which the recogniser's native library can open it. On Windows the library takes names in
 * the code page of the country, so that a folder under a user's name like "José" opens or does not: it gets the short
 * name of such a folder, which is in ASCII; decision 0015.
 *
 * @param name what the library is given
 * @param way how it came about
 */
record LibraryPath(String name, Way way) {

    /** How a folder is named to the library. */
    enum Way {
        AS_IT_IS(""),
        SHORT(", by its short name"),
        CODE_PAGE(", in the code page of this system");

        private final String words;

        Way(String words) {
            this.words = words;
        }
    }

    /**
     * How a system names files to programs that know no Unicode.
     *
     * @param windows whether such programs see names otherwise than Java
     * @param shortNames the system's short names
     * @param codePage the encoding in which names reach them
     */
    record Naming(boolean windows, ShortNames shortNames, Charset codePage) {

        /** Of this machine. */
        static Naming ofThisSystem() {
            return new Naming(
                    System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows"),
                    new WindowsShortNames(),
                    Charset.forName(System.getProperty("native.encoding", StandardCharsets.UTF_8.name())));
        }
    }

    /**
     * The name of an existing folder.
     *
     * @throws EarUnavailableException when the library cannot open it under any name
     */
    static LibraryPath of(Path folder, Naming naming) throws EarUnavailableException {
        String path = folder.toAbsolutePath().toString();
        if (!naming.windows() || ascii(path)) {
            return new LibraryPath(path, Way.AS_IT_IS);
        }
        Optional<String> shortName = naming.shortNames().of(path).filter(LibraryPath::ascii);
        if (shortName.isPresent()) {
            return new LibraryPath(shortName.get(), Way.SHORT);
        }
        if (naming.codePage().newEncoder().canEncode(path)) {
            return new LibraryPath(path, Way.CODE_PAGE);
        }
        throw new EarUnavailableException("The recogniser cannot open '" + path + "', because of its letters beyond "
                + naming.codePage().name()
                + ": set XDG_CACHE_HOME to a folder with plain letters, or give --model one.");
    }

    private static boolean ascii(String path) {
        return StandardCharsets.US_ASCII.newEncoder().canEncode(path);
    }

    /** The name for the user, with how it came about. */
    String described() {
        return "'" + name + "'" + way.words;
    }
}
