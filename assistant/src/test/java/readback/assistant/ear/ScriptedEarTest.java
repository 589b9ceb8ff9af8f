package readback.assistant.ear;

import java.util.Arrays;
import java.util.List;

class ScriptedEarTest extends EarContract {
    @Override
    Ear open() {
        List<String> lines = SpokenLines.of("piston");
        return new ScriptedEar(
                lines,
                lines.stream().flatMap(line -> Arrays.stream(line.split(" "))).toList());
    }
}
