package readback.assistant.command;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import readback.assistant.measure.Clip;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;

/** The recordings of a folder as its {@code expected.tsv} lists them. */
final class ClipList {

    private final Path folder;
    private final Path list;

    ClipList(Path folder) {
        this.folder = folder;
        this.list = folder.resolve("expected.tsv");
    }

    /** @throws CommandFailure when there is no list, or one that cannot be understood */
    List<Clip> clips() {
        List<String> lines;
        try {
            lines = Files.readAllLines(list);
        } catch (IOException e) {
            throw new CommandFailure("There is no readable list '" + list
                    + "': it names a file, its kind and its words a line, tab separated, under a header line.");
        }
        List<String> header = lines.isEmpty() ? List.of() : List.of(lines.get(0).split("\t", -1));
        int file = header.indexOf("file");
        int kind = header.indexOf("kind");
        int words = header.indexOf("words");
        int step = header.indexOf("step");
        int speaker = header.indexOf("speaker");
        int value = header.indexOf("value");
        int unit = header.indexOf("unit");
        if (file < 0 || kind < 0 || words < 0) {
            throw new CommandFailure("'" + list
                    + "' begins with a header line that names file, kind and words; this one is " + header + ".");
        }
        List<Clip> clips = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] fields = line.split("\t", -1);
            if (fields.length >= header.size()) {
                String quantity = step < 0 ? "" : quantity(fields[step]);
                clips.add(new Clip(
                        folder.resolve(fields[file]),
                        speaker < 0 ? "" : fields[speaker],
                        fields[kind],
                        quantity,
                        fields[words].strip().toLowerCase(Locale.ROOT),
                        value < 0 || unit < 0 ? Optional.empty() : meant(quantity, fields[value], fields[unit])));
            }
        }
        if (clips.isEmpty()) {
            throw new CommandFailure("'" + list + "' lists no recordings.");
        }
        return clips;
    }

    private static Optional<Reading> meant(String quantity, String value, String unit) {
        if (quantity.isEmpty() || value.isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    new Reading(Quantity.valueOf(quantity), new BigDecimal(value.strip()), Unit.valueOf(unit.strip())));
        } catch (IllegalArgumentException e) {
            throw new CommandFailure("'" + value + "' in '" + unit + "' is not a value of " + quantity + ".");
        }
    }

    private static String quantity(String step) {
        if (step.isBlank()) {
            return "";
        }
        Optional<Quantity> quantity = ConstantName.find(Quantity.class, step);
        if (quantity.isPresent()) {
            return quantity.get().name();
        }
        throw new CommandFailure("There is no step '" + step + "': steps are quantities, as in suction-pressure.");
    }
}
