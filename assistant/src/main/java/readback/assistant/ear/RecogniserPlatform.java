package readback.assistant.ear;

import java.util.Locale;
import java.util.Optional;

/** On which systems and processors there is a library of the recogniser. */
final class RecogniserPlatform {

    /** Where a library that did not come with Readback is looked for; a property of the bridge to native code. */
    static final String OWN_LIBRARIES = "jna.library.path";

    private RecogniserPlatform() {}

    /** Why the recogniser cannot run in this Java; empty when it may. */
    static Optional<String> fault() {
        return fault(
                System.getProperty("os.name", ""),
                System.getProperty("os.arch", ""),
                !System.getProperty(OWN_LIBRARIES, "").isEmpty());
    }

    /**
     * The same for another machine.
     *
     * @param system as in {@code os.name}
     * @param processor as in {@code os.arch}, which is that of the Java virtual machine
     * @param own whether a folder with a library of the user's was named
     */
    static Optional<String> fault(String system, String processor, boolean own) {
        String name = system.toLowerCase(Locale.ROOT);
        if (processor.equals("amd64") || processor.equals("x86_64") || name.startsWith("mac")) {
            return Optional.empty();
        }
        if (name.startsWith("windows")) {
            return Optional.of("The recogniser's library for Windows is for x86-64, but this Java is for " + processor
                    + ": use the zip for Windows x86-64, which brings its own Java and runs on ARM tablets with Windows"
                    + " 11 too.");
        }
        return own
                ? Optional.empty()
                : Optional.of(
                        "There is no recogniser for " + system + " on " + processor + " in this installation: type"
                                + " and tap, or pack Readback anew with a folder that holds libvosk.so for " + processor
                                + " (INSTALL.md tells how).");
    }
}
