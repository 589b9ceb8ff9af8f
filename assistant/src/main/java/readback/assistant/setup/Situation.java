package readback.assistant.setup;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was found before the first question.
 *
 * @param microphones names of those that are there
 * @param loudspeakers names of those that are there
 * @param file where the settings are written
 * @param there whether that file is there already
 * @param fault why the file that is there cannot be used; what it says is not taken over then
 * @param stated what it says of the things that setting up decides
 */
public record Situation(
        List<String> microphones,
        List<String> loudspeakers,
        String file,
        boolean there,
        Optional<String> fault,
        Map<Name, String> stated) {

    public Situation {
        microphones = List.copyOf(microphones);
        loudspeakers = List.copyOf(loudspeakers);
        stated = Map.copyOf(stated);
    }
}
