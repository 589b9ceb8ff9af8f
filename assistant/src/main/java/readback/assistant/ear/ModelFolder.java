package readback.assistant.ear;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import readback.grammar.AcousticModel;

/**
 * A folder with an acoustic model in the recogniser's layout, checked before the native library sees it: a model with a
 * missing file ends the whole program there.
 *
 * @param folder the model's folder
 * @param name for the session record
 * @param words what the model can hear
 */
public record ModelFolder(Path folder, String name, SortedSet<String> words) {

    /**
     * The model in a folder of the user's.
     *
     * @throws EarUnavailableException when the folder holds no model that can take phrases
     */
    public static ModelFolder at(Path folder) throws EarUnavailableException {
        if (!Files.isDirectory(folder)) {
            throw new EarUnavailableException(
                    "There is no folder '" + folder + "': give --model the folder of a model.");
        }
        boolean flat = flat(folder);
        String graph = flat ? "" : "graph/";
        List<String> missing = new ArrayList<>();
        for (String needed : flat ? List.of("final.mdl") : List.of("am/final.mdl", "conf/model.conf")) {
            if (!Files.isReadable(folder.resolve(needed))) {
                missing.add(needed);
            }
        }
        String conf = flat ? "" : "conf/";
        if (!Files.isReadable(folder.resolve(conf + "mfcc.conf"))
                && !Files.isReadable(folder.resolve(conf + "fbank.conf"))) {
            missing.add(conf + "mfcc.conf");
        }
        if (missing.isEmpty() && Files.exists(folder.resolve(graph + "HCLG.fst"))) {
            throw new EarUnavailableException("The model in '" + folder + "' has a fixed graph (" + graph
                    + "HCLG.fst), which cannot take the phrases of a step: use a model with HCLr.fst and Gr.fst.");
        }
        for (String needed : List.of("HCLr.fst", "Gr.fst", "disambig_tid.int", "words.txt")) {
            if (!Files.isReadable(folder.resolve(graph + needed))) {
                missing.add(graph + needed);
            }
        }
        if (!missing.isEmpty()) {
            throw new EarUnavailableException("'" + folder + "' is not a whole speech model, it lacks "
                    + String.join(", ", missing) + ": give --model the folder that holds them.");
        }
        try {
            SortedSet<String> words = AcousticModel.wordsOf(Files.readAllLines(folder.resolve(graph + "words.txt")));
            return new ModelFolder(folder, nameOf(folder), words);
        } catch (IOException unreadable) {
            throw new EarUnavailableException(
                    "The word list '" + folder.resolve(graph + "words.txt") + "' cannot be read: copy the model again.",
                    unreadable);
        }
    }

    /** Older models keep all files in one folder, newer ones in am, conf and graph. */
    private static boolean flat(Path folder) {
        return !Files.exists(folder.resolve("am/final.mdl")) && Files.exists(folder.resolve("final.mdl"));
    }

    /** The file of the acoustic network. */
    Path network() {
        return folder.resolve(flat(folder) ? "final.mdl" : "am/final.mdl");
    }

    /** The files of the two graphs: of the words, and of what follows what. */
    List<Path> graphs() {
        Path graphs = flat(folder) ? folder : folder.resolve("graph");
        return List.of(graphs.resolve("HCLr.fst"), graphs.resolve("Gr.fst"));
    }

    private static String nameOf(Path folder) {
        Path last = folder.toAbsolutePath().normalize().getFileName();
        return last == null ? folder.toString() : last.toString();
    }
}
