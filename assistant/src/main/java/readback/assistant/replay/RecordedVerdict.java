package readback.assistant.replay;

import java.util.Arrays;
import java.util.List;
import readback.calc.charge.Verdict;
import readback.calc.name.ConstantName;

/**
 * The recorded form of what was announced: outcomes separated by semicolons, the charge verdict first, each with its
 * numbers.
 *
 * @param charge the charge verdict in one word, as in "add"; empty while there is none
 * @param borderline whether the charge verdict is
 * @param others outcomes of other jobs, as in "airflow sufficient split=19.2F target=18.4F"
 */
public record RecordedVerdict(String charge, boolean borderline, List<String> others) {

    public RecordedVerdict {
        others = List.copyOf(others);
    }

    /** What a recorded line says. */
    public static RecordedVerdict of(String recorded) {
        List<String> outcomes = Arrays.stream(recorded.split("; ", -1))
                .filter(outcome -> !outcome.isEmpty())
                .toList();
        if (outcomes.isEmpty()) {
            return new RecordedVerdict("", false, List.of());
        }
        List<String> words = List.of(outcomes.get(0).split(" ", -1));
        boolean charge =
                Arrays.stream(Verdict.Kind.values()).map(ConstantName::of).anyMatch(words.get(0)::equals);
        return charge
                ? new RecordedVerdict(words.get(0), words.contains("borderline"), outcomes.subList(1, outcomes.size()))
                : new RecordedVerdict("", false, outcomes);
    }

    /** In a word or two, for a list: the charge verdict, else the first other outcome. */
    public String brief() {
        if (!charge.isEmpty() || others.isEmpty()) {
            return charge;
        }
        String[] words = others.get(0).split(" ", -1);
        return words.length > 1 ? words[0] + " " + words[1] : words[0];
    }
}
