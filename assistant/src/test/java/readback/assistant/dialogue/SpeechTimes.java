package readback.assistant.dialogue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How long the program speaks in the reviewed conversations, as tables in Markdown: each kind of speech against its
 * goal, then whole calls. Then every text that takes longer than its goal. Run from the folder assistant.
 */
public final class SpeechTimes {

    private static final Path FOLDER = Path.of("src/test/resources/readback/assistant/golden");

    private SpeechTimes() {}

    static List<Path> conversations() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted().toList();
        }
    }

    /** Everything that is spoken in them, in the words in which it is; each text once. */
    public static Set<String> texts() throws IOException {
        Set<String> texts = new LinkedHashSet<>();
        for (Path conversation : conversations()) {
            Speech.of(conversation).forEach(speech -> texts.addAll(speech.texts()));
        }
        return texts;
    }

    public static void main(String... none) throws IOException {
        List<Speech> all = new ArrayList<>();
        List<String> calls = new ArrayList<>();
        for (Path conversation : conversations()) {
            List<Speech> speeches = Speech.of(conversation);
            all.addAll(speeches);
            calls.add(String.format(
                    Locale.ROOT,
                    "| %s | %.0f |",
                    conversation.getFileName(),
                    speeches.stream().mapToDouble(Speech::seconds).sum()));
        }
        System.out.println("| what is said | voice | times | median | 95 in 100 | longest | goal | over it |");
        System.out.println("|---|---|---|---|---|---|---|---|");
        for (Speech.Kind kind : Speech.Kind.values()) {
            for (boolean brief : new boolean[] {false, true}) {
                row(kind, brief, all);
            }
        }
        System.out.println();
        System.out.println("| call | seconds |");
        System.out.println("|---|---|");
        calls.forEach(System.out::println);
        System.out.println();
        all.stream()
                .filter(Speech::over)
                .sorted(Comparator.comparingDouble(Speech::seconds).reversed())
                .forEach(each -> System.out.println(each.line()));
    }

    private static void row(Speech.Kind kind, boolean brief, List<Speech> all) {
        List<Speech> these = all.stream()
                .filter(each -> each.kind() == kind && each.brief() == brief)
                .sorted(Comparator.comparingDouble(Speech::seconds))
                .toList();
        if (these.isEmpty()) {
            return;
        }
        OptionalDouble goal = kind.goal(brief);
        long over = these.stream().filter(Speech::over).count();
        System.out.printf(
                Locale.ROOT,
                "| %s | %s | %d | %.1f | %.1f | %.1f | %s | %s |%n",
                kind.title(),
                brief ? "brief" : "guide",
                these.size(),
                at(these, 0.5),
                at(these, 0.95),
                at(these, 1),
                goal.isPresent() ? String.format(Locale.ROOT, "%.0f", goal.getAsDouble()) : "",
                goal.isPresent() ? String.valueOf(over) : "");
    }

    private static double at(List<Speech> sorted, double share) {
        return sorted.get((int) Math.min(sorted.size() - 1L, Math.round(share * (sorted.size() - 1))))
                .seconds();
    }
}
