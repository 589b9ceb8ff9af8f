package readback.assistant.dialogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.Command;
import readback.grammar.Meaning;
import readback.prompts.checklist.Slot;

/**
 * What technicians say, counted against a list that was written before any of it was tried. The head of the list
 * explains its lines. The share is printed with what was missed.
 */
class SayingsTest {

    private static final Path FOLDER = Path.of("src/test/resources/readback/assistant/sayings");

    /** The goal; common practice, no source. */
    private static final double LEAST = 0.97;

    /** The same for the list that was written later. */
    private static final double LEAST_MORE = 0.95;

    /** The same for the last lists, most of which is as it was understood when it was written. */
    private static final double LEAST_LAST = 0.7;

    /** One saying at one moment. */
    private record Saying(String moment, List<String> before, String words, List<String> wanted) {}

    @ParameterizedTest
    @CsvSource({
        "sayings.txt, " + LEAST,
        "more-sayings.txt, " + LEAST_MORE,
        "third-sayings.txt, " + LEAST_MORE,
        "fourth-sayings.txt, " + LEAST_LAST,
        "fifth-sayings.txt, " + LEAST_LAST,
        "sixth-sayings.txt, " + LEAST_MORE,
        "seventh-sayings.txt, " + LEAST_MORE,
        "eighth-sayings.txt, " + LEAST_MORE,
        "ninth-sayings.txt, " + LEAST_MORE,
        "tenth-sayings.txt, " + LEAST_MORE
    })
    void nearly_everything_that_technicians_say_becomes_what_was_meant(String list, double least) throws IOException {
        List<Saying> sayings = read(Files.readAllLines(FOLDER.resolve(list), StandardCharsets.UTF_8));
        List<String> missed = new ArrayList<>();
        for (Saying saying : sayings) {
            missedBy(saying).ifPresent(why -> missed.add("[" + saying.moment() + "] " + saying.words() + " : " + why));
        }
        int right = sayings.size() - missed.size();
        String share = right + " of " + sayings.size();
        System.out.println(list + ", understood: " + share);
        missed.forEach(line -> System.out.println("missed " + line));

        assertThat((double) right / sayings.size())
                .as(share + "; missed: " + missed)
                .isGreaterThanOrEqualTo(least);
    }

    private static List<Saying> read(List<String> lines) {
        Map<String, List<String>> after = new LinkedHashMap<>();
        List<Saying> sayings = new ArrayList<>();
        String moment = "";
        List<String> from = List.of();
        for (String line : lines) {
            if (line.startsWith("[")) {
                moment = line.substring(1, line.length() - 1);
                from = List.of();
            } else if (line.startsWith("from = ")) {
                from = Optional.ofNullable(after.get(line.substring("from = ".length())))
                        .orElseThrow();
            } else if (line.startsWith("after =")) {
                List<String> all = new ArrayList<>(from);
                items(line.substring("after =".length())).forEach(all::add);
                after.put(moment, all);
            } else if (line.contains(" | ") && !line.startsWith("#")) {
                String[] parts = line.split(" \\| ", 2);
                sayings.add(new Saying(moment, after.getOrDefault(moment, List.of()), parts[0], items(parts[1])));
            }
        }
        return sayings;
    }

    private static List<String> items(String line) {
        return Arrays.stream(line.split(";", -1))
                .map(String::strip)
                .filter(item -> !item.isEmpty())
                .toList();
    }

    /** What became of the saying instead; empty where it became what was wanted. */
    private static Optional<String> missedBy(Saying saying) {
        Rehearsal rehearsal = new Rehearsal();
        rehearsal.says(saying.before().toArray(String[]::new));
        rehearsal.says(saying.words());
        return saying.wanted().stream()
                .filter(wanted -> !met(rehearsal, wanted))
                .findFirst()
                .map(wanted -> "wanted " + wanted + "; became ["
                        + rehearsal.turn().outcome().understood().line() + "] " + rehearsal.shown());
    }

    private static boolean met(Rehearsal rehearsal, String wanted) {
        State state = rehearsal.state();
        if (wanted.startsWith("says ")) {
            return rehearsal
                    .shown()
                    .toLowerCase(Locale.ROOT)
                    .contains(wanted.substring("says ".length()).toLowerCase(Locale.ROOT));
        }
        if (wanted.startsWith("order ")) {
            return rehearsal
                    .turn()
                    .outcome()
                    .understood()
                    .meaning()
                    .flatMap(Meaning::order)
                    .map(Command::name)
                    .filter(wanted.substring("order ".length())::equals)
                    .isPresent();
        }
        if (wanted.startsWith("open ")) {
            return reading(rehearsal, Quantity.valueOf(wanted.substring("open ".length())))
                    .isEmpty();
        }
        if (wanted.startsWith("skipped ")) {
            Quantity quantity = Quantity.valueOf(wanted.substring("skipped ".length()));
            return state.sheet().answer(Slot.of(quantity)).orElse(null) instanceof Answer.Skipped;
        }
        if (wanted.startsWith("job ")) {
            return state.job().toString().equals(wanted.substring("job ".length()));
        }
        if (wanted.contains("=")) {
            String[] parts = wanted.split("=", 2);
            return reading(rehearsal, Quantity.valueOf(parts[0]))
                    .filter(reading -> reading.value().compareTo(new BigDecimal(parts[1])) == 0)
                    .isPresent();
        }
        if (wanted.contains(":")) {
            String[] parts = wanted.split(":", 2);
            Optional<Answer> answer = state.sheet().answer(new Slot(parts[0]));
            return answer.filter(given -> given instanceof Answer.Option option
                            ? option.option().equals(parts[1])
                            : parts[1].equals("passed") && given instanceof Answer.Passed)
                    .isPresent();
        }
        return switch (wanted) {
            case "held" -> state.held();
            case "closed" -> state.closed();
            case "listening" -> !state.held() && !state.closed();
            case "silent" -> rehearsal.messages().isEmpty();
            default -> throw new IllegalArgumentException("nothing is known of " + wanted);
        };
    }

    private static Optional<Reading> reading(Rehearsal rehearsal, Quantity quantity) {
        return rehearsal.assessment().readings().find(quantity);
    }
}
