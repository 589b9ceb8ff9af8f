package readback.assistant.ear;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Where this user's programs keep what they can make again. */
public final class CacheFolder {
    private CacheFolder() {}

    /** Readback's folder among the caches of this user on this machine. */
    public static Path ofUser() {
        return of(System.getenv(), System.getProperty("os.name", ""), System.getProperty("user.home", "."));
    }

    /**
     * Where to keep caches, the first that can be: this user's, then on Windows the machine's, whose path is in ASCII
     * whatever the user is called, then the temporary files.
     */
    static List<Path> all() {
        List<Path> all = new ArrayList<>(List.of(ofUser()));
        @Nullable String shared = System.getenv("ProgramData");
        if (shared != null && !shared.isEmpty()) {
            all.add(Path.of(shared, "readback", "cache"));
        }
        all.add(temporary());
        return all;
    }

    /** Removes a folder that was made there, with everything in it. */
    public static void remove(Path folder) throws IOException {
        List<Path> inside;
        try (Stream<Path> tree = Files.walk(folder)) {
            inside = tree.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : inside) {
            Files.delete(path);
        }
    }

    private static Path temporary() {
        return Path.of(
                System.getProperty("java.io.tmpdir", "."),
                "readback-cache-" + System.getProperty("user.name", "").replaceAll("[^A-Za-z0-9]", "_"));
    }

    /**
     * XDG_CACHE_HOME wherever it is set (XDG Base Directory Specification 0.8: only when absolute), else the platform's
     * own place.
     */
    static Path of(Map<String, String> environment, String system, String home) {
        @Nullable String chosen = environment.get("XDG_CACHE_HOME");
        if (chosen != null && Path.of(chosen).isAbsolute()) {
            return Path.of(chosen, "readback");
        }
        String name = system.toLowerCase(Locale.ROOT);
        @Nullable String local = environment.get("LOCALAPPDATA");
        if (name.startsWith("windows") && local != null && !local.isEmpty()) {
            return Path.of(local, "readback", "cache");
        }
        if (name.startsWith("mac")) {
            return Path.of(home, "Library", "Caches", "readback");
        }
        return Path.of(home, ".cache", "readback");
    }
}
