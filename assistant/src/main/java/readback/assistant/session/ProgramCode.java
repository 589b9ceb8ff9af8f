package readback.assistant.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.digest.Sha256;
import readback.calc.fluid.Catalogue;
import readback.grammar.Grammar;
import readback.prompts.text.Language;

/**
 * The compiled classes that decide what is understood, judged, asked and said, wherever they are loaded from. A version
 * number is only what somebody wrote into a file; this is what ran.
 */
final class ProgramCode {

    private static final String CLASS = ".class";

    /** Where the classes of a room are found, and what their names begin with. */
    private record Room(Class<?> member, String prefix) {}

    private static final List<Room> DECIDING = List.of(
            new Room(Catalogue.class, "readback/calc/"),
            new Room(Grammar.class, "readback/grammar/"),
            new Room(Language.class, "readback/prompts/"),
            new Room(Dialogue.class, "readback/assistant/dialogue/"));

    private ProgramCode() {}

    /** The bytes of every class that decides, by name and in that order; empty where they cannot be reached. */
    static Optional<Sha256> digest() {
        Sha256 digest = new Sha256();
        for (Room room : DECIDING) {
            CodeSource source = room.member().getProtectionDomain().getCodeSource();
            if (source == null || source.getLocation() == null) {
                return Optional.empty();
            }
            try {
                Path place = Path.of(new URI(source.getLocation().toString()));
                if (Files.isDirectory(place)) {
                    addFolder(digest, place, room.prefix());
                } else {
                    addJar(digest, place, room.prefix());
                }
            } catch (URISyntaxException | IllegalArgumentException e) {
                return Optional.empty();
            } catch (IOException e) {
                throw new UncheckedIOException("the installation cannot be read", e);
            }
        }
        return Optional.of(digest);
    }

    private static void addFolder(Sha256 digest, Path root, String prefix) throws IOException {
        TreeMap<String, Path> classes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root.resolve(prefix))) {
            files.filter(file -> file.toString().endsWith(CLASS))
                    .forEach(
                            file -> classes.put(root.relativize(file).toString().replace('\\', '/'), file));
        }
        for (var each : classes.entrySet()) {
            try (InputStream in = Files.newInputStream(each.getValue())) {
                digest.add(each.getKey()).add(in);
            }
        }
    }

    private static void addJar(Sha256 digest, Path jar, String prefix) throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            List<JarEntry> classes = new ArrayList<>();
            file.stream()
                    .filter(each ->
                            each.getName().startsWith(prefix) && each.getName().endsWith(CLASS))
                    .forEach(classes::add);
            classes.sort((a, b) -> a.getName().compareTo(b.getName()));
            for (JarEntry each : classes) {
                try (InputStream in = file.getInputStream(each)) {
                    digest.add(each.getName()).add(in);
                }
            }
        }
    }
}
